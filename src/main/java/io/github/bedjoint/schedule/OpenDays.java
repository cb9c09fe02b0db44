package io.github.bedjoint.schedule;

import io.github.bedjoint.schedule.WorkCalendar.Stretch;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToLongFunction;

/**
 * The open stretches of so many days, in order, with the open seconds before each, so that counting is a look-up.
 *
 * @param count  how many days
 * @param known  the moment from which on nothing is known, or the end of time where these are all days of a calendar
 * @param opens  when each stretch starts
 * @param closes when each stretch ends
 * @param before open seconds before each stretch, and after all of them
 */
record OpenDays(int count, long known, long[] opens, long[] closes, long[] before) {
    /** What {@link #known} is where no more days come. */
    static final long ALL = Long.MAX_VALUE;

    private static OpenDays of(int count, long known, long[] opens, long[] closes) {
        long[] before = new long[opens.length + 1];
        for (int i = 0; i < opens.length; i++) {
            before[i + 1] = before[i] + closes[i] - opens[i];
        }
        return new OpenDays(count, known, opens, closes, before);
    }

    static OpenDays compile(WorkCalendar calendar, LocalDate first, int count, boolean all) {
        List<Stretch> pieces = new ArrayList<>();
        for (int day = 0; day < count; day++) {
            for (Stretch piece : calendar.open(first.plusDays(day))) {
                int top = pieces.size() - 1;
                if (top >= 0 && pieces.get(top).to() == piece.from()) {
                    pieces.set(top, new Stretch(pieces.get(top).from(), piece.to()));
                } else {
                    pieces.add(piece);
                }
            }
        }
        long known = all ? ALL : first.plusDays(count).atStartOfDay(calendar.zone()).toEpochSecond();
        return of(count, known, pieces.stream().mapToLong(Stretch::from).toArray(), pieces.stream().mapToLong(Stretch::to).toArray());
    }

    /** The same without some stretches, which may overlap one another; most of the hours are far from them and are copied as they are. */
    OpenDays without(List<Stretch> holes) {
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
        return of(count, known, spliced(opens, first, i, left, Stretch::from), spliced(closes, first, i, left, Stretch::to));
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

    /** Open seconds of all these days. */
    long total() {
        return before[opens.length];
    }

    boolean isAll() {
        return known == ALL;
    }

    /** The last stretch that starts at or before a moment, or -1. */
    int startedAt(long second) {
        int i = Arrays.binarySearch(opens, second);
        return i >= 0 ? i : -i - 2;
    }
}
