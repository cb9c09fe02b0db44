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
        long begin = a;
        long end = b;
        long first = u1;
        long last = u2;
        while (j < size && (low[j] < b || low[j] == b && !isBar(b))) {
            begin = Math.min(begin, low[j]);
            end = Math.max(end, high[j]);
            first = Math.min(first, from[j]);
            last = Math.max(last, to[j]);
            j++;
        }
        if (i == j && size == low.length) {
            low = Arrays.copyOf(low, 2 * size);
            high = Arrays.copyOf(high, 2 * size);
            from = Arrays.copyOf(from, 2 * size);
            to = Arrays.copyOf(to, 2 * size);
        }
        if (j != i + 1) {
            int rest = size - j;
            System.arraycopy(low, j, low, i + 1, rest);
            System.arraycopy(high, j, high, i + 1, rest);
            System.arraycopy(from, j, from, i + 1, rest);
            System.arraycopy(to, j, to, i + 1, rest);
        }
        size += i + 1 - j;
        low[i] = begin;
        high[i] = end;
        from[i] = first;
        to[i] = last;
    }
}
