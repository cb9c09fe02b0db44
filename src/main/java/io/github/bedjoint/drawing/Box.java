package io.github.bedjoint.drawing;

import io.github.bedjoint.drawing.Svg.Dot;
import java.util.List;

/** A rectangle on paper, x and y its upper left corner. */
record Box(double x, double y, double width, double height) {

    static Box around(double x, double y, double width, double height) {
        return new Box(x - width / 2, y - height / 2, width, height);
    }

    double right() {
        return x + width;
    }

    double bottom() {
        return y + height;
    }

    double longer() {
        return Math.max(width, height);
    }

    /** The same widened about its middle where it is thinner than that. */
    Box atLeast(double least) {
        return around(x + width / 2, y + height / 2, Math.max(width, least), Math.max(height, least));
    }

    boolean holds(double px, double py) {
        return x <= px && px <= right() && y <= py && py <= bottom();
    }

    boolean meets(Box other) {
        return x < other.right() && other.x < right() && y < other.bottom() && other.y < bottom();
    }

    /** Whether all its corners, and the middles of its sides, lie inside a polygon. */
    boolean isInside(List<Dot> rim) {
        for (int i = 0; i < 9; i++) {
            if (!inside(x + i % 3 * width / 2, y + i / 3 * height / 2, rim)) {
                return false;
            }
        }
        return true;
    }

    private static boolean inside(double px, double py, List<Dot> rim) {
        boolean inside = false;
        for (int i = 0; i < rim.size(); i++) {
            Dot a = rim.get(i);
            Dot b = rim.get((i + 1) % rim.size());
            if (a.y() > py != b.y() > py) {
                inside ^= px < a.x() + (py - a.y()) / (b.y() - a.y()) * (b.x() - a.x());
            }
        }
        return inside;
    }
}
