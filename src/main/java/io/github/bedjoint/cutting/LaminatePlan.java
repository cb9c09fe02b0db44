package io.github.bedjoint.cutting;

import io.github.bedjoint.rolls.Cut;
import io.github.bedjoint.rolls.CutKind;
import io.github.bedjoint.rolls.OpenedRoll;
import io.github.bedjoint.rolls.PlacedCut;
import io.github.bedjoint.rolls.RollPlan;
import io.github.bedjoint.rolls.Stock;
import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Print;
import io.github.bedjoint.units.Steps;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.working.Explained;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Working;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.measure.Quantity;
import javax.measure.quantity.Length;

/**
 * Laminate for the printed web of a film plan: runs, and the laminate rolls they are cut from.
 *
 * <p>Laminate goes on the printed web before trimming, so a run is as long as the panels and gaps it covers and a lead-in. A laminate
 * joint never falls inside a panel: a film roll is laminated in one run where a laminate roll is long enough, and otherwise in runs that
 * end where a cross cut from edge to edge meets no panel. A run is as wide as the film roll that it covers, edge margins included. Immutable.
 */
public final class LaminatePlan implements Explained {
    private static final Symbol LENGTH = new Symbol("L_lam", Measure.LENGTH, "length of laminate");
    private static final Symbol WEB = new Symbol("L_web", Measure.LENGTH, "length of printed web");

    static final Formula WEB_LENGTH = Formula.of(
            "rolls.web-length", "Printed web", WEB, "sum(l_i)", Source.geometry("panels and gaps of each run"),
            new Symbol("l_i", Measure.LENGTH, "web of a run"));
    static final Formula LAMINATE_LENGTH = Formula.of(
            "rolls.laminate-length", "Laminate", LENGTH, "L_web + N * i", Source.practice("each run starts with a lead-in"),
            WEB, Symbol.number("N", "runs"), new Symbol("i", Measure.LENGTH, "lead-in of a run"));

    private final List<Double> websM;
    private final double webM;
    private final double leadInM;
    private final double lengthM;
    private final RollPlan plan;

    private LaminatePlan(List<Double> websM, double leadInM, RollPlan plan) {
        this.websM = websM;
        this.webM = websM.stream().mapToDouble(web -> web).sum();
        this.leadInM = leadInM;
        this.lengthM = webM + websM.size() * leadInM;
        this.plan = plan;
    }

    /**
     * Plans the laminate of a film plan.
     *
     * @param film        a plan of the film that holds every cut
     * @param marginSteps edge margin on each side of the film, by which a roll is wider than the plan's stock, in steps, 0 or more
     * @param leadInSteps laminate lost at the start of each run, in steps, 0 or more
     * @param stock       laminate rolls with their full widths
     * @param planner     how the laminate rolls are cut
     * @return the runs and their roll plan, which is infeasible when a panel is longer, or a film roll wider, than every laminate roll
     */
    public static LaminatePlan of(RollPlan film, long marginSteps, long leadInSteps, List<Stock> stock, RollPlanner planner) {
        Map<String, Long> widths = new HashMap<>();
        film.stock().forEach(row -> widths.put(row.id(), row.widthSteps() + 2 * marginSteps));
        List<Long> webs = new ArrayList<>();
        List<Cut> runs = new ArrayList<>();
        for (OpenedRoll roll : film.rolls()) {
            long width = widths.getOrDefault(roll.stockId(), 1L);
            long longest = stock.stream().filter(row -> row.widthSteps() >= width).mapToLong(Stock::lengthSteps).max().orElse(0) - leadInSteps;
            long start = 0;
            long end = 0;
            for (List<PlacedCut> section : roll.sections()) {
                long next = section.stream().mapToLong(PlacedCut::alongEndSteps).max().orElseThrow();
                if (end > start && next - start > longest) {
                    webs.add(end - start);
                    start = section.get(0).alongSteps();
                }
                end = next;
            }
            webs.add(end - start);
            for (long web : webs.subList(runs.size(), webs.size())) {
                runs.add(new Cut("run " + (runs.size() + 1), width, web + leadInSteps, 1, ""));
            }
        }
        List<Double> websM = webs.stream().map(Steps::toM).toList();
        return new LaminatePlan(websM, Steps.toM(leadInSteps), planner.withCuts(CutKind.CROSS).plan(runs, stock));
    }

    /**
     * How many runs are laminated.
     *
     * @return the count
     */
    public int runs() {
        return websM.size();
    }

    /**
     * Length of printed web that is laminated.
     *
     * @return the length in metres
     */
    public double webM() {
        return webM;
    }

    /**
     * Laminate used, lead-ins included.
     *
     * @return the length
     */
    public Quantity<Length> length() {
        return Door.length(lengthM);
    }

    /**
     * The laminate rolls opened and the runs cut from them.
     *
     * @return the roll plan
     */
    public RollPlan plan() {
        return plan;
    }

    @Override
    public Working working() {
        return Working.of(LAMINATE_LENGTH, lengthM, webM, runs(), leadInM).because(Working.sum(WEB_LENGTH, webM, websM));
    }

    /** Length, runs and rolls in one line. */
    @Override
    public String toString() {
        return Measure.LENGTH.print(lengthM, UnitStyle.METRIC) + " of laminate in " + Print.count(runs(), "run") + " from " + Print.count(plan.rolls().size(), "roll");
    }
}
