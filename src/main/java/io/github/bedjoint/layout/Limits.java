package io.github.bedjoint.layout;

/** Sizes a layout keeps to, in steps: the overlap (0: the film's least), the least width on the wall of a panel beside a seam, the greatest cut length. */
record Limits(long overlap, long leastSliver, long longest, boolean joins) {
    /** Longer than any panel. */
    static final long ANY_LENGTH = Long.MAX_VALUE / 4;

    /** The least width on the wall of a panel beside a seam; twice the overlap, so that never three panels lie on each other. */
    long least(long lap) {
        return Math.max(leastSliver, 2 * lap);
    }

    Limits joined() {
        return new Limits(overlap, leastSliver, longest, true);
    }

    Limits ofAnyLength() {
        return new Limits(overlap, leastSliver, ANY_LENGTH, joins);
    }
}
