package io.github.bedjoint.jobfile;

import com.fasterxml.jackson.core.JsonGenerator;
import io.github.bedjoint.job.JobCost;
import io.github.bedjoint.job.OneMore;
import io.github.bedjoint.risk.RiskResult;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.working.Working;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Writes the result of a job as JSON.
 *
 * <p>Figures are plain numbers in metres, square metres, hours or degrees Celsius, with the unit in the field's name, and the same under
 * every style; texts such as cut sizes follow the reader's units. Money is a text with its currency. Immutable.
 */
public final class JobResult {
    private final JobCost cost;
    private final UnitStyle style;
    private final @Nullable Working working;
    private final @Nullable RiskResult spread;
    private final @Nullable OneMore oneMore;

    private JobResult(JobCost cost, UnitStyle style, @Nullable Working working, @Nullable RiskResult spread, @Nullable OneMore oneMore) {
        this.cost = cost;
        this.style = style;
        this.working = working;
        this.spread = spread;
        this.oneMore = oneMore;
    }

    /**
     * The result of a job in metric units, without working.
     *
     * @param cost the job costed
     * @return the result
     */
    public static JobResult of(JobCost cost) {
        return new JobResult(cost, UnitStyle.METRIC, null, null, null);
    }

    /**
     * The result of all that a job file holds: the job costed, and its figures' spread where it gives ranges.
     *
     * @param document what was read
     * @return the result
     */
    public static JobResult of(JobDocument document) {
        JobResult alone = of(JobCost.of(document.job()));
        return document.ranges().map(ranges -> alone.withRanges(ranges.run())).orElse(alone);
    }

    /**
     * The same with texts in other units.
     *
     * @param other the reader's units
     * @return a new result
     */
    public JobResult withUnits(UnitStyle other) {
        return new JobResult(cost, other, working, spread, oneMore);
    }

    /**
     * The same with a working in the field {@code working}.
     *
     * @param shown all of {@link JobCost#working()}, or a part of it
     * @return a new result
     */
    public JobResult withWorking(Working shown) {
        return new JobResult(cost, style, shown, spread, oneMore);
    }

    /**
     * The same with the spread of the job's figures in the field {@code ranges}.
     *
     * @param result what {@link JobRanges#run} gave
     * @return a new result
     */
    public JobResult withRanges(RiskResult result) {
        return new JobResult(cost, style, working, result, oneMore);
    }

    /**
     * The same with what one more hour, metre or centimetre of roll and a smaller overlap would change, in the field {@code oneMore}.
     *
     * @param effects the effects on this job, which is planned again for them
     * @return a new result
     */
    public JobResult withOneMore(OneMore effects) {
        return new JobResult(cost, style, working, spread, effects);
    }

    /**
     * Writes the result over several lines.
     *
     * @param out where to; flushed, not closed
     * @throws IOException if writing fails
     */
    public void write(Writer out) throws IOException {
        try (JsonGenerator json = Json.pretty(out)) {
            object(json);
            json.writeRaw('\n');
        }
    }

    /**
     * The result on one line, without a line feed.
     *
     * @return JSON text
     */
    public String line() {
        return Json.line(this::object);
    }

    void object(JsonGenerator json) throws IOException {
        json.writeStartObject();
        new ResultWriter(json, cost, style).write();
        if (spread != null) {
            json.writeFieldName("ranges");
            new RangesWriter(json).write(spread);
        }
        if (oneMore != null) {
            new OneMoreWriter(json, style).write(Objects.requireNonNull(oneMore), cost.job().rules().currency());
        }
        if (working != null) {
            json.writeFieldName("working");
            new WorkingWriter(json, style).write(Objects.requireNonNull(working), null);
        }
        json.writeEndObject();
    }

    /** The result as JSON text. */
    @Override
    public String toString() {
        StringWriter text = new StringWriter();
        try {
            write(text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }
}
