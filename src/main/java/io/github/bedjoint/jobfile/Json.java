package io.github.bedjoint.jobfile;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.io.Writer;

/** Writers of JSON: over several lines for people, or on one line. */
final class Json {
    private static final JsonFactory FACTORY = new JsonFactory();

    private Json() {}

    /** Writes to a generator. */
    @FunctionalInterface
    interface Content {
        void write(JsonGenerator json) throws IOException;
    }

    /** A generator that indents by two blanks and ends lines with a line feed everywhere; closing it leaves the target open. */
    static JsonGenerator pretty(Writer out) throws IOException {
        DefaultIndenter lineFeed = new DefaultIndenter("  ", "\n");
        JsonGenerator json = FACTORY.createGenerator(out).disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET);
        json.setPrettyPrinter(new DefaultPrettyPrinter().withArrayIndenter(lineFeed).withObjectIndenter(lineFeed));
        return json;
    }

    /** Text on one line. */
    static String line(Content content) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = FACTORY.createGenerator(text)) {
            content.write(json);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }
}
