package io.github.bedjoint.layout;

/** How a wall's width is shared out among the panels. */
public enum Fit {
    /** Panels of the full printable width from the starting side on; the last one is trimmed. */
    FULL_WIDTH,
    /** Panels of equal width, to a step. */
    EQUALISED,
    /** As many full panels, their overlaps widened up to the film's most so that as little as possible is trimmed. */
    WIDER_OVERLAPS,
    /** Seams where film, panels, seams and cut-outs together cost least at the planner's rates and its {@link SeamRules} allow them. */
    CHEAPEST
}
