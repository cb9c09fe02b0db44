package io.github.bedjoint.waste;

import io.github.bedjoint.film.Film;
import io.github.bedjoint.rolls.Cut;
import io.github.bedjoint.rolls.OpenedRoll;
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
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import javax.measure.Quantity;
import javax.measure.quantity.Area;

/**
 * Where every square metre of the film that was opened ends; the parts add up to the film opened.
 *
 * <p>Lead, tail, gaps, edge margins, width trim and remnants follow from the roll plan, where a gap is a stretch of roll without any panel
 * and width trim what lies beside and between the panels of a stretch that holds some, each added up over the widths of the rolls; what
 * becomes of the panels themselves (visible, overlap, bleed, shape trim, cut-out, take-up, spare) is given by the layout. Stored are lengths
 * and areas in metres and square metres. Immutable.
 */
public final class WasteAccount implements Explained {
    /** The parts that a roll plan gives, in the order in which {@link WebAccount} works them out. */
    private static final List<WastePart> OF_ROLLS =
            List.of(WastePart.LEAD, WastePart.TAIL, WastePart.GAP, WastePart.EDGE_MARGIN, WastePart.WIDTH_TRIM);
    private static final Source CONSERVATION = Source.geometry("conservation of area");
    private static final Symbol OPENED = new Symbol("A_opened", Measure.AREA, "film opened");

    static final Formula FILM_OPENED = Formula.of(
            "rolls.opened", "Film opened", OPENED, "sum(A_i)", Source.geometry("rectangles along a roll"),
            new Symbol("A_i", Measure.AREA, "area of a roll opened"));
    static final Formula ACCOUNT = Formula.of(
            "rolls.account", "Waste account: the parts add up to the film opened", OPENED, "sum(P_i)", CONSERVATION,
            new Symbol("P_i", Measure.AREA, "a part of the account"));
    static final Formula OVER_WIDTHS = Formula.of(
            "rolls.over-widths", "A part of the account over rolls of all widths", new Symbol("P", Measure.AREA, "a part of the account"),
            "sum(P_w)", CONSERVATION, new Symbol("P_w", Measure.AREA, "the same part of rolls of one width"));
    static final Formula UTILISATION = Formula.of(
            "rolls.utilisation", "Roll utilisation", Symbol.number("u", "roll utilisation"), "A_panels / A_opened",
            Source.geometry("definition"), WebAccount.PANELS, OPENED);

    private final double panelsM2;
    private final double openedM2;
    private final List<Double> rollsM2;
    private final List<Double> cutsM2;
    private final List<WebAccount> webs;
    private final Map<WastePart, Double> parts;

    private WasteAccount(RollPlan plan, long marginSteps, Map<WastePart, Double> ofPanels) {
        rollsM2 = new ArrayList<>();
        cutsM2 = new ArrayList<>();
        webs = new ArrayList<>();
        parts = new EnumMap<>(WastePart.class);
        parts.putAll(ofPanels);
        Map<String, Stock> stock = new HashMap<>();
        plan.stock().forEach(row -> stock.put(row.id(), row));
        Map<Long, List<OpenedRoll>> byWidth = new TreeMap<>();
        for (OpenedRoll roll : plan.rolls()) {
            Stock row = stock.get(roll.stockId());
            rollsM2.add(Steps.toM(row.lengthSteps()) * Steps.toM(row.widthSteps() + 2 * marginSteps));
            byWidth.computeIfAbsent(row.widthSteps(), width -> new ArrayList<>()).add(roll);
        }
        byWidth.forEach((width, rolls) -> webs.add(new WebAccount(width, marginSteps, plan.terms(), rolls)));
        for (Cut cut : plan.cuts()) {
            for (int i = 0; i < cut.quantity(); i++) {
                cutsM2.add(Steps.toM(cut.widthSteps()) * Steps.toM(cut.lengthSteps()));
            }
        }
        panelsM2 = cutsM2.stream().mapToDouble(a -> a).sum();
        openedM2 = rollsM2.stream().mapToDouble(a -> a).sum();
        OF_ROLLS.forEach(part -> parts.put(part, 0.0));
        parts.put(WastePart.KEPT_REMNANT, 0.0);
        parts.put(WastePart.SCRAP, 0.0);
        webs.forEach(web -> web.partsM2().forEach((part, m2) -> parts.merge(part, m2, Double::sum)));
    }

    /**
     * The account of a roll plan.
     *
     * @param plan     a plan that holds every cut
     * @param film     the film that is cut, whose edge margins lie beside the stock's printable width
     * @param ofPanels what becomes of the panels, in square metres, parts VISIBLE to TAKE_UP and SPARE; they add up to the area of the cuts
     * @return the account
     * @throws IllegalArgumentException if the plan holds no plan, or the panels' parts do not add up to their area
     */
    public static WasteAccount of(RollPlan plan, Film film, Map<WastePart, Double> ofPanels) {
        if (!plan.isFeasible()) {
            throw new IllegalArgumentException("there is no roll plan to account for: " + plan.shortages());
        }
        WasteAccount account = new WasteAccount(plan, film.edgeMarginSteps(), ofPanels);
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
        List<Working> because = new ArrayList<>();
        because.add(Working.sum(FILM_OPENED, openedM2, rollsM2));
        because.add(Working.sum(WebAccount.PANEL_AREA, panelsM2, cutsM2));
        because.addAll(webs.size() == 1 ? webs.get(0).workings() : overWidths());
        because.add(filmYield().working());
        because.add(Working.of(UTILISATION, utilisation(), panelsM2, openedM2));
        return Working.sum(ACCOUNT, openedM2, List.copyOf(parts.values())).because(because.toArray(Working[]::new));
    }

    /** Each part added up over the widths, and how it came about for each. */
    private List<Working> overWidths() {
        List<Working> sums = new ArrayList<>();
        for (int i = 0; i < OF_ROLLS.size(); i++) {
            int place = i;
            WastePart part = OF_ROLLS.get(i);
            sums.add(Working.sum(OVER_WIDTHS, parts.getOrDefault(part, 0.0), webs.stream().map(web -> web.part(part)).toList())
                    .whose(part.title())
                    .because(webs.stream().map(web -> web.workings().get(place).whose(web.title())).toArray(Working[]::new)));
        }
        return sums;
    }

    /** Film opened and yield in one line. */
    @Override
    public String toString() {
        return Measure.AREA.print(openedM2, UnitStyle.METRIC) + " opened, yield " + Print.fixed(filmYield().share() * 100, 1) + " %";
    }
}
