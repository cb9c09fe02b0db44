package io.github.bedjoint.working;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A parsed right-hand side. It knows nothing of numbers: an {@link Algebra} says what the operations mean, so that the same text is
 * evaluated with doubles, with decimals and with units.
 */
final class Expression {
    /** What the operations mean for one kind of value. */
    interface Algebra<T> {
        T literal(String digits);

        T name(String name);

        T operate(char operator, T left, T right);

        T negate(T value);

        T call(String function, List<T> arguments);
    }

    private interface Node {
        <T> T walk(Algebra<T> algebra);
    }

    private static final Pattern TOKEN =
            Pattern.compile("\\s*(?:([0-9]+(?:\\.[0-9]+)?)|([A-Za-z][A-Za-z0-9_]*)|([-+*/^(),]))");

    private final List<String> tokens = new ArrayList<>();
    private final Set<String> names = new LinkedHashSet<>();
    private final Node root;
    private int at;

    private Expression(String text) {
        Matcher matcher = TOKEN.matcher(text.stripTrailing());
        int end = 0;
        while (end < text.stripTrailing().length()) {
            if (!matcher.find(end) || matcher.start() != end) {
                throw new IllegalArgumentException("cannot read '" + text.substring(end) + "' in: " + text);
            }
            tokens.add(matcher.group().strip());
            end = matcher.end();
        }
        root = sum();
        if (at != tokens.size()) {
            throw new IllegalArgumentException("unexpected '" + tokens.get(at) + "' in: " + text);
        }
    }

    static Expression parse(String text) {
        return new Expression(text);
    }

    /** The letters used, functions and pi left out. */
    Set<String> names() {
        return names;
    }

    <T> T walk(Algebra<T> algebra) {
        return root.walk(algebra);
    }

    private Node sum() {
        Node left = product();
        while (next("+") || next("-")) {
            left = operation(tokens.get(at - 1).charAt(0), left, product());
        }
        return left;
    }

    private Node product() {
        Node left = signed();
        while (next("*") || next("/")) {
            left = operation(tokens.get(at - 1).charAt(0), left, signed());
        }
        return left;
    }

    private Node signed() {
        if (next("-")) {
            Node value = signed();
            return new Node() {
                @Override
                public <T> T walk(Algebra<T> algebra) {
                    return algebra.negate(value.walk(algebra));
                }
            };
        }
        Node base = atom();
        return next("^") ? operation('^', base, signed()) : base;
    }

    private Node atom() {
        if (next("(")) {
            Node inside = sum();
            expect(")");
            return inside;
        }
        if (at == tokens.size()) {
            throw new IllegalArgumentException("the text ends too soon");
        }
        String token = tokens.get(at++);
        if (Character.isDigit(token.charAt(0))) {
            return new Node() {
                @Override
                public <T> T walk(Algebra<T> algebra) {
                    return algebra.literal(token);
                }
            };
        }
        if (!Character.isLetter(token.charAt(0))) {
            throw new IllegalArgumentException("unexpected '" + token + "'");
        }
        return next("(") ? function(token) : name(token);
    }

    private Node function(String function) {
        List<Node> arguments = new ArrayList<>();
        do {
            arguments.add(sum());
        } while (next(","));
        expect(")");
        return new Node() {
            @Override
            public <T> T walk(Algebra<T> algebra) {
                List<T> values = new ArrayList<>();
                arguments.forEach(argument -> values.add(argument.walk(algebra)));
                return algebra.call(function, values);
            }
        };
    }

    private Node name(String name) {
        if (!name.equals("pi")) {
            names.add(name);
        }
        return new Node() {
            @Override
            public <T> T walk(Algebra<T> algebra) {
                return algebra.name(name);
            }
        };
    }

    private static Node operation(char operator, Node left, Node right) {
        return new Node() {
            @Override
            public <T> T walk(Algebra<T> algebra) {
                return algebra.operate(operator, left.walk(algebra), right.walk(algebra));
            }
        };
    }

    private boolean next(String token) {
        if (at < tokens.size() && tokens.get(at).equals(token)) {
            at++;
            return true;
        }
        return false;
    }

    private void expect(String token) {
        if (!next(token)) {
            throw new IllegalArgumentException("'" + token + "' is missing");
        }
    }
}
