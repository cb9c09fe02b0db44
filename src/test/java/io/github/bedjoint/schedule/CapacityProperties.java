package io.github.bedjoint.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class CapacityProperties {
    private static final ZoneId ZONE = ZoneId.of("Europe/Berlin");
    private static final ZonedDateTime BEGIN = ZonedDateTime.of(2026, 3, 27, 9, 30, 0, 0, ZONE);
    private static final WorkCalendar CALENDAR = WorkCalendar.weekdays(ZONE);

    /** Random networks in which activities compete; every fourth has windows. */
    @Provide
    Arbitrary<Network> networks() {
        return Arbitraries.longs().map(seed -> network(seed, 4));
    }

    @Provide
    Arbitrary<Network> networksWithoutWindows() {
        return Arbitraries.longs().map(seed -> network(seed, Integer.MAX_VALUE));
    }

    private static Network network(long seed, int windows) {
        Random random = new Random(seed);
        Network network = Network.on(CALENDAR, BEGIN).withCapacity(Capacity.shop(2));
        int n = 1 + random.nextInt(5);
        boolean windowed = random.nextInt(windows) == 0;
        for (int i = 0; i < n; i++) {
            Span span = new Span(random.nextInt(12) * 3600L, TimeBase.values()[random.nextInt(3) / 2]);
            Activity activity = Activity.of("a" + i, "activity " + i, span).using(Resource.PEOPLE, random.nextInt(3));
            network = network.with(random.nextBoolean() ? activity.using(Resource.PRINTER, 1) : activity);
            for (int j = 0; j < i; j++) {
                if (random.nextInt(4) == 0) {
                    Link link = Link.of("a" + j, "a" + i).atLeast(new Span(random.nextInt(3) * 3600L, TimeBase.ELAPSED));
                    network = network.with(windowed ? link.atMost(new Span(random.nextInt(40) * 3600L, TimeBase.ELAPSED)) : link);
                }
            }
        }
        return network;
    }

    @Property
    void plan_withoutWindows_isAsEarlyAsTheBestOfAllOrders(@ForAll("networksWithoutWindows") Network network) {
        Timetable dates = network.plan();
        assertThat(dates.isProven()).isTrue();
        assertThat(dates.handOver()).isEqualTo(AllOrders.earliest(network));
    }

    @Property
    void plan_ofAnyNetwork_neverUsesMoreThanThereIs(@ForAll("networks") Network network) {
        Timetable dates = network.plan();
        for (Slot slot : dates.slots()) {
            for (Resource resource : Resource.values()) {
                int used = dates.slots().stream()
                        .filter(other -> !other.earlyStart().isAfter(slot.earlyStart()) && other.earlyEnd().isAfter(slot.earlyStart()))
                        .mapToInt(other -> other.activity().need(resource))
                        .sum();
                assertThat(used).isLessThanOrEqualTo(network.capacity().of(resource));
            }
            assertThat(slot.totalFloat().isNegative()).isFalse();
        }
    }

    @Property
    void plan_onePersonMore_neverHandsOverLater(@ForAll("networks") Network network) {
        Timetable few = network.plan();
        Timetable more = network.withCapacity(Capacity.shop(3)).plan();
        Timetable any = network.withCapacity(Capacity.unlimited()).plan();
        if (few.isPossible()) {
            assertThat(more.handOver()).isBeforeOrEqualTo(few.handOver());
            assertThat(any.handOver()).isBeforeOrEqualTo(more.handOver());
        }
    }

    @Property
    void plan_longerWaitUnderLimits_neverHandsOverEarlier(@ForAll("networks") Network network, @ForAll("hours") int hours) {
        Timetable before = network.plan();
        for (Link link : network.links()) {
            Timetable after = network.with(link.atLeast(new Span(link.atLeast().seconds() + hours * 3600L, TimeBase.ELAPSED))).plan();
            if (before.isPossible() && after.isPossible()) {
                assertThat(after.handOver()).isAfterOrEqualTo(before.handOver());
            }
        }
    }

    @Provide
    Arbitrary<Integer> hours() {
        return Arbitraries.integers().between(0, 30);
    }
}
