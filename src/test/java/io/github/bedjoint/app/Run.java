package io.github.bedjoint.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/** What a run of the app left behind: its exit code, standard output and standard error. */
record Run(int code, String out, String err) {
    static Run of(String... args) {
        return of(InputStream.nullInputStream(), args);
    }

    static Run of(InputStream in, String... args) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int code = Main.run(in, new PrintStream(out, true, StandardCharsets.UTF_8), new PrintStream(err, true, StandardCharsets.UTF_8), args);
        Run run = new Run(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
        assertThat(run.out() + run.err()).as("no stack trace").doesNotContain("\tat ").doesNotContain("Exception in");
        return run;
    }
}
