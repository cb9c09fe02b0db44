package io.github.bedjoint.units;

/**
 * The values that are accepted at the door, in inner units; both ends are finite, so "huge" is refused as well.
 *
 * @param low      the lower end
 * @param lowOpen  whether the lower end itself is refused
 * @param high     the upper end
 * @param highOpen whether the upper end itself is refused
 */
public record Range(double low, boolean lowOpen, double high, boolean highOpen) {
    /** Above zero, at most 10 000 of the inner unit: sizes of walls and rolls. */
    public static final Range POSITIVE = above(0, 10_000);
    /** Zero to 10 000 of the inner unit: margins, allowances, bleeds. */
    public static final Range NOT_NEGATIVE = closed(0, 10_000);
    /** Zero to one, both accepted: shares. */
    public static final Range SHARE = closed(0, 1);
    /** Zero accepted, one refused: margins and allowances by which something is divided. */
    public static final Range BELOW_ONE = new Range(0, false, 1, true);

    /**
     * Checks the ends.
     *
     * @param low      the lower end, finite
     * @param lowOpen  whether the lower end itself is refused
     * @param high     the upper end, finite and not below the lower
     * @param highOpen whether the upper end itself is refused
     * @throws RefusedException if an end is not finite or the ends are the wrong way round
     */
    public Range {
        if (!Double.isFinite(low) || !Double.isFinite(high) || low > high) {
            throw new RefusedException(
                    "range", low + " to " + high, "must run from one finite number up to another", "Maybe the ends are the wrong way round.");
        }
    }

    /**
     * A range whose ends are accepted.
     *
     * @param low  the lower end, in the inner unit
     * @param high the upper end, in the inner unit
     * @return the range
     * @throws RefusedException if an end is not finite or the ends are the wrong way round
     */
    public static Range closed(double low, double high) {
        return new Range(low, false, high, false);
    }

    /**
     * A range whose lower end is refused and whose upper end is accepted.
     *
     * @param low  the lower end, in the inner unit
     * @param high the upper end, in the inner unit
     * @return the range
     * @throws RefusedException if an end is not finite or the ends are the wrong way round
     */
    public static Range above(double low, double high) {
        return new Range(low, true, high, false);
    }

    /**
     * Whether a value is accepted. NaN and infinity never are.
     *
     * @param value a value in the inner unit
     * @return true when it lies in the range
     */
    public boolean contains(double value) {
        return (lowOpen ? value > low : value >= low) && (highOpen ? value < high : value <= high);
    }

    /** The value, or the end it misses only by the rounding of a conversion: 140 degF is 60 degC, also where that is the limit. */
    double snapped(double value) {
        return isSame(value, low) ? low : isSame(value, high) ? high : value;
    }

    private static boolean isSame(double value, double end) {
        return Math.abs(value - end) <= 1e-14 * Math.abs(end);
    }

    /** What a refusal says: "must be more than 0 m and at most 10000 m". */
    String words(Measure measure) {
        return "must be " + (lowOpen ? "more than " : "at least ") + measure.print(low, UnitStyle.METRIC)
                + " and " + (highOpen ? "less than " : "at most ") + measure.print(high, UnitStyle.METRIC);
    }
}
