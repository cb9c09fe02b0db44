package io.github.bedjoint.working;

import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.ShopUnits;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javax.measure.Unit;
import org.apache.commons.lang3.math.NumberUtils;

/**
 * Walks a text with JSR-385 units. Sums, comparisons and roundings want equal units, so that metres cannot be added to steps; functions
 * of an angle or a logarithm want a plain number. An exponent must be a literal, since the unit depends on it.
 */
record UnitAlgebra(Map<String, Unit<?>> units) implements Expression.Algebra<UnitAlgebra.Walked> {
    private static final Set<String> SAME = Set.of("max", "min", "abs");
    private static final Set<String> PLAIN =
            Set.of("acos", "asin", "atan", "ceil", "cos", "exp", "floor", "ln", "sin", "tan");

    /** A unit, and the number where the value is a literal. */
    record Walked(Unit<?> unit, String digits) {}

    @Override
    public Walked literal(String digits) {
        return new Walked(ShopUnits.ONE, digits);
    }

    @Override
    public Walked name(String name) {
        Unit<?> unit = name.equals("pi") ? ShopUnits.ONE : units.get(name);
        if (unit == null) {
            throw new IllegalArgumentException("no unit for '" + name + "'");
        }
        return new Walked(unit, "");
    }

    @Override
    public Walked operate(char operator, Walked left, Walked right) {
        return switch (operator) {
            case '+', '-' -> same(List.of(left, right));
            case '*' -> new Walked(left.unit().multiply(right.unit()), "");
            case '/' -> new Walked(left.unit().divide(right.unit()), "");
            case '^' -> power(left, right);
            default -> throw new IllegalArgumentException("operator " + operator);
        };
    }

    private static Walked power(Walked base, Walked exponent) {
        if (isPlain(base) && isPlain(exponent)) {
            return base;
        }
        if (!NumberUtils.isDigits(exponent.digits())) {
            throw new IllegalArgumentException("a unit to the power of something that is no literal");
        }
        return new Walked(base.unit().pow(Integer.parseInt(exponent.digits())), "");
    }

    @Override
    public Walked negate(Walked value) {
        return new Walked(value.unit(), "");
    }

    @Override
    public Walked call(String function, List<Walked> arguments) {
        if (SAME.contains(function)) {
            return same(arguments);
        }
        // Steps are counted, so they can be made whole; any other unit cannot.
        if ((function.equals("ceil") || function.equals("floor")) && equal(arguments.get(0).unit(), Measure.STEPS.unit())) {
            return new Walked(arguments.get(0).unit(), "");
        }
        if (PLAIN.contains(function)) {
            arguments.forEach(argument -> {
                if (!isPlain(argument)) {
                    throw new IllegalArgumentException(function + " of " + argument.unit());
                }
            });
            return new Walked(ShopUnits.ONE, "");
        }
        if (function.equals("sqrt")) {
            return new Walked(arguments.get(0).unit().root(2), "");
        }
        if (function.equals("sum") || function.equals("sig12") || function.startsWith("round_")) {
            return new Walked(arguments.get(0).unit(), "");
        }
        throw new IllegalArgumentException("function " + function);
    }

    /** Zero may be added to or compared with anything; everything else must have the same unit. */
    private static Walked same(List<Walked> values) {
        List<Walked> sized = values.stream().filter(value -> !value.digits().equals("0")).toList();
        if (sized.isEmpty()) {
            return values.get(0);
        }
        Walked first = sized.get(0);
        for (Walked value : sized) {
            if (!equal(first.unit(), value.unit())) {
                throw new IllegalArgumentException(first.unit() + " with " + value.unit());
            }
        }
        return new Walked(first.unit(), "");
    }

    private static boolean isPlain(Walked value) {
        return equal(value.unit(), ShopUnits.ONE);
    }

    static boolean equal(Unit<?> left, Unit<?> right) {
        Unit<?> ratio = left.divide(right);
        return ratio.equals(ShopUnits.ONE) || ratio.getSystemUnit().equals(ShopUnits.ONE) && scale(ratio) == 1;
    }

    private static double scale(Unit<?> unit) {
        try {
            return unit.getConverterToAny(ShopUnits.ONE).convert(1.0);
        } catch (javax.measure.IncommensurableException e) {
            throw new IllegalArgumentException(unit.toString(), e);
        }
    }
}
