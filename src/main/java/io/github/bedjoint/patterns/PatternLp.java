package io.github.bedjoint.patterns;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * The relaxed problem: how much of each pattern to cut so that every panel is covered at least cost, fractions allowed.
 * Patterns are generated when the prices of panels show that they pay.
 *
 * <p>Panels that no pattern covers are bought at a high price, so that there is always a solution.
 */
public final class PatternLp {

    /** How a solution ended. */
    public enum End {
        /** The prices are final and everything is covered. */
        SOLVED,
        /** The prices show that the rolls cannot cover everything, even in fractions. */
        UNCOVERED,
        /** The work is over, or the numbers do not decide. */
        UNSURE
    }

    /** How many rolls, perhaps a fraction, are cut to a pattern. */
    record Share(Pattern pattern, double rolls) {}

    private static final double EPS = 1e-8;

    /** Patterns without a panel in common that are taken at the same prices. */
    private static final int SIBLINGS = 8;

    private final Model model;
    private final int[] available;
    private final PatternPool pool;
    private final Work work;
    private final Knapsack knapsack;
    private final int[] rowOfItem;
    private final int[] rowOfKind;
    private final List<Simplex.Column> logical = new ArrayList<>();
    private final List<Pattern> patterns = new ArrayList<>();
    private final List<Simplex.Column> columns = new ArrayList<>();
    private final Simplex simplex;

    /** Whole-number prices of the last round. */
    final long[] price;

    /** What a roll of each type holds at most at these prices. */
    final long[] held;

    private double scale;
    private final double costScale;
    private final boolean coverOnly;

    PatternLp(Model model, PatternPool pool, Work work) {
        this(model, model.demand, pool, work);
    }

    /** A pattern holds a panel at most as often as it is available. */
    public PatternLp(Model model, int[] available, PatternPool pool, Work work) {
        this.model = model;
        this.available = available;
        this.pool = pool;
        this.work = work;
        this.knapsack = new Knapsack(model, work);
        rowOfItem = new int[model.items()];
        rowOfKind = new int[model.supply.length];
        held = new long[model.types()];
        price = new long[model.items()];
        List<Simplex.Column> start = new ArrayList<>();
        List<Double> right = new ArrayList<>();
        long dearest = Arrays.stream(model.cost).max().orElse(0);
        coverOnly = dearest == 0;
        costScale = coverOnly ? 1 : 1.0 / dearest;
        for (int i = 0; i < model.items(); i++) {
            rowOfItem[i] = -1;
            if (model.demand[i] > 0) {
                rowOfItem[i] = start.size();
                double cost = coverOnly ? (double) model.size[i] / model.size[0] : 10;
                logical.add(Simplex.Column.unit(start.size(), -1, 0));
                start.add(Simplex.Column.unit(start.size(), 1, cost));
                right.add((double) model.demand[i]);
            }
        }
        int pieces = model.pieces();
        for (int k = 0; k < model.supply.length; k++) {
            rowOfKind[k] = -1;
            if (model.supply[k] < pieces) {
                rowOfKind[k] = start.size();
                Simplex.Column slack = Simplex.Column.unit(start.size(), 1, 0);
                logical.add(slack);
                start.add(slack);
                right.add((double) model.supply[k]);
            }
        }
        simplex = new Simplex(
                start.toArray(Simplex.Column[]::new),
                right.stream().mapToDouble(Double::doubleValue).toArray(),
                work);
        for (Pattern pattern : pool.patterns()) {
            adopt(pattern);
        }
    }

    /** Takes a pattern over as far as its panels are asked for. */
    private void adopt(Pattern pattern) {
        if (model.supply[model.kind[pattern.type()]] == 0) {
            return;
        }
        int[] counts = new int[model.items()];
        int used = 0;
        for (int i = 0; i < counts.length; i++) {
            counts[i] = Math.min(pattern.counts()[i], available[i]);
            used += counts[i] > 0 ? 1 : 0;
        }
        if (used > 0) {
            addColumn(pattern.type(), counts, used);
        }
    }

    private void addColumn(int type, int[] counts, int used) {
        int supplyRow = rowOfKind[model.kind[type]];
        int[] row = new int[used + (supplyRow < 0 ? 0 : 1)];
        double[] value = new double[row.length];
        int k = 0;
        for (int i = 0; i < counts.length; i++) {
            if (counts[i] > 0) {
                row[k] = rowOfItem[i];
                value[k++] = counts[i];
            }
        }
        if (supplyRow >= 0) {
            row[k] = supplyRow;
            value[k] = 1;
        }
        columns.add(new Simplex.Column(row, value, model.cost[type] * costScale, patterns.size()));
        patterns.add(new Pattern(type, counts));
    }

    /** Improves until the prices are final. */
    public End solve() {
        while (!work.isOver()) {
            if (improveOnce()) {
                if (coverOnly && simplex.objective() < EPS) {
                    return End.SOLVED;
                }
                continue;
            }
            readPrices();
            boolean found = generate();
            if (coverOnly && priceOfAll() > heldByAll()) {
                return End.UNCOVERED;
            }
            if (!found) {
                return coverOnly ? End.UNSURE : End.SOLVED;
            }
        }
        return End.UNSURE;
    }

    private boolean improveOnce() {
        Simplex.Column best = null;
        double least = -EPS;
        for (Simplex.Column column : logical) {
            double cost = simplex.reducedCost(column);
            if (cost < least) {
                least = cost;
                best = column;
            }
        }
        for (Simplex.Column column : columns) {
            double cost = simplex.reducedCost(column);
            if (cost < least) {
                least = cost;
                best = column;
            }
        }
        work.spend(columns.size());
        return best != null && simplex.enter(best);
    }

    private void readPrices() {
        double top = 1e-12;
        for (int i = 0; i < price.length; i++) {
            top = rowOfItem[i] < 0 ? top : Math.max(top, simplex.dual(rowOfItem[i]));
        }
        scale = (1 << 28) / top;
        for (int i = 0; i < price.length; i++) {
            price[i] = rowOfItem[i] < 0 ? 0 : (long) (Math.max(0, simplex.dual(rowOfItem[i])) * scale);
        }
    }

    /** The prices in parts of a minor money unit, rounded down. */
    public long[] pricesIn(long parts) {
        long[] rounded = new long[price.length];
        for (int i = 0; i < rounded.length; i++) {
            double value = rowOfItem[i] < 0 ? 0 : Math.max(0, simplex.dual(rowOfItem[i])) / costScale * parts;
            rounded[i] = (long) Math.min(1L << 30, value + 1e-6);
        }
        return rounded;
    }

    /** Whether the prices are whole numbers of such parts of a minor money unit, as far as can be told. */
    public boolean isWholeIn(int parts) {
        for (int row : rowOfItem) {
            double value = row < 0 ? 0 : simplex.dual(row) / costScale * parts;
            if (Math.abs(value - Math.rint(value)) > 1e-6) {
                return false;
            }
        }
        return true;
    }

    /** Adds the best pattern of each type that pays. */
    private boolean generate() {
        boolean found = false;
        for (int r = 0; r < model.types(); r++) {
            int supplyRow = rowOfKind[model.kind[r]];
            double rent = supplyRow < 0 ? 0 : Math.max(0, -simplex.dual(supplyRow));
            long floor = (long) Math.ceil((model.cost[r] * costScale + rent + EPS) * scale);
            if (model.supply[model.kind[r]] == 0) {
                held[r] = Long.MAX_VALUE;
                continue;
            }
            int[] open = available.clone();
            long value = knapsack.fill(r, price, open, floor, Knapsack.Effort.BETTER);
            held[r] = knapsack.upper;
            for (int k = 0; k < SIBLINGS && value > floor; k++) {
                found = true;
                int[] counts = knapsack.pattern.clone();
                pool.add(r, counts);
                addColumn(r, counts, (int) Arrays.stream(counts).filter(c -> c > 0).count());
                for (int i = 0; i < open.length; i++) {
                    open[i] = counts[i] > 0 ? 0 : open[i];
                }
                value = k + 1 < SIBLINGS ? knapsack.fill(r, price, open, floor, Knapsack.Effort.GOOD) : floor;
            }
        }
        return found;
    }

    private long priceOfAll() {
        long sum = 0;
        for (int i = 0; i < price.length; i++) {
            sum += price[i] * model.demand[i];
        }
        return sum;
    }

    private long heldByAll() {
        long sum = 0;
        for (int r = 0; r < held.length; r++) {
            int supply = model.supply[model.kind[r]];
            sum += supply == 0 ? 0 : held[r] * supply;
        }
        return sum;
    }

    /** The patterns used, those used most first. */
    List<Share> shares() {
        List<Share> shares = new ArrayList<>();
        for (int i = 0; i < simplex.rows(); i++) {
            if (simplex.basic(i).tag() >= 0 && simplex.level(i) > EPS) {
                shares.add(new Share(patterns.get(simplex.basic(i).tag()), simplex.level(i)));
            }
        }
        shares.sort(Comparator.comparingDouble(s -> -s.rolls()));
        return shares;
    }
}
