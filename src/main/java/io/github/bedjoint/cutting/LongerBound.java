package io.github.bedjoint.cutting;

import io.github.bedjoint.bounds.CheapestRolls;
import io.github.bedjoint.bounds.ModelMaker;
import io.github.bedjoint.patterns.Knapsack;
import io.github.bedjoint.patterns.Model;
import io.github.bedjoint.patterns.Prices;
import io.github.bedjoint.patterns.RollCounts;
import io.github.bedjoint.patterns.Work;
import io.github.bedjoint.rolls.Cut;
import io.github.bedjoint.rolls.OpenedRoll;
import io.github.bedjoint.rolls.PriceList;
import io.github.bedjoint.rolls.RollPlan;
import io.github.bedjoint.rolls.Stock;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.IntStream;

/** What the prices of a certificate say about the same panels on longer rolls. */
final class LongerBound {
    private static final long WORK = 2_000_000;

    private LongerBound() {}

    /**
     * A lower bound for other rolls by the same prices: what a roll holds of them is worked out anew.
     *
     * @return the bound, at most the cost of the plan; empty where prices are of lots or of panels side by side
     */
    static OptionalLong cost(RollPlan plan, List<Stock> other) {
        List<PriceList> lists = plan.certificate().priceLists();
        if (lists.isEmpty() || !lists.stream().allMatch(list -> list.across().isInLine())
                || SideBySide.concerns(plan.cuts(), other, plan.terms())) {
            return OptionalLong.empty();
        }
        List<Cut> cuts = plan.cuts();
        ModelMaker maker = new ModelMaker(cuts, other, plan.terms());
        Model types = maker.model;
        int[] order = IntStream.range(0, cuts.size())
                .boxed()
                .sorted(Comparator.<Integer>comparingLong(c -> -cuts.get(c).lengthSteps()))
                .mapToInt(c -> c)
                .toArray();
        Model line = new Model(
                IntStream.of(order).mapToLong(c -> cuts.get(c).lengthSteps() + plan.terms().gapSteps()).toArray(),
                IntStream.of(order).mapToLong(c -> cuts.get(c).widthSteps()).toArray(),
                IntStream.of(order).map(c -> cuts.get(c).quantity()).toArray(),
                maker.room, types.typeWidth, types.cost, types.kind, types.supply);
        Work work = new Work(WORK);
        RollCounts counts = new RollCounts(types);
        for (PriceList list : lists) {
            long[] price = IntStream.of(order).mapToLong(c -> list.prices().get(c)).toArray();
            counts.add(Prices.of(price, line, new Knapsack(line, work)).row(line));
        }
        int[] next = counts.next(plan.cost(), work);
        if (work.isOver()) {
            return OptionalLong.empty();
        }
        return OptionalLong.of(next.length == 0 ? plan.cost() : counts.cost(next));
    }

    /**
     * What so much more of each roll opened would be worth if panels of any length were at hand: prices scaled so that all panels are worth
     * the lower bound, and what a roll holds of them spread over its usable length.
     *
     * @return minor units of money, or empty where no single price list stands for the bound
     */
    static Optional<BigDecimal> rate(RollPlan plan, long moreSteps) {
        if (!plan.isFeasible() || plan.certificate().priceLists().isEmpty()) {
            return Optional.empty();
        }
        PriceList list = strongest(plan);
        BigInteger worth = CheapestRolls.worth(plan.cuts(), list);
        if (worth.signum() == 0) {
            return Optional.empty();
        }
        BigDecimal sum = BigDecimal.ZERO;
        for (OpenedRoll roll : plan.rolls()) {
            int row = IntStream.range(0, plan.stock().size()).filter(s -> plan.stock().get(s).id().equals(roll.stockId())).findFirst().orElseThrow();
            BigInteger held = BigInteger.valueOf(list.held().get(row).get(0)).min(worth);
            BigInteger value = BigInteger.valueOf(plan.lowerBound()).multiply(held).multiply(BigInteger.valueOf(moreSteps));
            BigInteger per = worth.multiply(BigInteger.valueOf(plan.terms().usableSteps(plan.stock().get(row))));
            sum = sum.add(new BigDecimal(value).divide(new BigDecimal(per), 6, RoundingMode.HALF_UP));
        }
        return Optional.of(sum.setScale(4, RoundingMode.HALF_UP));
    }

    /** The price list that alone shows the highest bound, the first one where several do. */
    private static PriceList strongest(RollPlan plan) {
        PriceList best = plan.certificate().priceLists().get(0);
        long most = -1;
        for (PriceList list : plan.certificate().priceLists()) {
            CheapestRolls alone = new CheapestRolls(plan.cuts(), plan.stock(), plan.terms());
            alone.add(list);
            long cost = alone.next().choice().stream().mapToLong(CheapestRolls.Choice::cost).findFirst().orElse(0);
            if (cost > most && CheapestRolls.worth(plan.cuts(), list).signum() > 0) {
                most = cost;
                best = list;
            }
        }
        return best;
    }
}
