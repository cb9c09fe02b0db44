package io.github.bedjoint.texture;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.UnitStyle;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;

/**
 * Heights of a surface at even spacing: rows up the wall, columns along it, outwards positive.
 *
 * <p>A grid from a file is not held in memory: each result reads it again, a row at a time. A height may be missing. The pitch is the
 * distance of neighbouring points and belongs to every result, since a finer grid reads more surface.
 */
public final class HeightGrid {
    private static final Range PITCH = Range.closed(1e-7, 1);
    private static final Range UNIT = Range.closed(1e-9, 1000);

    private final double pitchXM;
    private final double pitchYM;
    private final Rows rows;

    private HeightGrid(double pitchXM, double pitchYM, Rows rows) {
        this.pitchXM = pitchXM;
        this.pitchYM = pitchYM;
        this.rows = rows;
    }

    /** Opens the text of a grid; it is asked once for each result. */
    @FunctionalInterface
    public interface Opening {
        /**
         * A new stream at the beginning of the text.
         *
         * @return the stream, which the reader closes
         * @throws IOException if it cannot be opened
         */
        InputStream open() throws IOException;
    }

    @FunctionalInterface
    private interface Rows {
        HeightRows open() throws IOException;
    }

    /**
     * A grid in a text of comma separated values: one row a line, an empty cell or {@code NaN} where a height is missing, # before a
     * remark.
     *
     * @param text   opens the text
     * @param pitchX distance of neighbouring columns, 0.1 micrometre to 1 m
     * @param pitchY distance of neighbouring rows, 0.1 micrometre to 1 m
     * @param unit   the unit of the heights
     * @return the grid
     * @throws RefusedException if a pitch is out of range; a faulty text is refused when it is read
     */
    public static HeightGrid csv(Opening text, Quantity<Length> pitchX, Quantity<Length> pitchY, Unit<Length> unit) {
        double factor = factor(unit);
        return new HeightGrid(pitch("pitch x", pitchX), pitch("pitch y", pitchY), () -> new CsvRows(text.open(), factor));
    }

    /**
     * A grid in a file of comma separated values, as {@link #csv(Opening, Quantity, Quantity, Unit)} describes it.
     *
     * @param file   the file
     * @param pitchX distance of neighbouring columns, 0.1 micrometre to 1 m
     * @param pitchY distance of neighbouring rows, 0.1 micrometre to 1 m
     * @param unit   the unit of the heights
     * @return the grid
     * @throws RefusedException if a pitch is out of range; a faulty text is refused when it is read
     */
    public static HeightGrid csv(Path file, Quantity<Length> pitchX, Quantity<Length> pitchY, Unit<Length> unit) {
        return csv(() -> Files.newInputStream(file), pitchX, pitchY, unit);
    }

    /**
     * A grid in memory.
     *
     * @param heights rows of heights, all of the same length, NaN where missing; copied
     * @param pitchX  distance of neighbouring columns, 0.1 micrometre to 1 m
     * @param pitchY  distance of neighbouring rows, 0.1 micrometre to 1 m
     * @param unit    the unit of the heights
     * @return the grid
     * @throws RefusedException if a pitch is out of range, a height infinite or the rows unlike
     */
    public static HeightGrid of(double[][] heights, Quantity<Length> pitchX, Quantity<Length> pitchY, Unit<Length> unit) {
        double factor = factor(unit);
        double[][] metres = new double[heights.length][];
        for (int i = 0; i < heights.length; i++) {
            if (heights[i].length != heights[0].length) {
                throw new RefusedException(
                        "row " + i, heights[i].length + " heights", "must have " + heights[0].length, "Maybe a cell is missing: give NaN.");
            }
            metres[i] = heights[i].clone();
            for (int j = 0; j < metres[i].length; j++) {
                metres[i][j] *= factor;
                if (Double.isInfinite(metres[i][j])) {
                    throw new RefusedException("height in row " + i, "infinite", "must be finite or NaN", "Maybe it is missing: give NaN.");
                }
            }
        }
        return new HeightGrid(pitch("pitch x", pitchX), pitch("pitch y", pitchY), () -> new ArrayRows(metres));
    }

    private static double pitch(String parameter, Quantity<Length> pitch) {
        return Door.lengthM(parameter, pitch, PITCH);
    }

    private static double factor(Unit<Length> unit) {
        return Door.lengthM("unit of the heights", Door.of(1, unit), UNIT);
    }

    /**
     * All heights, read into memory.
     *
     * @return rows of heights in metres, NaN where missing
     * @throws IOException      if the text cannot be read
     * @throws RefusedException if it is faulty
     */
    public double[][] heightsM() throws IOException {
        List<double[]> all = new ArrayList<>();
        try (HeightRows reading = open()) {
            double[] row = new double[reading.columns()];
            while (reading.next(row)) {
                all.add(row.clone());
            }
        }
        return all.toArray(new double[0][]);
    }

    /** A new reading from the first row. */
    HeightRows open() throws IOException {
        return rows.open();
    }

    /** Distance of columns in metres. */
    double pitchXM() {
        return pitchXM;
    }

    /** Distance of rows in metres. */
    double pitchYM() {
        return pitchYM;
    }

    /**
     * Distance of neighbouring columns.
     *
     * @return the pitch along the wall, in metres
     */
    public Quantity<Length> pitchX() {
        return Door.length(pitchXM);
    }

    /**
     * Distance of neighbouring rows.
     *
     * @return the pitch up the wall, in metres
     */
    public Quantity<Length> pitchY() {
        return Door.length(pitchYM);
    }

    /** The pitch: {@code height grid, pitch 2.5 mm x 2.5 mm}. */
    @Override
    public String toString() {
        return describe(UnitStyle.METRIC);
    }

    String describe(UnitStyle style) {
        return "height grid, pitch " + Measure.LENGTH.print(pitchXM, style) + " x " + Measure.LENGTH.print(pitchYM, style);
    }

    /** Rows in memory. */
    private static final class ArrayRows implements HeightRows {
        private final double[][] heights;
        private int next;

        ArrayRows(double[][] heights) {
            this.heights = heights;
        }

        @Override
        public int columns() {
            return heights.length == 0 ? 0 : heights[0].length;
        }

        @Override
        public boolean next(double[] row) {
            if (next == heights.length) {
                return false;
            }
            System.arraycopy(heights[next++], 0, row, 0, row.length);
            return true;
        }
    }
}
