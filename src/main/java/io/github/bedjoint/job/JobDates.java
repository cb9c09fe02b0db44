package io.github.bedjoint.job;

import io.github.bedjoint.schedule.Span;
import io.github.bedjoint.schedule.WorkCalendar;
import io.github.bedjoint.units.Read;
import java.time.ZonedDateTime;

/**
 * When a job may begin and the waits it has to keep.
 *
 * <p>The presets of {@link #of} are common practice, no source: a wall that is washed dries a week before film is applied, and applied
 * film cures 72 hours before hand-over. The data sheets of film and cleaner win.
 *
 * @param calendar   working hours and closed days
 * @param start      the moment before which nothing begins
 * @param washBefore least time from the end of washing to applying
 * @param cure       least time from applying to hand-over
 */
public record JobDates(WorkCalendar calendar, ZonedDateTime start, Span washBefore, Span cure) {
    /**
     * Dates with the usual waits.
     *
     * @param calendar working hours and closed days
     * @param start    the moment before which nothing begins
     * @return the dates
     */
    public static JobDates of(WorkCalendar calendar, ZonedDateTime start) {
        return new JobDates(calendar, start, Span.elapsed(Read.time("168 h")), Span.elapsed(Read.time("72 h")));
    }

    /**
     * The same with another wait between washing and applying.
     *
     * @param wait least time, elapsed or shift
     * @return new dates
     */
    public JobDates withWashBefore(Span wait) {
        return new JobDates(calendar, start, wait, cure);
    }

    /**
     * The same with another wait between applying and hand-over.
     *
     * @param wait least time, elapsed or shift
     * @return new dates
     */
    public JobDates withCure(Span wait) {
        return new JobDates(calendar, start, washBefore, wait);
    }
}
