package io.github.bedjoint.working;

import io.github.bedjoint.units.UnitStyle;
import java.util.ArrayList;
import java.util.List;
import org.joda.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;

/** Lays a working out as indented lines. */
final class TextPrinter {
    private final Shown shown;
    private final List<Source> sources = new ArrayList<>();
    private final StringBuilder out = new StringBuilder();

    TextPrinter(UnitStyle style) {
        shown = new Shown(style);
    }

    String print(Working working) {
        print(working, "", null);
        return out.toString();
    }

    private void print(Working working, String indent, @Nullable CurrencyUnit outer) {
        CurrencyUnit currency = working.currency().orElse(outer);
        String inner = indent + "  ";
        if (shown.isRepeated(working, currency)) {
            line(indent, working.title() + ": " + shown.result(working, currency) + " (shown above)");
            return;
        }
        line(indent, working.title() + working.formula().map(f -> " [" + f.id() + "]").orElse(""));
        working.formula().ifPresent(formula -> {
            String left = formula.result().name();
            String under = " ".repeat(left.length());
            line(inner, left + " = " + formula.text());
            line(inner, under + " = " + shown.substituted(working, currency));
            line(inner, under + " = " + shown.result(working, currency));
            shown.letters(working, currency).forEach(letter -> line(inner + "  ", letter));
            line(inner, source(formula.source()));
        });
        if (!working.note().isEmpty()) {
            line(inner, "note: " + working.note());
        }
        working.parts().forEach(part -> print(part, inner, currency));
    }

    /** A source in full where it comes up first, by its number after that. */
    private String source(Source source) {
        int known = sources.indexOf(source);
        if (known >= 0) {
            return "source " + (known + 1) + ", above";
        }
        sources.add(source);
        return "source " + sources.size() + ": " + source;
    }

    private void line(String indent, String text) {
        out.append(indent).append(text).append('\n');
    }
}
