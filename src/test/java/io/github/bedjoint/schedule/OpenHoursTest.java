package io.github.bedjoint.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Counting hours, by hand: Monday to Friday 8:00 to 16:00 UTC in 2024, of which 1 January is a Monday. */
class OpenHoursTest {
    private static final long HOUR = 3600;
    private static final long NEW_YEAR = LocalDate.of(2024, 1, 1).atStartOfDay(ZoneOffset.UTC).toEpochSecond();
    private static final OpenHours HOURS = OpenHours.of(WorkCalendar.weekdays(ZoneOffset.UTC), LocalDate.of(2024, 1, 1));

    /** Days and hours after New Year. */
    private static long at(int day, int hour) {
        return NEW_YEAR + (24L * day + hour) * HOUR;
    }

    @Test
    void isOpen_startIsAndEndIsNot() {
        assertThat(HOURS.isOpen(at(0, 8) - 1)).isFalse();
        assertThat(HOURS.isOpen(at(0, 8))).isTrue();
        assertThat(HOURS.isOpen(at(0, 16) - 1)).isTrue();
        assertThat(HOURS.isOpen(at(0, 16))).isFalse();
        assertThat(HOURS.isOpen(at(-400, 9))).isFalse();
    }

    @Test
    void covers_theFirstYearOnly() {
        assertThat(HOURS.covers(NEW_YEAR)).isTrue();
        assertThat(HOURS.covers(NEW_YEAR - 1)).isFalse();
        assertThat(HOURS.covers(at(366, 0) - 1)).isTrue(); // 2024 is a leap year
        assertThat(HOURS.covers(at(366, 0))).isFalse();
    }

    @Test
    void worked_beforeInAndAfterAShift() {
        assertThat(HOURS.worked(at(0, 7))).isZero();
        assertThat(HOURS.worked(at(0, 9))).isEqualTo(HOUR);
        assertThat(HOURS.worked(at(0, 20))).isEqualTo(8 * HOUR);
        assertThat(HOURS.worked(at(6, 12))).isEqualTo(40 * HOUR);
    }

    /** Eight hours are over at the end of Monday; the last moment with no more than eight is Tuesday's start. */
    @Test
    void firstAndLastWith_betweenTwoShifts_areItsEnds() {
        assertThat(HOURS.firstWith(8 * HOUR)).isEqualTo(at(0, 16));
        assertThat(HOURS.lastWith(8 * HOUR)).isEqualTo(at(1, 8));
        assertThat(HOURS.firstWith(9 * HOUR)).isEqualTo(at(1, 9));
        assertThat(HOURS.lastWith(9 * HOUR)).isEqualTo(at(1, 9));
        assertThat(HOURS.firstWith(0)).isEqualTo(NEW_YEAR);
        assertThat(HOURS.lastWith(0)).isEqualTo(at(0, 8));
        assertThat(HOURS.lastWith(-1)).isEqualTo(NEW_YEAR);
        assertThat(HOURS.firstWith(99_999 * HOUR)).isEqualTo(OpenHours.NEVER);
        assertThat(HOURS.lastWith(99_999 * HOUR)).isEqualTo(OpenHours.NEVER);
    }

    /** The last open second before Tuesday's shift is Monday's last; before the first shift there is none but the begin. */
    @Test
    void lastOpen_inAGap_isTheLastSecondBefore() {
        assertThat(HOURS.lastOpen(at(1, 7))).isEqualTo(at(0, 16) - 1);
        assertThat(HOURS.lastOpen(at(1, 9))).isEqualTo(at(1, 9));
        assertThat(HOURS.lastOpen(at(0, 7))).isEqualTo(NEW_YEAR);
    }

    @Test
    void fits_inOneStretch_orOnTheNextDay() {
        assertThat(HOURS.fits(at(0, 7), 8 * HOUR)).isEqualTo(at(0, 8));
        assertThat(HOURS.fits(at(0, 9), 7 * HOUR)).isEqualTo(at(0, 9));
        assertThat(HOURS.fits(at(0, 9), 7 * HOUR + 1)).isEqualTo(at(1, 8));
        assertThat(HOURS.fits(at(0, 16), 1)).isEqualTo(at(1, 8));
        assertThat(HOURS.fits(at(0, 8), 8 * HOUR + 1)).isEqualTo(OpenHours.NEVER);
    }

    /** Three hours over by Tuesday 10:00 begin on Monday 13:00; over by Tuesday 11:00 they begin on Tuesday. */
    @Test
    void lastFits_endsInTime_orOnTheDayBefore() {
        assertThat(HOURS.lastFits(OpenHours.NEVER, at(1, 11), 3 * HOUR)).isEqualTo(at(1, 8));
        assertThat(HOURS.lastFits(OpenHours.NEVER, at(1, 10), 3 * HOUR)).isEqualTo(at(0, 13));
        assertThat(HOURS.lastFits(at(0, 12), at(1, 11), 3 * HOUR)).isEqualTo(at(0, 12));
        assertThat(HOURS.lastFits(at(0, 7), at(1, 11), 3 * HOUR)).isEqualTo(NEW_YEAR);
        assertThat(HOURS.lastFits(OpenHours.NEVER, at(0, 10), 3 * HOUR)).isEqualTo(NEW_YEAR);
    }

    /** Nine hours that are over at Tuesday 9:00 begin with Monday; a moment in the gap is reached by a second more than its open hours. */
    @Test
    void firstReaching_acrossAGap_needsASecondMore() {
        assertThat(HOURS.firstReaching(at(1, 9), 9 * HOUR)).isEqualTo(NEW_YEAR);
        assertThat(HOURS.firstReaching(at(1, 9), 2 * HOUR)).isEqualTo(at(0, 15));
        assertThat(HOURS.firstReaching(at(0, 16), 2 * HOUR)).isEqualTo(at(0, 14));
        assertThat(HOURS.firstReaching(at(0, 20), 2 * HOUR)).isEqualTo(at(0, 14) + 1);
        assertThat(HOURS.firstReaching(at(0, 20), 0)).isEqualTo(at(0, 20));
        assertThat(HOURS.lastWithin(at(0, 20), 2 * HOUR)).isEqualTo(at(0, 14));
        assertThat(HOURS.lastWithin(at(0, 20), 0)).isEqualTo(at(0, 20));
    }

    /** Without calendar hours nothing ever comes. */
    @Test
    void empty_hasNoHours() {
        assertThat(OpenHours.EMPTY.isOpen(NEW_YEAR)).isFalse();
        assertThat(OpenHours.EMPTY.worked(NEW_YEAR)).isZero();
        assertThat(OpenHours.EMPTY.firstWith(1)).isEqualTo(OpenHours.NEVER);
        assertThat(OpenHours.EMPTY.fits(NEW_YEAR, 1)).isEqualTo(OpenHours.NEVER);
    }

    /** A hole from Monday 12:00 over the night to Tuesday 10:00, and one within it, take 4 + 2 hours. */
    @Test
    void without_holesThatOverlap_takeTheirHoursOnce() {
        OpenHours left = HOURS.without(List.of(
                new WorkCalendar.Stretch(at(0, 14), at(0, 15)), new WorkCalendar.Stretch(at(0, 12), at(1, 10)), new WorkCalendar.Stretch(at(4, 18), at(5, 18))));
        assertThat(left.worked(at(2, 0))).isEqualTo((16 - 4 - 2) * HOUR);
        assertThat(left.nextOpen(at(0, 12))).isEqualTo(at(1, 10));
        assertThat(left.nextOpen(at(0, 11))).isEqualTo(at(0, 11));
        assertThat(left.worked(at(7, 0))).isEqualTo((40 - 6) * HOUR);
    }

    /** Days without a night between them are one stretch, the first two of the year as well. */
    @Test
    void compile_roundTheClock_isOneStretch() {
        OpenHours always = OpenHours.of(WorkCalendar.roundTheClock(ZoneOffset.UTC), LocalDate.of(2024, 1, 1));
        assertThat(always.fits(NEW_YEAR, 30 * HOUR)).isEqualTo(NEW_YEAR);
        assertThat(always.fits(at(100, 5), 900 * HOUR)).isEqualTo(at(100, 5));
        assertThat(always.lastFits(OpenHours.NEVER, at(10, 0), 72 * HOUR)).isEqualTo(at(7, 0));
    }

    /** A hole that ends where a shift begins, or begins where it ends, takes nothing of it. */
    @Test
    void without_holesThatTouch_takeNothing() {
        OpenHours left = HOURS.without(List.of(new WorkCalendar.Stretch(at(0, 16), at(1, 8)), new WorkCalendar.Stretch(at(2, 8), at(2, 16)), new WorkCalendar.Stretch(at(3, 0), at(3, 9))));
        assertThat(left.worked(at(2, 0))).isEqualTo(16 * HOUR);
        assertThat(left.worked(at(3, 0))).isEqualTo(16 * HOUR);
        assertThat(left.nextOpen(at(2, 8))).isEqualTo(at(3, 9));
        assertThat(left.worked(at(4, 0))).isEqualTo(23 * HOUR);
        assertThat(left.nextOpen(at(1, 8))).isEqualTo(at(1, 8));
    }
}
