package io.github.bedjoint.schedule;

/** Which hours count. */
public enum TimeBase {
    /** Hours within the shifts of the calendar: work. */
    SHIFT,
    /** Hours on the clock, day and night: outgassing, curing, drying. 24 of them across a clock change are still 24. */
    ELAPSED
}
