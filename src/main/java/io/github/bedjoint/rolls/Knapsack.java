package io.github.bedjoint.rolls;

import java.util.Arrays;

/**
 * Fills one roll with the panels that are worth most at whole-number prices.
 *
 * <p>Depth-first over panels in order of price per length; ends early at the first filling that cannot be beaten. When
 * that takes too long and the roll is short enough, a table over the length decides.
 */
final class Knapsack {

    private static final int MAX_NODES = 20_000;
    private static final long MAX_TABLE = 3_000_000;

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

    Knapsack(Model model, Work work) {
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
    long fill(int type, long[] price, int[] available, long floor) {
        Arrays.fill(pattern, 0);
        long room = model.cap[type];
        select(type, price, available, room);
        best = floor;
        nodes = 0;
        nodeLimit = MAX_NODES;
        long fractional = bound(0, room);
        ceiling = wholeBound(room);
        upper = Math.max(floor, ceiling);
        if (ceiling <= floor) {
            return floor;
        }
        search(0, room, 0);
        work.spend(nodes);
        if (nodes < nodeLimit || best >= ceiling) {
            upper = best;
        } else if ((room + 1) * (n + 1) <= MAX_TABLE) {
            table((int) room, floor);
            upper = best;
        } else {
            upper = Math.min(Math.max(best, fractional), upper);
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

    /** Exact on whole numbers: prices stay below 2^31 and lengths below 2^30. */
    private long bound(int k, long room) {
        return k == n ? 0 : room * p[k] / w[k];
    }

    /** Fractional filling from all panels, counts respected. */
    private long wholeBound(long room) {
        long value = 0;
        for (int k = 0; k < n && room > 0; k++) {
            long take = Math.min(most[k], room / w[k]);
            value += take * p[k];
            room -= take * w[k];
            if (take < most[k]) {
                return value + room * p[k] / w[k];
            }
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

    private void table(int room, long floor) {
        long[][] value = new long[n + 1][room + 1];
        for (int k = n - 1; k >= 0; k--) {
            int step = (int) w[k];
            long[] from = value[k + 1];
            long[] to = value[k];
            for (int r = 0; r <= room; r++) {
                long top = from[r];
                int used = step;
                for (int c = 1; c <= most[k] && used <= r; c++, used += step) {
                    top = Math.max(top, from[r - used] + c * p[k]);
                }
                to[r] = top;
            }
        }
        work.spend((long) n * room);
        best = Math.max(floor, value[0][room]);
        Arrays.fill(pattern, 0);
        if (best == floor) {
            return;
        }
        int r = room;
        for (int k = 0; k < n; k++) {
            int c = 0;
            while (value[k][r] != value[k + 1][r - c * (int) w[k]] + c * p[k]) {
                c++;
            }
            pattern[order[k]] = c;
            r -= c * (int) w[k];
        }
    }
}
