package io.github.bedjoint.schedule;

import static io.github.bedjoint.schedule.NetworkTest.MONDAY;
import static io.github.bedjoint.schedule.NetworkTest.WEEK;
import static io.github.bedjoint.schedule.NetworkTest.ZONE;
import static io.github.bedjoint.schedule.NetworkTest.work;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.bedjoint.units.Read;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a plan and its parts are printed as, and windows seen from both ends, by hand. */
class ScheduleTextTest {
    @Test
    void toString_ofEachPart_inOneLine() {
        Timetable dates = WEEK.with(work("a", "3 h")).with(work("b", "1 h")).plan();
        assertThat(dates.slot("a")).hasToString("a: Mon 2026-06-01 08:00 to Mon 2026-06-01 11:00, critical");
        assertThat(dates.slot("b")).hasToString("b: Mon 2026-06-01 08:00 to Mon 2026-06-01 09:00, may start 2 h later");
        assertThat(work("a", "3 h")).hasToString("a (3 h shift)");
        assertThat(Rain.none().on(LocalDate.of(2026, 6, 1))).hasToString("[2026-06-01], dry after 24 h elapsed");
        assertThat(WorkCalendar.weekdays(ZONE).withClosed(LocalDate.of(2026, 6, 4))).hasToString("Europe/Berlin, 5 weekdays, 1 closed days");
        // (5 + 4 x 8 + 17) / 6 = 9, (17 - 5) / 6 = 2
        assertThat(ThreePoint.of(Read.time("5 h"), Read.time("8 h"), Read.time("17 h")))
                .hasToString("9 h ± 2 h: at least 5 h, most likely 8 h, at most 17 h");
    }

    @Test
    void calendar_hoursAndClosedDays_areGivenBack() {
        WorkCalendar calendar = WorkCalendar.weekdays(ZONE).withClosed(LocalDate.of(2026, 6, 4), LocalDate.of(2026, 1, 1));
        assertThat(calendar.opens(DayOfWeek.FRIDAY)).contains(LocalTime.of(8, 0));
        assertThat(calendar.closes(DayOfWeek.FRIDAY)).contains(LocalTime.of(16, 0));
        assertThat(calendar.opens(DayOfWeek.SATURDAY)).isEmpty();
        assertThat(calendar.closes(DayOfWeek.SUNDAY)).isEmpty();
        assertThat(calendar.closed()).containsExactly(LocalDate.of(2026, 1, 1), LocalDate.of(2026, 6, 4));
        assertThat(calendar.without(DayOfWeek.FRIDAY).opens(DayOfWeek.FRIDAY)).isEmpty();
        assertThat(calendar.without(DayOfWeek.FRIDAY).opens(DayOfWeek.MONDAY)).contains(LocalTime.of(8, 0));
    }

    @Test
    void window_ofALink_isThereWhereStated() {
        assertThat(Link.of("a", "b").window()).isEmpty();
        assertThat(Link.of("a", "b").atMost(Span.NONE).window()).contains(Span.NONE);
        assertThat(Link.of("a", "b").atLeast(Span.elapsed(Read.time("1 h"))).atMost(Span.elapsed(Read.time("2 h"))))
                .hasToString("a -> b, at least 1 h elapsed, at most 2 h elapsed");
    }

    @ParameterizedTest
    @CsvSource({"CURE, 72", "OUTGAS_AT_LEAST, 24", "OUTGAS_AT_MOST, 72", "DRY_AFTER_RAIN, 24"})
    void usualWaits_areHoursOnTheClock(UsualWaits wait, long hours) {
        assertThat(wait.span()).isEqualTo(Span.elapsed(Read.time(hours + " h")));
    }

    @Test
    void using_twoResources_needsBoth() {
        Activity both = work("a", "1 h").using(Resource.PEOPLE, 2).using(Resource.PRINTER, 1);
        assertThat(both.need(Resource.PEOPLE)).isEqualTo(2);
        assertThat(both.need(Resource.PRINTER)).isEqualTo(1);
        assertThat(both.need(Resource.LAMINATOR)).isZero();
    }

    /** A circle is told in the direction of its links, from an activity back to it; who only hangs on to it is not in it. */
    @Test
    void cycle_isToldInTheDirectionOfItsLinks() {
        Timetable dates = WEEK.with(work("a", "1 h")).with(work("b", "1 h")).with(work("c", "1 h")).with(work("d", "1 h")).with(work("tail", "1 h"))
                .with(Link.of("d", "a")).with(Link.of("a", "b")).with(Link.of("b", "c")).with(Link.of("c", "a")).with(Link.of("c", "tail"))
                .plan();
        assertThat(dates.cycle()).hasSize(4).first().isEqualTo(dates.cycle().get(3));
        assertThat(String.join("", dates.cycle())).isIn("abca", "bcab", "cabc");
        assertThat(dates.reasons().get(0)).startsWith("The links go in a circle: ");
    }

    /** Drying for 3 h before the heat at Wednesday 8:00, and at most 1 h between: it ends at 7:00 and so begins at 4:00, on the clock. */
    @Test
    void plan_windowAfterAWait_movesTheWaitOnTheClock() {
        Timetable dates = WEEK.with(NetworkTest.wait("dry", "3 h"))
                .with(work("heat", "2 h").notBefore(MONDAY.plusDays(2)))
                .with(Link.of("dry", "heat").atMost(Span.elapsed(Read.time("1 h"))))
                .plan();
        assertThat(dates.slot("dry").earlyStart()).isEqualTo(MONDAY.plusDays(2).minusHours(4));
        assertThat(dates.slot("heat").earlyStart()).isEqualTo(MONDAY.plusDays(2));
        // It may end as late as the heat begins.
        assertThat(dates.slot("dry").lateStart()).isEqualTo(MONDAY.plusDays(2).minusHours(3));
    }

    /**
     * Two hours of wiping at one go, at most 1 h before the heat of Tuesday 9:00: it may end at 8:00 at the earliest, but Monday's shift ends at 16:00, so it takes Tuesday
     * 8:00 to 10:00 and the heat follows. In parts it does from Monday 15:00 to Tuesday 9:00.
     */
    @Test
    void plan_windowAfterUnbrokenWork_movesItToOneShift() {
        Network network = WEEK.with(work("heat", "2 h").notBefore(MONDAY.plusDays(1).plusHours(1)));
        Link window = Link.of("wipe", "heat").atMost(Span.elapsed(Read.time("1 h")));
        Timetable whole = network.with(work("wipe", "2 h").unbroken()).with(window).plan();
        assertThat(whole.slot("wipe").earlyStart()).isEqualTo(MONDAY.plusDays(1));
        assertThat(whole.slot("heat").earlyStart()).isEqualTo(MONDAY.plusDays(1).plusHours(2));
        Timetable parts = network.with(work("wipe", "2 h")).with(window).plan();
        assertThat(parts.slot("wipe").earlyEnd()).isBetween(MONDAY.plusDays(1), MONDAY.plusDays(1).plusHours(1));
        assertThat(parts.slot("heat").earlyStart()).isEqualTo(MONDAY.plusDays(1).plusHours(1));
    }

    /** The latest dates keep windows too: what must follow within an hour cannot wait until the end. */
    @Test
    void slots_latestDates_keepTheWindow() {
        Timetable dates = WEEK.with(work("long", "8 h"))
                .with(work("mix", "1 h"))
                .with(work("spread", "1 h"))
                .with(Link.of("mix", "spread").atMost(Span.elapsed(Read.time("1 h"))))
                .plan();
        assertThat(dates.handOver()).isEqualTo(MONDAY.plusHours(8));
        assertThat(dates.slot("mix").lateStart()).isEqualTo(MONDAY.plusHours(6));
        assertThat(dates.slot("spread").lateStart()).isEqualTo(MONDAY.plusHours(7));
        assertThat(dates.slot("mix").totalFloat()).isEqualTo(Duration.ofHours(6));
        // With mixing that cannot slip, spreading can by the window only: mix ends at 9:00, so spread by 10:00.
        Timetable tied = WEEK.with(work("long", "8 h"))
                .with(work("mix", "1 h"))
                .with(work("spread", "1 h"))
                .with(work("rest", "7 h"))
                .with(Link.of("mix", "rest"))
                .with(Link.of("mix", "spread").atMost(Span.elapsed(Read.time("1 h"))))
                .plan();
        assertThat(tied.slot("mix").totalFloat()).isEqualTo(Duration.ZERO);
        assertThat(tied.slot("spread").lateStart()).isEqualTo(MONDAY.plusHours(2));
    }
}
