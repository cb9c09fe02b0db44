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

    /**
     * Ten hours of work for one, and the last of it must begin within eight hours of the mixing: at best it begins after nine. That no order does is seen
     * only after all of them, more than are tried, and it is said that not all were.
     */
    @Test
    void plan_searchCutShortWithoutAPlan_saysThatNotAllWasTried() {
        Network network = Network.on(WorkCalendar.roundTheClock(ZONE), MONDAY).with(work("mix", "1 h"));
        for (int i = 0; i < 10; i++) {
            network = network.with(work("a" + i, "1 h").using(Resource.PEOPLE, 1))
                    .with(Link.of("mix", "a" + i).atMost(Span.elapsed(Read.time("8 h"))));
        }
        Timetable dates = network.withCapacity(Capacity.unlimited().with(Resource.PEOPLE, 1)).plan();
        assertThat(dates.isPossible()).isFalse();
        assertThat(dates.reasons()).containsExactly(
                "No order of the activities keeps all windows with the people and machines there are, as far as the search went. Maybe more people help.");
        assertThat(dates.rule()).isEqualTo("1 person: where more is wanted at once, one goes after the other.");
        assertThat(dates.chain()).isEmpty();
        assertThat(dates.criticalWaits()).isEmpty();
        assertThat(dates.order()).isEmpty();
    }

    /** The same with as many printers: no crew is tried that is smaller, since people are not limited. By hand: 144 printer-hours are 48 h for three. */
    @Test
    void plan_searchCutShortForMachines_givesABound() {
        Network network = WEEK;
        for (int i = 0; i < 24; i++) {
            network = network.with(work("a" + i, 1 + i * 7 % 5 + " h").using(Resource.PRINTER, 1 + i % 3));
        }
        Timetable dates = network.withCapacity(Capacity.unlimited().with(Resource.PRINTER, 3)).plan();
        assertThat(dates.bound()).isEqualTo(MONDAY.plusDays(7).plusHours(8));
        assertThat(dates.handOver()).isAfterOrEqualTo(dates.bound()).isBefore(MONDAY.plusDays(9));
        assertThat(dates.rule()).startsWith("3 printers: where more is wanted at once, one goes after the other");
    }

    @Test
    void rule_ofEachKindOfPlan_isOneSentence() {
        assertThat(WEEK.with(work("a", "1 h")).plan().rule()).isEqualTo("Nothing is short, so each activity starts as soon as its links allow.");
        Network two = WEEK.with(work("a", "1 h").using(Resource.PEOPLE, 1)).with(work("b", "1 h").using(Resource.PEOPLE, 1));
        assertThat(two.withCapacity(Capacity.shop(1)).plan().rule())
                .isEqualTo("1 person, 1 printer, 1 laminator: where more is wanted at once, one goes after the other, in the order that hands over earliest;"
                        + " no order is earlier.");
    }

    @Test
    void toString_datesOrReasons_inOneLine() {
        assertThat(WEEK.with(work("a", "1 h")).with(work("b", "2 h")).with(Link.of("a", "b")).plan())
                .hasToString("hand-over Mon 2026-06-01 11:00 Europe/Berlin, set by a, b");
        assertThat(WEEK.with(work("a", "1 h").using(Resource.PEOPLE, 2)).withCapacity(Capacity.shop(1)).plan().toString())
                .startsWith("Activity a needs 2 of PEOPLE, but there are 1.");
    }

    /** A wait of no time is no wait. */
    @Test
    void criticalWaits_ofNoTime_areLeftOut() {
        Timetable dates = WEEK.with(work("a", "1 h"))
                .with(Activity.of("none", "None", Span.elapsed(Read.time("0 h"))))
                .with(Activity.of("cure", "Cure", Span.elapsed(Read.time("3 h"))))
                .with(Link.of("a", "none"))
                .with(Link.of("none", "cure"))
                .plan();
        assertThat(dates.handOver()).isEqualTo(MONDAY.plusHours(4));
        assertThat(dates.criticalWaits()).containsExactly(new Wait("cure", "Cure", Span.elapsed(Read.time("3 h"))));
    }
}
