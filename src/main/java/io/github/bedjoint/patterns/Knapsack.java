package io.github.bedjoint.patterns;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/**
 * Fills one roll with the panels that are worth most at whole-number prices.
 *
 * <p>Depth-first over panels in order of price per length; ends early at the first filling that cannot be beaten. When
 * that takes too long and the roll is short enough, a table over the length decides.
 */
public final class Knapsack {

    /** When to go on after the search was cut short. */
    enum Effort {
        /** Any good filling will do. */
        GOOD,
        /** A filling above the floor is wanted, if there is one. */
        BETTER,
        /** The best filling is wanted. */
        BEST
    }

    private static final int MAX_NODES = 20_000;

    /** Nodes where a table would be too large. */
    private static final int MAX_LONE_NODES = 60_000;

    private static final long MAX_TABLE = 3_000_000;

    /** Largest table made to find out whether anything above the floor is left. */
    private static final long MAX_LAST_TABLE = 20_000_000;

    private final Model model;
    private final Work work;
    private final int[] ranking;
    private final int[] order;
    private final long[] w;
    private final long[] p;
    private final int[] most;
    private final long[] shortest;
    private final int[] chosen;
    private int n;
    private long best;
    private long ceiling;
    private int nodes;
    private int nodeLimit;

    /** Best filling found by the last call, a count of each panel. */
    final int[] pattern;

    /** No filling of the last call is worth more. Equal to the value returned unless the search was cut short. */
    long upper;

    public Knapsack(Model model, Work work) {
        this.model = model;
        this.work = work;
        int m = model.items();
        ranking = new int[m];
        for (int i = 0; i < m; i++) {
            ranking[i] = i;
        }
        order = new int[m];
        w = new long[m];
        p = new long[m];
        most = new int[m];
        shortest = new long[m + 1];
        chosen = new int[m];
        pattern = new int[m];
    }

    /**
     * Looks for a filling worth more than a floor.
     *
     * @return its value, or the floor if there is none (then the pattern is empty)
     */
    long fill(int type, long[] price, int[] available, long floor, Effort effort) {
        Arrays.fill(pattern, 0);
        long room = model.cap[type];
        select(type, price, available, room);
        best = floor;
        nodes = 0;
        ceiling = bound(0, room);
        upper = Math.max(floor, ceiling);
        if (ceiling <= floor) {
            return floor;
        }
        long cells = room * n;
        boolean tableHelps = effort == Effort.BEST && cells <= MAX_TABLE
                || effort == Effort.BETTER && cells <= MAX_LAST_TABLE;
        nodeLimit = tableHelps || effort == Effort.GOOD ? MAX_NODES : MAX_LONE_NODES;
        search(0, room, 0);
        work.spend(nodes);
        if (nodes < nodeLimit || best >= ceiling) {
            upper = best;
        } else if (tableHelps && (effort == Effort.BEST || best == floor)) {
            table((int) room, floor);
            upper = best;
        }
        return best;
    }

    private void select(int type, long[] price, int[] available, long room) {
        rank(price);
        n = 0;
        for (int i : ranking) {
            if (price[i] > 0 && available[i] > 0 && model.fits(i, type)) {
                order[n] = i;
                w[n] = model.size[i];
                p[n] = price[i];
                n++;
            }
        }
        shortest[n] = Long.MAX_VALUE;
        for (int k = n - 1; k >= 0; k--) {
            most[k] = (int) Math.min(available[order[k]], room / w[k]);
            shortest[k] = Math.min(shortest[k + 1], w[k]);
        }
    }

    /** Highest price per length first; the order of the last call is a good start. */
    private void rank(long[] price) {
        for (int at = 1; at < ranking.length; at++) {
            int i = ranking[at];
            int k = at;
            while (k > 0 && price[i] * model.size[ranking[k - 1]] > price[ranking[k - 1]] * model.size[i]) {
                ranking[k] = ranking[k - 1];
                k--;
            }
            ranking[k] = i;
        }
    }

    /**
     * What room can be worth when the panel that does not fit whole is cut. Exact on whole numbers: prices stay below
     * 2^31 and lengths below 2^30.
     */
    private long bound(int from, long room) {
        long value = 0;
        for (int k = from; k < n; k++) {
            long all = most[k] * w[k];
            if (all > room) {
                return value + room * p[k] / w[k];
            }
            value += most[k] * p[k];
            room -= all;
        }
        return value;
    }

    private boolean search(int k, long room, long value) {
        if (value > best) {
            best = value;
            Arrays.fill(pattern, 0);
            for (int j = 0; j < k; j++) {
                pattern[order[j]] = chosen[j];
            }
            if (best >= ceiling) {
                return true;
            }
        }
        if (room < shortest[k] || value + bound(k, room) <= best) {
            return false;
        }
        if (++nodes >= nodeLimit) {
            return true;
        }
        for (int c = (int) Math.min(most[k], room / w[k]); c >= 0; c--) {
            long left = room - c * w[k];
            long worth = value + c * p[k];
            if (worth + bound(k + 1, left) <= best) {
                break;
            }
            chosen[k] = c;
            if (search(k + 1, left, worth)) {
                return true;
            }
        }
        return false;
    }

    /** Takes a number of like panels as one, so that any count is a sum of such bundles. */
    private record Bundle(int item, int count, int length, long price) {}

    private List<Bundle> bundles() {
        List<Bundle> bundles = new ArrayList<>();
        for (int k = 0; k < n; k++) {
            int left = most[k];
            for (int count = 1; left > 0; count *= 2) {
                int take = Math.min(count, left);
                bundles.add(new Bundle(order[k], take, (int) (take * w[k]), take * p[k]));
                left -= take;
            }
        }
        return bundles;
    }

    /** The best value for every length, bundle by bundle; one bit for each says whether the bundle is in it. */
    private void table(int room, long floor) {
        List<Bundle> bundles = bundles();
        long[] value = new long[room + 1];
        BitSet[] taken = new BitSet[bundles.size()];
        for (int b = 0; b < taken.length; b++) {
            Bundle bundle = bundles.get(b);
            taken[b] = new BitSet(room + 1);
            for (int r = room; r >= bundle.length(); r--) {
                long with = value[r - bundle.length()] + bundle.price();
                if (with > value[r]) {
                    value[r] = with;
                    taken[b].set(r);
                }
            }
        }
        work.spend((long) taken.length * room / 2);
        best = Math.max(floor, value[room]);
        Arrays.fill(pattern, 0);
        int r = room;
        for (int b = taken.length - 1; b >= 0 && best > floor; b--) {
            if (taken[b].get(r)) {
                pattern[bundles.get(b).item()] += bundles.get(b).count();
                r -= bundles.get(b).length();
            }
        }
    }
}
