package io.github.bedjoint.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.bedjoint.units.Door;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** Hours that are cut out of a calendar's compiled ones, against the calendar's own account of each day. */
class RainCalendarProperties {
    private static final LocalDate DAY = LocalDate.of(2027, 3, 1);

    @Property(tries = 200)
    void hours_withDaysOfRain_areThoseOfEachDay(@ForAll long seed) {
        Random random = new Random(seed);
        WorkCalendar calendar = WorkCalendar.weekdays(ZoneId.of("America/New_York"));
        if (random.nextBoolean()) {
            calendar = calendar.withHours(DayOfWeek.SUNDAY, LocalTime.of(random.nextInt(12), 0), LocalTime.MIDNIGHT)
                    .withHours(DayOfWeek.MONDAY, LocalTime.MIDNIGHT, LocalTime.of(13 + random.nextInt(10), 30));
        }
        List<LocalDate> days = new ArrayList<>();
        for (int i = random.nextInt(30); i > 0; i--) {
            days.add(DAY.plusDays(random.nextInt(60)));
        }
        WorkCalendar wet = Rain.none().dryingFor(Span.elapsed(Door.time(random.nextInt(60) * 3600.0))).on(days).on(calendar);
        OpenHours cut = wet.openFrom(DAY.atStartOfDay(calendar.zone()).toEpochSecond());
        OpenHours anew = OpenHours.of(wet, LocalDate.of(2027, 1, 1));
        for (int hour = 0; hour < 24 * 100; hour++) {
            long second = DAY.atStartOfDay(calendar.zone()).toEpochSecond() + hour * 1800L;
            assertThat(cut.isOpen(second)).isEqualTo(anew.isOpen(second));
            assertThat(cut.worked(second)).isEqualTo(anew.worked(second));
            assertThat(cut.add(second, 30_000)).isEqualTo(anew.add(second, 30_000));
            assertThat(cut.nextOpen(second)).isEqualTo(anew.nextOpen(second));
        }
    }
}
