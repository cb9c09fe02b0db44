package io.github.bedjoint.waste;

import io.github.bedjoint.rolls.CuttingTerms;
import io.github.bedjoint.rolls.OpenedRoll;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Print;
import io.github.bedjoint.units.Steps;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Working;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** The film opened of one roll width: how much of it lies beside the panels. */
final class WebAccount {
    private static final Source ROLL = Source.geometry("rectangles along a roll");
    private static final Symbol WIDTH = new Symbol("W", Measure.LENGTH, "roll width");
    private static final Symbol COVERED = new Symbol("S", Measure.LENGTH, "length of roll that holds panels");
    private static final Symbol ROLLS = Symbol.number("N", "rolls opened");

    static final Symbol PANELS = new Symbol("A_panels", Measure.AREA, "area of all panels cut");
    static final Formula PANEL_AREA = Formula.of(
            "rolls.panel-area", "Panels cut", PANELS, "sum(a_i)", ROLL, new Symbol("a_i", Measure.AREA, "cut width x cut length of a panel"));
    static final Formula LEAD = Formula.of(
            "rolls.lead", "Lead", new Symbol("A_lead", Measure.AREA, "lead"), "N * a * W", ROLL,
            ROLLS, new Symbol("a", Measure.LENGTH, "lead of a roll"), WIDTH);
    static final Formula TAIL = Formula.of(
            "rolls.tail", "Tail", new Symbol("A_tail", Measure.AREA, "tail"), "N * e * W", ROLL,
            ROLLS, new Symbol("e", Measure.LENGTH, "tail of a roll"), WIDTH);
    static final Formula GAPS = Formula.of(
            "rolls.gaps", "Gaps between panels", new Symbol("A_gap", Measure.AREA, "gaps"), "(U - S) * W", ROLL,
            new Symbol("U", Measure.LENGTH, "length from the first panel to the last, all rolls"), COVERED, WIDTH);
    static final Formula MARGINS = Formula.of(
            "rolls.margins", "Edge margins", new Symbol("A_margin", Measure.AREA, "edge margins"), "2 * m * S", ROLL,
            new Symbol("m", Measure.LENGTH, "edge margin on each side"), COVERED);
    static final Formula WIDTH_TRIM = Formula.of(
            "rolls.width-trim", "Width trim", new Symbol("A_trim", Measure.AREA, "width trim"), "(W - 2 * m) * S - A_panels", ROLL,
            WIDTH, new Symbol("m", Measure.LENGTH, "edge margin on each side"), COVERED, PANELS);

    private final long widthSteps;
    private final double widthM;
    private final double marginM;
    private final double leadM;
    private final double tailM;
    private final int rolls;
    private final double usedM;
    private final double coveredM;
    private final double panelsM2;
    private final List<Double> cutsM2 = new ArrayList<>();
    private final Map<WastePart, Double> parts = new EnumMap<>(WastePart.class);

    WebAccount(long printableSteps, long marginSteps, CuttingTerms terms, List<OpenedRoll> opened) {
        widthSteps = printableSteps + 2 * marginSteps;
        widthM = Steps.toM(widthSteps);
        marginM = Steps.toM(marginSteps);
        leadM = Steps.toM(terms.leadSteps());
        tailM = Steps.toM(terms.tailSteps());
        rolls = opened.size();
        long used = 0;
        long covered = 0;
        double kept = 0;
        double scrap = 0;
        for (OpenedRoll roll : opened) {
            used += roll.usedSteps();
            covered += roll.coveredSteps();
            double left = Steps.toM(roll.remnantSteps()) * widthM;
            boolean isKept = roll.remnantSteps() >= terms.remnants().leastSteps();
            kept += isKept ? left : 0;
            scrap += isKept ? 0 : left;
            roll.placed().forEach(piece -> cutsM2.add(Steps.toM(piece.widthSteps()) * Steps.toM(piece.lengthSteps())));
        }
        usedM = Steps.toM(used);
        coveredM = Steps.toM(covered);
        panelsM2 = cutsM2.stream().mapToDouble(a -> a).sum();
        parts.put(WastePart.LEAD, rolls * leadM * widthM);
        parts.put(WastePart.TAIL, rolls * tailM * widthM);
        parts.put(WastePart.GAP, (usedM - coveredM) * widthM);
        parts.put(WastePart.EDGE_MARGIN, 2 * marginM * coveredM);
        parts.put(WastePart.WIDTH_TRIM, (widthM - 2 * marginM) * coveredM - panelsM2);
        parts.put(WastePart.KEPT_REMNANT, kept);
        parts.put(WastePart.SCRAP, scrap);
    }

    /** What of the film opened is no panel. */
    Map<WastePart, Double> partsM2() {
        return parts;
    }

    double panelsM2() {
        return panelsM2;
    }

    /** Its name where there are several. */
    String title() {
        return "film of " + Print.cut(widthSteps, UnitStyle.METRIC);
    }

    /** The parts that are worked out, in the order of the account. */
    List<Working> workings() {
        Working panels = Working.sum(PANEL_AREA, panelsM2, cutsM2);
        return List.of(
                Working.of(LEAD, part(WastePart.LEAD), rolls, leadM, widthM),
                Working.of(TAIL, part(WastePart.TAIL), rolls, tailM, widthM),
                Working.of(GAPS, part(WastePart.GAP), usedM, coveredM, widthM),
                Working.of(MARGINS, part(WastePart.EDGE_MARGIN), marginM, coveredM),
                Working.of(WIDTH_TRIM, part(WastePart.WIDTH_TRIM), widthM, marginM, coveredM, panelsM2).because(panels));
    }

    double part(WastePart part) {
        return parts.getOrDefault(part, 0.0);
    }
}
