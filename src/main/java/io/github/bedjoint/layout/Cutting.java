package io.github.bedjoint.layout;

import io.github.bedjoint.units.Steps;
import java.util.ArrayList;
import java.util.List;

/**
 * Cuts a strip into pieces: a gap along it is bridged where the film costs less than one more piece, and a piece longer than any roll
 * is joined across where that is allowed.
 *
 * @param regions the wall
 * @param rates   what film, pieces and cut-outs cost
 * @param feed    how much film is fed in along the strips
 * @param longest greatest length of film
 * @param joins   whether longer pieces may be joined across
 * @param overlap overlap of such a joint
 */
record Cutting(WallRegions regions, Rates rates, Feed feed, long longest, boolean joins, long overlap) {

    /** What a strip costs and consists of, or nothing possible where the cost is infinite. */
    static final class Tally {
        double cost;
        int pieces;
        /** The same for strips whose pieces have the same lengths in any order. */
        long signature;

        private void add(double more, long length) {
            cost += more;
            pieces++;
            long mixed = (length + 0x9E3779B97F4A7C15L) * 0xBF58476D1CE4E5B9L;
            signature += mixed ^ mixed >>> 29;
        }
    }

    void tally(Column column, Tally into) {
        into.cost = 0;
        into.pieces = 0;
        into.signature = 0;
        visit(column, (low, high, from, to, joined) -> {
            long film = film(low, high, from, to);
            double cost = rates.filmPerM() * metres(film) + rates.perPanel();
            if (rates.perCutOut() > 0) {
                cost += rates.perCutOut() * regions.cutOuts(from, to, low, high);
            }
            if (joined && rates.seamPerM() > 0) {
                Rect joint = new Rect(from, to, low, low + overlap);
                cost += rates.seamPerM() * regions.seen().areaM2(joint) / metres(overlap);
            }
            into.add(film > longest ? Double.POSITIVE_INFINITY : cost, film);
        });
    }

    private static double metres(long steps) {
        return Steps.toM(steps);
    }

    /** The pieces from low to high, no wider than what they must cover. */
    List<Rect> pieces(Strip strip) {
        Column column = new Column(regions.vBars());
        column.widen(regions.needed(), strip.from(), strip.to());
        List<Rect> pieces = new ArrayList<>();
        visit(column, (low, high, from, to, joined) -> pieces.add(new Rect(from, to, low, high)));
        return pieces;
    }

    /** The longest film that a strip takes. */
    long longestFilm(Strip strip) {
        return pieces(strip).stream().mapToLong(piece -> film(piece.v1(), piece.v2(), piece.u1(), piece.u2())).max().orElse(0);
    }

    /** The length of film for a piece, by what of it lies over wall. */
    private long film(long low, long high, long from, long to) {
        if (feed.isNone()) {
            return high - low;
        }
        Rect seen = regions.seen().around(new Rect(from, to, low, high));
        return high - low + feed.fedSteps(seen.v2() - seen.v1());
    }

    private interface Visitor {
        void piece(long low, long high, long from, long to, boolean joined);
    }

    private void visit(Column column, Visitor visitor) {
        int i = 0;
        while (i < column.size()) {
            long low = column.low(i);
            long high = column.high(i);
            long from = column.from(i);
            long to = column.to(i);
            while (i + 1 < column.size() && bridges(column, i, low, from, to)) {
                i++;
                high = column.high(i);
                from = Math.min(from, column.from(i));
                to = Math.max(to, column.to(i));
            }
            i++;
            long lap = overlap + feed.fedSteps(overlap);
            if (!joins || longest <= 2 * lap || film(low, high, from, to) <= longest) {
                visitor.piece(low, high, from, to, false);
            } else {
                joined(low, high, from, to, lap, visitor);
            }
        }
    }

    /** Equal lengths of film, the upper over the lower; one more where rounding leaves the last one too long. */
    private void joined(long low, long high, long from, long to, long lap, Visitor visitor) {
        Rect seen = regions.seen().around(new Rect(from, to, low, high));
        FilmLine line = new FilmLine(feed, List.<long[]>of(new long[] {seen.v1(), seen.v2()}));
        long whole = line.filmSteps(low, high);
        long count = -Math.floorDiv(lap - whole, longest - lap);
        long[] ends = ends(line, low, high, whole, count, lap);
        if (line.filmSteps(ends[(int) count - 2] - overlap, high) > longest) {
            count++;
            ends = ends(line, low, high, whole, count, lap);
        }
        long begin = low;
        for (long end : ends) {
            visitor.piece(begin, end, from, to, begin > low);
            begin = end - overlap;
        }
    }

    private long[] ends(FilmLine line, long low, long high, long whole, long count, long lap) {
        long film = whole + (count - 1) * lap;
        long[] ends = new long[(int) count];
        long begin = low;
        for (int k = 0; k < count - 1; k++) {
            ends[k] = line.end(begin, film / count + (k < film % count ? 1 : 0));
            begin = ends[k] - overlap;
        }
        ends[(int) count - 1] = high;
        return ends;
    }

    /** Whether the gap above part i costs less in film and cut-outs than one more piece. */
    private boolean bridges(Column column, int i, long low, long from, long to) {
        long gapLow = column.high(i);
        long gapHigh = column.low(i + 1);
        if (regions.hasBar(gapLow, gapHigh)) {
            return false;
        }
        long bridged = film(low, column.high(i + 1), Math.min(from, column.from(i + 1)), Math.max(to, column.to(i + 1)));
        long apart = film(low, gapLow, from, to) + film(gapHigh, column.high(i + 1), column.from(i + 1), column.to(i + 1));
        if (bridged > longest) {
            return false;
        }
        double cost = rates.filmPerM() * metres(bridged - apart);
        if (cost < rates.perPanel() && rates.perCutOut() > 0) {
            long left = Math.min(column.from(i), column.from(i + 1));
            long right = Math.max(column.to(i), column.to(i + 1));
            cost += rates.perCutOut() * regions.cutOutsWithin(left, right, gapLow, gapHigh);
        }
        return cost < rates.perPanel();
    }
}
