package io.github.bedjoint.patterns;

/** Whole-number prices of the panels of a model, and what a roll of each type holds at most at these prices. */
public record Prices(long[] price, long[] held) {

    /** Finds out what each type of roll holds. */
    public static Prices of(long[] price, Model model, Knapsack knapsack) {
        long[] held = new long[model.types()];
        for (int r = 0; r < held.length; r++) {
            knapsack.fill(r, price, model.demand, 0, Knapsack.Effort.BEST);
            held[r] = knapsack.upper;
        }
        return new Prices(price.clone(), held);
    }

    /** The same with what is known of the rolls from elsewhere, if that is less. */
    Prices atMost(long[] known) {
        long[] least = held.clone();
        for (int r = 0; r < least.length; r++) {
            least[r] = Math.min(least[r], known[r]);
        }
        return new Prices(price, least);
    }

    long priceOf(int[] panels) {
        long sum = 0;
        for (int i = 0; i < price.length; i++) {
            sum += price[i] * panels[i];
        }
        return sum;
    }

    public RollCounts.Row row(Model model) {
        return new RollCounts.Row(held, priceOf(model.demand));
    }
}
