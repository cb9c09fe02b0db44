package io.github.bedjoint.layout;

import io.github.bedjoint.units.Steps;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Cuts a strip into pieces: a gap along it is bridged where the film costs less than one more piece, and a piece longer than any roll
 * is joined across where that is allowed.
 *
 * @param regions the wall
 * @param rates   what film, pieces and cut-outs cost
 * @param feed    how much film is fed in along the strips
 * @param longest greatest length of film
 * @param joints  joins longer pieces across, where that is allowed
 */
record Cutting(WallRegions regions, Rates rates, Feed feed, long longest, Optional<JointsAcross> joints) {

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
            if (joined) {
                cost += joints.orElseThrow().seamCost(from, to, low);
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
            visitPieces(new Rect(from, to, low, high), visitor);
        }
    }

    /** The piece as it is, or joined across where it is too long and that is possible. */
    private void visitPieces(Rect piece, Visitor visitor) {
        List<Long> begins = joints.isPresent() && film(piece.v1(), piece.v2(), piece.u1(), piece.u2()) > longest
                ? joints.get().begins(piece)
                : List.of();
        for (int k = 1; k < begins.size(); k++) {
            visitor.piece(begins.get(k - 1), begins.get(k) + joints.get().overlap(), piece.u1(), piece.u2(), k > 1);
        }
        int last = Math.max(0, begins.size() - 1);
        visitor.piece(last == 0 ? piece.v1() : begins.get(last), piece.v2(), piece.u1(), piece.u2(), last > 0);
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
