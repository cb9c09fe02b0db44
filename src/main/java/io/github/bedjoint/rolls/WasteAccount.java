package io.github.bedjoint.rolls;

import io.github.bedjoint.film.Film;
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
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.measure.Quantity;
import javax.measure.quantity.Area;

/**
 * Where every square metre of the film that was opened ends; the parts add up to the film opened.
 *
 * <p>Lead, tail, gaps, edge margins, width trim and remnants follow from the roll plan, where a gap is a stretch of roll without any panel
 * and width trim what lies beside and between the panels of a stretch that holds some; what becomes of the panels themselves (visible,
 * overlap, bleed, shape trim, cut-out, take-up, spare) is given by the layout. Stored are the lengths and areas in metres and square metres.
 * Immutable.
 */
public final class WasteAccount implements Explained {
    private static final Source ROLL = Source.geometry("rectangles along a roll");
    private static final Symbol WIDTH = new Symbol("W", Measure.LENGTH, "roll width");
    private static final Symbol OPENED = new Symbol("A_opened", Measure.AREA, "film opened");
    private static final Symbol PANELS = new Symbol("A_panels", Measure.AREA, "area of all panels cut");
    private static final Symbol COVERED = new Symbol("S", Measure.LENGTH, "length of roll that holds panels");
    private static final Symbol ROLLS = Symbol.number("N", "rolls opened");

    static final Formula FILM_OPENED = Formula.of(
            "rolls.opened", "Film opened", OPENED, "sum(A_i)", ROLL, new Symbol("A_i", Measure.AREA, "area of a roll opened"));
    static final Formula ACCOUNT = Formula.of(
            "rolls.account", "Waste account: the parts add up to the film opened", OPENED, "sum(P_i)",
            Source.geometry("conservation of area"), new Symbol("P_i", Measure.AREA, "a part of the account"));
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
    static final Formula UTILISATION = Formula.of(
            "rolls.utilisation", "Roll utilisation", Symbol.number("u", "roll utilisation"), "A_panels / A_opened",
            Source.geometry("definition"), PANELS, OPENED);

    private final double widthM;
    private final double marginM;
    private final double leadM;
    private final double tailM;
    private final int rolls;
    private final double usedM;
    private final double coveredM;
    private final double panelsM2;
    private final double openedM2;
    private final List<Double> rollsM2;
    private final List<Double> cutsM2;
    private final Map<WastePart, Double> parts;

    private WasteAccount(RollPlan plan, Film film, Map<WastePart, Double> ofPanels) {
        widthM = Steps.toM(film.rollWidthSteps());
        marginM = Steps.toM(film.edgeMarginSteps());
        leadM = Steps.toM(plan.terms().leadSteps());
        tailM = Steps.toM(plan.terms().tailSteps());
        rolls = plan.rolls().size();
        rollsM2 = new ArrayList<>();
        cutsM2 = new ArrayList<>();
        parts = new EnumMap<>(WastePart.class);
        parts.putAll(ofPanels);
        Map<String, Stock> stock = new HashMap<>();
        plan.stock().forEach(row -> stock.put(row.id(), row));
        double remnantKept = 0;
        double scrap = 0;
        long used = 0;
        long covered = 0;
        for (OpenedRoll roll : plan.rolls()) {
            rollsM2.add(Steps.toM(stock.get(roll.stockId()).lengthSteps()) * widthM);
            double left = Steps.toM(roll.remnantSteps()) * widthM;
            boolean kept = roll.remnantSteps() >= plan.terms().remnants().leastSteps();
            remnantKept += kept ? left : 0;
            scrap += kept ? 0 : left;
            used += roll.usedSteps();
            covered += roll.coveredSteps();
        }
        double area = 0;
        for (Cut cut : plan.cuts()) {
            for (int i = 0; i < cut.quantity(); i++) {
                cutsM2.add(Steps.toM(cut.widthSteps()) * Steps.toM(cut.lengthSteps()));
                area += cutsM2.get(cutsM2.size() - 1);
            }
        }
        usedM = Steps.toM(used);
        coveredM = Steps.toM(covered);
        panelsM2 = area;
        openedM2 = rollsM2.stream().mapToDouble(a -> a).sum();
        parts.put(WastePart.LEAD, rolls * leadM * widthM);
        parts.put(WastePart.TAIL, rolls * tailM * widthM);
        parts.put(WastePart.GAP, (usedM - coveredM) * widthM);
        parts.put(WastePart.EDGE_MARGIN, 2 * marginM * coveredM);
        parts.put(WastePart.WIDTH_TRIM, (widthM - 2 * marginM) * coveredM - panelsM2);
        parts.put(WastePart.KEPT_REMNANT, remnantKept);
        parts.put(WastePart.SCRAP, scrap);
    }

    /**
     * The account of a roll plan.
     *
     * @param plan     a plan that holds every cut
     * @param film     the film that is cut, whose printable width is the stock's width
     * @param ofPanels what becomes of the panels, in square metres, parts VISIBLE to TAKE_UP and SPARE; they add up to the area of the cuts
     * @return the account
     * @throws IllegalArgumentException if the plan holds no plan, or the panels' parts do not add up to their area
     */
    public static WasteAccount of(RollPlan plan, Film film, Map<WastePart, Double> ofPanels) {
        if (!plan.isFeasible()) {
            throw new IllegalArgumentException("there is no roll plan to account for: " + plan.shortages());
        }
        WasteAccount account = new WasteAccount(plan, film, ofPanels);
        double given = ofPanels.values().stream().mapToDouble(a -> a).sum();
        if (Math.abs(given - account.panelsM2) > 1e-9 * Math.max(1, account.panelsM2)) {
            throw new IllegalArgumentException("the panels' parts add up to " + given + " m2, their cuts to " + account.panelsM2 + " m2");
        }
        return account;
    }

    /**
     * All film opened, new or from stock.
     *
     * @return the area
     */
    public Quantity<Area> opened() {
        return Door.area(openedM2);
    }

    /**
     * All film opened.
     *
     * @return square metres
     */
    public double openedM2() {
        return openedM2;
    }

    /**
     * The parts, which add up to the film opened.
     *
     * @return square metres by part, in the order of {@link WastePart}; parts that do not occur are 0 or absent
     */
    public Map<WastePart, Double> partsM2() {
        return Collections.unmodifiableMap(parts);
    }

    /**
     * One part.
     *
     * @param part which
     * @return its area
     */
    public Quantity<Area> part(WastePart part) {
        return Door.area(parts.getOrDefault(part, 0.0));
    }

    /**
     * Area of the panels over film opened.
     *
     * @return a share from 0 to 1; 0 when nothing was opened
     */
    public double utilisation() {
        return openedM2 == 0 ? 0 : panelsM2 / openedM2;
    }

    /**
     * The yield: visible area over film opened, with and without kept remnants.
     *
     * @return the yield
     */
    public FilmYield filmYield() {
        return FilmYield.ofM2(parts.getOrDefault(WastePart.VISIBLE, 0.0), openedM2)
                .withKeptM2(parts.getOrDefault(WastePart.KEPT_REMNANT, 0.0));
    }

    @Override
    public Working working() {
        Working panels = Working.sum(PANEL_AREA, panelsM2, cutsM2);
        return Working.sum(ACCOUNT, openedM2, List.copyOf(parts.values()))
                .because(
                        Working.sum(FILM_OPENED, openedM2, rollsM2),
                        panels,
                        Working.of(LEAD, parts.get(WastePart.LEAD), rolls, leadM, widthM),
                        Working.of(TAIL, parts.get(WastePart.TAIL), rolls, tailM, widthM),
                        Working.of(GAPS, parts.get(WastePart.GAP), usedM, coveredM, widthM),
                        Working.of(MARGINS, parts.get(WastePart.EDGE_MARGIN), marginM, coveredM),
                        Working.of(WIDTH_TRIM, parts.get(WastePart.WIDTH_TRIM), widthM, marginM, coveredM, panelsM2).because(panels),
                        filmYield().working(),
                        Working.of(UTILISATION, utilisation(), panelsM2, openedM2));
    }

    /** Film opened and yield in one line. */
    @Override
    public String toString() {
        return Measure.AREA.print(openedM2, UnitStyle.METRIC) + " opened, yield " + Print.fixed(filmYield().share() * 100, 1) + " %";
    }
}
