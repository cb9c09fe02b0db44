package io.github.bedjoint.units;

import javax.measure.IncommensurableException;
import javax.measure.Quantity;
import javax.measure.UnconvertibleException;
import javax.measure.Unit;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.apache.commons.lang3.StringUtils;
import org.jspecify.annotations.Nullable;
import tech.units.indriya.quantity.Quantities;

/**
 * Where quantities become plain numbers: converted once into the inner unit, and refused when absent, not finite, of the wrong
 * dimension (possible through a raw cast) or outside their range.
 *
 * <p>Units of {@link ShopUnits} and of {@link Read} are converted by an exact fraction from a table, so that 3 ft and 0.9144 m are
 * the same number; any other unit by its own converter, which is slower and right to a few units in the last place.
 */
public final class Door {
    private static final int LONGEST_NAME = 200;
    private static final double READABLE = 1e15;

    private Door() {}

    /**
     * A quantity as a number in the inner unit.
     *
     * @param measure   what it is
     * @param parameter its name, for the refusal
     * @param quantity  the quantity
     * @param range     what is accepted, in the inner unit
     * @param <Q>       the kind of quantity
     * @return the number in the inner unit
     * @throws RefusedException if absent, not finite, of another dimension, or out of range
     */
    public static <Q extends Quantity<Q>> double in(
            Measure measure, String parameter, @Nullable Quantity<Q> quantity, Range range) {
        if (quantity == null) {
            throw new RefusedException(parameter, "absent", range.words(measure), "Maybe it was forgotten.");
        }
        if (measure == Measure.TEMPERATURE && quantity.getScale() == Quantity.Scale.RELATIVE) {
            throw new RefusedException(
                    parameter, "an interval of " + shown(quantity), "must be a temperature", "Maybe leave Scale.RELATIVE away.");
        }
        double value = quantity.getValue().doubleValue();
        double inner = quantity.getUnit() == measure.unit() ? value : range.snapped(convert(measure, parameter, quantity, value));
        return range.contains(inner) ? inner : checked(measure, parameter, inner, range, shown(quantity));
    }

    private static <Q extends Quantity<Q>> double convert(
            Measure measure, String parameter, Quantity<Q> quantity, double value) {
        Unit<Q> unit = quantity.getUnit();
        UnitTable.Entry entry = UnitTable.find(unit);
        if (entry != null && entry.measure() == measure) {
            return entry.inner(value);
        }
        if (!Double.isFinite(value)) {
            return value; // refused by every range; the converter would only complain of its own number system
        }
        try {
            return unit.getConverterToAny(measure.unit()).convert(value);
        } catch (IncommensurableException | UnconvertibleException e) {
            throw new RefusedException(
                    parameter,
                    shown(quantity),
                    "must be measured in " + UnitTable.label(measure.unit()) + " or a unit that converts to it",
                    "Maybe another quantity was meant.");
        }
    }

    private static double checked(Measure measure, String parameter, double inner, Range range, Object given) {
        if (range.contains(inner)) {
            return inner;
        }
        String hint = Double.isFinite(inner)
                ? inner <= range.low() ? "Maybe a sign or a difference is the wrong way round." : "Maybe the unit is not the one meant."
                : "Maybe a division by zero or an overflow came before.";
        throw new RefusedException(parameter, given.toString(), range.words(measure), hint);
    }

    /** A quantity as {@link Read} would read it; Indriya writes 54 in as "54 (m*127)/5000". */
    private static String shown(Quantity<?> quantity) {
        Unit<?> unit = quantity.getUnit();
        String number = shown(quantity.getValue().doubleValue());
        return unit == ShopUnits.ONE ? number : number + " " + UnitTable.label(unit);
    }

    private static String shown(double value) {
        return Math.abs(value) < READABLE ? Print.number(value) : Double.toString(value);
    }

    /**
     * A number that is already in the inner unit.
     *
     * @param measure   what it is
     * @param inner     the number in the inner unit
     * @param parameter its name, for the refusal
     * @param range     what is accepted, in the inner unit
     * @return the number
     * @throws RefusedException if it is NaN, infinite or out of range
     */
    public static double in(Measure measure, double inner, String parameter, Range range) {
        return range.contains(inner) ? inner : checked(measure, parameter, inner, range, measure.print(inner, UnitStyle.METRIC));
    }

    /**
     * A length in metres.
     *
     * @param parameter its name, for the refusal
     * @param length    the length
     * @param range     what is accepted, in metres
     * @return metres
     * @throws RefusedException if it cannot be accepted
     */
    public static double lengthM(String parameter, @Nullable Quantity<Length> length, Range range) {
        return in(Measure.LENGTH, parameter, length, range);
    }

    /**
     * An area in square metres.
     *
     * @param parameter its name, for the refusal
     * @param area      the area
     * @param range     what is accepted, in square metres
     * @return square metres
     * @throws RefusedException if it cannot be accepted
     */
    public static double areaM2(String parameter, @Nullable Quantity<Area> area, Range range) {
        return in(Measure.AREA, parameter, area, range);
    }

    /**
     * A time in seconds.
     *
     * @param parameter its name, for the refusal
     * @param time      the time
     * @param range     what is accepted, in seconds
     * @return seconds
     * @throws RefusedException if it cannot be accepted
     */
    public static double timeS(String parameter, @Nullable Quantity<Time> time, Range range) {
        return in(Measure.TIME, parameter, time, range);
    }

    /**
     * A temperature (not an interval) in kelvin.
     *
     * @param parameter   its name, for the refusal
     * @param temperature the temperature
     * @param range       what is accepted, in kelvin
     * @return kelvin
     * @throws RefusedException if it cannot be accepted
     */
    public static double temperatureK(String parameter, @Nullable Quantity<Temperature> temperature, Range range) {
        return in(Measure.TEMPERATURE, parameter, temperature, range);
    }

    /**
     * An interval between two temperatures in kelvin: 5 degrees Fahrenheit are 2.7778 K.
     *
     * @param parameter its name, for the refusal
     * @param interval  the interval: in kelvin, or in any other unit of temperature with {@code Quantity.Scale.RELATIVE}
     * @param range     what is accepted, in kelvin
     * @return kelvin
     * @throws RefusedException if it cannot be accepted, or is a temperature in a unit whose zero is not absolute
     */
    public static double intervalK(String parameter, @Nullable Quantity<Temperature> interval, Range range) {
        if (interval == null || interval.getUnit() == ShopUnits.KELVIN) {
            double value = interval == null ? Double.NaN : interval.getValue().doubleValue();
            String given = interval == null ? "absent" : shown(interval);
            return range.contains(value) ? value : checked(Measure.TEMPERATURE_INTERVAL, parameter, value, range, given);
        }
        if (interval.getScale() != Quantity.Scale.RELATIVE) {
            throw new RefusedException(
                    parameter,
                    shown(interval),
                    "must be an interval, not a temperature",
                    "Maybe give it in kelvin or with Quantity.Scale.RELATIVE.");
        }
        double value = interval.getValue().doubleValue();
        double zero = convert(Measure.TEMPERATURE, parameter, interval, 0);
        UnitTable.Entry entry = UnitTable.find(interval.getUnit());
        double inner = entry != null && entry.measure() == Measure.TEMPERATURE
                ? entry.interval(value)
                : convert(Measure.TEMPERATURE, parameter, interval, value) - zero;
        return range.contains(inner) ? inner : checked(Measure.TEMPERATURE_INTERVAL, parameter, inner, range, shown(interval));
    }

    /**
     * A ratio, share or other plain number.
     *
     * @param parameter its name, for the refusal
     * @param value     the number
     * @param range     what is accepted
     * @return the number
     * @throws RefusedException if it is NaN, infinite or out of range
     */
    public static double number(String parameter, double value, Range range) {
        return range.contains(value) ? value : checked(Measure.NUMBER, parameter, value, range, shown(value));
    }

    /**
     * A whole number.
     *
     * @param parameter its name, for the refusal
     * @param value     the number
     * @param low       the least that is accepted
     * @param high      the most that is accepted
     * @return the number
     * @throws RefusedException if it is out of range
     */
    public static int count(String parameter, int value, int low, int high) {
        if (value < low || value > high) {
            throw new RefusedException(
                    parameter,
                    Integer.toString(value),
                    "must be a whole number from " + low + " to " + high,
                    "Maybe a count was mixed up with a size.");
        }
        return value;
    }

    /**
     * A name or other short text: not blank, at most 200 characters, no control characters.
     *
     * @param parameter its name, for the refusal
     * @param text      the text
     * @return the text without the blanks around it, no-break ones included
     * @throws RefusedException if it cannot be accepted
     */
    public static String text(String parameter, @Nullable String text) {
        if (text != null && isPlain(text)) {
            return text;
        }
        String plain = text == null ? "" : TextReader.plain(text);
        if (text == null || plain.isBlank()) {
            throw new RefusedException(
                    parameter, text == null ? "absent" : "blank", "must be a text", "Maybe give it a short name.");
        }
        // String.strip would leave no-break spaces.
        String trimmed = text.substring(StringUtils.indexOfAnyBut(plain, ' '), plain.stripTrailing().length());
        if (trimmed.length() > LONGEST_NAME || trimmed.chars().anyMatch(Character::isISOControl)) {
            throw new RefusedException(
                    parameter,
                    "'" + StringUtils.abbreviate(TextReader.printable(trimmed), 40) + "'",
                    "must have at most " + LONGEST_NAME + " characters and no control characters",
                    "Maybe shorten it to one line.");
        }
        return trimmed;
    }

    /** Whether a text is of visible ASCII with blanks inside only, as most names are: nothing of it can be refused or cut off. */
    private static boolean isPlain(String text) {
        int length = text.length();
        if (length == 0 || length > LONGEST_NAME || text.charAt(0) == ' ' || text.charAt(length - 1) == ' ') {
            return false;
        }
        for (int i = 0; i < length; i++) {
            if (text.charAt(i) < ' ' || text.charAt(i) > '~') {
                return false;
            }
        }
        return true;
    }

    /**
     * A length as a quantity in metres.
     *
     * @param metres the length, finite
     * @return the quantity
     * @throws RefusedException if the number is NaN or infinite
     */
    public static Quantity<Length> length(double metres) {
        return of(metres, ShopUnits.METRE);
    }

    /**
     * An area as a quantity in square metres.
     *
     * @param squareMetres the area, finite
     * @return the quantity
     * @throws RefusedException if the number is NaN or infinite
     */
    public static Quantity<Area> area(double squareMetres) {
        return of(squareMetres, ShopUnits.SQUARE_METRE);
    }

    /**
     * A time as a quantity in hours, the unit in which the trade reads it.
     *
     * @param seconds the time in seconds, finite
     * @return the quantity
     * @throws RefusedException if the number is NaN or infinite
     */
    public static Quantity<Time> time(double seconds) {
        return of(seconds / 3600, ShopUnits.HOUR);
    }

    /**
     * A number in a given unit as a quantity.
     *
     * @param value the number, finite
     * @param unit  its unit
     * @param <Q>   the kind of quantity
     * @return the quantity
     * @throws RefusedException if the number is NaN or infinite
     */
    public static <Q extends Quantity<Q>> Quantity<Q> of(double value, Unit<Q> unit) {
        if (!Double.isFinite(value)) {
            throw new RefusedException(
                    "quantity", value + " " + UnitTable.label(unit), "must be finite", "Maybe a division by zero or an overflow came before.");
        }
        return Quantities.getQuantity(value, unit);
    }
}
