package io.github.bedjoint.drawing;

import io.github.bedjoint.job.Job;
import io.github.bedjoint.job.JobCost;
import io.github.bedjoint.jobfile.JobDocument;
import io.github.bedjoint.jobfile.JobFile;
import io.github.bedjoint.jobfile.JobRanges;
import io.github.bedjoint.risk.RiskResult;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/** The demo jobs, read and costed once. */
final class Demo {
    static final List<String> NAMES = List.of("brick-front", "block-gable", "reading-room");

    private static final Map<String, JobCost> COSTS = new ConcurrentHashMap<>();

    private static final Map<String, Optional<RiskResult>> SPREADS = new ConcurrentHashMap<>();

    private Demo() {}

    static JobCost cost(String name) {
        return COSTS.computeIfAbsent(name, n -> JobCost.of(job(n)));
    }

    /** The page of a job, with the spread of its figures where its file has ranges. */
    static JobPage page(String name) {
        JobPage page = JobPage.of(cost(name));
        return SPREADS.computeIfAbsent(name, n -> document(n).ranges().map(JobRanges::run)).map(page::withRanges).orElse(page);
    }

    static Job job(String name) {
        return document(name).job();
    }

    private static JobDocument document(String name) {
        try {
            return JobFile.document(Files.newBufferedReader(Path.of("docs/jobs/" + name + ".json")));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
