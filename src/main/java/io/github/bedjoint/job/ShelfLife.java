package io.github.bedjoint.job;

import io.github.bedjoint.price.LineKind;
import io.github.bedjoint.schedule.Slot;
import io.github.bedjoint.schedule.Timetable;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Verdict;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Compares the shelf life of the rolls that are opened with the last day on which they are used: film when it is applied, laminate when it is laminated. */
final class ShelfLife {
    private static final Source RULE = Source.practice("film and laminate are used within their shelf life; the data sheet wins");

    private ShelfLife() {}

    /** One verdict for each offer that is opened and has a best-before date. */
    static List<Verdict> verdicts(List<RollOrder> orders, Optional<Timetable> dates) {
        List<Verdict> verdicts = new ArrayList<>();
        for (RollOrder order : orders) {
            order.offer().bestBefore().ifPresent(day -> verdicts.add(verdict(order, day, dates)));
        }
        return verdicts;
    }

    private static Verdict verdict(RollOrder order, LocalDate bestBefore, Optional<Timetable> dates) {
        boolean film = order.kind() == LineKind.FILM;
        String subject = (film ? "film" : "laminate") + ": shelf life";
        String roll = "roll " + order.offer().id() + " is best before " + bestBefore;
        if (dates.isEmpty()) {
            return new Verdict(Verdict.Level.CAUTION, subject, roll + "; that could not be compared, since the job has no dates", RULE);
        }
        LocalDate used = film ? lastDay(dates.get(), JobNetwork.INSTALL) : laminated(dates.get());
        return new Verdict(
                bestBefore.isBefore(used) ? Verdict.Level.WARNING : Verdict.Level.FINE,
                subject,
                roll + " and " + (film ? "applied" : "laminated") + " until " + used,
                RULE);
    }

    /** Where laminating takes no time of its own it is done by the day on which the panels are finished. */
    private static LocalDate laminated(Timetable dates) {
        boolean timed = dates.slots().stream().anyMatch(slot -> slot.activity().id().equals(JobNetwork.LAMINATE));
        return lastDay(dates, timed ? JobNetwork.LAMINATE : JobNetwork.FINISH);
    }

    /** Work that ends at midnight ends on the day before. */
    private static LocalDate lastDay(Timetable dates, String activity) {
        Slot slot = dates.slot(activity);
        ZonedDateTime last = slot.earlyEnd().minusNanos(1);
        return (last.isBefore(slot.earlyStart()) ? slot.earlyStart() : last).toLocalDate();
    }
}
