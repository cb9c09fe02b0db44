package io.github.bedjoint.units;

import javax.measure.Quantity;
import javax.measure.quantity.Length;

/**
 * Lengths counted in whole steps of 12.5 micrometres, the grain of the panel and roll kernels.
 *
 * <p>The step is chosen so that both rulers of the trade fall on it: 0.1 mm is 8 steps, 1/16 in is 127, 54 in is 109 728,
 * 50 yd is 3 657 600, all exact. Lengths that are finer than a step are rounded to the safe side: what is cut up, what is in
 * stock down. A length within a hundred-thousandth of a step of a whole number is that number, since it differs only by the
 * rounding of a {@code double}.
 */
public final class Steps {
    /** Steps in a metre. */
    public static final long PER_METRE = 80_000;
    /** The longest length of a wall or a roll: 10 km. */
    public static final long MAX = 10_000 * PER_METRE;

    private static final double SAME = 1e-5;
    /** Beyond it the rounding of a double is coarser than {@link #SAME}. */
    private static final double LONGEST_M = 1_000_000;

    private Steps() {}

    /**
     * Steps that hold a length to be cut: the next whole step up.
     *
     * @param metres a length in metres, at most 1000 km either way
     * @return whole steps, not shorter than the length but for the rounding of a {@code double}
     * @throws RefusedException if the length is longer or not a number
     */
    public static long up(double metres) {
        if (!(Math.abs(metres) <= LONGEST_M)) {
            throw new RefusedException(
                    "length", metres + " m", "must be at most 1000 km to be counted in steps", "Maybe a division by zero came before.");
        }
        double steps = metres * PER_METRE;
        long nearest = Math.round(steps);
        return Math.abs(steps - nearest) <= SAME ? nearest : (long) Math.ceil(steps);
    }

    /**
     * Steps that a length in stock offers: the next whole step down.
     *
     * @param metres a length in metres, at most 1000 km either way
     * @return whole steps, not longer than the length but for the rounding of a {@code double}
     * @throws RefusedException if the length is longer or not a number
     */
    public static long down(double metres) {
        return -up(-metres);
    }

    /**
     * Whether a length falls on a whole step, so that nothing was rounded.
     *
     * @param metres a length in metres, at most 1000 km either way
     * @return true for every multiple of 12.5 micrometres
     * @throws RefusedException if the length is longer or not a number
     */
    public static boolean isExact(double metres) {
        return up(metres) == down(metres);
    }

    /**
     * The length of whole steps in metres.
     *
     * @param steps whole steps
     * @return metres
     */
    public static double toM(long steps) {
        return (double) steps / PER_METRE;
    }

    /**
     * The length of whole steps as a quantity.
     *
     * @param steps whole steps
     * @return the length in metres
     */
    public static Quantity<Length> toLength(long steps) {
        return Door.length(toM(steps));
    }
}
