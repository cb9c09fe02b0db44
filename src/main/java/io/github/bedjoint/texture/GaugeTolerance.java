package io.github.bedjoint.texture;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.UnitStyle;
import javax.measure.Quantity;
import javax.measure.quantity.Length;

/**
 * Standard uncertainties of one point of a contour gauge, each 0 until given; points are taken as independent of one another.
 *
 * <p>A pin read to 1 mm has a standard uncertainty of 0.29 mm (half the interval by the root of three). What moves all points alike, such as a
 * gauge held askew, is not in it. Immutable.
 *
 * @param heightM of the height of a point, in metres, 0 to 20 mm
 * @param placeM  of its place along the line, in metres, 0 to 20 mm
 */
public record GaugeTolerance(double heightM, double placeM) {
    private static final Range LENGTH = Range.closed(0, 0.02);

    /**
     * Checks the uncertainties.
     *
     * @param heightM of the height of a point, in metres, 0 to 20 mm
     * @param placeM  of its place along the line, in metres, 0 to 20 mm
     * @throws RefusedException if one is out of range
     */
    public GaugeTolerance {
        heightM = Door.in(Measure.LENGTH, heightM, "uncertainty of the height", LENGTH);
        placeM = Door.in(Measure.LENGTH, placeM, "uncertainty of the place", LENGTH);
    }

    /**
     * No uncertainty at all.
     *
     * @return the tolerance
     */
    public static GaugeTolerance none() {
        return new GaugeTolerance(0, 0);
    }

    /**
     * The same with an uncertainty of a point's height.
     *
     * @param u standard uncertainty, 0 to 20 mm
     * @return the tolerance
     * @throws RefusedException if it is out of range
     */
    public GaugeTolerance withHeight(Quantity<Length> u) {
        return new GaugeTolerance(Door.lengthM("uncertainty of the height", u, LENGTH), placeM);
    }

    /**
     * The same with an uncertainty of a point's place along the line.
     *
     * @param u standard uncertainty, 0 to 20 mm
     * @return the tolerance
     * @throws RefusedException if it is out of range
     */
    public GaugeTolerance withPlace(Quantity<Length> u) {
        return new GaugeTolerance(heightM, Door.lengthM("uncertainty of the place", u, LENGTH));
    }

    /**
     * Whether any uncertainty was given.
     *
     * @return false where both are 0
     */
    public boolean isNone() {
        return heightM == 0 && placeM == 0;
    }

    /** Both in metric units. */
    @Override
    public String toString() {
        return "points to " + Measure.LENGTH.print(heightM, UnitStyle.METRIC) + " in height and " + Measure.LENGTH.print(placeM, UnitStyle.METRIC)
                + " in place (standard uncertainty)";
    }
}
