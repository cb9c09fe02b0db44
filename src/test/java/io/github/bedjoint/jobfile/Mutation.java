package io.github.bedjoint.jobfile;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;

/** The ways in which the value of a field goes wrong. */
enum Mutation {
    ABSENT,
    NULL,
    ARRAY,
    OBJECT,
    OTHER_SCALAR,
    BLANK,
    NEGATIVE,
    ZERO,
    HUGE,
    NAN,
    WRONG_UNIT,
    NEIGHBOUR;

    /** Changes the leaf at a path of a tree; false where this mutation says nothing of such a value. */
    boolean apply(Object tree, String path) {
        Object value = JsonTree.at(tree, path);
        Object changed = changed(value);
        if (this == ABSENT) {
            JsonTree.remove(tree, path);
        } else if (this == NEIGHBOUR) {
            if (path.endsWith("]")) {
                return false;
            }
            int dot = path.lastIndexOf('.');
            JsonTree.put(tree, (dot < 0 ? "" : path.substring(0, dot + 1)) + "neighbour", 1);
        } else if (this != NULL && changed == null) {
            return false;
        } else {
            JsonTree.put(tree, path, changed);
        }
        return true;
    }

    private Object changed(Object value) {
        boolean isNumber = value instanceof BigDecimal;
        String text = value instanceof String given && given.matches("([A-Z]{3} )?\\d.*") && !given.matches("\\d+[-:].*") ? given : null;
        return switch (this) {
            case ARRAY -> List.of();
            case OBJECT -> Map.of();
            case OTHER_SCALAR -> value instanceof String ? (Object) 7 : isNumber ? value.toString() : "yes";
            case BLANK -> value instanceof String ? " " : null;
            case NEGATIVE -> isNumber ? negative((BigDecimal) value) : text == null ? null : text.replaceFirst("\\d", "-$0");
            case ZERO -> isNumber ? (Object) 0 : text == null ? null : text.replaceFirst("[\\d./]+( \\d+/\\d+)?", "0");
            case HUGE -> isNumber
                    ? (Object) new BigDecimal("1e30")
                    : text == null ? null : text.replaceFirst("[\\d./]+( \\d+/\\d+)?", "99999999999999999");
            case NAN -> isNumber ? "NaN" : text == null ? null : text.replaceFirst("[\\d./]+( \\d+/\\d+)?", "NaN");
            case WRONG_UNIT -> text == null ? null : text.matches("[A-Z]{3} .*") ? "JPY" + text.substring(3).replaceAll("\\.\\d+", "") : text.replaceFirst("[a-zA-Z/%]+\\d?$", "lx");
            default -> null;
        };
    }

    private static BigDecimal negative(BigDecimal number) {
        return number.signum() == 0 ? BigDecimal.ONE.negate() : number.negate();
    }
}
