package io.github.bedjoint.working;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.RefusedException;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class FormulaTest {
    @Test
    void formula_keepsWhatItIsMadeOf() {
        Formula formula = WorkingTest.RECTANGLE;
        assertThat(formula.id()).isEqualTo("test.rectangle");
        assertThat(formula.title()).isEqualTo("Area of a rectangle");
        assertThat(formula.result()).isEqualTo(WorkingTest.AREA);
        assertThat(formula.text()).isEqualTo("w * h");
        assertThat(formula.source()).isEqualTo(Source.geometry("rectangle"));
        assertThat(formula.symbols()).containsExactly(WorkingTest.WIDTH, WorkingTest.HEIGHT);
        assertThat(formula).hasToString("A = w * h");
        assertThatThrownBy(() -> formula.symbols().clear()).isInstanceOf(UnsupportedOperationException.class);
    }

    @Test
    void formula_ofACallersArray_isNotChangedByIt() {
        Symbol[] symbols = {WorkingTest.WIDTH, WorkingTest.HEIGHT};
        Formula formula = Formula.of("test.array", "Area", WorkingTest.AREA, "w * h", Source.geometry("rectangle"), symbols);
        symbols[0] = WorkingTest.AREA;
        assertThat(formula.symbols()).containsExactly(WorkingTest.WIDTH, WorkingTest.HEIGHT);
    }

    @ParameterizedTest
    @ValueSource(strings = {"A", "A_d", "x_1", "h2", "Sdr"})
    void symbol_namesThatATextCanHold_areAccepted(String name) {
        assertThat(new Symbol(name, Measure.AREA, "area").name()).isEqualTo(name);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "2h", "_a", "a b", "a-b", "Δ", "a'"})
    void symbol_namesThatATextCannotHold_areRefused(String name) {
        assertThatThrownBy(() -> new Symbol(name, Measure.AREA, "area")).isInstanceOf(RefusedException.class).hasMessageContaining("'" + name + "'");
    }

    @Test
    void symbol_withoutMeaning_isRefused() {
        assertThatThrownBy(() -> new Symbol("A", Measure.AREA, " ")).isInstanceOf(RefusedException.class).hasMessageContaining("meaning of A");
        assertThat(Symbol.number("n", "count")).isEqualTo(new Symbol("n", Measure.NUMBER, "count"));
    }

    @Test
    void source_factories_giveTheirKind() {
        assertThat(Source.geometry("x").kind()).isEqualTo(Source.Kind.GEOMETRY);
        assertThat(Source.standard("x").kind()).isEqualTo(Source.Kind.STANDARD);
        assertThat(Source.handbook("x").kind()).isEqualTo(Source.Kind.HANDBOOK);
        assertThat(Source.practice("x").kind()).isEqualTo(Source.Kind.PRACTICE);
        assertThat(Source.measured("x").kind()).isEqualTo(Source.Kind.MEASURED);
        assertThat(Source.shop("x").kind()).isEqualTo(Source.Kind.SHOP);
        assertThat(Source.assumed("x").kind()).isEqualTo(Source.Kind.ASSUMED);
        assertThat(Source.practice("panels overlap 1/2 to 1 in")).hasToString("common practice, no source: panels overlap 1/2 to 1 in");
        assertThat(Arrays.stream(Source.Kind.values()).map(Source.Kind::words)).doesNotHaveDuplicates().noneMatch(String::isBlank);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "\t", "\u00a0"})
    void source_blank_isRefused(String citation) {
        for (Source.Kind kind : Source.Kind.values()) {
            assertThatThrownBy(() -> new Source(kind, citation)).isInstanceOf(RefusedException.class).hasMessageStartingWith("source is blank");
        }
    }

    @ParameterizedTest
    @EnumSource(Source.Kind.class)
    void source_parseOfToString_isEqual(Source.Kind kind) {
        Source source = new Source(kind, "ISO 25178-2, 4.3.2: Sdr");
        assertThat(Source.parse(source.toString())).isEqualTo(source);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "ISO 25178-2", "rumour: heard it", "geometry", "geometry: ", "Standard: ISO 1"})
    void source_parseOfAnythingElse_isRefused(String text) {
        assertThatThrownBy(() -> Source.parse(text)).isInstanceOf(RefusedException.class).hasMessageStartingWith("source is ");
    }

    @Test
    void verdict_printed_isOneLineWithItsRule() {
        Verdict verdict = new Verdict(Verdict.Level.WARNING, "north wall, dew point", "the surface is 2 K above it", Source.handbook("coating guide, invented"));
        assertThat(verdict).hasToString("WARNING north wall, dew point: the surface is 2 K above it (handbook: coating guide, invented)");
        assertThat(verdict).isEqualTo(new Verdict(verdict.level(), verdict.subject(), verdict.reason(), verdict.source()));
    }

    @Test
    void verdict_levels_runFromHarmlessToGrave() {
        assertThat(Verdict.Level.values()).containsExactly(Verdict.Level.FINE, Verdict.Level.CAUTION, Verdict.Level.WARNING, Verdict.Level.REFUSED);
    }
}
