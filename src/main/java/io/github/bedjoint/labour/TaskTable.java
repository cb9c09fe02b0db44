package io.github.bedjoint.labour;

import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.working.Source;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * The tasks of a shop, in order of work. {@link #defaults()} holds starting values without evidence; a shop replaces the table, or
 * single tasks of it, by its own. Immutable.
 */
public final class TaskTable {
    private static final TaskTable DEFAULTS = parse(resource("tasks.csv"));

    private final Map<String, Task> tasks;
    private final List<Task> inOrder;

    private TaskTable(Map<String, Task> tasks) {
        this.tasks = tasks;
        this.inOrder = List.copyOf(tasks.values());
    }

    /**
     * The table that comes with Bedjoint; each pace says that it is assumed or common practice.
     *
     * @return the default tasks
     */
    public static TaskTable defaults() {
        return DEFAULTS;
    }

    /**
     * A table of given tasks.
     *
     * @param tasks the tasks in order of work, each id once
     * @return the table
     * @throws RefusedException if an id stands twice
     */
    public static TaskTable of(Collection<Task> tasks) {
        Map<String, Task> byId = new LinkedHashMap<>();
        for (Task task : tasks) {
            if (byId.put(task.id(), task) != null) {
                throw new RefusedException("task", task.id() + " twice", "must have a name of its own", "Maybe a row was copied.");
            }
        }
        return new TaskTable(byId);
    }

    /**
     * Reads a table from comma-separated text with the columns {@code task, title, stage, driver, pace, people, machine, attended,
     * allowance, height, basis, source}.
     *
     * @param csv the text
     * @return the table
     * @throws RefusedException if it cannot be read; the message names row, column and value
     */
    public static TaskTable parse(String csv) {
        return TaskRows.read(csv);
    }

    /**
     * The same with a task added, or in place of the one with its id.
     *
     * @param task the task
     * @return a new table
     */
    public TaskTable with(Task task) {
        Map<String, Task> more = new LinkedHashMap<>(tasks);
        more.put(task.id(), task);
        return new TaskTable(more);
    }

    /**
     * The same with the shop's own pace for one task.
     *
     * @param id     the task
     * @param pace   the shop's pace
     * @param source where it comes from
     * @return a new table
     * @throws RefusedException if there is no such task, or the pace is not per its driver's unit
     */
    public TaskTable withPace(String id, Pace pace, Source source) {
        return with(task(id).withPace(pace, source));
    }

    /**
     * The same without a task.
     *
     * @param id the task
     * @return a new table
     * @throws RefusedException if there is no such task
     */
    public TaskTable without(String id) {
        Map<String, Task> fewer = new LinkedHashMap<>(tasks);
        fewer.remove(task(id).id());
        return new TaskTable(fewer);
    }

    /**
     * A task by its id.
     *
     * @param id the id
     * @return the task
     * @throws RefusedException if there is none
     */
    public Task task(String id) {
        Task task = tasks.get(id);
        if (task == null) {
            throw new RefusedException("task", "'" + id + "'", "must be one of " + String.join(", ", tasks.keySet()), "Maybe it is misspelt.");
        }
        return task;
    }

    /**
     * All tasks.
     *
     * @return the tasks in order of work
     */
    public List<Task> tasks() {
        return inOrder;
    }

    /**
     * The table as text that {@link #parse} reads back to an equal table.
     *
     * @return comma-separated lines
     */
    public String toCsv() {
        return TaskRows.write(tasks.values());
    }

    private static String resource(String name) {
        try (InputStream in = Objects.requireNonNull(TaskTable.class.getResourceAsStream(name), name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof TaskTable that && tasks().equals(that.tasks());
    }

    @Override
    public int hashCode() {
        return tasks().hashCode();
    }

    /** How many tasks: {@code 20 tasks}. */
    @Override
    public String toString() {
        return tasks.size() + " tasks";
    }
}
