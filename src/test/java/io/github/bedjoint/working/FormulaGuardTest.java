package io.github.bedjoint.working;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.bedjoint.units.Measure;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Every formula constant of the library, found in its classes: unique id, all letters used, units that fit. */
class FormulaGuardTest {
    static java.util.List<Formula> formulas() {
        return FormulaConstants.all();
    }

    @Test
    void constants_ofTheLibrary_haveUniqueIds() {
        assertThat(formulas()).extracting(Formula::id).doesNotHaveDuplicates().allMatch(id -> id.matches("[a-z]+(\\.[a-z0-9-]+)+"));
    }

    @ParameterizedTest
    @MethodSource("formulas")
    void units_ofEveryFormula_fitTheDeclaredResult(Formula formula) {
        WorkingCheck.walkUnits(formula);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "w + A       | AREA",
                "w * w * w   | AREA",
                "w           | STEPS",
                "w + s       | LENGTH",
                "sin(w)      | NUMBER",
                "ceil(w)     | LENGTH",
                "sqrt(w)     | LENGTH",
                "m + 1       | MONEY",
                "m / A       | MONEY",
                "max(w, A)   | LENGTH",
                "w ^ 3       | AREA"
            })
    void walkUnits_wrongText_isRefused(String text, Measure declared) {
        Symbol[] symbols = {
            new Symbol("w", Measure.LENGTH, "width"), new Symbol("A", Measure.AREA, "area"),
            new Symbol("s", Measure.STEPS, "length in steps"), new Symbol("m", Measure.MONEY, "money")
        };
        Symbol[] used = java.util.Arrays.stream(symbols)
                .filter(symbol -> Expression.parse(text).names().contains(symbol.name()))
                .toArray(Symbol[]::new);
        Formula wrong = Formula.of("test.wrong", "Wrong", new Symbol("x", declared, "x"), text, Source.geometry("none"), used);
        assertThatThrownBy(() -> WorkingCheck.walkUnits(wrong)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void check_wrongFigure_fails() {
        Formula product = Formula.of(
                "test.product", "Product", new Symbol("A", Measure.AREA, "area"), "w * h", Source.geometry("rectangle"),
                new Symbol("w", Measure.LENGTH, "width"), new Symbol("h", Measure.LENGTH, "height"));
        WorkingCheck.check(Working.of(product, 6.0, 2.0, 3.0));
        assertThatThrownBy(() -> WorkingCheck.check(Working.of(product, 6.1, 2.0, 3.0))).isInstanceOf(AssertionError.class);
    }

    @Test
    void check_partThatDisagrees_fails() {
        Symbol w = new Symbol("w", Measure.LENGTH, "width");
        Formula twice = Formula.of("test.twice", "Twice", new Symbol("d", Measure.LENGTH, "double"), "2 * w", Source.geometry("sum"), w);
        Formula half = Formula.of("test.half", "Half", w, "h / 2", Source.geometry("half"), new Symbol("h", Measure.LENGTH, "whole"));
        WorkingCheck.check(Working.of(twice, 4.0, 2.0).because(Working.of(half, 2.0, 4.0)));
        assertThatThrownBy(() -> WorkingCheck.check(Working.of(twice, 4.0, 2.0).because(Working.of(half, 2.5, 5.0)), new java.util.HashMap<>(Map.of())))
                .isInstanceOf(AssertionError.class);
    }
}
