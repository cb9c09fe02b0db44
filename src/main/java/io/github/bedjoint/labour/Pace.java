package io.github.bedjoint.labour;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.Read;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.TimePerArea;
import io.github.bedjoint.units.TimePerLength;
import java.math.BigDecimal;
import javax.measure.Quantity;
import javax.measure.quantity.Time;

/**
 * Basic time for one person per square metre, per metre or per piece; for a machine its own running time.
 *
 * <p>Stored in seconds per square metre, seconds per metre or seconds. A pace never holds an allowance. Immutable.
 *
 * @param measure {@link Measure#TIME_PER_AREA}, {@link Measure#TIME_PER_LENGTH} or {@link Measure#TIME}
 * @param inner   seconds per unit of the driver
 */
public record Pace(Measure measure, double inner) {
    private static final Range RANGE = Range.closed(0, 10_000_000);

    /**
     * Checks kind and size.
     *
     * @param measure {@link Measure#TIME_PER_AREA}, {@link Measure#TIME_PER_LENGTH} or {@link Measure#TIME}
     * @param inner   seconds per unit of the driver
     * @throws RefusedException if the measure is not that of a pace, or the number not from zero to 10 000 000 s
     */
    public Pace {
        if (measure != Measure.TIME_PER_AREA && measure != Measure.TIME_PER_LENGTH && measure != Measure.TIME) {
            throw new RefusedException(
                    "pace", measure.name(), "must be a time per area, per length or per piece", "Maybe a driver was meant.");
        }
        Door.number("pace", inner, RANGE);
        inner = inner + 0.0;
    }

    /**
     * A pace by area.
     *
     * @param pace time per area, zero or more
     * @return the pace
     * @throws RefusedException if it cannot be accepted
     */
    public static Pace perArea(Quantity<TimePerArea> pace) {
        return new Pace(Measure.TIME_PER_AREA, Door.in(Measure.TIME_PER_AREA, "pace", pace, RANGE));
    }

    /**
     * A pace by length.
     *
     * @param pace time per length, zero or more
     * @return the pace
     * @throws RefusedException if it cannot be accepted
     */
    public static Pace perLength(Quantity<TimePerLength> pace) {
        return new Pace(Measure.TIME_PER_LENGTH, Door.in(Measure.TIME_PER_LENGTH, "pace", pace, RANGE));
    }

    /**
     * A pace by piece.
     *
     * @param pace time for one, zero or more
     * @return the pace
     * @throws RefusedException if it cannot be accepted
     */
    public static Pace perPiece(Quantity<Time> pace) {
        return new Pace(Measure.TIME, Door.timeS("pace", pace, RANGE));
    }

    /**
     * Reads a pace for a driver.
     *
     * @param driver what it is a pace of
     * @param text   such as {@code 25 min/m2}, {@code 1.8 min/ft}, {@code 12 min}
     * @return the pace
     * @throws RefusedException if it cannot be read, or is not per the driver's unit
     */
    public static Pace parse(Driver driver, String text) {
        return switch (driver.paceMeasure()) {
            case TIME_PER_AREA -> perArea(Read.timePerArea(text));
            case TIME_PER_LENGTH -> perLength(Read.timePerLength(text));
            default -> perPiece(Read.time(text));
        };
    }

    /** The pace in minutes, or in seconds where minutes would not read back exactly or would be long: {@code 25 min/m2}. */
    @Override
    public String toString() {
        String per = measure == Measure.TIME_PER_AREA ? "/m2" : measure == Measure.TIME_PER_LENGTH ? "/m" : "";
        double minutes = inner / 60;
        String text = plain(minutes);
        return minutes * 60 == inner && text.length() < 12 ? text + " min" + per : plain(inner) + " s" + per;
    }

    private static String plain(double value) {
        return value == 0 ? "0" : new BigDecimal(Double.toString(value)).stripTrailingZeros().toPlainString();
    }
}
