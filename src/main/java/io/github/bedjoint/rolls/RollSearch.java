package io.github.bedjoint.rolls;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Searches one job without lots: price lists from below and plans from above, until they meet or the work is used up.
 *
 * <p>The cheapest roll counts that no price list forbids are a lower bound. Whether they suffice is asked of the relaxed
 * problem on exactly these rolls: either its prices forbid them, or a plan on them is looked for and is the cheapest, or
 * a complete search shows that there is none, and the next counts are tried.
 */
final class RollSearch {

    /** What a search found. A bound of {@link LotBound#IMPOSSIBLE} says that no plan exists. */
    record Found(List<Pattern> rolls, long cost, long bound, List<Prices> prices, List<int[]> exhausted) {}

    /** A price list of the model. */
    record Prices(long[] price, long[] held) {}

    private final Model model;
    private final Work work;
    private final RollCounts counts;
    private final Knapsack knapsack;
    private final Greedy greedy;
    private final PatternPool pool = new PatternPool();
    private final List<Prices> prices = new ArrayList<>();
    private final List<int[]> exhausted = new ArrayList<>();
    private Greedy.Plan best = new Greedy.Plan(List.of(), Long.MAX_VALUE);
    private long bound;
    private boolean skipped;

    RollSearch(Model model, Work work) {
        this.model = model;
        this.work = work;
        this.counts = new RollCounts(model);
        this.knapsack = new Knapsack(model, work);
        this.greedy = new Greedy(model, work);
    }

    /** Runs the search. */
    Found run() {
        addPrices(model.size);
        long[] one = new long[model.items()];
        Arrays.fill(one, 1);
        addPrices(one);
        improve(greedy.lengthPrices(), 5);
        nextCounts();
        if (bound < best.cost()) {
            PatternLp lp = new PatternLp(model, pool, work);
            if (lp.solve() == PatternLp.End.SOLVED) {
                addPrices(lp.price);
                improve(lp.price, 10);
            }
            close();
        }
        return new Found(best.rolls(), best.cost(), Math.min(bound, best.cost()), prices, exhausted);
    }

    private void improve(long[] start, int rounds) {
        Greedy.Plan plan = greedy.best(start, rounds, bound);
        if (plan.cost() < best.cost()) {
            best = plan;
        }
    }

    private void close() {
        int[] next = nextCounts();
        while (bound < best.cost() && next.length > 0 && !work.isOver()) {
            RollFit fit = new RollFit(model.exactly(next), pool, prices, work);
            switch (fit.run()) {
                case FITS -> adopt(fit.patterns());
                case OVERPRICED -> addPrices(fit.prices());
                case EXHAUSTED -> exhausted.add(next);
                default -> skipped = true;
            }
            counts.exclude(next);
            next = nextCounts();
        }
    }

    /** Rolls that stay empty are not opened. */
    private void adopt(List<Pattern> patterns) {
        List<Pattern> opened = patterns.stream()
                .filter(p -> model.load(p.counts()) > 0)
                .toList();
        long cost = opened.stream().mapToLong(p -> model.cost[p.type()]).sum();
        if (cost < best.cost()) {
            best = new Greedy.Plan(opened, cost);
        }
    }

    /** The cheapest counts left; raises the bound to their cost while everything cheaper is known to be impossible. */
    private int[] nextCounts() {
        int[] next = counts.next(best.cost(), work);
        if (!work.isOver() && !skipped) {
            bound = Math.max(bound, next.length == 0 ? best.cost() : counts.cost(next));
        }
        return next;
    }

    private void addPrices(long[] price) {
        long[] held = new long[model.types()];
        for (int r = 0; r < held.length; r++) {
            knapsack.fill(r, price, model.demand, 0, Knapsack.Effort.BEST);
            held[r] = knapsack.upper;
        }
        long needed = 0;
        for (int i = 0; i < price.length; i++) {
            needed += price[i] * model.demand[i];
        }
        counts.add(new RollCounts.Row(held, needed));
        prices.add(new Prices(price.clone(), held));
    }
}
