package io.github.bedjoint.jobfile;

import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.UnitStyle;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * The line protocol: one job on a line of JSON in, one answer on a line of JSON out.
 *
 * <p>An answer has {@code line}, {@code sha256} of the job's line in UTF-8, and either {@code result} as {@link JobResult} writes it or
 * {@code error} with {@code message, parameter, value, limit, hint}. A wrong job is an answer, never an exception, so that the jobs after
 * it are costed all the same.
 */
public final class JobLine {
    private JobLine() {}

    /**
     * Answers one line.
     *
     * @param number the line's number, from 1
     * @param json   the line
     * @param style  the reader's units
     * @return one line of JSON, without a line feed
     */
    public static String answer(long number, String json, UnitStyle style) {
        try {
            JobResult result = JobResult.of(JobFile.document(new StringReader(json))).withUnits(style);
            return Json.line(out -> {
                out.writeStartObject();
                out.writeNumberField("line", number);
                out.writeStringField("sha256", sha256(json));
                out.writeFieldName("result");
                result.object(out);
                out.writeEndObject();
            });
        } catch (RefusedException e) {
            return refusal(number, json, e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * Answers a line that cannot be a job.
     *
     * @param number the line's number, from 1
     * @param json   the line, or what was read of it
     * @param e      why it cannot
     * @return one line of JSON, without a line feed
     */
    public static String refusal(long number, String json, RefusedException e) {
        return Json.line(out -> {
            out.writeStartObject();
            out.writeNumberField("line", number);
            out.writeStringField("sha256", sha256(json));
            out.writeObjectFieldStart("error");
            out.writeStringField("message", e.getMessage());
            out.writeStringField("parameter", e.parameter());
            out.writeStringField("value", e.value());
            out.writeStringField("limit", e.limit());
            out.writeStringField("hint", e.hint());
            out.writeEndObject();
            out.writeEndObject();
        });
    }

    /**
     * The checksum by which an answer names its job.
     *
     * @param json the job's line
     * @return SHA-256 of the line in UTF-8, in hexadecimal
     */
    public static String sha256(String json) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(json.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every JDK has SHA-256", e);
        }
    }
}
