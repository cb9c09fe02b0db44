package io.github.bedjoint.app;

import io.github.bedjoint.job.JobCost;
import io.github.bedjoint.jobfile.ActualCosts;
import io.github.bedjoint.jobfile.AsInstalled;
import io.github.bedjoint.jobfile.JobFile;
import io.github.bedjoint.price.CostVariance;
import io.github.bedjoint.price.LineVariance;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.UnitStyle;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Compares what a job cost in the end with its estimate. */
@Command(
        name = "variance",
        mixinStandardHelpOptions = true,
        description = "Says after a job why it cost more or less than estimated, and what of its installing differs.",
        footer = {
            "",
            "Without ACTUAL.csv it prints the estimate as a table kind,title,quantity,rate: change quantities and rates to what",
            "they were, the row hours to the person-hours worked and the row overhead to the overhead spent.",
            "",
            "Examples:",
            "  bedjoint variance job.json > actual.csv",
            "  bedjoint variance job.json actual.csv",
            "  bedjoint cost job.json --format installed > record.csv",
            "  bedjoint variance job.json --installed record.csv"
        })
final class VarianceCommand implements Callable<Integer> {
    private final PrintWriter out;
    private final PrintWriter err;

    @Parameters(index = "0", paramLabel = "JOB.json", description = "The job file of the estimate.")
    private String job = "";

    @Parameters(index = "1", arity = "0..1", paramLabel = "ACTUAL.csv", description = "What the job cost in the end.")
    private @Nullable String actual;

    @Option(names = "--installed", paramLabel = "RECORD.csv",
            description = "How each panel was installed: says what of it differs from the job, after the variances or in place of the table.")
    private @Nullable String installed;

    @Option(names = "--units", paramLabel = "metric|imperial", description = "The units of the working (default: metric).")
    private UnitStyle units = UnitStyle.METRIC;

    @Option(names = "--show-working", description = "Show how the figures came about.")
    private boolean working;

    VarianceCommand(PrintWriter out, PrintWriter err) {
        this.out = out;
        this.err = err;
    }

    @Override
    public Integer call() {
        try {
            JobCost cost = JobCost.of(JobFile.read(Input.path(job)));
            if (!cost.isPriced()) {
                err.println("The job cannot be done as given: " + String.join("; ", cost.reasons()));
                return Main.IMPOSSIBLE;
            }
            if (actual != null) {
                out.print(text(ActualCosts.variance(cost, Input.text(actual))));
            } else if (installed == null) {
                out.print(ActualCosts.table(cost));
            }
            if (installed != null) {
                AsInstalled.check(cost, Input.text(installed)).forEach(out::println);
            }
            out.flush();
            return Main.FINE;
        } catch (RefusedException e) {
            err.println(e.getMessage());
            return Main.BAD_INPUT;
        } catch (IOException e) {
            err.println(Input.complaint(e));
            return Main.BAD_INPUT;
        }
    }

    private String text(CostVariance variance) {
        StringBuilder text = new StringBuilder();
        Columns rows = new Columns("", "lrrrr").row("line", "price", "usage", "rounding", "actual less estimate");
        for (LineVariance line : variance.lines()) {
            rows.row(line.title(), line.price().toString(), line.usage().toString(), line.leftOver().toString(), line.total().toString());
        }
        rows.print(text);
        text.append('\n').append(variance).append('\n').append("Cost in the end: ").append(variance.actualCost()).append('\n');
        if (working) {
            text.append('\n').append(variance.working().text(units));
        }
        return text.toString();
    }
}
