package io.github.bedjoint.survey;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Print;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.working.Explained;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Working;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;

/**
 * How large a wall is: the area that is seen covered, the area that is billed, the area along the texture, and its edges.
 *
 * <p>Stored are the wall, the rule and every figure in metres and square metres. The visible area is physical: the openings that stay
 * open are out, whatever the rule of measurement says. Immutable.
 */
public final class WallAreas implements Explained {
    private static final Symbol VISIBLE_AREA = new Symbol("A", Measure.AREA, "visible area");
    private static final Symbol OUTLINE_AREA = new Symbol("A_w", Measure.AREA, "area within the outline");
    private static final Symbol OPENING_AREA = new Symbol("A_o", Measure.AREA, "area of the openings that stay open");
    private static final Symbol DEDUCTED_AREA = new Symbol("A_t", Measure.AREA, "area of the openings that the rule takes off");

    /** Area within the outline. */
    public static final Formula OUTLINE = Formula.of(
            "survey.outline-area", "Area within the outline", OUTLINE_AREA, "sum(a_i)",
            Source.geometry("an edge above counts what is below it, an edge below takes it off again"),
            new Symbol("a_i", Measure.AREA, "area between an edge and the lowest level, minus under the wall"));
    /** Area of the openings that stay open. */
    public static final Formula OPENINGS = Formula.of(
            "survey.opening-area", "Area of the openings", OPENING_AREA, "sum(a_i)", Source.geometry("width times height"),
            new Symbol("a_i", Measure.AREA, "area of an opening"));
    /** Visible area. */
    public static final Formula VISIBLE = Formula.of(
            "survey.visible-area", "Visible area", VISIBLE_AREA, "A_w - A_o",
            Source.geometry("the openings that stay open are out"), OUTLINE_AREA, OPENING_AREA);
    /** Area of the openings that the rule takes off. */
    public static final Formula DEDUCTED = Formula.of(
            "survey.deducted-area", "Area taken off by the rule", DEDUCTED_AREA, "sum(a_i)",
            Source.practice("which openings are taken off differs; the rule is given with the job"),
            new Symbol("a_i", Measure.AREA, "area of an opening that is taken off"));
    /** Measured area. */
    public static final Formula MEASURED = Formula.of(
            "survey.measured-area", "Measured area", new Symbol("A_m", Measure.AREA, "measured area, for billing"), "A_w - A_t",
            Source.practice("a deduction rule, given with the job"), OUTLINE_AREA, DEDUCTED_AREA);
    /** Developed area. */
    public static final Formula DEVELOPED = Formula.of(
            "survey.developed-area", "Developed area", new Symbol("A_d", Measure.AREA, "area along the texture"), "A * r",
            Source.standard("ISO 25178-2: developed area ratio r = 1 + Sdr"), VISIBLE_AREA,
            Symbol.number("r", "developed area ratio of the surface"));

    /** What the adhesive has to hold on. */
    public static final Formula CONTACT = Formula.of(
            "survey.contact-area", "Adhesive contact area of film that follows the texture",
            new Symbol("A_k", Measure.AREA, "adhesive contact area"), "A_d + A_u",
            Source.geometry("the visible area along the texture and the film turned beyond the wall, which lies on smooth ground"),
            new Symbol("A_d", Measure.AREA, "developed area"), new Symbol("A_u", Measure.AREA, "film turned beyond the wall"));

    private final Wall wall;
    private final DeductionRule rule;
    private final List<Double> outlineTerms;
    private final List<Double> openTerms;
    private final List<Double> deductedTerms;
    private final double outlineM2;
    private final double openM2;
    private final double visibleM2;
    private final double deductedM2;
    private final double measuredM2;
    private final double ratio;
    private final double developedM2;
    private final WallEdges edges;

    private WallAreas(Wall wall, DeductionRule rule) {
        this.wall = wall;
        this.rule = rule;
        outlineTerms = wall.outline().trapezoidsM2();
        outlineM2 = sum(outlineTerms);
        openTerms = wall.openings().stream().filter(Opening::staysOpen).map(Opening::areaM2).toList();
        openM2 = sum(openTerms);
        visibleM2 = outlineM2 - openM2;
        deductedTerms = wall.openings().stream()
                .filter(Opening::staysOpen)
                .map(Opening::areaM2)
                .filter(rule::deducts)
                .toList();
        deductedM2 = sum(deductedTerms);
        measuredM2 = outlineM2 - deductedM2;
        ratio = wall.surface().areaRatio();
        developedM2 = visibleM2 * ratio;
        edges = WallEdges.of(wall);
    }

    /**
     * Measures a wall.
     *
     * @param wall the wall
     * @param rule which openings are taken off the measured area
     * @return its areas and edges
     */
    public static WallAreas of(Wall wall, DeductionRule rule) {
        return new WallAreas(wall, rule);
    }

    private static double sum(List<Double> terms) {
        return terms.stream().mapToDouble(Double::doubleValue).sum();
    }

    /**
     * The wall.
     *
     * @return what was measured
     */
    public Wall wall() {
        return wall;
    }

    /**
     * The rule for the measured area.
     *
     * @return which openings are taken off
     */
    public DeductionRule rule() {
        return rule;
    }

    /**
     * Its edges, and the rims of its openings.
     *
     * @return their lengths
     */
    public WallEdges edges() {
        return edges;
    }

    /**
     * What is seen covered: the outline less the openings that stay open.
     *
     * @return the area
     * @see #VISIBLE
     */
    public Quantity<Area> visible() {
        return Door.area(visibleM2);
    }

    /**
     * What is billed: the outline less the openings that the rule takes off.
     *
     * @return the area
     * @see #MEASURED
     */
    public Quantity<Area> measured() {
        return Door.area(measuredM2);
    }

    /**
     * The visible area along the texture.
     *
     * @return the area
     * @see #DEVELOPED
     */
    public Quantity<Area> developed() {
        return Door.area(developedM2);
    }

    /**
     * What the adhesive holds on where the film follows: the developed area and the film turned beyond the wall.
     *
     * @return square metres
     * @see #CONTACT
     */
    public double contactM2() {
        return developedM2 + edges.turnedM2();
    }

    /**
     * How uncertain the areas are, where the survey says how uncertain its lengths or its texture are.
     *
     * @return the uncertainty, or empty where nothing was said
     */
    public Optional<AreaUncertainty> uncertainty() {
        return wall.tolerance().isNone() && wall.surface().uncertainty().isEmpty() ? Optional.empty() : Optional.of(AreaUncertainty.of(this));
    }

    /**
     * Length of ground edge less the doors that stand on it.
     *
     * @return the length
     * @see WallEdges#GROUND
     */
    public Quantity<Length> groundLength() {
        return Door.length(edges.groundM());
    }

    /**
     * The visible area in square metres.
     *
     * @return m2
     */
    public double visibleM2() {
        return visibleM2;
    }

    /**
     * The measured area in square metres.
     *
     * @return m2
     */
    public double measuredM2() {
        return measuredM2;
    }

    /**
     * The developed area in square metres.
     *
     * @return m2
     */
    public double developedM2() {
        return developedM2;
    }

    /**
     * The area of the openings that stay open, in square metres.
     *
     * @return m2
     */
    public double openingsM2() {
        return openM2;
    }

    /**
     * The visible area that lies lower than a height, such as what is reached from the ground.
     *
     * @param heightM a height over the lowest point of the wall, in metres
     * @return square metres, from 0 to {@link #visibleM2()}
     */
    public double visibleBelowM2(double heightM) {
        return BelowHeight.visibleM2(wall, heightM);
    }

    /** Visible, measured and developed area and the edges, each explained. */
    @Override
    public Working working() {
        Working outline = Working.sum(OUTLINE, outlineM2, outlineTerms);
        Working visible = Working.of(VISIBLE, visibleM2, outlineM2, openM2)
                .because(outline, Working.sum(OPENINGS, openM2, openTerms));
        Working measured = Working.of(MEASURED, measuredM2, outlineM2, deductedM2)
                .because(outline, Working.sum(DEDUCTED, deductedM2, deductedTerms).noting("taken off: " + rule));
        Working developed = Working.of(DEVELOPED, developedM2, visibleM2, ratio)
                .because(visible, wall.surface().working());
        return Working.group("Areas of " + wall.name(), List.of(
                visible.whose(wall.name()), measured.whose(wall.name()), developed.whose(wall.name()),
                Working.of(CONTACT, contactM2(), developedM2, edges.turnedM2()).because(developed).whose(wall.name()), edges.working()));
    }

    /** The three areas and what was deducted. */
    @Override
    public String toString() {
        return wall.name() + ": " + Measure.AREA.print(visibleM2, UnitStyle.METRIC) + " visible, "
                + Measure.AREA.print(measuredM2, UnitStyle.METRIC) + " measured, deducting " + rule + ", "
                + Measure.AREA.print(developedM2, UnitStyle.METRIC) + " developed at a ratio of " + Print.fixed(ratio, 4);
    }
}
