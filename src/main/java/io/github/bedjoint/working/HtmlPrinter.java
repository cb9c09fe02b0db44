package io.github.bedjoint.working;

import io.github.bedjoint.units.UnitStyle;
import java.util.List;
import org.joda.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;

/** Lays a working out as nested {@code details}. With a list of sources each is named once there and referred to by number. */
final class HtmlPrinter {
    private final Shown shown;
    private final Markup out;
    private final @Nullable List<Source> sources;

    HtmlPrinter(UnitStyle style, Markup out, @Nullable List<Source> sources) {
        this.shown = new Shown(style);
        this.out = out;
        this.sources = sources;
    }

    void print(Working working) {
        print(working, null);
    }

    private void print(Working working, @Nullable CurrencyUnit outer) {
        CurrencyUnit currency = working.currency().orElse(outer);
        if (shown.isRepeated(working, currency)) {
            out.element("p", working.title() + ": " + shown.result(working, currency) + " (shown above)");
            return;
        }
        out.open("details");
        String result = shown.result(working, currency);
        out.element("summary", working.title() + (result.isEmpty() ? "" : ": " + result));
        working.formula().ifPresent(formula -> print(formula, working, currency));
        if (!working.note().isEmpty()) {
            out.element("p", working.note());
        }
        working.parts().forEach(part -> print(part, currency));
        out.close();
    }

    private void print(Formula formula, Working working, @Nullable CurrencyUnit currency) {
        out.element("p", formula.toString());
        out.element("p", formula.result().name() + " = " + shown.substituted(working, currency));
        out.open("ul");
        shown.letters(working, currency).forEach(letter -> out.element("li", letter));
        out.close();
        if (sources == null) {
            out.element("p", "Source: " + formula.source());
            return;
        }
        if (!sources.contains(formula.source())) {
            sources.add(formula.source());
        }
        int number = sources.indexOf(formula.source()) + 1;
        out.open("p").text("Source: ").element("a", "no. " + number, "href", "#source-" + number).close();
    }
}
