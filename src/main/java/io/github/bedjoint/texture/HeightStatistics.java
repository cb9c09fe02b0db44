package io.github.bedjoint.texture;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Print;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.working.Explained;
import io.github.bedjoint.working.Working;
import java.io.IOException;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;

/**
 * Mean height, Sa and Sq of a height grid as ISO 25178-2 defines them, about the mean height of the points that are there.
 *
 * <p>The grid is taken as it is: a tilt is not taken out, so level the measurement first where the wall leans. The grid is read twice, since
 * Sa needs the mean. Immutable.
 */
public final class HeightStatistics implements Explained {
    private final long heights;
    private final long missing;
    private final double meanM;
    private final double distanceM;
    private final double squareM2;

    private HeightStatistics(long heights, long missing, double meanM, double distanceM, double squareM2) {
        this.heights = heights;
        this.missing = missing;
        this.meanM = meanM;
        this.distanceM = distanceM;
        this.squareM2 = squareM2;
    }

    /**
     * Reads a grid.
     *
     * @param grid the heights
     * @return their statistics
     * @throws IOException      if the grid's text cannot be read
     * @throws RefusedException if its text is faulty or every height is missing
     */
    public static HeightStatistics of(HeightGrid grid) throws IOException {
        Pass mean = Pass.over(grid, 0);
        if (mean.heights == 0) {
            throw new RefusedException("height grid", "0 heights", "must have at least one", "Maybe the file is empty.");
        }
        double meanM = mean.sum / mean.heights;
        Pass about = Pass.over(grid, meanM);
        return new HeightStatistics(about.heights, about.missing, meanM, about.distance, about.square);
    }

    /**
     * Arithmetical mean height Sa.
     *
     * @return the mean distance from the mean height, in metres
     */
    public Quantity<Length> sa() {
        return Door.length(saM());
    }

    /**
     * Arithmetical mean height Sa.
     *
     * @return metres
     */
    public double saM() {
        return distanceM / heights;
    }

    /**
     * Root mean square height Sq.
     *
     * @return the root of the mean squared distance from the mean height, in metres
     */
    public Quantity<Length> sq() {
        return Door.length(sqM());
    }

    /**
     * Root mean square height Sq.
     *
     * @return metres
     */
    public double sqM() {
        return Math.sqrt(squareM2 / heights);
    }

    /**
     * Mean height.
     *
     * @return metres
     */
    public double meanM() {
        return meanM;
    }

    /**
     * Heights counted.
     *
     * @return 1 or more
     */
    public long heights() {
        return heights;
    }

    /**
     * Heights that are missing.
     *
     * @return 0 or more
     */
    public long missing() {
        return missing;
    }

    @Override
    public Working working() {
        return Working.group(
                "Heights of a grid",
                List.of(
                        Working.of(GridFormulas.SA, saM(), distanceM, heights),
                        Working.of(GridFormulas.SQ, sqM(), squareM2, heights)));
    }

    /** Sa and Sq: {@code Sa 0.569 mm, Sq 0.732 mm}. */
    @Override
    public String toString() {
        return "Sa " + Measure.LENGTH.print(saM(), UnitStyle.METRIC) + ", Sq " + Measure.LENGTH.print(sqM(), UnitStyle.METRIC) + " of " + Print.count(heights(), "height");
    }

    /** One reading of the grid: sums of heights less a reference. */
    private static final class Pass {
        private long heights;
        private long missing;
        private double sum;
        private double distance;
        private double square;

        static Pass over(HeightGrid grid, double reference) throws IOException {
            Pass pass = new Pass();
            try (HeightRows rows = grid.open()) {
                double[] row = new double[rows.columns()];
                while (rows.next(row)) {
                    pass.add(row, reference);
                }
            }
            return pass;
        }

        /** A row's own sums first, so that millions of small terms lose no digits. */
        private void add(double[] row, double reference) {
            double rowSum = 0;
            double rowDistance = 0;
            double rowSquare = 0;
            int counted = 0;
            for (double height : row) {
                double z = height - reference;
                if (!Double.isNaN(z)) {
                    rowSum += z;
                    rowDistance += Math.abs(z);
                    rowSquare += z * z;
                    counted++;
                }
            }
            sum += rowSum;
            distance += rowDistance;
            square += rowSquare;
            heights += counted;
            missing += row.length - counted;
        }
    }
}
