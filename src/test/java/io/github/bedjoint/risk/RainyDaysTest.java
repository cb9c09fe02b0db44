package io.github.bedjoint.risk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.film.Film;
import io.github.bedjoint.film.RollOffer;
import io.github.bedjoint.job.Job;
import io.github.bedjoint.job.JobCost;
import io.github.bedjoint.job.JobDates;
import io.github.bedjoint.job.Materials;
import io.github.bedjoint.labour.Allowance;
import io.github.bedjoint.labour.Driver;
import io.github.bedjoint.labour.Labour;
import io.github.bedjoint.labour.Pace;
import io.github.bedjoint.labour.Stage;
import io.github.bedjoint.labour.Task;
import io.github.bedjoint.labour.TaskTable;
import io.github.bedjoint.price.PriceRules;
import io.github.bedjoint.schedule.Rain;
import io.github.bedjoint.schedule.WorkCalendar;
import io.github.bedjoint.survey.Survey;
import io.github.bedjoint.survey.Wall;
import io.github.bedjoint.units.Read;
import io.github.bedjoint.working.Source;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RainyDaysTest {
    private static final ZoneId ZONE = ZoneId.of("Europe/Berlin");
    private static final ZonedDateTime START = ZonedDateTime.of(2027, 5, 3, 8, 0, 0, 0, ZONE);

    /** Film is put up on one day, 8:00 to 16:00 of any day of the week, and nothing else is done. */
    private static Job oneDay() {
        WorkCalendar calendar = WorkCalendar.weekdays(ZONE);
        for (DayOfWeek day : List.of(DayOfWeek.SATURDAY, DayOfWeek.SUNDAY)) {
            calendar = calendar.withHours(day, LocalTime.of(8, 0), LocalTime.of(16, 0));
        }
        Wall wall = Wall.rectangle("Front", Read.length("1 m"), Read.length("1 m"));
        Materials film = Materials.of(Film.of("Film", Read.length("1.372 m")), List.of(RollOffer.of("25 m", Read.length("25 m"), Money.parse("EUR 400"))));
        Task hang = Task.byHand("hang", "Place and tack", Stage.SITE, Driver.PANEL, Pace.perPiece(Read.time("6 h")), Source.assumed("for this test"));
        return Job.builder("One day", Survey.of(wall), film, PriceRules.in(CurrencyUnit.EUR))
                .labour(Labour.withDefaults().withTasks(TaskTable.of(List.of(hang))).withAllowance(Allowance.none()))
                .dates(JobDates.of(calendar, START))
                .build();
    }

    /**
     * A day can be worked when it and the day before are dry, so one working day waits for two dry days in a row, the day before the first
     * counted. A run of two successes of chance q takes (1 + q)/q^2 trials in the mean (renewal theory, Feller, from memory); two of them
     * are the dry days themselves.
     */
    @ParameterizedTest
    @ValueSource(doubles = {0.05, 0.3, 0.6})
    void handOver_ofOneDayOfWork_isLateByTheMeanOfARunOfTwo(double chance) {
        Job job = oneDay();
        long dry = JobCost.of(job).timetable().orElseThrow().handOver().toEpochSecond();
        RiskResult result = Simulation.of(job).with(Input.rainChance(), Spread.list(chance)).run(1, 20_000);

        double q = 1 - chance;
        double exact = (1 + q) / (q * q) - 2;
        double variance = (1 - 5 * Math.pow(q, 2) * (1 - q) - Math.pow(q, 5)) / (Math.pow(q, 4) * (1 - q) * (1 - q));
        double late = (result.of(Outcome.HAND_OVER).mean() - dry) / 86_400;
        // Five standard errors; the variance of a run of two by the same theory, for r = 2: (1 - (2r + 1) p q^r - q^(2r+1)) / (p q^r)^2.
        assertThat(late).isCloseTo(exact, within(5 * Math.sqrt(variance / 20_000)));
        assertThat(result.impossible()).isZero();
        assertThat(result.of(Outcome.PAID_TIME).deviation()).isZero();
    }

    /** The days drawn, named in the job as rain, give the same dates: a rainy day moves what stands outdoors, not just the hand-over. */
    @Test
    void handOver_ofADrawnJob_isThatOfTheJobWithTheseDaysOfRain() {
        Job job = Demo.job();
        LocalDate start = job.dates().orElseThrow().start().toLocalDate();
        for (long seed = 1; seed < 30; seed++) {
            RiskResult one = Simulation.of(job).with(Input.rainChance(), Spread.list(0.35)).run(seed, 1);
            List<LocalDate> rainy = new RainyDays(start, 0.35, Streams.of(seed, "days of rain").of(0)).in(400);
            Job wet = job.toBuilder().dates(job.dates().orElseThrow().withRain(Rain.none().on(rainy))).build();
            assertThat(one.of(Outcome.HAND_OVER).mean())
                    .isEqualTo(JobCost.of(wet).timetable().orElseThrow().handOver().toEpochSecond());
        }
    }

    @Test
    void in_moreDays_keepsTheFirst() {
        RainyDays days = new RainyDays(LocalDate.of(2027, 5, 3), 0.5, Streams.of(4, "days").of(0));
        List<LocalDate> few = List.copyOf(days.in(10));
        assertThat(days.isUnknown(LocalDate.of(2027, 5, 11))).isFalse();
        assertThat(days.isUnknown(LocalDate.of(2027, 5, 12))).isTrue();
        List<LocalDate> many = days.in(40);
        assertThat(many.subList(0, few.size())).isEqualTo(few);
        assertThat(many).allMatch(day -> !day.isBefore(LocalDate.of(2027, 5, 2)) && day.isBefore(LocalDate.of(2027, 6, 11)));
        assertThat(many).hasSizeBetween(10, 30);
    }

    /** In nearly unbroken rain the wall hardly ever dries; jobs are late by years or have no dates, and every one is counted. */
    @Test
    void run_inNearlyUnbrokenRain_comesToAnEnd() {
        RiskResult result = Simulation.of(oneDay()).with(Input.rainChance(), Spread.list(0.9)).run(1, 30);
        assertThat(result.impossible() + result.of(Outcome.HAND_OVER).count()).isEqualTo(30);
        assertThat(Duration.ofSeconds((long) result.of(Outcome.HAND_OVER).percentile(0.5) - START.toEpochSecond())).isGreaterThan(Duration.ofDays(20));
    }
}
