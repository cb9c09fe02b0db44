package io.github.bedjoint.jobfile;

import io.github.bedjoint.units.CsvTable;
import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.Read;
import io.github.bedjoint.units.RefusedException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.apache.commons.lang3.StringUtils;

/** A table whose headings may carry a unit behind the column's name: {@code length mm}, {@code price EUR}. */
final class HeadedTable {
    private final String name;
    private final List<Row> rows = new ArrayList<>();

    private HeadedTable(String name) {
        this.name = name;
    }

    static HeadedTable parse(String name, String csv, List<String> needed, List<String> optional) {
        CsvTable table = CsvTable.parse(name, csv);
        Map<String, String> headings = new HashMap<>();
        Map<String, String> units = new HashMap<>();
        for (String heading : table.columns()) {
            String column = StringUtils.substringBefore(heading, " ");
            if (!needed.contains(column) && !optional.contains(column) || headings.put(column, heading) != null) {
                throw new RefusedException(
                        name + ", heading", "'" + heading + "'", "must be one of " + String.join(", ", needed) + ", " + String.join(", ", optional)
                                + ", each at most once, with its unit behind it or in the cells",
                        "Maybe it is misspelt.");
            }
            units.put(column, StringUtils.strip(StringUtils.substringAfter(heading, " "), " ()[]"));
        }
        for (String column : needed) {
            if (!headings.containsKey(column)) {
                throw new RefusedException(
                        name + ", heading", String.join(",", table.columns()), "must have a column '" + column + "'", "Maybe it has another name.");
            }
        }
        HeadedTable headed = new HeadedTable(name);
        table.rows().forEach(row -> headed.rows.add(new Row(row, headings, units)));
        if (headed.rows.isEmpty()) {
            throw new RefusedException(name, "without rows", "must have at least one row", "Maybe only the heading was saved.");
        }
        return headed;
    }

    List<Row> rows() {
        return rows;
    }

    void allOrNone(String column) {
        long given = rows.stream().filter(row -> !row.text(column).isEmpty()).count();
        for (Row row : rows) {
            if (given > 0 && row.text(column).isEmpty()) {
                throw row.refused(column, "must be given, since other rows give it", "Maybe leave the whole column empty.");
            }
        }
    }

    void unique(String column) {
        Set<String> seen = new HashSet<>();
        for (Row row : rows) {
            if (!seen.add(row.text(column))) {
                throw row.refused(column, "must differ from the rows above", "Maybe add the quantities up.");
            }
        }
    }

    /** A row; its refusals name row, column and value. */
    static final class Row {
        private final CsvTable.Row row;
        private final Map<String, String> headings;
        private final Map<String, String> units;

        private Row(CsvTable.Row row, Map<String, String> headings, Map<String, String> units) {
            this.row = row;
            this.headings = headings;
            this.units = units;
        }

        String text(String column) {
            return row.text(headings.getOrDefault(column, column));
        }

        /** The cell, with the heading's unit before or behind it where the cell itself has none. */
        private String withUnit(String column, boolean before) {
            String text = text(column);
            String unit = units.getOrDefault(column, "");
            boolean bare = !unit.isEmpty() && text.chars().noneMatch(c -> Character.isLetter(c) || c == '\'' || c == '"');
            return !bare ? text : before ? unit + " " + text : text + " " + unit;
        }

        double length(String column, Range range) {
            return made(column, () -> Door.lengthM(column, Read.length(withUnit(column, false)), range));
        }

        Quantity<Temperature> temperature(String column) {
            return made(column, () -> Read.temperature(withUnit(column, false)));
        }

        /** A share such as 0.55, or a percentage such as 55 %. */
        double share(String column) {
            String unit = units.getOrDefault(column, "");
            String number = StringUtils.stripEnd(text(column), " %");
            if (!unit.isEmpty() && !unit.equals("%") || !number.matches("\\d{1,3}(\\.\\d{1,9})?")) {
                throw refused(column, "must be a share such as 0.55 or a percentage such as 55 %", "Maybe a comma was used for the point.");
            }
            return Double.parseDouble(number) / (unit.equals("%") || text(column).endsWith("%") ? 100 : 1);
        }

        /** The cell with a currency in front of it, if cell or heading names one. */
        String price(String column) {
            return withUnit(column, true);
        }

        int count(String column, int low, int high) {
            return made(column, () -> {
                if (!text(column).matches("\\d{1,9}")) {
                    throw refused(column, "must be a whole number from " + low + " to " + high, "Maybe a size was given in place of a count.");
                }
                return Door.count(column, Integer.parseInt(text(column)), low, high);
            });
        }

        /** Yes or no, also as true or false and 1 or 0; an empty cell is no. */
        boolean isYes(String column) {
            return switch (text(column).toLowerCase(Locale.ROOT)) {
                case "yes", "true", "1" -> true;
                case "", "no", "false", "0" -> false;
                default -> throw refused(column, "must be yes or no", "Maybe an angle was given.");
            };
        }

        /** What a step makes of a cell; whatever refuses it is refused again under row and column. */
        <T> T made(String column, Supplier<T> step) {
            try {
                return step.get();
            } catch (RefusedException e) {
                throw e.parameter().equals(place(column)) ? e : refused(column, e.limit(), e.hint());
            }
        }

        RefusedException refused(String column, String limit, String hint) {
            return row.refused(headings.getOrDefault(column, column), limit, hint);
        }

        private String place(String column) {
            return row.place(headings.getOrDefault(column, column));
        }
    }
}
