package io.github.bedjoint.jobfile;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** JSON as maps, lists, texts, numbers and flags that a test can change and write again; independent of the reader under test. */
public final class JsonTree {
    private JsonTree() {}

    /** Reads a text that must be JSON. */
    public static Object parse(String json) {
        try (JsonParser parser = new JsonFactory().createParser(json)) {
            parser.nextToken();
            Object tree = node(parser);
            if (parser.nextToken() != null) {
                throw new IllegalArgumentException("more than one value");
            }
            return tree;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @SuppressWarnings("unchecked") // a JSON object has texts as names
    public static Map<String, Object> object(Object tree) {
        return (Map<String, Object>) tree;
    }

    @SuppressWarnings("unchecked") // a JSON array is a list
    public static List<Object> array(Object tree) {
        return (List<Object>) tree;
    }

    /** What stands at a path such as {@code walls[0].width}. */
    public static Object at(Object tree, String path) {
        Object here = tree;
        for (String step : steps(path)) {
            here = step.matches("\\d+") && here instanceof List<?> list ? list.get(Integer.parseInt(step)) : object(here).get(step);
        }
        return here;
    }

    /** Puts another value at a path; null puts JSON's null. */
    public static void put(Object tree, String path, Object value) {
        List<String> steps = steps(path);
        String last = steps.get(steps.size() - 1);
        Object parent = tree;
        for (String step : steps.subList(0, steps.size() - 1)) {
            parent = at(parent, step);
        }
        if (parent instanceof List<?>) {
            array(parent).set(Integer.parseInt(last), value);
        } else {
            object(parent).put(last, value);
        }
    }

    /** Takes away what stands at a path. */
    public static void remove(Object tree, String path) {
        List<String> steps = steps(path);
        String last = steps.get(steps.size() - 1);
        Object parent = tree;
        for (String step : steps.subList(0, steps.size() - 1)) {
            parent = at(parent, step);
        }
        if (parent instanceof List<?>) {
            array(parent).remove(Integer.parseInt(last));
        } else {
            object(parent).remove(last);
        }
    }

    /** The paths of all values that are no objects or arrays. */
    public static List<String> leaves(Object tree) {
        List<String> paths = new ArrayList<>();
        leaves(tree, "", paths);
        return paths;
    }

    private static void leaves(Object node, String path, List<String> paths) {
        if (node instanceof Map<?, ?> fields) {
            fields.forEach((name, value) -> leaves(value, path.isEmpty() ? name.toString() : path + "." + name, paths));
        } else if (node instanceof List<?> items) {
            for (int i = 0; i < items.size(); i++) {
                leaves(items.get(i), path + "[" + i + "]", paths);
            }
        } else {
            paths.add(path);
        }
    }

    private static List<String> steps(String path) {
        return List.of(path.replace("[", ".").replace("]", "").split("\\."));
    }

    public static String write(Object node) {
        StringBuilder out = new StringBuilder();
        write(node, out);
        return out.toString();
    }

    private static void write(Object node, StringBuilder out) {
        if (node instanceof Map<?, ?> fields) {
            String comma = "{";
            for (Map.Entry<?, ?> field : fields.entrySet()) {
                out.append(comma).append('\n').append(quoted(field.getKey().toString())).append(": ");
                write(field.getValue(), out);
                comma = ",";
            }
            out.append(fields.isEmpty() ? "{}" : "}");
        } else if (node instanceof List<?> items) {
            String comma = "[";
            for (Object item : items) {
                out.append(comma);
                write(item, out);
                comma = ", ";
            }
            out.append(items.isEmpty() ? "[]" : "]");
        } else if (node instanceof String text) {
            out.append(quoted(text));
        } else if (node instanceof BigDecimal number) {
            out.append(number.toPlainString());
        } else {
            out.append(node);
        }
    }

    private static String quoted(String text) {
        return '"' + text.replace("\\", "\\\\").replace("\"", "\\\"").replace("\n", "\\n") + '"';
    }

    private static Object node(JsonParser parser) throws IOException {
        return switch (parser.currentToken()) {
            case START_OBJECT -> {
                Map<String, Object> fields = new LinkedHashMap<>();
                while (parser.nextToken() != JsonToken.END_OBJECT) {
                    String name = parser.currentName();
                    parser.nextToken();
                    fields.put(name, node(parser));
                }
                yield fields;
            }
            case START_ARRAY -> {
                List<Object> items = new ArrayList<>();
                while (parser.nextToken() != JsonToken.END_ARRAY) {
                    items.add(node(parser));
                }
                yield items;
            }
            case VALUE_STRING -> parser.getText();
            case VALUE_TRUE, VALUE_FALSE -> parser.getBooleanValue();
            case VALUE_NULL -> null;
            default -> parser.getDecimalValue();
        };
    }
}
