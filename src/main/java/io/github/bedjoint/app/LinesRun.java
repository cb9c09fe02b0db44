package io.github.bedjoint.app;

import io.github.bedjoint.jobfile.JobLine;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.UnitStyle;
import java.io.IOException;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.Semaphore;
import org.jspecify.annotations.Nullable;

/**
 * Answers jobs line by line, on all cores, in their order, and each as soon as it and those before it are known, so that a program may wait
 * for one answer before it sends the next job. No more than a few jobs a core and {@value #MOST_HELD} bytes of them are held at a time.
 */
final class LinesRun {
    static final int LONGEST = 16_000_000;
    private static final int MOST_HELD = 2 * LONGEST;
    private static final int AHEAD = 8;

    private final Lines in;
    private final Answers out;
    private final Progress progress;
    private final UnitStyle style;
    private final int cores = Runtime.getRuntime().availableProcessors();
    private final BlockingQueue<Pending> ahead = new ArrayBlockingQueue<>(cores * AHEAD);
    private final Semaphore room = new Semaphore(MOST_HELD);

    LinesRun(Lines in, Answers out, Progress progress, UnitStyle style) {
        this.in = in;
        this.out = out;
        this.progress = progress;
        this.style = style;
    }

    /** A job on its way; without a line, the end of the jobs. */
    private record Pending(Lines.@Nullable Line line, Future<String> answer) {
        int size() {
            return line == null ? 0 : Math.min(LONGEST, line.text().length());
        }
    }

    /**
     * Runs to the end of the jobs.
     *
     * @return the app's exit code
     * @throws IOException if a job cannot be read or an answer cannot be written
     */
    int run() throws IOException {
        ExecutorService workers = Executors.newFixedThreadPool(cores);
        Thread reader = new Thread(() -> read(workers), "reader");
        reader.setDaemon(true);
        reader.start();
        try {
            boolean isFine = true;
            for (Pending next = ahead.take(); next.line() != null; next = ahead.take()) {
                isFine &= write(next.line(), next.answer());
                room.release(next.size());
                progress.done();
                Pending after = ahead.peek();
                if (after == null || !after.answer().isDone()) {
                    out.flush();
                }
            }
            out.flush();
            return isFine ? Main.FINE : Main.FAULT;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return Main.FAULT;
        } finally {
            reader.interrupt();
            workers.shutdownNow();
        }
    }

    private void read(ExecutorService workers) {
        try {
            CompletableFuture<String> end = new CompletableFuture<>();
            try {
                for (Lines.Line line = in.next(); line != null; line = in.next()) {
                    Lines.Line job = line;
                    Pending pending = new Pending(job, workers.submit(() -> answer(job)));
                    room.acquire(pending.size());
                    ahead.put(pending);
                }
            } catch (IOException e) {
                end.completeExceptionally(e);
                ahead.put(new Pending(new Lines.Line(0, "", "", true), end));
            }
            ahead.put(new Pending(null, end));
        } catch (InterruptedException | RejectedExecutionException e) {
            // The run is over before the jobs are: the answers can no longer be written.
            Thread.currentThread().interrupt();
        }
    }

    private String answer(Lines.Line job) {
        if (!job.fault().isEmpty()) {
            return JobLine.refusal(job.number(), job.text(), new RefusedException(
                    "line " + job.number(), job.fault(), "must be UTF-8 and have at most " + LONGEST + " bytes",
                    "Maybe line feeds are missing, or the file was saved in another encoding."));
        }
        return JobLine.answer(job.number(), job.text(), style);
    }

    /** Writes an answer; where costing broke down, which is a fault of the program, the answer says so and the others go on. */
    private boolean write(Lines.Line job, Future<String> answer) throws IOException, InterruptedException {
        try {
            out.write(answer.get());
            return true;
        } catch (ExecutionException e) {
            if (e.getCause() instanceof IOException unreadable) {
                throw unreadable;
            }
            out.write(JobLine.refusal(job.number(), job.text(), new RefusedException(
                    "line " + job.number(), e.getCause().toString(), "must be costed", "Maybe report it: this is a fault of Bedjoint, not of the job.")));
            return false;
        }
    }
}
