package io.github.bedjoint.rolls;

import java.util.ArrayList;
import java.util.List;

/** Searches one job without lots: plans from above, price lists from below, until they meet or the work is used up. */
final class RollSearch {

    /** What a search found. */
    record Found(List<Pattern> rolls, long cost, long bound, List<Prices> prices, List<int[]> exhausted) {}

    /** A price list of the model. */
    record Prices(long[] price, long[] held) {}

    private final Model model;
    private final Work work;
    private final RollCounts counts;
    private final Knapsack knapsack;
    private final List<Prices> prices = new ArrayList<>();
    private final List<int[]> exhausted = new ArrayList<>();
    private Greedy.Plan best = new Greedy.Plan(List.of(), Long.MAX_VALUE);

    RollSearch(Model model, Work work) {
        this.model = model;
        this.work = work;
        this.counts = new RollCounts(model);
        this.knapsack = new Knapsack(model, work);
    }

    /** Runs the search. A bound of {@link LotBound#IMPOSSIBLE} says that no plan exists. */
    Found run() {
        addPrices(model.size);
        long[] one = new long[model.items()];
        java.util.Arrays.fill(one, 1);
        addPrices(one);
        long bound = bound(0);
        Greedy greedy = new Greedy(model, work);
        best = greedy.best(greedy.lengthPrices(), 60, bound);
        return new Found(best.rolls(), best.cost(), Math.min(bound, bound), prices, exhausted);
    }

    private void addPrices(long[] price) {
        long[] held = held(price);
        counts.add(new RollCounts.Row(held, needed(price)));
        prices.add(new Prices(price.clone(), held));
    }

    private long bound(long known) {
        int[] next = counts.next(best.cost(), work);
        if (work.isOver()) {
            return known;
        }
        return next.length == 0 ? best.cost() : counts.cost(next);
    }

    private long[] held(long[] price) {
        long[] held = new long[model.types()];
        for (int r = 0; r < held.length; r++) {
            knapsack.fill(r, price, model.demand, 0);
            held[r] = knapsack.upper;
        }
        return held;
    }

    private long needed(long[] price) {
        long sum = 0;
        for (int i = 0; i < price.length; i++) {
            sum += price[i] * model.demand[i];
        }
        return sum;
    }
}
