package io.github.bedjoint.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.Arrays;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/**
 * Small networks in whole hours, with windows and limits, against trying every combination of starts: a check that shares no code with the search, the passes or the calendar.
 */
class AllStartsProperties {
    private static final ZonedDateTime BEGIN = ZonedDateTime.of(2026, 6, 1, 0, 0, 0, 0, ZoneOffset.UTC);
    private static final int HORIZON = 16;

    private int n;
    private int[] length;
    private int[] people;
    /** Least and most time from the end of one to the start of another; -1 where they are not linked or any time will do. */
    private int[][] least;
    private int[][] most;
    private int limit;
    private int best;
    private int[] starts;
    private int[] latest;

    private Network draw(long seed) {
        Random random = new Random(seed);
        n = 1 + random.nextInt(4);
        length = random.ints(n, 1, 4).toArray();
        people = random.ints(n, 0, 3).toArray();
        least = new int[n][n];
        most = new int[n][n];
        limit = random.nextBoolean() ? 2 : 99;
        Network network = Network.on(WorkCalendar.roundTheClock(ZoneOffset.UTC), BEGIN);
        for (int i = 0; i < n; i++) {
            network = network.with(Activity.of("a" + i, "activity " + i, new Span(length[i] * 3600L, TimeBase.values()[random.nextInt(2)]))
                    .using(Resource.PEOPLE, people[i]));
            for (int j = 0; j < n; j++) {
                least[j][i] = j < i && random.nextInt(3) == 0 ? random.nextInt(2) : -1;
                most[j][i] = least[j][i] >= 0 && random.nextBoolean() ? random.nextInt(4) : -1;
                if (least[j][i] >= 0) {
                    Link link = Link.of("a" + j, "a" + i).atLeast(new Span(least[j][i] * 3600L, TimeBase.ELAPSED));
                    network = network.with(most[j][i] < 0 ? link : link.atMost(new Span(most[j][i] * 3600L, TimeBase.SHIFT)));
                }
            }
        }
        return limit == 99 ? network : network.withCapacity(Capacity.unlimited().with(Resource.PEOPLE, limit));
    }

    private void tryAll() {
        best = Integer.MAX_VALUE;
        starts = new int[n];
        latest = new int[n];
        place(0, 0);
    }

    private void place(int i, int end) {
        if (end > best) {
            return;
        }
        if (i == n) {
            if (end < best) {
                best = end;
                Arrays.fill(latest, -1);
            }
            for (int k = 0; k < n; k++) {
                latest[k] = Math.max(latest[k], starts[k]);
            }
            return;
        }
        for (int start = 0; start + length[i] <= HORIZON; start++) {
            starts[i] = start;
            if (fits(i)) {
                place(i + 1, Math.max(end, start + length[i]));
            }
        }
    }

    private boolean fits(int i) {
        for (int j = 0; j < i; j++) {
            int gap = starts[i] - starts[j] - length[j];
            if (least[j][i] >= 0 && gap < least[j][i] || most[j][i] >= 0 && gap > most[j][i]) {
                return false;
            }
        }
        for (int hour = 0; hour < HORIZON; hour++) {
            int used = 0;
            for (int j = 0; j <= i; j++) {
                used += starts[j] <= hour && hour < starts[j] + length[j] ? people[j] : 0;
            }
            if (used > limit) {
                return false;
            }
        }
        return true;
    }

    @Property
    void plan_inWholeHours_isTheBestOfAllStarts(@ForAll long seed) {
        Network network = draw(seed);
        tryAll();
        Timetable dates = network.plan();
        if (best == Integer.MAX_VALUE) {
            assertThat(dates.isPossible()).isFalse();
            return;
        }
        assertThat(dates.isProven()).isTrue();
        assertThat(Duration.between(BEGIN, dates.handOver())).hasHours(best);
        if (limit == 99) {
            for (int i = 0; i < n; i++) {
                assertThat(Duration.between(BEGIN, dates.slot("a" + i).lateStart())).hasHours(latest[i]);
            }
        }
    }
}
