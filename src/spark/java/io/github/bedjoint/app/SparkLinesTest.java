package io.github.bedjoint.app;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.bedjoint.jobfile.JobLine;
import io.github.bedjoint.units.UnitStyle;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.apache.spark.api.java.JavaRDD;
import org.apache.spark.api.java.JavaSparkContext;
import org.apache.spark.SparkConf;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Many jobs on Apache Spark, here in local mode: JSON lines in, JSON lines out, the same bytes as the app writes on one machine. */
class SparkLinesTest {
    private static final int JOBS = 2_000;

    @TempDir
    private Path folder;

    /** The whole of it: number the lines, answer each where it lies, write the answers in the order of the jobs. */
    private static void answer(JavaSparkContext spark, String jobs, String answers, int parts) {
        JavaRDD<String> lines = spark.textFile(jobs, parts);
        lines.zipWithIndex().map(line -> JobLine.answer(line._2 + 1, line._1, UnitStyle.METRIC)).saveAsTextFile(answers);
    }

    private Path jobs() throws IOException {
        String job = Files.readString(Path.of("docs", "jobs", "reading-room.json")).lines().map(String::strip).reduce("", String::concat);
        List<String> lines = new ArrayList<>();
        for (int i = 1; i <= JOBS; i++) {
            lines.add(i % 1000 == 0 ? "{wrong " + i : job.replace("4.80 m", 3 + i % 30 / 10.0 + " m"));
        }
        return Files.write(folder.resolve("jobs.jsonl"), lines);
    }

    @Test
    void answers_onSpark_areTheBytesOfTheApp() throws IOException {
        Path jobs = jobs();
        Path alone = folder.resolve("alone.jsonl");
        long start = System.nanoTime();
        assertThat(Run.of("cost", jobs.toString(), "--lines", "--answers", alone.toString()).code()).isZero();
        System.out.printf("one machine: %.0f jobs a second%n", JOBS / ((System.nanoTime() - start) / 1e9));

        SparkConf local = new SparkConf().setAppName("jobs").setMaster("local[*]").set("spark.ui.enabled", "false").set("spark.driver.bindAddress", "127.0.0.1").set("spark.driver.host", "127.0.0.1");
        Path parts = folder.resolve("spark");
        try (JavaSparkContext spark = new JavaSparkContext(local)) {
            spark.setLogLevel("ERROR");
            start = System.nanoTime();
            answer(spark, jobs.toUri().toString(), parts.toUri().toString(), 8);
            System.out.printf("Spark, local[*]: %.0f jobs a second%n", JOBS / ((System.nanoTime() - start) / 1e9));
        }
        assertThat(joined(parts)).isEqualTo(Files.readString(alone));
    }

    private static String joined(Path folder) throws IOException {
        StringBuilder all = new StringBuilder();
        try (Stream<Path> parts = Files.list(folder)) {
            for (Path part : parts.filter(path -> path.getFileName().toString().startsWith("part-")).sorted(Comparator.naturalOrder()).toList()) {
                all.append(Files.readString(part));
            }
        }
        return all.toString();
    }
}
