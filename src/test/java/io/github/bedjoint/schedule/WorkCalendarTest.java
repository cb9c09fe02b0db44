package io.github.bedjoint.schedule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.bedjoint.units.Read;
import io.github.bedjoint.units.RefusedException;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WorkCalendarTest {
    private static final ZoneId BERLIN = ZoneId.of("Europe/Berlin");
    private static final WorkCalendar CALENDAR = WorkCalendar.weekdays(BERLIN).withClosed(LocalDate.of(2024, 5, 1));

    private static ZonedDateTime at(String local) {
        return ZonedDateTime.of(LocalDate.parse(local.substring(0, 10)), LocalTime.parse(local.substring(11)), BERLIN);
    }

    /** Source: run on Java 17: Europe/Berlin 2024-03-30T10:00 + 24 h = 11:00 on the next day, + 1 day = 10:00. */
    @Test
    void after_24HoursAcrossTheClockChange_are24Hours() {
        ZonedDateTime end = CALENDAR.after(at("2024-03-30T10:00"), Span.elapsed(Read.time("24 h")));
        assertThat(end).isEqualTo(at("2024-03-31T11:00"));
        assertThat(at("2024-03-30T10:00").plusDays(1)).isEqualTo(at("2024-03-31T10:00"));
    }

    /** 2024-04-29 is a Monday, 1 May is closed. */
    @ParameterizedTest
    @CsvSource({
        "2024-04-29T08:00, 8 h, 2024-04-29T16:00",
        "2024-04-29T15:00, 2 h, 2024-04-30T09:00",
        "2024-04-30T15:00, 2 h, 2024-05-02T09:00",
        "2024-04-29T06:00, 1 h, 2024-04-29T09:00",
        "2024-04-29T17:00, 1 h, 2024-04-30T09:00",
        "2024-05-03T15:00, 2 h, 2024-05-06T09:00",
        "2024-04-29T08:00, 40 h, 2024-05-06T16:00",
        "2024-05-04T12:00, 0 h, 2024-05-04T12:00",
        "2024-04-29T08:00, 0.5 s, 2024-04-29T08:00:01"
    })
    void after_shiftTime_byHand(String start, String time, String end) {
        assertThat(CALENDAR.after(at(start), Span.shift(Read.time(time)))).isEqualTo(at(end));
    }

    /** The night shift of the clock change has the hours that pass: 0:00 to 8:00 on 2024-03-31 is 7 h, on 2024-10-27 9 h. */
    @ParameterizedTest
    @CsvSource({"2024-03-31, 7", "2024-10-27, 9", "2024-10-20, 8"})
    void shiftBetween_onTheDayOfTheClockChange_hoursThatPass(LocalDate date, long hours) {
        WorkCalendar nights = CALENDAR.withHours(DayOfWeek.SUNDAY, LocalTime.MIDNIGHT, LocalTime.of(8, 0));
        assertThat(nights.shiftBetween(date.atStartOfDay(BERLIN), date.plusDays(1).atStartOfDay(BERLIN))).isEqualTo(Duration.ofHours(hours));
    }

    @Test
    void roundTheClock_shiftTime_isElapsedTime() {
        WorkCalendar always = WorkCalendar.roundTheClock(BERLIN);
        ZonedDateTime start = at("2024-03-30T10:00");
        assertThat(always.after(start, Span.shift(Read.time("100 h")))).isEqualTo(always.after(start, Span.elapsed(Read.time("100 h"))));
    }

    @Test
    void withBlocked_partOfAShift_isLeftOut() {
        WorkCalendar calendar = CALENDAR.withBlocked(at("2024-04-29T10:00").toInstant(), at("2024-04-29T12:00").toInstant());
        assertThat(calendar.after(at("2024-04-29T09:00"), Span.shift(Read.time("2 h")))).isEqualTo(at("2024-04-29T13:00"));
        assertThat(calendar.shiftBetween(at("2024-04-29T08:00"), at("2024-04-29T16:00"))).isEqualTo(Duration.ofHours(6));
    }

    /** What a calendar answers does not depend on what it was asked before. */
    @ParameterizedTest
    @CsvSource({"2024-12-31T15:00", "2026-12-30T15:00", "2023-01-02T08:00", "2031-06-02T08:00"})
    void after_askedForOtherYearsBefore_sameAnswer(String start) {
        WorkCalendar used = WorkCalendar.weekdays(BERLIN);
        used.after(at("2024-06-03T08:00"), Span.shift(Read.time("1 h")));
        Span span = Span.shift(Read.time("2500 h"));
        assertThat(used.after(at(start), span)).isEqualTo(WorkCalendar.weekdays(BERLIN).after(at(start), span));
    }

    @Test
    void after_withoutHours_refused() {
        WorkCalendar never = CALENDAR.without(DayOfWeek.MONDAY).without(DayOfWeek.TUESDAY).without(DayOfWeek.WEDNESDAY)
                .without(DayOfWeek.THURSDAY).without(DayOfWeek.FRIDAY);
        assertThatThrownBy(() -> never.after(at("2024-04-29T08:00"), Span.shift(Read.time("1 h"))))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("Maybe no weekday has hours");
    }

    @Test
    void withHours_endBeforeStart_refused() {
        assertThatThrownBy(() -> CALENDAR.withHours(DayOfWeek.MONDAY, LocalTime.of(22, 0), LocalTime.of(6, 0)))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("MONDAY");
        assertThat(CALENDAR.withHours(DayOfWeek.MONDAY, LocalTime.of(16, 0), LocalTime.MIDNIGHT)).isNotEqualTo(CALENDAR);
    }

    @ParameterizedTest
    @CsvSource({"-1 h", "800 d"})
    void span_outOfRange_refused(String time) {
        assertThatThrownBy(() -> Span.elapsed(Read.time(time))).isInstanceOf(RefusedException.class).hasMessageContaining("time");
    }

    @Test
    void withBlocked_endNotAfterStart_refused() {
        ZonedDateTime ten = at("2024-04-29T10:00");
        assertThatThrownBy(() -> CALENDAR.withBlocked(ten.toInstant(), ten.toInstant())).isInstanceOf(RefusedException.class).hasMessageContaining("must end after it starts");
        assertThatThrownBy(() -> CALENDAR.withBlocked(ten.toInstant(), ten.minusHours(1).toInstant())).hasMessageContaining("Maybe they are the wrong way round");
    }

    /** Blocked before the shift to 10:00, from 12:00 to 13:00, and from 15:00 on into the evening: 2 + 2 = 4 h of the shift of 8 are left. */
    @Test
    void withBlocked_acrossTheEndsOfAShift_leavesTheRest() {
        WorkCalendar calendar = CALENDAR.withBlocked(at("2024-04-29T06:00").toInstant(), at("2024-04-29T10:00").toInstant())
                .withBlocked(at("2024-04-29T12:00").toInstant(), at("2024-04-29T13:00").toInstant())
                .withBlocked(at("2024-04-29T15:00").toInstant(), at("2024-04-29T20:00").toInstant());
        assertThat(calendar.shiftBetween(at("2024-04-29T08:00"), at("2024-04-30T08:00"))).isEqualTo(Duration.ofHours(4));
        assertThat(calendar.open(LocalDate.of(2024, 4, 29)))
                .containsExactly(stretch("2024-04-29T10:00", "2024-04-29T12:00"), stretch("2024-04-29T13:00", "2024-04-29T15:00"));
        assertThat(calendar.after(at("2024-04-29T08:00"), Span.shift(Read.time("5 h")))).isEqualTo(at("2024-04-30T09:00"));
        // Blocked as a whole: nothing is left of the day.
        WorkCalendar none = calendar.withBlocked(at("2024-04-29T08:00").toInstant(), at("2024-04-29T16:00").toInstant());
        assertThat(none.open(LocalDate.of(2024, 4, 29))).isEmpty();
        assertThat(none.shiftBetween(at("2024-04-29T08:00"), at("2024-04-30T08:00"))).isEqualTo(Duration.ZERO);
    }

    private static WorkCalendar.Stretch stretch(String from, String to) {
        return new WorkCalendar.Stretch(at(from).toEpochSecond(), at(to).toEpochSecond());
    }

    /** From 2:00 to 3:00 there was no time on 2024-03-31, so that a shift of this hour has none. */
    @Test
    void open_hourThatTheClockLeftOut_isNone() {
        WorkCalendar early = CALENDAR.withHours(DayOfWeek.SUNDAY, LocalTime.of(2, 0), LocalTime.of(3, 0));
        assertThat(early.open(LocalDate.of(2024, 3, 31))).isEmpty();
        assertThat(early.open(LocalDate.of(2024, 3, 24))).containsExactly(stretch("2024-03-24T02:00", "2024-03-24T03:00"));
    }

    @Test
    void withRain_onNoDay_isTheSame() {
        assertThat(CALENDAR.withRain(java.util.List.of(), Span.NONE)).isSameAs(CALENDAR);
    }
}
