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
    static Optional<List<Strip>> in(Run run, Fit fit, long least, long mostOverlap) {
        List<Strip> strips = switch (fit) {
            case EQUALISED -> equal(run);
            case WIDER_OVERLAPS -> spread(run, least, mostOverlap);
            default -> full(run, least);
        };
        // A panel alone is no sliver, however narrow the wall is.
        return strips.size() == 1 || narrowest(run, strips) >= least ? Optional.of(strips) : Optional.empty();
    }

    /** Full panels; a sliver at the end takes what it lacks from its neighbour, and from all where that is not enough. */
    private static List<Strip> full(Run run, long least) {
        List<Strip> strips = plain(run);
        int n = strips.size();
        if (n > 1 && run.wallTo() - strips.get(n - 1).from() < least) {
            long begin = run.wallTo() - least;
            strips.set(n - 2, new Strip(strips.get(n - 2).from(), begin + run.overlap()));
            strips.set(n - 1, new Strip(begin, run.to()));
        }
        return n == 1 || run.fits(strips) && narrowest(run, strips) >= least ? strips : equal(run);
    }

    /** Full panels, whatever is left for the last. */
    private static List<Strip> plain(Run run) {
        List<Strip> strips = new ArrayList<>();
        long begin = run.from();
        for (int i = 1; i < run.count(); i++) {
            strips.add(new Strip(begin, run.end(begin)));
            begin = run.end(begin) - run.overlap();
        }
        strips.add(new Strip(begin, run.to()));
        return strips;
    }

    /** Panels of one cut width; where it does not come out even, the first ones are a step wider. */
    private static List<Strip> equal(Run run) {
        int n = run.count();
        long overlaps = (n - 1) * run.overlap();
        long total = run.to() - run.from() + overlaps + run.line().feed().fedSteps(run.wallTo() - run.wallFrom() + overlaps);
        List<Strip> strips = new ArrayList<>();
        long begin = run.from();
        for (int i = 0; i < n - 1; i++) {
            long end = run.line().end(begin, total / n + (i < total % n ? 1 : 0));
            strips.add(new Strip(begin, end));
            begin = end - run.overlap();
        }
        strips.add(new Strip(begin, run.to()));
        // Film fed in is rounded for each panel, so the last may lack the steps that full panels have.
        return run.fits(strips) ? strips : plain(run);
    }

    /** Full panels whose overlaps share what the last one would be trimmed by, up to the most; equal ones where a sliver is left. */
    private static List<Strip> spread(Run run, long least, long mostOverlap) {
        List<Strip> plain = plain(run);
        int n = plain.size();
        long spare = plain.get(n - 1).from() - run.line().begin(run.to(), run.printable());
        List<Strip> strips = new ArrayList<>();
        long begin = run.from();
        for (int i = 0; i < n; i++) {
            long end = i == n - 1 ? run.to() : run.end(begin);
            strips.add(new Strip(begin, end));
            long share = i == n - 1 ? 0 : spare / (n - 1) + (i < spare % (n - 1) ? 1 : 0);
            begin = end - Math.min(mostOverlap, run.overlap() + share);
        }
        return n == 1 || run.fits(strips) && narrowest(run, strips) >= Math.max(least, 2 * mostOverlap) ? strips : equal(run);
    }

    /** The least width of a panel on the wall, its overlaps included and its bleed not. */
    private static long narrowest(Run run, List<Strip> strips) {
        return strips.stream()
                .mapToLong(strip -> Math.min(strip.to(), run.wallTo()) - Math.max(strip.from(), run.wallFrom()))
                .min()
                .orElseThrow();
    }
}
