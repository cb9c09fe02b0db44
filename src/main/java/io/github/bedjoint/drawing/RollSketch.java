package io.github.bedjoint.drawing;

import io.github.bedjoint.rolls.Cut;
import io.github.bedjoint.rolls.CutKind;
import io.github.bedjoint.rolls.OpenedRoll;
import io.github.bedjoint.rolls.PlacedCut;
import io.github.bedjoint.rolls.RollPlan;
import io.github.bedjoint.rolls.Stock;
import io.github.bedjoint.units.Print;
import io.github.bedjoint.units.Steps;
import io.github.bedjoint.units.UnitStyle;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Rolls one below the other, unrolled from the lead on the left to the tail on the right. */
final class RollSketch {
    private static final double LEFT = 2;
    private static final double ROOM = 650;
    private static final double WIDTH = LEFT + ROOM + 4;
    private static final double LEAST_BAR = 26;
    private static final double LEAST_BAR_BESIDE = 70;
    private static final double HEAD = 19;
    private static final double BELOW = 12;
    private static final double SIZE = 11;

    private final String title;
    private final RollPlan plan;
    private final long margin;
    private final UnitStyle style;
    private final Map<String, Cut> cuts = new HashMap<>();
    private final List<String> walls;
    private final double scale;

    RollSketch(String title, RollPlan plan, long marginSteps, UnitStyle style) {
        this.title = title;
        this.plan = plan;
        this.margin = marginSteps;
        this.style = style;
        plan.cuts().forEach(cut -> cuts.put(cut.id(), cut));
        Set<String> groups = new LinkedHashSet<>();
        plan.cuts().forEach(cut -> groups.add(cut.group()));
        this.walls = List.copyOf(groups);
        long longest = plan.rolls().stream().mapToLong(roll -> plan.row(roll).lengthSteps()).max().orElse(1);
        this.scale = ROOM / longest;
    }

    private Cut cut(String piece) {
        Cut cut = cuts.get(piece);
        if (cut == null) {
            throw new IllegalArgumentException("the plan cuts '" + piece + "', which is not in its job");
        }
        return cut;
    }

    Drawing drawing() {
        Legend legend = legend();
        double bars = plan.rolls().stream().mapToDouble(roll -> HEAD + bar(roll) + BELOW).sum();
        double height = bars + 4 + ScaleBar.height() + legend.height();
        return new Drawing(title + ": how the rolls are cut", description(), WIDTH, height, svg -> {
            double y = 0;
            for (int i = 0; i < plan.rolls().size(); i++) {
                OpenedRoll roll = plan.rolls().get(i);
                roll(svg, i + 1, roll, y);
                y += HEAD + bar(roll) + BELOW;
            }
            if (!plan.rolls().isEmpty()) {
                ScaleBar.draw(svg, LEFT, y + 4, scale, style);
            }
            legend.draw(svg, LEFT, y + 4 + ScaleBar.height(), WIDTH);
        });
    }

    private double trueBar(OpenedRoll roll) {
        return (plan.row(roll).widthSteps() + 2 * margin) * scale;
    }

    private double bar(OpenedRoll roll) {
        return Math.max(leastBar(roll), trueBar(roll));
    }

    /** Pieces side by side need more room for their names. */
    private static double leastBar(OpenedRoll roll) {
        return roll.cuts() == CutKind.CROSS ? LEAST_BAR : LEAST_BAR_BESIDE;
    }

    private void roll(Svg svg, int number, OpenedRoll roll, double y) {
        Stock row = plan.row(roll);
        String head = "Roll " + number + ": " + roll.stockId() + ", " + longLength(row.lengthSteps()) + " × "
                + Print.cut(row.widthSteps() + 2 * margin, style);
        svg.text(LEFT, y + 14, 12, "start", Svg.within(head, 12, ROOM), Look.BOLD);
        double top = y + HEAD;
        double bar = bar(roll);
        double across = bar / (row.widthSteps() + 2 * margin);
        svg.rect(LEFT, top, row.lengthSteps() * scale, bar, Look.BLANK);
        long at = plan.terms().leadSteps();
        svg.hatch(Hatch.FALLING, LEFT, top, at * scale, bar);
        svg.line(x(at), top, x(at), top + bar, Look.THIN);
        for (List<PlacedCut> section : roll.sections()) {
            long end = section.stream().mapToLong(PlacedCut::alongEndSteps).max().orElseThrow();
            double from = x(at + section.get(0).alongSteps());
            Box whole = new Box(from, top, x(at + end) - from, bar);
            PlacedCut first = section.get(0);
            double covered = section.size() > 1 ? 0 : (margin + first.acrossEndSteps()) * across;
            svg.hatch(Hatch.LEVEL, whole.x(), top + covered, whole.width(), bar - covered);
            for (PlacedCut piece : section) {
                Box box = new Box(
                        x(at + piece.alongSteps()), top + (margin + piece.acrossSteps()) * across, piece.lengthSteps() * scale, piece.widthSteps() * across);
                svg.rect(box.x(), box.y(), box.width(), box.height(), Look.PIECE);
                name(svg, piece, box, section.size() > 1 ? box : new Box(box.x(), box.bottom(), box.width(), bar - box.height()));
            }
        }
        at = plan.terms().leadSteps() + roll.usedSteps();
        left(svg, roll, new Box(x(at), top, roll.remnantSteps() * scale, bar));
        long tail = row.lengthSteps() - plan.terms().tailSteps();
        svg.hatch(Hatch.CROSSED, x(tail), top, plan.terms().tailSteps() * scale, bar);
        svg.rect(LEFT, top, row.lengthSteps() * scale, bar, "fill", "none", "stroke", Look.INK, "stroke-width", "1.2");
    }

    private double x(long steps) {
        return LEFT + steps * scale;
    }

    /** Its name and length, on the piece or, where that is too thin, beside it on what is cut off. */
    private void name(Svg svg, PlacedCut placed, Box piece, Box beside) {
        Cut cut = cut(placed.cutId());
        boolean thin = piece.height() < 15;
        Box box = thin ? beside : piece;
        if (box.height() < 12) {
            return;
        }
        String length = Print.cut(placed.lengthSteps(), style);
        double middle = box.x() + box.width() / 2;
        double y = box.y() + box.height() / 2;
        for (String name : List.of(cut.id(), shortName(cut))) {
            if (Svg.width(name, SIZE) + 2 <= box.width()) {
                if (thin) {
                    svg.rect(middle - Svg.width(name, SIZE) / 2, y - 7, Svg.width(name, SIZE), 14, "fill", Look.PAPER);
                }
                boolean two = !thin && box.height() >= 30 && Svg.width(length, SIZE) + 2 <= box.width();
                svg.text(middle, y + (two ? -2 : 4), SIZE, "middle", name, Look.BOLD);
                if (two) {
                    svg.text(middle, y + 11, SIZE, "middle", length);
                }
                return;
            }
        }
    }

    /** The number on its wall, after the wall's letter where there are several walls. */
    private String shortName(Cut cut) {
        String number = cut.id().substring(cut.id().lastIndexOf(' ') + 1);
        return walls.size() > 1 ? letter(cut.group()) + number : number;
    }

    private String letter(String wall) {
        int i = walls.indexOf(wall);
        return i < 26 ? String.valueOf((char) ('A' + i)) : "W" + (i + 1) + "-";
    }

    private void left(Svg svg, OpenedRoll roll, Box box) {
        if (roll.remnantSteps() == 0) {
            return;
        }
        if (isKept(roll)) {
            svg.rect(box.x(), box.y(), box.width(), box.height(), Look.DASHED);
        } else {
            svg.hatch(Hatch.RISING, box.x(), box.y(), box.width(), box.height());
        }
        String words = "left " + longLength(roll.remnantSteps());
        if (isKept(roll) && Svg.width(words, SIZE) + 4 <= box.width()) {
            svg.text(box.x() + box.width() / 2, box.y() + box.height() / 2 + 4, SIZE, "middle", words);
        }
    }

    private String longLength(long steps) {
        return style == UnitStyle.METRIC ? Print.number(Steps.toM(steps)) + " m" : Print.feetInches(steps);
    }

    private boolean isKept(OpenedRoll roll) {
        return roll.remnantSteps() >= plan.terms().remnants().leastSteps();
    }

    private Legend legend() {
        boolean thick = plan.rolls().stream().anyMatch(roll -> trueBar(roll) < leastBar(roll));
        boolean beside = plan.rolls().stream().anyMatch(roll -> roll.cuts() != CutKind.CROSS);
        boolean narrow = plan.rolls().stream().anyMatch(roll ->
                roll.sections().stream().anyMatch(section -> section.size() > 1 || section.get(0).acrossEndSteps() < plan.row(roll).widthSteps() + margin));
        boolean kept = plan.rolls().stream().anyMatch(roll -> roll.remnantSteps() > 0 && isKept(roll));
        boolean scrap = plan.rolls().stream().anyMatch(roll -> roll.remnantSteps() > 0 && !isKept(roll));
        Legend legend = new Legend()
                .with((svg, x, y) -> svg.rect(x, y, 26, 12, Look.PIECE), beside ? "piece; cut from left to right, pieces of a stretch from its edge on" : "piece; cut from left to right")
                .withIf(plan.terms().leadSteps() > 0, mark(Hatch.FALLING), "lead: " + Print.cut(plan.terms().leadSteps(), style))
                .withIf(plan.terms().tailSteps() > 0, mark(Hatch.CROSSED), "tail: " + Print.cut(plan.terms().tailSteps(), style))
                .withIf(narrow, mark(Hatch.LEVEL), beside ? "cut off beside and between pieces" : "cut off beside a piece")
                .withIf(plan.terms().gapSteps() > 0, (svg, x, y) -> svg.rect(x + 11, y, 4, 12, Look.BLANK),
                        "gap between pieces: " + Print.cut(plan.terms().gapSteps(), style))
                .withIf(kept, (svg, x, y) -> svg.rect(x, y, 26, 12, Look.DASHED), "left on the roll, kept")
                .withIf(scrap, mark(Hatch.RISING), "left on the roll, scrap");
        if (walls.size() > 1) {
            walls.forEach(wall -> legend.with((svg, x, y) -> svg.text(x + 13, y + 10, 12, "middle", letter(wall), Look.BOLD), wall));
        }
        return legend.withIf(thick, (svg, x, y) -> svg.text(x + 13, y + 10, 12, "middle", "!", Look.BOLD),
                "lengths true, widths enlarged");
    }

    private static Legend.Mark mark(Hatch hatch) {
        return (svg, x, y) -> {
            svg.rect(x, y, 26, 12, Look.BLANK);
            svg.hatch(hatch, x, y, 26, 12);
        };
    }

    private String description() {
        List<String> all = new ArrayList<>();
        for (int i = 0; i < plan.rolls().size(); i++) {
            OpenedRoll roll = plan.rolls().get(i);
            all.add("Roll " + (i + 1) + ", " + roll.stockId() + ": " + String.join(", ", roll.pieces()) + "; left "
                    + Print.cut(roll.remnantSteps(), style) + (roll.remnantSteps() == 0 ? "." : isKept(roll) ? ", kept." : ", scrap."));
        }
        return all.isEmpty() ? "No roll is opened." : Drawing.list(all);
    }
}
