package io.github.bedjoint.drawing;

import io.github.bedjoint.price.CostLine;
import io.github.bedjoint.price.LineKind;
import io.github.bedjoint.price.PriceBuildUp;
import io.github.bedjoint.units.Print;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.waste.WasteAccount;
import io.github.bedjoint.waste.WastePart;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;

/** Bars one below the other, each under its words and value, all from the same line; the share is in words too. */
final class BarSketch {
    private static final double WIDTH = 348;
    private static final double ROW = 33;
    private static final double SIZE = 12;

    private BarSketch() {}

    /** A bar: solid, or hatched for what is not the main thing. */
    private record Bar(String words, String value, double amount, @Nullable Hatch hatch) {}

    static Drawing waste(WasteAccount waste, UnitStyle style) {
        List<Bar> bars = new ArrayList<>();
        waste.partsM2().forEach((part, m2) -> {
            if (m2 > 1e-12) {
                bars.add(new Bar(part.title(), area(m2, style), m2, hatch(part)));
            }
        });
        String all = area(waste.openedM2(), style);
        return drawing("Where the film ends", "Of " + all + " film opened, by part:", "all film opened: " + all, bars, waste.openedM2());
    }

    private static @Nullable Hatch hatch(WastePart part) {
        return part == WastePart.VISIBLE ? null : part == WastePart.KEPT_REMNANT ? Hatch.UPRIGHT : Hatch.RISING;
    }

    static Drawing cost(PriceBuildUp price) {
        Map<LineKind, Money> kinds = new EnumMap<>(LineKind.class);
        for (CostLine line : price.lines()) {
            kinds.merge(line.kind(), line.amount(), Money::plus);
        }
        List<Bar> bars = new ArrayList<>();
        kinds.forEach((kind, money) -> add(bars, kind.title(), money, null));
        add(bars, "Overhead", price.overhead(), Hatch.RISING);
        add(bars, "Contingency", price.contingency(), Hatch.RISING);
        Money profit = price.net().minus(price.cost());
        add(bars, profit.isNegative() ? "Loss" : "Profit", profit, Hatch.CROSSED);
        add(bars, "Tax", price.tax(), Hatch.UPRIGHT);
        return drawing("What the price is made of", "Of " + price.total() + " in all:", "total: " + price.total(), bars,
                price.total().getAmount().doubleValue());
    }

    private static void add(List<Bar> bars, String words, Money money, @Nullable Hatch hatch) {
        if (!money.isZero()) {
            bars.add(new Bar(words, money.toString(), money.getAmount().doubleValue(), hatch));
        }
    }

    private static Drawing drawing(String title, String intro, String foot, List<Bar> bars, double all) {
        double longest = bars.stream().mapToDouble(bar -> Math.abs(bar.amount())).max().orElse(1);
        List<String> words = new ArrayList<>(List.of(intro));
        bars.forEach(bar -> words.add(bar.words() + " " + bar.value() + " (" + share(bar, all) + ")."));
        return new Drawing(title, Drawing.list(words), WIDTH, bars.size() * ROW + 22, svg -> {
            for (int i = 0; i < bars.size(); i++) {
                draw(svg, bars.get(i), i * ROW, all, longest);
            }
            svg.text(0, bars.size() * ROW + 15, SIZE, "start", Svg.within(foot, SIZE, WIDTH), Look.BOLD);
        });
    }

    private static void draw(Svg svg, Bar bar, double y, double all, double longest) {
        String value = bar.value() + ", " + share(bar, all);
        svg.text(0, y + 13, SIZE, "start", Svg.within(bar.words(), SIZE, WIDTH - Svg.width(value, SIZE) - 8));
        svg.text(WIDTH, y + 13, SIZE, "end", value);
        double width = Math.max(1, Math.abs(bar.amount()) / longest * (WIDTH - 2));
        svg.rect(1, y + 17, width, 11, "fill", bar.hatch() == null ? Look.FILM_DARK : Look.PAPER, "stroke", Look.INK, "stroke-width", "0.8");
        if (bar.hatch() != null) {
            svg.hatch(bar.hatch(), 1, y + 17, width, 11);
        }
    }

    private static String share(Bar bar, double all) {
        return Print.fixed(all == 0 ? 0 : 100 * bar.amount() / all, 1) + " %";
    }

    static String area(double m2, UnitStyle style) {
        return style == UnitStyle.METRIC ? Print.fixed(m2, 2) + " m²" : Print.fixed(m2 / 0.09290304, 2) + " ft²";
    }
}
