package io.github.bedjoint.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Open intervals of u in which no overlap may begin. */
final class Ban {
    private final long[] from;
    private final long[] to;

    private Ban(List<long[]> intervals) {
        from = intervals.stream().mapToLong(i -> i[0]).toArray();
        to = intervals.stream().mapToLong(i -> i[1]).toArray();
    }

    /** The union of intervals; those that only touch stay apart, since a seam fits between them. */
    static Ban of(List<long[]> intervals) {
        List<long[]> sorted = new ArrayList<>(intervals);
        sorted.sort(Comparator.comparingLong(i -> i[0]));
        List<long[]> union = new ArrayList<>();
        for (long[] next : sorted) {
            long[] last = union.isEmpty() ? null : union.get(union.size() - 1);
            if (next[0] >= next[1]) {
                continue;
            }
            if (last != null && next[0] < last[1]) {
                last[1] = Math.max(last[1], next[1]);
            } else {
                union.add(next.clone());
            }
        }
        return new Ban(union);
    }

    /** The bans on where a joint's overlap begins across a piece: openings within it. */
    static Ban across(WallRegions wall, SeamRules rules, long overlap, Rect piece) {
        List<long[]> all = new ArrayList<>();
        for (WallRegions.Hole hole : wall.openings()) {
            if (!hole.opening().and(piece).isEmpty()) {
                beside(all, hole.opening().v1(), hole.opening().v2(), hole.neverCovered(), rules.jambSteps(), overlap);
            }
        }
        return of(all);
    }

    /** The bans on where a seam's overlap begins, in a wall's frame; {@code ascending}: the edge on top is where it begins. */
    static Ban of(WallRegions wall, SeamRules rules, long overlap, boolean ascending) {
        List<long[]> all = new ArrayList<>();
        for (WallRegions.Hole hole : wall.openings()) {
            beside(all, hole.opening().u1(), hole.opening().u2(), hole.neverCovered(), rules.jambSteps(), overlap);
        }
        for (long corner : wall.uCorners()) {
            around(all, corner, rules.cornerSteps(), overlap);
        }
        for (long bar : wall.uBars()) {
            around(all, bar, Math.max(rules.movementSteps(), 1), overlap);
        }
        rules.beside(wall.frame().direction()).filter(JointPhase::isForbidden).ifPresent(phase -> {
            long shift = ascending ? 0 : overlap;
            for (long joint : joints(wall, phase)) {
                all.add(new long[] {joint - phase.clearanceSteps() - shift, joint + phase.clearanceSteps() - shift});
            }
        });
        return of(all);
    }

    private static void beside(List<long[]> all, long low, long high, boolean neverCovered, long clearance, long overlap) {
        if (neverCovered) {
            all.add(new long[] {low - clearance - overlap, high + clearance});
        } else {
            around(all, low, clearance, overlap);
            around(all, high, clearance, overlap);
        }
    }

    private static void around(List<long[]> all, long line, long clearance, long overlap) {
        if (clearance > 0) {
            all.add(new long[] {line - clearance - overlap, line + clearance});
        }
    }

    /** The middles of the joints beside a wall's seams, in its frame. */
    static List<Long> joints(WallRegions wall, JointPhase phase) {
        List<Long> all = new ArrayList<>();
        Frame frame = wall.frame();
        long a = Math.min(frame.place(wall.needed().from(0)), frame.place(wall.needed().to(wall.needed().slabs() - 1)));
        long b = Math.max(frame.place(wall.needed().from(0)), frame.place(wall.needed().to(wall.needed().slabs() - 1)));
        long period = phase.periodSteps();
        for (long k = Math.floorDiv(a - phase.offsetSteps(), period); k * period + phase.offsetSteps() <= b + period; k++) {
            all.add(frame.place(k * period + phase.offsetSteps()));
        }
        return all;
    }

    boolean allows(long u) {
        int i = after(u);
        return i < 0 || u >= to[i] || u <= from[i];
    }

    /** The greatest place that is allowed, not above u. */
    long down(long u) {
        int i = after(u);
        return i >= 0 && u > from[i] && u < to[i] ? from[i] : u;
    }

    /** The least place that is allowed, not below u. */
    long up(long u) {
        int i = after(u);
        return i >= 0 && u > from[i] && u < to[i] ? to[i] : u;
    }

    int size() {
        return from.length;
    }

    long from(int i) {
        return from[i];
    }

    long to(int i) {
        return to[i];
    }

    /** The last interval that begins below u, or -1. */
    private int after(long u) {
        int low = 0;
        int high = from.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (from[middle] < u) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low - 1;
    }
}
