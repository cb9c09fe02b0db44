package io.github.bedjoint.app;

import io.github.bedjoint.jobfile.JobLine;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.UnitStyle;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.Reader;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.jspecify.annotations.Nullable;

/**
 * Answers jobs line by line, on all cores, in their order. No more than a few jobs a core are held at a time, whatever the input's
 * length; blank lines are passed over.
 */
final class LinesRun {
    private static final int AHEAD = 8;
    private static final int LONGEST = 16_000_000;

    private final BufferedReader in;
    private final PrintWriter out;
    private final UnitStyle style;
    private final Progress progress;
    private final StringBuilder text = new StringBuilder();

    LinesRun(Reader in, PrintWriter out, Progress progress, UnitStyle style) {
        this.progress = progress;
        this.in = new BufferedReader(in);
        this.out = out;
        this.style = style;
    }

    /** Runs to the end of the input, or until nobody reads the output any more. */
    int run() throws IOException {
        int cores = Runtime.getRuntime().availableProcessors();
        ExecutorService workers = Executors.newFixedThreadPool(cores);
        Deque<Future<String>> ahead = new ArrayDeque<>();
        try {
            long number = 0;
            for (String line = next(); line != null && !out.checkError(); line = next()) {
                number++;
                if (!line.isBlank()) {
                    ahead.add(submit(workers, number, line));
                }
                if (ahead.size() >= cores * AHEAD) {
                    print(ahead.remove());
                    progress.done(number);
                }
            }
            while (!ahead.isEmpty() && !out.checkError()) {
                print(ahead.remove());
            }
            progress.end(number);
            return out.checkError() ? Main.FAULT : Main.FINE;
        } finally {
            workers.shutdownNow();
            in.close();
        }
    }

    private Future<String> submit(ExecutorService workers, long number, String line) {
        if (line.length() > LONGEST) {
            RefusedException e = new RefusedException(
                    "line " + number, "more than " + LONGEST + " characters", "must be shorter", "Maybe line feeds are missing.");
            return workers.submit(() -> JobLine.refusal(number, line, e));
        }
        return workers.submit(() -> JobLine.answer(number, line, style));
    }

    private void print(Future<String> answer) {
        try {
            out.print(answer.get());
            out.print('\n');
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } catch (ExecutionException e) {
            throw new IllegalStateException("a job could neither be costed nor refused", e.getCause());
        }
    }

    /** The next line, cut off beyond the longest that is accepted; null at the end. */
    private @Nullable String next() throws IOException {
        text.setLength(0);
        int c = in.read();
        if (c < 0) {
            return null;
        }
        for (; c >= 0 && c != '\n'; c = in.read()) {
            if (text.length() <= LONGEST) {
                text.append((char) c);
            }
        }
        if (text.length() > 0 && text.charAt(text.length() - 1) == '\r') {
            text.setLength(text.length() - 1);
        }
        return text.toString();
    }
}
