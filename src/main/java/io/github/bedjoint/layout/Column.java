package io.github.bedjoint.layout;

import java.util.Arrays;

/**
 * What a strip needs, seen along the strip: parts that hang together, from low to high, growing as the strip is widened. A movement
 * joint across the strip keeps the parts on either side of it apart.
 */
final class Column {
    private final long[] bars;
    private long[] low = new long[8];
    private long[] high = new long[8];
    private long[] from = new long[8];
    private long[] to = new long[8];
    private int size;

    Column(long[] bars) {
        this.bars = bars;
    }

    void clear() {
        size = 0;
    }

    int size() {
        return size;
    }

    long low(int part) {
        return low[part];
    }

    long high(int part) {
        return high[part];
    }

    /** Where part of the strip the film of this part begins across it. */
    long from(int part) {
        return from[part];
    }

    long to(int part) {
        return to[part];
    }

    /** Widens the strip by a to b, which follows what it had. */
    void widen(Region needed, long a, long b) {
        for (int i = needed.slabBeyond(a); i < needed.slabs() && needed.from(i) < b; i++) {
            long u1 = Math.max(needed.from(i), a);
            long u2 = Math.min(needed.to(i), b);
            if (u1 < u2) {
                for (Region.Cell cell : needed.cells(i)) {
                    split(
                            Math.min(cell.low().floorAt(u1), cell.low().floorAt(u2)),
                            Math.max(cell.high().ceilAt(u1), cell.high().ceilAt(u2)),
                            u1, u2);
                }
            }
        }
    }

    private void split(long a, long b, long u1, long u2) {
        long begin = a;
        for (long bar : bars) {
            if (begin < bar && bar < b) {
                add(begin, bar, u1, u2);
                begin = bar;
            }
        }
        add(begin, b, u1, u2);
    }

    private boolean isBar(long v) {
        return bars.length > 0 && Arrays.binarySearch(bars, v) >= 0;
    }

    private void add(long a, long b, long u1, long u2) {
        int i = 0;
        while (i < size && (high[i] < a || high[i] == a && isBar(a))) {
            i++;
        }
        int j = i;
        long[] part = {a, b, u1, u2};
        while (j < size && (low[j] < b || low[j] == b && !isBar(b))) {
            part[0] = Math.min(part[0], low[j]);
            part[1] = Math.max(part[1], high[j]);
            part[2] = Math.min(part[2], from[j]);
            part[3] = Math.max(part[3], to[j]);
            j++;
        }
        if (i == j && size == low.length) {
            low = Arrays.copyOf(low, 2 * size);
            high = Arrays.copyOf(high, 2 * size);
            from = Arrays.copyOf(from, 2 * size);
            to = Arrays.copyOf(to, 2 * size);
        }
        int rest = size - j;
        shift(low, j, i + 1, rest);
        shift(high, j, i + 1, rest);
        shift(from, j, i + 1, rest);
        shift(to, j, i + 1, rest);
        size += i + 1 - j;
        low[i] = part[0];
        high[i] = part[1];
        from[i] = part[2];
        to[i] = part[3];
    }

    private static void shift(long[] array, int at, int to, int length) {
        if (at != to) {
            System.arraycopy(array, at, array, to, length);
        }
    }
}
