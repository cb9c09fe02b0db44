package io.github.bedjoint.app;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.BooleanSupplier;

/**
 * Tells a person who watches that long work goes on: what it is, for how many seconds, and how many jobs are done, on one line of standard
 * error that is wiped at the end. The first second passes in silence, and where standard error is no terminal all of it does.
 */
final class Progress implements AutoCloseable {
    private static final long EVERY_MS = 1_000;

    private final PrintWriter err;
    private final String work;
    private final BooleanSupplier watched;
    private final AtomicLong jobs = new AtomicLong();
    private final long start = System.nanoTime();
    private final ScheduledExecutorService clock;
    private int width;
    private boolean isOver;

    private Progress(PrintWriter err, String work, BooleanSupplier watched, long everyMs) {
        this.err = err;
        this.work = work;
        this.watched = watched;
        clock = Executors.newSingleThreadScheduledExecutor(task -> {
            Thread thread = new Thread(task, "progress");
            thread.setDaemon(true);
            return thread;
        });
        clock.schedule(() -> begin(everyMs), everyMs, TimeUnit.MILLISECONDS);
    }

    /** Begins to watch over some work, such as {@code planning the rolls}. */
    static Progress of(PrintWriter err, String work) {
        return new Progress(err, work, Progress::isTerminal, EVERY_MS);
    }

    static Progress of(PrintWriter err, String work, BooleanSupplier watched, long everyMs) {
        return new Progress(err, work, watched, everyMs);
    }

    /** Work that may read files. */
    interface Work<T> {
        T run() throws IOException;
    }

    /** Watches over work that counts nothing. */
    static <T> T during(PrintWriter err, String work, Work<T> task) throws IOException {
        Progress progress = of(err, work);
        try {
            return task.run();
        } finally {
            progress.close();
        }
    }

    /**
     * Whether standard error is a terminal, which Java cannot ask: the command {@code test} of every POSIX system is asked, and where there is
     * none, the console, which Java has while standard input and output are a terminal.
     */
    static boolean isTerminal() {
        try {
            return new ProcessBuilder("test", "-t", "2").redirectError(ProcessBuilder.Redirect.INHERIT).start().waitFor() == 0;
        } catch (IOException e) {
            return System.console() != null;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    /** One more job is done. */
    void done() {
        jobs.incrementAndGet();
    }

    private void begin(long everyMs) {
        if (watched.getAsBoolean()) {
            clock.scheduleAtFixedRate(this::print, 0, everyMs, TimeUnit.MILLISECONDS);
        }
    }

    private synchronized void print() {
        if (!isOver) {
            String text = work + ": " + TimeUnit.NANOSECONDS.toSeconds(System.nanoTime() - start) + " s" + (jobs.get() > 0 ? ", " + jobs + " jobs" : "");
            err.print("\r" + text);
            err.flush();
            width = Math.max(width, text.length());
        }
    }

    /** Wipes the line. */
    @Override
    public synchronized void close() {
        isOver = true;
        clock.shutdownNow();
        if (width > 0) {
            err.print("\r" + " ".repeat(width) + "\r");
            err.flush();
        }
    }
}
