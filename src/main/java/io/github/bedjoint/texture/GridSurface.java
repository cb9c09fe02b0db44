package io.github.bedjoint.texture;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Print;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Verdict;
import io.github.bedjoint.working.Working;
import java.io.IOException;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * A surface read from a height grid: two triangles in each cell, along a stated diagonal.
 *
 * <p>The ratio belongs to the pitch: a finer grid reads more surface, and a step between two points reads as a slope. {@link #steppedRatio()} is what it
 * would be if every difference of height were an upright step, so the truth of what the points show lies between the two;
 * {@link #scale()} warns when they are far apart. Cells with a missing corner are left out and counted. Immutable.
 */
public final class GridSurface implements Surface {
    /** Width of the window in which the local stretch is looked for when none is given: 10 mm, a usual joint. */
    private static final double WINDOW_M = 0.01;
    /** A window is held in memory as rows: 500 of them unless more are asked for, 5000 at most. */
    private static final double USUAL_ROWS = 500;
    private static final double MOST_ROWS = 5000;
    private static final Range UNCERTAINTY = Range.closed(0, 0.02);
    private static final Source PITCH_RULE = Source.geometry("a step between two points reads as a slope over the pitch");

    private final double pitchXM;
    private final double pitchYM;
    private final HeightGrid grid;
    private final Diagonal diagonal;
    private final double askedWindowM;
    private final Sums sums;
    private final @Nullable GridNoise noise;

    private GridSurface(HeightGrid grid, Diagonal diagonal, double askedWindowM, Sums sums, @Nullable GridNoise noise) {
        this.noise = noise;
        this.grid = grid;
        this.askedWindowM = askedWindowM;
        pitchXM = grid.pitchXM();
        pitchYM = grid.pitchYM();
        this.diagonal = diagonal;
        this.sums = sums;
    }

    /**
     * Reads a surface; the local stretch is that of the worst 10 mm, or of the worst 500 rows where those are less.
     *
     * @param grid     the heights
     * @param diagonal which diagonal divides the cells
     * @return the surface
     * @throws IOException      if the grid's text cannot be read
     * @throws RefusedException if its text is faulty or no cell has all four corners
     */
    public static GridSurface of(HeightGrid grid, Diagonal diagonal) throws IOException {
        return of(grid, diagonal, Door.length(Math.min(WINDOW_M, USUAL_ROWS * grid.pitchYM())));
    }

    /**
     * Reads a surface.
     *
     * @param grid     the heights
     * @param diagonal which diagonal divides the cells
     * @param window   width over which a film is held at both ends, such as that of a joint; above 0, at most 1 m and 5000 rows, rounded to the pitch. The
     *                 local stretch is looked for in it and one pitch more; slopes above 45 degrees count there as upright steps
     * @return the surface
     * @throws IOException      if the grid's text cannot be read
     * @throws RefusedException if its text is faulty, the window out of range, or no cell has all four corners
     */
    public static GridSurface of(HeightGrid grid, Diagonal diagonal, Quantity<Length> window) throws IOException {
        double windowM = Door.lengthM("window", window, Range.above(0, Math.min(1, MOST_ROWS * grid.pitchYM())));
        double dx = grid.pitchXM();
        double dy = grid.pitchYM();
        TriangleSum triangles = new TriangleSum(dx, dy, diagonal);
        try (HeightRows rows = grid.open()) {
            if (rows.columns() < 2) {
                throw empty(rows.columns() + " columns");
            }
            LineSum lines = new LineSum(rows.columns(), dx, dy, windowM);
            double[] row = new double[rows.columns()];
            double[] before = new double[rows.columns()];
            for (int i = 0; rows.next(row); i++) {
                lines.add(row, before);
                if (i > 0) {
                    triangles.add(before, row);
                }
                double[] spare = before;
                before = row;
                row = spare;
            }
            lines.end();
            if (triangles.cells() == 0) {
                throw empty("0 whole cells");
            }
            return new GridSurface(grid, diagonal, windowM, new Sums(triangles, lines), null);
        }
    }

    /**
     * The same with a standard uncertainty of each height, taken as independent from point to point; the grid is read once more.
     *
     * @param u standard uncertainty of a height, 0 to 20 mm; 0 is none
     * @return the surface
     * @throws IOException      if the grid's text cannot be read
     * @throws RefusedException if it is out of range
     */
    public GridSurface withHeightUncertainty(Quantity<Length> u) throws IOException {
        double uM = Door.lengthM("uncertainty of the height", u, UNCERTAINTY);
        if (uM == 0) {
            return new GridSurface(grid, diagonal, askedWindowM, sums, null);
        }
        try (HeightRows rows = grid.open()) {
            GridSensitivity sensitivity = new GridSensitivity(rows.columns(), pitchXM, pitchYM, diagonal);
            double[] row = new double[rows.columns()];
            double[] before = new double[rows.columns()];
            for (int i = 0; rows.next(row); i++) {
                if (i > 0) {
                    sensitivity.add(before, row);
                }
                double[] spare = before;
                before = row;
                row = spare;
            }
            return new GridSurface(grid, diagonal, askedWindowM, sums, sensitivity.noise(uM, sums.projectedM2));
        }
    }

    /**
     * Standard uncertainty of each height.
     *
     * @return metres, 0 where none was given
     */
    public double heightUncertaintyM() {
        return noise == null ? 0 : noise.heightM();
    }

    @Override
    public Optional<RatioUncertainty> uncertainty() {
        return noise == null ? Optional.empty() : Optional.of(new RatioUncertainty(areaRatio(), List.of(noise)));
    }

    @Override
    public List<Verdict> measuring() {
        return Stream.concat(Stream.of(scale()), uncertainty().flatMap(RatioUncertainty::noise).stream()).toList();
    }

    private static RefusedException empty(String value) {
        return new RefusedException("height grid", value, "must have at least one cell with all four corners", "Maybe the file is empty.");
    }

    /**
     * The heights, which are read anew where they come from a file.
     *
     * @return the grid
     */
    public HeightGrid grid() {
        return grid;
    }

    /**
     * Which diagonal divides the cells.
     *
     * @return the diagonal
     */
    public Diagonal diagonal() {
        return diagonal;
    }

    /**
     * Width over which a film is held at both ends, before it is rounded to the pitch.
     *
     * @return metres
     */
    public double askedWindowM() {
        return askedWindowM;
    }

    @Override
    public double areaRatio() {
        return sums.areaM2 / sums.projectedM2;
    }

    /**
     * Developed interfacial area ratio Sdr (ISO 25178-2): {@link #areaRatio()} less one.
     *
     * @return 0 or more
     */
    public double sdr() {
        return (sums.areaM2 - sums.projectedM2) / sums.projectedM2;
    }

    /**
     * Root mean square gradient Sdq (ISO 25178-2), of the triangles.
     *
     * @return 0 or more
     */
    public double sdq() {
        return Math.sqrt(sums.slopeM2 / sums.projectedM2);
    }

    /**
     * What the ratio would be if every difference of height between neighbours were an upright step: the most that the points allow.
     *
     * @return not less than {@link #areaRatio()}
     */
    public double steppedRatio() {
        return 1 + sums.stepM2 / sums.projectedM2;
    }

    @Override
    public double localStretchUp() {
        return sums.stretchUp;
    }

    @Override
    public double localStretchAlong() {
        return sums.stretchAlong;
    }

    private double windowM() {
        return sums.stretchUp > sums.stretchAlong ? sums.windowUpM : sums.windowAlongM;
    }

    @Override
    public double meanStretchUp() {
        return sums.upM / sums.upBaseM - 1;
    }

    @Override
    public double meanStretchAlong() {
        return sums.alongM / sums.alongBaseM - 1;
    }

    /**
     * Cells whose area was counted.
     *
     * @return 1 or more
     */
    public long cells() {
        return sums.cells;
    }

    /**
     * Cells left out because a corner is missing.
     *
     * @return 0 or more
     */
    public long missingCells() {
        return sums.missing;
    }

    /**
     * What the pitch hides: fine while no two neighbours differ in height by more than their distance; a warning with the possible
     * range of the ratio otherwise.
     *
     * @return the verdict
     */
    public Verdict scale() {
        String pitch = Measure.LENGTH.print(pitchXM, UnitStyle.METRIC) + " x " + Measure.LENGTH.print(pitchYM, UnitStyle.METRIC);
        String left = missingCells() == 0 ? "" : "; " + missingCells() + " cells with a missing corner are left out";
        if (sums.steepest <= ContourProfile.STEEP) {
            return new Verdict(
                    missingCells() == 0 ? Verdict.Level.FINE : Verdict.Level.CAUTION,
                    "pitch of the grid",
                    "read at a pitch of " + pitch + ", no slope above 45°" + left,
                    PITCH_RULE);
        }
        return new Verdict(
                Verdict.Level.WARNING,
                "pitch of the grid",
                "neighbours at a pitch of " + pitch + " differ in height by up to " + Print.number(sums.steepest)
                        + " times their distance: steps are hidden, and the ratio lies between " + Print.fixed(areaRatio(), 4) + " and "
                        + Print.fixed(steppedRatio(), 4) + left,
                PITCH_RULE);
    }

    @Override
    public Working working() {
        return Working.of(GridFormulas.RATIO, areaRatio(), sums.areaM2, sums.projectedM2)
                .noting(describe(UnitStyle.METRIC) + ". " + scale().reason() + ".")
                .because(
                        Working.of(GridFormulas.SDR, sdr(), sums.areaM2, sums.projectedM2),
                        Working.of(GridFormulas.SDQ, sdq(), sums.slopeM2, sums.projectedM2),
                        Working.of(GridFormulas.STEPPED, steppedRatio(), sums.stepM2, sums.projectedM2));
    }

    @Override
    public Working stretchWorking() {
        return Working.group(
                "Stretch on a height grid",
                List.of(
                        Working.of(GridFormulas.LOCAL, localStretch(), (1 + localStretch()) * windowM(), windowM()),
                        Working.of(GridFormulas.MEAN_UP, meanStretchUp(), sums.upM, sums.upBaseM),
                        Working.of(GridFormulas.MEAN_ALONG, meanStretchAlong(), sums.alongM, sums.alongBaseM)));
    }

    @Override
    public String steepestPlace(UnitStyle style) {
        return localStretch() > 0 ? "worst " + Measure.LENGTH.print(windowM(), style) + " of the height grid" : "";
    }

    @Override
    public String describe(UnitStyle style) {
        return "height grid, pitch " + Measure.LENGTH.print(pitchXM, style) + " x " + Measure.LENGTH.print(pitchYM, style) + ", two triangles a cell, "
                + diagonal.words();
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof GridSurface that
                && Double.compare(pitchXM, that.pitchXM) == 0
                && Double.compare(pitchYM, that.pitchYM) == 0
                && diagonal == that.diagonal
                && sums.equals(that.sums)
                && Objects.equals(noise, that.noise);
    }

    @Override
    public int hashCode() {
        return Objects.hash(pitchXM, pitchYM, diagonal, sums, noise);
    }

    /** The surface in words and metric units. */
    @Override
    public String toString() {
        return describe(UnitStyle.METRIC);
    }

    /** What was added up over the grid. */
    private record Sums(
            double areaM2,
            double projectedM2,
            double slopeM2,
            double stepM2,
            double steepest,
            long cells,
            long missing,
            double alongM,
            double alongBaseM,
            double upM,
            double upBaseM,
            double stretchAlong,
            double windowAlongM,
            double stretchUp,
            double windowUpM) {

        Sums(TriangleSum triangles, LineSum lines) {
            this(
                    // The last digit of a flat grid's sum must not make it smaller than its projection.
                    Math.max(triangles.areaM2(), triangles.projectedM2()),
                    triangles.projectedM2(),
                    triangles.slopeM2(),
                    triangles.stepM2(),
                    triangles.steepest(),
                    triangles.cells(),
                    triangles.missing(),
                    lines.alongM(),
                    lines.alongBaseM(),
                    lines.upM(),
                    lines.upBaseM(),
                    lines.worstAlong().stretch(),
                    lines.worstAlong().widthM(),
                    lines.worstUp().stretch(),
                    lines.worstUp().widthM());
        }
    }
}
