package io.github.bedjoint.texture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.ShopUnits;
import io.github.bedjoint.working.WorkingCheck;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.HashMap;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

class GridSurfaceProperties {
    /** Random heights in millimetres; about one in twenty missing when asked. */
    private static double[][] heights(long seed, int rows, int columns, boolean gaps) {
        Random random = new Random(seed);
        double[][] heights = new double[rows][columns];
        for (double[] row : heights) {
            for (int j = 0; j < columns; j++) {
                row[j] = gaps && random.nextInt(20) == 0 ? Double.NaN : random.nextInt(50_000) / 10_000.0;
            }
        }
        // The first cell is always whole, so that there is something to read.
        heights[0][0] = 1;
        heights[0][1] = 2;
        heights[1][0] = 2;
        heights[1][1] = 4;
        return heights;
    }

    private static double[][] turned(double[][] heights) {
        int rows = heights.length;
        int columns = heights[0].length;
        double[][] turned = new double[columns][rows];
        for (int i = 0; i < rows; i++) {
            for (int j = 0; j < columns; j++) {
                turned[columns - 1 - j][i] = heights[i][j];
            }
        }
        return turned;
    }

    private static GridSurface read(double[][] heights, double dx, double dy, Diagonal diagonal) throws IOException {
        return GridSurface.of(GridFile.mm(heights, dx, dy), diagonal);
    }

    @Property
    void areaRatio_turnedByAQuarterWithItsDiagonal_isTheSame(
            @ForAll long seed, @ForAll @IntRange(min = 2, max = 12) int rows, @ForAll @IntRange(min = 2, max = 12) int columns) throws IOException {
        double[][] heights = heights(seed, rows, columns, true);
        GridSurface upright = read(heights, 1, 2, Diagonal.FALLING);
        GridSurface turned = read(turned(heights), 2, 1, Diagonal.RISING);
        assertThat(turned.areaRatio()).isCloseTo(upright.areaRatio(), within(1e-12));
        assertThat(turned.sdq()).isCloseTo(upright.sdq(), within(1e-12));
        assertThat(turned.steppedRatio()).isCloseTo(upright.steppedRatio(), within(1e-12));
        assertThat(turned.cells()).isEqualTo(upright.cells());
        assertThat(turned.meanStretchUp()).isCloseTo(upright.meanStretchAlong(), within(1e-12));
        assertThat(turned.localStretch()).isCloseTo(upright.localStretch(), within(1e-9));
    }

    @Property
    void areaRatio_anyGrid_isBetweenOneAndItsSteps(
            @ForAll long seed, @ForAll @IntRange(min = 2, max = 12) int rows, @ForAll @DoubleRange(min = 0.1, max = 9) double pitch) throws IOException {
        GridSurface surface = read(heights(seed, rows, 9, true), pitch, 1, Diagonal.RISING);
        assertThat(surface.areaRatio()).isBetween(1.0, surface.steppedRatio() + 1e-12);
        assertThat(surface.localStretch()).isNotNegative();
        assertThat(surface.meanStretchAlong()).isNotNegative();
        assertThat(surface.cells() + surface.missingCells()).isEqualTo((rows - 1) * 8L);
        WorkingCheck.check(surface.working(), new HashMap<>());
        WorkingCheck.check(surface.stretchWorking(), new HashMap<>());
        WorkingCheck.check(surface.withHeightUncertainty(Door.length(pitch / 1e5)).uncertainty().orElseThrow().working());
    }

    @Property
    void areaRatio_liftedOrUpsideDown_isTheSame(@ForAll long seed, @ForAll @DoubleRange(min = -50, max = 50) double lift) throws IOException {
        double[][] heights = heights(seed, 6, 7, true);
        double[][] other = Arrays.stream(heights).map(row -> Arrays.stream(row).map(z -> lift - z).toArray()).toArray(double[][]::new);
        assertThat(read(other, 1, 1, Diagonal.FALLING).areaRatio())
                .isCloseTo(read(heights, 1, 1, Diagonal.FALLING).areaRatio(), within(1e-9));
    }

    @Property
    void areaRatio_inInches_isTheSame(@ForAll long seed) throws IOException {
        double[][] heights = heights(seed, 5, 6, true);
        GridSurface metric = read(heights, 25.4, 12.7, Diagonal.FALLING);
        double[][] inches = Arrays.stream(heights).map(row -> Arrays.stream(row).map(z -> z / 25.4).toArray()).toArray(double[][]::new);
        GridSurface imperial = GridSurface.of(
                HeightGrid.of(inches, Door.of(1, ShopUnits.INCH), Door.of(0.5, ShopUnits.INCH), ShopUnits.INCH), Diagonal.FALLING);
        assertThat(imperial.areaRatio()).isCloseTo(metric.areaRatio(), within(1e-12));
        assertThat(imperial.meanStretchUp()).isCloseTo(metric.meanStretchUp(), within(1e-12));
    }

    @Property
    void csv_sameHeightsAsText_areTheSameSurface(@ForAll long seed, @ForAll @IntRange(min = 2, max = 40) int columns) throws IOException {
        double[][] heights = heights(seed, 4, columns, true);
        String text = Arrays.stream(heights)
                .map(row -> Arrays.stream(row).mapToObj(z -> Double.isNaN(z) ? "" : Double.toString(z)).collect(Collectors.joining(",")))
                .collect(Collectors.joining("\n"));
        HeightGrid csv = HeightGrid.csv(
                () -> new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)),
                Door.of(1, ShopUnits.MILLIMETRE),
                Door.of(1, ShopUnits.MILLIMETRE),
                ShopUnits.MILLIMETRE);
        assertThat(GridSurface.of(csv, Diagonal.RISING)).isEqualTo(read(heights, 1, 1, Diagonal.RISING));
    }
}
