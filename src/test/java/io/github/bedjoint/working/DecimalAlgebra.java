package io.github.bedjoint.working;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Evaluates a text of money with decimals, so that a rounding falls on the same side as in the library. */
record DecimalAlgebra(Map<String, BigDecimal> values) implements Expression.Algebra<BigDecimal> {
    private static final MathContext EXACT = MathContext.DECIMAL128;

    @Override
    public BigDecimal literal(String digits) {
        return new BigDecimal(digits);
    }

    @Override
    public BigDecimal name(String name) {
        BigDecimal value = values.get(name);
        if (value == null) {
            throw new IllegalArgumentException("no value for '" + name + "'");
        }
        return value;
    }

    @Override
    public BigDecimal operate(char operator, BigDecimal left, BigDecimal right) {
        return switch (operator) {
            case '+' -> left.add(right, EXACT);
            case '-' -> left.subtract(right, EXACT);
            case '*' -> left.multiply(right, EXACT);
            case '/' -> left.divide(right, EXACT);
            default -> throw new IllegalArgumentException("operator " + operator + " on money");
        };
    }

    @Override
    public BigDecimal negate(BigDecimal value) {
        return value.negate();
    }

    @Override
    public BigDecimal call(String function, List<BigDecimal> arguments) {
        BigDecimal x = arguments.get(0);
        if (function.startsWith("round_")) {
            RoundingMode mode = RoundingMode.valueOf(function.substring("round_".length()).toUpperCase(Locale.ROOT));
            return x.setScale(arguments.get(1).intValueExact(), mode);
        }
        return switch (function) {
            case "max" -> arguments.stream().reduce(BigDecimal::max).orElseThrow();
            case "min" -> arguments.stream().reduce(BigDecimal::min).orElseThrow();
            case "sig12" -> x.round(new MathContext(12, RoundingMode.HALF_EVEN));
            default -> throw new IllegalArgumentException("function " + function + " on money");
        };
    }
}
