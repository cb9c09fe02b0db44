package io.github.bedjoint.working;

import java.util.List;
import java.util.Map;

/** Evaluates a text with doubles. */
record DoubleAlgebra(Map<String, Double> values) implements Expression.Algebra<Double> {
    @Override
    public Double literal(String digits) {
        return Double.valueOf(digits);
    }

    @Override
    public Double name(String name) {
        if (name.equals("pi")) {
            return Math.PI;
        }
        Double value = values.get(name);
        if (value == null) {
            throw new IllegalArgumentException("no value for '" + name + "'");
        }
        return value;
    }

    @Override
    public Double operate(char operator, Double left, Double right) {
        return switch (operator) {
            case '+' -> left + right;
            case '-' -> left - right;
            case '*' -> left * right;
            case '/' -> left / right;
            case '^' -> Math.pow(left, right);
            default -> throw new IllegalArgumentException("operator " + operator);
        };
    }

    @Override
    public Double negate(Double value) {
        return -value;
    }

    @Override
    public Double call(String function, List<Double> arguments) {
        double x = arguments.get(0);
        return switch (function) {
            case "abs" -> Math.abs(x);
            case "acos" -> Math.acos(x);
            case "asin" -> Math.asin(x);
            case "atan" -> Math.atan(x);
            case "ceil" -> Math.ceil(x);
            case "cos" -> Math.cos(x);
            case "exp" -> Math.exp(x);
            case "floor" -> Math.floor(x);
            case "ln" -> Math.log(x);
            case "max" -> arguments.stream().mapToDouble(v -> v).max().orElseThrow();
            case "min" -> arguments.stream().mapToDouble(v -> v).min().orElseThrow();
            case "sin" -> Math.sin(x);
            case "sqrt" -> Math.sqrt(x);
            case "tan" -> Math.tan(x);
            default -> throw new IllegalArgumentException("function " + function);
        };
    }
}
