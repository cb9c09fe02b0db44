package io.github.bedjoint.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.bedjoint.jobfile.JobLine;
import io.github.bedjoint.units.UnitStyle;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.SequenceInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class LinesRunTest {
    private static String job(String name) {
        try {
            return Files.readString(Path.of("docs", "jobs", name + ".json")).lines().map(String::strip).reduce("", String::concat);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static LinesRun lines(byte[] input, OutputStream out) {
        Progress silent = Progress.of(new PrintWriter(OutputStream.nullOutputStream()), "costing", () -> false, 1_000);
        return new LinesRun(new Lines(new ByteArrayInputStream(input), LinesRun.LONGEST), Answers.to(out), silent, UnitStyle.METRIC);
    }

    private static List<String> run(String input) throws IOException {
        return run(input.getBytes(StandardCharsets.UTF_8));
    }

    private static List<String> run(byte[] input) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        assertThat(lines(input, bytes).run()).isZero();
        String text = bytes.toString(StandardCharsets.UTF_8);
        assertThat(text.isEmpty() || text.endsWith("\n")).isTrue();
        return text.lines().toList();
    }

    @Test
    void run_manyJobs_answersEachInItsOrder() throws IOException {
        String[] names = {"brick-front", "reading-room", "block-gable"};
        List<String> jobs = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            jobs.add(job(names[i % 15 == 7 ? 2 : i % 2]));
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
        assertThat(answers.get(0)).contains("more than 16000000 bytes");
        assertThat(answers.get(1)).startsWith("{\"line\":2,").contains("EUR 1116.96");
    }

    /** SHA-256 of "abc": FIPS 180-4 example, from memory. */
    @Test
    void sha256_ofKnownText_isTheStandardsValue() {
        assertThat(JobLine.sha256("abc")).isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    }

    @Test
    void run_outputThatBreaksOff_endsAtOnceAndSaysWhy() {
        OutputStream broken = new OutputStream() {
            @Override
            public void write(int b) throws IOException {
                throw new IOException("No space left on device");
            }
        };
        byte[] many = (job("reading-room") + "\n").repeat(100).getBytes(StandardCharsets.UTF_8);
        assertThatThrownBy(() -> lines(many, broken).run()).isInstanceOf(Answers.NotWritten.class).hasMessageContaining("No space left on device");
    }

    @Test
    void run_inputThatBreaksOff_answersWhatItReadAndFails() throws IOException {
        byte[] job = (job("reading-room") + "\n").getBytes(StandardCharsets.UTF_8);
        InputStream broken = new SequenceInputStream(new ByteArrayInputStream(job), new InputStream() {
            @Override
            public int read() throws IOException {
                throw new IOException("the line is dead");
            }
        });
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        Progress silent = Progress.of(new PrintWriter(OutputStream.nullOutputStream()), "costing", () -> false, 1_000);
        try (Answers to = Answers.to(bytes)) {
            LinesRun run = new LinesRun(new Lines(broken, LinesRun.LONGEST), to, silent, UnitStyle.METRIC);
            assertThatThrownBy(run::run).isInstanceOf(IOException.class).isNotInstanceOf(Answers.NotWritten.class).hasMessage("the line is dead");
        }
        assertThat(bytes.toString(StandardCharsets.UTF_8).lines()).hasSize(1);
    }

    /** A line in another encoding, and a byte that no UTF-8 text has, spoil one answer, not the run. */
    @Test
    void run_lineThatIsNotUtf8_spoilsItsOwnAnswerOnly() throws IOException {
        byte[] job = job("reading-room").getBytes(StandardCharsets.UTF_8);
        ByteArrayOutputStream input = new ByteArrayOutputStream();
        input.write("{\"bedjoint\": 1, \"name\": \"Stra\u00dfe\"}\n".getBytes(StandardCharsets.ISO_8859_1));
        input.write(job);
        List<String> answers = run(input.toByteArray());
        assertThat(answers).hasSize(2);
        assertThat(answers.get(0)).contains("not UTF-8");
        assertThat(answers.get(1)).contains("EUR 1116.96");
    }

    @Test
    void lines_throughTheCommand_readStandardInput() {
        Run run = Run.of(
                new ByteArrayInputStream((job("block-gable") + "\n").getBytes(StandardCharsets.UTF_8)), "cost", "-", "--lines", "--units", "imperial");
        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("USD 11724.18").endsWith("}\n");
        assertThat(run.err()).isEmpty();
    }
}
