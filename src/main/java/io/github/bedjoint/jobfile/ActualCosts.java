package io.github.bedjoint.jobfile;

import io.github.bedjoint.job.JobCost;
import io.github.bedjoint.price.CostLine;
import io.github.bedjoint.price.CostVariance;
import io.github.bedjoint.price.LineKind;
import io.github.bedjoint.units.CsvTable;
import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.PriceRate;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.Read;
import io.github.bedjoint.units.RefusedException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;

/**
 * What a job cost in the end, as a table {@code kind,title,quantity,rate}: a row for each line, a row {@code hours} with the person-hours in
 * its quantity, and a row {@code overhead} with the overhead as it was in its rate.
 *
 * <p>{@link #table} writes the estimate so, with all digits of its quantities: who changes nothing in it gets no variance. A line that never came is left out or
 * given the quantity 0; a line that nobody had estimated is one more row.
 */
public final class ActualCosts {
    private static final List<String> COLUMNS = List.of("kind", "title", "quantity", "rate");
    private static final String HOURS = "hours";
    private static final String OVERHEAD = "overhead";
    private static final Range QUANTITY = Range.closed(0, 1e12);
    private static final BigDecimal HOUR = BigDecimal.valueOf(3600);
    private static final int MOST_DIGITS = 20;

    private ActualCosts() {}

    /**
     * The estimate as a table to be changed into what the job cost in the end.
     *
     * @param cost the job costed, with a price
     * @return the table, its lines ended by a line feed
     * @throws IllegalStateException if the job has no price
     */
    public static String table(JobCost cost) {
        StringBuilder table = new StringBuilder(String.join(",", COLUMNS)).append('\n');
        for (CostLine line : cost.price().lines()) {
            row(table, Fields.word(line.kind()), line.title(), exact(line.rate().measure(), line.quantity()), line.rate().toString());
        }
        row(table, HOURS, "Person-hours", exact(Measure.TIME, cost.labour().totalPaidS()), "");
        row(table, OVERHEAD, "Overhead", "", cost.price().overhead().toString());
        return table.toString();
    }

    private static void row(StringBuilder table, String kind, String title, String quantity, String rate) {
        table.append(kind).append(',').append(CsvTable.defused(title)).append(',').append(quantity).append(',').append(rate).append('\n');
    }

    /** The shortest text that reads back as the same number: in a unit of daily use where one does, otherwise in the inner unit. */
    private static String exact(Measure measure, double inner) {
        BigDecimal number = BigDecimal.valueOf(inner);
        BigDecimal daily = switch (measure) {
            case TIME -> number.divide(HOUR, new MathContext(MOST_DIGITS));
            case VOLUME -> number.movePointRight(6);
            default -> number;
        };
        for (int digits = 4; digits <= MOST_DIGITS; digits++) {
            String text = plain(daily.round(new MathContext(digits))) + unit(measure, true);
            if (inner(measure, text) == inner) {
                return text;
            }
        }
        return plain(number) + unit(measure, false);
    }

    private static String unit(Measure measure, boolean daily) {
        return switch (measure) {
            case TIME -> daily ? " h" : " s";
            case VOLUME -> daily ? " mL" : " m3";
            case AREA -> " m2";
            case LENGTH -> " m";
            case MASS -> " kg";
            default -> "";
        };
    }

    private static String plain(BigDecimal number) {
        return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
    }

    /**
     * Compares what a job cost in the end with its estimate.
     *
     * @param cost the job costed, with a price
     * @param csv  the table of what it cost in the end
     * @return the variances, which add up to the difference exactly
     * @throws RefusedException if the table cannot be read; the message names row, column and value
     * @throws IllegalStateException if the job has no price
     */
    public static CostVariance variance(JobCost cost, String csv) {
        Set<String> titles = new HashSet<>();
        cost.price().lines().forEach(line -> titles.add(line.title()));
        List<CostLine> lines = new ArrayList<>();
        Double hoursS = null;
        Money overhead = null;
        for (CsvTable.Row row : CsvTable.parse("actual costs", csv).expecting(COLUMNS, List.of()).rows()) {
            String kind = row.text("kind");
            if (kind.equals(HOURS)) {
                hoursS = once(row, hoursS, at(row, "quantity", () -> inner(Measure.TIME, row.text("quantity"))));
            } else if (kind.equals(OVERHEAD)) {
                overhead = once(row, overhead, at(row, "rate", () -> Read.money(row.text("rate"))));
            } else {
                lines.add(line(row, titles, cost));
            }
        }
        if (hoursS == null || overhead == null) {
            throw new RefusedException("actual costs", "without a row " + (hoursS == null ? HOURS : OVERHEAD), "must have one",
                    "Maybe begin with the table of the estimate.");
        }
        return CostVariance.of(cost.price(), lines, Door.time(hoursS), overhead);
    }

    private static <T> T once(CsvTable.Row row, @Nullable Object before, T value) {
        if (before != null) {
            throw row.refused("kind", "must stand once", "Maybe add the two up.");
        }
        return value;
    }

    private static CostLine line(CsvTable.Row row, Set<String> titles, JobCost cost) {
        LineKind kind = Arrays.stream(LineKind.values())
                .filter(one -> Fields.word(one).equals(row.text("kind")))
                .findFirst()
                .orElseThrow(() -> row.refused(
                        "kind",
                        "must be one of " + Arrays.stream(LineKind.values()).map(Fields::word).toList() + ", " + HOURS + " or " + OVERHEAD,
                        "Maybe the spelling differs."));
        PriceRate<?> rate = at(row, "rate", () -> PriceRate.parse(row.text("rate")));
        double quantity = at(row, "quantity", () -> inner(rate.measure(), row.text("quantity")));
        return at(row, "title", () ->
                CostLine.ofInner(kind, title(row.text("title"), titles), quantity, rate, cost.job().rules().rounding()));
    }

    /** A title that a spreadsheet might have run stands behind an apostrophe in the table. */
    private static String title(String text, Set<String> titles) {
        return text.startsWith("'") && titles.contains(text.substring(1)) ? text.substring(1) : text;
    }

    private static double inner(Measure measure, String text) {
        return switch (measure) {
            case TIME -> Door.in(measure, "quantity", Read.time(text), QUANTITY);
            case VOLUME -> Door.in(measure, "quantity", Read.volume(text), QUANTITY);
            case AREA -> Door.in(measure, "quantity", Read.area(text), QUANTITY);
            case LENGTH -> Door.in(measure, "quantity", Read.length(text), QUANTITY);
            case MASS -> Door.in(measure, "quantity", Read.mass(text), QUANTITY);
            default -> count(text);
        };
    }

    private static double count(String text) {
        if (!text.matches("\\d{1,9}(\\.\\d{1,12})?")) {
            throw new RefusedException("quantity", "'" + text + "'", "must be a plain number", "Maybe the rate is per unit and not each.");
        }
        return Double.parseDouble(text);
    }

    /** Puts row and column in front of whatever refuses a cell. */
    private static <T> T at(CsvTable.Row row, String column, Supplier<T> made) {
        try {
            return made.get();
        } catch (RefusedException e) {
            throw e.within(row.place(column) + ": ");
        }
    }
}
