package io.github.bedjoint.labour;

import io.github.bedjoint.units.CsvTable;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.working.Source;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;

/** Reads and writes a task table as comma-separated text. */
final class TaskRows {
    private static final List<String> COLUMNS = List.of(
            "task", "title", "stage", "driver", "pace", "people", "machine", "attended", "allowance", "height", "basis", "source");

    private TaskRows() {}

    static TaskTable read(String csv) {
        List<Task> tasks = new ArrayList<>();
        for (CsvTable.Row row : CsvTable.parse("task table", csv).expecting(COLUMNS, List.of()).rows()) {
            Driver driver = constant(row, "driver", Driver.class);
            Pace pace = at(row, "pace", () -> Pace.parse(driver, row.text("pace")));
            Source source = at(row, "source", () -> new Source(constant(row, "basis", Source.Kind.class), row.text("source")));
            Stage stage = constant(row, "stage", Stage.class);
            Machine machine = constant(row, "machine", Machine.class);
            int people = whole(row, "people");
            double attended = row.number("attended");
            boolean allowed = yes(row, "allowance");
            boolean reached = yes(row, "height");
            Task task = at(row, "task", () -> new Task(
                    new TaskKind(row.text("task"), row.text("title"), stage, driver, people, machine, attended, allowed, reached), pace, source));
            if (tasks.stream().anyMatch(other -> other.id().equals(task.id()))) {
                throw row.refused("task", "must be a name of its own", "Maybe a row was copied.");
            }
            tasks.add(task);
        }
        return TaskTable.of(tasks);
    }

    static String write(Collection<Task> tasks) {
        StringBuilder out = new StringBuilder(String.join(",", COLUMNS)).append('\n');
        for (Task task : tasks) {
            List<String> fields = List.of(
                    task.id(),
                    task.title(),
                    task.stage().name(),
                    task.driver().name(),
                    task.pace().toString(),
                    Integer.toString(task.people()),
                    task.machine().name(),
                    new BigDecimal(Double.toString(task.attended())).stripTrailingZeros().toPlainString(),
                    task.allowed() ? "yes" : "no",
                    task.reached() ? "yes" : "no",
                    task.source().kind().name(),
                    task.source().citation());
            out.append(String.join(",", fields.stream().map(CsvTable::field).toList())).append('\n');
        }
        return out.toString();
    }

    private static <E extends Enum<E>> E constant(CsvTable.Row row, String column, Class<E> type) {
        String text = row.text(column).toUpperCase(Locale.ROOT);
        return Arrays.stream(type.getEnumConstants())
                .filter(constant -> constant.name().equals(text))
                .findFirst()
                .orElseThrow(() -> row.refused(column, "must be one of " + Arrays.toString(type.getEnumConstants()), "Maybe it is misspelt."));
    }

    private static int whole(CsvTable.Row row, String column) {
        if (!row.text(column).matches("\\d{1,4}")) {
            throw row.refused(column, "must be a whole number", "Maybe another column slipped in.");
        }
        return Integer.parseInt(row.text(column));
    }

    private static boolean yes(CsvTable.Row row, String column) {
        return switch (row.text(column)) {
            case "yes" -> true;
            case "no" -> false;
            default -> throw row.refused(column, "must be yes or no", "Maybe another column slipped in.");
        };
    }

    /** Puts row and column in front of whatever refuses a field. */
    private static <T> T at(CsvTable.Row row, String column, Supplier<T> made) {
        try {
            return made.get();
        } catch (RefusedException e) {
            throw e.within(row.place(column) + ": ");
        }
    }
}
