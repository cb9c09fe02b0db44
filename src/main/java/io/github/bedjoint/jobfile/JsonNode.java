package io.github.bedjoint.jobfile;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import io.github.bedjoint.units.RefusedException;
import java.io.IOException;
import java.io.Reader;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.lang3.StringUtils;
import org.jspecify.annotations.Nullable;

/**
 * A small tree of JSON in which every node knows its path and its line.
 *
 * @param path   where it stands, such as {@code walls[0].width}; empty for the root
 * @param line   its line in the file, from 1
 * @param scalar a String, BigDecimal or Boolean, or null for an object, an array or JSON's null
 * @param fields the fields of an object in their order, or null
 * @param items  the items of an array, or null
 */
record JsonNode(
        String path,
        int line,
        @Nullable Object scalar,
        @Nullable Map<String, JsonNode> fields,
        @Nullable List<JsonNode> items) {
    /** Deep enough for every job file, shallow enough for every stack. */
    private static final int DEEPEST = 32;

    /** About ten thousand walls; a larger file is not a job. */
    private static final long LONGEST = 16_000_000;

    private static final JsonFactory FACTORY = JsonFactory.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxNestingDepth(DEEPEST)
                    .maxDocumentLength(LONGEST)
                    .maxStringLength(2_000)
                    .maxNameLength(200)
                    .maxNumberLength(40)
                    .build())
            .build();

    static JsonNode read(Reader text) throws IOException {
        try (JsonParser parser = FACTORY.createParser(text)) {
            if (parser.nextToken() == null) {
                throw new RefusedException("job file", "empty", "must be a JSON object", "Maybe the wrong file was given.");
            }
            JsonNode root = node(parser, "");
            if (parser.nextToken() != null) {
                throw new RefusedException(
                        "job file",
                        "followed by more at line " + parser.currentTokenLocation().getLineNr(),
                        "must be one JSON object",
                        "Maybe two files were put together.");
            }
            return root;
        } catch (JsonProcessingException e) {
            String place = e.getLocation() == null ? "" : " at line " + e.getLocation().getLineNr() + ", column " + e.getLocation().getColumnNr();
            String what = StringUtils.abbreviate(StringUtils.substringBefore(e.getOriginalMessage(), "\n").replaceAll("\\p{Cntrl}", "?"), 160);
            throw new RefusedException(
                    "job file",
                    "not readable" + place + " (" + what + ")",
                    "must be JSON (RFC 8259) within the limits of a job file",
                    "Maybe a comma, a quotation mark or a bracket is missing.");
        }
    }

    private static JsonNode node(JsonParser parser, String path) throws IOException {
        int line = parser.currentTokenLocation().getLineNr();
        JsonToken token = parser.currentToken();
        return switch (token) {
            case START_OBJECT -> {
                Map<String, JsonNode> fields = new LinkedHashMap<>();
                while (parser.nextToken() != JsonToken.END_OBJECT) {
                    String name = parser.currentName();
                    parser.nextToken();
                    fields.put(name, node(parser, path.isEmpty() ? name : path + "." + name));
                }
                yield new JsonNode(path, line, null, fields, null);
            }
            case START_ARRAY -> {
                List<JsonNode> items = new ArrayList<>();
                while (parser.nextToken() != JsonToken.END_ARRAY) {
                    items.add(node(parser, path + "[" + items.size() + "]"));
                }
                yield new JsonNode(path, line, null, null, items);
            }
            case VALUE_STRING -> new JsonNode(path, line, parser.getText(), null, null);
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> new JsonNode(path, line, number(parser), null, null);
            case VALUE_TRUE, VALUE_FALSE -> new JsonNode(path, line, parser.getBooleanValue(), null, null);
            default -> new JsonNode(path, line, null, null, null);
        };
    }

    private static BigDecimal number(JsonParser parser) throws IOException {
        BigDecimal number;
        try {
            number = parser.getDecimalValue();
        } catch (NumberFormatException e) {
            throw new RefusedException(
                    "job file",
                    "a number of which the exponent has too many digits, at line " + parser.currentTokenLocation().getLineNr(),
                    "must have numbers of ordinary size",
                    "Maybe a digit slipped.");
        }
        // A scale of thousands would make every later operation slow; no figure of a job needs it.
        if (Math.abs((long) number.scale()) > 60) {
            throw new RefusedException(
                    "job file", "a number with exponent " + -number.scale(), "must have numbers of ordinary size", "Maybe a digit slipped.");
        }
        return number;
    }

    /** What the node is, for a refusal. */
    String shown() {
        String value;
        if (fields != null) {
            value = "an object";
        } else if (items != null) {
            value = "an array";
        } else if (scalar instanceof String text) {
            value = "'" + StringUtils.abbreviate(text.replaceAll("\\p{Cntrl}", "?"), 60) + "'";
        } else {
            value = scalar == null ? "null" : scalar.toString();
        }
        return value + " (line " + line + ")";
    }

    RefusedException refused(String limit, String hint) {
        return new RefusedException(path.isEmpty() ? "job file" : path, shown(), limit, hint);
    }
}
