package io.github.bedjoint.layout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;

/**
 * The places at which it is enough to try a seam.
 *
 * <p>Cost changes its course only where a strip begins or ends at a corner of the wall or of an opening, at the edge of a banned place,
 * or where two slopes are as high at both ends of a panel; every other seam of a cheapest layout hangs on one of those by a
 * chain of full panels, of overlaps or of least slivers.
 */
final class SeamPlaces {
    private final WallRegions wall;
    private final FilmLine line;
    private final Ban ban;
    private final long overlap;
    private final long printable;
    private final long first;
    private final long last;
    private final TreeSet<Long> places = new TreeSet<>();

    SeamPlaces(WallRegions wall, FilmLine line, SeamRules rules, Ban ban, long overlap, long printable, long least, boolean ascending) {
        this.wall = wall;
        this.line = line;
        this.ban = ban;
        this.overlap = overlap;
        this.printable = printable;
        long reach = line.feed().reachSteps(printable);
        first = wall.needed().from(0);
        last = wall.needed().to(wall.needed().slabs() - 1);
        TreeSet<Long> anchors = new TreeSet<>();
        for (long rim : rims()) {
            anchors.add(rim);
            anchors.add(rim - overlap);
        }
        List<Line> slopes = slopes();
        level(slopes, reach, anchors);
        for (long anchor : anchors) {
            for (long width : new long[] {least, least - overlap}) {
                place(anchor + width);
                place(anchor - width);
            }
            chain(anchor);
            if (!ban.allows(anchor)) {
                chain(ban.up(anchor));
                chain(ban.down(anchor));
            }
        }
        // Before the joints come in: there are hundreds of them, and a panel that balances two slopes beside one is a step's matter.
        balance(slopes, reach);
        for (int i = 0; i < ban.size(); i++) {
            chain(ban.from(i));
            chain(ban.to(i));
        }
        rules.beside(wall.frame().direction()).filter(phase -> !phase.isForbidden()).ifPresent(phase -> {
            long shift = ascending ? 0 : overlap;
            for (long joint : Ban.joints(wall, phase)) {
                chain(joint - phase.clearanceSteps() - shift);
                chain(joint + phase.clearanceSteps() - shift);
            }
        });
    }

    long[] sorted() {
        return places.stream().mapToLong(Long::longValue).toArray();
    }

    /** Where something begins or ends across the strips. */
    private List<Long> rims() {
        TreeSet<Long> rims = new TreeSet<>();
        for (Region region : List.of(wall.needed(), wall.seen())) {
            for (int i = 0; i < region.slabs(); i++) {
                rims.add(region.from(i));
                rims.add(region.to(i));
            }
        }
        Arrays.stream(wall.uBars()).forEach(rims::add);
        return new ArrayList<>(rims);
    }

    private void place(long u) {
        if (u > first - overlap && u < last && ban.allows(u)) {
            places.add(u);
        }
    }

    /** Full panels from an anchor on to both sides; a place that is banned moves to where the panel is just narrower. */
    private void chain(long anchor) {
        for (long u = anchor; u < last; ) {
            place(u);
            long next = ban.down(line.end(u, printable) - overlap);
            if (next <= u) {
                break;
            }
            u = next;
        }
        for (long u = anchor; u > first - overlap; ) {
            place(u);
            long next = ban.up(line.begin(u + overlap, printable));
            if (next >= u) {
                break;
            }
            u = next;
        }
    }

    private List<Line> slopes() {
        List<Line> slopes = new ArrayList<>();
        for (int i = 0; i < wall.needed().slabs(); i++) {
            for (Region.Cell cell : wall.needed().cells(i)) {
                for (Line line : List.of(cell.low(), cell.high())) {
                    if (line.v1() != line.v2() && !slopes.contains(line)) {
                        slopes.add(line);
                    }
                }
            }
        }
        return slopes;
    }

    /** Where a falling and a rising rim are level at both ends of a full panel. */
    private static void level(List<Line> slopes, long reach, TreeSet<Long> anchors) {
        for (Line a : slopes) {
            for (Line b : slopes) {
                double slopeA = slope(a);
                double slopeB = slope(b);
                if (slopeA * slopeB < 0) {
                    double u = (b.at(reach) - a.at(0)) / (slopeA - slopeB);
                    if (spans(a, u) && spans(b, u + reach)) {
                        around(u, anchors);
                    }
                }
            }
        }
    }

    /** Where a panel that begins, or ends, at a place known already ends, or begins, at the same height of a rim that slopes back. */
    private void balance(List<Line> slopes, long reach) {
        TreeSet<Long> more = new TreeSet<>();
        for (long place : List.copyOf(places)) {
            for (Line a : slopes) {
                for (Line b : slopes) {
                    if (slope(a) * slope(b) < 0) {
                        double end = b.u1() + (a.at(place) - b.v1()) / slope(b);
                        if (spans(a, place) && spans(b, end) && end > place && end <= place + reach) {
                            around(end - overlap, more);
                        }
                        double begin = a.u1() + (b.at(place + overlap) - a.v1()) / slope(a);
                        if (spans(b, place + overlap) && spans(a, begin) && begin < place && begin >= place + overlap - reach) {
                            around(begin, more);
                        }
                    }
                }
            }
        }
        more.forEach(this::chain);
    }

    private static double slope(Line line) {
        return (double) (line.v2() - line.v1()) / (line.u2() - line.u1());
    }

    private static boolean spans(Line line, double u) {
        return u >= line.u1() - 1 && u <= line.u2() + 1;
    }

    private static void around(double u, TreeSet<Long> into) {
        if (Math.abs(u) < Limits.ANY_LENGTH) {
            into.add((long) Math.floor(u));
            into.add((long) Math.ceil(u));
        }
    }
}
