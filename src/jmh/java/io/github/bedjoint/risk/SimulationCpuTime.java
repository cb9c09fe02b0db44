package io.github.bedjoint.risk;

import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.Locale;

/** What a simulation of 100,000 jobs takes of the processors and of the clock, warm: all threads of this process, so that other processes do not count. */
public final class SimulationCpuTime {
    private static final int ROUNDS = 5;

    private SimulationCpuTime() {}

    /** Prints best and median of five rounds after three to warm up, on one thread and on two. */
    public static void main(String[] args) throws IOException {
        SimulationBenchmark ranges = new SimulationBenchmark();
        for (int threads = 1; threads <= 2; threads++) {
            ranges.ranges(threads);
            measure("nineteen inputs", threads, ranges::nineteenInputs);
            measure("twenty inputs, sizes among them", threads, ranges::twentyInputsWithSizes);
        }
    }

    private interface Round {
        RiskResult run();
    }

    private static void measure(String what, int threads, Round round) {
        OperatingSystemMXBean process = (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
        double[] cpu = new double[ROUNDS];
        double[] wall = new double[ROUNDS];
        int plans = 0;
        for (int i = -3; i < ROUNDS; i++) {
            long cpuBefore = process.getProcessCpuTime();
            long before = System.nanoTime();
            plans = round.run().plans();
            if (i >= 0) {
                cpu[i] = (process.getProcessCpuTime() - cpuBefore) / 1e9;
                wall[i] = (System.nanoTime() - before) / 1e9;
            }
        }
        Arrays.sort(cpu);
        Arrays.sort(wall);
        System.out.printf(
                Locale.ROOT, "%-32s %d threads: processors best %.2f s, median %.2f s; clock best %.2f s, median %.2f s; %d plans; load %.1f%n", what, threads,
                cpu[0], cpu[ROUNDS / 2], wall[0], wall[ROUNDS / 2], plans, process.getSystemLoadAverage());
    }
}
