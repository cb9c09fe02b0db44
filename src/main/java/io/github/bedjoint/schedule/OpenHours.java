package io.github.bedjoint.schedule;

import io.github.bedjoint.schedule.WorkCalendar.Stretch;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * The open stretches of a calendar from the first day of a year on, with three years after that year. Days are compiled when they are first
 * asked for; how many there are changes no answer.
 *
 * <p>Moments are seconds of the epoch. A stretch holds its start and not its end. What lies beyond the last stretch never comes.
 */
final class OpenHours {
    /** Later than every date. */
    static final long NEVER = Long.MAX_VALUE / 4;

    private static final int YEARS = 4;
    /** Days beyond the moment asked for that most jobs do with. */
    private static final int AHEAD = 60;

    static final OpenHours EMPTY =
            new OpenHours(0, 0, new OpenDays(0, OpenDays.ALL, new long[0], new long[0], new long[1]), days -> days);

    private final long begin;
    private final long yearEnd;
    private final UnaryOperator<OpenDays> more;
    /** As far as was asked for; holds nothing that the calendar does not say, so it does not matter which of two threads was later. */
    private volatile OpenDays days;

    private OpenHours(long begin, long yearEnd, OpenDays first, UnaryOperator<OpenDays> more) {
        this.begin = begin;
        this.yearEnd = yearEnd;
        this.days = first;
        this.more = more;
    }

    /** The hours of a calendar from the first day of a date's year on. */
    static OpenHours of(WorkCalendar calendar, LocalDate date) {
        LocalDate newYear = date.withDayOfYear(1);
        int all = (int) ChronoUnit.DAYS.between(newYear, newYear.plusYears(YEARS));
        return new OpenHours(
                start(newYear, calendar), start(newYear.plusYears(1), calendar),
                OpenDays.compile(calendar, newYear, date.getDayOfYear() + AHEAD, false),
                known -> {
                    int count = Math.min(all, 2 * known.count());
                    return OpenDays.compile(calendar, newYear, count, count == all);
                });
    }

    /** The same without some stretches. */
    OpenHours without(List<Stretch> holes) {
        return new OpenHours(begin, yearEnd, days.without(holes), known -> moreThan(known).without(holes));
    }

    private static long start(LocalDate day, WorkCalendar calendar) {
        return day.atStartOfDay(calendar.zone()).toEpochSecond();
    }

    /** Whether a moment lies in the first of these years. */
    boolean covers(long second) {
        return second >= begin && second < yearEnd;
    }

    private OpenDays moreThan(OpenDays known) {
        OpenDays now = days;
        if (now.count() <= known.count()) {
            now = more.apply(now);
            days = now;
        }
        return now;
    }

    /** The days to a moment and beyond it. */
    private OpenDays to(long second) {
        OpenDays known = days;
        while (known.known() <= second) {
            known = moreThan(known);
        }
        return known;
    }

    /** So many days that so many seconds of them are open, or all. */
    private OpenDays with(long worked) {
        OpenDays known = days;
        while (known.total() < worked && !known.isAll()) {
            known = moreThan(known);
        }
        return known;
    }

    /** Open seconds from the begin to a moment. */
    long worked(long second) {
        OpenDays known = to(second);
        int i = known.startedAt(second);
        return i < 0 ? 0 : known.before()[i] + Math.min(second, known.closes()[i]) - known.opens()[i];
    }

    /** Whether work goes on at a moment. */
    boolean isOpen(long second) {
        OpenDays known = to(second);
        int i = known.startedAt(second);
        return i >= 0 && second < known.closes()[i];
    }

    /** The moment itself if open, otherwise the next opening. */
    long nextOpen(long second) {
        return isOpen(second) ? second : lastWith(worked(second));
    }

    /** The first moment at which so many seconds were open: the end of a stretch rather than the start of the next. */
    long firstWith(long worked) {
        if (worked <= 0) {
            return begin;
        }
        OpenDays known = with(worked);
        int i = Arrays.binarySearch(known.before(), worked);
        return moment(known, i >= 0 ? i - 1 : -i - 2, worked);
    }

    /** The last moment at which no more than so many seconds were open: the start of a stretch rather than the end of the one before. */
    long lastWith(long worked) {
        if (worked < 0) {
            return begin;
        }
        OpenDays known = with(worked + 1);
        int i = Arrays.binarySearch(known.before(), worked);
        return moment(known, i >= 0 ? i : -i - 2, worked);
    }

    private static long moment(OpenDays known, int piece, long worked) {
        return piece >= known.opens().length ? NEVER : known.opens()[piece] + worked - known.before()[piece];
    }

    /** When open time of a length is over that begins at a moment. */
    long add(long second, long length) {
        return length == 0 ? second : firstWith(worked(second) + length);
    }

    /** The first moment from which {@link #add} reaches another. */
    long firstReaching(long second, long length) {
        if (length == 0) {
            return second;
        }
        long worked = worked(second);
        // In a gap the open time so far ended before; a second more is needed to get past the gap.
        return firstWith(firstWith(worked) >= second ? worked - length : worked + 1 - length);
    }

    /** The last moment from which {@link #add} does not pass another. */
    long lastWithin(long second, long length) {
        return length == 0 ? second : lastWith(worked(second) - length);
    }

    /** The last open moment not after another. */
    long lastOpen(long second) {
        OpenDays known = to(second);
        int i = known.startedAt(second);
        return i < 0 ? begin : Math.min(second, known.closes()[i] - 1);
    }

    /** The first moment, not before another, from which a length above 0 fits into one stretch. */
    long fits(long second, long length) {
        OpenDays known = to(second);
        long found = fits(known, second, length);
        while (found == NEVER && !known.isAll()) {
            known = moreThan(known);
            found = fits(known, second, length);
        }
        return found;
    }

    private static long fits(OpenDays known, long second, long length) {
        for (int i = Math.max(0, known.startedAt(second)); i < known.opens().length; i++) {
            long start = Math.max(second, known.opens()[i]);
            if (start + length <= known.closes()[i]) {
                return start;
            }
        }
        return NEVER;
    }

    /** The last moment from which a length fits into one stretch and is over in time. */
    long lastFits(long startBy, long endBy, long length) {
        OpenDays known = to(Math.min(startBy + length, endBy));
        for (int i = known.startedAt(Math.min(startBy, endBy)); i >= 0; i--) {
            long start = Math.min(startBy, Math.min(endBy, known.closes()[i]) - length);
            if (start >= known.opens()[i]) {
                return start;
            }
        }
        return begin;
    }
}
