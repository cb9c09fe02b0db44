package io.github.bedjoint.jobfile;

import com.fasterxml.jackson.core.JsonGenerator;
import io.github.bedjoint.job.LayoutChoice;
import java.io.IOException;
import java.util.Optional;

/** Writes how sure it is that no other layouts with their rolls are cheaper, and the runner-up. */
final class ChoiceWriter {
    private final JsonGenerator json;

    ChoiceWriter(JsonGenerator json) {
        this.json = json;
    }

    void write(Optional<LayoutChoice> choice) throws IOException {
        if (choice.isEmpty()) {
            return;
        }
        LayoutChoice found = choice.get();
        json.writeObjectFieldStart("choice");
        json.writeNumberField("combinations", found.layouts());
        json.writeNumberField("rollPlans", found.plans());
        json.writeNumberField("cost", found.cost().getAmount());
        json.writeNumberField("lowerBound", found.lowerBound().getAmount());
        json.writeBooleanField("proven", found.isProven());
        if (found.runnerUp().isPresent()) {
            json.writeObjectFieldStart("runnerUp");
            json.writeStringField("what", found.runnerUp().get().what());
            json.writeNumberField("more", found.runnerUp().get().more().getAmount());
            json.writeEndObject();
        }
        json.writeEndObject();
    }
}
