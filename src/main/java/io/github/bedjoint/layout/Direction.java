package io.github.bedjoint.layout;

/** Which way panels run. */
public enum Direction {
    /** Upright panels, side by side. */
    DROPS,
    /** Level panels, one above the other; each laps over the one below, its edge facing down. */
    BANDS,
    /** Whichever of the two costs less at the planner's rates; of two that cost the same the one with fewer panels, then drops. */
    CHEAPEST
}
