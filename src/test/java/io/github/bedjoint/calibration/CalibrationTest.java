package io.github.bedjoint.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.calibration.Calibration.Sign;
import io.github.bedjoint.calibration.Calibration.Weighting;
import io.github.bedjoint.labour.Allowance;
import io.github.bedjoint.labour.Amounts;
import io.github.bedjoint.labour.Driver;
import io.github.bedjoint.labour.Pace;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Read;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.working.Verdict;
import io.github.bedjoint.working.WorkingCheck;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Source of the reference values: R 4.2.2, lm and predict, on an invented log; see SOURCES.md. R counts in hours, so 3600 stands between. */
class CalibrationTest {
    private static final double HOUR = 3600;
    private static final Amounts NEW_JOB = Amounts.none()
            .withArea(Driver.HEATED_AREA, Read.area("25 m2"))
            .withLength(Driver.SEAM, Read.length("19.2 m"))
            .withCount(Driver.PANEL, 10);

    private static JobLog log() {
        return JobLog.parse(Resources.text("labour_synthetic.csv").replace("area_m2,seam_m,pieces", "heated_area,seam,panel"));
    }

    private static void near(double actualS, double hours) {
        assertThat(actualS / HOUR).isCloseTo(hours, within(1e-9));
    }

    @Test
    void fit_ordinary_asR() {
        PaceFit fit = Calibration.withDefaults().fit(log());
        near(fit.pace(Driver.HEATED_AREA).inner(), 0.322437396035552);
        near(fit.pace(Driver.SEAM).inner(), 0.149687277442547);
        near(fit.pace(Driver.PANEL).inner(), 0.734575637304414);
        near(fit.pace(Driver.HEATED_AREA).standardError(), 0.0309995222494792);
        near(fit.pace(Driver.SEAM).standardError(), 0.0508895829317894);
        near(fit.pace(Driver.PANEL).standardError(), 0.1133787122388904);
        near(fit.residualS(), 0.452452907219746);
        WorkingCheck.check(fit.working());
    }

    @Test
    void fit_withTimePerJob_asR() {
        PaceFit fit = Calibration.withDefaults().withJobTime(true).fit(log());
        near(fit.pace(Driver.JOB).inner(), 0.565596284126704);
        near(fit.pace(Driver.HEATED_AREA).inner(), 0.328992096229360);
        near(fit.pace(Driver.PANEL).inner(), 0.629926137951630);
        near(fit.pace(Driver.JOB).standardError(), 0.2198870359425895);
        near(fit.pace(Driver.SEAM).standardError(), 0.0407415367724495);
        near(fit.residualS(), 0.355039127686013);
        WorkingCheck.check(fit.working());
    }

    /** R's weights are one over the area. */
    @Test
    void fit_weighted_asR() {
        List<LogEntry> weighted = log().entries().stream()
                .map(entry -> entry.withWeight(1 / entry.amounts().inner(Driver.HEATED_AREA)))
                .toList();
        PaceFit fit = Calibration.withDefaults().withWeighting(Weighting.GIVEN).fit(JobLog.of(log().drivers(), weighted));
        near(fit.pace(Driver.HEATED_AREA).inner(), 0.3420217032073690);
        near(fit.pace(Driver.SEAM).inner(), 0.0633714246760038);
        near(fit.pace(Driver.PANEL).inner(), 0.8735174245966022);
        near(fit.pace(Driver.SEAM).standardError(), 0.0683242906790573);
        near(fit.residualS(), 0.122632699868047);
        assertThat(fit.verdicts()).anySatisfy(verdict -> assertThat(verdict.reason()).contains("not told from zero"));
    }

    @ParameterizedTest
    @CsvSource({
        "false, 0.8, 18.2806870008, 17.6199850934, 18.9413889082",
        "false, 0.9, 18.2806870008, 17.4049704105, 19.1564035911",
        "false, 0.95, 18.2806870008, 17.2000069609, 19.3613670408",
        "true, 0.8, 18.3625258738, 17.8370233366, 18.8880284109",
        "true, 0.9, 18.3625258738, 17.6629364543, 19.0621152933",
        "true, 0.95, 18.3625258738, 17.4949730805, 19.2300786671"
    })
    void predict_newJob_asR(boolean jobTime, double level, double hours, double low, double high) {
        Prediction prediction = Calibration.withDefaults().withJobTime(jobTime).fit(log()).predict(NEW_JOB, level);
        near(prediction.hoursS(), hours);
        near(prediction.lowS(), low);
        near(prediction.highS(), high);
        WorkingCheck.check(prediction.working());
    }

    /** The variance inflation must be 1 / (1 - R2) of regressing the driver on the others; about zero, since there is no time per job. */
    @Test
    void inflation_isThatOfTheAuxiliaryRegression() {
        double[][] all = log().entries().stream()
                .map(entry -> log().drivers().stream().mapToDouble(entry.amounts()::inner).toArray())
                .toArray(double[][]::new);
        double[] weights = new double[all.length];
        java.util.Arrays.fill(weights, 1);
        double[][] others = java.util.Arrays.stream(all).map(row -> new double[] {row[1], row[2]}).toArray(double[][]::new);
        double[] target = java.util.Arrays.stream(all).mapToDouble(row -> row[0]).toArray();
        double left = java.util.Arrays.stream(new LeastSquares(others, target, weights).residuals()).map(e -> e * e).sum();
        double whole = java.util.Arrays.stream(target).map(e -> e * e).sum();
        double inflation = Calibration.withDefaults().fit(log()).pace(Driver.HEATED_AREA).inflation();
        assertThat(inflation).isCloseTo(whole / left, within(1e-9 * inflation)).isGreaterThan(10);
    }

    /** One driver is another times two: the log cannot tell them apart, and says which. */
    @Test
    void fit_driversThatGrowTogether_isRefusedWithTheirNames() {
        List<LogEntry> entries = new ArrayList<>();
        for (int i = 1; i <= 8; i++) {
            Amounts amounts = Amounts.none().withInner(Driver.HEATED_AREA, 10 * i).withInner(Driver.SEAM, 20 * i).withInner(Driver.PANEL, i * i % 5 + 1);
            entries.add(LogEntry.of("job " + i, amounts, Read.time(i * 5 + " h")));
        }
        PaceFit fit = Calibration.withDefaults().fit(JobLog.of(List.of(Driver.HEATED_AREA, Driver.SEAM, Driver.PANEL), entries));
        assertThat(fit.isPossible()).isFalse();
        assertThat(fit.reasons()).singleElement().asString().contains("HEATED_AREA").contains("SEAM").contains("Maybe");
        assertThat(fit.verdicts()).extracting(Verdict::level).containsExactly(Verdict.Level.REFUSED);
        assertThat(fit.paces()).isEmpty();
        assertThatThrownBy(() -> fit.predict(NEW_JOB, 0.8)).isInstanceOf(RefusedException.class).hasMessageContaining("HEATED_AREA");
    }

    @Test
    void fit_logTooShort_isAResultWithAReason() {
        JobLog log = log();
        PaceFit fit = Calibration.withDefaults().fit(JobLog.of(log.drivers(), log.entries().subList(0, 3)));
        assertThat(fit.reasons()).singleElement().asString().contains("3 jobs").contains("at least 4");
        assertThat(fit.working().toString()).contains("at least 4");
    }

    @Test
    void fit_driverThatNoJobHas_isAResultWithAReason() {
        List<Driver> drivers = new ArrayList<>(log().drivers());
        drivers.add(Driver.CORNER);
        PaceFit fit = Calibration.withDefaults().fit(JobLog.of(drivers, log().entries()));
        assertThat(fit.reasons()).singleElement().asString().contains("CORNER");
    }

    /** Hours that fall with the panels: ordinary least squares gives a negative pace and says so, the other fit holds it at zero. */
    @Test
    void fit_negativePace_isFlaggedOrHeldAtZero() {
        List<LogEntry> entries = new ArrayList<>();
        for (LogEntry entry : log().entries()) {
            double hoursS = entry.amounts().inner(Driver.HEATED_AREA) * 1800 - entry.amounts().inner(Driver.PANEL) * 900;
            entries.add(new LogEntry(entry.job(), entry.amounts(), hoursS, 1, entry.date()));
        }
        JobLog log = JobLog.of(log().drivers(), entries);
        PaceFit free = Calibration.withDefaults().fit(log);
        PaceFit held = Calibration.withDefaults().withSign(Sign.NOT_NEGATIVE).fit(log);
        assertThat(free.pace(Driver.PANEL).inner()).isCloseTo(-900, within(1e-6));
        assertThat(free.verdicts()).anySatisfy(verdict -> assertThat(verdict.reason()).contains("negative"));
        assertThat(held.pace(Driver.PANEL).inner()).isZero();
        assertThat(held.pace(Driver.PANEL).isHeldAtZero()).isTrue();
        assertThat(held.pace(Driver.HEATED_AREA).inner()).isPositive();
        assertThat(held.verdicts()).anySatisfy(verdict -> assertThat(verdict.reason()).contains("held at zero"));
        assertThatThrownBy(() -> free.pace(Driver.PANEL).basic(Allowance.none())).isInstanceOf(RefusedException.class);
        WorkingCheck.check(held.working());
    }

    @Test
    void fit_notNegativeWhereAllAreAnyway_isTheOrdinaryFit() {
        PaceFit free = Calibration.withDefaults().fit(log());
        PaceFit held = Calibration.withDefaults().withSign(Sign.NOT_NEGATIVE).fit(log());
        for (FittedPace pace : free.paces()) {
            assertThat(held.pace(pace.driver()).inner()).isCloseTo(pace.inner(), within(1e-9 * pace.inner()));
            assertThat(held.pace(pace.driver()).standardError()).isCloseTo(pace.standardError(), within(1e-9 * pace.inner()));
        }
    }

    /** A log pace of 20 min/m2 with 25 % on job time is a basic pace of 16 min/m2; with 20 % of the day as well: 20 x 0.8. */
    @Test
    void basic_pace_isWithoutItsAllowance() {
        FittedPace pace = new FittedPace(Driver.HEATED_AREA, 1200, 60, 1, 10, false);
        assertThat(pace.basic(Allowance.onJobTime(0.25))).isEqualTo(new Pace(Measure.TIME_PER_AREA, 960));
        assertThat(pace.basic(Allowance.onWorkingDay(0.2))).isEqualTo(new Pace(Measure.TIME_PER_AREA, 960));
    }

    /** R's hat values give the left-out errors: residual over one less the hat value. Source: R 4.2.2, with a time per job. */
    @Test
    void against_presentPaces_leavesEachJobOut() {
        double[] residuals = {-0.0640610789580, -0.5556289439908, 0.0944720810805, -0.3765739793955, 0.2452683272989, 0.3725548472482,
            -0.3945361844893, -0.1174918517773, 0.2559866851570, 0.2532786176910, 0.0901752263063, 0.1965562538289};
        double[] hats = {0.1543542968728, 0.0969594395339, 0.2297544237761, 0.1811686271443, 0.2604782590316, 0.6733405073844,
            0.2785891013619, 0.2708154603178, 0.2794511109157, 0.5437357506472, 0.7750538899999, 0.2562991330143};
        PaceFit fit = Calibration.withDefaults().withJobTime(true).fit(log());
        PaceComparison comparison = fit.against(Map.of(
                        Driver.HEATED_AREA, Pace.perArea(Read.timePerArea("30 min/m2")), Driver.PANEL, Pace.perPiece(Read.time("10 min"))))
                .orElseThrow();
        double squares = 0;
        for (int i = 0; i < residuals.length; i++) {
            near(comparison.leftOutErrorsS().get(i), residuals[i] / (1 - hats[i]));
            squares += Math.pow(residuals[i] / (1 - hats[i]), 2);
        }
        near(comparison.newErrorS(), Math.sqrt(squares / residuals.length));
        assertThat(comparison.isBetter()).isTrue();
        assertThat(comparison.verdict().level()).isEqualTo(Verdict.Level.FINE);
        WorkingCheck.check(comparison.working());
    }

    /** Paces in use that are those of the log itself cannot be beaten by paces that have not seen the job. */
    @Test
    void against_pacesThatFitAlready_saysKeepThem() {
        PaceFit fit = Calibration.withDefaults().fit(log());
        Map<Driver, Pace> present = Map.of(
                Driver.HEATED_AREA, fit.pace(Driver.HEATED_AREA).basic(Allowance.none()),
                Driver.SEAM, fit.pace(Driver.SEAM).basic(Allowance.none()),
                Driver.PANEL, fit.pace(Driver.PANEL).basic(Allowance.none()));
        PaceComparison comparison = fit.against(present).orElseThrow();
        assertThat(comparison.isBetter()).isFalse();
        assertThat(comparison.verdict().level()).isEqualTo(Verdict.Level.CAUTION);
    }

    @Test
    void against_jobThatAloneHasADriver_cannotBeLeftOut() {
        List<LogEntry> entries = new ArrayList<>(log().entries());
        LogEntry last = entries.remove(0);
        entries.add(LogEntry.of(last.job(), last.amounts().withCount(Driver.CORNER, 2), Read.time("12 h")));
        List<Driver> drivers = new ArrayList<>(log().drivers());
        drivers.add(Driver.CORNER);
        PaceFit fit = Calibration.withDefaults().fit(JobLog.of(drivers, entries));
        assertThat(fit.isPossible()).isTrue();
        assertThat(fit.against(Map.of())).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"0", "1", "-1", "NaN"})
    void predict_levelOutOfRange_refused(double level) {
        assertThatThrownBy(() -> Calibration.withDefaults().fit(log()).predict(NEW_JOB, level))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("level");
    }
}
