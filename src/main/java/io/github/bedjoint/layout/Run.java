package io.github.bedjoint.layout;

import io.github.bedjoint.units.Measure;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Working;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * A row of panels that overlap one another, without a gap between.
 *
 * @param line      how much film a stretch of the row takes
 * @param from      where the film begins, in steps of the frame
 * @param to        where it ends
 * @param wallFrom  where the wall begins, after the bleed
 * @param wallTo    where the wall ends, before the bleed
 * @param overlap   overlap of two panels
 * @param printable greatest width of a panel
 */
record Run(FilmLine line, long from, long to, long wallFrom, long wallTo, long overlap, long printable) {
    /** Least number of panels side by side. */
    static final Formula PANELS = Formula.of(
            "layout.panels-in-row", "Panels side by side", Symbol.number("n_i", "panels side by side in a row"),
            "max(1, ceil((W + b_1 + b_2 - o) / (p - o)))",
            Source.geometry("each panel after the first covers its width less the overlap"),
            new Symbol("W", Measure.STEPS, "length of wall that the row covers"),
            new Symbol("b_1", Measure.STEPS, "extra film where it begins, as the wall that it would cover"),
            new Symbol("b_2", Measure.STEPS, "extra film where it ends, as the wall that it would cover"),
            new Symbol("o", Measure.STEPS, "overlap"),
            new Symbol("p", Measure.STEPS, "wall that the printable width covers"));

    /** The least number of panels; counted in whole steps, so that a wall that just fits does fit. */
    int count() {
        Feed feed = line.feed();
        long extra = feed.coveredSteps(wallFrom - from) + feed.coveredSteps(to - wallTo);
        return (int) Math.max(1, -Math.floorDiv(overlap - extra - (wallTo - wallFrom), feed.reachSteps(printable) - overlap));
    }

    Working working() {
        Feed feed = line.feed();
        long before = wallFrom - from;
        long behind = to - wallTo;
        return Working.of(
                        PANELS, count(), wallTo - wallFrom, feed.coveredSteps(before), feed.coveredSteps(behind), overlap,
                        feed.reachSteps(printable))
                .because(Stream.of(feed.reachWorkings(printable), feed.coveredWorkings(before), feed.coveredWorkings(behind))
                        .flatMap(Stream::of)
                        .toArray(Working[]::new));
    }

    /** Where a panel of full width ends. */
    long end(long begin) {
        return line.end(begin, printable);
    }

    /** Whether every panel comes out of the printable width. */
    boolean fits(List<Strip> strips) {
        return strips.stream().allMatch(strip -> line.filmSteps(strip.from(), strip.to()) <= printable);
    }

    /** The fewest panels that cover all that is needed: each as wide as may be, a new row wherever one ends in a gap. */
    static List<Run> cover(WallRegions wall, FilmLine line, long overlap, long printable) {
        List<long[]> stretches = wall.stretches();
        List<Run> runs = new ArrayList<>();
        int first = 0;
        while (first < stretches.size()) {
            int last = lastOfRow(wall, line, stretches, first, overlap, printable);
            runs.add(between(wall, line, stretches.get(first)[0], stretches.get(last)[1], overlap, printable));
            first = last + 1;
        }
        return runs;
    }

    private static int lastOfRow(WallRegions wall, FilmLine line, List<long[]> stretches, int first, long overlap, long printable) {
        long end = line.end(stretches.get(first)[0], printable);
        int at = first;
        while (true) {
            long[] stretch = stretches.get(at);
            // Whole panels until this stretch is covered; only the last of them can look beyond it.
            while (end < stretch[1]) {
                end = line.end(end - overlap, printable);
            }
            // A panel that covers less of the next stretch than an overlap is trimmed back instead.
            if (at + 1 == stretches.size() || wall.isBar(stretch[1]) || end - overlap <= stretches.get(at + 1)[0] && end < stretches.get(at + 1)[1]) {
                return at;
            }
            at++;
        }
    }

    private static Run between(WallRegions wall, FilmLine line, long from, long to, long overlap, long printable) {
        Rect seen = wall.seen().around(new Rect(from, to, Long.MIN_VALUE / 4, Long.MAX_VALUE / 4));
        return seen.isEmpty()
                ? new Run(line, from, to, from, to, overlap, printable)
                : new Run(line, from, to, seen.u1(), seen.u2(), overlap, printable);
    }
}
