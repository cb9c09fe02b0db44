package io.github.bedjoint.risk;

import io.github.bedjoint.job.Job;
import io.github.bedjoint.jobfile.JobFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;

/** The invented job of the README, on which the simulations are tried. */
final class Demo {
    static final String WALL = "Street front";

    private Demo() {}

    static Job job() {
        try {
            return JobFile.read(Path.of("docs/jobs/brick-front.json"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
