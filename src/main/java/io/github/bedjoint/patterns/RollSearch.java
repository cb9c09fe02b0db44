package io.github.bedjoint.patterns;

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
public final class RollSearch {

    /** Work on the relaxed problem of the whole job. */
    private static final long RELAXED = 120_000_000;

    /** Price lists of a plain job are few; where they are many, all stay in the certificate. */
    private static final int FEW = 20;

    /** Coarsest first: prices in whole minor units, then in thousandths. */
    private static final long[] UNITS = {1, 1000};

    /** What a search found. A bound of {@link Long#MAX_VALUE} says that no plan exists. */
    public record Found(
            List<Pattern> rolls, long cost, long bound, long boundByPrices, List<Prices> prices, List<int[]> exhausted) {}

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
    private long boundByPrices = Long.MAX_VALUE;
    private boolean skipped;

    public RollSearch(Model model, Work work) {
        this.model = model;
        this.work = work;
        this.counts = new RollCounts(model);
        this.knapsack = new Knapsack(model, work);
        this.greedy = new Greedy(model, work);
    }

    /** Runs the search. */
    public Found run() {
        improve(greedy.lengthPrices(), 1);
        add(Prices.of(model.size, model, knapsack));
        long[] one = new long[model.items()];
        Arrays.fill(one, 1);
        add(Prices.of(one, model, knapsack));
        nextCounts();
        improve(greedy.lengthPrices(), 5);
        if (bound < best.cost()) {
            relax();
            close();
        }
        bound = Math.min(bound, best.cost());
        if (exhausted.isEmpty()) {
            dropIdlePrices();
        }
        return new Found(
                best.rolls(), best.cost(), bound, Math.min(bound, boundByPrices), List.copyOf(prices), exhausted);
    }

    /** Solves the relaxed problem and keeps its prices, and rounder ones if they do not weaken the bound. */
    private void relax() {
        Work part = work.part(RELAXED);
        PatternLp lp = new PatternLp(model, pool, part);
        boolean solved = lp.solve() == PatternLp.End.SOLVED;
        work.take(part);
        if (!solved) {
            return;
        }
        Prices fine = Prices.of(lp.price, model, knapsack).atMost(lp.held);
        long finest = counts.boundWith(fine.row(model), best.cost(), work);
        for (long parts : UNITS) {
            Prices round = Prices.of(lp.pricesIn(parts), model, knapsack);
            if (counts.boundWith(round.row(model), best.cost(), work) == finest) {
                add(round);
                break;
            }
        }
        add(fine);
        improve(lp.price, 10);
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
                case OVERPRICED -> {
                    add(fit.prices());
                    skipped |= !counts.forbids(next);
                }
                case EXHAUSTED -> {
                    boundByPrices = exhausted.isEmpty() ? bound : boundByPrices;
                    exhausted.add(next);
                }
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

    private void add(Prices list) {
        counts.add(list.row(model));
        prices.add(list);
    }

    /** Leaves out price lists that the bound does not need, the last and finest first. */
    private void dropIdlePrices() {
        for (int k = prices.size() - 1; k >= 0 && prices.size() <= FEW && !work.isOver(); k--) {
            RollCounts without = new RollCounts(model);
            for (int q = 0; q < prices.size(); q++) {
                if (q != k) {
                    without.add(prices.get(q).row(model));
                }
            }
            int[] cheaper = without.next(bound, work);
            if (cheaper.length == 0 && !work.isOver()) {
                prices.remove(k);
            }
        }
    }
}
