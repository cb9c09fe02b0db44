package io.github.bedjoint.build;

import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.stream.Collectors;
import jdk.jshell.EvalException;
import jdk.jshell.JShell;
import jdk.jshell.JShellException;
import jdk.jshell.Snippet;
import jdk.jshell.SnippetEvent;
import jdk.jshell.SourceCodeAnalysis.CompletionInfo;
import jdk.jshell.SourceCodeAnalysis.Completeness;

/**
 * A JShell in this JVM: the values are those of the {@code jshell} command, and it starts in milliseconds rather than seconds.
 */
final class Shell implements AutoCloseable {

    private final JShell shell = JShell.builder().executionEngine("local").build();

    /** A shell on the class path of the tests, with the imports given. */
    Shell(String imports) {
        for (String entry : System.getProperty("java.class.path").split(File.pathSeparator)) {
            shell.addToClasspath(entry);
        }
        run(imports);
    }

    /**
     * Runs a block and returns what it shows: all that it prints, then the value of its last line if that is an expression,
     * as JShell writes it (strings in quotes). An exception shows as its first line in JShell and ends the block.
     *
     * @throws IllegalArgumentException if a line does not compile
     */
    String run(String block) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        PrintStream before = System.out;
        try (PrintStream out = new PrintStream(bytes, true, StandardCharsets.UTF_8)) {
            System.setOut(out);
            String last = "";
            for (CompletionInfo next = read(block); next.completeness() != Completeness.EMPTY; next = read(next.remaining())) {
                SnippetEvent event = shell.eval(next.source()).get(0);
                last = shown(event);
                if (event.exception() != null) {
                    break;
                }
            }
            out.print(last);
        } finally {
            System.setOut(before);
        }
        return bytes.toString(StandardCharsets.UTF_8).replace(System.lineSeparator(), "\n");
    }

    /** The next snippet; EMPTY where only blanks and comments are left. */
    private CompletionInfo read(String rest) {
        CompletionInfo next = shell.sourceCodeAnalysis().analyzeCompletion(rest);
        if (next.source() == null && next.completeness() != Completeness.EMPTY) {
            throw new IllegalArgumentException("not complete: " + rest);
        }
        return next;
    }

    private String shown(SnippetEvent event) {
        JShellException exception = event.exception();
        if (exception instanceof EvalException thrown) {
            return "|  Exception " + thrown.getExceptionClassName() + ": " + thrown.getMessage() + "\n";
        }
        if (exception != null || event.status() != Snippet.Status.VALID) {
            throw new IllegalArgumentException("JShell refuses: " + event.snippet().source().strip() + "\n"
                    + shell.diagnostics(event.snippet()).map(d -> d.getMessage(Locale.ROOT))
                            .collect(Collectors.joining("\n")));
        }
        boolean expression = event.snippet().kind() == Snippet.Kind.EXPRESSION
                || event.snippet().subKind() == Snippet.SubKind.TEMP_VAR_EXPRESSION_SUBKIND;
        boolean value = expression && event.snippet().subKind() != Snippet.SubKind.ASSIGNMENT_SUBKIND;
        return value && event.value() != null ? event.value() + "\n" : "";
    }

    @Override
    public void close() {
        shell.close();
    }
}
