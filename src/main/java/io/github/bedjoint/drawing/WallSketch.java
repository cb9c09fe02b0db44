package io.github.bedjoint.drawing;

import io.github.bedjoint.drawing.Svg.Dot;
import io.github.bedjoint.layout.Direction;
import io.github.bedjoint.layout.Panel;
import io.github.bedjoint.layout.PanelLayout;
import io.github.bedjoint.layout.Seam;
import io.github.bedjoint.survey.Opening;
import io.github.bedjoint.survey.Side;
import io.github.bedjoint.survey.Wall;
import io.github.bedjoint.units.Print;
import io.github.bedjoint.units.UnitStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A wall from the front: film as it is cut, then the wall's rim and its openings over it, then numbers and sizes. */
final class WallSketch {
    private static final double TALLEST = 420;
    private static final double LEFT = 44;
    private static final double TOP = 12;
    private static final double RIGHT = 16;
    private static final double ARROW = 11;
    private static final double LEAST_WIDTH = 340;
    private static final double WIDEST = 660;
    /** Below it a number would not be told from its neighbours. */
    private static final double THINNEST_MARK = 2;

    /** A weep hole must be seen, however small it comes out in scale. */
    private static final double SMALLEST_KEPT_FREE = 6;

    private final PanelLayout layout;
    private final UnitStyle style;
    private final Wall wall;
    private final Sheet sheet;
    private final List<Box> openings;
    private final List<Dot> rim;
    private final List<Overlaps.Strip> strips;

    WallSketch(PanelLayout layout, UnitStyle style) {
        this.layout = layout;
        this.style = style;
        this.wall = layout.wall();
        this.sheet = Sheet.of(layout, LEFT, TOP, WIDEST - LEFT - RIGHT, TALLEST);
        this.openings = wall.openings().stream()
                .map(o -> sheet.box(o.leftSteps(), o.bottomSteps(), o.rightSteps(), o.topSteps())
                        .atLeast(o.treatment() == Opening.Treatment.NEVER_COVERED ? SMALLEST_KEPT_FREE : 0))
                .toList();
        this.rim = wall.outline().points().stream().map(p -> new Dot(sheet.x(p.xSteps()), sheet.y(p.ySteps()))).toList();
        this.strips = Overlaps.of(layout.panels());
    }

    Drawing drawing() {
        Legend legend = legend();
        double width = Math.max(Math.max(LEAST_WIDTH, LEFT + sheet.width() + RIGHT), Math.min(WIDEST, legend.width()));
        double below = TOP + sheet.height() + 34;
        double bar = ScaleBar.height();
        double height = below + bar + legend.height() + 4;
        return new Drawing("Elevation of " + wall.name(), description(), width, height, svg -> {
            film(svg);
            openings(svg);
            svg.polygon(rim, Look.OUTLINE);
            List<Box> taken = new ArrayList<>(openings);
            arrows(svg, taken);
            labels(svg, taken);
            sizes(svg);
            ScaleBar.draw(svg, LEFT, below, sheet.pixelsPerStep(), style);
            legend.draw(svg, 2, below + bar, width);
        });
    }

    private void film(Svg svg) {
        svg.polygon(rim, "fill", Look.PAPER);
        for (Panel panel : layout.panels()) {
            Box box = sheet.box(panel);
            svg.rect(box.x(), box.y(), box.width(), box.height(), Look.PIECE);
        }
        for (Overlaps.Strip strip : strips) {
            Box box = sheet.box(strip.left(), strip.bottom(), strip.right(), strip.top()).atLeast(THINNEST_MARK);
            svg.rect(box.x(), box.y(), box.width(), box.height(), Look.LAPPED);
        }
    }

    private void openings(Svg svg) {
        for (int i = 0; i < openings.size(); i++) {
            Opening opening = wall.openings().get(i);
            Box box = openings.get(i);
            if (opening.treatment() == Opening.Treatment.LEFT_WHOLE) {
                svg.rect(box.x(), box.y(), box.width(), box.height(), Look.DASHED);
            } else {
                svg.rect(box.x(), box.y(), box.width(), box.height(), Look.BLANK);
                boolean never = opening.treatment() == Opening.Treatment.NEVER_COVERED;
                svg.hatch(never ? Hatch.CROSSED : Hatch.RISING, box.x(), box.y(), box.width(), box.height());
                if (opening.turnSteps() > 0) {
                    double turn = opening.turnSteps() * sheet.pixelsPerStep();
                    double across = Math.max(0, box.width() - 2 * turn);
                    double up = Math.max(0, box.height() - 2 * turn);
                    svg.rect(box.x() + (box.width() - across) / 2, box.y() + (box.height() - up) / 2, across, up, Look.DASHED);
                }
            }
            name(svg, opening, box);
        }
    }

    private static void name(Svg svg, Opening opening, Box box) {
        String words = words(opening.kind());
        double width = Svg.width(words, 11);
        if (width + 6 <= box.width() && box.height() >= 18) {
            double x = box.x() + box.width() / 2;
            double y = box.y() + box.height() / 2;
            svg.rect(x - width / 2 - 2, y - 8, width + 4, 16, "fill", Look.PAPER);
            svg.text(x, y + 4, 11, "middle", words);
        }
    }

    /** One arrow a seam, where its longest overlap is free of openings; what it takes up is taken. */
    private void arrows(Svg svg, List<Box> taken) {
        for (Seam seam : layout.seams()) {
            boolean upright = layout.direction() != Direction.BANDS;
            Box longest = null;
            for (Overlaps.Strip strip : strips) {
                boolean belongs = (upright ? strip.left() : strip.bottom()) == seam.fromSteps();
                Box box = sheet.box(strip.left(), strip.bottom(), strip.right(), strip.top());
                longest = belongs && (longest == null || box.longer() > longest.longer()) ? box : longest;
            }
            if (longest != null) {
                arrow(svg, longest, seam.shows(), taken);
            }
        }
    }

    private void arrow(Svg svg, Box strip, Side shows, List<Box> taken) {
        for (double share : new double[] {0.16, 0.3, 0.84, 0.7, 0.5, 0.06, 0.94}) {
            double x = switch (shows) {
                case LEFT -> strip.x();
                case RIGHT -> strip.right();
                default -> strip.x() + share * strip.width();
            };
            double y = switch (shows) {
                case TOP -> strip.y();
                case BOTTOM -> strip.bottom();
                default -> strip.bottom() - share * strip.height();
            };
            Box around = Box.around(x, y, 2 * ARROW, 2 * ARROW);
            if (openings.stream().noneMatch(around::meets) && around.isInside(rim)) {
                svg.arrow(x, y, shows == Side.LEFT ? -1 : shows == Side.RIGHT ? 1 : 0, shows == Side.TOP ? -1 : shows == Side.BOTTOM ? 1 : 0, ARROW);
                taken.add(around);
                return;
            }
        }
    }

    private void labels(Svg svg, List<Box> taken) {
        PanelLabels labels = new PanelLabels(rim, taken, style);
        for (Panel panel : layout.panels()) {
            labels.draw(svg, panel, sheet.box(panel));
        }
    }

    private void sizes(Svg svg) {
        Box box = sheet.box(
                wall.outline().reach(Side.LEFT), wall.outline().reach(Side.BOTTOM), wall.outline().reach(Side.RIGHT), wall.outline().reach(Side.TOP));
        double y = TOP + sheet.height() + 10;
        svg.dimension(box.x(), y, box.right(), y);
        String width = Print.cut(wall.widthSteps(), style);
        double half = Svg.width(width, 12) / 2;
        svg.text(Math.max(half + 2, box.x() + box.width() / 2), y + 16, 12, "middle", width);
        svg.dimension(LEFT - 14, box.y(), LEFT - 14, box.bottom());
        String height = Print.cut(wall.heightSteps(), style);
        double reach = Svg.width(height, 12) / 2;
        double least = reach + 2;
        svg.upright(LEFT - 22, Math.max(least, box.y() + box.height() / 2), 12, "middle", height);
    }

    private Legend legend() {
        boolean cut = wall.openings().stream().anyMatch(o -> o.staysOpen() && o.treatment() != Opening.Treatment.NEVER_COVERED);
        boolean never = wall.openings().stream().anyMatch(o -> o.treatment() == Opening.Treatment.NEVER_COVERED);
        boolean whole = wall.openings().stream().anyMatch(o -> !o.staysOpen());
        boolean turned = wall.openings().stream().anyMatch(o -> o.turnSteps() > 0);
        return new Legend()
                .withIf(!layout.panels().isEmpty(), (svg, x, y) -> PanelLabels.number(svg, x + 13, y + 6, 8, "1"),
                        "panel: order, cut width × length")
                .withIf(!strips.isEmpty(), (svg, x, y) -> svg.rect(x, y + 3, 26, 6, Look.LAPPED), "overlap, two layers: " + overlap())
                .withIf(!layout.seams().isEmpty(), (svg, x, y) -> svg.arrow(x + 8, y + 6, 1, 0, ARROW), "seam: where the edge on top faces")
                .with((svg, x, y) -> svg.line(x, y + 6, x + 26, y + 6, "stroke", Look.INK, "stroke-width", "2"), "rim of the wall; bleed beyond it")
                .withIf(cut, (svg, x, y) -> mark(svg, x, y, Hatch.RISING), turned ? "opening; turned in to the dashes" : "opening, cut out")
                .withIf(never, (svg, x, y) -> mark(svg, x, y, Hatch.CROSSED), "never covered")
                .withIf(whole, (svg, x, y) -> svg.rect(x, y, 26, 12, Look.DASHED), "film left whole over it");
    }

    private static void mark(Svg svg, double x, double y, Hatch hatch) {
        svg.rect(x, y, 26, 12, Look.BLANK);
        svg.hatch(hatch, x, y, 26, 12);
    }

    private String overlap() {
        long least = layout.seams().stream().mapToLong(Seam::overlapSteps).min().orElse(0);
        long most = layout.seams().stream().mapToLong(Seam::overlapSteps).max().orElse(0);
        return Print.cut(least, style) + (least == most ? "" : " to " + Print.cut(most, style));
    }

    static String words(Enum<?> word) {
        return word.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    private String description() {
        List<String> all = new ArrayList<>();
        all.add("The wall is " + Print.cut(wall.widthSteps(), style) + " wide and " + Print.cut(wall.heightSteps(), style) + " high.");
        wall.openings().forEach(o -> all.add("A " + words(o.kind()) + " " + Print.cut(o.rightSteps() - o.leftSteps(), style) + " by "
                + Print.cut(o.topSteps() - o.bottomSteps(), style) + ", " + words(o.treatment()) + "."));
        if (!layout.isPossible()) {
            all.add("It cannot be divided into panels as asked.");
        } else {
            all.add(layout.count() + ", numbered in the order of application.");
        }
        if (!layout.seams().isEmpty()) {
            all.add("Seams overlap by " + overlap() + "; the edge on top faces " + words(layout.seams().get(0).shows()) + ".");
        }
        return Drawing.list(all);
    }
}
