package io.github.bedjoint.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.labour.Allowance;
import io.github.bedjoint.labour.Amounts;
import io.github.bedjoint.labour.Driver;
import io.github.bedjoint.units.Read;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.working.Verdict;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is found against paces, at the limits of practice, and the figures behind it worked by hand on two or three jobs. */
class FindingsTest {
    private static final List<Driver> TWO = List.of(Driver.HEATED_AREA, Driver.SEAM);

    private static Problem problem(List<Driver> drivers, double[] weights, double[]... rows) {
        return new Problem(drivers, rows, new double[rows.length], weights, Calibration.Sign.FREE);
    }

    private static FittedPace pace(Driver driver, double inner, double error, double inflation) {
        // The standard error is what a job is missed by, times the root of the inflation, over the spread.
        return new FittedPace(driver, inner, error / Math.sqrt(inflation), inflation, 1, false);
    }

    private static Optional<String> alike(double inflation, double condition) {
        Problem problem = problem(TWO, new double[] {1, 1}, new double[] {1, 0}, new double[] {0.6, 0.8});
        return Findings.alike(problem, List.of(pace(Driver.HEATED_AREA, 1, 1, 2), pace(Driver.SEAM, 1, 1, inflation)), condition);
    }

    @Test
    void alike_atTheLimits_isRefused() {
        assertThat(alike(999, 1e7)).isEmpty();
        assertThat(alike(1000, 1e7)).contains("The log cannot tell SEAM from HEATED_AREA: in every job they grow together (variance inflation 1000, condition over a million). Maybe leave one of them out, or add jobs in which they differ.");
        assertThat(alike(500, 1e8).orElseThrow()).contains("variance inflation 500, condition over a million");
        assertThat(alike(2000, 999).orElseThrow()).contains("condition 999)");
        assertThat(alike(Double.NaN, 1)).isPresent();
        // The first of two that are alike is named, whichever is worse.
        Problem problem = problem(TWO, new double[] {1, 1}, new double[] {1, 0}, new double[] {0.6, 0.8});
        assertThat(Findings.alike(problem, List.of(pace(Driver.HEATED_AREA, 1, 1, 5000), pace(Driver.SEAM, 1, 1, 3)), 1).orElseThrow()).startsWith("The log cannot tell HEATED_AREA from SEAM");
        // One driver alone is told from nothing.
        assertThat(Findings.alike(problem, List.of(pace(Driver.HEATED_AREA, 1, 1, 5000)), 1e9)).isEmpty();
    }

    private static List<String> found(FittedPace... paces) {
        Problem problem = problem(TWO, new double[] {1, 1}, new double[] {1, 0}, new double[] {0.6, 0.8});
        return Findings.of(problem, List.of(), List.of(paces)).stream().map(v -> v.level() + " " + v.subject() + ": " + v.reason()).toList();
    }

    @Test
    void of_paces_eachHasItsSentence() {
        FittedPace good = pace(Driver.HEATED_AREA, 10, 1, 2);
        assertThat(found(good, pace(Driver.SEAM, 10, 1, 10))).containsExactly("FINE paces: The log tells all drivers apart");
        assertThat(found(good, pace(Driver.SEAM, 10, 1, 11))).containsExactly("CAUTION pace of SEAM: It is hard to tell from HEATED_AREA: variance inflation 11");
        assertThat(found(pace(Driver.HEATED_AREA, 10, 1, 11))).containsExactly("FINE paces: The log tells all drivers apart");
        assertThat(found(good, pace(Driver.SEAM, 10, 6, 2))).containsExactly("CAUTION pace of SEAM: It is not told from zero: 10 s with a standard error of 6 s");
        assertThat(found(good, pace(Driver.SEAM, 10, 5, 2))).containsExactly("FINE paces: The log tells all drivers apart");
        assertThat(found(good, pace(Driver.SEAM, 0, 0, 2))).containsExactly("FINE paces: The log tells all drivers apart");
        assertThat(found(good, pace(Driver.SEAM, -1, 1, 2)).get(0)).startsWith("WARNING pace of SEAM: It is negative");
        assertThat(found(good, new FittedPace(Driver.SEAM, 0, 0, 2, 10, true))).containsExactly("WARNING pace of SEAM: It would be negative and was held at zero");
    }

    /** Columns (1, 0.6), (0, 0.8), (1, 1): the first is 1.6 / (sqrt(1.36) x sqrt(2)) = 0.970 like the third, 0.514 like the second. */
    @Test
    void mostAlike_isTheSmallestAngle_whateverTheLengths() {
        List<Driver> three = List.of(Driver.HEATED_AREA, Driver.SEAM, Driver.PANEL);
        double[] equal = {1, 1};
        assertThat(problem(three, equal, new double[] {1, 0, 1}, new double[] {0.6, 0.8, 1}).mostAlike(0)).isEqualTo(2);
        // The second a hundred times as long is not more alike.
        assertThat(problem(three, equal, new double[] {1, 0, 1}, new double[] {0.6, 80, 1}).mostAlike(0)).isEqualTo(2);
        assertThat(problem(three, equal, new double[] {1, 0, 0.01}, new double[] {0.6, 80, 0.01}).mostAlike(0)).isEqualTo(2);
        // With the second job at a weight of 100 the columns are as (1, 6), (0, 8), (1, 10): 60/(6.08 x 8)... the third still, and the second before the first.
        assertThat(problem(three, new double[] {1, 100}, new double[] {1, 0, 1}, new double[] {0.6, 0.8, 1}).mostAlike(1)).isEqualTo(2);
        // (2, 1) to (1, 2): 4/5; to (0.5, -1): 0.
        assertThat(problem(three, equal, new double[] {2, 0.5, 1}, new double[] {1, -1, 2}).mostAlike(0)).isEqualTo(2);
    }

    /**
     * 3 and 4 about zero: 5. Beside a time per job about their mean: 3 and 7 by weights of 3 and 1 have the mean 4, so 3 x 1 + 9 = 12; the time per job itself is about zero:
     * 1 x 3 + 1 = 4.
     */
    @Test
    void spread_ofAColumn_byHand() {
        assertThat(problem(TWO, new double[] {1, 1}, new double[] {3, 1}, new double[] {4, 2}).spread(0)).isCloseTo(5, within(1e-12));
        Problem perJob = problem(List.of(Driver.JOB, Driver.SEAM), new double[] {3, 1}, new double[] {1, 3}, new double[] {1, 7});
        assertThat(perJob.isConstant(0)).isTrue();
        assertThat(perJob.isConstant(1)).isFalse();
        assertThat(perJob.spread(1)).isCloseTo(Math.sqrt(12), within(1e-12));
        assertThat(perJob.spread(0)).isCloseTo(2, within(1e-12));
    }

    /** Columns at a cosine of 0.6: singular values sqrt(1.6) and sqrt(0.4), so 2, however long they are; at right angles 1; the same twice: without end, or nearly. */
    @Test
    void condition_ofTwoColumns_isThatOfTheirAngle() {
        double[] y = {1, 1};
        double[] equal = {1, 1};
        assertThat(new LeastSquares(new double[][] {{1, 0.6}, {0, 0.8}}, y, equal).condition()).isCloseTo(2, within(1e-12));
        assertThat(new LeastSquares(new double[][] {{7, 60}, {0, 80}}, y, equal).condition()).isCloseTo(2, within(1e-12));
        assertThat(new LeastSquares(new double[][] {{5, 0}, {0, 0.1}}, y, equal).condition()).isCloseTo(1, within(1e-12));
        assertThat(new LeastSquares(new double[][] {{1, 2}, {2, 4}}, y, equal).condition()).isGreaterThan(1e12);
    }

    @ParameterizedTest
    @CsvSource({"1, 0", "2, 1"})
    void shortages_ofAShortLog_areCounted(int jobs, int empty) {
        double[][] rows = jobs == 1 ? new double[][] {{1, 1}} : new double[][] {{1, 0}, {2, 0}};
        List<String> reasons = problem(TWO, new double[jobs], rows).shortages();
        assertThat(reasons).hasSize(1 + empty);
        assertThat(reasons.get(0)).isEqualTo("The log has " + jobs + " jobs; to fit 2 paces and to see how sure they are it takes at least 3. Maybe fit fewer drivers.");
        assertThat(problem(TWO, new double[3], new double[] {1, 1}, new double[] {2, 1}, new double[] {3, 1}).shortages()).isEmpty();
    }

    @Test
    void toString_ofAFitAndWhatComesOfIt_inOneLine() {
        assertThat(pace(Driver.HEATED_AREA, 1200, 60, 1)).hasToString("heated area: 20 min/m² ± 1 min/m² (standard error)");
        assertThat(new FittedPace(Driver.SEAM, 0, 0, 1, 10, true)).hasToString("seam: 0 min/m, held at zero: it would be negative");
        // 3600 s at a weight of 1 and a leverage of 0.5625: 1 h x sqrt(1.5625) = 1.25 h; twice that either way.
        Prediction prediction = new Prediction(List.of(7200.0, 10_800.0), 3600, 1, 0.5625, 2);
        assertThat(prediction.errorS()).isCloseTo(4500, within(1e-9));
        assertThat(prediction).hasToString("5 h, between 2.5 h and 7.5 h: from 2 paces, standard error 1.25 h");
        // At a weight of 4 the job itself scatters half as much: sqrt(1/4 + 0.5625) = 0.9014.
        assertThat(new Prediction(List.of(7200.0), 3600, 4, 0.5625, 2).errorS()).isCloseTo(3600 * Math.sqrt(0.8125), within(1e-9));
    }

    /** Misses of 3 and 4 h: the root of (9 + 16) / 2; as good is not better. */
    @Test
    void comparison_sameMisses_keepsThePacesInUse() {
        PaceComparison same = new PaceComparison(List.of(10_800.0, 14_400.0), List.of(14_400.0, 10_800.0));
        assertThat(same.newErrorS()).isCloseTo(3600 * Math.sqrt(12.5), within(1e-9));
        assertThat(same.presentErrorS()).isCloseTo(3600 * Math.sqrt(12.5), within(1e-9));
        assertThat(same.isBetter()).isFalse();
        assertThat(same.toString()).startsWith("The paces in use are as good or better");
        assertThat(new PaceComparison(List.of(1.0), List.of(2.0)).toString()).startsWith("The new paces miss jobs they have not seen by less");
    }

    @Test
    void fit_withoutPaces_saysSoEverywhere() {
        JobLog two = JobLog.of(TWO, List.of(
                LogEntry.of("a", Amounts.none().withInner(Driver.HEATED_AREA, 1).withInner(Driver.SEAM, 1), Read.time("1 h")),
                LogEntry.of("b", Amounts.none().withInner(Driver.HEATED_AREA, 2).withInner(Driver.SEAM, 1), Read.time("2 h"))));
        PaceFit none = Calibration.withDefaults().fit(two);
        assertThat(none.toString()).startsWith("no paces: The log has 2 jobs");
        assertThat(none.verdicts()).extracting(Verdict::level).contains(Verdict.Level.REFUSED);
        assertThatThrownBy(() -> none.against(Map.of())).isInstanceOf(RefusedException.class).hasMessageContaining("The log has 2 jobs");
    }

    /** A pace of nothing can be used: only one below it is refused. */
    @Test
    void basic_paceOfNothing_isNothing() {
        assertThat(pace(Driver.SEAM, 0, 1, 1).basic(Allowance.onJobTime(0.25)).inner()).isZero();
        assertThatThrownBy(() -> pace(Driver.SEAM, -1, 1, 1).basic(Allowance.none())).hasMessageContaining("must not be negative");
    }

    /** y = 3 + 2 x by the job and the metre, without a miss: a job of 5 m takes 13. */
    @Test
    void predict_withATimePerJob_addsItWithoutBeingAsked() {
        JobLog log = JobLog.of(List.of(Driver.SEAM), List.of(entry(1, 5), entry(2, 7), entry(3, 9), entry(4, 11)));
        PaceFit fit = Calibration.withDefaults().withJobTime(true).fit(log);
        assertThat(fit.predict(Amounts.none().withInner(Driver.SEAM, 5), 0.9).hoursS()).isCloseTo(13 * 3600, within(1e-6));
        assertThat(fit.predict(Amounts.none().withInner(Driver.SEAM, 5).withInner(Driver.JOB, 2), 0.9).hoursS()).isCloseTo(16 * 3600, within(1e-6));
        assertThat(fit.paces()).extracting(FittedPace::driver).containsExactlyInAnyOrder(Driver.JOB, Driver.SEAM);
        assertThat(fit.toString()).contains("seam: ").contains("; a job is missed by ");
        // (1, 1, 1, 1) and (1, 2, 3, 4): a cosine of 10 / sqrt(4 x 30), so sqrt((1 + c) / (1 - c)) = 4.68.
        double c = 10 / Math.sqrt(120);
        assertThat(fit.condition()).isCloseTo(Math.sqrt((1 + c) / (1 - c)), within(1e-9));
    }

    private static LogEntry entry(double metres, double hours) {
        return new LogEntry("job " + metres, Amounts.none().withInner(Driver.SEAM, metres), hours * 3600, 1, Optional.empty());
    }
}
