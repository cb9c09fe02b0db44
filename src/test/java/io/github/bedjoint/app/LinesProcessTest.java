package io.github.bedjoint.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import io.github.bedjoint.jobfile.JobLine;
import io.github.bedjoint.units.UnitStyle;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.OutputStream;
import java.io.Writer;
import java.lang.ProcessBuilder.Redirect;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Many jobs in a process of their own, which is killed, starved of memory, of disk and of readers. */
@Timeout(value = 5, unit = TimeUnit.MINUTES)
class LinesProcessTest {
    private static final String JAVA = ProcessHandle.current().info().command().orElse("java");
    private static final int MANY = 240;

    @TempDir
    private Path folder;

    private Path jobs;
    private Path answers;
    private final List<String> lines = new ArrayList<>();

    @BeforeEach
    void writeJobs() throws IOException {
        assumeTrue(System.getProperty("bedjoint.locale", "en-GB").equals("en-GB"), "processes are started in the run for en-GB only; they take minutes");
        jobs = folder.resolve("jobs.jsonl");
        answers = folder.resolve("answers.jsonl");
        String job = Files.readString(Path.of("docs", "jobs", "reading-room.json")).lines().map(String::strip).reduce("", String::concat);
        for (int i = 1; i <= MANY; i++) {
            lines.add(i % 50 == 0 ? "{wrong " + i : job.replace("4.80 m", 3 + i % 30 / 10.0 + " m").replace("reading room", "room " + i));
        }
        Files.write(jobs, lines);
    }

    private static ProcessBuilder app(String... args) {
        List<String> command = new ArrayList<>(List.of(JAVA, "-Xmx48m", "-cp", System.getProperty("java.class.path"), "io.github.bedjoint.app.Main"));
        command.addAll(List.of(args));
        return new ProcessBuilder(command);
    }

    private ProcessBuilder run() {
        return app("cost", jobs.toString(), "--lines", "--answers", answers.toString());
    }

    private static String errors(Process process) throws IOException, InterruptedException {
        String errors = new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
        process.waitFor();
        return errors;
    }

    private void assertWhole(List<String> found) {
        assertThat(found).hasSize(MANY);
        for (int i = 0; i < MANY; i += 7) {
            assertThat(found.get(i)).isEqualTo(JobLine.answer(i + 1, lines.get(i), UnitStyle.METRIC));
        }
        for (int i = 0; i < MANY; i++) {
            assertThat(found.get(i)).startsWith("{\"line\":" + (i + 1) + ",\"sha256\":\"" + JobLine.sha256(lines.get(i)) + "\",");
        }
    }

    /** Killed three times while it writes, the same command goes on each time, and in the end each job has one answer. */
    @Test
    void answers_ofARunKilledAgainAndAgain_areWholeInTheEnd() throws Exception {
        long before = 0;
        for (int kill = 1; kill <= 3; kill++) {
            Process child = run().redirectError(Redirect.DISCARD).start();
            while (child.isAlive() && size() <= before + 50_000) {
                Thread.onSpinWait();
            }
            child.destroyForcibly().waitFor();
            assertThat(size()).isGreaterThan(before);
            before = size();
        }
        Process last = run().start();
        assertThat(errors(last)).isEmpty();
        assertThat(last.exitValue()).isZero();
        assertWhole(Files.readAllLines(answers));
        assertThat(run().start().waitFor()).isZero();
        assertWhole(Files.readAllLines(answers));
    }

    private long size() throws IOException {
        return Files.exists(answers) ? Files.size(answers) : 0;
    }

    @Test
    void answers_whoseLastLineIsHalfWritten_areMended() throws Exception {
        Files.writeString(answers, JobLine.answer(1, lines.get(0), UnitStyle.METRIC) + "\n" + JobLine.answer(2, lines.get(1), UnitStyle.METRIC).substring(0, 200));
        assertThat(run().start().waitFor()).isZero();
        assertWhole(Files.readAllLines(answers));
    }

    @Test
    void answers_toOtherJobs_areRefusedAndLeftAlone() throws Exception {
        String other = JobLine.answer(1, lines.get(1), UnitStyle.METRIC) + "\n";
        Files.writeString(answers, other);
        Process child = run().start();
        assertThat(errors(child)).contains("its line 1 is not", "Maybe the jobs were changed").hasLineCount(1);
        assertThat(child.exitValue()).isEqualTo(2);
        assertThat(answers).hasContent(other);
    }

    @Test
    void answers_thatNeedMoreThanTheDiskHas_endWithOneLineAndGoOnLater() throws Exception {
        assumeTrue(Files.isExecutable(Path.of("/bin/sh")), "there is no shell that limits the size of files");
        String limited = "ulimit -f 400; exec \"$@\"";
        List<String> command = new ArrayList<>(List.of("sh", "-c", limited, "sh"));
        command.addAll(run().command());
        Process child = new ProcessBuilder(command).start();
        assertThat(errors(child)).contains("The answers could not be written", "the same command goes on").hasLineCount(1);
        assertThat(child.exitValue()).isEqualTo(1);
        assertThat(size()).isBetween(1L, 400 * 1024L);
        assertThat(run().start().waitFor()).isZero();
        assertWhole(Files.readAllLines(answers));
    }

    @Test
    void output_toAFullDisk_isAFaultAndNotASuccess() throws Exception {
        Path full = Path.of("/dev/full");
        assumeTrue(Files.exists(full), "there is no device that is always full");
        for (ProcessBuilder command : List.of(app("cost", jobs.toString(), "--lines"), app("cost", "docs/jobs/reading-room.json"), app("schema"))) {
            Process child = command.redirectOutput(full.toFile()).start();
            assertThat(errors(child)).contains("The output could not be written").hasLineCount(1);
            assertThat(child.exitValue()).isEqualTo(1);
        }
    }

    /** As with {@code | head -1}: the run ends soon and quietly, long before it has read all jobs. */
    @Test
    void output_whoseReaderLeaves_endsTheRunQuietly() throws Exception {
        Process child = app("cost", "-", "--lines").start();
        Thread writer = new Thread(() -> {
            try (OutputStream to = child.getOutputStream()) {
                while (child.isAlive()) {
                    to.write((lines.get(0) + "\n").getBytes(StandardCharsets.UTF_8));
                }
            } catch (IOException e) {
                assertThat(child.isAlive() || child.exitValue() == 1).isTrue();
            }
        });
        writer.start();
        try (BufferedReader out = child.inputReader()) {
            assertThat(out.readLine()).startsWith("{\"line\":1,");
        }
        assertThat(errors(child)).isEmpty();
        assertThat(child.exitValue()).isEqualTo(1);
        writer.join();
    }

    /** A program that waits for each answer before it sends the next job gets it. */
    @Test
    void output_ofJobsSentOneByOne_comesOneByOne() throws Exception {
        Process child = app("cost", "-", "--lines").start();
        try (BufferedReader from = child.inputReader(StandardCharsets.UTF_8)) {
            try (Writer to = child.outputWriter(StandardCharsets.UTF_8)) {
                for (int i = 1; i <= 5; i++) {
                    to.write(lines.get(i) + "\n");
                    to.flush();
                    assertThat(from.readLine()).isEqualTo(JobLine.answer(i, lines.get(i), UnitStyle.METRIC));
                }
            }
            assertThat(from.readLine()).isNull();
        }
        assertThat(child.waitFor()).isZero();
    }

    @Test
    void answers_thatAreInUseOrTheJobsThemselves_areRefused() throws Exception {
        Process first = app("cost", "-", "--lines", "--answers", answers.toString()).start();
        try (Writer to = first.outputWriter(StandardCharsets.UTF_8)) {
            to.write(lines.get(0) + "\n");
            to.flush();
            while (size() == 0) {
                Thread.onSpinWait();
            }
            Process second = run().start();
            assertThat(errors(second)).contains("in use").hasLineCount(1);
            assertThat(second.exitValue()).isEqualTo(2);
        }
        assertThat(first.waitFor()).isZero();
        Path link = Files.createSymbolicLink(folder.resolve("link"), jobs);
        for (Path same : List.of(jobs, link, folder)) {
            Process child = app("cost", jobs.toString(), "--lines", "--answers", same.toString()).start();
            assertThat(errors(child)).contains("--answers").hasLineCount(1);
            assertThat(child.exitValue()).isEqualTo(2);
        }
        assertThat(Files.readAllLines(jobs)).isEqualTo(lines);
        Files.writeString(jobs, "", StandardOpenOption.TRUNCATE_EXISTING);
        assertThat(app("cost", jobs.toString(), "--lines").start().waitFor()).isZero();
    }
}
