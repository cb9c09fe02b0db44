package io.github.bedjoint.schedule;

import io.github.bedjoint.working.Source;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Collections;
import java.util.Objects;
import java.util.SortedSet;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** Days of rain, and how long a wall must dry after each before work outdoors goes on. Immutable. */
public final class Rain {
    /** Where the 24 hours come from. */
    public static final Source DRY_SOURCE = UsualWaits.DRY_AFTER_RAIN.source();

    private static final Rain NONE = new Rain(new TreeSet<>(), UsualWaits.DRY_AFTER_RAIN.span());

    private final SortedSet<LocalDate> days;
    private final Span dry;
    /** The calendar that was asked for last, without the hours of rain; holds nothing that the other fields do not say. */
    private volatile @Nullable Wet last;

    private record Wet(WorkCalendar calendar, WorkCalendar left) {}

    private Rain(SortedSet<LocalDate> days, Span dry) {
        this.days = days;
        this.dry = dry;
    }

    /**
     * Dry weather; after rain a wall would dry for 24 hours.
     *
     * @return no days of rain
     */
    public static Rain none() {
        return NONE;
    }

    /**
     * The same with another day of rain.
     *
     * @param day it may rain at any hour of it
     * @return new weather
     */
    public Rain on(LocalDate day) {
        return on(List.of(day));
    }

    /**
     * The same with other days of rain.
     *
     * @param more days, at any hour of which it may rain
     * @return new weather
     */
    public Rain on(Collection<LocalDate> more) {
        SortedSet<LocalDate> all = new TreeSet<>(days);
        all.addAll(more);
        return new Rain(all, dry);
    }

    /**
     * The same with another time to dry.
     *
     * @param wait how long after the end of a day of rain
     * @return new weather
     */
    public Rain dryingFor(Span wait) {
        return new Rain(days, wait);
    }

    /**
     * The days of rain.
     *
     * @return in their order
     */
    public SortedSet<LocalDate> days() {
        return Collections.unmodifiableSortedSet(days);
    }

    /**
     * How long a wall dries after the end of a day of rain.
     *
     * @return the wait
     */
    public Span drying() {
        return dry;
    }

    /** A calendar without the hours that rain takes. */
    WorkCalendar on(WorkCalendar calendar) {
        if (days.isEmpty()) {
            return calendar;
        }
        Wet known = last;
        if (known == null || known.calendar() != calendar) {
            known = new Wet(calendar, calendar.withRain(days, dry));
            last = known;
        }
        return known.left();
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Rain that && days.equals(that.days) && dry.equals(that.dry);
    }

    @Override
    public int hashCode() {
        return Objects.hash(days, dry);
    }

    /** The days and the drying: {@code [2027-04-19], dry after 24 h elapsed}. */
    @Override
    public String toString() {
        return days + ", dry after " + dry;
    }
}
