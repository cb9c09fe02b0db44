package io.github.bedjoint.texture;

import io.github.bedjoint.units.Measure;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Working;

/**
 * What independent errors of the heights of a grid do to its area ratio, to first order, and by how much they enlarge it on the average, to
 * second order.
 *
 * @param heightM     standard uncertainty of a height
 * @param squaresM2   squared change of the area with each height, added up
 * @param bends       half the second derivative of the area with each height, added up
 * @param projectedM2 area of the wall under the cells counted
 */
record GridNoise(double heightM, double squaresM2, double bends, double projectedM2) implements RatioUncertainty.Noise {
    private static final Symbol HEIGHT = new Symbol("u", Measure.LENGTH, "standard uncertainty of a height");
    private static final Symbol PROJECTED = new Symbol("A_p", Measure.AREA, "area of the wall under the cells counted");

    static final Formula VARIANCE = Formula.of(
            "texture.grid-variance", "Variance from the heights of a grid", Symbol.number("v_i", "variance from one input"),
            "u^2 * G / A_p^2", RatioUncertainty.GUM, HEIGHT,
            new Symbol("G", Measure.AREA, "squared change of the area with each height, added up"), PROJECTED);
    static final Formula BIAS = Formula.of(
            "texture.grid-bias", "What errors of the heights add to the ratio", Symbol.number("b_i", "added on the average"),
            "u^2 * K / A_p", RatioUncertainty.SECOND_ORDER, HEIGHT,
            Symbol.number("K", "half the second derivative of the area with each height, added up"), PROJECTED);

    @Override
    public String input() {
        return "heights";
    }

    @Override
    public double variance() {
        return heightM * heightM * squaresM2 / (projectedM2 * projectedM2);
    }

    @Override
    public double bias() {
        return heightM * heightM * bends / projectedM2;
    }

    @Override
    public Working working() {
        return Working.of(VARIANCE, variance(), heightM, squaresM2, projectedM2);
    }

    @Override
    public Working biasWorking() {
        return Working.of(BIAS, bias(), heightM, bends, projectedM2);
    }
}
