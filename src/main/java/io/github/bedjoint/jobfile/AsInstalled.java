package io.github.bedjoint.jobfile;

import io.github.bedjoint.conditions.SiteCheck;
import io.github.bedjoint.conditions.SiteConditions;
import io.github.bedjoint.conditions.Substrate;
import io.github.bedjoint.job.JobCost;
import io.github.bedjoint.layout.Panel;
import io.github.bedjoint.layout.PanelLayout;
import io.github.bedjoint.units.CsvTable;
import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.Steps;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Verdict.Level;
import io.github.bedjoint.working.Verdict;
import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.TemporalAccessor;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * How each panel was installed, as a table {@code wall,panel,lot,air,humidity,surface,at,people}: the lot of its film, the temperatures of air and
 * surface, the relative humidity as a share or in percent, date and time (without a zone at the place of the job), and how many people hung it.
 *
 * <p>{@link #table} writes the table for the crew to fill in. What was not written down may stay empty and is told; a row with nothing in it is no record.
 */
public final class AsInstalled {
    private static final List<String> PLACE = List.of("wall", "panel");
    private static final List<String> RECORD = List.of("lot", "air", "humidity", "surface", "at", "people");
    private static final Source KEPT = Source.practice("a record of lots, weather, time and crew is kept for each panel");
    private static final Source ONE_LOT = Source.practice("panels of one wall from one lot, for colour and finish");

    private AsInstalled() {}

    private record Row(Panel panel, String lot, SiteConditions weather, @Nullable LocalDateTime at, int people) {
        boolean isMeasured() {
            return weather.dewPoint().isPresent() && weather.surface().isPresent();
        }
    }

    /**
     * The table with a row for each panel in the order of application, nothing filled in.
     *
     * @param cost the job costed
     * @return the table, its lines ended by a line feed; a heading only where nothing could be laid out
     */
    public static String table(JobCost cost) {
        StringBuilder table = new StringBuilder(String.join(",", PLACE)).append(',').append(String.join(",", RECORD)).append('\n');
        for (PanelLayout layout : cost.layouts()) {
            for (Panel panel : layout.panels()) {
                table.append(CsvTable.defused(panel.wall())).append(',').append(panel.number()).append(",".repeat(RECORD.size())).append('\n');
            }
        }
        return table.toString();
    }

    /**
     * Compares a record with the job: for each wall whether all panels are recorded, whether they come from one lot, whether the surface was far
     * enough above the dew point and within the film's limits, and whether panels for two people were hung by two.
     *
     * @param cost the job costed
     * @param csv  the record
     * @return a verdict for each wall and question; of the panels of a wall the gravest counts
     * @throws RefusedException if the table cannot be read or names a panel that the job does not have; the message names row, column and value
     */
    public static List<Verdict> check(JobCost cost, String csv) {
        HeadedTable table = HeadedTable.parse("record", csv, PLACE, RECORD);
        ZoneId zone = cost.job().dates().map(dates -> dates.calendar().zone()).orElse(ZoneOffset.UTC);
        Set<Panel> seen = new HashSet<>();
        Map<Panel, Row> rows = new HashMap<>();
        for (HeadedTable.Row row : table.rows()) {
            Panel panel = panel(cost, row);
            if (!seen.add(panel)) {
                throw row.refused("panel", "must stand in one row only", "Maybe another panel was meant.");
            }
            if (RECORD.stream().anyMatch(column -> !row.text(column).isEmpty())) {
                rows.put(panel, row(panel, row, zone));
            }
        }
        List<Verdict> verdicts = new ArrayList<>();
        for (PanelLayout layout : cost.layouts()) {
            List<Row> own = layout.panels().stream().map(rows::get).filter(Objects::nonNull).toList();
            verdicts.add(recorded(layout, own));
            if (!own.isEmpty()) {
                verdicts.add(lots(layout, own));
                verdicts.addAll(weather(layout, own));
            }
            cost.job().twoPeopleFrom().ifPresent(from -> alone(layout, own, Steps.up(Door.lengthM("two people from", from, Range.POSITIVE)), verdicts));
        }
        return verdicts;
    }

    private static Panel panel(JobCost cost, HeadedTable.Row row) {
        String wall = row.text("wall");
        PanelLayout layout = cost.layouts().stream()
                .filter(one -> one.wall().name().equals(wall) || CsvTable.defused(one.wall().name()).equals(wall))
                .findFirst()
                .orElseThrow(() -> row.refused("wall", "must be a wall of the job", "Maybe it is misspelt."));
        int number = row.count("panel", 1, 1_000_000);
        return layout.panels().stream()
                .filter(panel -> panel.number() == number)
                .findFirst()
                .orElseThrow(() -> row.refused("panel", "must be a panel of " + wall + ", 1 to " + layout.panels().size(), "Maybe it belongs to another wall."));
    }

    private static Row row(Panel panel, HeadedTable.Row row, ZoneId zone) {
        // The rules of the weather ask nothing of the substrate.
        SiteConditions weather = SiteConditions.indoor(Substrate.BRICK);
        for (String[] pair : new String[][] {{"air", "humidity"}, {"humidity", "air"}}) {
            if (row.text(pair[0]).isEmpty() && !row.text(pair[1]).isEmpty()) {
                throw row.refused(pair[0], "must be given, since " + pair[1] + " is", "Maybe a column slipped.");
            }
        }
        if (!row.text("air").isEmpty()) {
            double humidity = row.made("humidity", () -> Door.number("humidity", row.share("humidity"), Range.above(0, 1)));
            SiteConditions bare = weather;
            weather = row.made("air", () -> bare.withAir(row.temperature("air"), humidity));
        }
        if (!row.text("surface").isEmpty()) {
            SiteConditions aired = weather;
            weather = row.made("surface", () -> aired.withSurface(row.temperature("surface")));
        }
        return new Row(panel, row.text("lot"), weather, at(row, zone), row.text("people").isEmpty() ? 0 : row.count("people", 1, 50));
    }

    /** Local time at the place of the job; a time with a zone is brought there. */
    private static @Nullable LocalDateTime at(HeadedTable.Row row, ZoneId zone) {
        try {
            return row.text("at").isEmpty() ? null : local(DateTimeFormatter.ISO_DATE_TIME.parseBest(row.text("at"), ZonedDateTime::from, LocalDateTime::from), zone);
        } catch (DateTimeException e) {
            throw row.refused("at", "must be a date and time such as 2027-04-19T10:30", "Maybe the T between them is missing.");
        }
    }

    private static LocalDateTime local(TemporalAccessor moment, ZoneId zone) {
        return moment instanceof ZonedDateTime zoned ? zoned.withZoneSameInstant(zone).toLocalDateTime() : LocalDateTime.from(moment);
    }

    private static Verdict recorded(PanelLayout layout, List<Row> rows) {
        String subject = subject(layout, "record");
        List<String> missing = layout.panels().stream()
                .filter(panel -> rows.stream().noneMatch(row -> row.panel().equals(panel)))
                .map(panel -> Integer.toString(panel.number()))
                .toList();
        if (!missing.isEmpty()) {
            return new Verdict(Level.CAUTION, subject, "not recorded of " + layout.panels().size() + " panels: " + String.join(", ", missing), KEPT);
        }
        TreeSet<LocalDateTime> times = rows.stream().map(Row::at).filter(Objects::nonNull).collect(Collectors.toCollection(TreeSet::new));
        String untimed = numbers(rows, row -> row.at() == null);
        return untimed.isEmpty()
                ? new Verdict(Level.FINE, subject, "all " + rows.size() + " panels are recorded, from " + times.first() + " to " + times.last(), KEPT)
                : new Verdict(Level.CAUTION, subject, "no time was written down for panels " + untimed, KEPT);
    }

    private static String numbers(List<Row> rows, Predicate<Row> which) {
        return rows.stream().filter(which).map(row -> Integer.toString(row.panel().number())).collect(Collectors.joining(", "));
    }

    private static Verdict lots(PanelLayout layout, List<Row> rows) {
        TreeSet<String> lots = rows.stream().map(Row::lot).filter(lot -> !lot.isEmpty()).collect(Collectors.toCollection(TreeSet::new));
        String without = numbers(rows, row -> row.lot().isEmpty());
        String more = without.isEmpty() ? "" : "no lot was written down for panels " + without;
        String subject = subject(layout, "lots");
        if (lots.size() > 1) {
            return new Verdict(Level.WARNING, subject, "its panels come from the lots " + String.join(", ", lots) + ": compare colour and finish"
                    + (more.isEmpty() ? "" : "; " + more), ONE_LOT);
        }
        return more.isEmpty()
                ? new Verdict(Level.FINE, subject, "all panels come from the lot " + lots.first(), ONE_LOT)
                : new Verdict(Level.CAUTION, subject, more, ONE_LOT);
    }

    /** Of each rule the gravest verdict among the panels, named after its panel. */
    private static List<Verdict> weather(PanelLayout layout, List<Row> rows) {
        Map<String, Verdict> gravest = new LinkedHashMap<>();
        String unmeasured = numbers(rows, row -> !row.isMeasured());
        if (!unmeasured.isEmpty()) {
            gravest.put("weather", new Verdict(Level.CAUTION, subject(layout, "weather"), "air, humidity or surface were not written down for panels " + unmeasured, KEPT));
        }
        for (Row row : rows.stream().filter(Row::isMeasured).toList()) {
            for (Verdict verdict : SiteCheck.weather(row.weather(), layout.film())) {
                Verdict own = new Verdict(verdict.level(), subject(layout, verdict.subject()), "panel " + row.panel().number() + ": " + verdict.reason(), verdict.source());
                gravest.merge(verdict.subject(), own, (before, now) -> now.level().compareTo(before.level()) > 0 ? now : before);
            }
        }
        return List.copyOf(gravest.values());
    }

    private static void alone(PanelLayout layout, List<Row> rows, long fromSteps, List<Verdict> verdicts) {
        String alone = numbers(rows, row -> row.people() == 1 && row.panel().cutLengthSteps() >= fromSteps);
        if (!alone.isEmpty()) {
            verdicts.add(new Verdict(Level.WARNING, subject(layout, "people"), "one person hung panels that the job gives to two: " + alone,
                    Source.shop("two people from a cut length on, given with the job")));
        }
    }

    private static String subject(PanelLayout layout, String what) {
        return layout.wall().name() + ": " + what;
    }
}
