package io.github.bedjoint.job;

import io.github.bedjoint.jobfile.JobFile;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Path;
import java.util.Locale;

/** What costing a shipped job takes of a processor, warm: the time of the thread, so that a busy machine does not count. */
public final class JobCpuTime {
    private static final int ROUNDS = 10;
    private static final int EACH = 1000;

    private JobCpuTime() {}

    /** Prints for each job the best and the median of ten rounds of a thousand. */
    public static void main(String[] args) throws IOException {
        for (String name : new String[] {"brick-front", "reading-room", "block-gable"}) {
            Job job = JobFile.read(Path.of("docs", "jobs", name + ".json"));
            double[] micros = new double[ROUNDS];
            int priced = run(job, 10 * EACH);
            ThreadMXBean threads = ManagementFactory.getThreadMXBean();
            for (int i = 0; i < ROUNDS; i++) {
                long before = threads.getCurrentThreadCpuTime();
                priced += run(job, EACH);
                micros[i] = (threads.getCurrentThreadCpuTime() - before) / 1e3 / EACH;
            }
            java.util.Arrays.sort(micros);
            System.out.printf(Locale.ROOT, "%-14s best %6.1f us, median %6.1f us (%d costed)%n", name, micros[0], micros[ROUNDS / 2], priced);
        }
    }

    private static int run(Job job, int times) {
        int priced = 0;
        for (int i = 0; i < times; i++) {
            priced += JobCost.of(job).isPriced() ? 1 : 0;
        }
        return priced;
    }
}
