package io.github.bedjoint.drawing;

import io.github.bedjoint.units.Steps;
import io.github.bedjoint.units.UnitStyle;

/** A bar of a round length, black and white by turns, so that a drawing can be measured however large it is printed. */
final class ScaleBar {
    private static final double[] ROUND = {0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500};
    private static final double SHORTEST = 50;
    private static final double FOOT_M = 0.3048;

    private ScaleBar() {}

    static double height() {
        return 24;
    }

    static void draw(Svg svg, double x, double y, double pixelsPerStep, UnitStyle style) {
        boolean metric = style == UnitStyle.METRIC;
        double perUnit = pixelsPerStep * Steps.PER_METRE * (metric ? 1 : FOOT_M);
        double units = ROUND[ROUND.length - 1];
        for (int i = ROUND.length - 1; i >= 0 && ROUND[i] * perUnit >= SHORTEST; i--) {
            units = ROUND[i];
        }
        double part = units * perUnit / 4;
        for (int i = 0; i < 4; i++) {
            svg.rect(x + i * part, y, part, 6, "fill", i % 2 == 0 ? Look.INK : Look.PAPER, "stroke", Look.INK, "stroke-width", "0.8");
        }
        svg.text(x + 4 * part + 8, y + 8, 12, "start", Svg.number(units) + (metric ? " m" : " ft") + ", true scale");
    }
}
