package io.github.bedjoint.working;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.UnitStyle;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import javax.measure.Unit;

/**
 * The guard of every working: the printed text, evaluated with the stored values, gives the stored figure; walked with units it gives
 * the declared unit; and a part that explains a letter gives that letter's value.
 */
public final class WorkingCheck {
    private static final double RELATIVE = 1e-9;

    private static final Map<String, Expression> PARSED = new ConcurrentHashMap<>();

    private WorkingCheck() {}

    /** Checks a whole tree and counts, for each formula, how often it was checked. */
    public static void check(Working working, Map<String, Integer> counts) {
        working.formula().ifPresent(formula -> {
            evaluate(working, formula);
            counts.merge(formula.id(), 1, Integer::sum);
        });
        for (Working part : working.parts()) {
            part.formula().ifPresent(explaining -> agree(working, explaining, part));
            check(part, counts);
        }
    }

    /** Checks a whole tree; it must hold at least one formula and print in both styles. */
    public static void check(Working working) {
        Map<String, Integer> counts = new HashMap<>();
        check(working, counts);
        assertThat(counts).as("formulas in the tree").isNotEmpty();
        assertThat(working.text(UnitStyle.METRIC)).isNotBlank();
        assertThat(working.html(UnitStyle.IMPERIAL)).isNotBlank();
    }

    /** Walks a formula's text with the units of its symbols; throws where units do not fit. */
    public static void walkUnits(Formula formula) {
        Map<String, Unit<?>> units = new HashMap<>();
        formula.symbols().forEach(symbol -> units.put(symbol.name(), symbol.measure().unit()));
        Expression expression = Expression.parse(formula.text());
        if (!expression.names().equals(units.keySet())) {
            throw new IllegalArgumentException(
                    formula.id() + ": letters " + expression.names() + " but symbols " + units.keySet());
        }
        Unit<?> walked = expression.walk(new UnitAlgebra(units)).unit();
        if (!UnitAlgebra.equal(walked, formula.result().measure().unit())) {
            throw new IllegalArgumentException(
                    formula.id() + ": gives " + walked + ", declared " + formula.result().measure().unit());
        }
    }

    /** A text is parsed once, however many workings use it. */
    private static Expression parsed(Formula formula) {
        return PARSED.computeIfAbsent(formula.text(), Expression::parse);
    }

    private static void evaluate(Working working, Formula formula) {
        Number stored = working.result().orElseThrow();
        if (working.isSum()) {
            BigDecimal total = working.values().stream().map(WorkingCheck::exact).reduce(BigDecimal.ZERO, BigDecimal::add);
            assertClose(formula.id() + " as a sum", total, stored);
        } else if (formula.result().measure() == Measure.MONEY) {
            Map<String, BigDecimal> values = new HashMap<>();
            for (int i = 0; i < formula.symbols().size(); i++) {
                values.put(formula.symbols().get(i).name(), exact(working.values().get(i)));
            }
            assertClose(formula.id(), parsed(formula).walk(new DecimalAlgebra(values)), stored);
        } else {
            Map<String, Double> values = new HashMap<>();
            for (int i = 0; i < formula.symbols().size(); i++) {
                values.put(formula.symbols().get(i).name(), working.values().get(i).doubleValue());
            }
            double evaluated = parsed(formula).walk(new DoubleAlgebra(values));
            assertThat(evaluated)
                    .as(working::toString)
                    .isCloseTo(stored.doubleValue(), within(Math.max(1e-12, Math.abs(stored.doubleValue()) * RELATIVE)));
        }
    }

    /** A part may explain a letter; then it must give that letter's value. */
    private static void agree(Working whole, Formula explaining, Working part) {
        if (whole.formula().isEmpty() || whole.isSum()) {
            return;
        }
        Formula formula = whole.formula().get();
        for (int i = 0; i < formula.symbols().size(); i++) {
            if (formula.symbols().get(i).name().equals(explaining.result().name())) {
                assertThat(whole.values().get(i).doubleValue())
                        .as(formula.id() + ": " + explaining.result().name() + " as " + explaining.id() + " gives it")
                        .isEqualTo(part.result().orElseThrow().doubleValue());
            }
        }
    }

    private static void assertClose(String what, BigDecimal evaluated, Number stored) {
        // A stored decimal of money is exact, so it must be met exactly; a double only to its precision.
        if (stored instanceof BigDecimal exact) {
            assertThat(evaluated).as(what).isEqualByComparingTo(exact);
        } else {
            double value = stored.doubleValue();
            assertThat(evaluated.doubleValue()).as(what).isCloseTo(value, within(Math.max(1e-12, Math.abs(value) * RELATIVE)));
        }
    }

    private static BigDecimal exact(Number number) {
        return number instanceof BigDecimal decimal ? decimal : BigDecimal.valueOf(number.doubleValue());
    }
}
