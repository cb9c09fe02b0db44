package io.github.bedjoint.drawing;

import io.github.bedjoint.job.Job;
import io.github.bedjoint.job.JobCost;
import io.github.bedjoint.jobfile.JobFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** The demo jobs, read and costed once. */
final class Demo {
    static final List<String> NAMES = List.of("brick-front", "block-gable", "reading-room");

    private static final Map<String, JobCost> COSTS = new ConcurrentHashMap<>();

    private Demo() {}

    static JobCost cost(String name) {
        return COSTS.computeIfAbsent(name, n -> JobCost.of(job(n)));
    }

    static Job job(String name) {
        try {
            return JobFile.read(Path.of("docs/jobs/" + name + ".json"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
