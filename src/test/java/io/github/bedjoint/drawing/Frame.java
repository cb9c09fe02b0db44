package io.github.bedjoint.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** Finds what sticks out of a drawing's view box; texts are measured at 0.62 of their size a character, which DejaVu Sans needs on the mean. */
final class Frame {
    private static final double TOLERANCE = 1.3;
    private static final double CHARACTER = 0.62;
    private static final Pattern PAIR = Pattern.compile("(-?[0-9.]+)[ ,](-?[0-9.]+)");

    private Frame() {}

    static List<String> outside(Document svg) {
        Element root = svg.getDocumentElement();
        String[] box = root.getAttribute("viewBox").split(" ");
        double width = Double.parseDouble(box[2]);
        double height = Double.parseDouble(box[3]);
        List<String> out = new ArrayList<>();
        for (Element element : Xml.all(svg, "*")) {
            for (double[] dot : dots(element)) {
                if (!(dot[0] >= -TOLERANCE && dot[0] <= width + TOLERANCE && dot[1] >= -TOLERANCE && dot[1] <= height + TOLERANCE)) {
                    out.add(element.getTagName() + " '" + element.getTextContent() + "' at " + dot[0] + ", " + dot[1] + " of " + width + " x " + height);
                }
            }
        }
        return out;
    }

    private static List<double[]> dots(Element e) {
        return switch (e.getTagName()) {
            case "rect" -> List.of(
                    new double[] {Xml.number(e, "x"), Xml.number(e, "y")},
                    new double[] {Xml.number(e, "x") + positive(e, "width"), Xml.number(e, "y") + positive(e, "height")});
            case "circle" -> List.of(
                    new double[] {Xml.number(e, "cx") - Xml.number(e, "r"), Xml.number(e, "cy") - Xml.number(e, "r")},
                    new double[] {Xml.number(e, "cx") + Xml.number(e, "r"), Xml.number(e, "cy") + Xml.number(e, "r")});
            case "line" -> List.of(
                    new double[] {Xml.number(e, "x1"), Xml.number(e, "y1")}, new double[] {Xml.number(e, "x2"), Xml.number(e, "y2")});
            case "polygon", "polyline" -> pairs(e.getAttribute("points"));
            case "path" -> pairs(e.getAttribute("d"));
            case "text" -> text(e);
            default -> List.of();
        };
    }

    /** SVG draws nothing, and complains, where a size is negative. */
    private static double positive(Element e, String attribute) {
        double size = Xml.number(e, attribute);
        return size >= 0 ? size : Double.NaN;
    }

    private static List<double[]> pairs(String numbers) {
        List<double[]> dots = new ArrayList<>();
        Matcher pair = PAIR.matcher(numbers);
        while (pair.find()) {
            dots.add(new double[] {Double.parseDouble(pair.group(1)), Double.parseDouble(pair.group(2))});
        }
        return dots;
    }

    private static List<double[]> text(Element e) {
        double size = Xml.number(e, "font-size");
        double length = e.getTextContent().length() * size * CHARACTER;
        double from = switch (e.getAttribute("text-anchor")) {
            case "start" -> 0;
            case "end" -> -length;
            default -> -length / 2;
        };
        double x = Xml.number(e, "x");
        double y = Xml.number(e, "y");
        return e.hasAttribute("transform")
                ? List.of(new double[] {x - size * 0.75, y - from}, new double[] {x, y - from - length})
                : List.of(new double[] {x + from, y - size * 0.75}, new double[] {x + from + length, y});
    }
}
