package io.github.bedjoint.labour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.survey.Access;
import io.github.bedjoint.units.Read;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Working;
import io.github.bedjoint.working.WorkingCheck;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What hours and their parts are printed as, with figures worked by hand, and the parts a working is made of. */
class LabourTextTest {
    private static final Source TEST = Source.assumed("for this test");
    private static final Task HANG = task("hang", Stage.SITE, Driver.PANEL, Pace.perPiece(Read.time("30 min")));
    private static final Task PRINT = task("print", Stage.PRODUCTION, Driver.PANEL, Pace.perPiece(Read.time("6 min")));
    private static final Labour PLAIN = Labour.withDefaults().withTasks(TaskTable.of(List.of(HANG, PRINT))).withAllowance(Allowance.none());
    private static final Amounts TEN = Amounts.none().withCount(Driver.PANEL, 10);

    private static Task task(String id, Stage stage, Driver driver, Pace pace) {
        return Task.byHand(id, "Task " + id, stage, driver, pace, TEST);
    }

    /** 7 strips of 200 mm on 1300 mm, 3 m each, twice at 0.6 m/min: 70 min. 1.2 (10 + 0.5) = 12.6. */
    @Test
    void toString_heat_saysStripsAndAreas() {
        HeatRolling source = HeatRolling.of(Read.speed("0.6 m/min"), HeatRolling.Speeds.PROJECTED, Read.length("250 mm")).withPassOverlap(Read.length("50 mm"));
        assertThat(source.withPasses(2).over(Read.length("1300 mm"), Read.length("3 m"), 1)).hasToString("1.1667 h: 7 strips of 3 m, 2 passes");
        assertThat(source.withPasses(1).over(Read.length("200 mm"), Read.length("3 m"), 1)).hasToString("5 min: 1 strip of 3 m, 1 pass");
        assertThat(HeatedArea.of(1.2, Read.area("10 m2"), Read.area("0.5 m2"))).hasToString("12.6 m² heated: 10 m² visible and 0.5 m² of overlap, 1.2 times");
    }

    /** An overlap as wide as the source leaves one step of 12.5 um for each strip. */
    @Test
    void withPassOverlap_asWideAsTheSource_isRefusedOrLeavesAStep() {
        HeatRolling source = HeatRolling.of(Read.speed("1 m/min"), HeatRolling.Speeds.PROJECTED, Read.length("10 mm"));
        assertThat(source.withPassOverlap(Read.length("9.99 mm")).over(Read.length("10 mm"), Read.length("1 m"), 1).strips()).isEqualTo(800);
    }

    /** 20 s at 120 % are 24 s, and 20 % more 28.8 s. */
    @Test
    void toString_times_sayWhatTheyAreMadeOf() {
        assertThat(StandardTime.of(Read.time("20 s"), Rating.percent(120), Allowance.onJobTime(0.2)))
                .hasToString("28.8 s standard: 20 s observed at a rating of 120 %, allowance of 20 % on job time");
        assertThat(StandardTime.of(Read.time("24 s"), Rating.NORMAL, Allowance.onWorkingDay(0.2)))
                .hasToString("30 s standard: 24 s observed at a rating of 100 %, allowance of 20 % on the working day");
        // Each doubling takes 80 %: 100, 80 and for the fourth 64 h; the third 100 x 3^log2(0.8) = 70.21 h.
        LearnedTime four = Learning.crawford(0.8).over(Read.time("100 h"), 4);
        assertThat(four.toString()).startsWith("64 h for unit 4, 314.2").endsWith("h for all: first unit 100 h, each doubling takes 80 %");
    }

    @Test
    void toString_hire_saysDaysAndRates() {
        Hire lift = new Hire("lift", Read.money("EUR 120.00"), Read.money("EUR 85.50"), 3);
        assertThat(lift.over(1, 1)).hasToString("EUR 376.50: 1 lift, 3 days at EUR 85.50, delivery EUR 120.00");
        assertThatThrownBy(() -> new Hire("lift", Read.money("EUR 1.00").negated(), Read.money("EUR 2.00"), 0)).hasMessageContaining("hire of lift is EUR -1.00, but must not be negative");
        assertThatThrownBy(() -> new Hire("lift", Read.money("EUR 1.00"), Read.money("EUR 2.00").negated(), 0)).hasMessageContaining("hire of lift is EUR -2.00, but must not be negative");
        assertThat(new Hire("lift", Read.money("EUR 0.00"), Read.money("EUR 0.00"), 0).over(1, 1).cost()).isEqualTo(Read.money("EUR 0.00"));
    }

    /** Of 5 m from the ground 2 m at 1, 2 m at 1.15 and 1 m at 1.3: a mean of 1.12; the same by areas of a wall 3 m wide, whatever its bottom. */
    @Test
    void toString_reach_saysSharesAndFactors() {
        HeightBands bands = HeightBands.defaults();
        Reach reach = bands.over(Read.length("0 m"), Read.length("5 m"));
        assertThat(reach).hasToString("factor 1.12: 40 % from ground at 1, 40 % from platform at 1.15, 20 % from scaffold at 1.3");
        assertThat(reach.accesses()).isEqualTo(Set.of(Access.GROUND, Access.PLATFORM, Access.SCAFFOLD));
        assertThat(Reach.of(1.25, TEST)).hasToString("factor 1.25: 100 % of the area at 1.25");
        assertThat(bands.factor(Access.PLATFORM)).isEqualTo(1.15);
        assertThat(bands.toString()).startsWith("{2.0=GROUND, 4.0=PLATFORM, ").contains("GROUND=1.0");
        Reach areas = bands.over(Read.length("0 m"), height -> 3 * Math.min(height, 5));
        assertThat(areas.factor()).isCloseTo(1.12, within(1e-12));
        // From 3 m up: 1 m by platform and 4 m by scaffold, (1.15 + 4 x 1.3) / 5.
        assertThat(bands.over(Read.length("3 m"), height -> 3 * Math.min(height, 5)).factor()).isCloseTo(1.27, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"1200, 20 min/m2", "1, 1 s/m2", "90, 1.5 min/m2", "0, 0 min/m2", "100, 100 s/m2", "0.001, 0.001 s/m2", "6, 0.1 min/m2"})
    void toString_pace_isShortAndReadsBack(double seconds, String text) {
        Pace pace = Pace.perArea(Read.timePerArea(seconds + " s/m2"));
        assertThat(pace).hasToString(text);
        assertThat(Pace.parse(Driver.VISIBLE_AREA, pace.toString())).isEqualTo(pace);
    }

    @ParameterizedTest
    @ValueSource(strings = {"a", "z", "0", "9", "a-z", "a0-9z", "wipe-2"})
    void task_idOfLowerCaseDigitsAndDashes_isKept(String id) {
        assertThat(task(id, Stage.SITE, Driver.PANEL, HANG.pace()).id()).isEqualTo(id);
    }

    @ParameterizedTest
    @ValueSource(strings = {"-a", "A", "a b", "a_b", "a/b", "a:b", "`a", "a{", "ä", "a."})
    void task_anyOtherId_isRefused(String id) {
        assertThatThrownBy(() -> task(id, Stage.SITE, Driver.PANEL, HANG.pace())).hasMessageContaining("must be lower case letters, digits and dashes");
    }

    /** 10 panels: 5 h on site and 1 h in the shop. */
    @Test
    void toString_estimate_saysHoursAndDays() {
        LabourEstimate hours = PLAIN.estimate(TEN);
        assertThat(hours).hasToString("6.00 h paid: 1.00 h in the shop, 5.00 h on site in 1 day");
        assertThat(hours.siteDays()).hasToString("1 day: 5 h of work, 8 h of it a day");
        assertThat(hours.siteDays().workPerDayS()).isEqualTo(8 * 3600);
        TaskTime hang = hours.task("hang").orElseThrow();
        assertThat(hang).hasToString("Task hang: 5 h paid, 5 h elapsed, 1 person, pace: " + Source.Kind.ASSUMED.words());
        assertThat(hang.standardS()).isEqualTo(5 * 3600);
        assertThat(hours.shopPremiumS()).isZero();
        WorkingCheck.check(hours.working());
    }

    /** Half as much again on site: 2.5 h of the 5; nothing in the shop, so that the working has one part more. */
    @Test
    void estimate_withPremium_showsItsWorking() {
        LabourEstimate plain = PLAIN.estimate(TEN);
        LabourEstimate night = PLAIN.withPremium(new Premium("night", 0.1, 0.5)).estimate(TEN);
        assertThat(night.sitePremiumS()).isCloseTo(2.5 * 3600, within(1e-9));
        assertThat(night.shopPremiumS()).isCloseTo(360, within(1e-9));
        assertThat(night.working().parts()).hasSize(plain.working().parts().size() + 1);
        assertThat(night.working().toString()).contains("night");
        WorkingCheck.check(night.working());
    }

    /** A day of 8 h with 8 h of travel holds no work; without work it needs none. */
    @Test
    void siteDays_withoutTimeOrWork_sayWhy() {
        Labour far = PLAIN.withWorkDay(PLAIN.workDay().withTravelInShift(Read.time("8 h")));
        LabourEstimate full = far.estimate(TEN);
        assertThat(full.isPossible()).isFalse();
        assertThat(full.siteDays().toString()).isEqualTo("Set-up of 0 h and travel of 8 h fill the shift of 8 h: no time is left for work. Maybe stay near the site or lengthen the shift.");
        assertThat(full.siteDays().working().toString()).contains("no time is left for work");
        LabourEstimate idle = far.estimate(Amounts.none());
        assertThat(idle.siteDays().isPossible()).isTrue();
        assertThat(idle.siteDays().days()).isZero();
        assertThat(idle.siteDays().working().toString()).contains("There is no work on site.");
        assertThat(PLAIN.estimate(Amounts.none()).siteDays().working().find("labour.days").isPresent()).isEqualTo(PLAIN.estimate(TEN).siteDays().working().find("labour.days").isPresent());
    }

    /** A survey of 1 h of travel and half an hour on site: 1.5 h for one; each of two people with 30 minutes more of wiping. */
    @Test
    void toString_trip_saysTravelAndPeople() {
        Trip survey = Trip.of(Trip.Purpose.SURVEY, Read.time("1 h"), Read.time("30 min"));
        Labour travelling = PLAIN.withWorkDay(PLAIN.workDay().withTravelInShift(Read.time("1 h")));
        TripTime one = travelling.withTrips(List.of(survey)).estimate(TEN).trips().get(0);
        assertThat(one).hasToString("1.5 h paid: 1 survey trip, 1 person, 1.5 h by the clock");
        TripTime two = travelling.withTrips(List.of(survey.withPeople(2).times(2))).estimate(TEN).trips().get(0);
        assertThat(two).hasToString("6 h paid: 2 survey trips, 2 people, 3 h by the clock");
        assertThat(PLAIN.withTrips(List.of(survey)).trips()).containsExactly(survey);
    }

    /** Task "hang" on a trip for inspection: 10 x 30 min beside 1 h of travel and half an hour: 6.5 h of the shift; its tasks and its days stand in the working. */
    @Test
    void working_tripWithTasks_hasTheirSum() {
        Trip trip = Trip.of(Trip.Purpose.INSPECTION, Read.time("1 h"), Read.time("30 min"));
        Labour travelling = PLAIN.withWorkDay(PLAIN.workDay().withTravelInShift(Read.time("1 h")));
        LabourEstimate with = travelling.withTrips(List.of(trip.doing("hang"))).estimate(TEN);
        LabourEstimate without = travelling.withTrips(List.of(trip)).estimate(TEN);
        assertThat(with.trips().get(0).elapsedS()).isCloseTo(6.5 * 3600, within(1e-9));
        assertThat(count(with.trips().get(0).working())).isGreaterThan(count(without.trips().get(0).working()));
        assertThat(with.working().parts()).hasSize(travelling.estimate(TEN).working().parts().size() + 1);
        WorkingCheck.check(with.working());
        // Installing follows from all its hours: its trip has no days of its own.
        Trip install = Trip.of(Trip.Purpose.INSTALL, Read.time("1 h"), Read.time("30 min"));
        TripTime installing = travelling.withTrips(List.of(install)).estimate(TEN).trips().get(0);
        assertThat(count(installing.working())).isLessThan(count(without.trips().get(0).working()));
    }

    private static int count(Working working) {
        return 1 + working.parts().stream().mapToInt(LabourTextTest::count).sum();
    }

    /** A removal may wait for the life of the film, ten years; an inspection two at most. */
    @Test
    void withWait_ofARemoval_mayBeYears() {
        Trip removal = Trip.of(Trip.Purpose.REMOVAL, Read.time("1 h"), Read.time("1 h"));
        assertThat(removal.withWait(Read.time("3650 d")).waitS()).isEqualTo(3650.0 * 86_400);
        assertThatThrownBy(() -> Trip.of(Trip.Purpose.INSPECTION, Read.time("1 h"), Read.time("1 h")).withWait(Read.time("3650 d"))).hasMessageContaining("wait at the trip for");
    }

    @Test
    void amounts_ofAnotherKind_areRefused() {
        assertThatThrownBy(() -> Amounts.none().withLength(Driver.PANEL, Read.length("1 m"))).hasMessageContaining("PANEL");
        assertThatThrownBy(() -> Amounts.none().withCount(Driver.SEAM, 1)).hasMessageContaining("SEAM");
        assertThatThrownBy(() -> Amounts.none().withArea(Driver.SEAM, Read.area("1 m2"))).hasMessageContaining("SEAM");
        assertThat(Amounts.none().withInner(Driver.PANEL, -0.0)).isEqualTo(Amounts.none().withInner(Driver.PANEL, 0));
        assertThat(new Pace(io.github.bedjoint.units.Measure.TIME, -0.0)).isEqualTo(new Pace(io.github.bedjoint.units.Measure.TIME, 0));
    }
}
