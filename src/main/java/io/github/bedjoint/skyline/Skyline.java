package io.github.bedjoint.skyline;

import io.github.bedjoint.patterns.Work;
import java.util.Arrays;

/**
 * Places pieces on rolls one after another: each time into the lowest, then leftmost, notch of the outline of what is placed, the
 * piece that fits it best, and among equals the one that comes first in a given order.
 *
 * <p>Best is a piece as wide as the notch that ends level with a wall of it; then one as wide; then one level with a wall. Method: the
 * best-fit heuristics of Burke, Kendall and Whitwell with the scores of Leung and others (from memory of the literature, no text
 * consulted).
 */
public final class Skyline {

    private static final int AS_WIDE_AND_LEVEL = 3;
    private static final int AS_WIDE = 2;
    private static final int LEVEL = 1;

    private final Pieces pieces;
    private final int[] next;

    /** The outline: a stretch starts at x, has level y, and ends where the next one starts. */
    private final int[] x;

    private final int[] y;
    private int stretches;
    private Work work = new Work(0);

    /** Where each piece lies after {@link #run}; the roll is -1 if it found no place. */
    public final int[] roll;

    public final int[] acrossAt;
    public final int[] alongAt;
    public final boolean[] turned;

    Skyline(Pieces pieces) {
        this.pieces = pieces;
        int n = pieces.count();
        next = new int[n + 1];
        x = new int[n + 3];
        y = new int[n + 3];
        roll = new int[n];
        acrossAt = new int[n];
        alongAt = new int[n];
        turned = new boolean[n];
    }

    /**
     * Places all pieces that find a place.
     *
     * @param order   the pieces, those to take first in front
     * @param width   of each roll, in units
     * @param length  of each roll
     * @param allowed gives up once more area than this is wasted
     * @param spent   counts the work
     * @return area of the pieces without a place; {@link Long#MAX_VALUE} if it was given up
     */
    long run(int[] order, int[] width, int[] length, long allowed, Work spent) {
        work = spent;
        Arrays.fill(roll, -1);
        int n = order.length;
        for (int k = 0; k < n; k++) {
            next[k] = k + 1;
        }
        next[n] = 0;
        int open = n;
        long waste = 0;
        for (int r = 0; r < width.length && open > 0; r++) {
            stretches = 1;
            x[0] = 0;
            y[0] = 0;
            x[1] = width[r];
            int at = lowest();
            while (open > 0 && y[at] < length[r]) {
                if (place(order, at, r, length[r])) {
                    open--;
                } else {
                    int level = Math.min(wall(at - 1, length[r]), wall(at + 1, length[r]));
                    waste += (long) (x[at + 1] - x[at]) * (level - y[at]);
                    y[at] = level;
                    join(at);
                }
                if (waste > allowed) {
                    return Long.MAX_VALUE;
                }
                at = lowest();
            }
        }
        long left = 0;
        for (int k = next[0]; open > 0 && k != 0; k = next[k]) {
            left += (long) pieces.across[order[k - 1]] * pieces.along[order[k - 1]];
        }
        return left;
    }

    private int lowest() {
        int best = 0;
        for (int s = 1; s < stretches; s++) {
            if (y[s] < y[best]) {
                best = s;
            }
        }
        work.spend(stretches);
        return best;
    }

    private int wall(int stretch, int length) {
        return stretch < 0 || stretch >= stretches ? length : y[stretch];
    }

    /** Puts the best piece into a notch; false if none fits. */
    private boolean place(int[] order, int at, int r, int length) {
        int gap = x[at + 1] - x[at];
        int room = length - y[at];
        int left = wall(at - 1, length) - y[at];
        int right = wall(at + 1, length) - y[at];
        int best = -1;
        int before = 0;
        boolean bestTurned = false;
        int steps = 0;
        for (int previous = 0, k = next[0]; k != 0 && best < AS_WIDE_AND_LEVEL; previous = k, k = next[k]) {
            steps++;
            int i = order[k - 1];
            int score = score(pieces.across[i], pieces.along[i], gap, room, left, right);
            boolean other = false;
            if (pieces.turns[i]) {
                int lying = score(pieces.along[i], pieces.across[i], gap, room, left, right);
                other = lying > score;
                score = Math.max(score, lying);
            }
            if (score > best) {
                best = score;
                before = previous;
                bestTurned = other;
            }
        }
        work.spend(steps);
        if (best < 0) {
            return false;
        }
        int i = order[next[before] - 1];
        next[before] = next[next[before]];
        int wide = bestTurned ? pieces.along[i] : pieces.across[i];
        int high = bestTurned ? pieces.across[i] : pieces.along[i];
        boolean toRight = wide < gap && high != left && (high == right || right > left);
        roll[i] = r;
        turned[i] = bestTurned;
        alongAt[i] = y[at];
        acrossAt[i] = toRight ? x[at + 1] - wide : x[at];
        cover(at, wide, y[at] + high, toRight);
        return true;
    }

    private static int score(int wide, int high, int gap, int room, int left, int right) {
        if (wide > gap || high > room) {
            return -1;
        }
        boolean level = high == left || high == right;
        if (wide == gap) {
            return level ? AS_WIDE_AND_LEVEL : AS_WIDE;
        }
        return level ? LEVEL : 0;
    }

    /** Raises a part of a stretch, at its left or its right end. */
    private void cover(int at, int wide, int level, boolean toRight) {
        if (wide == x[at + 1] - x[at]) {
            y[at] = level;
            join(at);
            return;
        }
        int added = toRight ? at + 1 : at;
        int start = toRight ? x[at + 1] - wide : x[at];
        if (!toRight) {
            x[at] += wide;
        }
        System.arraycopy(x, added, x, added + 1, stretches - added + 1);
        System.arraycopy(y, added, y, added + 1, stretches - added);
        x[added] = start;
        y[added] = level;
        stretches++;
        join(added);
    }

    /** Joins a stretch with neighbours of the same level. */
    private void join(int at) {
        if (at + 1 < stretches && y[at + 1] == y[at]) {
            remove(at + 1);
        }
        if (at > 0 && y[at - 1] == y[at]) {
            remove(at);
        }
    }

    private void remove(int at) {
        System.arraycopy(x, at + 1, x, at, stretches - at);
        System.arraycopy(y, at + 1, y, at, stretches - at - 1);
        stretches--;
    }
}
