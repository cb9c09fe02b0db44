package io.github.bedjoint.calibration;

import io.github.bedjoint.labour.Driver;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** Amounts and hours of jobs as numbers in inner units, and how paces are to be fitted to them. */
record Problem(List<Driver> drivers, double[][] rows, double[] hours, double[] weights, Calibration.Sign sign) {
    int jobs() {
        return rows.length;
    }

    /** The paces that fit best. */
    double[] paces() {
        return sign == Calibration.Sign.FREE ? new LeastSquares(rows, hours, weights).coefficients : new NonNegative(rows, hours, weights).solve();
    }

    /** Why there can be no fit, as far as counting shows it. */
    List<String> shortages() {
        List<String> reasons = new ArrayList<>();
        if (jobs() <= drivers.size()) {
            reasons.add("The log has " + jobs() + " jobs; to fit " + drivers.size() + " paces and to see how sure they are it takes at least "
                    + (drivers.size() + 1) + ". Maybe fit fewer drivers.");
        }
        for (int j = 0; j < drivers.size(); j++) {
            if (isEmpty(j)) {
                reasons.add("No job in the log has any of " + drivers.get(j) + ", so it has no pace. Maybe leave that column out.");
            }
        }
        return reasons;
    }

    /** Whether no job has any of a driver. */
    boolean isEmpty(int column) {
        return IntStream.range(0, jobs()).allMatch(i -> rows[i][column] == 0);
    }

    /** The same without one job. */
    Problem without(int job) {
        int[] kept = IntStream.range(0, jobs()).filter(i -> i != job).toArray();
        return new Problem(
                drivers,
                IntStream.of(kept).mapToObj(i -> rows[i]).toArray(double[][]::new),
                IntStream.of(kept).mapToDouble(i -> hours[i]).toArray(),
                IntStream.of(kept).mapToDouble(i -> weights[i]).toArray(),
                sign);
    }

    /** The same with some drivers only. */
    Problem only(List<Integer> columns) {
        double[][] fewer = new double[jobs()][columns.size()];
        for (int i = 0; i < jobs(); i++) {
            for (int k = 0; k < columns.size(); k++) {
                fewer[i][k] = rows[i][columns.get(k)];
            }
        }
        return new Problem(columns.stream().map(drivers::get).toList(), fewer, hours, weights, sign);
    }

    /** Whether a column is the same for every job: a time per job. */
    boolean isConstant(int column) {
        return IntStream.range(1, jobs()).allMatch(i -> rows[i][column] == rows[0][column]);
    }

    /** Root of the sum of squares of a column by weight: about its mean where another column is constant, otherwise about zero. */
    double spread(int column) {
        boolean centred = !isConstant(column) && IntStream.range(0, drivers.size()).anyMatch(this::isConstant);
        double weight = 0;
        double sum = 0;
        for (int i = 0; i < jobs(); i++) {
            weight += weights[i];
            sum += weights[i] * rows[i][column];
        }
        double mean = centred ? sum / weight : 0;
        double squares = 0;
        for (int i = 0; i < jobs(); i++) {
            squares += weights[i] * (rows[i][column] - mean) * (rows[i][column] - mean);
        }
        return Math.sqrt(squares);
    }

    /** The other column that a column is most alike, by the angle between them. */
    int mostAlike(int column) {
        int most = -1;
        double best = -1;
        for (int other = 0; other < drivers.size(); other++) {
            double product = 0;
            double own = 0;
            double others = 0;
            for (int i = 0; i < jobs(); i++) {
                product += weights[i] * rows[i][column] * rows[i][other];
                own += weights[i] * rows[i][column] * rows[i][column];
                others += weights[i] * rows[i][other] * rows[i][other];
            }
            double cosine = Math.abs(product) / Math.sqrt(own * others);
            if (other != column && cosine > best) {
                best = cosine;
                most = other;
            }
        }
        return most;
    }
}
