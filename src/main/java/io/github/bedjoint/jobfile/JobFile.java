package io.github.bedjoint.jobfile;

import io.github.bedjoint.job.Job;
import io.github.bedjoint.job.JobCost;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.UnitStyle;
import java.io.IOException;
import java.io.PushbackReader;
import java.io.Reader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Reads a job from a JSON job file, and writes it as one.
 *
 * <p>Sizes, times and prices are texts with their unit, such as {@code "12' 6 1/2\""} or {@code "EUR 7.90/m2"}; shares and counts are
 * numbers. A file is read whole or refused with a {@link RefusedException} whose parameter is the field's path, such as
 * {@code walls[0].width}. Limits: 16 million characters, 32 levels, texts of 2 000 characters.
 */
public final class JobFile {
    /** The version of the format, the value of the field {@code bedjoint}. */
    public static final int VERSION = 1;

    private static final char BYTE_ORDER_MARK = '\ufeff';

    private JobFile() {}

    /**
     * Reads a job.
     *
     * @param json the text of a job file
     * @return the job
     * @throws RefusedException if it is not a job file or one of its values cannot be accepted
     */
    public static Job parse(String json) {
        try {
            return read(new StringReader(json));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * Reads a job.
     *
     * @param text a job file; read to its end and closed
     * @return the job
     * @throws IOException if reading fails
     * @throws RefusedException if it is not a job file or one of its values cannot be accepted
     */
    public static Job read(Reader text) throws IOException {
        return document(text).job();
    }

    /**
     * Reads a job and the ranges of its inputs. Ranges need the optional library Commons Statistics, a job alone does not.
     *
     * @param text a job file; read to its end and closed
     * @return the job and its ranges
     * @throws IOException if reading fails
     * @throws RefusedException if it is not a job file or one of its values cannot be accepted
     */
    public static JobDocument document(Reader text) throws IOException {
        try {
            return Fields.whole(JsonNode.read(withoutMark(text)), JobDocument::read);
        } catch (CharacterCodingException e) {
            throw new RefusedException("job file", "not UTF-8", "must be a text in UTF-8", "Maybe it was saved in another encoding.");
        }
    }

    /**
     * Writes a job as the text of a job file.
     *
     * <p>Sizes are written in metres, square metres, seconds or kelvin with all their digits, so that they read back exactly. What a job
     * has from code alone, such as rates of a layout or the source of a task, has no field: a job that would be costed otherwise without it is
     * refused.
     *
     * @param job the job
     * @return a text that {@link #parse} reads as a job with the same result, and that is written again as the same text
     * @throws RefusedException if the job has parts for which a job file has no field
     */
    public static String write(Job job) {
        String text = JsonOut.text(out -> new JobWriter(out, job)::write);
        if (!result(parse(text)).equals(result(job))) {
            throw new RefusedException(
                    "job", job.toString(), "must have only what a job file has fields for", "Maybe layout rates or sources were set in code.");
        }
        return text;
    }

    private static String result(Job job) {
        JobCost cost = JobCost.of(job);
        return JobResult.of(cost) + cost.working().text(UnitStyle.METRIC);
    }

    /** Some editors begin a file with a byte order mark, which RFC 8259 lets a reader ignore. */
    private static Reader withoutMark(Reader text) throws IOException {
        PushbackReader rest = new PushbackReader(text, 1);
        int first = rest.read();
        if (first >= 0 && first != BYTE_ORDER_MARK) {
            rest.unread(first);
        }
        return rest;
    }

    /**
     * Reads a job.
     *
     * @param file a job file in UTF-8
     * @return the job
     * @throws IOException if the file cannot be read
     * @throws RefusedException if it is not a job file or one of its values cannot be accepted
     */
    public static Job read(Path file) throws IOException {
        return read(Files.newBufferedReader(file, StandardCharsets.UTF_8));
    }
}
