package io.github.bedjoint.layout;

import io.github.bedjoint.survey.Point;
import io.github.bedjoint.survey.Side;

/**
 * A wall turned so that panels always run along v and follow each other along u, from the starting side on: drops and bands, from
 * either side, become one computation.
 *
 * @param direction drops or bands
 * @param start     the side where u is least
 */
record Frame(Direction direction, Side start) {

    private boolean turned() {
        return direction == Direction.BANDS;
    }

    private boolean mirrored() {
        return start == Side.RIGHT || start == Side.TOP;
    }

    long u(Point p) {
        return u(p.xSteps(), p.ySteps());
    }

    long v(Point p) {
        return v(p.xSteps(), p.ySteps());
    }

    long u(long x, long y) {
        long along = turned() ? y : x;
        return mirrored() ? -along : along;
    }

    long v(long x, long y) {
        return turned() ? x : y;
    }

    /** A rectangle of the wall in this frame. */
    Rect in(long left, long bottom, long right, long top) {
        long ua = u(left, bottom);
        long ub = u(right, top);
        return new Rect(Math.min(ua, ub), Math.max(ua, ub), v(left, bottom), v(right, top));
    }

    /** The lower left corner on the wall of a rectangle of this frame. */
    Point lowerLeft(Rect r) {
        long along = mirrored() ? -r.u2() : r.u1();
        return turned() ? new Point(r.v1(), along) : new Point(along, r.v1());
    }

    /** The place on the wall of a line at u: x for drops, y for bands. */
    long place(long u) {
        return mirrored() ? -u : u;
    }

    /** The side of the wall towards lesser or greater u. */
    Side side(boolean greater) {
        return greater ? start.opposite() : start;
    }
}
