package io.github.bedjoint.skyline;

import io.github.bedjoint.patterns.Work;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntToLongFunction;
import java.util.stream.IntStream;

/** Looks for an order in which the skyline places all pieces: swaps two and keeps that if no more area is left over. */
public final class SkylineSearch {

    /** Swaps in vain before another start. */
    private static final int PATIENCE = 2_000;

    private final Pieces pieces;
    private final List<int[]> starts = new ArrayList<>();
    private final int[] width;
    private final int[] length;
    private int[] order;
    private int restarts;
    private long random = 88_172_645_463_325_252L;

    public final Skyline skyline;

    public SkylineSearch(Pieces pieces, int[] width, int[] length) {
        this.pieces = pieces;
        this.width = width;
        this.length = length;
        skyline = new Skyline(pieces);
        starts.add(by(i -> (long) pieces.across[i] * pieces.along[i]));
        starts.add(by(i -> (long) pieces.across[i] << 31 | pieces.along[i]));
        starts.add(by(i -> (long) pieces.along[i] << 31 | pieces.across[i]));
        starts.add(by(i -> (long) pieces.across[i] + pieces.along[i]));
        order = starts.get(0).clone();
    }

    private int[] by(IntToLongFunction key) {
        return IntStream.range(0, pieces.count())
                .boxed()
                .sorted(Comparator.comparingLong(i -> -key.applyAsLong(i)))
                .mapToInt(i -> i)
                .toArray();
    }

    /** The orders to begin with. */
    List<int[]> starts() {
        return starts;
    }

    /** Goes on from this order. */
    void from(int[] start) {
        order = start.clone();
    }

    /** Looks on until all pieces lie on the rolls or the work is over. */
    public boolean run(Work work) {
        long slack = -pieces.area();
        for (int r = 0; r < width.length; r++) {
            slack += (long) width[r] * length[r];
        }
        if (slack < 0 || pieces.count() == 0) {
            return pieces.count() == 0;
        }
        long left = skyline.run(order, width, length, Long.MAX_VALUE, work);
        int vain = 0;
        while (left > 0 && !work.isOver() && pieces.count() > 1) {
            int a = next(order.length);
            int b = next(order.length);
            swap(order, a, b);
            long now = skyline.run(order, width, length, left + slack, work);
            if (now > left) {
                swap(order, a, b);
            }
            vain = now < left ? 0 : vain + 1;
            left = Math.min(left, now);
            if (vain > PATIENCE && left > 0) {
                vain = 0;
                left = restart(work);
            }
        }
        return left == 0;
    }

    private long restart(Work work) {
        restarts++;
        order = starts.get(restarts % starts.size()).clone();
        for (int k = 0; k <= order.length / 4; k++) {
            swap(order, next(order.length), next(order.length));
        }
        return skyline.run(order, width, length, Long.MAX_VALUE, work);
    }

    private static void swap(int[] order, int a, int b) {
        int piece = order[a];
        order[a] = order[b];
        order[b] = piece;
    }

    /** The xorshift generator of Marsaglia with a fixed seed: the same numbers everywhere. */
    private int next(int below) {
        random ^= random << 13;
        random ^= random >>> 7;
        random ^= random << 17;
        return (int) ((random >>> 1) % below);
    }
}
