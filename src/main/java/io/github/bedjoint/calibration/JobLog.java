package io.github.bedjoint.calibration;

import io.github.bedjoint.labour.Amounts;
import io.github.bedjoint.units.CsvTable;
import io.github.bedjoint.labour.Driver;
import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.Read;
import io.github.bedjoint.units.RefusedException;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The jobs a shop has done, and the drivers by which it explains their hours. Immutable. */
public final class JobLog {
    private static final int MOST_JOBS = 2_000;
    private static final Pattern COLUMN = Pattern.compile("([a-z_]+)(?: *\\[([^\\]]+)\\])?");

    private final List<Driver> drivers;
    private final List<LogEntry> entries;

    private JobLog(List<Driver> drivers, List<LogEntry> entries) {
        this.drivers = drivers;
        this.entries = entries;
    }

    /**
     * A log of given jobs.
     *
     * @param drivers what the hours are to be explained by, each once
     * @param entries the jobs, at most 2 000
     * @return the log
     * @throws RefusedException if a driver stands twice or there are too many jobs
     */
    public static JobLog of(List<Driver> drivers, List<LogEntry> entries) {
        Door.count("drivers of the log", drivers.size(), 1, Driver.values().length);
        Door.count("jobs in the log", entries.size(), 0, MOST_JOBS);
        if (drivers.stream().distinct().count() != drivers.size()) {
            throw new RefusedException("drivers of the log", drivers.toString(), "must stand once each", "Maybe a column was pasted again.");
        }
        return new JobLog(List.copyOf(drivers), List.copyOf(entries));
    }

    /**
     * Reads a log from comma-separated text: columns {@code job} and {@code hours}, if you like {@code date} (as 2026-03-31) and {@code weight}, and one column for each
     * driver, named as in {@link Driver} in small letters, with a unit in brackets where it is not m2 or m: {@code heated_area [ft2]}. Hours may be {@code hours [min]}.
     *
     * @param csv the text
     * @return the log
     * @throws RefusedException if it cannot be read; the message names row, column and value
     */
    public static JobLog parse(String csv) {
        CsvTable table = CsvTable.parse("job log", csv);
        Map<String, Driver> drivers = new LinkedHashMap<>();
        String hours = "";
        for (String column : table.columns()) {
            Matcher matcher = COLUMN.matcher(column);
            String name = matcher.matches() ? matcher.group(1) : column;
            if (name.equals("hours")) {
                hours = column;
            } else if (!List.of("job", "date", "weight").contains(column)) {
                drivers.put(column, driver(name, column));
            }
        }
        List<String> needed = new ArrayList<>(List.of("job", hours.isEmpty() ? "hours" : hours));
        table.expecting(needed, Arrays.asList(concat(drivers)));
        List<LogEntry> entries = new ArrayList<>();
        for (CsvTable.Row row : table.rows()) {
            entries.add(entry(row, hours, drivers));
        }
        return of(List.copyOf(drivers.values()), entries);
    }

    private static String[] concat(Map<String, Driver> drivers) {
        List<String> all = new ArrayList<>(List.of("date", "weight"));
        all.addAll(drivers.keySet());
        return all.toArray(String[]::new);
    }

    private static Driver driver(String name, String column) {
        return Arrays.stream(Driver.values())
                .filter(driver -> driver.name().equals(name.toUpperCase(Locale.ROOT)))
                .findFirst()
                .orElseThrow(() -> new RefusedException(
                        "job log, heading", "'" + column + "'", "must be job, hours, date, weight, or one of " + Arrays.toString(Driver.values()).toLowerCase(Locale.ROOT), "Maybe it is misspelt."));
    }

    private static LogEntry entry(CsvTable.Row row, String hours, Map<String, Driver> drivers) {
        try {
            Amounts amounts = Amounts.none();
            for (Map.Entry<String, Driver> column : drivers.entrySet()) {
                amounts = amounts.withInner(column.getValue(), inner(row, column.getKey(), column.getValue().measure()));
            }
            double weight = row.text("weight").isEmpty() ? 1 : row.number("weight");
            return new LogEntry(row.text("job"), amounts, inner(row, hours, Measure.TIME), weight, date(row));
        } catch (RefusedException e) {
            throw e.parameter().startsWith("job log, row") ? e : e.within(row.place("job") + ": ");
        }
    }

    /** A number of a column in the inner unit, by the unit in the column's heading. */
    private static double inner(CsvTable.Row row, String column, Measure measure) {
        Matcher matcher = COLUMN.matcher(column);
        String unit = matcher.matches() && matcher.group(2) != null ? matcher.group(2) : "";
        double one = switch (measure) {
            case AREA -> unit.isEmpty() ? 1 : Door.areaM2(column, Read.area("1 " + unit), Range.POSITIVE);
            case LENGTH -> unit.isEmpty() ? 1 : Door.lengthM(column, Read.length("1 " + unit), Range.POSITIVE);
            case TIME -> Door.timeS(column, Read.time("1 " + (unit.isEmpty() ? "h" : unit)), Range.above(0, 1e6));
            default -> 1;
        };
        return row.number(column) * one;
    }

    private static Optional<LocalDate> date(CsvTable.Row row) {
        try {
            return row.text("date").isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(row.text("date")));
        } catch (DateTimeParseException e) {
            throw row.refused("date", "must be a date such as 2026-03-31", "Maybe day and year are the other way round.");
        }
    }

    /**
     * What the hours are explained by.
     *
     * @return the drivers in the order of the columns
     */
    public List<Driver> drivers() {
        return drivers;
    }

    /**
     * The jobs.
     *
     * @return the entries in their order
     */
    public List<LogEntry> entries() {
        return entries;
    }

    /**
     * The jobs that were done on a day or later; jobs without a date are left out.
     *
     * @param day the first day
     * @return a smaller log
     */
    public JobLog since(LocalDate day) {
        return new JobLog(drivers, entries.stream().filter(entry -> entry.date().filter(date -> !date.isBefore(day)).isPresent()).toList());
    }

    /** How many jobs and which drivers: {@code 12 jobs by [HEATED_AREA, SEAM]}. */
    @Override
    public String toString() {
        return entries.size() + " jobs by " + drivers;
    }
}
