package io.github.bedjoint.jobfile;

import com.fasterxml.jackson.core.JsonGenerator;
import io.github.bedjoint.job.JobCost;
import io.github.bedjoint.schedule.Move;
import io.github.bedjoint.schedule.RainEffect;
import io.github.bedjoint.schedule.Slot;
import io.github.bedjoint.schedule.Timetable;
import io.github.bedjoint.schedule.Wait;
import java.io.IOException;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;

/** Writes the dates of a job: activities with earliest and latest dates and float, what sets the hand-over, and what rain would move. */
final class DatesResult {
    private final JsonGenerator json;

    DatesResult(JsonGenerator json) {
        this.json = json;
    }

    void write(JobCost cost, Timetable dates) throws IOException {
        json.writeObjectFieldStart("dates");
        moment("handOver", dates.handOver());
        json.writeArrayFieldStart("activities");
        for (Slot slot : dates.slots()) {
            activity(slot);
        }
        json.writeEndArray();
        texts("chain", dates.chain());
        json.writeArrayFieldStart("criticalWaits");
        for (Wait wait : dates.criticalWaits()) {
            json.writeStartObject();
            json.writeStringField("title", wait.title());
            json.writeStringField("span", wait.span().toString());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeStringField("rule", dates.rule());
        json.writeBooleanField("proven", dates.isProven());
        moment("noEarlierThan", dates.bound());
        json.writeArrayFieldStart("ifItRains");
        for (RainEffect effect : cost.ifItRains()) {
            rain(effect);
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void activity(Slot slot) throws IOException {
        json.writeStartObject();
        json.writeStringField("activity", slot.activity().id());
        json.writeStringField("title", slot.activity().title());
        moment("start", slot.earlyStart());
        moment("finish", slot.earlyEnd());
        moment("latestStart", slot.lateStart());
        moment("latestFinish", slot.lateEnd());
        json.writeNumberField("floatH", slot.totalFloat().toSeconds() / 3600.0);
        json.writeBooleanField("critical", slot.isCritical());
        json.writeEndObject();
    }

    private void rain(RainEffect effect) throws IOException {
        json.writeStartObject();
        json.writeStringField("day", effect.day().toString());
        if (effect.then().isPossible()) {
            moment("handOver", effect.then().handOver());
            json.writeNumberField("delayH", effect.delay().toSeconds() / 3600.0);
        }
        texts("moves", effect.moves().stream().map(Move::activity).toList());
        texts("reasons", effect.then().reasons());
        json.writeEndObject();
    }

    private void texts(String field, List<String> texts) throws IOException {
        json.writeArrayFieldStart(field);
        for (String text : texts) {
            json.writeString(text);
        }
        json.writeEndArray();
    }

    private void moment(String field, ZonedDateTime moment) throws IOException {
        json.writeStringField(field, DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(moment));
    }
}
