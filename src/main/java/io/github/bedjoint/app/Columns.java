package io.github.bedjoint.app;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.lang3.StringUtils;

/** Rows of text in columns as wide as their widest cell; columns marked so are set to the right. */
final class Columns {
    private final String indent;
    private final boolean[] right;
    private final List<String[]> rows = new ArrayList<>();

    /**
     * @param indent what stands before each row
     * @param marks  one letter a column: l for left, r for right
     */
    Columns(String indent, String marks) {
        this.indent = indent;
        right = new boolean[marks.length()];
        for (int i = 0; i < right.length; i++) {
            right[i] = marks.charAt(i) == 'r';
        }
    }

    Columns row(String... cells) {
        rows.add(cells);
        return this;
    }

    void print(StringBuilder out) {
        int[] widths = new int[right.length];
        for (String[] row : rows) {
            for (int i = 0; i < row.length; i++) {
                widths[i] = Math.max(widths[i], row[i].length());
            }
        }
        for (String[] row : rows) {
            StringBuilder line = new StringBuilder(indent);
            for (int i = 0; i < row.length; i++) {
                line.append(i == 0 ? "" : "  ").append(right[i] ? StringUtils.leftPad(row[i], widths[i]) : StringUtils.rightPad(row[i], widths[i]));
            }
            out.append(line.toString().stripTrailing()).append('\n');
        }
    }
}
