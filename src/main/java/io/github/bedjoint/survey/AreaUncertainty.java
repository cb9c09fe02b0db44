package io.github.bedjoint.survey;

import io.github.bedjoint.texture.RatioUncertainty;
import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Steps;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.working.Explained;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Working;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;

/**
 * How uncertain the visible and the developed area of a wall are, from the survey's lengths and from the texture: first-order propagation for
 * independent inputs (JCGM 100:2008, 5.1.2).
 *
 * <p>A corner that is off moves the area by half the distance of its two neighbours, so that a rectangle of an uncertain width and height comes out as
 * anyone would do it: H times u added in squares to W times u. Immutable.
 */
public final class AreaUncertainty implements Explained {
    private static final Source GUM = Source.standard("JCGM 100:2008, 5.1.2, from memory");
    private static final Symbol WALL_SQUARES = new Symbol("Q_w", Measure.AREA, "squared changes of the area with the corners of the wall");
    private static final Symbol OPENING_SQUARES = new Symbol("Q_o", Measure.AREA, "squared changes of the area with the corners of openings");
    private static final Symbol CORNER =
            new Symbol("q_i", Measure.AREA, "a quarter of the squared distance of the neighbours of a corner");

    /** Standard uncertainty of the visible area. */
    public static final Formula VISIBLE = Formula.of(
            "survey.visible-uncertainty", "Standard uncertainty of the visible area",
            new Symbol("u_A", Measure.AREA, "standard uncertainty of the visible area"), "sqrt(u_w^2 * Q_w + u_o^2 * Q_o)", GUM,
            new Symbol("u_w", Measure.LENGTH, "standard uncertainty of a length of the wall"), WALL_SQUARES,
            new Symbol("u_o", Measure.LENGTH, "standard uncertainty of a length of an opening"), OPENING_SQUARES);
    static final Formula WALL_CORNERS = corners("survey.wall-corners", "Changes of the area with the corners of the wall", WALL_SQUARES);
    static final Formula OPENING_CORNERS =
            corners("survey.opening-corners", "Changes of the area with the corners of openings", OPENING_SQUARES);

    private final WallAreas areas;
    private final RatioUncertainty ratio;
    private final List<Double> wallCorners;
    private final List<Double> openingCorners;
    private final double visibleM2;

    private AreaUncertainty(WallAreas areas) {
        this.areas = areas;
        Wall wall = areas.wall();
        ratio = wall.surface().uncertainty().orElse(RatioUncertainty.none(wall.surface()));
        wallCorners = corners(wall.outline().points());
        openingCorners = new ArrayList<>();
        wall.openings().stream().filter(Opening::staysOpen).forEach(opening -> openingCorners.addAll(corners(Rim.of(opening).corners())));
        double wallM = wall.tolerance().wallM();
        double openingM = wall.tolerance().openingM();
        visibleM2 = Math.sqrt(wallM * wallM * sum(wallCorners) + openingM * openingM * sum(openingCorners));
    }

    static AreaUncertainty of(WallAreas areas) {
        return new AreaUncertainty(areas);
    }

    private static Formula corners(String id, String title, Symbol squares) {
        return Formula.of(
                id, title, squares, "sum(q_i)",
                Source.geometry("a corner moves the area of a polygon by half the distance of its neighbours"), CORNER);
    }

    private static List<Double> corners(List<Point> polygon) {
        List<Double> squares = new ArrayList<>();
        int n = polygon.size();
        for (int i = 0; i < n; i++) {
            Point before = polygon.get((i + n - 1) % n);
            Point behind = polygon.get((i + 1) % n);
            double dx = Steps.toM(behind.xSteps() - before.xSteps());
            double dy = Steps.toM(behind.ySteps() - before.ySteps());
            squares.add((dx * dx + dy * dy) / 4);
        }
        return squares;
    }

    private static double sum(List<Double> terms) {
        return terms.stream().mapToDouble(Double::doubleValue).sum();
    }

    /**
     * The uncertainty of the surface's ratio.
     *
     * @return one of 0 where the surface says nothing
     */
    public RatioUncertainty ratio() {
        return ratio;
    }

    /**
     * Standard uncertainty of the visible area.
     *
     * @return square metres, 0 where the lengths are taken as exact
     * @see #VISIBLE
     */
    public double visibleM2() {
        return visibleM2;
    }

    /**
     * Standard uncertainty of the developed area, from those of the visible area and of the ratio.
     *
     * @return square metres
     * @see RatioUncertainty#DEVELOPED
     */
    public double developedM2() {
        return ratio.developedM2(areas.visible(), Door.area(visibleM2));
    }

    /** Both figures, with what they came from. */
    @Override
    public Working working() {
        LengthTolerance lengths = areas.wall().tolerance();
        Working visible = Working.of(VISIBLE, visibleM2, lengths.wallM(), sum(wallCorners), lengths.openingM(), sum(openingCorners))
                .because(
                        Working.sum(WALL_CORNERS, sum(wallCorners), wallCorners),
                        Working.sum(OPENING_CORNERS, sum(openingCorners), openingCorners));
        Working developed = ratio.developedWorking(areas.visible(), Door.area(visibleM2));
        return Working.group("Uncertainty of the areas of " + areas.wall().name(), List.of(developed, visible));
    }

    /**
     * Ratio and areas with their standard uncertainties.
     *
     * @param style the reader's units
     * @return one line without a full stop
     */
    public String describe(UnitStyle style) {
        return "ratio " + ratio + ", visible " + plusMinus(areas.visibleM2(), visibleM2, style) + ", developed "
                + plusMinus(areas.developedM2(), developedM2(), style);
    }

    private static String plusMinus(double m2, double u, UnitStyle style) {
        double twoDigits = new BigDecimal(u).round(new MathContext(2)).doubleValue();
        return Measure.AREA.print(m2, style) + " ± " + Measure.AREA.print(twoDigits, style);
    }

    /** The same in metric units. */
    @Override
    public String toString() {
        return describe(UnitStyle.METRIC);
    }
}
