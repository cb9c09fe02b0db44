package io.github.bedjoint.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;

/** Days that are compiled as far as they are asked for. */
class OpenHoursAheadTest {
    private static final WorkCalendar CALENDAR = WorkCalendar.weekdays(ZoneId.of("Europe/Berlin"));
    private static final LocalDate BEGIN = LocalDate.of(2027, 3, 1);

    /** By hand: 2027-03-01 is a Monday, so 260 shifts of 8 h are 52 weeks, the last of which ends on Friday 2028-02-25 at 16:00. */
    @Test
    void add_beyondTheDaysCompiledAtFirst_countsOn() {
        OpenHours hours = OpenHours.of(CALENDAR, BEGIN);
        assertThat(hours.add(second(BEGIN) + 8 * 3600, 260 * 8 * 3600L)).isEqualTo(second(LocalDate.of(2028, 2, 25)) + 16 * 3600);
        assertThat(hours.lastWith(hours.worked(second(LocalDate.of(2028, 2, 25)) + 16 * 3600)))
                .as("work goes on the Monday after").isEqualTo(second(LocalDate.of(2028, 2, 28)) + 8 * 3600);
    }

    @Test
    void answers_whateverWasAskedBefore_areTheSame() {
        OpenHours far = OpenHours.of(CALENDAR, BEGIN);
        far.worked(second(LocalDate.of(2029, 6, 1)));
        OpenHours fresh = OpenHours.of(CALENDAR, BEGIN);
        for (int day = 0; day < 1000; day++) {
            long at = second(BEGIN.plusDays(day)) + 10 * 3600;
            assertThat(OpenHours.of(CALENDAR, BEGIN).fits(at, 8 * 3600)).isEqualTo(far.fits(at, 8 * 3600)).isEqualTo(fresh.fits(at, 8 * 3600));
            assertThat(fresh.worked(at)).isEqualTo(far.worked(at));
            assertThat(fresh.lastFits(at, at + 7200, 3600)).isEqualTo(far.lastFits(at, at + 7200, 3600));
            assertThat(fresh.lastOpen(at)).isEqualTo(far.lastOpen(at));
        }
    }

    @Test
    void add_moreThanTheCalendarHas_neverComes() {
        OpenHours hours = OpenHours.of(CALENDAR, BEGIN);
        assertThat(hours.add(second(BEGIN), 5L * 366 * 86_400)).isEqualTo(OpenHours.NEVER);
        assertThat(hours.fits(second(BEGIN), 9 * 3600)).as("longer than a shift").isEqualTo(OpenHours.NEVER);
        assertThat(hours.nextOpen(second(LocalDate.of(2031, 1, 1)))).isEqualTo(OpenHours.NEVER);
    }

    private static long second(LocalDate day) {
        return day.atStartOfDay(CALENDAR.zone()).toEpochSecond();
    }
}
