package io.github.bedjoint.jobfile;

import io.github.bedjoint.risk.Spread;
import io.github.bedjoint.units.Read;
import io.github.bedjoint.units.RefusedException;
import java.math.BigDecimal;
import java.util.List;
import java.util.function.Function;
import javax.measure.Quantity;
import org.joda.money.Money;

/** Reads what an input may be: {@code triangular}, {@code pert}, {@code normal} or {@code list}, of numbers, quantities or money. */
final class SpreadReader {
    private static final List<String> SHAPES = List.of("triangular", "pert", "normal", "list");

    private SpreadReader() {}

    static Spread spread(Fields f) {
        for (String shape : SHAPES) {
            if (f.has(shape)) {
                JsonNode node = f.get(shape);
                List<Object> values = f.list(shape, SpreadReader::value);
                if (values.isEmpty() || !shape.equals("list") && values.size() != 3) {
                    throw node.refused(
                            shape.equals("list") ? "must hold at least one value" : "must hold three values",
                            shape.equals("normal") ? "Maybe [mean, deviation, least]." : "Maybe [least, most likely, greatest].");
                }
                return Fields.under(node, () -> of(shape, values));
            }
        }
        f.get("triangular");
        throw new IllegalStateException("an input without a shape is refused above");
    }

    private static Object value(JsonNode node) {
        if (node.scalar() instanceof String || node.scalar() instanceof BigDecimal) {
            return node.scalar();
        }
        throw node.refused("must be a number, or a quantity or money as a text", "Maybe quotation marks are missing.");
    }

    private static Spread of(String shape, List<Object> values) {
        if (values.stream().allMatch(BigDecimal.class::isInstance)) {
            double[] numbers = values.stream().mapToDouble(value -> ((BigDecimal) value).doubleValue()).toArray();
            return switch (shape) {
                case "triangular" -> Spread.triangular(numbers[0], numbers[1], numbers[2]);
                case "pert" -> Spread.pert(numbers[0], numbers[1], numbers[2]);
                case "normal" -> Spread.normal(numbers[0], numbers[1], numbers[2]);
                default -> Spread.list(numbers);
            };
        }
        List<String> texts = values.stream().map(Object::toString).toList();
        if (texts.get(0).matches("[A-Z]{3}\\b.*")) {
            return money(shape, texts.stream().map(Read::money).toList());
        }
        RefusedException last;
        try {
            return quantities(shape, texts, Read::time);
        } catch (RefusedException e) {
            last = e;
        }
        if (texts.get(0).contains("/")) {
            try {
                return quantities(shape, texts, Read::timePerArea);
            } catch (RefusedException e) {
                return quantities(shape, texts, Read::timePerLength);
            }
        }
        throw last;
    }

    private static <Q extends Quantity<Q>> Spread quantities(String shape, List<String> texts, Function<String, Quantity<Q>> reader) {
        List<Quantity<Q>> values = texts.stream().map(reader).toList();
        return switch (shape) {
            case "triangular" -> Spread.triangular(values.get(0), values.get(1), values.get(2));
            case "pert" -> Spread.pert(values.get(0), values.get(1), values.get(2));
            case "normal" -> Spread.normal(values.get(0), values.get(1), values.get(2));
            default -> Spread.list(values);
        };
    }

    private static Spread money(String shape, List<Money> values) {
        return switch (shape) {
            case "triangular" -> Spread.triangular(values.get(0), values.get(1), values.get(2));
            case "pert" -> Spread.pert(values.get(0), values.get(1), values.get(2));
            case "list" -> Spread.list(values.toArray(Money[]::new));
            default -> throw new RefusedException("range", values.toString(), "must be triangular, pert or a list for money", "Maybe a factor is normal.");
        };
    }
}
