package io.github.bedjoint.survey;

import io.github.bedjoint.units.RefusedException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** An outline with each edge moved outward along one axis, its corners joined by square ones. */
final class Growth {
    private final Outline from;
    private final long left;
    private final long right;
    private final long bottom;
    private final long top;

    Growth(Outline from, long left, long right, long bottom, long top) {
        this.from = from;
        this.left = left;
        this.right = right;
        this.bottom = bottom;
        this.top = top;
    }

    Optional<Outline> outline() {
        if (left == 0 && right == 0 && bottom == 0 && top == 0) {
            return Optional.of(from);
        }
        int n = from.points().size();
        List<Point> moved = new ArrayList<>();
        try {
            for (int i = 0; i < n; i++) {
                corner(from.point(i + n - 1), from.point(i), from.point(i + 1), moved);
            }
            Outline grown = Outline.of(moved);
            // Edges that crossed turn the outline inside out in part; then it is not a rim of anything.
            boolean turned = from.points().stream().anyMatch(p -> !grown.holdsPoint(p));
            return turned ? Optional.empty() : Optional.of(grown);
        } catch (RefusedException crossed) {
            return Optional.empty();
        }
    }

    /** Adds what becomes of corner p between the edges before and after it. */
    private void corner(Point a, Point p, Point b, List<Point> out) {
        Side before = Side.facing(a, p);
        Side after = Side.facing(p, b);
        long dx1 = dx(before);
        long dy1 = dy(before);
        long dx2 = dx(after);
        long dy2 = dy(after);
        if (before == after) {
            add(out, p.xSteps() + dx1, p.ySteps() + dy1);
        } else if (before.opposite() == after && Point.turn(a, p, b) < 0) {
            notch(a, p, b, dy1, dy2, out);
        } else if (before.opposite() == after) {
            // A tip between an upper and a lower edge.
            add(out, p.xSteps() + dx1, p.ySteps() + dy1);
            add(out, p.xSteps() + dx2, p.ySteps() + dy2);
        } else if (Point.turn(a, p, b) > 0) {
            // The upright edge's own end lies below the square corner; it would stick out where a step is lower than the bleed.
            if (before == Side.TOP || before == Side.BOTTOM) {
                add(out, p.xSteps() + dx1, p.ySteps() + dy1);
            }
            add(out, p.xSteps() + dx1 + dx2, p.ySteps() + dy1 + dy2);
            if (after == Side.TOP || after == Side.BOTTOM) {
                add(out, p.xSteps() + dx2, p.ySteps() + dy2);
            }
        } else {
            inner(a, p, b, before, out);
        }
    }

    /** At an inner corner the upright edge is moved sideways and meets the other one where that has moved to. */
    private void inner(Point a, Point p, Point b, Side before, List<Point> out) {
        boolean uprightFirst = before == Side.LEFT || before == Side.RIGHT;
        Side upright = uprightFirst ? before : Side.facing(p, b);
        Side level = uprightFirst ? Side.facing(p, b) : before;
        Point far = uprightFirst ? b : a;
        long x = p.xSteps() + dx(upright);
        long rise = (far.ySteps() - p.ySteps()) * dx(upright);
        long run = far.xSteps() - p.xSteps();
        // Outward to a whole step: up for an upper edge, down for a lower one.
        long slope = level == Side.TOP ? -Math.floorDiv(-rise, run) : Math.floorDiv(rise, run);
        add(out, x, p.ySteps() + slope + dy(level));
    }

    /** At the point of a notch between an upper and a lower edge, both move towards each other and meet further out. */
    private static void notch(Point a, Point p, Point b, long dy1, long dy2, List<Point> out) {
        double slope1 = (double) (a.ySteps() - p.ySteps()) / (a.xSteps() - p.xSteps());
        double slope2 = (double) (b.ySteps() - p.ySteps()) / (b.xSteps() - p.xSteps());
        double dx = (dy2 - dy1) / (slope1 - slope2);
        add(out, p.xSteps() + Math.round(dx), p.ySteps() + Math.round(slope1 * dx + dy1));
    }

    private static void add(List<Point> out, long x, long y) {
        Point p = new Point(x, y);
        if (out.isEmpty() || !out.get(out.size() - 1).equals(p)) {
            out.add(p);
        }
    }

    private long dx(Side side) {
        return side == Side.LEFT ? -left : side == Side.RIGHT ? right : 0;
    }

    private long dy(Side side) {
        return side == Side.BOTTOM ? -bottom : side == Side.TOP ? top : 0;
    }
}
