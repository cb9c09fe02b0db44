package io.github.bedjoint.job;

import io.github.bedjoint.schedule.Rain;
import io.github.bedjoint.schedule.Span;
import io.github.bedjoint.schedule.WorkCalendar;
import io.github.bedjoint.units.Door;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * When a job may begin, what it has to wait for, the weather, and how many people there are. Immutable.
 *
 * @param calendar  working hours and closed days
 * @param start     the moment before which nothing begins
 * @param waits     waits between the parts of the work
 * @param rain      days of rain, and how long a wall dries after each
 * @param leadTimes what has to come first
 * @param people    how many people there are for this job in shop and on site together, 0 for as many as its crews have
 */
public record JobDates(
        WorkCalendar calendar, ZonedDateTime start, JobWaits waits, Rain rain, List<LeadTime> leadTimes, int people) {
    /**
     * Checks the people.
     *
     * @param calendar  working hours and closed days
     * @param start     the moment before which nothing begins
     * @param waits     waits between the parts of the work
     * @param rain      days of rain, and how long a wall dries after each
     * @param leadTimes what has to come first
     * @param people    how many people there are, 0 to 50
     * @throws io.github.bedjoint.units.RefusedException if people are not 0 to 50
     */
    public JobDates {
        Door.count("people", people, 0, 50);
        leadTimes = List.copyOf(leadTimes);
    }

    /**
     * Dates with the usual waits, in dry weather, with as many people as the crews have.
     *
     * @param calendar working hours and closed days
     * @param start    the moment before which nothing begins
     * @return the dates
     */
    public static JobDates of(WorkCalendar calendar, ZonedDateTime start) {
        return new JobDates(calendar, start, JobWaits.usual(), Rain.none(), List.of(), 0);
    }

    /**
     * The same from another moment on.
     *
     * @param moment the moment before which nothing begins
     * @return new dates
     */
    public JobDates withStart(ZonedDateTime moment) {
        return new JobDates(calendar, moment, waits, rain, leadTimes, people);
    }

    /**
     * The same with other waits.
     *
     * @param change what is made of the waits
     * @return new dates
     */
    public JobDates withWaits(UnaryOperator<JobWaits> change) {
        return new JobDates(calendar, start, change.apply(waits), rain, leadTimes, people);
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

    /**
     * The same in other weather.
     *
     * @param weather days of rain, and how long a wall dries after each
     * @return new dates
     */
    public JobDates withRain(Rain weather) {
        return new JobDates(calendar, start, waits, weather, leadTimes, people);
    }

    /**
     * The same with other things that have to come first.
     *
     * @param all the lead times
     * @return new dates
     */
    public JobDates withLeadTimes(List<LeadTime> all) {
        return new JobDates(calendar, start, waits, rain, all, people);
    }

    /**
     * The same with another number of people in all.
     *
     * @param all how many people there are in shop and on site together, 1 to 50; 0 for as many as the crews have
     * @return new dates
     * @throws io.github.bedjoint.units.RefusedException if they are not 0 to 50
     */
    public JobDates withPeople(int all) {
        return new JobDates(calendar, start, waits, rain, leadTimes, all);
    }
}
