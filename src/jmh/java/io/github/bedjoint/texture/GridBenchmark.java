package io.github.bedjoint.texture;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.ShopUnits;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** A height grid of 2001 x 2001 points, four million cells: the library's reduction against plain loops over the same doubles. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 8, time = 1)
public class GridBenchmark {
    private static final int POINTS = 2001;
    private static final Quantity<Length> PITCH = Door.of(1, ShopUnits.MILLIMETRE);

    private double[][] heights;
    private HeightGrid memory;
    private HeightGrid text;

    /** Made once for all benchmarks. */
    public GridBenchmark() {}

    /** Random heights of 0 to 2 mm with four decimals, in memory and as text. */
    @Setup
    public void fill() {
        Random random = new Random(1);
        heights = new double[POINTS][POINTS];
        StringBuilder csv = new StringBuilder();
        for (double[] row : heights) {
            for (int j = 0; j < POINTS; j++) {
                row[j] = random.nextInt(20_000) / 10_000.0;
                csv.append(j == 0 ? "" : ",").append(String.format(Locale.ROOT, "%.4f", row[j]));
            }
            csv.append('\n');
        }
        byte[] bytes = csv.toString().getBytes(StandardCharsets.US_ASCII);
        memory = HeightGrid.of(heights, PITCH, PITCH, ShopUnits.MILLIMETRE);
        text = HeightGrid.csv(() -> new ByteArrayInputStream(bytes), PITCH, PITCH, ShopUnits.MILLIMETRE);
    }

    /** The area alone, as one would write it by hand. */
    @Benchmark
    public double plainArea() {
        double area = 0;
        for (int i = 1; i < POINTS; i++) {
            double[] row = heights[i - 1];
            double[] next = heights[i];
            for (int j = 1; j < POINTS; j++) {
                double low = row[j] - row[j - 1];
                double high = next[j] - next[j - 1];
                double left = next[j - 1] - row[j - 1];
                double right = next[j] - row[j];
                area += (Math.sqrt(1 + low * low + right * right) + Math.sqrt(1 + high * high + left * left)) / 2;
            }
        }
        return area;
    }

    /** The library's area, which also finds slopes, steps and missing cells. */
    @Benchmark
    public double libraryArea() {
        TriangleSum sum = new TriangleSum(1, 1, Diagonal.FALLING);
        for (int i = 1; i < POINTS; i++) {
            sum.add(heights[i - 1], heights[i]);
        }
        return sum.areaM2();
    }

    /** Area and mean lengths along rows and up columns, as one would write them by hand. */
    @Benchmark
    public double plainAreaAndLengths() {
        double sum = plainArea();
        for (int i = 0; i < POINTS; i++) {
            double[] row = heights[i];
            double[] next = heights[Math.min(i + 1, POINTS - 1)];
            for (int j = 0; j < POINTS; j++) {
                double along = j == 0 ? 0 : row[j] - row[j - 1];
                double up = next[j] - row[j];
                sum += Math.sqrt(1 + along * along) + Math.sqrt(1 + up * up);
            }
        }
        return sum;
    }

    /**
     * All that the library finds but the worst windows, as one would write it by hand: area, squared slopes, steps, steepest slope, cells
     * with a missing corner, mean lengths along rows and up columns.
     */
    @Benchmark
    public double plainReduction() {
        double area = 0;
        double squares = 0;
        double steps = 0;
        double steepest = 0;
        double along = 0;
        double up = 0;
        int missing = 0;
        for (int i = 0; i < POINTS; i++) {
            double[] row = heights[i];
            for (int j = 1; j < POINTS; j++) {
                double dz = row[j] - row[j - 1];
                along += Math.sqrt(1 + dz * dz);
            }
            if (i == 0) {
                continue;
            }
            double[] before = heights[i - 1];
            for (int j = 0; j < POINTS; j++) {
                double dz = row[j] - before[j];
                up += Math.sqrt(1 + dz * dz);
            }
            for (int j = 1; j < POINTS; j++) {
                double low = before[j] - before[j - 1];
                double high = row[j] - row[j - 1];
                double left = row[j - 1] - before[j - 1];
                double right = row[j] - before[j];
                if (Double.isNaN(low + high)) {
                    missing++;
                    continue;
                }
                area += (Math.sqrt(1 + low * low + right * right) + Math.sqrt(1 + high * high + left * left)) / 2;
                squares += low * low + high * high + left * left + right * right;
                double lowStep = Math.abs(low);
                double highStep = Math.abs(high);
                double leftStep = Math.abs(left);
                double rightStep = Math.abs(right);
                steps += lowStep + highStep + leftStep + rightStep;
                steepest = Math.max(steepest, Math.max(Math.max(lowStep, highStep), Math.max(leftStep, rightStep)));
            }
        }
        return area + squares + steps + steepest + along + up + missing;
    }

    /** A whole surface from memory: area, slopes, steps, missing cells, mean and local stretch. */
    @Benchmark
    public double surfaceFromMemory() throws IOException {
        return GridSurface.of(memory, Diagonal.FALLING).areaRatio();
    }

    /** A whole surface from text, streamed. */
    @Benchmark
    public double surfaceFromText() throws IOException {
        return GridSurface.of(text, Diagonal.FALLING).areaRatio();
    }

    /** Sa and Sq from text, which is read twice. */
    @Benchmark
    public double statisticsFromText() throws IOException {
        return HeightStatistics.of(text).saM();
    }
}
