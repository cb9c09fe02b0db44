package io.github.bedjoint.layout;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Arrays;
import java.util.Locale;

/** What the cheapest seams of the walls of {@link LayoutBenchmark} take of a processor, warm: the time of the thread. */
public final class LayoutCpuTime {
    private static final int ROUNDS = 200;

    private LayoutCpuTime() {}

    /** Prints the best and the median of two hundred plans for each wall. */
    public static void main(String[] args) {
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        for (boolean gable : new boolean[] {false, true}) {
            for (boolean pricedHeads : new boolean[] {false, true}) {
                LayoutBenchmark bench = new LayoutBenchmark();
                bench.widthM = 12;
                bench.gable = gable;
                bench.pricedHeads = pricedHeads;
                bench.fit = Fit.CHEAPEST;
                bench.wall();
                double[] millis = new double[ROUNDS];
                for (int i = 0; i < 2 * ROUNDS; i++) {
                    long before = threads.getCurrentThreadCpuTime();
                    PanelLayout layout = bench.plan();
                    if (!layout.isPossible()) {
                        throw new IllegalStateException(layout.toString());
                    }
                    // The first half only warms up.
                    millis[i % ROUNDS] = (threads.getCurrentThreadCpuTime() - before) / 1e6;
                }
                Arrays.sort(millis);
                System.out.printf(Locale.ROOT, "12 m %-5s %-12s best %5.2f ms, median %5.2f ms%n", gable ? "gable" : "level",
                        pricedHeads ? "priced heads" : "no joints", millis[0], millis[ROUNDS / 2]);
            }
        }
    }
}
