package io.github.bedjoint.texture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Rows of numbers as they are written, in the middle of a file, where cells are read the quick way, and at its end, where they are not. */
class CsvRowsTest {
    /** So many bytes behind a cell that it lies well within the buffer. */
    private static final String BEHIND = "\n#" + "-".repeat(200) + "\n";

    private static List<double[]> rows(byte[] bytes) throws IOException {
        List<double[]> rows = new ArrayList<>();
        try (CsvRows csv = new CsvRows(new ByteArrayInputStream(bytes), 1)) {
            double[] row = new double[csv.columns()];
            while (csv.next(row)) {
                rows.add(row.clone());
            }
        }
        return rows;
    }

    private static List<double[]> rows(String text) throws IOException {
        return rows(text.getBytes(StandardCharsets.ISO_8859_1));
    }

    private static double both(String cell) throws IOException {
        List<double[]> quick = rows(cell + ",7" + BEHIND);
        List<double[]> slow = rows(cell + ",7");
        assertThat(quick).hasSize(1);
        assertThat(slow).hasSize(1);
        assertThat(quick.get(0)).containsExactly(slow.get(0)).hasSize(2);
        assertThat(quick.get(0)[1]).isEqualTo(7);
        return quick.get(0)[0];
    }

    @ParameterizedTest
    @CsvSource({
        "0, 0", "7, 7", "-7, -7", "1.5, 1.5", "-.5, -0.5", "5., 5", "0.1, 0.1", "123456789012345, 123456789012345", "1234567890.12345, 1234567890.12345",
        "12345678901234567, 12345678901234567", "9007199254740993, 9007199254740992", "0.30000000000000004, 0.30000000000000004", "1e3, 1000", "-1.5E-2, -0.015", "+4, 4", "' 4 ', 4",
        "0.00000000000000000000001, 1e-23", "0.0000000000000000000001, 1e-22", "000000000000000000000001.5, 1.5", "/, NaN", "NaN, NaN", "nan, NaN", "' ', NaN"
    })
    void next_number_isTheNearestDouble(String cell, double value) throws IOException {
        assertThat(both(cell.equals("/") ? "" : cell)).isEqualTo(Double.valueOf(value));
    }

    @ParameterizedTest
    @ValueSource(strings = {"x", "-", ".", "-.", "1.2.3", "1-2", "--1", "1e", "1e400", "0x10", "1 2", "1;2", "infinity", "1'000"})
    void next_anythingElse_isRefused(String cell) {
        for (String text : List.of(cell + ",7" + BEHIND, cell + ",7")) {
            assertThatThrownBy(() -> rows(text)).hasMessageContaining("height grid, line 1").hasMessageContaining("Maybe the file has another separator");
        }
    }

    @Test
    void next_longCell_isReadTo64Characters() throws IOException {
        String zeros = "0".repeat(63);
        assertThat(both(zeros + "5")).isEqualTo(5);
        assertThatThrownBy(() -> rows(zeros + "05,7")).hasMessageContaining("a cell of more than 64 characters");
    }

    @Test
    void next_lineEndsRemarksAndMark_areNoCells() throws IOException {
        for (String text : List.of("1,2\n3,4\n", "1,2\r\n3,4\r\n", "1,2\n3,4", "\u00EF\u00BB\u00BF1,2\n3,4", "# heights\n\n1,2\r\n\r\n# more\n3,4\n# end", "1,2" + BEHIND + "3,4" + BEHIND)) {
            assertThat(rows(text)).as(text).containsExactly(new double[] {1, 2}, new double[] {3, 4});
        }
    }

    @Test
    void next_nothing_hasNoColumns() throws IOException {
        for (String text : List.of("", "\n\n", "# only a remark", "\r\n")) {
            assertThat(rows(text)).as(text).isEmpty();
        }
    }

    @Test
    void next_rowsOfOtherLength_areRefusedByTheirLine() {
        assertThatThrownBy(() -> rows("1,2\n3\n")).hasMessageContaining("height grid, line 3 is 1 cells, but must have 2 as the first row has");
        assertThatThrownBy(() -> rows("1,2\n# a remark\n3,4,5\n")).hasMessageContaining("height grid, line 3 is more cells, but must have 2 as the first row has");
        assertThatThrownBy(() -> rows("1,2\r3,4")).hasMessageContaining("'3' in cell 2");
    }

    @Test
    void columns_moreThanSixteen_areCounted() throws IOException {
        String row = "1,".repeat(40) + "2";
        assertThat(rows(row + "\n" + row).get(1)).hasSize(41).endsWith(2);
    }

    /** A byte of ones is no end of the file: what stands behind it would be lost without a word. */
    @Test
    void next_byteOfOnes_isRefused() {
        assertThatThrownBy(() -> rows("1,2\n\u00FF\n3,4\n")).hasMessageContaining("height grid, line 2").hasMessageContaining("must be a number");
        assertThatThrownBy(() -> rows("1,2\u00FF\n3,4\n")).hasMessageContaining("must be a number");
        // The mark before text in words of two bytes.
        assertThatThrownBy(() -> rows("\u00FF\u00FE1\u0000,\u00002\u0000")).hasMessageContaining("must be a number");
    }

    /** Twelve numbers a line to well beyond 65,536 bytes, so that cells lie across the ends of the buffer. */
    @Test
    void next_fileLargerThanTheBuffer_readsEachCellOnce() throws IOException {
        StringBuilder text = new StringBuilder();
        for (int r = 0; r < 2_000; r++) {
            for (int c = 0; c < 12; c++) {
                text.append(c == 0 ? "" : ",").append(r).append('.').append(c);
            }
            text.append('\n');
        }
        assertThat(text.length()).isGreaterThan(140_000);
        List<double[]> rows = rows(text.toString());
        assertThat(rows).hasSize(2_000);
        for (int r = 0; r < 2_000; r++) {
            assertThat(rows.get(r)[0]).isEqualTo(r);
            assertThat(rows.get(r)[9]).isEqualTo(Double.parseDouble(r + ".9"));
            assertThat(rows.get(r)[11]).isEqualTo(Double.parseDouble(r + ".11"));
        }
    }

    @Test
    void close_closesTheStream() throws IOException {
        boolean[] closed = {false};
        InputStream in = new ByteArrayInputStream("1".getBytes(StandardCharsets.UTF_8)) {
            @Override
            public void close() {
                closed[0] = true;
            }
        };
        new CsvRows(in, 0.001).close();
        assertThat(closed[0]).isTrue();
    }
}
