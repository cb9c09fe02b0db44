package io.github.bedjoint.schedule;

import io.github.bedjoint.units.RefusedException;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * When work is done: hours of each weekday in a time zone, days that are closed, and stretches that are blocked.
 *
 * <p>{@link #weekdays} is Monday to Friday, 8:00 to 16:00 (assumed, to be replaced). A shift that the clock change shortens or lengthens has the hours that really pass. Immutable.
 */
public final class WorkCalendar {
    private final ZoneId zone;
    private final Map<DayOfWeek, Hours> week;
    private final Set<LocalDate> closed;
    private final List<Stretch> blocked;
    /** The hours from the year that was asked for last; holds nothing that the other fields do not say. */
    private volatile OpenHours compiled = OpenHours.EMPTY;
    /** The same calendar before some stretches were blocked, whose hours are compiled once for many such calendars; null for others. */
    private final @Nullable WorkCalendar unblocked;

    private WorkCalendar(ZoneId zone, Map<DayOfWeek, Hours> week, Set<LocalDate> closed, List<Stretch> blocked) {
        this(zone, week, closed, blocked, null);
    }

    private WorkCalendar(
            ZoneId zone, Map<DayOfWeek, Hours> week, Set<LocalDate> closed, List<Stretch> blocked, @Nullable WorkCalendar unblocked) {
        this.unblocked = unblocked;
        this.zone = zone;
        this.week = week;
        this.closed = closed;
        this.blocked = blocked;
    }

    /** The hours of a day; an end at 00:00 is the end of the day. */
    private record Hours(LocalTime from, LocalTime to) {}

    /** A stretch of time in seconds of the epoch, its end not included. */
    record Stretch(long from, long to) {}

    /**
     * Monday to Friday, 8:00 to 16:00.
     *
     * @param zone the time zone of shop and site
     * @return the calendar
     */
    public static WorkCalendar weekdays(ZoneId zone) {
        WorkCalendar calendar = new WorkCalendar(zone, Map.of(), Set.of(), List.of());
        for (DayOfWeek day : DayOfWeek.values()) {
            if (day.compareTo(DayOfWeek.SATURDAY) < 0) {
                calendar = calendar.withHours(day, LocalTime.of(8, 0), LocalTime.of(16, 0));
            }
        }
        return calendar;
    }

    /**
     * Every day, day and night.
     *
     * @param zone the time zone
     * @return the calendar
     */
    public static WorkCalendar roundTheClock(ZoneId zone) {
        WorkCalendar calendar = new WorkCalendar(zone, Map.of(), Set.of(), List.of());
        for (DayOfWeek day : DayOfWeek.values()) {
            calendar = calendar.withHours(day, LocalTime.MIDNIGHT, LocalTime.MIDNIGHT);
        }
        return calendar;
    }

    /**
     * The same with other hours on a weekday.
     *
     * @param day  the weekday
     * @param from start of the shift
     * @param to   end of the shift, later on the same day; 00:00 is midnight at its end
     * @return a new calendar
     * @throws RefusedException if the end does not come after the start
     */
    public WorkCalendar withHours(DayOfWeek day, LocalTime from, LocalTime to) {
        if (!to.equals(LocalTime.MIDNIGHT) && !to.isAfter(from)) {
            throw new RefusedException("shift on " + day, from + " to " + to, "must end after it starts", "Maybe split a night shift at midnight.");
        }
        EnumMap<DayOfWeek, Hours> more = new EnumMap<>(DayOfWeek.class);
        more.putAll(week);
        more.put(day, new Hours(from, to));
        return new WorkCalendar(zone, more, closed, blocked);
    }

    /**
     * The same without work on a weekday.
     *
     * @param day the weekday
     * @return a new calendar
     */
    public WorkCalendar without(DayOfWeek day) {
        EnumMap<DayOfWeek, Hours> fewer = new EnumMap<>(DayOfWeek.class);
        fewer.putAll(week);
        fewer.remove(day);
        return new WorkCalendar(zone, fewer, closed, blocked);
    }

    /**
     * The same closed on some dates.
     *
     * @param dates the dates
     * @return a new calendar
     */
    public WorkCalendar withClosed(LocalDate... dates) {
        Set<LocalDate> more = new HashSet<>(closed);
        more.addAll(List.of(dates));
        return new WorkCalendar(zone, week, Set.copyOf(more), blocked);
    }

    /**
     * The same without work in a stretch of time.
     *
     * @param from its start
     * @param to   its end, after the start
     * @return a new calendar
     * @throws RefusedException if the end does not come after the start
     */
    public WorkCalendar withBlocked(Instant from, Instant to) {
        if (!to.isAfter(from)) {
            throw new RefusedException("blocked time", from + " to " + to, "must end after it starts", "Maybe they are the wrong way round.");
        }
        return withBlocked(List.of(new Stretch(from.getEpochSecond(), to.getEpochSecond())));
    }

    private WorkCalendar withBlocked(List<Stretch> holes) {
        List<Stretch> more = new ArrayList<>(blocked);
        more.addAll(holes);
        return new WorkCalendar(zone, week, closed, List.copyOf(more), unblocked == null ? this : unblocked);
    }

    /**
     * The same without work on a day of rain and until the wall has dried: from midnight to midnight, and so long after.
     *
     * @param day the day of rain
     * @param dry how long after the end of that day, on the clock
     * @return a new calendar
     */
    public WorkCalendar withRain(LocalDate day, Span dry) {
        return withRain(List.of(day), dry);
    }

    WorkCalendar withRain(Collection<LocalDate> days, Span dry) {
        List<Stretch> holes = new ArrayList<>(days.size());
        for (LocalDate day : days) {
            holes.add(new Stretch(second(day, LocalTime.MIDNIGHT), second(day.plusDays(1), LocalTime.MIDNIGHT) + dry.seconds()));
        }
        return holes.isEmpty() ? this : withBlocked(holes);
    }

    /**
     * The time zone.
     *
     * @return the zone of all dates
     */
    public ZoneId zone() {
        return zone;
    }

    /**
     * When work begins on a weekday.
     *
     * @param day the weekday
     * @return the time, or empty where there is none
     */
    public Optional<LocalTime> opens(DayOfWeek day) {
        return Optional.ofNullable(week.get(day)).map(Hours::from);
    }

    /**
     * When work ends on a weekday.
     *
     * @param day the weekday
     * @return the time, midnight for the end of the day, or empty where there is none
     */
    public Optional<LocalTime> closes(DayOfWeek day) {
        return Optional.ofNullable(week.get(day)).map(Hours::to);
    }

    /**
     * The days on which nobody works.
     *
     * @return in their order
     */
    public List<LocalDate> closed() {
        return closed.stream().sorted().toList();
    }

    /**
     * When something that begins at a moment has lasted for a span.
     *
     * @param start the beginning; outside the shifts shift time begins to count at the next one
     * @param span  how long, and which hours count
     * @return the end, in this calendar's zone
     * @throws RefusedException if the calendar has not so many hours within three years
     */
    public ZonedDateTime after(ZonedDateTime start, Span span) {
        long from = start.toEpochSecond();
        long end = span.base() == TimeBase.ELAPSED ? from + span.seconds() : openFrom(from).add(from, span.seconds());
        if (end >= OpenHours.NEVER) {
            throw new RefusedException("span", span.toString(), "must fit into three years of this calendar", "Maybe no weekday has hours.");
        }
        return at(end);
    }

    /**
     * The shift time between two moments.
     *
     * @param from the earlier
     * @param to   the later, within three years
     * @return the hours within shifts, zero if {@code to} is not later
     */
    public Duration shiftBetween(ZonedDateTime from, ZonedDateTime to) {
        OpenHours hours = openFrom(from.toEpochSecond());
        return Duration.ofSeconds(Math.max(0, hours.worked(to.toEpochSecond()) - hours.worked(from.toEpochSecond())));
    }

    ZonedDateTime at(long second) {
        return Instant.ofEpochSecond(second).atZone(zone);
    }

    /** The open hours from the first day of a moment's year, so that nothing depends on what was asked before. */
    OpenHours openFrom(long second) {
        OpenHours known = compiled;
        if (!known.covers(second)) {
            known = unblocked == null
                    ? OpenHours.of(this, at(second).toLocalDate())
                    : unblocked.openFrom(second).without(blocked.subList(unblocked.blocked.size(), blocked.size()));
            compiled = known;
        }
        return known;
    }

    /** The open stretches of a date, in order; most days have one. */
    List<Stretch> open(LocalDate date) {
        Hours hours = week.get(date.getDayOfWeek());
        if (hours == null || closed.contains(date)) {
            return List.of();
        }
        LocalDate lastDate = hours.to().equals(LocalTime.MIDNIGHT) ? date.plusDays(1) : date;
        List<Stretch> open = new ArrayList<>();
        open.add(new Stretch(second(date, hours.from()), second(lastDate, hours.to())));
        for (Stretch hole : blocked) {
            List<Stretch> left = new ArrayList<>();
            for (Stretch piece : open) {
                if (hole.to() <= piece.from() || hole.from() >= piece.to()) {
                    left.add(piece);
                } else {
                    if (hole.from() > piece.from()) {
                        left.add(new Stretch(piece.from(), hole.from()));
                    }
                    if (hole.to() < piece.to()) {
                        left.add(new Stretch(hole.to(), piece.to()));
                    }
                }
            }
            open = left;
        }
        return open.stream().filter(piece -> piece.to() > piece.from()).toList();
    }

    private long second(LocalDate date, LocalTime time) {
        return ZonedDateTime.of(date, time, zone).toEpochSecond();
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof WorkCalendar that
                && zone.equals(that.zone)
                && week.equals(that.week)
                && closed.equals(that.closed)
                && blocked.equals(that.blocked);
    }

    @Override
    public int hashCode() {
        return java.util.Objects.hash(zone, week, closed, blocked);
    }

    /** Zone, weekdays and how many closed days: {@code Europe/Berlin, 5 weekdays, 2 closed days}. */
    @Override
    public String toString() {
        return zone + ", " + week.size() + " weekdays, " + closed.size() + " closed days";
    }
}
