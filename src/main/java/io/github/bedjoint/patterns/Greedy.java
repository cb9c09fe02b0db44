package io.github.bedjoint.patterns;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Builds plans roll by roll: each time the filling that is cheapest for what it holds at the current prices; then
 * raises the prices of panels that ended in wasteful rolls, and starts again.
 */
final class Greedy {

    /** A full set of rolls and its cost. */
    record Plan(List<Pattern> rolls, long cost) {}

    private static final long SCALE = 1 << 20;

    /** An almost empty roll does not make its panels dearer than this many times. */
    private static final double MAX_LOSS = 8;

    /** Of a pattern that could be cut very often, this part is cut at once. */
    private static final int PART = 16;

    private final Model model;
    private final Work work;
    private final Knapsack knapsack;

    Greedy(Model model, Work work) {
        this.model = model;
        this.work = work;
        this.knapsack = new Knapsack(model, work);
    }

    /** Prices in proportion to length, the longest panel at 2^20 or so. */
    long[] lengthPrices() {
        long[] price = new long[model.items()];
        double longest = model.size[0];
        for (int i = 0; i < price.length; i++) {
            price[i] = Math.max(1, Math.round(SCALE * Math.pow(model.size[i] / longest, 1.04)));
        }
        return price;
    }

    /**
     * The cheapest of some plans.
     *
     * @param start first prices
     * @param rounds plans to build at most
     * @param enough a plan of this cost is not improved
     * @return a plan, or one without rolls if none was found
     */
    Plan best(long[] start, int rounds, long enough) {
        long[] price = start.clone();
        Plan best = new Plan(List.of(), Long.MAX_VALUE);
        for (int k = 0; k < rounds && best.cost > enough && (k == 0 || !work.isOver()); k++) {
            Plan plan = build(price, model.demand, model.supply, best.cost);
            if (plan.cost < best.cost) {
                best = plan;
            }
        }
        return best;
    }

    /**
     * One plan; adjusts the prices for the next one.
     *
     * @param supply rolls that may be opened of each kind
     * @return the plan, or one of cost {@link Long#MAX_VALUE} if it is not cheaper than {@code under}
     */
    Plan build(long[] price, int[] demand, int[] supply, long under) {
        int[] open = demand.clone();
        int[] left = supply.clone();
        List<Pattern> rolls = new ArrayList<>();
        Plan best = new Plan(List.of(), under);
        long cost = 0;
        while (!isEmpty(open) && cost < best.cost) {
            int last = cheapestForAll(open, left);
            if (last >= 0 && cost + model.cost[last] < best.cost) {
                List<Pattern> done = new ArrayList<>(rolls);
                done.add(new Pattern(last, open.clone()));
                best = new Plan(done, cost + model.cost[last]);
            }
            Pattern next = cheapestFilling(price, open, left);
            if (next.type() < 0) {
                break;
            }
            adjust(price, next);
            int times = left[model.kind[next.type()]];
            for (int i = 0; i < open.length; i++) {
                times = next.counts()[i] == 0 ? times : Math.min(times, open[i] / next.counts()[i]);
            }
            times = Math.max(1, times / PART);
            for (int i = 0; i < open.length; i++) {
                open[i] -= times * next.counts()[i];
            }
            rolls.addAll(Collections.nCopies(times, next));
            cost += times * model.cost[next.type()];
            left[model.kind[next.type()]] -= times;
        }
        if (isEmpty(open) && cost < best.cost) {
            best = new Plan(rolls, cost);
        }
        return best.rolls.isEmpty() ? new Plan(List.of(), Long.MAX_VALUE) : best;
    }

    private Pattern cheapestFilling(long[] price, int[] open, int[] left) {
        Pattern best = new Pattern(-1, new int[0]);
        double bestRatio = Double.POSITIVE_INFINITY;
        for (int r = 0; r < model.types(); r++) {
            if (left[model.kind[r]] > 0) {
                long value = knapsack.fill(r, price, open, 0, Knapsack.Effort.GOOD);
                // Among free rolls the fuller one is better, hence the small fixed part.
                double ratio = (model.cost[r] + 1e-6) / value;
                if (value > 0 && ratio < bestRatio) {
                    bestRatio = ratio;
                    best = new Pattern(r, knapsack.pattern.clone());
                }
            }
        }
        return best;
    }

    private int cheapestForAll(int[] open, int[] left) {
        long load = model.load(open);
        int best = -1;
        for (int r = 0; r < model.types(); r++) {
            if (left[model.kind[r]] > 0 && load <= model.cap[r] && (best < 0 || model.cost[r] < model.cost[best])) {
                boolean fits = true;
                for (int i = 0; i < open.length; i++) {
                    fits &= open[i] == 0 || model.fits(i, r);
                }
                best = fits ? r : best;
            }
        }
        return best;
    }

    /** Moves the price of each panel used towards its share of the roll, waste included. */
    private void adjust(long[] price, Pattern used) {
        long load = model.load(used.counts());
        double loss = Math.min(MAX_LOSS, (double) model.cap[used.type()] / load);
        double longest = model.size[0];
        for (int i = 0; i < price.length; i++) {
            if (used.counts()[i] > 0) {
                double worth = SCALE * Math.pow(model.size[i] / longest, 1.04) * loss;
                double weight = 0.7;
                price[i] = Math.max(1, Math.round(weight * price[i] + (1 - weight) * worth));
            }
        }
    }

    private static boolean isEmpty(int[] open) {
        for (int d : open) {
            if (d > 0) {
                return false;
            }
        }
        return true;
    }
}
