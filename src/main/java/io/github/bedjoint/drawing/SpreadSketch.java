package io.github.bedjoint.drawing;

import io.github.bedjoint.risk.Outcome;
import io.github.bedjoint.risk.Outlook;
import io.github.bedjoint.risk.RiskResult;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.UnitStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Columns of how many simulated jobs come out where, from the least to the greatest figure, with lines at P50, P80 and P95. */
final class SpreadSketch {
    private static final double WIDTH = 348;
    private static final double TALLEST = 120;
    private static final double TOP = 6;
    private static final double SIZE = 12;
    private static final double ROW = 19;
    private static final int COLUMNS = 24;

    private final RiskResult risk;
    private final Outlook outlook;
    private final UnitStyle style;
    private final double least;
    private final double most;

    SpreadSketch(RiskResult risk, Outcome outcome, UnitStyle style) {
        this.risk = risk;
        this.outlook = risk.of(outcome);
        this.style = style;
        this.least = outlook.percentile(0);
        this.most = outlook.percentile(1);
    }

    /** A line of the drawing: its name, share, and dashes. */
    private record Mark(String name, double share, String dashes) {}

    private static final List<Mark> MARKS = List.of(new Mark("P50", 0.5, "none"), new Mark("P80", 0.8, "7 3"), new Mark("P95", 0.95, "2 2"));

    Drawing drawing() {
        double base = TOP + TALLEST;
        return new Drawing("Spread of the " + outlook.outcome().title().toLowerCase(Locale.ROOT), description(), WIDTH, base + 22 + MARKS.size() * ROW + 22, svg -> {
            columns(svg, base);
            svg.line(0, base, WIDTH, base, Look.THIN);
            svg.text(0, base + 15, SIZE, "start", Svg.within(value(0), SIZE, WIDTH / 2 - 4));
            svg.text(WIDTH, base + 15, SIZE, "end", Svg.within(value(1), SIZE, WIDTH / 2 - 4));
            for (int i = 0; i < MARKS.size(); i++) {
                Mark mark = MARKS.get(i);
                double x = x(outlook.percentile(mark.share()));
                String[] look = {"stroke", Look.INK, "stroke-width", "2", "stroke-dasharray", mark.dashes()};
                svg.line(x, TOP, x, base, look);
                double y = base + 22 + i * ROW;
                svg.line(0, y + 9, 26, y + 9, look);
                svg.text(34, y + 13, SIZE, "start", Svg.within(mark.name() + ": " + value(mark.share()), SIZE, WIDTH - 34), Look.BOLD);
            }
            svg.text(0, base + 22 + MARKS.size() * ROW + 14, SIZE, "start", outlook.count() + " simulated jobs");
        });
    }

    private double x(double figure) {
        return most == least ? WIDTH / 2 : 1 + (figure - least) / (most - least) * (WIDTH - 2);
    }

    private void columns(Svg svg, double base) {
        int columns = most == least ? 1 : COLUMNS;
        double[] shares = new double[columns];
        double before = 0;
        double tallest = 0;
        for (int i = 0; i < columns; i++) {
            double below = i == columns - 1 ? 1 : 1 - outlook.chanceAbove(least + (i + 1) * (most - least) / columns);
            shares[i] = below - before;
            before = below;
            tallest = Math.max(tallest, shares[i]);
        }
        double width = (WIDTH - 2) / columns;
        for (int i = 0; i < columns; i++) {
            double height = Math.max(0, shares[i] / tallest * TALLEST);
            svg.rect(1 + i * width, base - height, width, height, Look.PIECE);
        }
    }

    String value(double share) {
        return switch (outlook.outcome()) {
            case PAID_TIME -> PageWriter.hours(outlook.percentile(share));
            case FILM -> Measure.LENGTH.print(Math.rint(outlook.percentile(share) * 1e4) / 1e4, style);
            case COST -> risk.cost(share).toString();
            case PRICE -> risk.price(share).toString();
            case HAND_OVER -> risk.handOver(share).map(DateSketch.MOMENT::format).orElse("");
        };
    }

    private String description() {
        List<String> all = new ArrayList<>();
        all.add(outlook.count() + " simulated jobs, from " + value(0) + " to " + value(1) + ".");
        MARKS.forEach(mark -> all.add(mark.name() + " is " + value(mark.share()) + "."));
        return Drawing.list(all);
    }
}
