package io.github.bedjoint.jobfile;

import io.github.bedjoint.job.Job;
import java.util.Optional;

/**
 * All that a job file holds: the job, and the ranges of its inputs where it gives any.
 *
 * @param job    the job
 * @param ranges what varies, or empty
 */
public record JobDocument(Job job, Optional<JobRanges> ranges) {
    static JobDocument read(Fields f) {
        Job job = JobReader.job(f);
        return new JobDocument(job, f.has("ranges") ? Optional.of(f.object("ranges", r -> JobRanges.read(r, job))) : Optional.empty());
    }
}
