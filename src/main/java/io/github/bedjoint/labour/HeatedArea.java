package io.github.bedjoint.labour;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Print;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.working.Explained;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Working;
import javax.measure.Quantity;
import javax.measure.quantity.Area;

/**
 * The film that is heated and rolled on a wall, along its texture. An overlap is heated and rolled twice: once with the lower
 * panel, which the visible area holds already, and once with the upper. Immutable.
 */
public final class HeatedArea implements Explained {
    static final Formula FORMULA = Formula.of(
            "labour.heated-area",
            "Film heated and rolled",
            new Symbol("A_h", Measure.AREA, "film heated and rolled, along the texture"),
            "r * (A + A_o)",
            Source.practice("overlaps are heated and rolled twice"),
            Symbol.number("r", "developed area ratio of the wall"),
            new Symbol("A", Measure.AREA, "visible area"),
            new Symbol("A_o", Measure.AREA, "area of the overlaps"));

    private final double ratio;
    private final double visibleM2;
    private final double overlapM2;
    private final double heatedM2;

    private HeatedArea(double ratio, double visibleM2, double overlapM2) {
        this.ratio = ratio;
        this.visibleM2 = visibleM2;
        this.overlapM2 = overlapM2;
        this.heatedM2 = ratio * (visibleM2 + overlapM2);
    }

    /**
     * The heated film of a wall.
     *
     * @param areaRatio developed area over projected area, 1 to 20
     * @param visible   visible area, zero or more
     * @param overlap   area of the overlaps on the plane, zero or more
     * @return the heated area
     * @throws io.github.bedjoint.units.RefusedException if a value cannot be accepted
     */
    public static HeatedArea of(double areaRatio, Quantity<Area> visible, Quantity<Area> overlap) {
        Range range = Range.closed(0, 1e6);
        return new HeatedArea(
                Door.number("area ratio", areaRatio, Range.closed(1, 20)),
                Door.areaM2("visible area", visible, range),
                Door.areaM2("overlap area", overlap, range));
    }

    /**
     * The amount for {@link Driver#HEATED_AREA}.
     *
     * @return the area
     */
    public Quantity<Area> area() {
        return Door.area(heatedM2);
    }

    /**
     * {@link #area()} as a plain number.
     *
     * @return square metres
     */
    public double areaM2() {
        return heatedM2;
    }

    @Override
    public Working working() {
        return Working.of(FORMULA, heatedM2, ratio, visibleM2, overlapM2);
    }

    /** The area and what it is made of. */
    @Override
    public String toString() {
        return Measure.AREA.print(heatedM2, UnitStyle.METRIC) + " heated: " + Measure.AREA.print(visibleM2, UnitStyle.METRIC)
                + " visible and " + Measure.AREA.print(overlapM2, UnitStyle.METRIC) + " of overlap, " + Print.number(ratio) + " times";
    }
}
