package io.github.bedjoint.jobfile;

import com.fasterxml.jackson.core.JsonGenerator;
import io.github.bedjoint.layout.PrintFile;
import io.github.bedjoint.layout.PrintList;
import io.github.bedjoint.units.Steps;
import java.io.IOException;
import java.util.List;

/** Writes what the print room needs: a file for each panel with its place in the picture. */
final class PrintsWriter {
    private final JsonGenerator json;

    PrintsWriter(JsonGenerator json) {
        this.json = json;
    }

    void write(List<PrintList> lists) throws IOException {
        json.writeArrayFieldStart("prints");
        for (PrintList list : lists) {
            for (PrintFile file : list.files()) {
                json.writeStartObject();
                json.writeStringField("file", file.name());
                json.writeStringField("wall", file.panel().wall());
                json.writeNumberField("number", file.panel().number());
                json.writeNumberField("fromLeft", Steps.toM(file.fromLeftSteps()));
                json.writeNumberField("fromTop", Steps.toM(file.fromTopSteps()));
                json.writeNumberField("width", Steps.toM(file.panel().alongSteps()));
                json.writeNumberField("height", Steps.toM(file.panel().upSteps()));
                json.writeBooleanField("quarterTurn", file.quarterTurn());
                json.writeBooleanField("whole", file.whole());
                json.writeNumberField("copies", file.copies());
                json.writeEndObject();
            }
        }
        json.writeEndArray();
    }
}
