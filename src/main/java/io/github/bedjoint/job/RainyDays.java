package io.github.bedjoint.job;

import io.github.bedjoint.schedule.RainEffect;
import io.github.bedjoint.schedule.Slot;
import io.github.bedjoint.schedule.Timetable;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;

/** The days on which a job works at a wall outdoors, and what a day of rain would move on each. */
final class RainyDays {
    /** As many days as a crew may want to see. */
    private static final int MOST = 10;

    private RainyDays() {}

    static List<RainEffect> of(Timetable dates) {
        List<RainEffect> effects = new ArrayList<>();
        for (LocalDate day : atWall(dates)) {
            if (effects.size() < MOST) {
                effects.add(dates.ifItRains(day));
            }
        }
        return List.copyOf(effects);
    }

    private static SortedSet<LocalDate> atWall(Timetable dates) {
        SortedSet<LocalDate> days = new TreeSet<>();
        for (Slot slot : dates.slots()) {
            if (slot.activity().isOutdoors()) {
                LocalDate day = slot.earlyStart().toLocalDate();
                while (!day.isAfter(slot.earlyEnd().toLocalDate()) && days.size() < 2 * MOST) {
                    if (works(dates, day, slot)) {
                        days.add(day);
                    }
                    day = day.plusDays(1);
                }
            }
        }
        return days;
    }

    private static boolean works(Timetable dates, LocalDate day, Slot slot) {
        ZonedDateTime begin = day.atStartOfDay(dates.network().calendar().zone());
        ZonedDateTime end = day.plusDays(1).atStartOfDay(begin.getZone());
        ZonedDateTime from = begin.isBefore(slot.earlyStart()) ? slot.earlyStart() : begin;
        ZonedDateTime to = end.isAfter(slot.earlyEnd()) ? slot.earlyEnd() : end;
        return !dates.network().calendar().shiftBetween(from, to).isZero();
    }
}
