package io.github.bedjoint.drawing;

import io.github.bedjoint.drawing.Svg.Dot;
import io.github.bedjoint.layout.Panel;
import io.github.bedjoint.units.Print;
import io.github.bedjoint.units.UnitStyle;
import java.util.List;

/** Puts number and cut size of a panel where there is room for them; the number alone, or nothing, where there is not. */
final class PanelLabels {
    private static final double SIZE = 11;
    private static final double RADIUS = 10;
    /** Places along a panel, the middle first. */
    private static final double[] ALONG = {0.5, 0.55, 0.45, 0.6, 0.4, 0.65, 0.35, 0.7, 0.3, 0.75, 0.25, 0.8, 0.2, 0.85, 0.15, 0.9, 0.1};
    private static final double[] ACROSS = {0.5, 0.65, 0.35, 0.75, 0.25};

    private final List<Dot> rim;
    private final List<Box> taken;
    private final UnitStyle style;

    PanelLabels(List<Dot> rim, List<Box> taken, UnitStyle style) {
        this.rim = rim;
        this.taken = taken;
        this.style = style;
    }

    /** Draws a label around its middle. */
    private interface Label {
        void draw(double x, double y);
    }

    void draw(Svg svg, Panel panel, Box box) {
        String number = Integer.toString(panel.number());
        String width = Print.cut(panel.cutWidthSteps(), style);
        String length = Print.cut(panel.cutLengthSteps(), style);
        String shortWidth = width.endsWith(" mm") ? width.substring(0, width.length() - 3) : width;
        double lines = Math.max(Svg.width(shortWidth + " ×", SIZE), Svg.width(length, SIZE));
        String both = shortWidth + " × " + length;
        double line = Svg.width(both, SIZE);
        boolean done = put(box, lines + 4, 52, (x, y) -> {
            number(svg, x, y - 15, RADIUS, number);
            svg.text(x, y + 9, SIZE, "middle", shortWidth + " ×");
            svg.text(x, y + 23, SIZE, "middle", length);
        }) || put(box, 2 * RADIUS + line + 12, 24, (x, y) -> {
            number(svg, x - line / 2 - 4, y, RADIUS, number);
            svg.text(x + RADIUS + 4, y + 4, SIZE, "middle", both);
        }) || put(box, 24, 2 * RADIUS + line + 12, (x, y) -> {
            number(svg, x, y - line / 2 - 4, RADIUS, number);
            svg.upright(x + 4, y + RADIUS + 4, SIZE, "middle", both);
        }) || put(box, 2 * RADIUS + 2, 2 * RADIUS + 2, (x, y) -> number(svg, x, y, RADIUS, number));
        if (!done) {
            put(box, Svg.width(number, SIZE), SIZE, (x, y) -> svg.text(x, y + 4, SIZE, "middle", number));
        }
    }

    /** Draws a label of a size at the first place that is film on the wall. */
    private boolean put(Box panel, double width, double height, Label label) {
        if (width > panel.width() || height > panel.height()) {
            return false;
        }
        boolean tall = panel.height() > panel.width();
        for (double across : ACROSS) {
            for (double along : ALONG) {
                double x = panel.x() + panel.width() * (tall ? across : along);
                double y = panel.y() + panel.height() * (tall ? along : across);
                Box box = Box.around(x, y, width, height);
                if (panel.holds(box.x(), box.y()) && panel.holds(box.right(), box.bottom())
                        && box.isInside(rim) && taken.stream().noneMatch(box::meets)) {
                    label.draw(x, y);
                    return true;
                }
            }
        }
        return false;
    }

    static void number(Svg svg, double x, double y, double radius, String number) {
        svg.circle(x, y, radius, "fill", Look.PAPER, "stroke", Look.INK, "stroke-width", "1.2");
        svg.text(x, y + 4, number.length() > 2 ? 10 : 12, "middle", number, Look.BOLD);
    }
}
