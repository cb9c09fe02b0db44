package io.github.bedjoint.schedule;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.UnitStyle;
import java.util.Locale;
import javax.measure.Quantity;
import javax.measure.quantity.Time;

/**
 * A length of time and which hours count towards it; at most two years.
 *
 * @param seconds whole seconds, zero or more
 * @param base    which hours count
 */
public record Span(long seconds, TimeBase base) {
    private static final double LONGEST_S = 2 * 365 * 86_400.0;
    private static final Range RANGE = Range.closed(0, LONGEST_S);

    /** No time. */
    public static final Span NONE = new Span(0, TimeBase.ELAPSED);

    /**
     * Checks the length.
     *
     * @param seconds whole seconds, zero or more
     * @param base    which hours count
     * @throws RefusedException if it is negative or more than two years
     */
    public Span {
        Door.number("seconds", seconds, RANGE);
    }

    /**
     * A span of hours within the shifts.
     *
     * @param time zero to two years; a fraction of a second is rounded up
     * @return the span
     * @throws RefusedException if it cannot be accepted
     */
    public static Span shift(Quantity<Time> time) {
        return new Span(whole(time), TimeBase.SHIFT);
    }

    /**
     * A span of hours on the clock.
     *
     * @param time zero to two years; a fraction of a second is rounded up
     * @return the span
     * @throws RefusedException if it cannot be accepted
     */
    public static Span elapsed(Quantity<Time> time) {
        return new Span(whole(time), TimeBase.ELAPSED);
    }

    private static long whole(Quantity<Time> time) {
        return whole(Door.timeS("time", time, RANGE));
    }

    private static long whole(double seconds) {
        // A millionth of a second is the rounding of a double, not time.
        return (long) Math.ceil(Door.number("seconds", seconds, RANGE) - 1e-6);
    }

    /**
     * {@link #shift(Quantity)} of a plain number.
     *
     * @param seconds zero to two years; a fraction of a second is rounded up
     * @return the span
     * @throws RefusedException if it cannot be accepted
     */
    public static Span shiftS(double seconds) {
        return new Span(whole(seconds), TimeBase.SHIFT);
    }

    /**
     * {@link #elapsed(Quantity)} of a plain number.
     *
     * @param seconds zero to two years; a fraction of a second is rounded up
     * @return the span
     * @throws RefusedException if it cannot be accepted
     */
    public static Span elapsedS(double seconds) {
        return new Span(whole(seconds), TimeBase.ELAPSED);
    }

    /** The span for a reader: {@code 24 h elapsed}. */
    @Override
    public String toString() {
        return Measure.TIME.print(seconds, UnitStyle.METRIC) + " " + base.name().toLowerCase(Locale.ROOT);
    }
}
