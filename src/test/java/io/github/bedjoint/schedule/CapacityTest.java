package io.github.bedjoint.schedule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.bedjoint.units.Read;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.working.WorkingCheck;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import org.junit.jupiter.api.Test;

class CapacityTest {
    private static final ZoneId ZONE = ZoneId.of("Europe/Berlin");
    /** A Monday. */
    private static final ZonedDateTime MONDAY = ZonedDateTime.of(2026, 6, 1, 8, 0, 0, 0, ZONE);
    private static final Network WEEK = Network.on(WorkCalendar.weekdays(ZONE), MONDAY);

    private static Activity work(String id, String time) {
        return Activity.of(id, id, Span.shift(Read.time(time)));
    }

    /**
     * Two pictures and one printer, by hand; b is mounted for 4 h after laminating. Printing b first: laminated Wednesday 9:00, mounted to 14:00, while a is
     * laminated Wednesday 12:00 to 13:00. Printing a first: b is laminated Wednesday 12:00 and mounted from 13:00, to Thursday 9:00.
     */
    @Test
    void plan_onePrinter_putsTheLongTailFirst() {
        Network network = WEEK.with(work("print-a", "3 h").using(Resource.PRINTER, 1))
                .with(work("print-b", "1 h").using(Resource.PRINTER, 1))
                .with(work("laminate-a", "1 h").using(Resource.LAMINATOR, 1))
                .with(work("laminate-b", "1 h").using(Resource.LAMINATOR, 1))
                .with(work("mount-b", "4 h"))
                .with(Link.of("print-a", "laminate-a").atLeast(Span.elapsed(Read.time("48 h"))))
                .with(Link.of("print-b", "laminate-b").atLeast(Span.elapsed(Read.time("48 h"))))
                .with(Link.of("laminate-b", "mount-b"));
        Timetable two = network.plan();
        Timetable one = network.withCapacity(Capacity.shop(1)).plan();
        assertThat(two.order()).isEmpty();
        assertThat(one.order()).containsExactly(Link.of("print-b", "print-a"));
        assertThat(one.handOver()).isEqualTo(MONDAY.plusDays(2).plusHours(6));
        assertThat(one.isProven()).isTrue();
        assertThat(one.slot("laminate-a").totalFloat()).hasHours(1);
        WorkingCheck.check(one.working());
    }

    /** By hand: three activities of 8 h, 8 h and 4 h for one person each take one person 20 h, two people 12 h, three 8 h. */
    @Test
    void plan_morePeople_finishesEarlier() {
        Network network = WEEK.with(work("a", "8 h").using(Resource.PEOPLE, 1))
                .with(work("b", "8 h").using(Resource.PEOPLE, 1))
                .with(work("c", "4 h").using(Resource.PEOPLE, 1));
        assertThat(network.withCapacity(Capacity.shop(1)).plan().handOver()).isEqualTo(MONDAY.plusDays(2).plusHours(4));
        assertThat(network.withCapacity(Capacity.shop(2)).plan().handOver()).isEqualTo(MONDAY.plusDays(1).plusHours(4));
        assertThat(network.withCapacity(Capacity.shop(3)).plan().handOver()).isEqualTo(MONDAY.plusHours(8));
    }

    /** A window and one crew: wiping wall A, then wall B, then heating both cannot keep 2 h; each wall is wiped just before its heating. */
    @Test
    void plan_windowsAndOneCrew_keepsBoth() {
        Network network = WEEK;
        for (String wall : new String[] {"a", "b"}) {
            network = network.with(work("wipe-" + wall, "30 min").unbroken().using(Resource.PEOPLE, 1))
                    .with(work("heat-" + wall, "4 h").using(Resource.PEOPLE, 1))
                    .with(Link.of("wipe-" + wall, "heat-" + wall).atMost(Span.elapsed(Read.time("2 h"))));
        }
        Timetable dates = network.withCapacity(Capacity.shop(1)).plan();
        assertThat(dates.isPossible()).isTrue();
        assertThat(dates.isProven()).isTrue();
        // 2 x 4.5 h = 9 h of work for one: the second day at 9:00.
        assertThat(dates.handOver()).isEqualTo(MONDAY.plusDays(1).plusHours(1));
    }

    @Test
    void plan_moreThanThereIs_isAResult() {
        Timetable dates = WEEK.with(work("hang", "1 h").using(Resource.PEOPLE, 2)).withCapacity(Capacity.shop(1)).plan();
        assertThat(dates.isPossible()).isFalse();
        assertThat(dates.isProven()).isFalse();
        assertThat(dates.reasons()).singleElement().asString().contains("hang needs 2 of PEOPLE");
    }

    /** Both must start within an hour of the same end, and there is one person: no order keeps both. */
    @Test
    void plan_noOrderKeepsTheWindows_isAResult() {
        Timetable dates = WEEK.with(work("mix", "1 h"))
                .with(work("a", "4 h").using(Resource.PEOPLE, 1))
                .with(work("b", "4 h").using(Resource.PEOPLE, 1))
                .with(Link.of("mix", "a").atMost(Span.elapsed(Read.time("1 h"))))
                .with(Link.of("mix", "b").atMost(Span.elapsed(Read.time("1 h"))))
                .withCapacity(Capacity.shop(1))
                .plan();
        assertThat(dates.isPossible()).isFalse();
        assertThat(dates.reasons()).singleElement().asString().contains("No order of the activities");
    }

    @Test
    void with_outOfRange_refused() {
        assertThatThrownBy(() -> Capacity.shop(0)).isInstanceOf(RefusedException.class).hasMessageContaining("PEOPLE");
        assertThatThrownBy(() -> work("a", "1 h").using(Resource.PRINTER, -1)).isInstanceOf(RefusedException.class);
    }

    /**
     * 24 activities are more than the search can finish: the plan says so and gives a bound. By hand: activity i takes 1 + 7 i mod 5 hours of 1 + i mod 3
     * people, 144 person-hours in all, so 48 h for three: not before Monday 8 June 16:00.
     */
    @Test
    void plan_searchCutShort_saysSoAndGivesABound() {
        Network network = WEEK;
        for (int i = 0; i < 24; i++) {
            network = network.with(work("a" + i, 1 + i * 7 % 5 + " h").using(Resource.PEOPLE, 1 + i % 3));
        }
        Timetable dates = network.withCapacity(Capacity.shop(3)).plan();
        assertThat(dates.isPossible()).isTrue();
        assertThat(dates.bound()).isEqualTo(MONDAY.plusDays(7).plusHours(8));
        assertThat(dates.handOver()).isAfterOrEqualTo(dates.bound()).isBefore(MONDAY.plusDays(9));
        assertThat(dates.isProven()).isEqualTo(dates.handOver().isEqual(dates.bound()));
    }

    /** A search cut short with three people must still not be beaten by one with two. */
    @Test
    void plan_searchCutShort_isNotBeatenByASmallerCrew() {
        Network network = WEEK;
        for (int i = 0; i < 14; i++) {
            network = network.with(work("a" + i, 1 + i * 7 % 5 + " h").using(Resource.PEOPLE, 1 + i % 2));
        }
        Timetable two = network.withCapacity(Capacity.shop(2)).plan();
        Timetable three = network.withCapacity(Capacity.shop(3)).plan();
        Timetable four = network.withCapacity(Capacity.shop(4)).plan();
        assertThat(three.handOver()).isBeforeOrEqualTo(two.handOver());
        assertThat(four.handOver()).isBeforeOrEqualTo(three.handOver());
    }
}
