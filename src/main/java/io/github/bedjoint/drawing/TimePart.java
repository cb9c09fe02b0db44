package io.github.bedjoint.drawing;

import io.github.bedjoint.job.JobCost;
import io.github.bedjoint.labour.Machine;
import io.github.bedjoint.labour.SiteDays;
import io.github.bedjoint.labour.Stage;
import io.github.bedjoint.labour.Task;
import io.github.bedjoint.labour.TaskTime;
import io.github.bedjoint.labour.TripTime;
import io.github.bedjoint.schedule.Move;
import io.github.bedjoint.schedule.RainEffect;
import io.github.bedjoint.schedule.Slot;
import io.github.bedjoint.schedule.Timetable;
import io.github.bedjoint.units.Print;
import io.github.bedjoint.working.Source;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.apache.commons.lang3.StringUtils;

/** Hours by task, and the dates. */
final class TimePart {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM yyyy", Locale.ROOT);

    private final PageWriter page;
    private final JobCost cost;

    TimePart(PageWriter page) {
        this.page = page;
        this.cost = page.cost;
    }

    void hours() {
        page.section("hours", "Hours");
        stage(Stage.PRODUCTION, "In the shop");
        stage(Stage.SITE, "On site");
        SiteDays days = cost.labour().siteDays();
        if (cost.labour().tasks().stream().anyMatch(task -> task.task().source().kind() == Source.Kind.ASSUMED)) {
            page.out.element("p", "A pace that is assumed is a starting value: replace it by the shop's own.");
        }
        Table beside = page.table("Beside the tasks, and in all", "Time", ">Paid")
                .row("Daily set-up", PageWriter.hours(days.setUpPaidS()))
                .row("Daily travel", PageWriter.hours(days.travelPaidS()));
        for (TripTime trip : cost.labour().trips()) {
            beside.row(trip.working().parts(), "Travel and stay: " + trip.trip().purpose().words() + (trip.days() == 1 ? "" : ", " + trip.days() + " days"),
                    PageWriter.hours(trip.paidS()));
        }
        beside.total("All hours", PageWriter.hours(cost.labour().totalPaidS())).end();
        page.end();
    }

    private void stage(Stage stage, String title) {
        Table table = page.table(title, "Task", ">Paid", ">Elapsed", "Pace from");
        for (TaskTime task : cost.labour().tasks()) {
            if (task.task().stage() == stage) {
                table.row(task.working().parts(), title(task.task()), PageWriter.hours(task.paidS()), PageWriter.hours(task.elapsedS()),
                        StringUtils.substringBefore(task.task().source().kind().words(), ","));
            }
        }
        table.end();
    }

    /** A machine's task says how much of its time someone stands by. */
    private static String title(Task task) {
        return task.machine() == Machine.NONE ? task.title() : task.title() + ", attended " + Print.fixed(100 * task.attended(), 0) + " %";
    }

    void dates() {
        Timetable dates = cost.timetable().orElseThrow();
        page.section("dates", "Dates");
        page.wide(Drawing.dates(dates));
        Table table = page.table("Earliest and latest dates", "Activity", "Start", "End", "Latest start", "May start later by");
        for (Slot slot : dates.slots()) {
            table.row(List.of(slot.working()), slot.activity().title(), moment(dates, slot.earlyStart()), moment(dates, slot.earlyEnd()),
                    moment(dates, slot.lateStart()), slot.isCritical() ? "not at all" : PageWriter.hours(slot.totalFloat().toSeconds()));
        }
        table.total("Hand-over", "", moment(dates, dates.handOver()), "", "").end();
        critical(dates);
        rain(dates);
        page.group("Dates").ifPresent(page::fold);
        page.end();
    }

    private void critical(Timetable dates) {
        page.out.element("p", "The hand-over is set by: " + titles(dates, dates.chain()) + ". "
                + (dates.criticalWaits().isEmpty()
                        ? "No wait holds it up. "
                        : "Waits that hold it up: "
                                + dates.criticalWaits().stream().map(wait -> wait.title() + ", " + wait.span()).collect(Collectors.joining("; ")) + ". ")
                + dates.rule());
    }

    private void rain(Timetable dates) {
        List<RainEffect> effects = cost.ifItRains();
        if (effects.isEmpty()) {
            return;
        }
        Table table = page.table("If it rains", "Day", "What moves", "Hand-over", ">Later by");
        for (RainEffect effect : effects) {
            boolean dated = effect.then().isPossible();
            table.row(
                    DAY.format(effect.day()),
                    effect.moves().isEmpty() ? "nothing" : titles(dates, effect.moves().stream().map(Move::activity).toList()),
                    dated ? moment(dates, effect.then().handOver()) : String.join(" ", effect.then().reasons()),
                    dated ? PageWriter.hours(effect.delay().toSeconds()) : "");
        }
        table.end();
    }

    private static String titles(Timetable dates, List<String> ids) {
        return ids.stream().map(id -> dates.slot(id).activity().title()).collect(Collectors.joining(", "));
    }

    static String moment(Timetable dates, ZonedDateTime moment) {
        return DateSketch.MOMENT.format(moment.withZoneSameInstant(dates.network().calendar().zone()));
    }
}
