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
        int n = run.count();
        long pitch = run.printable() - run.overlap();
        List<Strip> strips = new ArrayList<>();
        for (int i = 0; i < n - 1; i++) {
            strips.add(new Strip(run.from() + i * pitch, run.from() + i * pitch + run.printable()));
        }
        long begin = run.from() + (n - 1) * pitch;
        if (n > 1 && run.wallTo() - begin < least) {
            begin = run.wallTo() - least;
            strips.set(n - 2, new Strip(strips.get(n - 2).from(), begin + run.overlap()));
        }
        strips.add(new Strip(begin, run.to()));
        return n == 1 || narrowest(run, strips) >= least ? strips : equal(run);
    }

    /** Panels of one width; where it does not come out even, the first ones are a step wider. */
    private static List<Strip> equal(Run run) {
        int n = run.count();
        long total = run.to() - run.from() + (n - 1) * run.overlap();
        List<Strip> strips = new ArrayList<>();
        long begin = run.from();
        for (int i = 0; i < n; i++) {
            long end = begin + total / n + (i < total % n ? 1 : 0);
            strips.add(new Strip(begin, end));
            begin = end - run.overlap();
        }
        return strips;
    }

    /** Full panels whose overlaps share what the last one would be trimmed by, up to the most; equal ones where a sliver is left. */
    private static List<Strip> spread(Run run, long least, long mostOverlap) {
        int n = run.count();
        long spare = n * run.printable() - (n - 1) * run.overlap() - (run.to() - run.from());
        List<Strip> strips = new ArrayList<>();
        long begin = run.from();
        for (int i = 0; i < n; i++) {
            long end = i == n - 1 ? run.to() : begin + run.printable();
            strips.add(new Strip(begin, end));
            long share = i == n - 1 ? 0 : spare / (n - 1) + (i < spare % (n - 1) ? 1 : 0);
            begin = end - Math.min(mostOverlap, run.overlap() + share);
        }
        return n == 1 || narrowest(run, strips) >= Math.max(least, 2 * mostOverlap) ? strips : equal(run);
    }

    /** The least width of a panel on the wall, its overlaps included and its bleed not. */
    private static long narrowest(Run run, List<Strip> strips) {
        return strips.stream()
                .mapToLong(strip -> Math.min(strip.to(), run.wallTo()) - Math.max(strip.from(), run.wallFrom()))
                .min()
                .orElseThrow();
    }
}
