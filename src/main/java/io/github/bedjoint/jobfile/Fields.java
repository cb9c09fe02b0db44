package io.github.bedjoint.jobfile;

import io.github.bedjoint.units.RefusedException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.joda.money.CurrencyUnit;

/**
 * The fields of one JSON object, each taken by name; what nobody took is unknown and refused at {@link #end()}.
 *
 * <p>Whatever refuses a field's value, in this package or in the room that the value belongs to, is refused again under the field's path.
 */
final class Fields {
    private static final String WRITTEN = "Maybe it can be written like \"3.2 m\", \"5/8 in\" or \"EUR 7.90/m2\".";

    private final JsonNode node;
    private final Set<String> known = new LinkedHashSet<>();

    private Fields(JsonNode node) {
        this.node = node;
    }

    static Fields of(JsonNode node) {
        if (node.fields() == null) {
            throw node.refused("must be an object", "Maybe curly brackets are missing.");
        }
        return new Fields(node);
    }

    /** Reads all fields of an object and refuses those that were not asked for. */
    static <T> T whole(JsonNode node, Function<Fields, T> reader) {
        Fields fields = of(node);
        T value = fields.traced(() -> reader.apply(fields));
        fields.end();
        return value;
    }

    boolean has(String name) {
        known.add(name);
        JsonNode field = fields().get(name);
        return field != null && (field.scalar() != null || field.fields() != null || field.items() != null);
    }

    JsonNode get(String name) {
        if (!has(name)) {
            String path = node.path().isEmpty() ? name : node.path() + "." + name;
            throw new RefusedException(path, "absent (line " + node.line() + ")", "must be given", "Maybe it is misspelt: this object has " + fields().keySet() + ".");
        }
        return fields().get(name);
    }

    private Map<String, JsonNode> fields() {
        return Objects.requireNonNull(node.fields());
    }

    String text(String name) {
        JsonNode field = get(name);
        if (field.scalar() instanceof String text) {
            return text;
        }
        throw field.refused("must be a text in quotation marks", "Maybe the unit is missing: sizes are texts such as \"3.2 m\".");
    }

    /** A text, read by a reader of {@code units} or of another room. */
    <T> T read(String name, Function<String, T> reader) {
        String text = text(name);
        return under(get(name), () -> reader.apply(text));
    }

    double number(String name) {
        JsonNode field = get(name);
        if (field.scalar() instanceof BigDecimal number) {
            return number.doubleValue();
        }
        throw field.refused("must be a number without quotation marks", "Maybe a share such as 0.35.");
    }

    int count(String name) {
        JsonNode field = get(name);
        if (field.scalar() instanceof BigDecimal number) {
            try {
                return number.intValueExact();
            } catch (ArithmeticException e) {
                throw field.refused("must be a whole number", "Maybe a size was given in place of a count.");
            }
        }
        throw field.refused("must be a whole number without quotation marks", "Maybe remove the quotation marks.");
    }

    boolean flag(String name) {
        JsonNode field = get(name);
        if (field.scalar() instanceof Boolean flag) {
            return flag;
        }
        throw field.refused("must be true or false", "Maybe remove the quotation marks.");
    }

    /** One of an enum's words, written in lower case with hyphens. */
    <E extends Enum<E>> E word(String name, Class<E> type) {
        text(name);
        return word(get(name), type);
    }

    /** One of an enum's words, or an array of them. */
    <E extends Enum<E>> List<E> words(String name, Class<E> type) {
        return get(name).items() == null ? List.of(word(name, type)) : list(name, item -> word(item, type));
    }

    static <E extends Enum<E>> E word(JsonNode field, Class<E> type) {
        for (E constant : type.getEnumConstants()) {
            if (word(constant).equals(field.scalar())) {
                return constant;
            }
        }
        String words = Arrays.stream(type.getEnumConstants()).map(Fields::word).collect(Collectors.joining(", "));
        throw field.refused("must be one of " + words, "Maybe the spelling differs.");
    }

    static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The one of these fields that is given. */
    String oneOf(String... names) {
        List<String> given = Arrays.stream(names).filter(this::has).toList();
        if (given.size() != 1) {
            throw node.refused(
                    "must have one of " + String.join(", ", names) + (given.isEmpty() ? "" : ", not " + String.join(" and ", given)),
                    given.isEmpty() ? "Maybe it is misspelt." : "Maybe one of them is left over.");
        }
        return given.get(0);
    }

    /** An amount of money or a price for each unit, in the currency of the job. */
    <T> T priced(String name, CurrencyUnit currency, Function<String, T> reader) {
        T price = read(name, reader);
        if (!text(name).strip().startsWith(currency.getCode())) {
            throw get(name).refused(
                    "must be in " + currency + " like the rest of the job", "Maybe convert it first: Bedjoint knows no exchange rates.");
        }
        return price;
    }

    <T> T object(String name, Function<Fields, T> reader) {
        return whole(get(name), reader);
    }

    <T> Optional<T> optional(String name, Function<Fields, T> reader) {
        return has(name) ? Optional.of(object(name, reader)) : Optional.empty();
    }

    List<JsonNode> nodes(String name) {
        return list(name, node -> node);
    }

    <T> List<T> list(String name, Function<JsonNode, T> reader) {
        JsonNode field = get(name);
        if (field.items() == null) {
            throw field.refused("must be an array", "Maybe square brackets are missing.");
        }
        List<T> list = new ArrayList<>();
        field.items().forEach(item -> list.add(reader.apply(item)));
        return list;
    }

    /** The value changed by a field if the field is there; its refusal names the field. */
    <T, V> T with(T value, String name, Function<String, V> reader, BiFunction<T, V, T> change) {
        return has(name) ? under(get(name), () -> change.apply(value, reader.apply(name))) : value;
    }

    void end() {
        for (Map.Entry<String, JsonNode> field : fields().entrySet()) {
            if (!known.contains(field.getKey())) {
                throw field.getValue().refused("is not a field that is known here", "Maybe one of " + known + ".");
            }
        }
    }

    /** Runs a step; a refusal that names no path yet gets this node's path, value and line. */
    static <T> T under(JsonNode field, Supplier<T> step) {
        try {
            return step.get();
        } catch (RefusedException e) {
            throw isPlaced(e) ? e : renamed(field, e);
        }
    }

    /**
     * Runs a step; a refusal that names no path yet gets the path of the field that it speaks of.
     *
     * <p>Other rooms name a parameter in words, such as "wall width" or "least overlap". The field is the one whose own words, with those of
     * the object it stands in where need be, begin or end the parameter's; where none does, the refusal is of the whole object.
     */
    private <T> T traced(Supplier<T> step) {
        try {
            return step.get();
        } catch (RefusedException e) {
            throw isPlaced(e) ? e : renamed(spokenOf(node, words(e.parameter())).orElse(node), e);
        }
    }

    private static Optional<JsonNode> spokenOf(JsonNode object, String parameter) {
        JsonNode best = null;
        int longest = 0;
        for (Map.Entry<String, JsonNode> field : Objects.requireNonNull(object.fields()).entrySet()) {
            String name = words(field.getKey());
            boolean isSpokenOf = (" " + parameter).endsWith(" " + name) || (parameter + " ").startsWith(name + " ");
            if (field.getValue().fields() == null && isSpokenOf && name.length() > longest) {
                best = field.getValue();
                longest = name.length();
            } else if (field.getValue().fields() != null && parameter.startsWith(name + " ")) {
                Optional<JsonNode> inside = spokenOf(field.getValue(), parameter.substring(name.length() + 1));
                if (inside.isPresent()) {
                    return inside;
                }
            }
        }
        return Optional.ofNullable(best);
    }

    /** {@code rollWidth} is spoken "roll width", "lead-in" just like {@code leadIn}. */
    private static String words(String name) {
        return name.replaceAll("([a-z])([A-Z])", "$1 $2").replace('-', ' ').toLowerCase(Locale.ROOT);
    }

    private static boolean isPlaced(RefusedException e) {
        return e.value().endsWith(")") && e.value().contains(" (line ");
    }

    /** A room that counts the items of a list itself says "openings[1]"; the path goes on with the number then. */
    private static String place(String path, String parameter) {
        String own = path.substring(path.lastIndexOf('.') + 1);
        return parameter.startsWith(own + "[") ? path + parameter.substring(own.length()) : path + ": " + parameter;
    }

    private static RefusedException renamed(JsonNode field, RefusedException e) {
        String path = field.path().isEmpty() ? "job" : field.path();
        boolean isScalar = field.scalar() != null;
        String value = isScalar ? field.shown() : e.value() + " (line " + field.line() + ")";
        String parameter = isScalar ? path : place(path, e.parameter());
        RefusedException outer = new RefusedException(parameter, value, e.limit(), e.hint().isEmpty() ? WRITTEN : e.hint());
        outer.initCause(e);
        return outer;
    }
}
