package io.github.bedjoint.layout;

import java.util.List;

/**
 * Film for stretches of a line on the wall: what lies over wall is fed in along the texture, extra film beyond it is not.
 *
 * @param feed  how much is fed in
 * @param shown the stretches of the line that are wall, in order
 */
record FilmLine(Feed feed, List<long[]> shown) {

    /** Film from one place to another. */
    long filmSteps(long from, long to) {
        return to - from + feed.fedSteps(feed.isNone() ? 0 : shownSteps(from, to));
    }

    /** From the first wall between two places to the last. */
    private long shownSteps(long from, long to) {
        long first = to;
        long last = from;
        for (long[] stretch : shown) {
            if (stretch[0] < to && stretch[1] > from) {
                first = Math.min(first, Math.max(from, stretch[0]));
                last = Math.min(to, stretch[1]);
            }
        }
        return Math.max(0, last - first);
    }

    /** The farthest place that a length of film reaches. */
    long end(long from, long film) {
        long reached = from + feed.reachSteps(film);
        long beyond = from + film + 1;
        while (beyond - reached > 1) {
            long middle = Math.floorDiv(reached + beyond, 2L);
            if (filmSteps(from, middle) <= film) {
                reached = middle;
            } else {
                beyond = middle;
            }
        }
        return reached;
    }

    /** The first place from which a length of film reaches another. */
    long begin(long to, long film) {
        long reached = to - feed.reachSteps(film);
        long before = to - film - 1;
        while (reached - before > 1) {
            long middle = Math.floorDiv(reached + before, 2L);
            if (filmSteps(middle, to) <= film) {
                reached = middle;
            } else {
                before = middle;
            }
        }
        return reached;
    }
}
