package io.github.bedjoint.app;

import io.github.bedjoint.cutting.LongerRolls;
import io.github.bedjoint.cutting.RollPlanner;
import io.github.bedjoint.cutting.RollReasons;
import io.github.bedjoint.jobfile.CutList;
import io.github.bedjoint.jobfile.PlanResult;
import io.github.bedjoint.jobfile.StockList;
import io.github.bedjoint.rolls.CutKind;
import io.github.bedjoint.rolls.CuttingTerms;
import io.github.bedjoint.rolls.LotRule;
import io.github.bedjoint.rolls.OpenedRoll;
import io.github.bedjoint.rolls.PlacedCut;
import io.github.bedjoint.rolls.RemnantRule;
import io.github.bedjoint.rolls.RollPlan;
import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Print;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.Read;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.Steps;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.waste.WastePart;
import io.github.bedjoint.waste.WasteShares;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Plans a plain cut list on a plain list of rolls. */
@Command(
        name = "rolls",
        mixinStandardHelpOptions = true,
        description = "Plans which rolls to open for a plain list of panels.",
        footer = {
            "",
            "CUTS.csv has the columns id,width,length,quantity and optionally",
            "group,rotate; STOCK.csv has id,width,length,price,available and",
            "optionally lot. Units stand in the cell (2.4 m) or in the heading",
            "(length mm). An empty width means that only lengths matter, an empty",
            "available as many rolls as one likes. Without options nothing is lost to",
            "lead, tail or gap. Narrow panels are laid side by side; one whose rotate",
            "is yes may be turned by 90 degrees.",
            "",
            "Example: bedjoint rolls cuts.csv stock.csv --lead \"30 cm\" --gap \"10 mm\""
        })
final class RollsCommand implements Callable<Integer> {
    /** How the plan is printed. */
    enum Format {
        /** For people. */
        TEXT,
        /** One JSON object. */
        JSON,
        /** A table with one row a piece. */
        CSV
    }

    private static final Range LOST = Range.closed(0, 100);
    private static final long CENTIMETRE = Steps.PER_METRE / 100;

    private final PrintWriter out;
    private final PrintWriter err;

    @Parameters(index = "0", paramLabel = "CUTS.csv", description = "The panels to cut.")
    private String cuts = "";

    @Parameters(index = "1", paramLabel = "STOCK.csv", description = "The rolls that may be opened.")
    private String stock = "";

    @Option(names = "--format", paramLabel = "text|json|csv", description = "How to print the plan (default: text).")
    private Format format = Format.TEXT;

    @Option(names = "--units", paramLabel = "metric|imperial", description = "The units to print in (default: metric).")
    private UnitStyle units = UnitStyle.METRIC;

    @Option(names = "--lead", paramLabel = "LENGTH", description = "Lost at the start of each roll (default: nothing).")
    private @Nullable String lead;

    @Option(names = "--tail", paramLabel = "LENGTH", description = "Lost at the core of each roll (default: nothing).")
    private @Nullable String tail;

    @Option(names = "--gap", paramLabel = "LENGTH", description = "Between neighbouring pieces (default: none).")
    private @Nullable String gap;

    @Option(
            names = "--cuts",
            paramLabel = "free|guillotine|cross",
            description = "Cuts that may be needed: any, only cuts from edge to edge, only cross cuts with one panel across the roll (default: free).")
    private CutKind kind = CutKind.FREE;

    @Option(names = "--one-lot", description = "All pieces of a group from rolls of one lot.")
    private boolean oneLot;

    @Option(names = "--one-more", description = "Plan again with rolls a centimetre longer, and say how much longer they must be to save anything.")
    private boolean oneMore;

    @Option(names = "--work", paramLabel = "STEPS", description = "Counted steps after which the search ends (default: ${DEFAULT-VALUE}).")
    private long work = RollPlanner.DEFAULT_WORK;

    RollsCommand(PrintWriter out, PrintWriter err) {
        this.out = out;
        this.err = err;
    }

    @Override
    public Integer call() {
        StockList rolls;
        RollPlan plan;
        Optional<LongerRolls> longer;
        try {
            rolls = StockList.parse(Input.text(stock));
            CuttingTerms terms = new CuttingTerms(
                    steps("--lead", lead), steps("--tail", tail), steps("--gap", gap), RemnantRule.none(), oneLot ? LotRule.ONE_LOT_PER_WALL : LotRule.ANY, kind);
            RollPlanner planner = RollPlanner.withDefaults().withTerms(terms).withWorkLimit(work);
            plan = Progress.during(err, "planning the rolls", () -> planner.plan(CutList.parse(Input.text(cuts)), rolls.stock()));
            longer = oneMore ? Optional.of(Progress.during(err, "planning longer rolls", () -> LongerRolls.of(plan, CENTIMETRE))) : Optional.empty();
        } catch (RefusedException e) {
            err.println(e.getMessage());
            return Main.BAD_INPUT;
        } catch (IOException e) {
            err.println(Input.complaint(e));
            return Main.BAD_INPUT;
        }
        PlanResult result = new PlanResult(plan, rolls, longer);
        switch (format) {
            case JSON -> out.print(result.json());
            case CSV -> out.print(result.csv());
            default -> out.print(text(result));
        }
        out.flush();
        if (!plan.isFeasible()) {
            reasons(result).lines().forEach(err::println);
            return Main.IMPOSSIBLE;
        }
        return Main.FINE;
    }

    private static long steps(String option, @Nullable String text) {
        return text == null ? 0 : Steps.up(Door.lengthM(option, Read.length(text), LOST));
    }

    private String text(PlanResult result) {
        StringBuilder text = new StringBuilder();
        RollPlan plan = result.plan();
        if (plan.isFeasible()) {
            Columns rows = new Columns("", "rllrr").row("no.", "roll", "pieces in cutting order", "used", "left");
            int number = 0;
            for (OpenedRoll roll : plan.rolls()) {
                number++;
                rows.row(Integer.toString(number), roll.stockId(), String.join(", ", roll.pieces()), cut(roll.usedSteps()), cut(roll.remnantSteps()));
            }
            rows.print(text);
            places(text, plan);
            text.append(Print.count(plan.rolls().size(), "roll")).append(", ").append(result.stock().amount(plan.cost()));
            text.append(plan.isProven() ? ", proven the cheapest" : ", no plan costs less than " + result.stock().amount(plan.lowerBound())).append('\n');
            text.append("\nWHY THESE ROLLS\n");
            reasons(result).lines().forEach(line -> Paragraph.add(text, "  ", "    ", line));
            waste(text, plan);
        }
        result.longer().ifPresent(saved -> {
            text.append("\nONE MORE CENTIMETRE OF ROLL\n");
            saved.lines(units, result.stock()::amount).forEach(line -> Paragraph.add(text, "  ", "    ", line));
        });
        return text.toString();
    }

    private RollReasons reasons(PlanResult result) {
        return RollReasons.of(result.plan(), units, result.stock()::amount);
    }

    /** A row for each roll and one for all, a column for each part that occurs, the biggest first. */
    private static void waste(StringBuilder text, RollPlan plan) {
        text.append("\nWHERE THE WASTE IS, IN SHARES OF THE FILM OPENED\n");
        WasteShares all = WasteShares.of(plan);
        List<WastePart> parts = List.copyOf(all.partsM2().keySet());
        Columns rows = new Columns("  ", "lr" + "r".repeat(parts.size()));
        rows.row(row("", "not panels", parts.stream().map(WastePart::title)));
        for (WasteShares shares : WasteShares.ofEachRoll(plan)) {
            rows.row(row(shares.of(), percent(shares.share()), parts.stream().map(part -> percent(shares.share(part)))));
        }
        rows.row(row(all.of(), percent(all.share()), parts.stream().map(part -> percent(all.share(part)))));
        rows.print(text);
    }

    private static String[] row(String first, String second, Stream<String> rest) {
        return Stream.concat(Stream.of(first, second), rest).toArray(String[]::new);
    }

    private static String percent(double share) {
        return Print.fixed(100 * share, 1) + " %";
    }

    /** Where the pieces lie on rolls that hold some side by side or turned. */
    private void places(StringBuilder text, RollPlan plan) {
        int number = 0;
        for (OpenedRoll roll : plan.rolls()) {
            number++;
            if (roll.cuts() != CutKind.CROSS || roll.placed().stream().anyMatch(PlacedCut::turned)) {
                text.append("roll ").append(number).append(", places behind the lead and from the left edge, ").append(words(roll.cuts())).append('\n');
                Columns rows = new Columns("  ", "lrrrrl").row("piece", "along", "across", "length", "width", "");
                for (PlacedCut piece : roll.placed()) {
                    rows.row(piece.cutId(), cut(piece.alongSteps()), cut(piece.acrossSteps()), cut(piece.lengthSteps()), cut(piece.widthSteps()),
                            piece.turned() ? "turned" : "");
                }
                rows.print(text);
            }
        }
    }

    private static String words(CutKind kind) {
        return switch (kind) {
            case CROSS -> "cross cuts only:";
            case GUILLOTINE -> "cuts from edge to edge (cross cuts, slits, cross cuts):";
            case FREE -> "cuts that stop inside the film:";
        };
    }

    private String cut(long steps) {
        return Print.cut(steps, units);
    }
}
