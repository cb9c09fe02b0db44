package io.github.bedjoint.rolls;

/**
 * One reason why there is no plan.
 *
 * @param reason what is wrong
 * @param cutId the cut concerned, or empty if it is the job as a whole
 * @param neededSteps what the cut or the job needs, in steps of 12.5 micrometres; where panels may lie side by side, the area of the
 *     job as a length of the widest roll
 * @param availableSteps the most that the stock offers of it, in steps
 */
public record Shortage(Reason reason, String cutId, long neededSteps, long availableSteps) {

    /** What stock lacks. */
    public enum Reason {
        /** The cut is wider than every roll. */
        CUT_TOO_WIDE,
        /** The cut is longer than the usable length of every roll that is wide enough. */
        CUT_TOO_LONG,
        /** All rolls together are shorter than all cuts together. */
        STOCK_TOO_SHORT,
        /** The lengths would suffice in total, but no arrangement of the cuts on the rolls at hand exists. */
        NO_ARRANGEMENT,
        /** The search ended without an arrangement and without a proof that there is none. */
        UNDECIDED
    }
}
