package io.github.bedjoint.survey;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.UnitStyle;
import javax.measure.Quantity;
import javax.measure.quantity.Length;

/**
 * Standard uncertainties of the lengths of a survey, each 0 until given; lengths are taken as independent of one another.
 *
 * <p>A length read to a centimetre has a standard uncertainty of 2.9 mm (half the interval by the root of three). A tape that is wrong as a whole moves
 * all lengths alike and is not in it; a range on the size of all walls says that. Immutable.
 *
 * @param wallM    of a width or height of the wall, or of each coordinate of a corner, in metres, 0 to 1 m
 * @param openingM of a width or height of an opening, in metres, 0 to 1 m
 */
public record LengthTolerance(double wallM, double openingM) {
    private static final Range LENGTH = Range.closed(0, 1);

    /**
     * Checks the uncertainties.
     *
     * @param wallM    of a width or height of the wall, or of each coordinate of a corner, in metres, 0 to 1 m
     * @param openingM of a width or height of an opening, in metres, 0 to 1 m
     * @throws io.github.bedjoint.units.RefusedException if one is out of range
     */
    public LengthTolerance {
        wallM = Door.in(Measure.LENGTH, wallM, "uncertainty of a length of the wall", LENGTH);
        openingM = Door.in(Measure.LENGTH, openingM, "uncertainty of a length of an opening", LENGTH);
    }

    /**
     * No uncertainty at all.
     *
     * @return the tolerance
     */
    public static LengthTolerance none() {
        return new LengthTolerance(0, 0);
    }

    /**
     * The same with an uncertainty of the wall's lengths.
     *
     * @param u standard uncertainty of a width or height, or of each coordinate of a corner, 0 to 1 m
     * @return the tolerance
     * @throws io.github.bedjoint.units.RefusedException if it is out of range
     */
    public LengthTolerance withWall(Quantity<Length> u) {
        return new LengthTolerance(Door.lengthM("uncertainty of a length of the wall", u, LENGTH), openingM);
    }

    /**
     * The same with an uncertainty of the lengths of openings.
     *
     * @param u standard uncertainty of a width or height, 0 to 1 m
     * @return the tolerance
     * @throws io.github.bedjoint.units.RefusedException if it is out of range
     */
    public LengthTolerance withOpening(Quantity<Length> u) {
        return new LengthTolerance(wallM, Door.lengthM("uncertainty of a length of an opening", u, LENGTH));
    }

    /**
     * Whether any uncertainty was given.
     *
     * @return false where both are 0
     */
    public boolean isNone() {
        return wallM == 0 && openingM == 0;
    }

    /** Both in metric units. */
    @Override
    public String toString() {
        return "lengths of the wall to " + Measure.LENGTH.print(wallM, UnitStyle.METRIC) + ", of openings to "
                + Measure.LENGTH.print(openingM, UnitStyle.METRIC) + " (standard uncertainty)";
    }
}
