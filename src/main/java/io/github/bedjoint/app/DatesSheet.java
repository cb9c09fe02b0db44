package io.github.bedjoint.app;

import io.github.bedjoint.job.JobCost;
import io.github.bedjoint.schedule.Move;
import io.github.bedjoint.schedule.RainEffect;
import io.github.bedjoint.schedule.Slot;
import io.github.bedjoint.schedule.Timetable;
import io.github.bedjoint.schedule.Wait;
import io.github.bedjoint.units.Print;
import java.time.Duration;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** The dates of a job as plain text: earliest dates, floats, what sets the hand-over, the rule of the crew, and what rain would move. */
final class DatesSheet {
    private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("EEE yyyy-MM-dd HH:mm", Locale.ROOT);
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE yyyy-MM-dd", Locale.ROOT);

    private final JobCost cost;
    private final Timetable dates;

    DatesSheet(JobCost cost, Timetable dates) {
        this.cost = cost;
        this.dates = dates;
    }

    static String date(ZonedDateTime date) {
        return DATE.format(date);
    }

    void print(StringBuilder out) {
        Columns rows = new Columns("  ", "llllr").row("activity", "earliest start", "earliest end", "latest start", "float");
        for (Slot slot : dates.slots()) {
            rows.row(slot.activity().title(), date(slot.earlyStart()), date(slot.earlyEnd()), date(slot.lateStart()),
                    slot.isCritical() ? "critical" : hours(slot.totalFloat()));
        }
        rows.row("Hand-over", "", date(dates.handOver()), "", "").print(out);
        out.append("  Set by: ").append(dates.chain().stream().map(id -> dates.slot(id).activity().title()).collect(Collectors.joining(", "))).append('\n');
        List<Wait> waits = dates.criticalWaits();
        out.append("  Waits that hold it up: ").append(waits.isEmpty()
                ? "none"
                : waits.stream().map(wait -> wait.title() + ", " + wait.span()).collect(Collectors.joining("; "))).append('\n');
        out.append("  ").append(dates.rule()).append('\n');
        cost.ifItRains().forEach(effect -> out.append("  If it rains on ").append(DAY.format(effect.day())).append(": ").append(words(effect)).append('\n'));
    }

    private String words(RainEffect effect) {
        if (!effect.then().isPossible()) {
            return String.join(" ", effect.then().reasons());
        }
        String moves = effect.moves().stream().map(Move::activity).map(id -> dates.slot(id).activity().title()).collect(Collectors.joining(", "));
        return effect.moves().isEmpty()
                ? "nothing moves"
                : moves + "; hand-over " + (effect.delay().isZero() ? "as planned" : hours(effect.delay()) + " later, " + date(effect.then().handOver()));
    }

    private static String hours(Duration time) {
        return Print.fixed(time.toSeconds() / 3600.0, 2) + " h";
    }
}
