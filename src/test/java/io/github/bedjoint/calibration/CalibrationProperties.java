package io.github.bedjoint.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.labour.Amounts;
import io.github.bedjoint.labour.Driver;
import io.github.bedjoint.working.WorkingCheck;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

class CalibrationProperties {
    private static final List<Driver> DRIVERS = List.of(Driver.HEATED_AREA, Driver.SEAM, Driver.PANEL, Driver.CORNER);

    private static JobLog log(long seed, double noiseS) {
        Random random = new Random(seed);
        List<LogEntry> entries = new ArrayList<>();
        int n = 8 + random.nextInt(10);
        for (int i = 0; i < n; i++) {
            Amounts amounts = Amounts.none()
                    .withInner(Driver.HEATED_AREA, 5 + random.nextInt(60))
                    .withInner(Driver.SEAM, 1 + random.nextInt(40))
                    .withInner(Driver.PANEL, 1 + random.nextInt(20))
                    .withInner(Driver.CORNER, i % 4 == 0 ? 1 : random.nextInt(3));
            double hoursS = amounts.inner(Driver.HEATED_AREA) * 900 + amounts.inner(Driver.SEAM) * 120 + amounts.inner(Driver.PANEL) * 800
                    + amounts.inner(Driver.CORNER) * 600 + noiseS * random.nextDouble();
            entries.add(new LogEntry("job " + i, amounts, hoursS, 0.5 + random.nextDouble(), Optional.empty()));
        }
        return JobLog.of(DRIVERS, entries);
    }

    @Property
    void fit_exactHours_givesThePacesBack(@ForAll long seed) {
        PaceFit fit = Calibration.withDefaults().fit(log(seed, 0));
        if (fit.isPossible()) {
            assertThat(fit.pace(Driver.HEATED_AREA).inner()).isCloseTo(900, within(1e-6));
            assertThat(fit.pace(Driver.SEAM).inner()).isCloseTo(120, within(1e-6));
            assertThat(fit.pace(Driver.PANEL).inner()).isCloseTo(800, within(1e-6));
            assertThat(fit.pace(Driver.CORNER).inner()).isCloseTo(600, within(1e-5));
        }
    }

    /** Residuals of least squares are at right angles to every column, whatever the weights. */
    @Property
    void residuals_atRightAnglesToEveryDriver(@ForAll long seed) {
        JobLog log = log(seed, 20_000);
        double[][] rows = rows(log);
        double[] y = log.entries().stream().mapToDouble(LogEntry::hoursS).toArray();
        double[] weights = log.entries().stream().mapToDouble(LogEntry::weight).toArray();
        double[] left = new LeastSquares(rows, y, weights).residuals();
        for (int j = 0; j < DRIVERS.size(); j++) {
            double product = 0;
            double size = 0;
            for (int i = 0; i < left.length; i++) {
                product += left[i] * Math.sqrt(weights[i]) * rows[i][j];
                size += y[i] * weights[i] * rows[i][j];
            }
            assertThat(product).isCloseTo(0, within(1e-9 * size));
        }
    }

    /** The non-negative fit is the best of all fits with some columns left out in which nothing is negative: tried one by one. */
    @Property
    void nonNegative_isTheBestOfAllSelections(@ForAll long seed) {
        Random random = new Random(seed);
        int n = 6 + random.nextInt(6);
        int p = 1 + random.nextInt(4);
        double[][] rows = new double[n][p];
        double[] y = new double[n];
        double[] weights = new double[n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < p; j++) {
                rows[i][j] = random.nextDouble() * 10;
            }
            y[i] = random.nextDouble() * 100 - 20;
            weights[i] = 0.5 + random.nextDouble();
        }
        double[] found = new NonNegative(rows, y, weights).solve();
        assertThat(Arrays.stream(found).min().orElseThrow()).isGreaterThanOrEqualTo(0);
        double best = Double.POSITIVE_INFINITY;
        for (int selection = 0; selection < 1 << p; selection++) {
            double[] all = new double[p];
            int chosen = selection;
            int[] columns = java.util.stream.IntStream.range(0, p).filter(j -> (chosen >> j & 1) == 1).toArray();
            if (columns.length > 0) {
                double[][] some = Arrays.stream(rows).map(row -> Arrays.stream(columns).mapToDouble(j -> row[j]).toArray()).toArray(double[][]::new);
                double[] solved = new LeastSquares(some, y, weights).coefficients;
                for (int k = 0; k < columns.length; k++) {
                    all[columns[k]] = solved[k];
                }
            }
            if (Arrays.stream(all).allMatch(x -> x >= 0)) {
                best = Math.min(best, squares(rows, y, weights, all));
            }
        }
        assertThat(squares(rows, y, weights, found)).isCloseTo(best, within(1e-7 * best + 1e-9));
    }

    private static double squares(double[][] rows, double[] y, double[] weights, double[] x) {
        double sum = 0;
        for (int i = 0; i < y.length; i++) {
            double left = y[i];
            for (int j = 0; j < x.length; j++) {
                left -= rows[i][j] * x[j];
            }
            sum += weights[i] * left * left;
        }
        return sum;
    }

    private static double[][] rows(JobLog log) {
        return log.entries().stream()
                .map(entry -> DRIVERS.stream().mapToDouble(entry.amounts()::inner).toArray())
                .toArray(double[][]::new);
    }

    @Property
    void working_ofAnyFit_textEqualsCode(@ForAll long seed, @ForAll boolean jobTime, @ForAll boolean given) {
        PaceFit fit = Calibration.withDefaults()
                .withJobTime(jobTime)
                .withWeighting(given ? Calibration.Weighting.GIVEN : Calibration.Weighting.EQUAL)
                .withSign(given ? Calibration.Sign.NOT_NEGATIVE : Calibration.Sign.FREE)
                .fit(log(seed, 50_000));
        if (fit.isPossible()) {
            WorkingCheck.check(fit.working());
            WorkingCheck.check(fit.predict(Amounts.none().withInner(Driver.SEAM, 10).withInner(Driver.CORNER, 1), 0.9).working());
            fit.paces().forEach(pace -> assertThat(pace.isHeldAtZero() || pace.inflation() >= 1 - 1e-9).isTrue());
        }
    }

    @Property
    void fit_jobsInAnotherOrder_samePaces(@ForAll long seed) {
        JobLog log = log(seed, 20_000);
        List<LogEntry> turned = new ArrayList<>(log.entries());
        Collections.shuffle(turned, new Random(seed));
        PaceFit one = Calibration.withDefaults().fit(log);
        PaceFit two = Calibration.withDefaults().fit(JobLog.of(DRIVERS, turned));
        assertThat(two.isPossible()).isEqualTo(one.isPossible());
        for (FittedPace pace : one.paces()) {
            assertThat(two.pace(pace.driver()).inner()).isCloseTo(pace.inner(), within(1e-7 * (1 + Math.abs(pace.inner()))));
        }
    }
}
