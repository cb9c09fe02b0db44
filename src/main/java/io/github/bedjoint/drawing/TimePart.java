package io.github.bedjoint.drawing;

import io.github.bedjoint.job.JobCost;
import io.github.bedjoint.labour.SiteDays;
import io.github.bedjoint.labour.Stage;
import io.github.bedjoint.labour.TaskTime;
import io.github.bedjoint.labour.TripTime;
import io.github.bedjoint.schedule.Slot;
import io.github.bedjoint.schedule.Timetable;
import io.github.bedjoint.working.Source;
import java.time.ZonedDateTime;
import java.util.List;
import org.apache.commons.lang3.StringUtils;

/** Hours by task, and the dates. */
final class TimePart {
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
                table.row(task.working().parts(), task.task().title(), PageWriter.hours(task.paidS()), PageWriter.hours(task.elapsedS()),
                        StringUtils.substringBefore(task.task().source().kind().words(), ","));
            }
        }
        table.end();
    }

    void dates() {
        Timetable dates = cost.timetable().orElseThrow();
        page.section("dates", "Dates");
        page.wide(Drawing.dates(dates));
        Table table = page.table("Earliest dates", "Activity", "Start", "End", "May start later by");
        for (Slot slot : dates.slots()) {
            table.row(List.of(slot.working()), slot.activity().title(), moment(dates, slot.earlyStart()), moment(dates, slot.earlyEnd()),
                    slot.isCritical() ? "not at all" : PageWriter.hours(slot.totalFloat().toSeconds()));
        }
        table.total("Hand-over", "", moment(dates, dates.handOver()), "").end();
        page.group("Dates").ifPresent(page::fold);
        page.end();
    }

    static String moment(Timetable dates, ZonedDateTime moment) {
        return DateSketch.MOMENT.format(moment.withZoneSameInstant(dates.network().calendar().zone()));
    }
}
