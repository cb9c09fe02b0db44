package io.github.bedjoint.survey;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Print;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.Steps;
import io.github.bedjoint.units.UnitStyle;
import javax.measure.Quantity;
import javax.measure.quantity.Length;

/**
 * A point on a wall, in whole steps from an origin that the survey chose: x to the right, y up.
 *
 * @param xSteps how far right
 * @param ySteps how far up
 */
public record Point(long xSteps, long ySteps) {
    /** What a coordinate may be: up to 1 km to either side of the origin. */
    static final Range REACH = Range.closed(-1000, 1000);

    /**
     * A point from two lengths; each is brought up to the next whole step.
     *
     * @param x how far right, -1000 m to 1000 m
     * @param y how far up, -1000 m to 1000 m
     * @return the point
     * @throws io.github.bedjoint.units.RefusedException if a length is absent, not finite or out of range
     */
    public static Point of(Quantity<Length> x, Quantity<Length> y) {
        return new Point(Steps.up(Door.lengthM("x", x, REACH)), Steps.up(Door.lengthM("y", y, REACH)));
    }

    /**
     * Checks that the point lies within 1 km of the origin.
     *
     * @param xSteps how far right
     * @param ySteps how far up
     * @throws io.github.bedjoint.units.RefusedException if it does not
     */
    public Point {
        Door.number("x", Steps.toM(xSteps), REACH);
        Door.number("y", Steps.toM(ySteps), REACH);
    }

    /** The coordinates in millimetres: {@code (1200.0 mm, 2400.0 mm)}. */
    @Override
    public String toString() {
        return "(" + Print.cut(xSteps, UnitStyle.METRIC) + ", " + Print.cut(ySteps, UnitStyle.METRIC) + ")";
    }

    /** Twice the signed area of the triangle o, a, b: positive when it turns left. Exact for points within reach. */
    static long turn(Point o, Point a, Point b) {
        return (a.xSteps - o.xSteps) * (b.ySteps - o.ySteps) - (a.ySteps - o.ySteps) * (b.xSteps - o.xSteps);
    }
}
