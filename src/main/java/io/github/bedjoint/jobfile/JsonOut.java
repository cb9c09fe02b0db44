package io.github.bedjoint.jobfile;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import io.github.bedjoint.units.Steps;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;

/** Writes the fields of a job file; sizes in inner units with as many digits as bring the same number back. */
final class JsonOut {
    /** Writes the fields of one object. */
    @FunctionalInterface
    interface Part {
        void write() throws IOException;
    }

    private final JsonGenerator json;

    private JsonOut(JsonGenerator json) {
        this.json = json;
    }

    /** The text of one object. */
    static String text(java.util.function.Function<JsonOut, Part> root) {
        StringWriter text = new StringWriter();
        DefaultIndenter lineFeed = new DefaultIndenter("  ", "\n");
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter().withArrayIndenter(lineFeed).withObjectIndenter(lineFeed);
        try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
            json.setPrettyPrinter(printer);
            json.writeStartObject();
            root.apply(new JsonOut(json)).write();
            json.writeEndObject();
            json.writeRaw('\n');
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    void object(String name, Part fields) throws IOException {
        json.writeObjectFieldStart(name);
        fields.write();
        json.writeEndObject();
    }

    /** An object in an array. */
    void item(Part fields) throws IOException {
        json.writeStartObject();
        fields.write();
        json.writeEndObject();
    }

    void array(String name, Part items) throws IOException {
        json.writeArrayFieldStart(name);
        items.write();
        json.writeEndArray();
    }

    void pair(String first, String second) throws IOException {
        json.writeStartArray();
        json.writeString(first);
        json.writeString(second);
        json.writeEndArray();
    }

    /** A row of numbers in an array, null for what is missing. */
    void row(double[] numbers) throws IOException {
        json.writeStartArray();
        for (double number : numbers) {
            if (Double.isNaN(number)) {
                json.writeNull();
            } else {
                json.writeNumber(plain(number));
            }
        }
        json.writeEndArray();
    }

    void text(String text) throws IOException {
        json.writeString(text);
    }

    void field(String name, String text) throws IOException {
        json.writeStringField(name, text);
    }

    void word(String name, Enum<?> constant) throws IOException {
        json.writeStringField(name, Fields.word(constant));
    }

    void flag(String name, boolean flag) throws IOException {
        json.writeBooleanField(name, flag);
    }

    void count(String name, long count) throws IOException {
        json.writeNumberField(name, count);
    }

    void number(String name, double number) throws IOException {
        json.writeFieldName(name);
        json.writeNumber(plain(number));
    }

    void sized(String name, double inner, String unit) throws IOException {
        json.writeStringField(name, sized(inner, unit));
    }

    static String sized(double inner, String unit) {
        return plain(inner) + " " + unit;
    }

    void steps(String name, long steps) throws IOException {
        json.writeStringField(name, steps(steps));
    }

    static String steps(long steps) {
        return plain(Steps.toM(steps)) + " m";
    }

    /** The shortest decimal that is this double. */
    private static String plain(double number) {
        return number == 0 ? "0" : new BigDecimal(Double.toString(number)).stripTrailingZeros().toPlainString();
    }
}
