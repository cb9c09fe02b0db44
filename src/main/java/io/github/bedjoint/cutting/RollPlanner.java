package io.github.bedjoint.cutting;

import io.github.bedjoint.patterns.Work;
import io.github.bedjoint.rolls.Cut;
import io.github.bedjoint.rolls.CutKind;
import io.github.bedjoint.rolls.CuttingTerms;
import io.github.bedjoint.rolls.Limits;
import io.github.bedjoint.rolls.LotRule;
import io.github.bedjoint.rolls.RemnantRule;
import io.github.bedjoint.rolls.RollPlan;
import io.github.bedjoint.rolls.Stock;
import io.github.bedjoint.units.RefusedException;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Finds the cheapest rolls to open for a set of panels, with a lower bound that can be checked.
 *
 * <p>Defaults: nothing lost at the ends of a roll, no gap, remnants worth nothing, any lot for any wall, narrow panels side by side
 * in any way, and a work limit of {@value #DEFAULT_WORK}. The limit counts steps of the search, never time: the same job gives the same plan
 * everywhere. Immutable and safe to share.
 */
public final class RollPlanner {

    /** Work limit of {@link #withDefaults()}: a second or two on a machine of 2020. */
    public static final long DEFAULT_WORK = 400_000_000L;

    /** Most units of a remnant in one roll. */
    static final int MAX_LEVELS = 200;

    private final CuttingTerms terms;
    private final long workLimit;

    private RollPlanner(CuttingTerms terms, long workLimit) {
        this.terms = terms;
        this.workLimit = workLimit;
    }

    /**
     * The planner described above.
     *
     * @return a planner
     */
    public static RollPlanner withDefaults() {
        return new RollPlanner(CuttingTerms.plain(), DEFAULT_WORK);
    }

    /**
     * Loses a length at the start of each roll.
     *
     * @param steps length in steps of 12.5 micrometres, 0 to 800,000,000
     * @return a planner
     * @throws RefusedException if the length is out of its range
     */
    public RollPlanner withLead(long steps) {
        return withTerms(
                new CuttingTerms(steps, terms.tailSteps(), terms.gapSteps(), terms.remnants(), terms.lots(), terms.cuts()));
    }

    /**
     * Loses a length at the core of each roll.
     *
     * @param steps length in steps of 12.5 micrometres, 0 to 800,000,000
     * @return a planner
     * @throws RefusedException if the length is out of its range
     */
    public RollPlanner withTail(long steps) {
        return withTerms(
                new CuttingTerms(terms.leadSteps(), steps, terms.gapSteps(), terms.remnants(), terms.lots(), terms.cuts()));
    }

    /**
     * Leaves a gap between neighbouring pieces.
     *
     * @param steps length in steps of 12.5 micrometres, 0 to 800,000,000
     * @return a planner
     * @throws RefusedException if the length is out of its range
     */
    public RollPlanner withGap(long steps) {
        return withTerms(
                new CuttingTerms(terms.leadSteps(), terms.tailSteps(), steps, terms.remnants(), terms.lots(), terms.cuts()));
    }

    /**
     * Credits remnants.
     *
     * @param rule what a remnant is worth
     * @return a planner
     */
    public RollPlanner withRemnantRule(RemnantRule rule) {
        return withTerms(
                new CuttingTerms(terms.leadSteps(), terms.tailSteps(), terms.gapSteps(), rule, terms.lots(), terms.cuts()));
    }

    /**
     * Sets whether walls keep to one lot.
     *
     * @param rule the rule
     * @return a planner
     */
    public RollPlanner withLotRule(LotRule rule) {
        return withTerms(terms.withLots(rule));
    }

    /**
     * Sets which cuts a plan may need.
     *
     * @param kind {@link CutKind#CROSS} for one panel across the roll, {@link CutKind#GUILLOTINE} for cuts from edge to edge,
     *     {@link CutKind#FREE} for any
     * @return a planner
     */
    public RollPlanner withCuts(CutKind kind) {
        return withTerms(terms.withCuts(kind));
    }

    /**
     * Sets all terms at once.
     *
     * @param all the terms
     * @return a planner
     */
    public RollPlanner withTerms(CuttingTerms all) {
        return new RollPlanner(all, workLimit);
    }

    /**
     * Limits the search.
     *
     * @param steps counted steps, 1 or more; a million take some milliseconds
     * @return a planner
     * @throws RefusedException if the limit is not positive
     */
    public RollPlanner withWorkLimit(long steps) {
        Limits.between("work limit", steps, 1, Long.MAX_VALUE, "steps");
        return new RollPlanner(terms, steps);
    }

    /**
     * Plans a job.
     *
     * @param cuts panels to cut, ids unique; may be empty
     * @param stock rolls that may be opened, ids unique; may be empty
     * @return the plan, or why there is none
     * @throws RefusedException if an id is used twice, there are more than 1,000,000 panels, or the remnant rule
     *     counts in units too small for a roll
     */
    public RollPlan plan(List<Cut> cuts, List<Stock> stock) {
        refuseDoubles("cut id", cuts.stream().map(Cut::id).toList());
        refuseDoubles("stock id", stock.stream().map(Stock::id).toList());
        long pieces = cuts.stream().mapToLong(Cut::quantity).sum();
        Limits.between("all panels", pieces, 0, Limits.MAX_PIECES, "panels");
        refuseFineRemnants(stock);
        Work work = new Work(workLimit);
        return terms.lots() == LotRule.ANY
                ? PlainPlanning.plan(cuts, stock, terms, work)
                : new LotSearch(cuts, stock, terms, work).plan();
    }

    private static void refuseDoubles(String parameter, List<String> ids) {
        Set<String> seen = new HashSet<>();
        for (String id : ids) {
            if (!seen.add(id)) {
                throw new RefusedException(parameter, id, "must be used once only", "Maybe add the quantities up.");
            }
        }
    }

    private void refuseFineRemnants(List<Stock> stock) {
        for (Stock roll : stock) {
            long levels = terms.remnants().percent() == 0 ? 0 : roll.lengthSteps() / terms.remnants().unitSteps();
            Limits.between("remnant units in roll " + roll.id(), levels, 0, MAX_LEVELS, "units");
        }
    }
}
