package io.github.bedjoint.texture;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Print;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.working.Explained;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Verdict;
import io.github.bedjoint.working.Working;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
    static final Source GUM = Source.standard("JCGM 100:2008, 5.1.2 and 5.1.3 note 2, from memory");
    /** What a mean is off by where the function bends; the guide asks for such terms in the note. */
    static final Source SECOND_ORDER = Source.standard(
            "JCGM 100:2008, 5.1.2 note, from memory: terms of higher order where the function is not straight; here the second-order term of the mean");
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
    /** What the noise of the readings adds to the ratio on the average. */
    public static final Formula NOISE = Formula.of(
            "texture.noise", "What noise adds to the ratio", Symbol.number("b", "added on the average"), "sum(b_i)", SECOND_ORDER,
            Symbol.number("b_i", "added by one input"));
    /** The ratio less what noise adds to it. */
    public static final Formula LESS_NOISE = Formula.of(
            "texture.less-noise", "Developed area ratio less noise", Symbol.number("r_c", "ratio less noise"), "max(1, r - b)", SECOND_ORDER,
            Symbol.number("r", "developed area ratio as read"), Symbol.number("b", "added by noise on the average"));
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
    private final double bias;

    RatioUncertainty(double ratio, List<? extends Part> parts) {
        this.ratio = ratio;
        this.parts = List.copyOf(parts);
        variance = parts.stream().mapToDouble(Part::variance).sum();
        bias = noises().stream().mapToDouble(Noise::bias).sum();
    }

    /**
     * No uncertainty: a ratio that is taken as exact.
     *
     * @param surface the surface
     * @return an uncertainty of 0
     */
    public static RatioUncertainty none(Surface surface) {
        return new RatioUncertainty(surface.areaRatio(), List.of());
    }

    private List<Noise> noises() {
        return parts.stream().filter(Noise.class::isInstance).map(Noise.class::cast).toList();
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
     * What the noise of the readings adds to the ratio on the average, by {@link #NOISE}: points that are off to either side make a line longer and
     * an area larger, never less. The term is of second order and holds while the noise is small against the distance of the points.
     *
     * @return 0 or more; 0 where the ratio was not read from points
     */
    public double bias() {
        return bias;
    }

    /**
     * The ratio less what noise adds to it, by {@link #LESS_NOISE}. The surface's own ratio is as it was read.
     *
     * @return 1 or more
     */
    public double lessNoise() {
        return Math.max(1, ratio - bias);
    }

    /**
     * What noise does to the ratio.
     *
     * <p>It does not shrink with the number of points as the standard uncertainty does. Where it is much, the standard uncertainty, which is of
     * first order, is too small as well.
     *
     * @return a finding, a caution where noise adds more than a thousandth of the ratio and more than the standard uncertainty; empty where
     *     the ratio was not read from points
     */
    public Optional<Verdict> noise() {
        if (bias == 0) {
            return Optional.empty();
        }
        boolean much = bias > Math.max(standard(), ratio / 1000);
        return Optional.of(new Verdict(
                much ? Verdict.Level.CAUTION : Verdict.Level.FINE,
                "noise of the readings",
                "errors of the points only ever add surface, here about " + Print.fixed(bias, 4) + " on the average: the ratio of "
                        + Print.fixed(ratio, 4) + " would be " + Print.fixed(lessNoise(), 4) + " without them"
                        + (much ? "; read at a wider pitch, or average several readings" : ""),
                SECOND_ORDER));
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
            workings.add(part.working().whose(part.input()));
        }
        Working uncertainty = Working.of(UNCERTAINTY, standard(), variance)
                .because(Working.sum(VARIANCE, variance, variances).because(workings.toArray(new Working[0])));
        return bias == 0 ? uncertainty : uncertainty.because(lessNoiseWorking());
    }

    private Working lessNoiseWorking() {
        Working noise = Working.sum(NOISE, bias, noises().stream().map(Noise::bias).toList())
                .because(noises().stream().map(one -> one.biasWorking().whose(one.input())).toArray(Working[]::new));
        return Working.of(LESS_NOISE, lessNoise(), ratio, bias).because(noise);
    }

    /** Ratio and uncertainty: {@code 1.1659 ± 0.0043 (standard uncertainty)}, and what noise adds where there is any. */
    @Override
    public String toString() {
        return Print.fixed(ratio, 4) + " ± " + Print.fixed(standard(), 4) + " (standard uncertainty)"
                + (bias == 0 ? "" : ", less noise " + Print.fixed(lessNoise(), 4));
    }

    /** What one input does to the ratio. */
    interface Part {
        String input();

        double variance();

        Working working();
    }

    /** Errors of points, which also add to the ratio on the average. */
    interface Noise extends Part {
        double bias();

        Working biasWorking();
    }

    /** The ratio with one input a standard uncertainty larger and smaller. */
    record Moved(String input, double plus, double minus) implements Part {
        @Override
        public double variance() {
            double change = (plus - minus) / 2;
            return change * change;
        }

        @Override
        public Working working() {
            return Working.of(PART, variance(), plus, minus);
        }
    }
}
