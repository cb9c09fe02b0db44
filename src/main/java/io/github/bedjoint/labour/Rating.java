package io.github.bedjoint.labour;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Range;

/**
 * How fast an observed worker was against normal performance: 1.2 is a fifth faster.
 *
 * @param factor the rating, more than 0 and at most 2
 */
public record Rating(double factor) {
    /** Normal performance. */
    public static final Rating NORMAL = new Rating(1);

    /**
     * Checks the factor.
     *
     * @param factor the rating, more than 0 and at most 2
     * @throws io.github.bedjoint.units.RefusedException if it is not more than 0 and at most 2
     */
    public Rating {
        Door.number("rating", factor, Range.above(0, 2));
    }

    /**
     * A rating in percent.
     *
     * @param percent 100 is normal
     * @return the rating
     * @throws io.github.bedjoint.units.RefusedException if it is not more than 0 and at most 200
     */
    public static Rating percent(double percent) {
        return new Rating(Door.number("rating in percent", percent, Range.above(0, 200)) / 100);
    }
}
