package io.github.bedjoint.drawing;

import io.github.bedjoint.units.Print;
import io.github.bedjoint.working.Markup;
import java.util.List;
import org.apache.commons.lang3.ArrayUtils;

/** Shapes of one drawing, y downwards, one unit a CSS pixel; numbers are printed to a hundredth. */
final class Svg {
    /** What a text of a size may take up at most for each character, as a share of the size; measured on common sans-serif faces. */
    private static final double CHARACTER = 0.66;

    private final Markup out;

    Svg(Markup out) {
        this.out = out;
    }

    /** How wide a text is, rather too wide than too narrow. */
    static double width(String words, double size) {
        return words.codePointCount(0, words.length()) * size * CHARACTER;
    }

    /** The words cut to a width, with an ellipsis where something is missing. */
    static String within(String words, double size, double width) {
        int most = (int) (width / (size * CHARACTER));
        if (words.codePointCount(0, words.length()) <= most) {
            return words;
        }
        return most < 2 ? "" : words.substring(0, words.offsetByCodePoints(0, most - 1)).stripTrailing() + "…";
    }

    void rect(double x, double y, double width, double height, String... look) {
        out.empty("rect", ArrayUtils.addAll(
                new String[] {"x", number(x), "y", number(y), "width", number(width), "height", number(height)}, look));
    }

    void circle(double x, double y, double radius, String... look) {
        out.empty("circle", ArrayUtils.addAll(new String[] {"cx", number(x), "cy", number(y), "r", number(radius)}, look));
    }

    void line(double x1, double y1, double x2, double y2, String... look) {
        out.empty("line", ArrayUtils.addAll(
                new String[] {"x1", number(x1), "y1", number(y1), "x2", number(x2), "y2", number(y2)}, look));
    }

    void polygon(List<Dot> dots, String... look) {
        out.empty("polygon", ArrayUtils.addAll(new String[] {"points", points(dots)}, look));
    }

    void polyline(List<Dot> dots, String... look) {
        out.empty("polyline", ArrayUtils.addAll(new String[] {"points", points(dots), "fill", "none"}, look));
    }

    /** A place on the drawing. */
    record Dot(double x, double y) {}

    private static String points(List<Dot> dots) {
        StringBuilder points = new StringBuilder();
        for (Dot dot : dots) {
            points.append(points.isEmpty() ? "" : " ").append(number(dot.x())).append(',').append(number(dot.y()));
        }
        return points.toString();
    }

    /** Text with its base line's start, middle or end at a place. */
    void text(double x, double y, double size, String anchor, String words, String... look) {
        out.element("text", words, ArrayUtils.addAll(
                new String[] {"x", number(x), "y", number(y), "font-size", number(size), "text-anchor", anchor, "fill", Look.INK}, look));
    }

    /** The same, read from below. */
    void upright(double x, double y, double size, String anchor, String words, String... look) {
        text(x, y, size, anchor, words, ArrayUtils.addAll(
                new String[] {"transform", "rotate(-90 " + number(x) + " " + number(y) + ")"}, look));
    }

    /** Fills a rectangle with the lines of a hatch; what does not fit inside is cut off here, so that no clip path is needed. */
    void hatch(Hatch hatch, double x, double y, double width, double height) {
        StringBuilder path = new StringBuilder();
        hatch.lines(x, y, width, height, (x1, y1, x2, y2) -> path.append(path.isEmpty() ? "M" : " M")
                .append(number(x1)).append(' ').append(number(y1)).append(" L").append(number(x2)).append(' ').append(number(y2)));
        if (!path.isEmpty()) {
            out.empty("path", "d", path.toString(), "fill", "none", "stroke", Look.INK, "stroke-width", "0.6");
        }
    }

    /** A triangle that points somewhere: the mark of a seam's edge. */
    void arrow(double x, double y, double dx, double dy, double size) {
        double px = -dy;
        double py = dx;
        polygon(List.of(
                        new Dot(x + dx * size, y + dy * size),
                        new Dot(x + px * size * 0.6, y + py * size * 0.6),
                        new Dot(x - px * size * 0.6, y - py * size * 0.6)),
                "fill", Look.INK, "stroke", Look.PAPER, "stroke-width", "0.8");
    }

    /** A length between two ends with strokes across them. */
    void dimension(double x1, double y1, double x2, double y2) {
        boolean level = y1 == y2;
        line(x1, y1, x2, y2, Look.THIN);
        for (double[] end : new double[][] {{x1, y1}, {x2, y2}}) {
            line(end[0] - (level ? 0 : 4), end[1] - (level ? 4 : 0), end[0] + (level ? 0 : 4), end[1] + (level ? 4 : 0), Look.THIN);
        }
    }

    static String number(double value) {
        return Print.number(Math.rint(value * 100) / 100);
    }
}
