package io.github.bedjoint.texture;

import java.util.function.DoubleUnaryOperator;

/**
 * Integrals by the double exponential rule (Takahasi and Mori, 1974), which bears a square root or a vertical tangent at either end.
 */
final class Quadrature {
    /** Beyond this the weights are below 1e-17 of the interval. */
    private static final double REACH = 3.2;
    private static final double STEP = 1.0 / 32;

    private Quadrature() {}

    /** The integral of a function that is smooth inside the interval; 0 for an empty one. */
    static double integrate(double from, double to, DoubleUnaryOperator f) {
        if (to <= from) {
            return 0;
        }
        double half = (to - from) / 2;
        double sum = 0;
        for (int i = (int) Math.round(-REACH / STEP); i <= REACH / STEP; i++) {
            double t = i * STEP;
            double u = Math.PI / 2 * Math.sinh(t);
            double weight = Math.PI / 2 * Math.cosh(t) / (Math.cosh(u) * Math.cosh(u));
            // Distance from the nearer end, so that nothing is lost close to it.
            double fromEnd = half * Math.exp(-Math.abs(u)) / Math.cosh(u);
            sum += weight * f.applyAsDouble(t < 0 ? from + fromEnd : to - fromEnd);
        }
        return sum * STEP * half;
    }
}
