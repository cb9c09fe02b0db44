package io.github.bedjoint.layout;

import io.github.bedjoint.survey.Opening;
import io.github.bedjoint.survey.RandomWalls;
import io.github.bedjoint.survey.Side;
import io.github.bedjoint.survey.Wall;
import io.github.bedjoint.units.Steps;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/**
 * The cheapest drops whose seams lie on a grid of 10 mm, by trying every place on a picture of squares. It shares nothing with the
 * planner but the statement of the problem, and is exact for walls whose edges all lie on the grid. Sizes are counted in squares.
 */
final class GridReference {
    private static final long G = RandomWalls.GRID;
    private static final double M = Steps.toM(G);

    private final Wall wall;
    private final Rates rates;
    private final int overlap;
    private final int printable;
    private final int least;
    private final int jamb;
    private final int corner;
    private final BitSet[] needed;
    private final BitSet[] seen;
    private final boolean[] column;
    private final boolean[] barred;
    private final long left;
    private final long bottom;
    private int period;
    private int offset;
    private int clearance;
    private double perM;
    private final List<Integer> jambs = new ArrayList<>();
    private final List<int[]> holes = new ArrayList<>();

    GridReference(Wall wall, Rates rates, int printable, int overlap, int least, int jamb, int corner) {
        this.wall = wall;
        this.rates = rates;
        this.printable = printable;
        this.overlap = overlap;
        this.least = Math.max(least, 2 * overlap);
        this.jamb = jamb;
        this.corner = corner;
        left = wall.outline().reach(Side.LEFT) - wall.edge(Side.LEFT).extraSteps();
        bottom = wall.outline().reach(Side.BOTTOM) - wall.edge(Side.BOTTOM).extraSteps();
        int columns = (int) ((wall.outline().reach(Side.RIGHT) + wall.edge(Side.RIGHT).extraSteps() - left) / G);
        int rows = (int) ((wall.outline().reach(Side.TOP) + wall.edge(Side.TOP).extraSteps() - bottom) / G);
        needed = new BitSet[columns];
        seen = new BitSet[columns];
        column = new boolean[columns];
        Raster raster = new Raster(wall);
        for (int i = 0; i < columns; i++) {
            needed[i] = new BitSet(rows);
            seen[i] = new BitSet(rows);
            for (int j = 0; j < rows; j++) {
                int place = raster.place(left + i * G + G / 2, bottom + j * G + G / 2);
                seen[i].set(j, place == 0);
                needed[i].set(j, place == 0 || place == 2);
            }
            column[i] = !needed[i].isEmpty();
        }
        barred = new boolean[columns];
        wall.movementJoints().forEach(j -> barred[(int) ((j.atSteps() - left) / G)] = true);
        for (Opening o : wall.openings()) {
            if (o.staysOpen()) {
                jambs.add(square(o.leftSteps() - left));
                jambs.add(square(o.rightSteps() - left));
                // What is cut out: the opening without the flaps that are turned in.
                holes.add(new int[] {
                    square(o.leftSteps() - left + Math.max(0, raster.reach(o, Side.LEFT))),
                    square(o.rightSteps() - left - Math.max(0, raster.reach(o, Side.RIGHT))),
                    square(o.bottomSteps() - bottom + Math.max(0, raster.reach(o, Side.BOTTOM))),
                    square(o.topSteps() - bottom - Math.max(0, raster.reach(o, Side.TOP)))});
            }
        }
    }

    private static int square(long steps) {
        return (int) (steps / G);
    }

    /** Joints beside the seam, in squares from the wall's origin, where the edge that begins a strip is forbidden or costs more. */
    GridReference withJoints(int period, int offset, int clearance, double perM) {
        this.period = period;
        this.offset = offset;
        this.clearance = clearance;
        this.perM = perM;
        return this;
    }

    private double besideJointPerM(int seam) {
        if (period == 0) {
            return 0;
        }
        int phase = Math.floorMod(seam - square(wall.edge(Side.LEFT).extraSteps()) - offset, period);
        return Math.min(phase, period - phase) < clearance ? perM : 0;
    }

    /** The least cost, infinite where there is no layout. */
    double cost() {
        int n = column.length;
        double[] behindSeam = new double[n + 1];
        double[] fresh = new double[n + 1];
        Arrays.fill(behindSeam, Double.POSITIVE_INFINITY);
        Arrays.fill(fresh, Double.POSITIVE_INFINITY);
        int start = first(0);
        fresh[start] = 0;
        double total = Double.POSITIVE_INFINITY;
        for (int s = start; s < n; s++) {
            for (boolean isFresh : new boolean[] {true, false}) {
                double before = isFresh ? fresh[s] : behindSeam[s];
                if (Double.isInfinite(before)) {
                    continue;
                }
                BitSet rows = new BitSet();
                int shownFrom = isFresh ? shown(s, 1) : s;
                for (int e = s + 1; e <= Math.min(n, s + printable) && (e == s + 1 || !barred[e - 1]); e++) {
                    rows.or(needed[e - 1]);
                    double strip = strip(s, e, rows);
                    boolean ends = e == n || !column[e] || barred[e];
                    if (ends && column[e - 1] && (isFresh || shown(e - 1, -1) + 1 - shownFrom >= least)) {
                        int next = first(e);
                        if (next == n) {
                            total = Math.min(total, before + strip);
                        } else {
                            fresh[next] = Math.min(fresh[next], before + strip);
                        }
                    }
                    int seam = e - overlap;
                    if (seam > s && e - shownFrom >= least && isAllowed(seam) && besideJointPerM(seam) < Double.POSITIVE_INFINITY) {
                        behindSeam[seam] = Math.min(behindSeam[seam], before + strip + (rates.seamPerM() + besideJointPerM(seam)) * seamM(seam));
                    }
                }
            }
        }
        return total;
    }

    private int first(int from) {
        int at = from;
        while (at < column.length && !column[at]) {
            at++;
        }
        return at;
    }

    /** The next column with wall that is seen, within the same stretch. */
    private int shown(int from, int step) {
        int at = from;
        while (seen[at].isEmpty()) {
            at += step;
        }
        return at;
    }

    private boolean isAllowed(int seam) {
        for (int line : jambs) {
            if (near(line, jamb, seam)) {
                return false;
            }
        }
        for (int i = 0; i < wall.outline().points().size(); i++) {
            Side side = wall.outline().side(i);
            if ((side == Side.LEFT || side == Side.RIGHT) && near(square(wall.outline().point(i).xSteps() - left), corner, seam)) {
                return false;
            }
        }
        for (int c = seam; c <= seam + overlap && c < barred.length; c++) {
            if (barred[c]) {
                return false;
            }
        }
        return true;
    }

    private boolean near(int line, int clearance, int seam) {
        return clearance > 0 && seam + overlap > line - clearance && seam < line + clearance;
    }

    private double seamM(int seam) {
        int squares = 0;
        for (int i = seam; i < Math.min(seam + overlap, seen.length); i++) {
            squares += seen[i].cardinality();
        }
        return squares * M / overlap;
    }

    private double strip(int s, int e, BitSet rows) {
        double cost = 0;
        int low = rows.nextSetBit(0);
        while (low >= 0) {
            int high = rows.nextClearBit(low);
            int next = rows.nextSetBit(high);
            while (next >= 0
                    && rates.filmPerM() * (next - high) * M + rates.perCutOut() * holesWithin(s, e, high, next) < rates.perPanel()) {
                high = rows.nextClearBit(next);
                next = rows.nextSetBit(high);
            }
            cost += piece(s, e, low, high);
            low = next;
        }
        return cost;
    }

    private double piece(int s, int e, int low, int high) {
        if (rates.perCutOut() == 0) {
            return rates.filmPerM() * (high - low) * M + rates.perPanel();
        }
        int from = e;
        int to = s;
        for (int i = s; i < e; i++) {
            int square = needed[i].nextSetBit(low);
            if (square >= 0 && square < high) {
                from = Math.min(from, i);
                to = i + 1;
            }
        }
        int cuts = 0;
        for (int[] h : holes) {
            cuts += h[0] < to && from < h[1] && h[2] < high && low < h[3] ? 1 : 0;
        }
        return rates.filmPerM() * (high - low) * M + rates.perPanel() + rates.perCutOut() * cuts;
    }

    private int holesWithin(int s, int e, int low, int high) {
        int count = 0;
        for (int[] h : holes) {
            count += h[0] < e && s < h[1] && h[2] >= low && h[3] <= high ? 1 : 0;
        }
        return count;
    }
}
