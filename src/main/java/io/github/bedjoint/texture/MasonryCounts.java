package io.github.bedjoint.texture;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Print;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.working.Explained;
import io.github.bedjoint.working.Working;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;

/**
 * How many units and how much joint there are in an area of masonry: joint lengths are a driver of work at joints.
 *
 * <p>Nothing is rounded and nothing is added for waste. Head joints are counted over the full height of their course. Immutable.
 */
public final class MasonryCounts implements Explained {
    private static final Range AREA = Range.closed(0, 1e8);

    private final MasonrySizes sizes;
    private final double areaM2;
    private final double lengthM;
    private final double cellM2;

    private MasonryCounts(MasonrySizes sizes, double areaM2) {
        this.sizes = sizes;
        this.areaM2 = areaM2;
        lengthM = sizes.bond().meanLengthM(sizes.lengthM(), sizes.head().widthM());
        cellM2 = (lengthM + sizes.head().widthM()) * (sizes.heightM() + sizes.bed().widthM());
    }

    /**
     * The counts for an area.
     *
     * @param surface the masonry
     * @param area    area of the wall, 0 or more
     * @return the counts
     * @throws io.github.bedjoint.units.RefusedException if the area is negative or not finite
     */
    public static MasonryCounts of(MasonrySurface surface, Quantity<Area> area) {
        return new MasonryCounts(surface.sizes(), Door.areaM2("wall area", area, AREA));
    }

    /**
     * Number of units.
     *
     * @return the number, not rounded
     */
    public double units() {
        return areaM2 / cellM2;
    }

    /**
     * Length of the bed joints.
     *
     * @return metres
     */
    public double bedJointM() {
        return areaM2 / (sizes.heightM() + sizes.bed().widthM());
    }

    /**
     * Length of the head joints.
     *
     * @return metres
     */
    public double headJointM() {
        return areaM2 / (lengthM + sizes.head().widthM());
    }

    /**
     * Length of bed and head joints together.
     *
     * @return the length in metres
     */
    public Quantity<Length> joints() {
        return Door.length(bedJointM() + headJointM());
    }

    @Override
    public Working working() {
        double head = sizes.head().widthM();
        double bed = sizes.bed().widthM();
        Working cell = Working.of(MasonryFormulas.CELL_AREA, cellM2, lengthM, head, sizes.heightM(), bed);
        if (sizes.bond().hasHeaders()) {
            cell = cell.because(sizes.bond().lengthWorking(sizes.lengthM(), head));
        }
        return Working.group(
                "Units and joints",
                List.of(
                        Working.of(MasonryFormulas.COUNT, units(), areaM2, cellM2).because(cell),
                        Working.of(MasonryFormulas.BED_LENGTH, bedJointM(), areaM2, sizes.heightM(), bed),
                        Working.of(MasonryFormulas.HEAD_LENGTH, headJointM(), areaM2, lengthM, head)));
    }

    /** Units and joints: {@code 59.2593 units, bed joints 13.3333 m, head joints 4.4444 m}. */
    @Override
    public String toString() {
        return Print.number(units()) + " units in " + Print.number(areaM2) + " m², bed joints " + Print.number(bedJointM()) + " m, head joints " + Print.number(headJointM()) + " m";
    }
}
