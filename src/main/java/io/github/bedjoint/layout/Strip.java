package io.github.bedjoint.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The width of wall that a panel, or several one above the other, covers.
 *
 * @param from where the film begins, in steps of the frame
 * @param to   where it ends
 */
record Strip(long from, long to) {

    /** The strips of a row, or empty where one of them would be narrower on the wall than the least. */
    static Optional<List<Strip>> in(Run run, Fit fit, long least) {
        long[] ends = fit == Fit.EQUALISED ? equal(run) : full(run, least);
        List<Strip> strips = new ArrayList<>();
        for (int i = 0; i < ends.length; i++) {
            strips.add(new Strip(i == 0 ? run.from() : ends[i - 1] - run.overlap(), ends[i]));
        }
        // A panel alone is no sliver, however narrow the wall is.
        return ends.length == 1 || narrowest(run, ends) >= least ? Optional.of(strips) : Optional.empty();
    }

    /** Full panels; a sliver at the end takes what it lacks from its neighbour, and from all where that is not enough. */
    private static long[] full(Run run, long least) {
        int n = run.count();
        long[] ends = new long[n];
        for (int i = 0; i < n; i++) {
            ends[i] = i == n - 1 ? run.to() : run.from() + run.printable() + i * (run.printable() - run.overlap());
        }
        if (n == 1 || run.wallTo() - ends[n - 2] + run.overlap() >= least) {
            return ends;
        }
        ends[n - 2] = run.wallTo() - least + run.overlap();
        return narrowest(run, ends) >= least ? ends : equal(run);
    }

    /** Panels of one width; where it does not come out even, the first ones are a step wider. */
    private static long[] equal(Run run) {
        int n = run.count();
        long total = run.to() - run.from() + (n - 1) * run.overlap();
        long[] ends = new long[n];
        long begin = run.from();
        for (int i = 0; i < n; i++) {
            ends[i] = begin + total / n + (i < total % n ? 1 : 0);
            begin = ends[i] - run.overlap();
        }
        return ends;
    }

    /** The least width of a panel on the wall, its overlaps included and its bleed not. */
    private static long narrowest(Run run, long[] ends) {
        long least = ends[0] - run.wallFrom();
        for (int i = 1; i < ends.length; i++) {
            least = Math.min(least, Math.min(ends[i], run.wallTo()) - ends[i - 1] + run.overlap());
        }
        return least;
    }
}
