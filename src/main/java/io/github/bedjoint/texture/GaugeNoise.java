package io.github.bedjoint.texture;

import io.github.bedjoint.units.Measure;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Working;
import java.util.List;

/**
 * What independent errors of the points of a profile do to its length ratio, to first order, and by how much they lengthen it on the
 * average, to second order: each piece in the direction across it.
 *
 * @param input         which error, and of which profile
 * @param pointM        standard uncertainty of a point
 * @param straightM     straight length of the profile
 * @param sensitivities squared change of the length with each point
 * @param bends         how much each piece lengthens: straight length by its own, times the squared cosine of the angle to the error
 */
record GaugeNoise(String input, double pointM, double straightM, List<Double> sensitivities, List<Double> bends)
        implements RatioUncertainty.Noise {
    private static final Symbol POINT = new Symbol("u", Measure.LENGTH, "standard uncertainty of a point");
    private static final Symbol STRAIGHT = new Symbol("B", Measure.LENGTH, "straight length of the profile");
    private static final Symbol SQUARES = Symbol.number("G", "squared changes of the length with the points");
    private static final Symbol BENDS = Symbol.number("K", "how much the pieces lengthen, added up");

    static final Formula VARIANCE = Formula.of(
            "texture.gauge-variance", "Variance from the points of a profile", Symbol.number("v_i", "variance from one input"),
            "(u / B)^2 * G", RatioUncertainty.GUM, POINT, STRAIGHT, SQUARES);
    static final Formula SENSITIVITY = Formula.of(
            "texture.gauge-sensitivity", "Changes of the length with the points", SQUARES, "sum(g_i)", RatioUncertainty.GUM,
            Symbol.number("g_i", "squared change of the length with one point"));
    static final Formula BIAS = Formula.of(
            "texture.gauge-bias", "What errors of the points add to the ratio", Symbol.number("b_i", "added on the average"),
            "(u / B)^2 * K", RatioUncertainty.SECOND_ORDER, POINT, STRAIGHT, BENDS);
    static final Formula BEND = Formula.of(
            "texture.gauge-bend", "How much the pieces lengthen", BENDS, "sum(k_i)", RatioUncertainty.SECOND_ORDER,
            Symbol.number("k_i", "straight length to the length of a piece, times the square of its share across the error"));

    /** Errors of the heights. */
    static GaugeNoise ofHeights(String input, double pointM, ContourProfile profile) {
        return of(input, pointM, profile, profile.placesM(), profile.heightsM(), 0);
    }

    /** Errors of the places, which also move the ends of the straight length. */
    static GaugeNoise ofPlaces(String input, double pointM, ContourProfile profile) {
        return of(input, pointM, profile, profile.heightsM(), profile.placesM(), profile.ratio());
    }

    private static GaugeNoise of(
            String input, double pointM, ContourProfile profile, double[] still, double[] moved, double perStraight) {
        int n = still.length;
        double[] change = new double[n];
        Double[] bends = new Double[n - 1];
        change[0] = perStraight;
        change[n - 1] = -perStraight;
        for (int i = 1; i < n; i++) {
            double across = still[i] - still[i - 1];
            double along = moved[i] - moved[i - 1];
            double piece = Math.hypot(across, along);
            double share = piece == 0 ? 0 : along / piece;
            change[i] += share;
            change[i - 1] -= share;
            bends[i - 1] = piece == 0 ? 0 : profile.straightM() / piece * (across / piece) * (across / piece);
        }
        Double[] squares = new Double[n];
        for (int i = 0; i < n; i++) {
            squares[i] = change[i] * change[i];
        }
        return new GaugeNoise(input, pointM, profile.straightM(), List.of(squares), List.of(bends));
    }

    private static double sum(List<Double> terms) {
        return terms.stream().mapToDouble(Double::doubleValue).sum();
    }

    private double share() {
        return pointM / straightM;
    }

    @Override
    public double variance() {
        return share() * share() * sum(sensitivities);
    }

    @Override
    public double bias() {
        return share() * share() * sum(bends);
    }

    @Override
    public Working working() {
        return Working.of(VARIANCE, variance(), pointM, straightM, sum(sensitivities))
                .because(Working.sum(SENSITIVITY, sum(sensitivities), sensitivities));
    }

    @Override
    public Working biasWorking() {
        return Working.of(BIAS, bias(), pointM, straightM, sum(bends)).because(Working.sum(BEND, sum(bends), bends));
    }
}
