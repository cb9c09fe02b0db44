package io.github.bedjoint.schedule;

import io.github.bedjoint.schedule.WorkCalendar.Stretch;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToLongFunction;

/**
 * The open stretches of a calendar from the first day of a year on, with three years after that year, and with the open seconds before each, so that counting is a look-up.
 *
 * <p>Moments are seconds of the epoch. A stretch holds its start and not its end. What lies beyond the last stretch never comes.
 */
final class OpenHours {
    /** Later than every date. */
    static final long NEVER = Long.MAX_VALUE / 4;

    static final OpenHours EMPTY = new OpenHours(0, 0, new long[0], new long[0]);

    private static final int YEARS = 4;

    private final long begin;
    private final long yearEnd;
    private final long[] opens;
    private final long[] closes;
    /** Open seconds before each stretch, and after all of them. */
    private final long[] before;

    private OpenHours(long begin, long yearEnd, long[] opens, long[] closes) {
        this.begin = begin;
        this.yearEnd = yearEnd;
        this.opens = opens;
        this.closes = closes;
        before = new long[opens.length + 1];
        for (int i = 0; i < opens.length; i++) {
            before[i + 1] = before[i] + closes[i] - opens[i];
        }
    }

    static OpenHours compile(WorkCalendar calendar, LocalDate newYear) {
        List<Stretch> pieces = new ArrayList<>();
        LocalDate last = newYear.plusYears(YEARS);
        for (LocalDate day = newYear; day.isBefore(last); day = day.plusDays(1)) {
            for (Stretch piece : calendar.open(day)) {
                int top = pieces.size() - 1;
                if (top >= 0 && pieces.get(top).to() == piece.from()) {
                    pieces.set(top, new Stretch(pieces.get(top).from(), piece.to()));
                } else {
                    pieces.add(piece);
                }
            }
        }
        return new OpenHours(
                start(newYear, calendar), start(newYear.plusYears(1), calendar), pieces.stream().mapToLong(Stretch::from).toArray(),
                pieces.stream().mapToLong(Stretch::to).toArray());
    }

    /** The same without some stretches, which may overlap one another; most of the hours are far from them and are copied as they are. */
    OpenHours without(List<Stretch> holes) {
        Stretch[] inOrder = holes.toArray(new Stretch[0]);
        Arrays.sort(inOrder, Comparator.comparingLong(Stretch::from));
        int first = Math.max(0, startedAt(inOrder[0].from()));
        List<Stretch> left = new ArrayList<>();
        int next = 0;
        int i = first;
        long shut = Long.MIN_VALUE;
        for (; i < opens.length && (next < inOrder.length || shut > opens[i]); i++) {
            long at = Math.max(opens[i], shut);
            while (next < inOrder.length && inOrder[next].from() < closes[i]) {
                Stretch hole = inOrder[next++];
                if (hole.from() > at) {
                    left.add(new Stretch(at, hole.from()));
                }
                shut = Math.max(shut, hole.to());
                at = Math.max(at, shut);
            }
            if (at < closes[i]) {
                left.add(new Stretch(at, closes[i]));
            }
        }
        return new OpenHours(
                begin, yearEnd, spliced(opens, first, i, left, Stretch::from), spliced(closes, first, i, left, Stretch::to));
    }

    /** The moments with those from one place to another replaced. */
    private static long[] spliced(long[] all, int from, int to, List<Stretch> middle, ToLongFunction<Stretch> which) {
        long[] result = new long[from + middle.size() + all.length - to];
        System.arraycopy(all, 0, result, 0, from);
        for (int k = 0; k < middle.size(); k++) {
            result[from + k] = which.applyAsLong(middle.get(k));
        }
        System.arraycopy(all, to, result, from + middle.size(), all.length - to);
        return result;
    }

    private static long start(LocalDate day, WorkCalendar calendar) {
        return day.atStartOfDay(calendar.zone()).toEpochSecond();
    }

    /** Whether a moment lies in the first of these years. */
    boolean covers(long second) {
        return second >= begin && second < yearEnd;
    }

    /** Open seconds from the begin to a moment. */
    long worked(long second) {
        int i = startedAt(second);
        return i < 0 ? 0 : before[i] + Math.min(second, closes[i]) - opens[i];
    }

    /** Whether work goes on at a moment. */
    boolean isOpen(long second) {
        int i = startedAt(second);
        return i >= 0 && second < closes[i];
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
        int i = Arrays.binarySearch(before, worked);
        int piece = i >= 0 ? i - 1 : -i - 2;
        return piece >= opens.length ? NEVER : opens[piece] + worked - before[piece];
    }

    /** The last moment at which no more than so many seconds were open: the start of a stretch rather than the end of the one before. */
    long lastWith(long worked) {
        if (worked < 0) {
            return begin;
        }
        int i = Arrays.binarySearch(before, worked);
        int piece = i >= 0 ? i : -i - 2;
        return piece >= opens.length ? NEVER : opens[piece] + worked - before[piece];
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
        int i = startedAt(second);
        return i < 0 ? begin : Math.min(second, closes[i] - 1);
    }

    /** The first moment, not before another, from which a length above 0 fits into one stretch. */
    long fits(long second, long length) {
        for (int i = Math.max(0, startedAt(second)); i < opens.length; i++) {
            long start = Math.max(second, opens[i]);
            if (start + length <= closes[i]) {
                return start;
            }
        }
        return NEVER;
    }

    /** The last moment from which a length fits into one stretch and is over in time. */
    long lastFits(long startBy, long endBy, long length) {
        for (int i = startedAt(Math.min(startBy, endBy)); i >= 0; i--) {
            long start = Math.min(startBy, Math.min(endBy, closes[i]) - length);
            if (start >= opens[i]) {
                return start;
            }
        }
        return begin;
    }

    /** The last stretch that starts at or before a moment, or -1. */
    private int startedAt(long second) {
        int i = Arrays.binarySearch(opens, second);
        return i >= 0 ? i : -i - 2;
    }
}
