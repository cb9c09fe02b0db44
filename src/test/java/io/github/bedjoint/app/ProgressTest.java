package io.github.bedjoint.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.Test;

class ProgressTest {
    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    private final PrintWriter err = new PrintWriter(bytes, true, StandardCharsets.UTF_8);

    private String printed() {
        return bytes.toString(StandardCharsets.UTF_8);
    }

    @Test
    void progress_watched_countsOnOneLineAndWipesIt() throws InterruptedException {
        Progress progress = Progress.of(err, "costing", () -> true, 2);
        progress.done();
        progress.done();
        while (!printed().contains("jobs")) {
            Thread.onSpinWait();
        }
        progress.close();
        assertThat(printed()).contains("\rcosting: 0 s, 2 jobs").endsWith("\r" + " ".repeat("costing: 0 s, 2 jobs".length()) + "\r").doesNotContain("\n");
        int length = printed().length();
        progress.close();
        assertThat(printed().substring(length)).isBlank();
    }

    @Test
    void progress_notWatched_saysNothing() throws InterruptedException {
        CountDownLatch asked = new CountDownLatch(1);
        try (Progress progress = Progress.of(err, "costing", () -> {
            asked.countDown();
            return false;
        }, 1)) {
            asked.await();
            progress.done();
        }
        assertThat(printed()).isEmpty();
    }

    /** Short work never asks whether somebody watches. */
    @Test
    void progress_ofShortWork_isSilent() throws Exception {
        assertThat(Progress.during(err, "costing", () -> 7)).isEqualTo(7);
        assertThat(printed()).isEmpty();
    }

    /**
     * The app with a standard error that is a terminal, lent by the command script, and with one that is a pipe; standard output is a file
     * both times, so that the console of Java, which looks at output and input, would not do.
     */
    @Test
    void app_whoseErrorsGoToATerminal_showsProgress() throws Exception {
        assumeTrue(Files.isExecutable(Path.of("/usr/bin/script")), "there is no command script here, which lends a terminal");
        String watched = "exec < /dev/null > /dev/null; " + command();
        Process terminal = new ProcessBuilder("script", "-qec", watched, "/dev/null").redirectErrorStream(true).start();
        assertThat(new String(terminal.getInputStream().readAllBytes(), StandardCharsets.UTF_8)).contains("\rcosting: ");
        Process pipe = new ProcessBuilder("sh", "-c", watched).start();
        assertThat(new String(pipe.getErrorStream().readAllBytes(), StandardCharsets.UTF_8)).isEmpty();
    }

    /** A run whose jobs keep it waiting for three seconds. */
    private static String command() {
        return "sleep 3 | '" + ProcessHandle.current().info().command().orElse("java") + "' -cp '"
                + System.getProperty("java.class.path") + "' io.github.bedjoint.app.Main cost - --lines";
    }
}
