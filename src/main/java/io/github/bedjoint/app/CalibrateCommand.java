package io.github.bedjoint.app;

import io.github.bedjoint.calibration.Calibration;
import io.github.bedjoint.calibration.FittedPace;
import io.github.bedjoint.calibration.JobLog;
import io.github.bedjoint.calibration.PaceComparison;
import io.github.bedjoint.calibration.PaceFit;
import io.github.bedjoint.labour.Driver;
import io.github.bedjoint.labour.Pace;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Print;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.working.Verdict;
import java.io.IOException;
import java.io.PrintWriter;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Fits paces to the shop's own job log and says whether they are better than the present ones. */
@Command(
        name = "calibrate",
        mixinStandardHelpOptions = true,
        description = "Fits paces to a log of finished jobs.",
        footer = {
            "",
            "LOG.csv has a column job, a column hours, one column for each driver (such as visible_area, seam [ft] or",
            "panel), and optionally weight and date. The paces are the shop's own: allowances are in them.",
            "",
            "Example: bedjoint calibrate log.csv --not-negative --present visible_area=\"25 min/m2\" --present panel=\"40 min\""
        })
final class CalibrateCommand implements Callable<Integer> {
    private final PrintWriter out;
    private final PrintWriter err;

    @Parameters(index = "0", paramLabel = "LOG.csv", description = "The log of finished jobs.")
    private String log = "";

    @Option(names = "--not-negative", description = "Accept no pace below zero.")
    private boolean notNegative;

    @Option(names = "--weighted", description = "Count each job by its weight.")
    private boolean weighted;

    @Option(names = "--time-per-job", description = "Fit a time for each job beside the drivers.")
    private boolean jobTime;

    @Option(names = "--since", paramLabel = "DATE", description = "Only jobs from this date on, such as 2027-01-01.")
    private @Nullable LocalDate since;

    @Option(names = "--present", paramLabel = "DRIVER=PACE", description = "A pace in use, to compare with.")
    private Map<Driver, String> present = new LinkedHashMap<>();

    @Option(names = "--units", paramLabel = "metric|imperial", description = "The units to print in (default: metric).")
    private UnitStyle units = UnitStyle.METRIC;

    @Option(names = "--show-working", description = "Show how the figures came about.")
    private boolean working;

    CalibrateCommand(PrintWriter out, PrintWriter err) {
        this.out = out;
        this.err = err;
    }

    @Override
    public Integer call() {
        PaceFit fit;
        Map<Driver, Pace> inUse = new EnumMap<>(Driver.class);
        try {
            JobLog jobs = JobLog.parse(Input.text(log));
            present.forEach((driver, pace) -> inUse.put(driver, Pace.parse(driver, pace)));
            Calibration calibration = Calibration.withDefaults()
                    .withSign(notNegative ? Calibration.Sign.NOT_NEGATIVE : Calibration.Sign.FREE)
                    .withWeighting(weighted ? Calibration.Weighting.GIVEN : Calibration.Weighting.EQUAL)
                    .withJobTime(jobTime);
            fit = Progress.during(err, "fitting paces", () -> calibration.fit(since == null ? jobs : jobs.since(since)));
        } catch (RefusedException e) {
            err.println(e.getMessage());
            return Main.BAD_INPUT;
        } catch (IOException e) {
            err.println(Input.complaint(e));
            return Main.BAD_INPUT;
        }
        if (!fit.isPossible()) {
            fit.reasons().forEach(err::println);
            return Main.IMPOSSIBLE;
        }
        out.print(text(fit, inUse));
        out.flush();
        return Main.FINE;
    }

    private String text(PaceFit fit, Map<Driver, Pace> inUse) {
        StringBuilder text = new StringBuilder();
        Columns rows = new Columns("", "lrrr").row("driver", "pace", "standard error", "variance inflation");
        for (FittedPace pace : fit.paces()) {
            Measure measure = pace.driver().paceMeasure();
            rows.row(pace.driver().toString().toLowerCase(Locale.ROOT).replace('_', ' '), measure.print(pace.inner(), units),
                    measure.print(pace.standardError(), units), Print.fixed(pace.inflation(), 2));
        }
        rows.print(text);
        text.append("Residual standard deviation ").append(Measure.TIME.print(fit.residualS(), units)).append(", condition ")
                .append(Print.fixed(fit.condition(), 1)).append('\n');
        for (Verdict verdict : fit.verdicts()) {
            text.append(verdict).append('\n');
        }
        if (!inUse.isEmpty()) {
            fit.against(inUse).map(PaceComparison::verdict).ifPresent(verdict -> text.append(verdict).append('\n'));
        }
        if (working) {
            text.append('\n').append(fit.working().text(units));
        }
        return text.toString();
    }
}
