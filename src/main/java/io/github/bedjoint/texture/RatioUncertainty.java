package io.github.bedjoint.texture;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Print;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.working.Explained;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Working;
import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Area;

/**
 * Standard uncertainty of a developed area ratio, from those of the sizes it was worked out from: first-order propagation for
 * independent inputs (JCGM 100:2008, 5.1.2).
 *
 * <p>A change is half the difference of the ratio with the input one standard uncertainty up and down (5.1.3 note 2), which is the
 * sensitivity times the uncertainty to first order. Immutable.
 */
public final class RatioUncertainty implements Explained {
    private static final Source GUM = Source.standard("JCGM 100:2008, 5.1.2 and 5.1.3 note 2, from memory");
    /** Standard uncertainty of the ratio. */
    public static final Formula UNCERTAINTY = Formula.of(
            "texture.uncertainty",
            "Standard uncertainty of the developed area ratio",
            Symbol.number("u_r", "standard uncertainty of the ratio"),
            "sqrt(v)",
            GUM,
            Symbol.number("v", "variance of the ratio"));
    static final Formula VARIANCE = Formula.of(
            "texture.variance",
            "Variance of the developed area ratio",
            Symbol.number("v", "variance of the ratio"),
            "sum(v_i)",
            GUM,
            Symbol.number("v_i", "variance from one input"));
    static final Formula PART = Formula.of(
            "texture.variance-part",
            "Variance from one input",
            Symbol.number("v_i", "variance from one input"),
            "((r_plus - r_minus) / 2)^2",
            GUM,
            Symbol.number("r_plus", "ratio with the input one standard uncertainty larger"),
            Symbol.number("r_minus", "ratio with the input one standard uncertainty smaller"));
    /** Standard uncertainty of the developed area. */
    public static final Formula DEVELOPED = Formula.of(
            "texture.developed-uncertainty",
            "Standard uncertainty of the developed area",
            new Symbol("u_Ad", Measure.AREA, "standard uncertainty of the developed area"),
            "sqrt((r * u_A)^2 + (A * u_r)^2)",
            GUM,
            Symbol.number("r", "developed area ratio"),
            new Symbol("u_A", Measure.AREA, "standard uncertainty of the area"),
            new Symbol("A", Measure.AREA, "area seen from the front"),
            Symbol.number("u_r", "standard uncertainty of the ratio"));

    private static final Range AREA = Range.closed(0, 1e8);

    private final double ratio;
    private final List<Part> parts;
    private final double variance;

    RatioUncertainty(double ratio, List<Part> parts) {
        this.ratio = ratio;
        this.parts = List.copyOf(parts);
        double sum = 0;
        for (Part part : parts) {
            sum += part.variance();
        }
        variance = sum;
    }

    /**
     * The ratio it belongs to.
     *
     * @return the developed area ratio
     */
    public double ratio() {
        return ratio;
    }

    /**
     * Standard uncertainty of the ratio, by {@link #UNCERTAINTY}.
     *
     * @return 0 or more
     */
    public double standard() {
        return Math.sqrt(variance);
    }

    /**
     * Standard uncertainty of the developed area, by {@link #DEVELOPED}.
     *
     * @param area        the area seen from the front, 0 or more
     * @param uncertainty its standard uncertainty, 0 or more
     * @return square metres
     * @throws io.github.bedjoint.units.RefusedException if a value is negative or not finite
     */
    public double developedM2(Quantity<Area> area, Quantity<Area> uncertainty) {
        return developed(Door.areaM2("area", area, AREA), Door.areaM2("uncertainty of the area", uncertainty, AREA));
    }

    private double developed(double areaM2, double areaUncertaintyM2) {
        return Math.hypot(ratio * areaUncertaintyM2, areaM2 * standard());
    }

    /**
     * How {@link #developedM2} came about.
     *
     * @param area        the area seen from the front, 0 or more
     * @param uncertainty its standard uncertainty, 0 or more
     * @return the working
     * @throws io.github.bedjoint.units.RefusedException if a value is negative or not finite
     */
    public Working developedWorking(Quantity<Area> area, Quantity<Area> uncertainty) {
        double areaM2 = Door.areaM2("area", area, AREA);
        double uncertaintyM2 = Door.areaM2("uncertainty of the area", uncertainty, AREA);
        return Working.of(DEVELOPED, developed(areaM2, uncertaintyM2), ratio, uncertaintyM2, areaM2, standard())
                .because(working());
    }

    @Override
    public Working working() {
        List<Double> variances = new ArrayList<>();
        List<Working> workings = new ArrayList<>();
        for (Part part : parts) {
            variances.add(part.variance());
            workings.add(Working.of(PART, part.variance(), part.plus(), part.minus()).whose(part.input()));
        }
        return Working.of(UNCERTAINTY, standard(), variance)
                .because(Working.sum(VARIANCE, variance, variances).because(workings.toArray(new Working[0])));
    }

    /** Ratio and uncertainty: {@code 1.1659 ± 0.0043 (standard uncertainty)}. */
    @Override
    public String toString() {
        return Print.fixed(ratio, 4) + " ± " + Print.fixed(standard(), 4) + " (standard uncertainty)";
    }

    /** What one input does to the ratio. */
    record Part(String input, double plus, double minus) {
        double variance() {
            double change = (plus - minus) / 2;
            return change * change;
        }
    }
}
