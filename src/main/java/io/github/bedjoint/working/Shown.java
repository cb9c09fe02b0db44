package io.github.bedjoint.working;

import io.github.bedjoint.units.UnitStyle;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.joda.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;

/** What both printers show of a working: lines of values in a reader's units, and which workings were shown before. */
final class Shown {
    private static final int TERMS = 3;
    private static final Pattern NAME = Pattern.compile("[A-Za-z][A-Za-z0-9_]*");

    private final UnitStyle style;
    private final Set<List<Object>> before = new HashSet<>();

    Shown(UnitStyle style) {
        this.style = style;
    }

    /** Whether the same figure of the same thing, come about in the same way, was shown further up. */
    boolean isRepeated(Working working, @Nullable CurrencyUnit currency) {
        return working.formula().isPresent() && !before.add(content(working, currency));
    }

    private static List<Object> content(Working working, @Nullable CurrencyUnit outer) {
        CurrencyUnit currency = working.currency().orElse(outer);
        return List.of(
                working.title(),
                working.formula().map(Formula::id),
                working.result(),
                working.values(),
                Optional.ofNullable(currency),
                working.note(),
                working.parts().stream().map(part -> content(part, currency)).toList());
    }

    String result(Working working, @Nullable CurrencyUnit currency) {
        Optional<Formula> formula = working.formula();
        return formula.isEmpty() ? "" : print(formula.get().result(), working.result().orElseThrow(), currency);
    }

    /**
     * The right-hand side with the values in place of the letters, in brackets where a sign or a power asks for it; for a sum the count
     * and the first terms.
     */
    String substituted(Working working, @Nullable CurrencyUnit currency) {
        Formula formula = working.formula().orElseThrow();
        if (working.isSum()) {
            List<String> first = new ArrayList<>();
            for (Number term : working.values().subList(0, Math.min(TERMS, working.values().size()))) {
                first.add(print(formula.symbols().get(0), term, currency));
            }
            boolean more = working.values().size() > TERMS;
            return "sum of " + working.values().size() + (first.isEmpty() ? "" : ": " + String.join(" + ", first)) + (more ? " + ..." : "");
        }
        StringBuilder line = new StringBuilder();
        Matcher name = NAME.matcher(formula.text());
        while (name.find()) {
            String value = name.group();
            for (int i = 0; i < formula.symbols().size(); i++) {
                if (formula.symbols().get(i).name().equals(name.group())) {
                    value = print(formula.symbols().get(i), working.values().get(i), currency);
                    boolean power = formula.text().substring(name.end()).stripLeading().startsWith("^");
                    value = power || value.contains("-") ? "(" + value + ")" : value;
                }
            }
            name.appendReplacement(line, Matcher.quoteReplacement(value));
        }
        return name.appendTail(line).toString();
    }

    /** One line for each letter: name, value, meaning. */
    List<String> letters(Working working, @Nullable CurrencyUnit currency) {
        List<String> lines = new ArrayList<>();
        List<Symbol> symbols = working.formula().orElseThrow().symbols();
        for (int i = 0; i < symbols.size(); i++) {
            Symbol symbol = symbols.get(i);
            String value = working.isSum() ? "" : " = " + print(symbol, working.values().get(i), currency);
            lines.add(symbol.name() + value + ": " + symbol.meaning());
        }
        return lines;
    }

    private String print(Symbol symbol, Number value, @Nullable CurrencyUnit currency) {
        String text = symbol.measure().print(value, style);
        return currency == null ? text : text.replace("¤", currency.getCode());
    }
}
