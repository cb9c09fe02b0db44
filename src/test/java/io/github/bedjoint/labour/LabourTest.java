package io.github.bedjoint.labour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.units.Read;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.WorkingCheck;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LabourTest {
    private static final TaskTable TABLE = TaskTable.parse("task,title,stage,driver,pace,people,machine,attended,allowance,height,basis,source\n"
            + "print,Print,PRODUCTION,PRINTED_LENGTH,4 min/m,1,PRINTER,0.25,no,no,SHOP,test\n"
            + "trim,Trim,PRODUCTION,PANEL,5 min,1,NONE,1,yes,no,SHOP,test\n"
            + "load,Load,SITE,TRIP,30 min,1,NONE,1,yes,no,SHOP,test\n"
            + "set-up,Set up,SITE,DAY,40 min,1,NONE,1,yes,no,SHOP,test\n"
            + "hang,Hang,SITE,PANEL_FOR_ONE,10 min,1,NONE,1,yes,no,SHOP,test\n"
            + "hang-two,Hang married,SITE,PANEL_FOR_TWO,16 min,2,NONE,1,yes,no,SHOP,test\n"
            + "heat,Heat-roll,SITE,HEATED_AREA,10 min/m2,1,NONE,1,yes,yes,SHOP,test\n");
    private static final Amounts AMOUNTS = Amounts.none()
            .withLength(Driver.PRINTED_LENGTH, Read.length("30 m"))
            .withPanels(10, 2)
            .withArea(Driver.HEATED_AREA, Read.area("40 m2"));
    private static final Labour LABOUR = Labour.withDefaults().withTasks(TABLE).withAllowance(Allowance.onJobTime(0.2));

    /**
     * By hand, in minutes. Print 30 m x 4 = 120 on the clock, a quarter attended: 30. Trim 10 x 5 = 50, with allowance 60.
     * Site: hang 8 x 10 x 1.2 = 96, married 2 x 16 x 1.2 = 38.4 of work, by two: 19.2 on the clock; heat 40 x 10 x 1.2 = 480.
     * On the clock 96 + 19.2 + 480 = 595.2; a day has 480 - 48 = 432: two days. Paid: shop 30 + 60 = 90; site 96 + 38.4 + 480 + 2 x 48 = 710.4.
     */
    @Test
    void estimate_oneInstaller_byHand() {
        LabourEstimate hours = LABOUR.estimate(AMOUNTS);
        assertThat(hours.task("print").orElseThrow().elapsedS() / 60).isCloseTo(120, within(1e-9));
        assertThat(hours.productionPaidS() / 60).isCloseTo(90, within(1e-9));
        assertThat(hours.task("hang-two").orElseThrow().people()).isEqualTo(2);
        assertThat(hours.siteElapsedS() / 60).isCloseTo(595.2, within(1e-9));
        assertThat(hours.siteDays().days()).isEqualTo(2);
        assertThat(hours.sitePaidS() / 60).isCloseTo(710.4, within(1e-9));
        assertThat(hours.totalPaidS() / 60).isCloseTo(800.4, within(1e-9));
        assertThat(hours.isPossible()).isTrue();
        WorkingCheck.check(hours.working());
    }

    /**
     * By hand, in minutes, two at q = 0.8 with one hour of travel in the shift: work on site is 96 + 38.4 + 480 = 614.4 for one, so
     * 614.4 / 1.6 = 384 on the clock and 614.4 / 0.8 = 768 paid. Set-up 48 / 1.6 = 30 on the clock, 60 paid. A day has 480 - 30 - 60 = 390: one day.
     * Travel paid 2 x 60 = 120. Site 768 + 60 + 120 = 948.
     */
    @Test
    void estimate_tandem_byHand() {
        LabourEstimate hours = LABOUR.withSiteCrew(Crew.of(2).withTandemEfficiency(0.8))
                .withWorkDay(WorkDay.of(Read.time("8 h")).withTravelInShift(Read.time("1 h")))
                .estimate(AMOUNTS);
        assertThat(hours.siteElapsedS() / 60).isCloseTo(384, within(1e-9));
        assertThat(hours.siteDays().days()).isEqualTo(1);
        assertThat(hours.siteDays().travelPaidS() / 60).isCloseTo(120, within(1e-9));
        assertThat(hours.sitePaidS() / 60).isCloseTo(948, within(1e-9));
        WorkingCheck.check(hours.working());
    }

    /** By hand: a trip of its own is paid (30 x 1.2 = 36 min) and does not fill the installing days. */
    @Test
    void estimate_withATrip_paidButNoDay() {
        LabourEstimate without = LABOUR.estimate(AMOUNTS);
        LabourEstimate with = LABOUR.estimate(AMOUNTS.withCount(Driver.TRIP, 1));
        assertThat(with.totalPaidS() - without.totalPaidS()).isCloseTo(36 * 60, within(1e-9));
        assertThat(with.siteDays().days()).isEqualTo(without.siteDays().days());
    }

    /** By hand: on the scaffold heat-rolling takes 1.5 times as long, hanging is not marked as slowed: 96 + 19.2 + 720 min. */
    @Test
    void estimate_slowPlace_onlyMarkedTasksSlowDown() {
        WorkPlace high = WorkPlace.of("gable", AMOUNTS).withFactor(1.5, Source.shop("test"));
        LabourEstimate hours = LABOUR.estimate(List.of(high));
        assertThat(hours.siteElapsedS() / 60).isCloseTo(96 + 19.2 + 720, within(1e-9));
    }

    @Test
    void estimate_travelOutsideTheShift_doesNotShortenTheDay() {
        WorkDay day = WorkDay.of(Read.time("8 h"));
        LabourEstimate inside = LABOUR.withWorkDay(day.withTravelInShift(Read.time("3 h"))).estimate(AMOUNTS);
        LabourEstimate outside = LABOUR.withWorkDay(day.withTravelOutsideShift(Read.time("3 h"))).estimate(AMOUNTS);
        assertThat(inside.siteDays().days()).isEqualTo(3);
        assertThat(outside.siteDays().days()).isEqualTo(2);
        assertThat(outside.siteDays().travelPaidS()).isEqualTo(2 * 3 * 3600);
    }

    @Test
    void estimate_nothingLeftOfTheShift_isAResultWithAReason() {
        LabourEstimate hours = LABOUR.withWorkDay(WorkDay.of(Read.time("8 h")).withTravelInShift(Read.time("7.5 h"))).estimate(AMOUNTS);
        assertThat(hours.isPossible()).isFalse();
        assertThat(hours.reasons()).singleElement().asString().contains("fill the shift").contains("Maybe");
        assertThat(hours.siteDays().days()).isZero();
        assertThat(hours.working().toString()).contains("fill the shift");
    }

    @Test
    void estimate_nothingToDo_isNothing() {
        LabourEstimate hours = LABOUR.estimate(Amounts.none());
        assertThat(hours.totalPaidS()).isZero();
        assertThat(hours.siteDays().days()).isZero();
        assertThat(hours.tasks()).isEmpty();
        assertThat(hours.isPossible()).isTrue();
    }

    /** Just full days must not become one more by the rounding of doubles; 432 min are left of a day. */
    @ParameterizedTest
    @CsvSource({"36, 1", "36.0001, 2", "72, 2", "3.6, 1"})
    void siteDays_atTheBorder_wholeOnes(double squareMetres, int days) {
        // 36 m2 x 10 min x 1.2 = 432 min
        Amounts amounts = Amounts.none().withInner(Driver.HEATED_AREA, squareMetres);
        assertThat(LABOUR.estimate(amounts).siteDays().days()).isEqualTo(days);
    }

    @Test
    void estimate_daysGiven_refused() {
        assertThatThrownBy(() -> LABOUR.estimate(AMOUNTS.withCount(Driver.DAY, 2)))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("installing days");
    }

    @ParameterizedTest
    @CsvSource({"0, 1", "-1, 1", "51, 1", "2, 0", "2, 1.01", "2, NaN"})
    void crew_outOfRange_refused(int people, double efficiency) {
        assertThatThrownBy(() -> new Crew(people, efficiency)).isInstanceOf(RefusedException.class);
    }

    @ParameterizedTest
    @CsvSource({"0 h", "25 h", "-1 h"})
    void workDay_outOfRange_refused(String shift) {
        assertThatThrownBy(() -> WorkDay.of(Read.time(shift))).isInstanceOf(RefusedException.class).hasMessageContaining("shift");
    }
}
