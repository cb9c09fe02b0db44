package io.github.bedjoint.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.bedjoint.units.Read;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import org.junit.jupiter.api.Test;

/** Rain, outgassing, washing a week ahead and curing: all common practice, no source. */
class RainTest {
    private static final ZoneId ZONE = ZoneId.of("Europe/Berlin");
    /** A Monday. */
    private static final ZonedDateTime MONDAY = ZonedDateTime.of(2026, 6, 1, 8, 0, 0, 0, ZONE);
    private static final Network JOB = Network.on(WorkCalendar.weekdays(ZONE), MONDAY)
            .with(work("wash", "4 h").outdoors())
            .with(work("print", "6 h"))
            .with(Activity.of("outgas", "Outgas", Span.elapsed(Read.time("48 h"))))
            .with(work("laminate", "1 h"))
            .with(work("install", "10 h").outdoors())
            .with(Activity.of("cure", "Cure", Span.elapsed(Read.time("72 h"))))
            .with(Link.of("print", "outgas"))
            .with(Link.of("outgas", "laminate"))
            .with(Link.of("laminate", "install"))
            .with(Link.of("wash", "install").atLeast(Span.elapsed(Read.time("168 h"))))
            .with(Link.of("install", "cure"));

    private static Activity work(String id, String time) {
        return Activity.of(id, id, Span.shift(Read.time(time)));
    }

    /** By hand: washed Monday to 12:00; a week later Monday 8 June 12:00 to 16:00 and Tuesday 8:00 to 14:00 installed; cured Friday 12 June 14:00. */
    @Test
    void plan_dry_byHand() {
        Timetable dates = JOB.plan();
        assertThat(dates.slot("install").earlyStart()).isEqualTo(MONDAY.plusDays(7).plusHours(4));
        assertThat(dates.handOver()).isEqualTo(MONDAY.plusDays(11).plusHours(6));
        assertThat(dates.criticalWaits()).extracting(Wait::what).containsExactly("wash -> install", "cure");
        assertThat(dates.slot("outgas").isCritical()).isFalse();
    }

    /** By hand: rain on Tuesday 9 June and drying to the end of Wednesday: the last 6 h are done on Thursday 8:00 to 14:00: two days later. */
    @Test
    void ifItRains_whileInstalling_pausesAndDries() {
        RainEffect effect = JOB.plan().ifItRains(LocalDate.of(2026, 6, 9));
        assertThat(effect.delay()).isEqualTo(Duration.ofDays(2));
        assertThat(effect.moves()).extracting(Move::activity).containsExactly("install", "cure");
        assertThat(effect.then().slot("install").earlyEnd()).isEqualTo(MONDAY.plusDays(10).plusHours(6));
    }

    /** By hand: rain on the first day: washed Wednesday 3 June, a week later Wednesday 10 June 12:00, installed Thursday 14:00: two days later. */
    @Test
    void ifItRains_onTheWashDay_movesEverythingButProduction() {
        RainEffect effect = JOB.plan().ifItRains(LocalDate.of(2026, 6, 1));
        assertThat(effect.moves()).extracting(Move::activity).containsExactly("wash", "install", "cure");
        assertThat(effect.moves().get(0).after()).isEqualTo(MONDAY.plusDays(2));
        assertThat(effect.delay()).isEqualTo(Duration.ofDays(2));
    }

    @Test
    void ifItRains_inBetween_nothingMoves() {
        RainEffect effect = JOB.plan().ifItRains(LocalDate.of(2026, 6, 3));
        assertThat(effect.moves()).isEmpty();
        assertThat(effect.delay()).isZero();
    }

    /** Rain on Sunday 7 June: without drying time nothing moves, with 36 h the wall is dry on Tuesday 12:00. */
    @Test
    void withRain_dryingTime_isAParameter() {
        Rain sunday = Rain.none().on(LocalDate.of(2026, 6, 7));
        assertThat(JOB.withRain(sunday.dryingFor(Span.NONE)).plan().handOver()).isEqualTo(JOB.plan().handOver());
        assertThat(JOB.withRain(sunday.dryingFor(Span.elapsed(Read.time("36 h")))).plan().slot("install").earlyStart())
                .isEqualTo(MONDAY.plusDays(8).plusHours(4));
        assertThat(JOB.withRain(sunday).plan().slot("install").earlyStart()).isEqualTo(MONDAY.plusDays(8));
    }

    /** By hand: with a slow ink of 240 h the outgassing sets the date and is the wait that is critical. */
    @Test
    void criticalWaits_slowInk_areTheInkAndTheCure() {
        Timetable dates = JOB.with(Activity.of("outgas", "Outgas", Span.elapsed(Read.time("240 h")))).plan();
        assertThat(dates.chain()).containsExactly("print", "outgas", "laminate", "install", "cure");
        assertThat(dates.criticalWaits()).extracting(Wait::title).containsExactly("Outgas", "Cure");
    }

    /** Without dates in dry weather, or with rain on every day a window could be kept, nothing moves: the reasons are those of the plan. */
    @Test
    void ifItRains_withoutDates_movesNothing() {
        Network never = JOB.with(Link.of("wash", "install").atLeast(Span.elapsed(Read.time("3 h"))).atMost(Span.elapsed(Read.time("2 h"))));
        RainEffect effect = never.plan().ifItRains(LocalDate.of(2026, 6, 1));
        assertThat(effect.then().isPossible()).isFalse();
        assertThat(effect.moves()).isEmpty();
        assertThat(effect.delay()).isZero();
    }

    /** A hand-over that must follow within a day of the print, while the wall is wet for a week: dates when dry, none when it rains. */
    @Test
    void ifItRains_windowThatRainBreaks_hasNoDatesThen() {
        Network network = Network.on(WorkCalendar.weekdays(ZONE), MONDAY)
                .with(work("mix", "1 h").notBefore(MONDAY))
                .with(work("spread", "1 h").outdoors())
                .with(Link.of("mix", "spread").atMost(Span.elapsed(Read.time("1 h"))))
                .withRain(Rain.none().dryingFor(Span.elapsed(Read.time("500 d"))));
        Timetable dry = network.plan();
        assertThat(dry.handOver()).isEqualTo(MONDAY.plusHours(2));
        RainEffect effect = dry.ifItRains(LocalDate.of(2026, 6, 1));
        assertThat(effect.then().isPossible()).isTrue();
        assertThat(effect.delay()).isGreaterThan(Duration.ofDays(500));
    }

    /** The same rain asked for by shop and site, whose hours differ, is each time that of the calendar asked with. */
    @Test
    void on_anotherCalendar_isWorkedOutAnew() {
        Rain tuesday = Rain.none().on(LocalDate.of(2026, 6, 2));
        WorkCalendar weekdays = WorkCalendar.weekdays(ZONE);
        WorkCalendar always = WorkCalendar.roundTheClock(ZONE);
        for (int round = 0; round < 2; round++) {
            // Rain on Tuesday and 24 h to dry: Monday 8:00 to 16:00 and Thursday 8:00 on.
            assertThat(tuesday.on(weekdays).after(MONDAY, Span.shift(Read.time("9 h")))).isEqualTo(MONDAY.plusDays(3).plusHours(1));
            assertThat(tuesday.on(always).after(MONDAY, Span.shift(Read.time("17 h")))).isEqualTo(MONDAY.plusDays(2).plusHours(17));
        }
        assertThat(Rain.none().on(weekdays)).isSameAs(weekdays);
    }
}
