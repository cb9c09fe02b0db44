package io.github.bedjoint.app;

import io.github.bedjoint.drawing.Copy;
import io.github.bedjoint.drawing.JobPage;
import io.github.bedjoint.job.Alternatives;
import io.github.bedjoint.job.Job;
import io.github.bedjoint.job.JobCost;
import io.github.bedjoint.job.OneMore;
import io.github.bedjoint.jobfile.AsInstalled;
import io.github.bedjoint.jobfile.JobDocument;
import io.github.bedjoint.jobfile.JobFile;
import io.github.bedjoint.jobfile.JobRanges;
import io.github.bedjoint.jobfile.JobResult;
import io.github.bedjoint.jobfile.JobTables;
import io.github.bedjoint.risk.RiskResult;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Working;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Costs one job and prints its sheet. */
@Command(
        name = "cost",
        mixinStandardHelpOptions = true,
        description = "Costs a job and prints the job sheet.",
        footer = {
            "",
            "Examples:",
            "  bedjoint cost job.json",
            "  bedjoint cost job.json --units imperial --show-working rolls.yield",
            "  bedjoint cost - --format json < job.json",
            "  bedjoint cost - --lines < jobs.jsonl > answers.jsonl",
            "  bedjoint cost jobs.jsonl --lines --answers answers.jsonl",
            "  bedjoint cost job.json --format html --copy crew > crew.html"
        })
final class CostCommand implements Callable<Integer> {
    /** How the result is printed. */
    enum Format {
        /** A sheet for people. */
        TEXT,
        /** One JSON object. */
        JSON,
        /** One page of HTML with drawings. */
        HTML,
        /** The cut list as a table. */
        CUTS,
        /** The print list as a table. */
        PRINTS,
        /** The price lines as a table. */
        PRICES,
        /** The record of how panels are installed, as a table to fill in. */
        INSTALLED
    }

    private static final String ALL = "all";

    private final InputStream in;
    private final OutputStream bytes;
    private final PrintWriter out;
    private final PrintWriter err;

    @Parameters(index = "0", paramLabel = "JOB.json", description = "The job file, or - for standard input.")
    private String file = "";

    @Option(names = "--format", paramLabel = "text|json|html|cuts|prints|prices|installed", description = "How to print the result: a sheet, one JSON object, a page, or as CSV the cut list, the print list, the price lines or a record for the crew to fill in (default: text).")
    private Format format = Format.TEXT;

    @Option(names = "--units", paramLabel = "metric|imperial", description = "The units to print in (default: metric).")
    private UnitStyle units = UnitStyle.METRIC;

    @Option(
            names = "--copy",
            paramLabel = "shop|crew|customer",
            description = "For whom the HTML page is: the crew sees no prices, the customer no costs (default: shop).")
    private @Nullable Copy copy;

    @Option(
            names = "--show-working",
            arity = "0..1",
            fallbackValue = ALL,
            paramLabel = "FIGURE",
            description = "Show how all figures came about, or one of them by its name, such as rolls.yield.")
    private @Nullable String figure;

    @Option(names = "--alternatives", description = "Print below the sheet what the job would cost in other ways.")
    private boolean alternatives;

    @Option(
            names = "--one-more",
            description = "Plan again and say what one more hour, metre or centimetre of roll, or a millimetre less overlap would change: below the sheet, in the JSON, on the shop's page.")
    private boolean oneMore;

    @Option(names = "--lines", description = "One JSON job a line in, one JSON answer a line out, errors as answers, in order.")
    private boolean lines;

    @Option(
            names = "--answers",
            paramLabel = "FILE",
            description = "With --lines: write the answers to this file. If it holds some from a run that was broken off, go on behind them.")
    private @Nullable String answers;

    CostCommand(InputStream in, OutputStream bytes, PrintWriter out, PrintWriter err) {
        this.in = in;
        this.bytes = bytes;
        this.out = out;
        this.err = err;
    }

    @Override
    public Integer call() {
        if (copy != null && format != Format.HTML) {
            return complain("--copy needs --format html: the sheet and the JSON hold everything.");
        }
        if (figure != null && format == Format.HTML) {
            return complain("--show-working is not for --format html: the page holds every working, folded under its figure.");
        }
        if (oneMore && lines) {
            return complain("--one-more is not for --lines: a job is planned many times for it.");
        }
        if (answers != null && !lines) {
            return complain("--answers needs --lines: a single result goes to standard output.");
        }
        try {
            return lines ? lines() : one(JobFile.document(reader()));
        } catch (RefusedException e) {
            return complain(e.getMessage());
        } catch (IOException e) {
            return complain(Input.complaint(e));
        }
    }

    private int one(JobDocument document) throws IOException {
        JobCost cost = Progress.during(err, "costing", () -> JobCost.of(document.job()));
        Optional<RiskResult> sure = Progress.during(err, "costing simulated jobs", () -> document.ranges().map(JobRanges::run));
        String others = alternatives ? Progress.during(err, "costing alternatives", () -> alternatives(document.job())) : "";
        Optional<OneMore> more = oneMore && cost.isPriced() ? Optional.of(OneMore.of(cost)) : Optional.empty();
        Optional<Working> working = Optional.empty();
        if (figure != null) {
            working = figure.equals(ALL) ? Optional.of(cost.working()) : cost.working(figure);
            if (working.isEmpty()) {
                return complain("This job has no figure '" + figure + "'. It has: " + String.join(", ", figures(cost.working())) + ".");
            }
        }
        Optional<Working> shown = working;
        out.print(Progress.during(err, more.isPresent() ? "planning with one more of each" : "writing", () -> printed(cost, sure, others, more, shown)));
        out.flush();
        if (!cost.isPossible()) {
            err.println("The job cannot be done as given: " + String.join("; ", cost.reasons()));
            return Main.IMPOSSIBLE;
        }
        return Main.FINE;
    }

    private int lines() throws IOException {
        Path path = answers == null ? null : Input.name(answers);
        if (path != null && !file.equals("-") && Files.exists(path) && Files.isSameFile(path, Input.name(file))) {
            return complain("--answers names the file of the jobs. Maybe another name was meant.");
        }
        try (Lines jobs = new Lines(file.equals("-") ? in : Files.newInputStream(Input.anySize(file)), LinesRun.LONGEST);
                Answers to = path == null ? Answers.to(bytes) : Answers.in(path, jobs);
                Progress progress = Progress.of(err, "costing")) {
            return new LinesRun(jobs, to, progress, units).run();
        } catch (Answers.NotWritten e) {
            if (path != null) {
                err.println(e.getMessage());
            }
            return Main.FAULT;
        }
    }

    private Reader reader() throws IOException {
        InputStream bytes = file.equals("-") ? in : Files.newInputStream(Input.path(file));
        return new InputStreamReader(bytes, StandardCharsets.UTF_8.newDecoder());
    }

    private String printed(JobCost cost, Optional<RiskResult> sure, String others, Optional<OneMore> more, Optional<Working> working) {
        return switch (format) {
            case JSON -> {
                JobResult result = JobResult.of(cost).withUnits(units);
                result = sure.map(result::withRanges).orElse(result);
                result = more.map(result::withOneMore).orElse(result);
                yield working.map(result::withWorking).orElse(result).toString();
            }
            case HTML -> {
                JobPage page = JobPage.of(cost).withUnits(units).withCopy(copy == null ? Copy.SHOP : copy);
                page = sure.map(page::withRanges).orElse(page);
                yield more.map(page::withOneMore).orElse(page).toString();
            }
            case CUTS -> JobTables.cuts(cost, units);
            case PRINTS -> JobTables.prints(cost, units);
            case PRICES -> cost.isPriced() ? JobTables.prices(cost, units) : "";
            case INSTALLED -> AsInstalled.table(cost);
            case TEXT -> text(cost, sure, others, more, working);
        };
    }

    private String text(JobCost cost, Optional<RiskResult> sure, String others, Optional<OneMore> more, Optional<Working> working) {
        if (working.isPresent() && !ALL.equals(figure)) {
            return working.get().text(units);
        }
        StringBuilder text = new StringBuilder(new JobSheet(cost, units).text());
        sure.ifPresent(risk -> text.append(new RiskSheet(risk, units).text()));
        text.append(others);
        more.ifPresent(effects -> {
            text.append("\nONE MORE\n");
            effects.lines(units).forEach(line -> Paragraph.add(text, "  ", "    ", line));
        });
        working.ifPresent(all -> text.append("\nWORKING\n").append(all.text(units)));
        return text.toString();
    }

    private static String alternatives(Job job) {
        return "\nALTERNATIVES, CHEAPEST FIRST\n" + Alternatives.of(job).withDirections().withSiteCrews(1, 2, 3).withEachRollAlone();
    }

    private int complain(String message) {
        err.println(message);
        return Main.BAD_INPUT;
    }

    private static List<String> figures(Working working) {
        List<String> ids = new ArrayList<>();
        collect(working, ids);
        return ids.stream().distinct().sorted().toList();
    }

    private static void collect(Working working, List<String> ids) {
        working.formula().map(Formula::id).ifPresent(ids::add);
        working.parts().forEach(part -> collect(part, ids));
    }
}
