package io.github.bedjoint.app;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.bedjoint.jobfile.JobLine;
import io.github.bedjoint.units.UnitStyle;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class LinesRunTest {
    private static final Progress SILENT = new Progress(new PrintWriter(OutputStream.nullOutputStream()), false);

    private static String job(String name) {
        try {
            return Files.readString(Path.of("docs", "jobs", name + ".json")).lines().map(String::strip).reduce("", String::concat);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static List<String> run(String input) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (PrintWriter out = new PrintWriter(bytes, false, StandardCharsets.UTF_8)) {
            assertThat(new LinesRun(new StringReader(input), out, SILENT, UnitStyle.METRIC).run()).isZero();
        }
        String text = bytes.toString(StandardCharsets.UTF_8);
        assertThat(text.isEmpty() || text.endsWith("\n")).isTrue();
        return text.lines().toList();
    }

    @Test
    void run_manyJobs_answersEachInItsOrder() throws IOException {
        String[] names = {"brick-front", "reading-room", "block-gable"};
        List<String> jobs = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            jobs.add(job(names[i * 7 % 3]));
        }
        List<String> answers = run(String.join("\n", jobs));
        assertThat(answers).hasSize(60);
        for (int i = 0; i < 60; i++) {
            assertThat(answers.get(i)).isEqualTo(JobLine.answer(i + 1, jobs.get(i), UnitStyle.METRIC));
        }
    }

    @Test
    void run_wrongAndBlankLines_doNotStopTheOthers() throws IOException {
        List<String> answers = run("{oops\r\n\r\n" + job("reading-room") + "\r\n{\"bedjoint\": 1}\n");
        assertThat(answers).hasSize(3);
        assertThat(answers.get(0)).startsWith("{\"line\":1,").contains("\"error\":{\"message\":\"job file is not readable");
        assertThat(answers.get(1)).startsWith("{\"line\":3,").contains("\"total\":\"EUR 1116.96\"");
        assertThat(answers.get(2)).startsWith("{\"line\":4,").contains("\"parameter\":\"walls\"");
    }

    @Test
    void run_emptyInput_answersNothing() throws IOException {
        assertThat(run("")).isEmpty();
    }

    @Test
    void run_lineThatIsTooLong_isRefusedAndSkipped() throws IOException {
        List<String> answers = run("\"" + "x".repeat(17_000_000) + "\"\n" + job("reading-room"));
        assertThat(answers).hasSize(2);
        assertThat(answers.get(0)).contains("must be shorter");
        assertThat(answers.get(1)).startsWith("{\"line\":2,").contains("EUR 1116.96");
    }

    /** SHA-256 of "abc": FIPS 180-4 example, from memory. */
    @Test
    void sha256_ofKnownText_isTheStandardsValue() {
        assertThat(JobLine.sha256("abc")).isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    }

    @Test
    void run_outputThatBreaksOff_endsWithItsOwnCode() throws IOException {
        OutputStream broken = new OutputStream() {
            @Override
            public void write(int b) throws IOException {
                throw new IOException("broken pipe");
            }
        };
        String many = (job("reading-room") + "\n").repeat(100);
        assertThat(new LinesRun(new StringReader(many), new PrintWriter(broken, true), SILENT, UnitStyle.METRIC).run()).isEqualTo(1);
    }

    @Test
    void lines_throughTheCommand_readStandardInput() {
        Run run = Run.of(
                new ByteArrayInputStream((job("block-gable") + "\n").getBytes(StandardCharsets.UTF_8)), "cost", "-", "--lines", "--units", "imperial");
        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("USD 11724.18").endsWith("}\n");
        assertThat(run.err()).isEmpty();
    }

    @Test
    void done_whileWatched_countsOnOneLine() {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        Progress progress = new Progress(new PrintWriter(bytes, true, StandardCharsets.UTF_8), true);
        for (int i = 1; i <= 250; i++) {
            progress.done(i);
        }
        progress.end(250);
        assertThat(bytes.toString(StandardCharsets.UTF_8)).isEqualTo("\r100 jobs\r200 jobs\r250 jobs" + System.lineSeparator());
    }
}
