package io.github.bedjoint.patterns;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Finds the cheapest counts of rolls that no price list forbids and that have not been tried.
 *
 * <p>Each price list is one row: the sum over the roll types of held x count is at least the price of all panels.
 */
public final class RollCounts {

    /** What rolls of each type hold at most, and what all panels are priced at. */
    public record Row(long[] held, long needed) {}

    private final Model model;
    private final int[] order;
    private final List<Row> rows = new ArrayList<>();
    private final List<int[]> tried = new ArrayList<>();
    private final List<double[]> cheapest = new ArrayList<>();
    private Work work = new Work(0);
    private int[] left = new int[0];
    private int[] count = new int[0];
    private int[] best = new int[0];
    private long below;
    private boolean found;

    public RollCounts(Model model) {
        this.model = model;
        order = IntStream.range(0, model.types())
                .boxed()
                .sorted(Comparator.<Integer, Boolean>comparing(r -> !isFree(r))
                        .thenComparing(model::isUnlimited)
                        .thenComparing(r -> -(double) model.cost[r] / model.cap[r])
                        .thenComparing(r -> model.cap[r]))
                .mapToInt(Integer::intValue)
                .toArray();
    }

    /** Rolls that cost nothing and stand for nothing else: taking them all loses nothing. */
    private boolean isFree(int type) {
        for (int r = 0; r < model.types(); r++) {
            if (r != type && model.kind[r] == model.kind[type]) {
                return false;
            }
        }
        return model.cost[type] == 0;
    }

    /** Adds a price list. */
    public void add(Row row) {
        rows.add(row);
        double[] ratio = new double[order.length + 1];
        ratio[order.length] = Double.POSITIVE_INFINITY;
        for (int k = order.length - 1; k >= 0; k--) {
            long held = row.held()[order[k]];
            double own = held == 0 ? Double.POSITIVE_INFINITY : (double) model.cost[order[k]] / held;
            ratio[k] = Math.min(ratio[k + 1], own);
        }
        cheapest.add(ratio);
    }

    /** These counts and all smaller ones are not given again. */
    public void exclude(int[] counts) {
        tried.add(counts.clone());
    }

    /** Whether a price list rules these counts out. */
    boolean forbids(int[] counts) {
        for (Row row : rows) {
            long held = 0;
            for (int r = 0; r < counts.length; r++) {
                held += row.held()[r] * counts[r];
            }
            if (held < row.needed()) {
                return true;
            }
        }
        return false;
    }

    /**
     * The cheapest counts left.
     *
     * @param under only counts cheaper than this
     * @return counts for each type, or an empty array if there are none; not reliable if the work is over
     */
    public int[] next(long under, Work limit) {
        work = limit;
        left = model.supply.clone();
        count = new int[model.types()];
        below = under;
        found = false;
        long[] need = rows.stream().mapToLong(Row::needed).toArray();
        search(0, 0, need);
        return found ? best : new int[0];
    }

    /** The cost of the cheapest counts if a price list were added. */
    long boundWith(Row row, long under, Work limit) {
        add(row);
        int[] next = next(under, limit);
        rows.remove(rows.size() - 1);
        cheapest.remove(cheapest.size() - 1);
        return next.length == 0 ? under : cost(next);
    }

    public long cost(int[] counts) {
        long sum = 0;
        for (int r = 0; r < counts.length; r++) {
            sum += model.cost[r] * counts[r];
        }
        return sum;
    }

    private void search(int k, long spent, long[] need) {
        if (work.isOver() || spent >= below) {
            return;
        }
        work.spend(4 + rows.size());
        if (k == order.length) {
            close(spent, need);
            return;
        }
        int r = order[k];
        int supply = left[model.kind[r]];
        if (isFree(r)) {
            take(k, supply, spent, need);
            return;
        }
        long needed = 0;
        for (int q = 0; q < need.length; q++) {
            if (need[q] > 0) {
                double least = need[q] * cheapest.get(q)[k];
                if (least * (1 - 1e-12) > below - spent - 1) {
                    return;
                }
                long held = rows.get(q).held()[r];
                if (held > 0) {
                    needed = Math.max(needed, (need[q] + held - 1) / held);
                }
            }
        }
        long useful = needed;
        for (int[] t : tried) {
            useful = Math.max(useful, t[r] + 1);
        }
        int most = (int) Math.min(useful, supply);
        int least = k + 1 == order.length ? (int) Math.min(needed, supply + 1L) : 0;
        if (model.isUnlimited(r)) {
            for (int c = least; c <= most; c++) {
                take(k, c, spent, need);
            }
        } else {
            for (int c = most; c >= least; c--) {
                take(k, c, spent, need);
            }
        }
    }

    private void take(int k, int c, long spent, long[] need) {
        int r = order[k];
        if (c * model.cost[r] >= below - spent) {
            return;
        }
        long[] rest = new long[need.length];
        for (int q = 0; q < need.length; q++) {
            rest[q] = need[q] - c * rows.get(q).held()[r];
        }
        count[r] = c;
        left[model.kind[r]] -= c;
        search(k + 1, spent + c * model.cost[r], rest);
        left[model.kind[r]] += c;
        count[r] = 0;
    }

    private void close(long spent, long[] need) {
        for (long n : need) {
            if (n > 0) {
                return;
            }
        }
        for (int[] t : tried) {
            if (isWithin(count, t)) {
                return;
            }
        }
        found = true;
        below = spent;
        best = count.clone();
    }

    private static boolean isWithin(int[] a, int[] b) {
        for (int r = 0; r < a.length; r++) {
            if (a[r] > b[r]) {
                return false;
            }
        }
        return true;
    }
}
