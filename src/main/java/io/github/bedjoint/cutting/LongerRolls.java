package io.github.bedjoint.cutting;

import io.github.bedjoint.rolls.Limits;
import io.github.bedjoint.rolls.RemnantRule;
import io.github.bedjoint.rolls.RollPlan;
import io.github.bedjoint.rolls.Stock;
import io.github.bedjoint.rolls.Stop;
import io.github.bedjoint.units.Print;
import io.github.bedjoint.units.UnitStyle;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.LongFunction;
import org.jspecify.annotations.Nullable;

/**
 * What rolls would save that are a little longer at the same price, or from which as much less is lost at the ends; and how much longer
 * they must be until a cheaper plan comes.
 *
 * <p>Whole panels make the cost of a plan go down in jumps, so three things are told apart: what {@linkplain #after() planning again}
 * gives, which is exact where both plans are proven; what the prices of the certificate allow {@linkplain #costByPrices() at least}, which is a bound; and the
 * {@linkplain #rate() rate} at which these prices value a length of roll, which is what a length is worth on the average and no saving at
 * all until a jump comes. Immutable.
 */
public final class LongerRolls {
    private static final long WORK = 10_000_000;
    private static final long FARTHEST = 8_000_000;

    private final RollPlan plan;
    private final long moreSteps;
    private final RollPlan after;
    private final long enoughSteps;
    private final @Nullable RollPlan enough;
    private final boolean least;

    private LongerRolls(RollPlan plan, long moreSteps) {
        this.plan = plan;
        this.moreSteps = moreSteps;
        Search search = new Search(plan);
        this.after = search.at(moreSteps);
        this.enoughSteps = search.first(moreSteps, grain());
        this.enough = enoughSteps > 0 ? search.at(enoughSteps) : null;
        this.least = enough != null && search.isLeast(enoughSteps, grain());
    }

    /** A tenth of the length asked for: to it the first saving is found. */
    private long grain() {
        return Math.max(1, moreSteps / 10);
    }

    /**
     * Plans again.
     *
     * @param plan      a plan, or a job that has none
     * @param moreSteps how much longer every roll is, in steps of 12.5 micrometres, 1 to 8,000,000; a centimetre is 800
     * @return what it would change
     * @throws io.github.bedjoint.units.RefusedException if the length is out of range, or a roll so long is
     */
    public static LongerRolls of(RollPlan plan, long moreSteps) {
        Limits.between("longer by", moreSteps, 1, FARTHEST, "steps");
        return new LongerRolls(plan, moreSteps);
    }

    private static List<Stock> longer(List<Stock> stock, long more) {
        return stock.stream()
                .map(row -> new Stock(row.id(), row.widthSteps(), row.lengthSteps() + more, row.cost(), row.available(), row.lot()))
                .toList();
    }

    /** Plans on longer rolls, each made once. */
    private record Search(RollPlan plan, Map<Long, RollPlan> plans) {
        Search(RollPlan plan) {
            this(plan, new HashMap<>());
        }

        RollPlan at(long more) {
            return plans.computeIfAbsent(
                    more, m -> RollPlanner.withDefaults().withTerms(plan.terms()).withWorkLimit(WORK).plan(plan.cuts(), longer(plan.stock(), m)));
        }

        /** The prices of the certificate forbid every cheaper plan, which needs no planning. */
        private boolean isForbidden(long more) {
            OptionalLong bound = plan.isFeasible() ? LongerBound.cost(plan, longer(plan.stock(), more)) : OptionalLong.empty();
            return bound.isPresent() && bound.getAsLong() >= plan.cost();
        }

        private boolean saves(long more) {
            if (isForbidden(more)) {
                return false;
            }
            RollPlan found = at(more);
            return found.isFeasible() && (!plan.isFeasible() || found.cost() < plan.cost());
        }

        /** Doubles the length until it saves, then halves the last stretch down to the grain; 0 if nothing saves. */
        long first(long start, long grain) {
            long low = 0;
            long high = start;
            long farthest = farthest();
            while (!saves(high)) {
                if (high >= farthest) {
                    return 0;
                }
                low = high;
                high = Math.min(farthest, 2 * high);
            }
            while (high - low > grain) {
                long middle = low + Math.max(1, (high - low) / 2 / grain) * grain;
                if (saves(middle)) {
                    high = middle;
                } else {
                    low = middle;
                }
            }
            return high;
        }

        /** Up to where rolls stay within what the planner takes. */
        private long farthest() {
            RemnantRule rule = plan.terms().remnants();
            long longest = plan.stock().stream().mapToLong(Stock::lengthSteps).max().orElse(0);
            long most = rule.percent() == 0 ? Limits.MAX_LENGTH : Math.min(Limits.MAX_LENGTH, rule.unitSteps() * RollPlanner.MAX_LEVELS);
            return Math.min(FARTHEST, most - longest);
        }

        /** Whether a grain less is proven not to save: without credits for remnants more length never costs more. */
        boolean isLeast(long enough, long grain) {
            if (plan.terms().remnants().percent() > 0) {
                return false;
            }
            if (enough <= grain) {
                return plan.isProven() || plan.stop() == Stop.INFEASIBLE;
            }
            if (isForbidden(enough - grain)) {
                return true;
            }
            RollPlan shorter = at(enough - grain);
            return shorter.stop() == Stop.INFEASIBLE || plan.isFeasible() && shorter.lowerBound() >= plan.cost();
        }
    }

    /**
     * The plan it is compared with.
     *
     * @return as given
     */
    public RollPlan plan() {
        return plan;
    }

    /**
     * How much longer the rolls are in {@link #after}.
     *
     * @return steps
     */
    public long moreSteps() {
        return moreSteps;
    }

    /**
     * The same panels planned on the longer rolls.
     *
     * @return a plan, or why there is none
     */
    public RollPlan after() {
        return after;
    }

    /**
     * What a plan on the longer rolls costs at least by the prices of the certificate, what a longer roll holds of them worked out anew.
     *
     * @return minor units of money, at most the cost of the plan; empty where the prices are of lots or of panels side by side, or there is no plan
     */
    public OptionalLong costByPrices() {
        return plan.isFeasible() ? LongerBound.cost(plan, longer(plan.stock(), moreSteps)) : OptionalLong.empty();
    }

    /**
     * What so much more of each roll opened is worth at the prices of the certificate: all panels together are worth the lower bound, and what
     * a roll holds of that at most is spread evenly over its usable length. It would be earned only if panels of any length were at hand.
     *
     * @return minor units of money with four decimals; empty where the bound is not by prices of the whole job, or there is no plan
     */
    public Optional<BigDecimal> rate() {
        return LongerBound.rate(plan, moreSteps);
    }

    /**
     * How much longer all rolls must be until a cheaper plan is found, or any plan where there is none.
     *
     * @return steps, up to a tenth of {@link #moreSteps()} more than needed; empty if none is found up to 100 m, or up to the longest roll the planner takes
     */
    public OptionalLong enoughSteps() {
        return enough == null ? OptionalLong.empty() : OptionalLong.of(enoughSteps);
    }

    /**
     * The plan on rolls so much longer.
     *
     * @return the cheaper plan, or empty if none is found
     */
    public Optional<RollPlan> enough() {
        return Optional.ofNullable(enough);
    }

    /**
     * Whether it is proven that a length shorter by a tenth of {@link #moreSteps()} does not save anything.
     *
     * @return true if no plan for it is cheaper, as its bound or the prices of the certificate show, and remnants earn no credit, since then more length never costs more
     */
    public boolean isLeast() {
        return least;
    }

    /**
     * What it says, in words.
     *
     * @param style   the reader's units
     * @param amounts how an amount in minor units of money is written
     * @return one or more lines of whole sentences
     */
    public List<String> lines(UnitStyle style, LongFunction<String> amounts) {
        String length = Print.cut(moreSteps, style);
        List<String> lines = new ArrayList<>();
        boolean ends = plan.terms().leadSteps() + plan.terms().tailSteps() >= moreSteps;
        lines.add("Every roll " + length + " longer at the same price" + (ends ? ", or as much less lost at its ends" : "") + "; planned again: " + compared(after, amounts) + "." + byPrices(amounts));
        rate().ifPresent(rate -> lines.add("At the prices of the certificate " + length + " on every roll opened is worth " + rounded(rate, amounts)
                + ": a rate, which is earned only where panels of any length can fill it."));
        if (enough != null) {
            String first = Print.cut(enoughSteps, style);
            lines.add((plan.isFeasible() ? "The first saving comes with " : "A plan comes with ") + first + " more: " + compared(enough, amounts)
                    + (least ? ", and not with " + Print.cut(grain(), style) + " less than that." : "; less was not found to do, nor proven not to."));
        } else {
            lines.add("Longer rolls were not found to " + (plan.isFeasible() ? "save anything." : "give a plan."));
        }
        return lines;
    }

    private String byPrices(LongFunction<String> amounts) {
        OptionalLong bound = costByPrices();
        if (bound.isEmpty()) {
            return "";
        }
        long most = plan.cost() - bound.getAsLong();
        return most == 0 ? " By the prices of the certificate nothing can be saved."
                : " By the prices of the certificate at most " + amounts.apply(most) + " can be saved.";
    }

    private String compared(RollPlan other, LongFunction<String> amounts) {
        if (!other.isFeasible()) {
            return "there is no plan";
        }
        String rolls = Print.count(other.rolls().size(), "roll") + " for " + amounts.apply(other.cost()) + (other.isProven() ? "" : ", not proven the cheapest");
        long less = plan.cost() - other.cost();
        if (!plan.isFeasible()) {
            return rolls;
        }
        return rolls + (less == 0 ? ", the same cost" : less > 0 ? ", " + amounts.apply(less) + " less" : ", " + amounts.apply(-less) + " more");
    }

    private static String rounded(BigDecimal minor, LongFunction<String> amounts) {
        long whole = minor.setScale(0, RoundingMode.HALF_UP).longValueExact();
        return whole == 0 && minor.signum() > 0 ? "less than " + amounts.apply(1) : amounts.apply(whole);
    }

    /** What it says, lengths in metric units and amounts in minor units of money, a line each. */
    @Override
    public String toString() {
        return String.join("\n", lines(UnitStyle.METRIC, Long::toString));
    }
}
