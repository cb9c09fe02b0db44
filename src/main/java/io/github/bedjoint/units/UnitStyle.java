package io.github.bedjoint.units;

/** The units a reader wants to see. It never changes a figure, only how the figure is printed. */
public enum UnitStyle {
    /** Metres, square metres, millilitres, kilograms, degrees Celsius. */
    METRIC,
    /** Feet and inches, square feet, US fluid ounces, pounds, degrees Fahrenheit. */
    IMPERIAL
}
