package io.github.bedjoint.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CsvTableTest {
    /** The cases of RFC 4180 section 2: quotes, commas and line breaks in fields, doubled quotes, CRLF. */
    @Test
    void parse_quotedFields_asTheRfcSays() {
        CsvTable table = CsvTable.parse("table", "a,b,c\r\n\"x, y\",\"say \"\"so\"\"\",\"two\nlines\"\r\n1,,3");
        assertThat(table.columns()).containsExactly("a", "b", "c");
        assertThat(table.rows()).hasSize(2);
        assertThat(table.rows().get(0).text("a")).isEqualTo("x, y");
        assertThat(table.rows().get(0).text("b")).isEqualTo("say \"so\"");
        assertThat(table.rows().get(0).text("c")).isEqualTo("two\nlines");
        assertThat(table.rows().get(1).text("b")).isEmpty();
    }

    @Test
    void parse_remarksAndEmptyLines_passedOverButCounted() {
        CsvTable table = CsvTable.parse("table", "\uFEFF# remark\na,b\n\n# more\n1,x\n");
        assertThat(table.rows()).hasSize(1);
        assertThat(table.rows().get(0).place("a")).isEqualTo("table, row 5, column a");
    }

    @Test
    void parse_rowAfterAFieldOfTwoLines_isCountedAsTheEditorDoes() {
        CsvTable table = CsvTable.parse("table", "a\n\"x\ny\"\nz\n");
        assertThat(table.rows().get(1).place("a")).isEqualTo("table, row 4, column a");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "\n\n", "a,a\n1,2\n", "a,b\n1\n", "a,b\n1,2,3\n", "a\n\"open\n"})
    void parse_brokenText_refused(String text) {
        assertThatThrownBy(() -> CsvTable.parse("table", text)).isInstanceOf(RefusedException.class).hasMessageContaining("table");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "x", "1,5", "NaN", "Infinity", "1e9999", "0x1p3", "1d"})
    void number_ofSomethingElse_refused(String text) {
        CsvTable.Row row = CsvTable.parse("table", "a,b\n" + CsvTable.field(text) + ",1\n").rows().get(0);
        assertThatThrownBy(() -> row.number("a")).isInstanceOf(RefusedException.class).hasMessageContaining("row 2, column a");
    }

    @ParameterizedTest
    @ValueSource(strings = {"plain", "a,b", "say \"so\"", "two\nlines", "# not a remark"})
    void field_isReadBack(String text) {
        CsvTable table = CsvTable.parse("table", "a,b\n" + CsvTable.field(text) + ",1\n");
        assertThat(table.rows().get(0).text("a")).isEqualTo(text);
    }

    @Test
    void expecting_missingOrUnknownColumn_named() {
        CsvTable table = CsvTable.parse("table", "a,b\n1,2\n");
        assertThatThrownBy(() -> table.expecting(List.of("a", "c"), List.of())).hasMessageContaining("'c'");
        assertThatThrownBy(() -> table.expecting(List.of("a"), List.of("d"))).hasMessageContaining("'b'");
        assertThat(table.expecting(List.of("a"), List.of("b")).rows().get(0).number("b")).isEqualTo(2);
    }

    /** What begins like a formula would be worked out by a spreadsheet; an apostrophe makes it a text. */
    @Test
    void defused_whatBeginsLikeAFormula_isMadeAText() {
        assertThat(CsvTable.defused("=1+1")).isEqualTo("'=1+1");
        assertThat(CsvTable.defused("+1")).isEqualTo("'+1");
        assertThat(CsvTable.defused("-1")).isEqualTo("'-1");
        assertThat(CsvTable.defused("@a")).isEqualTo("'@a");
        assertThat(CsvTable.defused("=a,b")).isEqualTo("\"'=a,b\"");
        assertThat(CsvTable.defused("1-1")).isEqualTo("1-1");
        assertThat(CsvTable.defused("")).isEmpty();
    }

    @Test
    void expecting_unknownColumn_namesWhatMayBeThere() {
        CsvTable table = CsvTable.parse("table", "a,c\n1,2\n");
        assertThatThrownBy(() -> table.expecting(List.of("a"), List.of())).hasMessageContaining("'c', but must be one of a. ");
        assertThatThrownBy(() -> table.expecting(List.of("a"), List.of("b"))).hasMessageContaining("'c', but must be one of a, or of b. ");
    }

    @Test
    void parse_windowsLineEnds_areNoPartOfAField() {
        CsvTable table = CsvTable.parse("table", "a,b\r\n1,2\r\n");
        assertThat(table.columns()).containsExactly("a", "b");
        assertThat(table.rows().get(0).text("b")).isEqualTo("2");
        assertThat(CsvTable.parse("table", "a\n\"x\r\ny\"\n").rows().get(0).text("a")).isEqualTo("x\r\ny");
    }

    @Test
    void parse_quoteAtTheVeryEnd_closesTheField() {
        assertThat(CsvTable.parse("table", "a\n\"x\"").rows().get(0).text("a")).isEqualTo("x");
        assertThat(CsvTable.parse("table", "a\n\"x\"\"\"").rows().get(0).text("a")).isEqualTo("x\"");
        assertThat(CsvTable.parse("table", "a\n1\n# the end").rows()).hasSize(1);
    }

    /** A quote within a field is a mark for inches; only after blanks it opens one. */
    @Test
    void parse_quoteAfterText_isPartOfTheField() {
        assertThat(CsvTable.parse("table", "a\n54\"\n").rows().get(0).text("a")).isEqualTo("54\"");
        assertThat(CsvTable.parse("table", "a\n  \"5,4\"\n").rows().get(0).text("a")).isEqualTo("5,4");
    }

    @Test
    void parse_largestTable_isReadAndOneMoreIsRefused() {
        String columns = IntStream.range(0, 200).mapToObj(Integer::toString).collect(Collectors.joining(","));
        assertThat(CsvTable.parse("table", columns + "\n").columns()).hasSize(200);
        assertThatThrownBy(() -> CsvTable.parse("table", columns + ",200\n")).hasMessageContaining("201 columns, but must be at most 200");
        assertThat(CsvTable.parse("table", "a\n" + "x".repeat(10_000) + "\n").rows().get(0).text("a")).hasSize(10_000);
        assertThatThrownBy(() -> CsvTable.parse("table", "a\n" + "x".repeat(10_001) + "\n")).hasMessageContaining("10001 characters in a cell, but must be at most 10000");
        assertThat(CsvTable.parse("table", "a\n" + "1\n".repeat(200_000)).rows()).hasSize(200_000);
        assertThatThrownBy(() -> CsvTable.parse("table", "a\n" + "1\n".repeat(200_001))).hasMessageContaining("200001 rows, but must be at most 200000");
    }
}
