package io.github.bedjoint.patterns;

import java.util.List;

/** Decides whether given rolls can hold all panels: quick plans, then prices, then a dive, then everything. */
final class RollFit {

    /** The answer. */
    enum End {
        /** They can; see {@link #patterns}. */
        FITS,
        /** They cannot: see {@link #prices}. */
        OVERPRICED,
        /** They cannot: everything was tried. */
        EXHAUSTED,
        /** Not decided within the work. */
        UNSURE
    }

    private static final long SHORT_SEARCH = 300_000;
    private static final long LEAST_LONG_SEARCH = 20_000_000;
    private static final long MOST_LONG_SEARCH = 100_000_000;
    private static final long DIVE = 110_000_000;

    private final Model exact;
    private final PatternPool pool;
    private final List<Prices> lists;
    private final Work work;
    private List<Pattern> patterns = List.of();
    private Prices prices = new Prices(new long[0], new long[0]);

    RollFit(Model exact, PatternPool pool, List<Prices> lists, Work work) {
        this.exact = exact;
        this.pool = pool;
        this.lists = lists;
        this.work = work;
    }

    List<Pattern> patterns() {
        return patterns;
    }

    Prices prices() {
        return prices;
    }

    End run() {
        Greedy greedy = new Greedy(exact, work);
        patterns = greedy.best(greedy.lengthPrices(), 2, 0).rolls();
        if (!patterns.isEmpty()) {
            return End.FITS;
        }
        PatternLp lp = new PatternLp(exact, pool, work);
        PatternLp.End end = lp.solve();
        if (end == PatternLp.End.UNCOVERED) {
            prices = Prices.of(lp.price, exact, new Knapsack(exact, work)).atMost(lp.held);
            return End.OVERPRICED;
        }
        End tried = complete(SHORT_SEARCH, false);
        if (tried != End.UNSURE) {
            return tried;
        }
        if (end == PatternLp.End.SOLVED) {
            Work part = work.part(DIVE);
            patterns = new Dive(exact, pool, part).run(3);
            work.take(part);
            if (!patterns.isEmpty()) {
                return End.FITS;
            }
        }
        // With few distinct panels the relaxed problem is quick and a complete search has a chance.
        long distinct = exact.items();
        long most = Math.min(MOST_LONG_SEARCH, 100_000_000_000L / (distinct * distinct));
        return complete(Math.max(LEAST_LONG_SEARCH, most), true);
    }

    private End complete(long most, boolean deep) {
        Work part = work.part(most);
        Completion completion = new Completion(exact, lists, pool, deep, part);
        Completion.End end = completion.run();
        work.take(part);
        if (end == Completion.End.FITS) {
            patterns = completion.patterns();
            return End.FITS;
        }
        return end == Completion.End.IMPOSSIBLE ? End.EXHAUSTED : End.UNSURE;
    }
}
