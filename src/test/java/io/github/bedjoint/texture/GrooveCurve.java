package io.github.bedjoint.texture;

import java.util.ArrayList;
import java.util.List;

/**
 * A joint profile as a curve, written for the mesh alone and sharing nothing with the library's own geometry: depth at a distance from the
 * middle, its inverse, and points spaced by arc length.
 *
 * @param kind  the shape
 * @param width width of the joint
 * @param size  depth, recess, sagitta or opening angle in radians
 */
record GrooveCurve(JointProfile.Kind kind, double width, double size) {
    /** A point of the curve: distance from the middle and depth. */
    record Node(double u, double depth) {}

    boolean isTooled() {
        return kind == JointProfile.Kind.V || kind == JointProfile.Kind.CONCAVE || kind == JointProfile.Kind.HALF_ROUND;
    }

    double deepest() {
        return switch (kind) {
            case FLUSH -> 0;
            case V -> width / 2 * Math.cos(size / 2) / Math.sin(size / 2);
            case HALF_ROUND -> width / 2;
            default -> size;
        };
    }

    /** Radius of the circle through both arrises and the deepest point. */
    private double radius() {
        double g = deepest();
        return g / 2 + width * width / (8 * g);
    }

    double depth(double u) {
        return switch (kind) {
            case FLUSH -> 0;
            case RAKED -> size;
            case V -> deepest() * (1 - 2 * Math.abs(u) / width);
            case CONCAVE, HALF_ROUND -> Math.max(0, deepest() - radius() + Math.sqrt(Math.max(0, radius() * radius() - u * u)));
            case STRUCK -> size * (0.5 - u / width);
            case WEATHERED -> size * (0.5 + u / width);
        };
    }

    /** Distance from the middle where a tooled curve has a depth. */
    double distance(double depth) {
        if (kind == JointProfile.Kind.V) {
            return width / 2 * (1 - depth / deepest());
        }
        double toCentre = radius() - deepest() + depth;
        return Math.min(width / 2, Math.sqrt(Math.max(0, (radius() - toCentre) * (radius() + toCentre))));
    }

    /** Depths from the arris to the middle, spaced by arc length. */
    List<Double> levels(int n) {
        List<Double> levels = new ArrayList<>();
        double half = Math.asin(Math.min(1, width / 2 / radius()));
        if (kind != JointProfile.Kind.V && deepest() > width / 2 * (1 - 1e-12)) {
            half = Math.PI / 2;
        }
        for (int i = 0; i <= n; i++) {
            double share = (double) i / n;
            levels.add(kind == JointProfile.Kind.V
                    ? deepest() * share
                    : i == n ? deepest() : Math.max(0, deepest() - radius() * (1 - Math.cos(half * (1 - share)))));
        }
        levels.set(0, 0.0);
        return levels;
    }

    /** The curve between the arrises without square sides, from -width/2 to width/2; u grows up the wall or to the right. */
    List<Node> smooth(int n) {
        List<Node> nodes = new ArrayList<>();
        if (!isTooled()) {
            nodes.add(new Node(-width / 2, depth(-width / 2)));
            nodes.add(new Node(width / 2, depth(width / 2)));
            return nodes;
        }
        List<Double> levels = levels(n);
        for (double level : levels) {
            nodes.add(new Node(-distance(level), level));
        }
        nodes.set(nodes.size() - 1, new Node(0, deepest()));
        for (int i = levels.size() - 2; i >= 0; i--) {
            nodes.add(new Node(distance(levels.get(i)), levels.get(i)));
        }
        return nodes;
    }
}
