package io.github.bedjoint.texture;

import com.sun.management.ThreadMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.Locale;

/**
 * What the reductions of {@link GridBenchmark} take of a processor, warm, and what they allocate: the time of the thread, so that a busy machine does not
 * count.
 */
public final class GridCpuTime {
    private static final int ROUNDS = 21;

    private GridCpuTime() {}

    private interface Reduction {
        double run() throws IOException;
    }

    /** Prints best and median of 21 rounds after ten to warm up, and the allocation of the last. */
    public static void main(String[] args) throws IOException {
        GridBenchmark grid = new GridBenchmark();
        grid.fill();
        measure("plain loop, area", grid::plainArea);
        measure("library, area, slopes, steps, missing cells", grid::libraryArea);
        measure("plain loop, area and lengths", grid::plainAreaAndLengths);
        measure("plain loop, all but the windows", grid::plainReduction);
        measure("whole surface from memory", grid::surfaceFromMemory);
        measure("whole surface from CSV", grid::surfaceFromText);
        measure("Sa and Sq from CSV, read twice", grid::statisticsFromText);
    }

    private static void measure(String what, Reduction reduction) throws IOException {
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        double[] millis = new double[ROUNDS];
        long allocated = 0;
        double sum = 0;
        for (int i = -10; i < ROUNDS; i++) {
            long bytes = threads.getCurrentThreadAllocatedBytes();
            long before = threads.getCurrentThreadCpuTime();
            sum += reduction.run();
            if (i >= 0) {
                millis[i] = (threads.getCurrentThreadCpuTime() - before) / 1e6;
                allocated = threads.getCurrentThreadAllocatedBytes() - bytes;
            }
        }
        Arrays.sort(millis);
        System.out.printf(
                Locale.ROOT, "%-44s best %6.1f ms, median %6.1f ms, %7.1f kB allocated (%g)%n", what, millis[0], millis[ROUNDS / 2],
                allocated / 1e3, sum);
    }
}
