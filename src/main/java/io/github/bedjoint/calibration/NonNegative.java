package io.github.bedjoint.calibration;

import java.util.ArrayList;
import java.util.List;

/**
 * Least squares with no coefficient below zero, by the active set method of Lawson and Hanson: columns enter one by one where they help most, and leave where they would turn negative.
 */
final class NonNegative {
    private static final double NO_HELP = 1e-12;

    private final double[][] rows;
    private final double[] y;
    private final double[] weights;

    NonNegative(double[][] rows, double[] y, double[] weights) {
        this.rows = rows;
        this.y = y;
        this.weights = weights;
    }

    /** The coefficients; those of columns that do not help are exactly zero. */
    double[] solve() {
        int p = rows[0].length;
        double[] x = new double[p];
        List<Integer> in = new ArrayList<>();
        // Each round lowers the sum of squares or ends; the bound is only there against a tie of rounding.
        for (int round = 0; round < 100 * p; round++) {
            int entering = entering(x, in);
            if (entering < 0) {
                break;
            }
            in.add(entering);
            double[] full = solved(in);
            if (full[entering] <= 0) {
                in.remove(Integer.valueOf(entering));
                break;
            }
            while (in.stream().anyMatch(j -> full[j] <= 0)) {
                double step = 1;
                for (int j : in) {
                    if (full[j] <= 0) {
                        step = Math.min(step, x[j] / (x[j] - full[j]));
                    }
                }
                for (int j = 0; j < p; j++) {
                    x[j] += step * (full[j] - x[j]);
                }
                double[] now = x;
                double[] before = full;
                in.removeIf(j -> before[j] <= 0 && now[j] <= 1e-14 * Math.abs(before[j]));
                for (int j = 0; j < p; j++) {
                    x[j] = in.contains(j) ? x[j] : 0;
                }
                System.arraycopy(solved(in), 0, full, 0, p);
            }
            x = full;
        }
        return x;
    }

    /** The column outside whose growth lowers the sum of squares fastest, or -1. */
    private int entering(double[] x, List<Integer> in) {
        double[] left = y.clone();
        for (int i = 0; i < left.length; i++) {
            for (int j = 0; j < x.length; j++) {
                left[i] -= rows[i][j] * x[j];
            }
        }
        int best = -1;
        double most = NO_HELP;
        for (int j = 0; j < x.length; j++) {
            double slope = 0;
            double length = 0;
            double target = 0;
            for (int i = 0; i < left.length; i++) {
                slope += weights[i] * rows[i][j] * left[i];
                length += weights[i] * rows[i][j] * rows[i][j];
                target += weights[i] * y[i] * y[i];
            }
            double share = slope / Math.sqrt(length * target);
            if (!in.contains(j) && share > most) {
                most = share;
                best = j;
            }
        }
        return best;
    }

    private double[] solved(List<Integer> in) {
        double[] all = new double[rows[0].length];
        if (in.isEmpty()) {
            return all;
        }
        double[][] some = new double[rows.length][in.size()];
        for (int i = 0; i < rows.length; i++) {
            for (int k = 0; k < in.size(); k++) {
                some[i][k] = rows[i][in.get(k)];
            }
        }
        double[] solved = new LeastSquares(some, y, weights).coefficients;
        for (int k = 0; k < in.size(); k++) {
            all[in.get(k)] = solved[k];
        }
        return all;
    }
}
