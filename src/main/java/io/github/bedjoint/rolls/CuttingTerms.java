package io.github.bedjoint.rolls;

/**
 * How a shop cuts: what each roll loses, and which rules a plan keeps.
 *
 * <p>On one roll the usable length is length - lead - tail, and n pieces need the sum of their lengths and n - 1 gaps.
 *
 * @param leadSteps lost at the start of each roll opened, in steps of 12.5 micrometres
 * @param tailSteps lost at the core of each roll, in steps
 * @param gapSteps between neighbouring pieces (space, cut line, label strip), in steps
 * @param remnants what a remnant is worth
 * @param lots whether walls keep to one lot
 */
public record CuttingTerms(long leadSteps, long tailSteps, long gapSteps, RemnantRule remnants, LotRule lots) {

    /**
     * Checks the terms.
     *
     * @param leadSteps as above
     * @param tailSteps as above
     * @param gapSteps as above
     * @param remnants as above
     * @param lots as above
     * @throws io.github.bedjoint.units.RefusedException if a length is negative or above 800,000,000 steps
     */
    public CuttingTerms {
        Limits.between("lead", leadSteps, 0, Limits.MAX_LENGTH, "steps");
        Limits.between("tail", tailSteps, 0, Limits.MAX_LENGTH, "steps");
        Limits.between("gap", gapSteps, 0, Limits.MAX_LENGTH, "steps");
    }

    /**
     * Nothing lost, remnants worth nothing, any lot anywhere.
     *
     * @return the plainest terms
     */
    public static CuttingTerms plain() {
        return new CuttingTerms(0, 0, 0, RemnantRule.none(), LotRule.ANY);
    }

    /**
     * The length of a roll that panels can be cut from.
     *
     * @param stock the roll
     * @return usable length in steps of 12.5 micrometres, negative if lead and tail are longer than the roll
     */
    public long usableSteps(Stock stock) {
        return stock.lengthSteps() - leadSteps - tailSteps;
    }
}
