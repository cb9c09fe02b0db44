package io.github.bedjoint.units;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.apache.commons.lang3.StringUtils;

/**
 * A table written as comma-separated text (RFC 4180): a first line of column names, then rows; quotes around a field that holds a
 * comma, a quote (doubled) or a line break. Lines that begin with {@code #} and empty lines are passed over.
 *
 * <p>A refusal names the row as a text editor counts lines, the column and the value. Immutable.
 */
public final class CsvTable {
    /** More than any cell, heading or table of ours needs, and little enough that none is a way to fill memory or time. */
    private static final int LONGEST_CELL = 10_000;

    private static final int MOST_COLUMNS = 200;
    private static final int MOST_ROWS = 200_000;

    private final String name;
    private final List<String> columns;
    private final List<Row> rows;

    private CsvTable(String name, List<String> columns, List<Row> rows) {
        this.name = name;
        this.columns = columns;
        this.rows = rows;
    }

    /**
     * Reads a table.
     *
     * @param name what the table is, for a refusal, such as {@code task table}
     * @param text the text
     * @return the table
     * @throws RefusedException if there is no heading, a column stands twice, a row has too many or too few fields, a quote is left open, or it
     *     has more than 200 columns, 200,000 rows or 10,000 characters in a cell
     */
    public static CsvTable parse(String name, String text) {
        List<Row> lines = new Scanner(name, text).lines();
        if (lines.isEmpty()) {
            throw new RefusedException(name, "empty", "must have a first line with the names of the columns", "Maybe the file is another one.");
        }
        List<String> columns = lines.get(0).fields.stream().map(String::strip).toList();
        Set<String> seen = new HashSet<>();
        for (String column : columns) {
            if (!seen.add(column)) {
                throw new RefusedException(name + ", heading", "'" + column + "' twice", "must name each column once", "Maybe a column was pasted again.");
            }
        }
        List<Row> rows = new ArrayList<>();
        for (Row line : lines.subList(1, lines.size())) {
            if (line.fields.size() != columns.size()) {
                throw new RefusedException(
                        name + ", row " + line.number,
                        line.fields.size() + " fields",
                        "must have " + columns.size() + ", as the heading has",
                        "Maybe a comma is not within quotes.");
            }
            rows.add(new Row(name, line.number, columns, line.fields));
        }
        return new CsvTable(name, columns, List.copyOf(rows));
    }

    /**
     * Refuses a table that lacks a column or has one that is not known.
     *
     * @param needed   columns that must be there
     * @param optional columns that may be there
     * @return this table
     * @throws RefusedException if a column is missing or unknown
     */
    public CsvTable expecting(List<String> needed, List<String> optional) {
        for (String column : needed) {
            if (!columns.contains(column)) {
                throw new RefusedException(name + ", heading", String.join(",", columns), "must have a column '" + column + "'", "Maybe it has another name.");
            }
        }
        for (String column : columns) {
            if (!needed.contains(column) && !optional.contains(column)) {
                throw new RefusedException(
                        name + ", heading", "'" + column + "'", "must be one of " + String.join(", ", needed) + (optional.isEmpty() ? "" : ", or of " + String.join(", ", optional)),
                        "Maybe it is misspelt.");
            }
        }
        return this;
    }

    /**
     * The column names in their order.
     *
     * @return the names
     */
    public List<String> columns() {
        return columns;
    }

    /**
     * The rows below the heading.
     *
     * @return the rows in their order
     */
    public List<Row> rows() {
        return rows;
    }

    /**
     * A text as a field of such a table, quoted where it must be.
     *
     * @param text the text
     * @return the field
     */
    public static String field(String text) {
        return StringUtils.containsAny(text, ',', '"', '\n', '\r') || text.startsWith("#") ? '"' + text.replace("\"", "\"\"") + '"' : text;
    }

    /**
     * A text as a field for people who open the table in a spreadsheet: what begins like a formula is defused by an apostrophe.
     *
     * @param text the text
     * @return the field
     */
    public static String defused(String text) {
        return field(!text.isEmpty() && "=+-@\t\r".indexOf(text.charAt(0)) >= 0 ? "'" + text : text);
    }

    /** A row of a table. */
    public static final class Row {
        private final String table;
        private final int number;
        private final List<String> columns;
        private final List<String> fields;

        private Row(String table, int number, List<String> columns, List<String> fields) {
            this.table = table;
            this.number = number;
            this.columns = columns;
            this.fields = fields;
        }

        /**
         * The field in a column, without blanks around it.
         *
         * @param column the column's name
         * @return the text, empty where the table has no such column
         */
        public String text(String column) {
            int at = columns.indexOf(column);
            return at < 0 ? "" : fields.get(at).strip();
        }

        /**
         * The field in a column as a number written with a point.
         *
         * @param column the column's name
         * @return the number
         * @throws RefusedException if it is not a finite number
         */
        public double number(String column) {
            if (!text(column).matches("[-+]?(\\d+(\\.\\d*)?|\\.\\d+)([eE][-+]?\\d{1,3})?")) {
                throw refused(column, "must be a number written with a point", "Maybe a comma was used for the point.");
            }
            return Double.parseDouble(text(column));
        }

        /**
         * A refusal of a field.
         *
         * @param column the column's name
         * @param limit  what was expected, as the end of a sentence
         * @param hint   advice that begins "Maybe"
         * @return the refusal, to be thrown
         */
        public RefusedException refused(String column, String limit, String hint) {
            return new RefusedException(place(column), "'" + StringUtils.abbreviate(text(column), 60) + "'", limit, hint);
        }

        /**
         * Where a field stands, for a refusal.
         *
         * @param column the column's name
         * @return such as {@code task table, row 7, column pace}
         */
        public String place(String column) {
            return table + ", row " + number + ", column " + column;
        }
    }

    /** Splits the text into lines of fields. */
    private static final class Scanner {
        private final String name;
        private final String text;
        private int at;
        private int line = 1;

        Scanner(String name, String text) {
            this.name = name;
            this.text = text.startsWith("\uFEFF") ? text.substring(1) : text;
        }

        List<Row> lines() {
            List<Row> lines = new ArrayList<>();
            while (at < text.length()) {
                int number = line;
                if (text.charAt(at) == '#') {
                    int end = text.indexOf('\n', at);
                    at = end < 0 ? text.length() : end + 1;
                    line++;
                    continue;
                }
                List<String> fields = fields();
                if (fields.size() > 1 || !StringUtils.isBlank(fields.get(0))) {
                    most("rows", lines.size(), MOST_ROWS);
                    lines.add(new Row(name, number, List.of(), fields));
                }
            }
            return lines;
        }

        private void most(String what, int count, int most) {
            if (count > most) {
                throw new RefusedException(name + ", row " + line, count + " " + what, "must be at most " + most, "Maybe a quote or a line feed is missing.");
            }
        }

        private List<String> fields() {
            List<String> fields = new ArrayList<>();
            StringBuilder field = new StringBuilder();
            boolean quoted = false;
            boolean isBlank = true;
            int opened = line;
            while (at < text.length()) {
                most("characters in a cell", field.length(), LONGEST_CELL);
                char c = text.charAt(at++);
                if (c == '\n') {
                    line++;
                }
                if (quoted && c == '"' && at < text.length() && text.charAt(at) == '"') {
                    field.append(c);
                    isBlank = false;
                    at++;
                } else if (c == '"' && (quoted || isBlank)) {
                    quoted = !quoted;
                    opened = line;
                } else if (!quoted && c == ',') {
                    most("columns", fields.size() + 2, MOST_COLUMNS);
                    fields.add(field.toString());
                    field.setLength(0);
                    isBlank = true;
                } else if (!quoted && c == '\n') {
                    break;
                } else if (c != '\r' || quoted) {
                    field.append(c);
                    isBlank &= Character.isWhitespace(c);
                }
            }
            if (quoted) {
                throw new RefusedException(name + ", row " + opened, "an open quote", "must be closed", "Maybe a quote within a field was not doubled.");
            }
            fields.add(field.toString());
            return fields;
        }
    }
}
