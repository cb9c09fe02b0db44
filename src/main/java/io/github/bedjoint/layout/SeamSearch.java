package io.github.bedjoint.layout;

import io.github.bedjoint.units.Steps;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

/**
 * The cheapest seams by dynamic programming: the cost up to a seam is the least, over all seams before it that a panel can reach
 * from, of the cost up to there, the strip between and the seam itself. Limits are counts, so the same wall gives the same seams on
 * any machine.
 */
final class SeamSearch {
    /** A place where a strip may begin: behind a seam, or afresh behind a gap. */
    private record Start(long at, boolean fresh, int stretch, double cost) {}

    /** A place where a strip may end, and the start behind it; the last end has none. */
    private record End(long at, int start, long shownTo) {}

    private final WallRegions wall;
    private final Cutting cutting;
    private final FilmLine line;
    private final SeamRules rules;
    private final long overlap;
    private final long printable;
    private final long least;
    private final boolean ascending;
    private final int wanted;
    private final List<long[]> stretches;
    private final List<Rect> stretchSeen;
    private final List<Start> starts = new ArrayList<>();
    private final List<End> ends = new ArrayList<>();
    private final Best[] best;
    private final Best last;

    SeamSearch(
            WallRegions wall, Cutting cutting, FilmLine line, SeamRules rules, long overlap, long printable, long least, boolean ascending,
            int wanted) {
        this.wall = wall;
        this.cutting = cutting;
        this.line = line;
        this.rules = rules;
        this.overlap = overlap;
        this.printable = printable;
        this.least = least;
        this.ascending = ascending;
        this.wanted = wanted;
        stretches = wall.stretches();
        stretchSeen = stretches.stream().map(this::seen).toList();
        Ban ban = Ban.of(wall, rules, overlap, ascending);
        gather(new SeamPlaces(wall, line, rules, cutting.rates(), ban, overlap, printable, this.least, ascending).sorted());
        best = new Best[starts.size()];
        for (int i = 0; i < best.length; i++) {
            best[i] = new Best(wanted);
        }
        last = new Best(wanted);
        search();
    }

    /** How many places for seams were tried. */
    int places() {
        return starts.size() - stretches.size();
    }

    /** The strips of the best layouts, the cheapest first; none where there is no layout. */
    List<List<Strip>> strips() {
        List<List<Strip>> all = new ArrayList<>();
        for (int rank = 0; rank < last.size(); rank++) {
            List<Strip> strips = new ArrayList<>();
            long end = stretches.get(stretches.size() - 1)[1];
            int node = last.node(rank);
            int nodeRank = last.rank(rank);
            while (true) {
                Start start = starts.get(node);
                strips.add(new Strip(start.at(), end));
                if (start.fresh() && start.stretch() == 0) {
                    break;
                }
                end = start.fresh() ? stretches.get(start.stretch() - 1)[1] : start.at() + overlap;
                int before = best[node].node(nodeRank);
                nodeRank = best[node].rank(nodeRank);
                node = before;
            }
            Collections.reverse(strips);
            all.add(strips);
        }
        return all;
    }

    private void gather(long[] places) {
        for (int k = 0; k < stretches.size(); k++) {
            starts.add(new Start(stretches.get(k)[0], true, k, 0));
        }
        for (int i = 0; i < places.length; i++) {
            double rate = cutting.rates().seamPerM() + rules.besideJointPerM(wall.frame(), ascending ? places[i] : places[i] + overlap);
            Rect under = new Rect(places[i], places[i] + overlap, Long.MIN_VALUE / 4, Long.MAX_VALUE / 4);
            double cost = rate == 0 ? 0 : rate * wall.seen().areaM2(under) / Steps.toM(overlap);
            if (touchesWall(places[i])) {
                starts.add(new Start(places[i], false, -1, cost));
            }
        }
        starts.sort(Comparator.comparingLong(Start::at).thenComparing(start -> !start.fresh()));
        for (int i = 0; i < starts.size(); i++) {
            Start start = starts.get(i);
            if (!start.fresh()) {
                ends.add(new End(start.at() + overlap, i, shownTo(start.at() + overlap)));
            } else if (start.stretch() > 0) {
                ends.add(end(start.stretch() - 1, i));
            }
        }
        ends.add(end(stretches.size() - 1, -1));
        ends.sort(Comparator.comparingLong(End::at));
    }

    /** Whether an overlap that begins there has anything to overlap; in a gap there is no seam. */
    private boolean touchesWall(long place) {
        return stretches.stream().anyMatch(s -> s[0] < place + overlap && place < s[1]);
    }

    private End end(int stretch, int start) {
        return new End(stretches.get(stretch)[1], start, stretchSeen.get(stretch).u2());
    }

    /** Where wall ends that is shown by a strip up to u: there, or before the bleed. */
    private long shownTo(long u) {
        long shown = u;
        for (int k = 0; k < stretches.size() && stretches.get(k)[0] < u; k++) {
            shown = Math.min(u, stretchSeen.get(k).u2());
        }
        return shown;
    }

    private Rect seen(long[] s) {
        Rect seen = wall.seen().around(new Rect(s[0], s[1], Long.MIN_VALUE / 4, Long.MAX_VALUE / 4));
        return seen.isEmpty() ? new Rect(s[0], s[1], 0, 0) : seen;
    }

    private void search() {
        Column column = new Column(wall.vBars());
        Cutting.Tally tally = new Cutting.Tally();
        for (int i = 0; i < starts.size(); i++) {
            Start start = starts.get(i);
            boolean first = start.fresh() && start.stretch() == 0;
            if (first || best[i].size() > 0) {
                widen(i, start, column, tally);
            }
        }
    }

    private void widen(int i, Start start, Column column, Cutting.Tally tally) {
        long shownFrom = shownFrom(start);
        long limit = Math.min(line.end(start.at(), printable), barAfter(start.at()));
        long enough = least + passedFrom(i);
        long at = start.at();
        boolean first = start.fresh() && start.stretch() == 0;
        double before = first ? 0 : best[i].cost(0);
        double reached = before;
        column.clear();
        for (int e = firstEnd(start.at()); e < ends.size() && ends.get(e).at() <= limit; e++) {
            End end = ends.get(e);
            if (end.shownTo() >= enough) {
                break;
            }
            boolean seam = end.start() >= 0 && !starts.get(end.start()).fresh();
            // A panel alone between two ends of the wall is no sliver.
            if (!(start.fresh() && !seam) && end.shownTo() - shownFrom < least) {
                continue;
            }
            double joint = seam ? starts.get(end.start()).cost() : 0;
            Best into = end.start() < 0 ? last : best[end.start()];
            if (!into.takes(reached + joint)) {
                continue;
            }
            column.widen(wall.needed(), at, end.at());
            at = end.at();
            cutting.tally(column, tally);
            if (Double.isInfinite(tally.cost)) {
                break;
            }
            // A wider strip costs no less, as long as its pieces are not joined across.
            reached = cutting.joints().isPresent() ? before : before + tally.cost;
            double step = tally.cost + joint;
            if (first) {
                into.offer(step, tally.pieces, tally.signature, i, 0);
            } else {
                for (int rank = 0; rank < best[i].size(); rank++) {
                    into.offer(best[i].cost(rank) + step, best[i].panels(rank) + tally.pieces,
                            best[i].signature(rank) + tally.signature, i, rank);
                }
            }
        }
    }

    private long shownFrom(Start start) {
        return start.fresh() ? stretchSeen.get(start.stretch()).u1() : start.at();
    }

    /**
     * Where a later start that costs no more begins on the wall, or out of reach if there is none. A strip from there is part of any
     * strip from here to the same end, and a part never costs more; so from here only those ends matter that are too near to it.
     * Holds where one layout is wanted and pieces are not joined across.
     */
    private long passedFrom(int i) {
        if (wanted > 1 || cutting.joints().isPresent() || best[i].size() == 0) {
            return Limits.ANY_LENGTH;
        }
        for (int j = i + 1; j < starts.size() && starts.get(j).at() <= starts.get(i).at() + printable; j++) {
            if (starts.get(j).at() > starts.get(i).at() && best[j].size() > 0 && best[j].isNoWorse(best[i])) {
                return shownFrom(starts.get(j));
            }
        }
        return Limits.ANY_LENGTH;
    }

    private long barAfter(long u) {
        for (long bar : wall.uBars()) {
            if (bar > u) {
                return bar;
            }
        }
        return Long.MAX_VALUE;
    }

    private int firstEnd(long beyond) {
        int low = 0;
        int high = ends.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (ends.get(middle).at() <= beyond) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
