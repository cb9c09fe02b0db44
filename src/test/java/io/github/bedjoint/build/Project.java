package io.github.bedjoint.build;

import java.nio.file.Path;

/** Where the project's own files are, for the tests that read them. */
final class Project {

    private Project() {
    }

    /** Surefire sets {@code basedir}; an IDE starts tests in the project's folder. */
    static Path root() {
        return Path.of(System.getProperty("basedir", "")).toAbsolutePath();
    }
}
