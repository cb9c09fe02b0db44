package io.github.bedjoint.job;

import io.github.bedjoint.schedule.Span;
import io.github.bedjoint.schedule.WorkCalendar;
import java.time.ZonedDateTime;
import java.util.function.UnaryOperator;

/**
 * When a job may begin and the waits it has to keep. Immutable.
 *
 * @param calendar working hours and closed days
 * @param start    the moment before which nothing begins
 * @param waits    waits between the parts of the work
 */
public record JobDates(WorkCalendar calendar, ZonedDateTime start, JobWaits waits) {
    /**
     * Dates with the usual waits.
     *
     * @param calendar working hours and closed days
     * @param start    the moment before which nothing begins
     * @return the dates
     */
    public static JobDates of(WorkCalendar calendar, ZonedDateTime start) {
        return new JobDates(calendar, start, JobWaits.usual());
    }

    /**
     * The same from another moment on.
     *
     * @param moment the moment before which nothing begins
     * @return new dates
     */
    public JobDates withStart(ZonedDateTime moment) {
        return new JobDates(calendar, moment, waits);
    }

    /**
     * The same with other waits.
     *
     * @param change what is made of the waits
     * @return new dates
     */
    public JobDates withWaits(UnaryOperator<JobWaits> change) {
        return new JobDates(calendar, start, change.apply(waits));
    }

    /**
     * The same with another wait between washing and applying.
     *
     * @param wait least time, elapsed or shift
     * @return new dates
     */
    public JobDates withWashBefore(Span wait) {
        return withWaits(usual -> usual.withWashBefore(wait));
    }

    /**
     * The same with another wait between applying and hand-over.
     *
     * @param wait least time, elapsed or shift
     * @return new dates
     */
    public JobDates withCure(Span wait) {
        return withWaits(usual -> usual.withCure(wait));
    }
}
