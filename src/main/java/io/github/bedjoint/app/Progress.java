package io.github.bedjoint.app;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Counts jobs on one line of standard error while a person watches. Where standard error is no terminal, or that cannot be told, it
 * prints nothing.
 */
final class Progress {
    private static final int EVERY = 100;

    private final PrintWriter err;
    private final boolean watched;

    Progress(PrintWriter err, boolean watched) {
        this.err = err;
        this.watched = watched;
    }

    /** Java cannot ask whether standard error is a terminal; Linux says what it is. */
    static boolean isTerminal() {
        try {
            Path error = Path.of("/proc/self/fd/2");
            return Files.exists(error) && error.toRealPath().toString().matches("/dev/(pts/\\d+|tty\\w*|console)");
        } catch (IOException e) {
            return false;
        }
    }

    void done(long jobs) {
        if (watched && jobs % EVERY == 0) {
            err.print("\r" + jobs + " jobs");
            err.flush();
        }
    }

    void end(long jobs) {
        if (watched && jobs >= EVERY) {
            err.println("\r" + jobs + " jobs");
        }
    }
}
