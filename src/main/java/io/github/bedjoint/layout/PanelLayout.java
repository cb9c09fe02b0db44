package io.github.bedjoint.layout;

import io.github.bedjoint.film.Film;
import io.github.bedjoint.survey.Side;
import io.github.bedjoint.survey.Wall;
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
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;

/**
 * A wall divided into panels, in the order of application, or the reasons why it cannot be divided as asked.
 *
 * <p>Stored are the panels, the seams and every figure. The parts of all panels add up to the film cut. Immutable.
 */
public final class PanelLayout implements Explained {
    /** Panels side by side, over all rows. */
    public static final Formula STRIPS = Formula.of(
            "layout.strips", "Drops or bands", Symbol.number("n", "drops or bands"), "sum(n_i)",
            Source.geometry("a new row begins where a panel ends in a gap"), Symbol.number("n_i", "panels side by side in a row"));
    /** Length of all seams. */
    public static final Formula SEAM_LENGTH = Formula.of(
            "layout.seam-length", "Length of seams", new Symbol("L", Measure.LENGTH, "length of seams"), "sum(l_i)",
            Source.geometry("openings crossed do not count"), new Symbol("l_i", Measure.LENGTH, "length of a seam"));
    /** Extra film of all seams. */
    public static final Formula OVERLAP_ALLOWANCE = Formula.of(
            "layout.overlap-allowance", "Overlap allowance", new Symbol("A_o", Measure.AREA, "extra film for overlaps"), "sum(a_i)",
            Source.geometry("overlap times length, seam by seam"), new Symbol("a_i", Measure.AREA, "extra film of a seam"));
    /** Length of film that the panels take, one after the other. */
    public static final Formula FILM_LENGTH = Formula.of(
            "layout.film-length", "Length of film", new Symbol("l_f", Measure.LENGTH, "length of film"), "sum(l_i)",
            Source.geometry("cut lengths one after the other"), new Symbol("l_i", Measure.LENGTH, "cut length of a panel"));
    /** What seams in masonry joints cost more. */
    static final Formula JOINT_COST = Formula.of(
            "layout.joint-cost", "Surcharge of seams in masonry joints",
            new Symbol("C_j", Measure.MONEY, "surcharge of seams in masonry joints"), "sum(c_i)",
            Source.shop("rates of the seam rules"), new Symbol("c_i", Measure.MONEY, "surcharge of a seam"));
    /** Where the film of all panels ends up. */
    public static final Formula CUT_AREA = Formula.of(
            "layout.cut-area", "Film cut", new Symbol("A_c", Measure.AREA, "film cut"), "A + A_o + A_b + A_t + A_x + A_f",
            Source.geometry("the parts of a panel add up to the panel"),
            new Symbol("A", Measure.AREA, "visible area"),
            new Symbol("A_o", Measure.AREA, "extra film for overlaps"),
            new Symbol("A_b", Measure.AREA, "bleed, tuck, turn"),
            new Symbol("A_t", Measure.AREA, "shape trim"),
            new Symbol("A_x", Measure.AREA, "cut out over openings"),
            new Symbol("A_f", Measure.AREA, "fed in along the texture"));

    private final Division made;
    private final Wall wall;
    private final Film film;
    private final Direction direction;
    private final long overlap;
    private final Rates rates;
    private final List<Integer> rows;
    private final List<Run> runs;
    private final int seamPlaces;
    private final List<Alternative> alternatives;
    private final List<Panel> panels;
    private final List<Seam> seams;
    private final List<String> reasons;
    private final Places areas;
    private final double seamM;
    private final double overlapM2;
    private final double filmM;
    private final int cutOuts;
    private final double jointCost;
    private final double cost;

    private PanelLayout(
            Division made, List<Integer> rows, List<Run> runs, int seamPlaces, List<Panel> panels, List<Seam> seams, List<String> reasons,
            List<Alternative> alternatives) {
        wall = made.wall();
        film = made.film();
        direction = made.way();
        overlap = made.lap();
        rates = made.rates();
        this.made = made;
        this.rows = List.copyOf(rows);
        this.runs = List.copyOf(runs);
        this.seamPlaces = seamPlaces;
        this.panels = List.copyOf(panels);
        this.seams = List.copyOf(seams);
        this.reasons = reasons;
        this.alternatives = List.copyOf(alternatives);
        seamM = sum(seams, Seam::lengthM);
        overlapM2 = sum(seams, Seam::areaM2);
        filmM = sum(panels, p -> Steps.toM(p.cutLengthSteps()));
        areas = new Places(
                sum(panels, p -> p.places().visibleM2()),
                sum(panels, p -> p.places().overlapM2()),
                sum(panels, p -> p.places().bleedM2()),
                sum(panels, p -> p.places().trimM2()),
                sum(panels, p -> p.places().cutOutM2()),
                sum(panels, p -> p.places().takeUpM2()));
        cutOuts = panels.stream().mapToInt(Panel::cutOuts).sum();
        jointCost = sum(seams, s -> s.jointPerM() * s.lengthM());
        cost = rates.cost(filmM, panels.size(), seamM, cutOuts, jointCost);
    }

    static PanelLayout of(Division made, List<Strip> strips, List<Run> runs, Placement placed, int seamPlaces) {
        List<Integer> rows = new ArrayList<>();
        for (int i = 0; i < strips.size(); i++) {
            if (i > 0 && strips.get(i).from() < strips.get(i - 1).to()) {
                rows.set(rows.size() - 1, rows.get(rows.size() - 1) + 1);
            } else {
                rows.add(1);
            }
        }
        return new PanelLayout(made, rows, runs, seamPlaces, placed.panels(), placed.seams(), List.of(), List.of());
    }

    static PanelLayout impossible(Division made, String reason) {
        return new PanelLayout(made, List.of(), List.of(), 0, List.of(), List.of(), List.of(reason), List.of());
    }

    PanelLayout withAlternatives(List<Alternative> others) {
        return new PanelLayout(made, rows, runs, seamPlaces, panels, seams, reasons, others);
    }

    private static <T> double sum(List<T> all, ToDoubleFunction<T> figure) {
        return all.stream().mapToDouble(figure).sum();
    }

    /**
     * Layouts of one wall from the cheapest on: by cost, then fewer panels, then drops, smaller panels, shorter seams and fewer cut-outs, so that a
     * mirrored wall keeps its order; in the given order where all are the same.
     *
     * @param all  at least one layout
     * @param most how many at most
     * @return the possible ones, or only the first of the others where none is possible
     */
    public static List<PanelLayout> ranked(List<PanelLayout> all, int most) {
        List<PanelLayout> possible = all.stream()
                .filter(PanelLayout::isPossible)
                .sorted(Distinct.CHEAPEST_FIRST)
                .limit(most)
                .toList();
        return possible.isEmpty() ? List.of(all.get(0)) : possible;
    }

    /**
     * Whether the wall can be divided as asked.
     *
     * @return false where {@link #reasons()} say why not
     */
    public boolean isPossible() {
        return reasons.isEmpty();
    }

    /**
     * Why the wall cannot be divided as asked.
     *
     * @return sentences without a full stop; empty where it can
     */
    public List<String> reasons() {
        return reasons;
    }

    /**
     * Other ways to cover the wall where a panel is longer than the longest cut: panels the other way, a joint across, a longer roll.
     *
     * @return those that are possible, each with its cost; empty where nothing is wrong or nothing helps
     */
    public List<Alternative> alternatives() {
        return alternatives;
    }

    /**
     * The wall.
     *
     * @return what was divided
     */
    public Wall wall() {
        return wall;
    }

    /**
     * The film.
     *
     * @return what it was divided for
     */
    public Film film() {
        return film;
    }

    /**
     * Which way the panels run.
     *
     * @return drops or bands
     */
    public Direction direction() {
        return direction;
    }

    /**
     * From where panels were counted.
     *
     * @return LEFT or RIGHT of drops, BOTTOM or TOP of bands
     */
    public Side start() {
        return made.start();
    }

    /**
     * From where panels are counted, where both sides were tried.
     *
     * @return the side, or empty where it was set or is the default
     */
    public Optional<Side> chosenStart() {
        return made.startIsChosen() ? Optional.of(start()) : Optional.empty();
    }

    /**
     * How many panels there are in how many drops or bands, and from which side where that was chosen: {@code 6 panels in 6 drops from the
     * right}.
     *
     * @return the words
     */
    public String count() {
        return Print.count(panels.size(), "panel") + " in " + Print.count(strips(), direction() == Direction.BANDS ? "band" : "drop")
                + chosenStart().map(side -> " from the " + side.name().toLowerCase(Locale.ROOT)).orElse("");
    }

    /**
     * The panels.
     *
     * @return in the order of application; empty where there is no layout
     */
    public List<Panel> panels() {
        return panels;
    }

    /**
     * The seams between neighbouring drops or bands.
     *
     * @return from the starting side on
     */
    public List<Seam> seams() {
        return seams;
    }

    /**
     * How many drops or bands there are side by side; one may consist of several panels above and below openings.
     *
     * @return the count
     * @see #STRIPS
     */
    public int strips() {
        return rows.stream().mapToInt(Integer::intValue).sum();
    }

    /**
     * The overlap that was planned with.
     *
     * @return the length in metres
     */
    public Quantity<Length> overlap() {
        return Steps.toLength(overlap);
    }

    /**
     * The length of all seams, openings crossed not counted.
     *
     * @return the length in metres
     * @see #SEAM_LENGTH
     */
    public Quantity<Length> seamLength() {
        return Door.length(seamM);
    }

    /**
     * The extra film that overlaps take.
     *
     * @return the area
     * @see #OVERLAP_ALLOWANCE
     */
    public Quantity<Area> overlapAllowance() {
        return Door.area(overlapM2);
    }

    /**
     * Where the film of all panels ends up.
     *
     * @return the parts, which add up to the film cut
     */
    public Places places() {
        return areas;
    }

    /**
     * The length of all seams in metres.
     *
     * @return metres
     */
    public double seamM() {
        return seamM;
    }

    /**
     * The extra film for overlaps in square metres.
     *
     * @return m2
     */
    public double overlapM2() {
        return overlapM2;
    }

    /**
     * The length of film that the panels take one after the other, in metres.
     *
     * @return metres
     * @see #FILM_LENGTH
     */
    public double filmM() {
        return filmM;
    }

    /**
     * Openings cut out of panels; one that two panels cross counts twice.
     *
     * @return the count
     */
    public int cutOuts() {
        return cutOuts;
    }

    /**
     * The rates it was planned with.
     *
     * @return the rates
     */
    public Rates rates() {
        return rates;
    }

    /**
     * The cost by the planner's rates.
     *
     * @return an amount in the currency of the rates; with no rates given, metres of film
     */
    public double cost() {
        return cost;
    }

    /** Panels, seams, overlap allowance and the film by place; for a layout that is not possible a heading with the reasons. */
    @Override
    public Working working() {
        if (!isPossible()) {
            return Working.group("No layout of " + wall.name(), List.of()).noting(String.join("; ", reasons));
        }
        Working strips = Working.sum(STRIPS, strips(), rows).because(runs.stream().map(Run::working).toArray(Working[]::new));
        if (runs.isEmpty()) {
            strips = strips.noting("the cheapest of all rows with seams at " + seamPlaces + " places");
        }
        List<Double> lengths = seams.stream().map(Seam::lengthM).toList();
        Working allowance = Working.sum(OVERLAP_ALLOWANCE, overlapM2, seams.stream().map(Seam::areaM2).toList())
                .because(seams.stream().map(Seam::working).toArray(Working[]::new));
        List<Working> all = new ArrayList<>();
        all.addAll(List.of(made.reachWorkings()));
        all.add(strips);
        all.add(Working.sum(SEAM_LENGTH, seamM, lengths));
        all.add(allowance);
        Working film = Working.sum(FILM_LENGTH, filmM, panels.stream().map(p -> Steps.toM(p.cutLengthSteps())).toList());
        all.add(film);
        all.add(Working.of(CUT_AREA, areas.totalM2(), areas.visibleM2(), overlapM2, areas.bleedM2(), areas.trimM2(),
                areas.cutOutM2(), areas.takeUpM2()));
        all.add(Working.of(Rates.COST, cost, rates.filmPerM(), filmM, rates.perPanel(), panels.size(), rates.seamPerM(), seamM,
                rates.perCutOut(), cutOuts, jointCost)
                .because(Working.sum(JOINT_COST, jointCost, seams.stream().map(s -> s.jointPerM() * s.lengthM()).toList())));
        return Working.group("Layout of " + wall.name(), all);
    }

    /** Wall, panels, direction, start where it was chosen, and film. */
    @Override
    public String toString() {
        return isPossible()
                ? wall.name() + ": " + count() + ", " + Measure.LENGTH.print(filmM, UnitStyle.METRIC) + " of film"
                : wall.name() + ": no layout, " + String.join("; ", reasons);
    }
}
