package io.github.bedjoint.rolls;

import java.util.List;

/**
 * One roll of a plan with its pieces.
 *
 * @param stockId the {@link Stock} row it is taken from
 * @param pieces ids of the cuts in cutting order, a cut as often as it is cut from this roll
 * @param usedSteps lengths of the pieces and the gaps between them, in steps of 12.5 micrometres
 * @param remnantSteps usable length left behind the last piece, in steps
 * @param credit what the remnant is worth under the {@link RemnantRule}, in minor money units
 */
public record OpenedRoll(String stockId, List<String> pieces, long usedSteps, long remnantSteps, long credit) {

    /**
     * Copies the list.
     *
     * @param stockId as above
     * @param pieces as above
     * @param usedSteps as above
     * @param remnantSteps as above
     * @param credit as above
     */
    public OpenedRoll {
        pieces = List.copyOf(pieces);
    }
}
