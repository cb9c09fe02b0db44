package io.github.bedjoint.texture;

import io.github.bedjoint.units.ShopUnits;
import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;

/** Surfaces whose developed area is known: oracles for profiles and grids. Sizes in millimetres. */
final class TeachingSurfaces {
    private TeachingSurfaces() {}

    /** Heights of a function over a period of a given size, n cells each way, the last row and column included. */
    static HeightGrid grid(DoubleBinaryOperator height, double period, int n) {
        double[][] heights = new double[n + 1][n + 1];
        for (int i = 0; i <= n; i++) {
            for (int j = 0; j <= n; j++) {
                heights[i][j] = height.applyAsDouble(j * period / n, i * period / n);
            }
        }
        return GridFile.mm(heights, period / n, period / n);
    }

    /** A profile of a function over a period, n pieces. */
    static ContourProfile profile(DoubleUnaryOperator height, double period, int n) {
        double[] places = new double[n + 1];
        double[] heights = new double[n + 1];
        for (int i = 0; i <= n; i++) {
            places[i] = i * period / n;
            heights[i] = height.applyAsDouble(places[i]);
        }
        return ContourProfile.of(places, heights, ShopUnits.MILLIMETRE);
    }

    /** Ridges of a slope, length 10: developed ratio 1 / cos of the slope. */
    static double triangleWave(double slopeDegrees, double x) {
        double slope = Math.tan(Math.toRadians(slopeDegrees));
        return slope * (5 - Math.abs(x % 10 - 5));
    }

    /** A sine of amplitude a and length 10: developed ratio (2 / pi) sqrt(1 + k^2) E(k^2 / (1 + k^2)), k = 2 pi a / 10. */
    static double sine(double a, double x) {
        return a * Math.sin(2 * Math.PI * x / 10);
    }

    /** An egg box of amplitude 1.5 and length 10. */
    static double eggbox(double x, double y) {
        return 1.5 * Math.sin(2 * Math.PI * x / 10) * Math.sin(2 * Math.PI * y / 10);
    }

    /** A half ball of radius 4 in each square of 10: developed ratio 1 + pi 16 / 100. */
    static double hemispheres(double x, double y) {
        double dx = x - 5;
        double dy = y - 5;
        return Math.sqrt(Math.max(0, 16 - dx * dx - dy * dy));
    }
}
