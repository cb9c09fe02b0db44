package io.github.bedjoint.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
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
}
