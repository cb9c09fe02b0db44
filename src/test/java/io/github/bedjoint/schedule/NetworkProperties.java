package io.github.bedjoint.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.bedjoint.working.WorkingCheck;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

class NetworkProperties {
    private static final ZoneId ZONE = ZoneId.of("Europe/Berlin");
    private static final ZonedDateTime BEGIN = ZonedDateTime.of(2026, 3, 23, 9, 30, 0, 0, ZONE);
    private static final WorkCalendar CALENDAR = WorkCalendar.weekdays(ZONE).withClosed(LocalDate.of(2026, 4, 3), LocalDate.of(2026, 4, 6));

    /** Random networks: links point forward, some with a window, short activities partly unbroken. */
    @Provide
    Arbitrary<Network> networks() {
        return Arbitraries.longs().map(NetworkProperties::network);
    }

    private static Network network(long seed) {
        Random random = new Random(seed);
        Network network = Network.on(CALENDAR, BEGIN);
        int n = 1 + random.nextInt(9);
        for (int i = 0; i < n; i++) {
            Span span = new Span(random.nextInt(12) * 3600L + random.nextInt(3) * 600, TimeBase.values()[random.nextInt(2)]);
            Activity activity = Activity.of("a" + i, "activity " + i, span);
            network = network.with(span.seconds() < 4 * 3600 && random.nextBoolean() ? activity.unbroken() : activity);
            for (int j = 0; j < i; j++) {
                if (random.nextInt(3) == 0) {
                    Link link = Link.of("a" + j, "a" + i).atLeast(new Span(random.nextInt(3) * 3600L, TimeBase.values()[random.nextInt(2)]));
                    network = network.with(random.nextInt(3) == 0
                            ? link.atMost(new Span(link.atLeast().seconds() + random.nextInt(60) * 3600L, TimeBase.ELAPSED))
                            : link);
                }
            }
        }
        return network;
    }

    @Property
    void plan_ofAnyNetwork_keepsEveryLink(@ForAll("networks") Network network) {
        Timetable dates = network.plan();
        if (!dates.isPossible()) {
            assertThat(dates.reasons()).isNotEmpty();
            return;
        }
        for (Link link : network.links()) {
            Slot from = dates.slot(link.from());
            Slot to = dates.slot(link.to());
            assertThat(to.earlyStart()).isAfterOrEqualTo(CALENDAR.after(from.earlyEnd(), link.atLeast()));
            assertThat(to.lateStart()).isAfterOrEqualTo(CALENDAR.after(from.lateEnd(), link.atLeast()));
            if (link.most() != null) {
                assertThat(to.earlyStart()).isBeforeOrEqualTo(CALENDAR.after(from.earlyEnd(), link.most()));
                assertThat(to.lateStart()).isBeforeOrEqualTo(CALENDAR.after(from.lateEnd(), link.most()));
            }
        }
        for (Slot slot : dates.slots()) {
            assertThat(slot.totalFloat().isNegative()).isFalse();
            assertThat(slot.lateEnd()).isBeforeOrEqualTo(dates.handOver());
            assertThat(slot.earlyEnd()).isEqualTo(CALENDAR.after(slot.earlyStart(), slot.activity().duration()));
            if (slot.activity().isUnbroken() && slot.activity().duration().base() == TimeBase.SHIFT) {
                assertThat(slot.earlyEnd().toEpochSecond() - slot.earlyStart().toEpochSecond()).isEqualTo(slot.activity().duration().seconds());
            }
        }
        WorkingCheck.check(dates.working());
    }

    @Property
    void plan_longerWait_neverHandsOverEarlier(@ForAll("networks") Network network, @ForAll @IntRange(min = 0, max = 8) int which, @ForAll @IntRange(max = 50_000) int more) {
        if (network.links().isEmpty()) {
            return;
        }
        Link link = network.links().get(which % network.links().size());
        Link longer = link.atLeast(new Span(link.atLeast().seconds() + more, link.atLeast().base()));
        Timetable before = network.plan();
        Timetable after = network.with(longer).plan();
        if (before.isPossible() && after.isPossible()) {
            assertThat(after.handOver()).isAfterOrEqualTo(before.handOver());
        } else {
            assertThat(after.isPossible()).isFalse();
        }
    }

    @Property
    void plan_longerActivity_neverHandsOverEarlier(@ForAll("networks") Network network, @ForAll @IntRange(min = 0, max = 8) int which, @ForAll @IntRange(max = 50_000) int more) {
        Activity activity = network.activities().get(which % network.activities().size());
        Span longer = new Span(activity.duration().seconds() + more, activity.duration().base());
        Timetable before = network.plan();
        Timetable after = network.with(activity.withDuration(longer)).plan();
        if (before.isPossible() && after.isPossible() && !activity.isUnbroken()) {
            assertThat(after.handOver()).isAfterOrEqualTo(before.handOver());
        }
    }

    @Property
    void plan_activitiesInAnotherOrder_sameDates(@ForAll("networks") Network network, @ForAll long seed) {
        List<Activity> activities = new ArrayList<>(network.activities());
        Collections.shuffle(activities, new Random(seed));
        List<Link> links = new ArrayList<>(network.links());
        Collections.shuffle(links, new Random(seed));
        Network turned = Network.on(CALENDAR, BEGIN);
        for (Activity activity : activities) {
            turned = turned.with(activity);
        }
        for (Link link : links) {
            turned = turned.with(link);
        }
        Timetable one = network.plan();
        Timetable two = turned.plan();
        assertThat(two.isPossible()).isEqualTo(one.isPossible());
        assertThat(two.handOver()).isEqualTo(one.handOver());
        for (Slot slot : one.slots()) {
            assertThat(two.slot(slot.activity().id())).isEqualTo(slot);
        }
    }

    @Property
    void plan_closedDayMore_neverHandsOverEarlier(@ForAll("networks") Network network, @ForAll @IntRange(max = 20) int day) {
        Timetable before = network.plan();
        Timetable after = network.withCalendar(CALENDAR.withClosed(BEGIN.toLocalDate().plusDays(day))).plan();
        if (before.isPossible() && after.isPossible()) {
            assertThat(after.handOver()).isAfterOrEqualTo(before.handOver());
        }
    }
}
