package io.github.bedjoint.job;

import io.github.bedjoint.film.RollOffer;
import io.github.bedjoint.rolls.RollPlan;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * What rolls cost as the price counts them: in whole cartons and at least the minimum order. Amounts are in minor units of money.
 *
 * @param offers the rolls on offer
 */
record OrderedRolls(List<RollOffer> offers) {
    private static final int MOST = 1_000_000;

    /** What is ordered for a plan, less what its remnants are worth by the rule that it was planned under. */
    long cost(RollPlan plan) {
        Map<String, Integer> counts = RollOrder.counts(plan);
        return plan.cost() + offers.stream().mapToLong(offer -> price(offer) * RollOrder.quantity(offer, counts.getOrDefault(offer.id(), 0)).left()).sum();
    }

    /**
     * What is ordered at least for any plan of the same cuts: its rolls cost the plan's bound or more, and are of one offer alone, as many as
     * cost so much, or of two offers at least, one of each or more. Where remnants are worth something the bound stands as it is.
     */
    long atLeast(RollPlan plan) {
        long bound = plan.lowerBound();
        if (plan.cuts().isEmpty() || plan.terms().remnants().percent() > 0) {
            return bound;
        }
        long alone = there().mapToLong(offer -> ordered(offer, fewest(offer, bound))).min().orElse(bound);
        long two = there().count() < 2 ? alone : there().mapToLong(offer -> ordered(offer, 1)).sorted().limit(2).sum();
        return Math.max(bound, Math.min(alone, two));
    }

    /** What is ordered at least where any roll is opened. */
    long leastOrder() {
        return there().mapToLong(offer -> ordered(offer, 1)).min().orElse(0);
    }

    private Stream<RollOffer> there() {
        return offers.stream().filter(offer -> offer.available() != 0);
    }

    /** The fewest rolls of an offer that cost so much; not more than can be ordered, which only lowers the bound. */
    private static int fewest(RollOffer offer, long bound) {
        return (int) Math.max(1, Math.min(MOST, (bound - 1) / Math.max(1, price(offer)) + 1));
    }

    private static long ordered(RollOffer offer, int needed) {
        return price(offer) * RollOrder.quantity(offer, needed).ordered();
    }

    private static long price(RollOffer offer) {
        return offer.price().getAmountMinorLong();
    }
}
