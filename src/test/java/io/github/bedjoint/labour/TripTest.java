package io.github.bedjoint.labour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.labour.Trip.Purpose;
import io.github.bedjoint.units.Read;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.working.WorkingCheck;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class TripTest {
    private static final Labour LABOUR = Labour.withDefaults().withAllowance(Allowance.none());
    private static final Amounts AMOUNTS =
            Amounts.none().withArea(Driver.VISIBLE_AREA, Read.area("60 m2")).withArea(Driver.HEATED_AREA, Read.area("72 m2"));
    private static final Trip SURVEY = Trip.of(Purpose.SURVEY, Read.time("1 h"), Read.time("30 min"));
    private static final Trip WASH = Trip.of(Purpose.WASH, Read.time("1 h"), Read.time("15 min")).withPeople(2).doing("wash").withWait(Read.time("168 h"));

    /** By hand: survey 1 x (60 + 30) = 90 min; washing 2 people x (60 + 15) = 150 min, of the shift 60 + 15 + 60 x 2 / 2 = 135 min. */
    @Test
    void estimate_trips_arePaidAndLeaveTheDaysAlone() {
        LabourEstimate without = LABOUR.estimate(AMOUNTS);
        LabourEstimate with = LABOUR.withTrips(List.of(SURVEY, WASH)).estimate(AMOUNTS);
        assertThat(with.totalPaidS() - without.totalPaidS() + (without.siteDays().days() - with.siteDays().days()) * 40 * 60).isCloseTo(240 * 60, within(1e-6));
        assertThat(without.siteElapsedS() - with.siteElapsedS()).isCloseTo(120 * 60, within(1e-9));
        assertThat(with.trips().get(1).elapsedS()).isCloseTo(135 * 60, within(1e-9));
        assertThat(with.trips().get(1).trip().waitS()).isEqualTo(168 * 3600);
        WorkingCheck.check(with.working());
    }

    @Test
    void estimate_tripsPermuted_sameTotal() {
        assertThat(LABOUR.withTrips(List.of(SURVEY, WASH)).estimate(AMOUNTS).totalPaidS())
                .isEqualTo(LABOUR.withTrips(List.of(WASH, SURVEY)).estimate(AMOUNTS).totalPaidS());
    }

    @Test
    void times_twoInspections_payTwice() {
        Trip inspection = Trip.of(Purpose.INSPECTION, Read.time("1 h"), Read.time("1 h"));
        double once = LABOUR.withTrips(List.of(inspection)).estimate(Amounts.none()).totalPaidS();
        assertThat(LABOUR.withTrips(List.of(inspection.times(2))).estimate(Amounts.none()).totalPaidS()).isEqualTo(2 * once);
    }

    /**
     * By hand: 600 m2 x 2 min / 2 people = 600 min; a shift of 480 leaves 420 beside 60 of travel: two days, 2 x 60 + 15 + 600 = 735 min of the
     * shifts; paid beside the washing 2 people x (2 x 60 + 15) = 270 min.
     */
    @Test
    void estimate_washingLongerThanAShift_takesTwoDaysAndTwoTravels() {
        Amounts large = Amounts.none().withArea(Driver.VISIBLE_AREA, Read.area("600 m2"));
        TripTime wash = LABOUR.withTrips(List.of(WASH)).estimate(large).trips().get(0);
        assertThat(wash.days()).isEqualTo(2);
        assertThat(wash.elapsedS()).isCloseTo(735 * 60, within(1e-6));
        assertThat(wash.paidS()).isCloseTo(270 * 60, within(1e-6));
        WorkingCheck.check(wash.working());
    }

    /** By hand: outside the shift the travel is paid and takes nothing of the day: 600 + 15 of 480 are two days as well, but 615 min. */
    @Test
    void estimate_travelOutsideShift_takesNothingOfTheDay() {
        Labour outside = LABOUR.withWorkDay(WorkDay.of(Read.time("8 h")).withTravelOutsideShift(Read.time("0 h")));
        TripTime wash = outside.withTrips(List.of(WASH)).estimate(Amounts.none().withArea(Driver.VISIBLE_AREA, Read.area("600 m2"))).trips().get(0);
        assertThat(wash.days()).isEqualTo(2);
        assertThat(wash.elapsedS()).isCloseTo(615 * 60, within(1e-6));
        assertThat(wash.paidS()).isCloseTo(270 * 60, within(1e-6));
    }

    /** Loading is done for each trip on which tasks are done: by hand 2 x 20 min for two washings by one person, all of it on that trip. */
    @Test
    void estimate_tasksByTrip_fillTheTripsThatWork() {
        Amounts amounts = AMOUNTS.withCount(Driver.TRIP, 2);
        LabourEstimate hours = LABOUR.withTrips(List.of(SURVEY, WASH.withPeople(1).times(2))).estimate(amounts);
        assertThat(hours.trips().get(0).elapsedS()).isCloseTo(90 * 60, within(1e-6));
        assertThat(hours.trips().get(1).elapsedS()).isCloseTo((2 * 60 + 2 * 15 + 120 + 40) * 60, within(1e-6));
        WorkingCheck.check(hours.working());
    }

    /** By hand: the way there of 3 h and a briefing of 30 min lengthen the installing: 780 + 210 min in shifts of 440 left are three days. */
    @Test
    void estimate_tripToInstall_isAPartOfTheInstallingDays() {
        Trip far = Trip.of(Purpose.INSTALL, Read.time("3 h"), Read.time("30 min")).withPeople(2);
        LabourEstimate near = LABOUR.withTrips(List.of(WASH)).estimate(AMOUNTS);
        LabourEstimate hours = LABOUR.withTrips(List.of(WASH, far)).estimate(AMOUNTS);
        assertThat(near.siteElapsedS()).isCloseTo((60 + 720) * 60, within(1e-6));
        assertThat(near.siteDays().days()).isEqualTo(2);
        assertThat(hours.siteElapsedS()).isCloseTo((780 + 210) * 60, within(1e-6));
        assertThat(hours.siteDays().days()).isEqualTo(3);
        assertThat(hours.trips().get(1).paidS()).isCloseTo(2 * 210 * 60, within(1e-6));
        WorkingCheck.check(hours.working());
        assertThatThrownBy(() -> far.doing("hang")).isInstanceOf(RefusedException.class).hasMessageContaining("Maybe");
    }

    @Test
    void estimate_travelThatFillsTheShift_isImpossibleWithTheReason() {
        LabourEstimate hours = LABOUR.withTrips(List.of(WASH.withTravel(Read.time("9 h")))).estimate(AMOUNTS);
        assertThat(hours.isPossible()).isFalse();
        assertThat(hours.reasons()).singleElement().asString().contains("9 h", "wash", "Maybe");
        WorkingCheck.check(hours.working());
    }

    @ParameterizedTest
    @EnumSource(Purpose.class)
    void purpose_eachOne_isBeforeOrAfter(Purpose purpose) {
        assertThat(purpose.isBeforeInstalling()).isEqualTo(purpose.compareTo(Purpose.INSTALL) < 0);
    }

    @Test
    void withTrips_wrong_refused() {
        assertThatThrownBy(() -> LABOUR.withTrips(List.of(WASH, WASH))).isInstanceOf(RefusedException.class).hasMessageContaining("wash");
        assertThatThrownBy(() -> LABOUR.withTrips(List.of(SURVEY.doing("polish"))).estimate(AMOUNTS)).hasMessageContaining("'polish'");
        assertThatThrownBy(() -> LABOUR.withTrips(List.of(SURVEY.doing("print"))).estimate(AMOUNTS)).hasMessageContaining("on site");
        assertThatThrownBy(() -> LABOUR.withTrips(List.of(SURVEY.doing("set-up"))).estimate(AMOUNTS)).hasMessageContaining("each day");
        assertThatThrownBy(() -> SURVEY.times(0)).isInstanceOf(RefusedException.class).hasMessageContaining("SURVEY");
        assertThatThrownBy(() -> Trip.of(Purpose.SURVEY, Read.time("-1 h"), Read.time("1 h"))).hasMessageContaining("travel");
    }

    /** By hand: a quarter more on the site hours: survey 90 min x 0.25 = 22.5 min; the hours stay. */
    @Test
    void premium_onSite_changesNoHours() {
        Labour labour = LABOUR.withTrips(List.of(SURVEY));
        LabourEstimate hours = labour.withPremium(Premium.onSite("night", 0.25)).estimate(Amounts.none());
        assertThat(hours.totalPaidS()).isEqualTo(labour.estimate(Amounts.none()).totalPaidS());
        assertThat(hours.premiumS()).isCloseTo(22.5 * 60, within(1e-9));
        WorkingCheck.check(hours.working());
        assertThatThrownBy(() -> Premium.onSite("night", -0.1)).isInstanceOf(RefusedException.class);
    }

    /** By hand: heat breaks of 5 % on top of 15 % of job time: 1.20. */
    @Test
    void allowance_plusBreaks_sameBase() {
        assertThat(Allowance.onJobTime(0.15).plus(0.05).standardS(100)).isCloseTo(120, within(1e-12));
        assertThatThrownBy(() -> Allowance.onWorkingDay(0.6).plus(0.4)).isInstanceOf(RefusedException.class);
    }

    /**
     * Four identical walls at 80 %: by the derived table the first four units take 3.142104 times the first. Printing (a machine) takes 4 times.
     */
    @Test
    void repeated_identicalWalls_handsLearnAndMachinesDoNot() {
        Amounts one = Amounts.none().withInner(Driver.SEAM, 10).withInner(Driver.PRINTED_LENGTH, 10);
        LabourEstimate single = LABOUR.estimate(one);
        LabourEstimate four = LABOUR.estimate(List.of(WorkPlace.of("bay", one).repeated(4, Learning.crawford(0.8))));
        assertThat(four.task("seam").orElseThrow().basicS() / single.task("seam").orElseThrow().basicS()).isCloseTo(3.142104, within(6e-7));
        assertThat(four.task("print").orElseThrow().basicS()).isCloseTo(4 * single.task("print").orElseThrow().basicS(), within(1e-9));
        WorkingCheck.check(four.working());
    }
}
