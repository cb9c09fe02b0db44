package io.github.bedjoint.layout;

import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.LongStream;

/**
 * The places at which it is enough to try a seam.
 *
 * <p>Cost changes its course only where a strip begins or ends at a corner of the wall or of an opening, at the edge of a banned place,
 * where two slopes are as high at both ends of a panel, or where an overlap on a bend of the rim is settled; every other seam of a
 * cheapest layout hangs on one of those by a chain of full panels, with a least sliver or a panel between two slopes in it. A chain
 * begins at its anchor and leads away from it, to the right or to the left.
 */
final class SeamPlaces {
    private final WallRegions wall;
    private final FilmLine line;
    private final Ban ban;
    private final long overlap;
    private final long printable;
    private final long first;
    private final long last;
    private final TreeSet<Long> rightward = new TreeSet<>();
    private final TreeSet<Long> leftward = new TreeSet<>();

    SeamPlaces(
            WallRegions wall, FilmLine line, SeamRules rules, Rates rates, Ban ban, long overlap, long printable, long least,
            boolean ascending) {
        this.wall = wall;
        this.line = line;
        this.ban = ban;
        this.overlap = overlap;
        this.printable = printable;
        long reach = line.feed().reachSteps(printable);
        first = wall.needed().from(0);
        last = wall.needed().to(wall.needed().slabs() - 1);
        TreeSet<Long> anchors = new TreeSet<>();
        Set<Long> corners = corners();
        for (long corner : corners) {
            anchors.add(corner);
            anchors.add(corner - overlap);
        }
        List<Line> slopes = slopes();
        level(slopes, reach, anchors);
        settle(rates.filmPerM() / rates.seamPerM(), anchors);
        for (long anchor : anchors) {
            chains(anchor);
            if (!ban.allows(anchor)) {
                chains(ban.up(anchor));
                chains(ban.down(anchor));
            }
            for (long width : new long[] {least, least - overlap}) {
                toRight(anchor + width);
                toLeft(anchor - width);
            }
        }
        // Before the joints come in: there are hundreds of them, and a panel that balances two slopes beside one is a step's matter.
        balance(slopes, corners, reach);
        for (int i = 0; i < ban.size(); i++) {
            chains(ban.from(i));
            chains(ban.to(i));
        }
        rules.beside(wall.frame().direction()).filter(phase -> !phase.isForbidden()).ifPresent(phase -> {
            long shift = ascending ? 0 : overlap;
            for (long joint : Ban.joints(wall, phase)) {
                chains(joint - phase.clearanceSteps() - shift);
                chains(joint + phase.clearanceSteps() - shift);
            }
        });
    }

    long[] sorted() {
        return LongStream.concat(rightward.stream().mapToLong(u -> u), leftward.stream().mapToLong(u -> u)).sorted().distinct().toArray();
    }

    /** Where something begins or ends across the strips. */
    private Set<Long> corners() {
        Set<Long> corners = new TreeSet<>();
        for (Region region : List.of(wall.needed(), wall.seen())) {
            for (int i = 0; i < region.slabs(); i++) {
                corners.add(region.from(i));
                corners.add(region.to(i));
            }
        }
        Arrays.stream(wall.uBars()).forEach(corners::add);
        return corners;
    }

    private void chains(long anchor) {
        toRight(anchor);
        toLeft(anchor);
    }

    private boolean isPlace(long u) {
        return u > first - overlap && u < last && ban.allows(u);
    }

    /** Full panels from a place on; where the next is banned, the panel is just narrower. */
    private void toRight(long from) {
        long u = from;
        while (u < last) {
            if (isPlace(u) && !rightward.add(u)) {
                return;
            }
            long next = ban.down(line.end(u, printable) - overlap);
            if (next <= u) {
                return;
            }
            u = next;
        }
    }

    private void toLeft(long from) {
        long u = from;
        while (u > first - overlap) {
            if (isPlace(u) && !leftward.add(u)) {
                return;
            }
            long next = ban.up(line.begin(u + overlap, printable));
            if (next >= u) {
                return;
            }
            u = next;
        }
    }

    private List<Line> slopes() {
        return rims(wall.needed()).stream().filter(rim -> rim.v1() != rim.v2()).toList();
    }

    private static Set<Line> rims(Region region) {
        Set<Line> rims = new LinkedHashSet<>();
        for (int i = 0; i < region.slabs(); i++) {
            for (Region.Cell cell : region.cells(i)) {
                rims.add(cell.low());
                rims.add(cell.high());
            }
        }
        return rims;
    }

    /** Where a falling and a rising rim are level at both ends of a full panel. */
    private static void level(List<Line> slopes, long reach, TreeSet<Long> anchors) {
        for (Line a : slopes) {
            for (Line b : slopes) {
                if (slope(a) * slope(b) < 0) {
                    double u = (b.at(reach) - a.at(0)) / (slope(a) - slope(b));
                    if (spans(a, u) && spans(b, u + reach)) {
                        anchors.add(Math.round(u));
                    }
                }
            }
        }
    }

    /**
     * Where an overlap that straddles a bend of the rim is settled: moved on, it would grow shorter by no more than the panels beside it
     * grow longer, be it none of them, one or both.
     *
     * @param ratio a metre of film to a metre of seam; infinite where seams cost nothing, and then nothing is found
     */
    private void settle(double ratio, TreeSet<Long> anchors) {
        Set<Line> rims = rims(wall.seen());
        for (Line a : rims) {
            for (Line b : rims) {
                double bend = slope(b) - slope(a);
                if (bend != 0) {
                    for (double longer : new double[] {0, slope(a), slope(b), slope(a) + slope(b)}) {
                        double u = (a.at(0) - b.at(overlap) - ratio * overlap * longer) / bend;
                        if (spans(a, u) && spans(b, u + overlap)) {
                            anchors.add(Math.round(u));
                        }
                    }
                }
            }
        }
    }

    /**
     * Where a panel that begins, or ends, at a place known already ends, or begins, at the same height of a rim that slopes back. A
     * corner counts as such a place too, be it banned: within a panel it may be as high as the panel's end.
     */
    private void balance(List<Line> slopes, Set<Long> corners, long reach) {
        Set<Long> begins = new TreeSet<>(rightward);
        begins.addAll(corners);
        Set<Long> ends = new TreeSet<>(leftward);
        corners.forEach(corner -> ends.add(corner - overlap));
        for (Line a : slopes) {
            for (Line b : slopes) {
                if (slope(a) * slope(b) < 0) {
                    for (long begin : begins) {
                        double end = b.u1() + (a.at(begin) - b.v1()) / slope(b);
                        if (spans(a, begin) && spans(b, end) && end > begin && end <= begin + reach) {
                            toRight(Math.round(end) - overlap);
                        }
                    }
                    for (long place : ends) {
                        long end = place + overlap;
                        double begin = a.u1() + (b.at(end) - a.v1()) / slope(a);
                        if (spans(b, end) && spans(a, begin) && begin < end && begin >= end - reach) {
                            toLeft(Math.round(begin));
                        }
                    }
                }
            }
        }
    }

    private static double slope(Line line) {
        return (double) (line.v2() - line.v1()) / (line.u2() - line.u1());
    }

    private static boolean spans(Line line, double u) {
        return u >= line.u1() - 1 && u <= line.u2() + 1;
    }
}
