package io.github.bedjoint.survey;

import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.Steps;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A simple polygon in whole steps: the rim of a wall, gables and steps included.
 *
 * <p>Stored are its corners counter-clockwise, without those that lie on a straight line between their neighbours. An outline that
 * crosses or touches itself, or has no area, is refused. Immutable.
 */
public final class Outline {
    private static final int MOST_CORNERS = 500;

    private final List<Point> points;

    private Outline(List<Point> points) {
        this.points = points;
    }

    /**
     * An outline through corners, in either sense of rotation.
     *
     * @param corners 3 to 500 corners in order; the last is joined to the first
     * @return the outline
     * @throws RefusedException if it has no area, or crosses or touches itself
     */
    public static Outline of(List<Point> corners) {
        if (corners.size() < 3 || corners.size() > MOST_CORNERS) {
            throw new RefusedException("outline", corners.size() + " corners", "must have 3 to " + MOST_CORNERS,
                    "Maybe corners are missing.");
        }
        List<Point> kept = bends(corners);
        if (kept.size() < 3) {
            throw refusal(corners.get(0), "must enclose an area", "Maybe all corners lie on one line.");
        }
        for (int i = 0; i < kept.size(); i++) {
            for (int j = i + 1; j < kept.size(); j++) {
                if (meet(kept, i, j)) {
                    throw refusal(kept.get(j), "must not cross or touch itself", "Maybe two corners are in the wrong order.");
                }
            }
        }
        if (twiceArea(kept) < 0) {
            Collections.reverse(kept);
        }
        return new Outline(List.copyOf(kept));
    }

    private static RefusedException refusal(Point where, String limit, String hint) {
        return new RefusedException("outline", "at " + where, limit, hint);
    }

    /** The corners without repeats and without those on a straight line. */
    private static List<Point> bends(List<Point> corners) {
        List<Point> kept = new ArrayList<>(corners);
        for (int i = 0; i < kept.size() && kept.size() >= 3; ) {
            Point before = kept.get((i + kept.size() - 1) % kept.size());
            Point after = kept.get((i + 1) % kept.size());
            if (Point.turn(before, kept.get(i), after) == 0) {
                // A spike goes back over itself: left in, so that it is refused as touching itself.
                if (!between(before, after, kept.get(i))) {
                    throw refusal(kept.get(i), "must not run back over itself", "Maybe a corner is given twice or out of order.");
                }
                kept.remove(i);
                i = Math.max(0, i - 1);
            } else {
                i++;
            }
        }
        return kept;
    }

    private static boolean between(Point a, Point b, Point p) {
        return Math.min(a.xSteps(), b.xSteps()) <= p.xSteps() && p.xSteps() <= Math.max(a.xSteps(), b.xSteps())
                && Math.min(a.ySteps(), b.ySteps()) <= p.ySteps() && p.ySteps() <= Math.max(a.ySteps(), b.ySteps());
    }

    /** Whether edges i and j have a point in common that is not the corner they share. */
    private static boolean meet(List<Point> p, int i, int j) {
        int n = p.size();
        Point a = p.get(i);
        Point b = p.get((i + 1) % n);
        Point c = p.get(j);
        Point d = p.get((j + 1) % n);
        if (j == i + 1 || i == (j + 1) % n) {
            // Neighbours bend at the shared corner, so they meet nowhere else.
            return false;
        }
        long abc = Long.signum(Point.turn(a, b, c));
        long abd = Long.signum(Point.turn(a, b, d));
        long cda = Long.signum(Point.turn(c, d, a));
        long cdb = Long.signum(Point.turn(c, d, b));
        return abc * abd < 0 && cda * cdb < 0
                || abc == 0 && between(a, b, c)
                || abd == 0 && between(a, b, d)
                || cda == 0 && between(c, d, a)
                || cdb == 0 && between(c, d, b);
    }

    private static long twiceArea(List<Point> p) {
        long sum = 0;
        for (int i = 1; i + 1 < p.size(); i++) {
            sum += Point.turn(p.get(0), p.get(i), p.get(i + 1));
        }
        return sum;
    }

    /**
     * The corners, counter-clockwise.
     *
     * @return at least three corners
     */
    public List<Point> points() {
        return points;
    }

    /**
     * A corner, counted around and around.
     *
     * @param index any index from 0
     * @return the corner
     */
    public Point point(int index) {
        return points.get(index % points.size());
    }

    /**
     * The side that an edge belongs to: the one its outward normal faces, sloped upper edges to the top.
     *
     * @param index the edge from corner {@code index} to the next
     * @return its side
     */
    public Side side(int index) {
        return Side.facing(point(index), point(index + 1));
    }

    /**
     * The farthest coordinate towards a side.
     *
     * @param side where to
     * @return x for left and right, y for bottom and top, in steps
     */
    public long reach(Side side) {
        return switch (side) {
            case LEFT -> points.stream().mapToLong(Point::xSteps).min().orElseThrow();
            case RIGHT -> points.stream().mapToLong(Point::xSteps).max().orElseThrow();
            case BOTTOM -> points.stream().mapToLong(Point::ySteps).min().orElseThrow();
            case TOP -> points.stream().mapToLong(Point::ySteps).max().orElseThrow();
        };
    }

    /**
     * The signed areas between each edge and the lower side of the bounding box; upper edges count plus, lower ones minus. Their sum
     * is the area.
     *
     * @return square metres, one for each edge that is not upright
     */
    List<Double> trapezoidsM2() {
        long base = reach(Side.BOTTOM);
        List<Double> areas = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            Point a = point(i);
            Point b = point(i + 1);
            double area = Steps.toM(a.xSteps() - b.xSteps()) * Steps.toM(a.ySteps() + b.ySteps() - 2 * base) / 2;
            if (area != 0) {
                areas.add(area);
            }
        }
        return areas;
    }

    /**
     * The outline with every edge moved outward: what a film covers that has an extra length beyond each side.
     *
     * @param left   how far edges facing left move, in steps, 0 or more
     * @param right  how far edges facing right move
     * @param bottom how far edges facing down move, straight down
     * @param top    how far edges facing up move, straight up
     * @return the larger outline, or empty where the extra lengths meet across a notch
     */
    public Optional<Outline> grown(long left, long right, long bottom, long top) {
        return new Growth(this, left, right, bottom, top).outline();
    }

    /** Whether a rectangle lies inside; it may touch the rim. */
    boolean holds(long left, long bottom, long right, long top) {
        for (int i = 0; i < points.size(); i++) {
            if (enters(point(i), point(i + 1), left, bottom, right, top)) {
                return false;
            }
        }
        // No edge enters, so the rectangle is all inside or all outside: its centre tells, in half steps.
        return containsHalf(left + right, bottom + top);
    }

    /** Whether an edge has a point in the open rectangle: no side of it, nor the edge's own line, parts the two. */
    private static boolean enters(Point a, Point b, long left, long bottom, long right, long top) {
        if (Math.max(a.xSteps(), b.xSteps()) <= left || Math.min(a.xSteps(), b.xSteps()) >= right
                || Math.max(a.ySteps(), b.ySteps()) <= bottom || Math.min(a.ySteps(), b.ySteps()) >= top) {
            return false;
        }
        long dx = b.xSteps() - a.xSteps();
        long dy = b.ySteps() - a.ySteps();
        boolean above = false;
        boolean below = false;
        for (int corner = 0; corner < 4; corner++) {
            long x = (corner & 1) == 0 ? left : right;
            long y = (corner & 2) == 0 ? bottom : top;
            long turn = dx * (y - a.ySteps()) - dy * (x - a.xSteps());
            above |= turn > 0;
            below |= turn < 0;
        }
        return above && below;
    }

    /** Whether a point lies inside or on the rim. */
    boolean holdsPoint(Point p) {
        for (int i = 0; i < points.size(); i++) {
            if (Point.turn(point(i), point(i + 1), p) == 0 && between(point(i), point(i + 1), p)) {
                return true;
            }
        }
        return containsHalf(2 * p.xSteps(), 2 * p.ySteps());
    }

    private boolean containsHalf(long x2, long y2) {
        boolean inside = false;
        for (int i = 0; i < points.size(); i++) {
            Point a = point(i);
            Point b = point(i + 1);
            if (2 * a.ySteps() > y2 != 2 * b.ySteps() > y2) {
                long turn = (b.xSteps() - a.xSteps()) * (y2 - 2 * a.ySteps()) - (b.ySteps() - a.ySteps()) * (x2 - 2 * a.xSteps());
                // Left of the edge as it goes up, right of it as it goes down.
                if (turn > 0 == b.ySteps() > a.ySteps()) {
                    inside = !inside;
                }
            }
        }
        return inside;
    }

    /** Equal when the corners are the same, from whichever corner they are counted. */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Outline that && canonical().equals(that.canonical());
    }

    @Override
    public int hashCode() {
        return canonical().hashCode();
    }

    private List<Point> canonical() {
        int first = 0;
        for (int i = 1; i < points.size(); i++) {
            Point a = points.get(i);
            Point b = points.get(first);
            if (a.xSteps() < b.xSteps() || a.xSteps() == b.xSteps() && a.ySteps() < b.ySteps()) {
                first = i;
            }
        }
        List<Point> turned = new ArrayList<>(points);
        Collections.rotate(turned, -first);
        return turned;
    }

    /** The corners in order. */
    @Override
    public String toString() {
        return points.toString();
    }
}
