package io.github.bedjoint.texture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Read;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.ShopUnits;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.working.Verdict;
import io.github.bedjoint.working.WorkingCheck;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.SequenceInputStream;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class GridSurfaceTest {
    static List<Map<String, String>> references() {
        return GridFile.references();
    }

    private static double value(Map<String, String> reference, String column) {
        return Double.parseDouble(reference.get(column));
    }

    @ParameterizedTest
    @MethodSource("references")
    void areaRatio_heightMap_isTheTwoTriangleReference(Map<String, String> reference) throws IOException {
        // heightmaps_reference.csv, interior_* columns: calculated independently of this library (Gwyddion 2.62 itself uses four triangles).
        double projected = value(reference, "interior_projected_mm2");
        GridSurface falling = GridSurface.of(GridFile.grid(reference), Diagonal.FALLING);
        GridSurface rising = GridSurface.of(GridFile.grid(reference), Diagonal.RISING);
        double ac = value(reference, "interior_2tri_diag_ac_area_mm2") / projected;
        double bd = value(reference, "interior_2tri_diag_bd_area_mm2") / projected;
        assertThat(falling.areaRatio()).isCloseTo(ac, within(1e-9 * ac));
        assertThat(rising.areaRatio()).isCloseTo(bd, within(1e-9 * bd));
        assertThat(falling.sdr()).isCloseTo(ac - 1, within(1e-9 * ac));
        assertThat(falling.cells())
                .isEqualTo(Math.round((value(reference, "rows") - 1) * (value(reference, "cols") - 1)));
        assertThat(falling.missingCells()).isZero();
        WorkingCheck.check(falling.working());
        WorkingCheck.check(falling.stretchWorking());
    }

    @ParameterizedTest
    @MethodSource("references")
    void statistics_heightMap_areGwyddions(Map<String, String> reference) throws IOException {
        // Gwyddion 2.62: mean, Sa and Sq over all points.
        HeightStatistics statistics = HeightStatistics.of(GridFile.grid(reference));
        assertThat(statistics.meanM() * 1000).isCloseTo(value(reference, "gwyddion_mean_mm"), within(1e-9));
        assertThat(statistics.saM() * 1000).isCloseTo(value(reference, "gwyddion_Sa_mm"), within(1e-9));
        assertThat(statistics.sqM() * 1000).isCloseTo(value(reference, "gwyddion_Sq_mm"), within(1e-9));
        assertThat(statistics.heights()).isEqualTo(Math.round(value(reference, "rows") * value(reference, "cols")));
        WorkingCheck.check(statistics.working());
    }

    @Test
    void tiny_oneCell_isWorkedByHand() throws IOException {
        // Heights 0 1 / 2 4 at 1 mm. Falling: normals (-1,-3,1) and (-2,-2,1): (sqrt 11 + 3) / 2 = 3.158312.
        // Rising: (0,1,2): slopes 1 and 2, sqrt 6; (1,2,4): slopes 2 and 3, sqrt 14: (2.449490 + 3.741657) / 2 = 3.095574.
        HeightGrid tiny = GridFile.mm(new double[][] {{0, 1}, {2, 4}}, 1, 1);
        assertThat(GridSurface.of(tiny, Diagonal.FALLING).areaRatio()).isCloseTo((Math.sqrt(11) + 3) / 2, within(1e-12));
        assertThat(GridSurface.of(tiny, Diagonal.RISING).areaRatio()).isCloseTo((Math.sqrt(6) + Math.sqrt(14)) / 2, within(1e-12));
        // Squared slopes 1 + 9 and 4 + 4, halved: 9; root 3.
        assertThat(GridSurface.of(tiny, Diagonal.FALLING).sdq()).isCloseTo(3, within(1e-12));
        // Steps: |1| + |2| + |2| + |3|, halved, plus one.
        assertThat(GridSurface.of(tiny, Diagonal.FALLING).steppedRatio()).isCloseTo(5, within(1e-12));
    }

    @Test
    void tilt_at45Degrees_hasTheSdrOfTheGlossary() throws IOException {
        // Sdr of a plane at 45 degrees is 0.414 (public metrology glossary of ISO 25178-2).
        double[][] plane = {{0, 1, 2}, {0, 1, 2}, {0, 1, 2}};
        GridSurface surface = GridSurface.of(GridFile.mm(plane, 1, 1), Diagonal.RISING);
        assertThat(surface.sdr()).isCloseTo(0.414, within(5e-4)).isCloseTo(Math.sqrt(2) - 1, within(1e-12));
        assertThat(surface.sdq()).isCloseTo(1, within(1e-12));
        assertThat(surface.meanStretchAlong()).isCloseTo(Math.sqrt(2) - 1, within(1e-12));
        assertThat(surface.meanStretchUp()).isZero();
        assertThat(surface.localStretch()).isCloseTo(Math.sqrt(2) - 1, within(1e-12));
    }

    @Test
    void eggbox_halfMillimetre_isTheQuadraturesValue() throws IOException {
        // Amplitude 1.5, wave length 10: 1.196462 on a 0.5 mm grid with two triangles; 1.1981073985 continuous (both by quadrature elsewhere).
        Map<String, String> eggbox = references().stream().filter(r -> r.get("file").startsWith("eggbox")).findFirst().orElseThrow();
        assertThat(GridSurface.of(GridFile.grid(eggbox), Diagonal.FALLING).areaRatio()).isCloseTo(1.196462, within(1e-6));
    }

    @Test
    void rakedBrick_onACoarsePitch_warnsThatStepsAreHidden() throws IOException {
        // A 5 mm raked joint at 2.5 mm reads 0.081 on this patch where upright steps have more.
        Map<String, String> brick = references().stream().filter(r -> r.get("file").startsWith("brick")).findFirst().orElseThrow();
        GridSurface surface = GridSurface.of(GridFile.grid(brick), Diagonal.FALLING);
        assertThat(surface.sdr()).isCloseTo(0.0811, within(1e-4));
        assertThat(surface.scale().level()).isEqualTo(Verdict.Level.WARNING);
        assertThat(surface.scale().reason()).contains("2.5 mm x 2.5 mm", "up to 2 times", "between 1.0811 and " + "1.1");
        // Rows of pixel centres cover 447.5 x 147.5 mm. Steps there, from the map: see steppedRatio_rakedCell for the exact periodic case.
        assertThat(surface.steppedRatio()).isGreaterThan(surface.areaRatio());
        // From a point on one arris to one on the other are 5 pieces, 12.5 mm, with two steps of 5 mm: 10 / 12.5. The true 2 d / j is 1.
        assertThat(surface.localStretch()).isCloseTo(0.8, within(1e-12));
        WorkingCheck.check(surface.stretchWorking());
    }

    @Test
    void steppedRatio_rakedCell_isTheClosedForm() throws IOException {
        // A period of raked stack bond, 215 x 65 with joints 10 wide and 5 deep, points at the middle of squares of 2.5 mm, the first row and column
        // repeated at the end: upright steps are exactly the walls of the joints, so the ratio is 1.16592593.
        double[][] heights = new double[31][91];
        for (int i = 0; i < 31; i++) {
            for (int j = 0; j < 91; j++) {
                boolean joint = i % 30 < 4 || j % 90 < 4;
                heights[i][j] = joint ? -5 : 0;
            }
        }
        GridSurface surface = GridSurface.of(GridFile.mm(heights, 2.5, 2.5), Diagonal.FALLING);
        assertThat(surface.steppedRatio()).isCloseTo(1.16592593, within(5e-9));
        // The design's figure for the same wall as slopes: 0.102.
        assertThat(surface.sdr()).isCloseTo(0.102, within(5e-4));
    }

    @Test
    void missing_oneHeight_leavesItsFourCellsOut() throws IOException {
        double[][] plane = new double[4][5];
        plane[1][1] = Double.NaN;
        GridSurface surface = GridSurface.of(GridFile.mm(plane, 1, 2), Diagonal.FALLING);
        assertThat(surface.cells()).isEqualTo(8);
        assertThat(surface.missingCells()).isEqualTo(4);
        assertThat(surface.areaRatio()).isEqualTo(1);
        assertThat(surface.meanStretchUp()).isZero();
        assertThat(surface.scale().level()).isEqualTo(Verdict.Level.CAUTION);
        assertThat(surface.scale().reason()).contains("4 cells with a missing corner");
        assertThat(HeightStatistics.of(GridFile.mm(plane, 1, 2)).missing()).isEqualTo(1);
    }

    @Test
    void of_noWholeCell_isRefused() {
        double nan = Double.NaN;
        assertThatThrownBy(() -> GridSurface.of(GridFile.mm(new double[][] {{1, nan}, {nan, 1}}, 1, 1), Diagonal.RISING))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("four corners");
        assertThatThrownBy(() -> GridSurface.of(GridFile.mm(new double[][] {{1}, {2}}, 1, 1), Diagonal.RISING)).hasMessageContaining("1 columns");
        assertThatThrownBy(() -> GridSurface.of(GridFile.mm(new double[][] {}, 1, 1), Diagonal.RISING)).hasMessageContaining("0 columns");
        assertThatThrownBy(() -> GridSurface.of(GridFile.mm(new double[][] {{1, 2}}, 1, 1), Diagonal.RISING)).hasMessageContaining("0 whole cells");
        assertThatThrownBy(() -> HeightStatistics.of(GridFile.mm(new double[][] {{nan}}, 1, 1))).hasMessageContaining("0 heights");
    }

    @Test
    void of_rowsUnlikeOrPitchOutOfRange_isRefused() {
        assertThatThrownBy(() -> GridFile.mm(new double[][] {{1, 2}, {1}}, 1, 1)).hasMessageContaining("row 1");
        assertThatThrownBy(() -> GridFile.mm(new double[][] {{1, 2}, {1, Double.POSITIVE_INFINITY}}, 1, 1)).hasMessageContaining("infinite");
        assertThatThrownBy(() -> GridFile.mm(new double[][] {{1, 2}, {1, 2}}, 0, 1)).hasMessageContaining("pitch x");
        assertThatThrownBy(() -> GridFile.mm(new double[][] {{1, 2}, {1, 2}}, 1, 2000)).hasMessageContaining("pitch y");
    }

    @Test
    void localStretch_gridSmallerThanTheWindow_usesTheWholeGrid() throws IOException {
        double[][] ramp = {{0, 0, 0}, {3, 3, 3}};
        // Two rows 4 apart, 3 higher: 5 / 4 - 1.
        assertThat(GridSurface.of(GridFile.mm(ramp, 4, 4), Diagonal.FALLING, Read.length("100 mm")).localStretch())
                .isCloseTo(0.25, within(1e-12));
    }

    @Test
    void localStretch_stepsOnlyAlong_isNoneUp() throws IOException {
        double[][] ribs = {{0, 3, 0, 0}, {0, 3, 0, 0}, {0, 3, 0, 0}};
        GridSurface surface = GridSurface.of(GridFile.mm(ribs, 4, 4), Diagonal.FALLING, Read.length("4 mm"));
        // Two pieces of 5 over 8 along, level up.
        assertThat(surface.localStretchAlong()).isCloseTo(0.25, within(1e-12));
        assertThat(surface.localStretchUp()).isZero();
        assertThatThrownBy(() -> GridSurface.of(GridFile.mm(ribs, 4, 0.01), Diagonal.FALLING, Read.length("60 mm")))
                .hasMessageContaining("window");
    }

    @ParameterizedTest
    @CsvSource({
        "'1,2\n3,4\n'", "'# remark\n\n1,2\n3,4'", "'1,2\r\n3,4\r\n'", "' 1 , 2 \n 3,4 \n'", "'1.0,2e0\n+3,40e-1\n'", "'1,2\n# between\n3,4\n\n'"
    })
    void csv_everyWayToWriteIt_isTheSame(String text) throws IOException {
        assertThat(GridSurface.of(csv(text), Diagonal.FALLING))
                .isEqualTo(GridSurface.of(GridFile.mm(new double[][] {{1, 2}, {3, 4}}, 1, 1), Diagonal.FALLING));
    }

    @ParameterizedTest
    @CsvSource({
        "'1,2\n3\n', line 3, 1 cells",
        "'1,2\n3,4,5\n', line 2, more cells",
        "'1,2\n3,x\n', line 2, 'x'",
        "'1;2\n3;4\n', line 1, '1;2'",
        "'1,2\n3,1e999\n', line 2, '1e999'",
        "'1,2\n3,.\n', line 2, '.'",
        "'1,2\n3,-\n', line 2, '-'"
    })
    void csv_faulty_isRefusedWithItsLine(String text, String line, String value) {
        assertThatThrownBy(() -> GridSurface.of(csv(text), Diagonal.FALLING))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining(line)
                .hasMessageContaining(value);
    }

    @Test
    void csv_byteOrderMark_isPassedOver() throws IOException {
        assertThat(GridSurface.of(csv("\uFEFF1,2\n3,4\n"), Diagonal.RISING)).isEqualTo(GridSurface.of(csv("1,2\n3,4\n"), Diagonal.RISING));
    }

    @Test
    void csv_streamThatGivesAByteAtATime_isReadAndClosed() throws IOException {
        boolean[] closed = new boolean[1];
        byte[] bytes = "10.25,-2\n3,4\n".getBytes(StandardCharsets.US_ASCII);
        HeightGrid slow = HeightGrid.csv(
                () -> new ByteArrayInputStream(bytes) {
                    @Override
                    public synchronized int read(byte[] into, int from, int length) {
                        return super.read(into, from, 1);
                    }

                    @Override
                    public void close() throws IOException {
                        closed[0] = true;
                        super.close();
                    }
                },
                Read.length("1 mm"),
                Read.length("1 mm"),
                ShopUnits.MILLIMETRE);
        assertThat(GridSurface.of(slow, Diagonal.RISING)).isEqualTo(GridSurface.of(csv("10.25,-2\n3,4\n"), Diagonal.RISING));
        assertThat(closed[0]).isTrue();
    }

    @Test
    void csv_millionsOfCells_areReadWithoutBeingHeld() throws IOException {
        // Four million heights of a plane tilted by 45 degrees, made while they are read: the text itself is never in memory.
        int rows = 2000;
        int columns = 2000;
        StringBuilder line = new StringBuilder();
        for (int j = 0; j < columns; j++) {
            line.append(j == 0 ? "" : ",").append(j);
        }
        byte[] row = line.append('\n').toString().getBytes(StandardCharsets.US_ASCII);
        HeightGrid plane = HeightGrid.csv(
                () -> new SequenceInputStream(Collections.enumeration(
                        Collections.nCopies(rows, row).stream().map(ByteArrayInputStream::new).toList())),
                Read.length("1 mm"),
                Read.length("1 mm"),
                ShopUnits.MILLIMETRE);
        GridSurface surface = GridSurface.of(plane, Diagonal.FALLING);
        assertThat(surface.cells()).isEqualTo(1999L * 1999);
        assertThat(surface.areaRatio()).isCloseTo(Math.sqrt(2), within(1e-12));
        assertThat(HeightStatistics.of(plane).sqM() * 1000).isCloseTo(Math.sqrt((2000.0 * 2000 - 1) / 12), within(1e-6));
    }

    @Test
    void csv_emptyCellAndNaN_areMissing() throws IOException {
        HeightStatistics statistics = HeightStatistics.of(csv("1,,NaN\n2,nan,3\n"));
        assertThat(statistics.missing()).isEqualTo(3);
        assertThat(statistics.meanM()).isCloseTo(0.002, within(1e-15));
        assertThat(statistics.sa().getValue().doubleValue()).isCloseTo(2e-3 / 3, within(1e-15));
        assertThat(statistics.toString()).startsWith("Sa 0.666667 mm");
    }

    @Test
    void describe_grid_namesPitchAndDiagonal() throws IOException {
        GridSurface surface = GridSurface.of(csv("1,2\n3,4\n"), Diagonal.RISING);
        assertThat(surface).hasToString("height grid, pitch 1 mm x 1 mm, two triangles a cell, rising diagonal");
        assertThat(surface.steepestPlace(UnitStyle.METRIC)).isEqualTo("worst 1 mm of the height grid");
        assertThat(surface).isNotEqualTo(GridSurface.of(csv("1,2\n3,4\n"), Diagonal.FALLING)).hasSameHashCodeAs(GridSurface.of(csv("1,2\n3,4\n"), Diagonal.RISING));
        assertThat(csv("")).hasToString("height grid, pitch 1 mm x 1 mm");
        assertThat(csv("").pitchX().getValue().doubleValue()).isEqualTo(0.001);
        assertThat(csv("").pitchY().getValue().doubleValue()).isEqualTo(0.001);
    }

    private static HeightGrid csv(String text) {
        return HeightGrid.csv(
                () -> new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)),
                Door.of(1, ShopUnits.MILLIMETRE),
                Door.of(1, ShopUnits.MILLIMETRE),
                ShopUnits.MILLIMETRE);
    }
}
