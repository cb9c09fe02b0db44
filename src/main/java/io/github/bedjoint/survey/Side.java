package io.github.bedjoint.survey;

/** A side of a wall as one stands before it. */
public enum Side {
    /** Edges that face left. */
    LEFT,
    /** Edges that face right. */
    RIGHT,
    /** Edges that face down, sloped ones too. */
    BOTTOM,
    /** Edges that face up, sloped ones too. */
    TOP;

    /**
     * The side across.
     *
     * @return LEFT for RIGHT, TOP for BOTTOM, and back
     */
    public Side opposite() {
        return switch (this) {
            case LEFT -> RIGHT;
            case RIGHT -> LEFT;
            case BOTTOM -> TOP;
            case TOP -> BOTTOM;
        };
    }

    /** The side that the outward normal of an edge faces; the outline runs counter-clockwise. */
    static Side facing(Point from, Point to) {
        long dx = to.xSteps() - from.xSteps();
        if (dx != 0) {
            return dx > 0 ? BOTTOM : TOP;
        }
        return to.ySteps() > from.ySteps() ? RIGHT : LEFT;
    }
}
