package io.github.bedjoint.jobfile;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;

/**
 * The JSON Schemas (2020-12) of job files and results, for editors and for programs that check a job before they send it.
 *
 * <p>A schema knows fields, types and words; units, ranges of sizes and what goes together only the reader knows.
 */
public enum JobSchema {
    /** What {@link JobFile} reads. */
    JOB("job.schema.json"),
    /** What {@link JobResult} writes. */
    RESULT("result.schema.json");

    private final String resource;

    JobSchema(String resource) {
        this.resource = resource;
    }

    /**
     * The schema.
     *
     * @return its text
     */
    public String text() {
        try (InputStream in = Objects.requireNonNull(JobSchema.class.getResourceAsStream(resource), resource)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
