package io.github.bedjoint.job;

import com.sun.management.ThreadMXBean;
import io.github.bedjoint.jobfile.JobFile;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** How the work on a job and the memory it asks for grow with its walls, panels and price lines: brick-front, made larger. */
public final class JobGrowth {
    private static final ThreadMXBean THREADS = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    private static final String WALLS = "\"walls\": [";
    private static final String LINES = "\"consumables\": [";

    private JobGrowth() {}

    /** Prints a row for each size: planned anew, and with panels and rolls given. What is printed first was not warm yet. */
    public static void main(String[] args) throws IOException {
        for (int round = 1; round <= 2; round++) {
            System.out.println(round == 1 ? "Cold:" : "Warm:");
            measure();
        }
    }

    private static void measure() throws IOException {
        String file = Files.readString(Path.of("docs", "jobs", "brick-front.json"));
        for (int walls : new int[] {1, 2, 4, 8, 16, 32, 64}) {
            report(walls + " walls", withWalls(file, walls));
        }
        for (int metres : new int[] {7, 14, 28, 56, 112, 224, 448}) {
            report(metres + " m of wall", file.replace("\"width\": \"7.20 m\"", "\"width\": \"" + metres + ".20 m\"").replace(", \"available\": 2", ""));
        }
        for (int lines : new int[] {1, 10, 100, 1000}) {
            String more = IntStream.range(1, lines).mapToObj(k -> "{\"title\": \"Line " + k + "\", \"price\": \"EUR 1.20/m2\"}, ").collect(Collectors.joining());
            report(lines + " lines", file.replace(LINES, LINES + more));
        }
    }

    private static String withWalls(String file, int walls) {
        int from = file.indexOf(WALLS) + WALLS.length();
        String wall = file.substring(from, file.indexOf("  ],\n  \"deduction\""));
        String all = IntStream.range(0, walls).mapToObj(k -> wall.replace("Street front", "Front " + k)).collect(Collectors.joining(","));
        return (file.substring(0, from) + all + file.substring(from + wall.length())).replace(", \"available\": 2", "");
    }

    private static void report(String what, String file) {
        Job job = JobFile.parse(file);
        JobPlan plan = JobPlan.of(job);
        int panels = plan.layouts().stream().mapToInt(layout -> layout.panels().size()).sum();
        System.out.printf(Locale.ROOT, "%-14s %4d panels; from the job %s; planned %s%n",
                what, panels, measured(() -> JobCost.of(job)), measured(() -> plan.figures(job)));
    }

    /** The least processor time of ten rounds that take some hundredths of a second each, and the bytes asked for. */
    private static String measured(Runnable work) {
        int each = 1;
        for (long took = 0; took < 30_000_000 && each < 10_000; each *= 2) {
            long before = THREADS.getCurrentThreadCpuTime();
            for (int i = 0; i < each; i++) {
                work.run();
            }
            took = THREADS.getCurrentThreadCpuTime() - before;
        }
        long best = Long.MAX_VALUE;
        long bytes = Long.MAX_VALUE;
        for (int round = 0; round < 10; round++) {
            long asked = THREADS.getCurrentThreadAllocatedBytes();
            long before = THREADS.getCurrentThreadCpuTime();
            for (int i = 0; i < each; i++) {
                work.run();
            }
            best = Math.min(best, (THREADS.getCurrentThreadCpuTime() - before) / each);
            bytes = Math.min(bytes, (THREADS.getCurrentThreadAllocatedBytes() - asked) / each);
        }
        return String.format(Locale.ROOT, "%9.1f us %9.1f kB", best / 1e3, bytes / 1e3);
    }
}
