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
 * @param factor  film for each length on the wall, above 1 where it is fed in
 * @param longest greatest length on the wall
 * @param joins   whether longer pieces may be joined across
 * @param overlap overlap of such a joint
 */
record Cutting(WallRegions regions, Rates rates, double factor, long longest, boolean joins, long overlap) {

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
            double cost = rates.filmPerM() * factor * metres(high - low) + rates.perPanel();
            if (rates.perCutOut() > 0) {
                cost += rates.perCutOut() * regions.cutOuts(from, to, low, high);
            }
            if (joined && rates.seamPerM() > 0) {
                Rect joint = new Rect(from, to, low, low + overlap);
                cost += rates.seamPerM() * regions.seen().areaM2(joint) / metres(overlap);
            }
            into.add(high - low > longest ? Double.POSITIVE_INFINITY : cost, high - low);
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

    /** The longest piece that a strip would take, bridging nothing. */
    long longestPiece(Strip strip) {
        Column column = new Column(regions.vBars());
        column.widen(regions.needed(), strip.from(), strip.to());
        long length = 0;
        for (int i = 0; i < column.size(); i++) {
            length = Math.max(length, column.high(i) - column.low(i));
        }
        return length;
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
            while (i + 1 < column.size() && bridges(column, i, low)) {
                i++;
                high = column.high(i);
                from = Math.min(from, column.from(i));
                to = Math.max(to, column.to(i));
            }
            i++;
            if (!joins || high - low <= longest) {
                visitor.piece(low, high, from, to, false);
                continue;
            }
            long count = -Math.floorDiv(overlap - (high - low), longest - overlap);
            long film = high - low + (count - 1) * overlap;
            long begin = low;
            for (long k = 0; k < count; k++) {
                long end = begin + film / count + (k < film % count ? 1 : 0);
                visitor.piece(begin, end, from, to, k > 0);
                begin = end - overlap;
            }
        }
    }

    /** Whether the gap above part i costs less in film and cut-outs than one more piece. */
    private boolean bridges(Column column, int i, long low) {
        long gapLow = column.high(i);
        long gapHigh = column.low(i + 1);
        if (regions.hasBar(gapLow, gapHigh) || column.high(i + 1) - low > longest) {
            return false;
        }
        double cost = rates.filmPerM() * factor * metres(gapHigh - gapLow);
        if (cost < rates.perPanel() && rates.perCutOut() > 0) {
            long from = Math.min(column.from(i), column.from(i + 1));
            long to = Math.max(column.to(i), column.to(i + 1));
            cost += rates.perCutOut() * regions.cutOutsWithin(from, to, gapLow, gapHigh);
        }
        return cost < rates.perPanel();
    }
}
