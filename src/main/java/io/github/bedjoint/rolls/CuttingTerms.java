package io.github.bedjoint.rolls;

/**
 * How a shop cuts: what each roll loses, and which rules a plan keeps.
 *
 * <p>On one roll the usable length is length - lead - tail. Neighbouring pieces keep the gap, one behind the other and side by side;
 * n pieces in a line need the sum of their lengths and n - 1 gaps.
 *
 * @param leadSteps lost at the start of each roll opened, in steps of 12.5 micrometres
 * @param tailSteps lost at the core of each roll, in steps
 * @param gapSteps between neighbouring pieces (space, cut line, label strip), in steps
 * @param remnants what a remnant is worth
 * @param lots whether walls keep to one lot
 * @param cuts the cuts that may be needed; whether panels may lie side by side
 */
public record CuttingTerms(
        long leadSteps, long tailSteps, long gapSteps, RemnantRule remnants, LotRule lots, CutKind cuts) {

    /**
     * Checks the terms.
     *
     * @param leadSteps as above
     * @param tailSteps as above
     * @param gapSteps as above
     * @param remnants as above
     * @param lots as above
     * @param cuts as above
     * @throws io.github.bedjoint.units.RefusedException if a length is negative or above 800,000,000 steps
     */
    public CuttingTerms {
        Limits.between("lead", leadSteps, 0, Limits.MAX_LENGTH, "steps");
        Limits.between("tail", tailSteps, 0, Limits.MAX_LENGTH, "steps");
        Limits.between("gap", gapSteps, 0, Limits.MAX_LENGTH, "steps");
    }

    /**
     * Terms under which panels may lie side by side in any way.
     *
     * @param leadSteps as above
     * @param tailSteps as above
     * @param gapSteps as above
     * @param remnants as above
     * @param lots as above
     * @throws io.github.bedjoint.units.RefusedException if a length is negative or above 800,000,000 steps
     */
    public CuttingTerms(long leadSteps, long tailSteps, long gapSteps, RemnantRule remnants, LotRule lots) {
        this(leadSteps, tailSteps, gapSteps, remnants, lots, CutKind.FREE);
    }

    /**
     * Nothing lost, remnants worth nothing, any lot anywhere, panels side by side in any way.
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

    /**
     * The same under another rule of lots.
     *
     * @param rule the rule
     * @return terms
     */
    public CuttingTerms withLots(LotRule rule) {
        return new CuttingTerms(leadSteps, tailSteps, gapSteps, remnants, rule, cuts);
    }

    /**
     * The same with other cuts allowed.
     *
     * @param kind the cuts that may be needed
     * @return terms
     */
    public CuttingTerms withCuts(CutKind kind) {
        return new CuttingTerms(leadSteps, tailSteps, gapSteps, remnants, lots, kind);
    }
}
