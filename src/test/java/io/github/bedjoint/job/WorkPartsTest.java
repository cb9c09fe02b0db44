package io.github.bedjoint.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.labour.Allowance;
import io.github.bedjoint.labour.Amounts;
import io.github.bedjoint.labour.Crew;
import io.github.bedjoint.labour.Driver;
import io.github.bedjoint.labour.Labour;
import io.github.bedjoint.labour.LabourEstimate;
import io.github.bedjoint.labour.TaskTable;
import io.github.bedjoint.labour.Trip;
import io.github.bedjoint.labour.WorkDay;
import io.github.bedjoint.units.Read;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The parts in which the work of a job is put into its dates, one person each in shop and on site, 8 h a day. */
class WorkPartsTest {
    private static final String HEADER = "task,title,stage,driver,pace,people,machine,attended,allowance,height,basis,source\n";
    private static final String SET_UP = "set-up,Set up,SITE,DAY,40 min,1,NONE,1,yes,no,ASSUMED,test\n";
    private static final String WIPE = "wipe,Wipe,SITE,VISIBLE_AREA,1 min/m2,1,NONE,1,yes,no,ASSUMED,test\n";
    private static final String HEAT = "heat-roll,Heat,SITE,HEATED_AREA,10 min/m2,1,NONE,1,yes,no,ASSUMED,test\n";

    private static Labour labour(String rows) {
        return Labour.withDefaults().withTasks(TaskTable.parse(HEADER + rows)).withAllowance(Allowance.none())
                .withShopCrew(Crew.of(1)).withSiteCrew(Crew.of(1)).withWorkDay(WorkDay.of(Read.time("8 h")));
    }

    /** A row of the shop that takes some minutes for the job. */
    private static String shop(String id, int minutes, int people, String machine, double attended) {
        return id + "," + id + ",PRODUCTION,JOB," + minutes + " min," + people + "," + machine + "," + attended + ",no,no,ASSUMED,test\n";
    }

    private static ShopPart shopPart(String rows) {
        Amounts amounts = Amounts.none().withCount(Driver.JOB, 1).withLength(Driver.PRINTED_LENGTH, Read.length("10 m"))
                .withLength(Driver.LAMINATED_LENGTH, Read.length("10 m"));
        return ShopPart.of(labour(rows).estimate(amounts));
    }

    private static ShopPart minutes(double prepare, double print, double laminate, double finish, int atPrinter, int atLaminator) {
        return new ShopPart(60 * prepare, 60 * print, 60 * laminate, 60 * finish, atPrinter, atLaminator);
    }

    @Test
    void shopPart_tasks_goWithTheMachineTheyStandBeside() {
        // Two stand at the printer all the time, nobody stays at the laminator; what lies between goes with the print.
        assertThat(shopPart(shop("rip", 10, 1, "NONE", 1) + shop("print", 20, 2, "PRINTER", 1) + shop("turn", 3, 1, "NONE", 1)
                + shop("laminate", 5, 1, "LAMINATOR", 0.5) + shop("trim", 7, 1, "NONE", 1) + shop("pack", 2, 1, "NONE", 1)))
                .isEqualTo(minutes(10, 23, 5, 9, 2, 0));
        // A printer that is looked after now and then keeps nobody, a laminator that someone guides keeps one.
        assertThat(shopPart(shop("print", 20, 1, "PRINTER", 0.15) + shop("laminate", 5, 1, "LAMINATOR", 1)))
                .isEqualTo(minutes(0, 20, 5, 0, 0, 1));
    }

    @Test
    void shopPart_withoutALaminator_finishesBehindThePrint() {
        assertThat(shopPart(shop("rip", 10, 1, "NONE", 1) + shop("print", 20, 1, "PRINTER", 0.5) + shop("trim", 7, 1, "NONE", 1)))
                .isEqualTo(minutes(10, 20, 0, 7, 0, 0));
    }

    /** 2 min/m on 10 m, then half a minute: by hand 20 and 5 min. */
    @Test
    void shopPart_taskTimedByTheWeb_isAtItsMachineWithoutNamingIt() {
        assertThat(shopPart(shop("rip", 10, 1, "NONE", 1) + "print,Print,PRODUCTION,PRINTED_LENGTH,2 min/m,1,NONE,1,no,no,ASSUMED,test\n"
                + "laminate,Laminate,PRODUCTION,LAMINATED_LENGTH,0.5 min/m,1,NONE,1,no,no,ASSUMED,test\n" + shop("trim", 7, 1, "NONE", 1)))
                .isEqualTo(minutes(10, 20, 5, 7, 1, 1));
    }

    @Test
    void shopPart_workOnSite_isNoneOfIt() {
        Amounts amounts = Amounts.none().withCount(Driver.JOB, 1).withArea(Driver.VISIBLE_AREA, Read.area("60 m2"));
        assertThat(ShopPart.of(labour(shop("rip", 10, 1, "NONE", 1) + WIPE).estimate(amounts)).finishS()).isEqualTo(600);
    }

    private static LabourEstimate site(String rows, double visibleM2, double heatedM2) {
        return labour(rows).estimate(Amounts.none().withArea(Driver.VISIBLE_AREA, Read.area(visibleM2 + " m2"))
                .withArea(Driver.HEATED_AREA, Read.area(heatedM2 + " m2")));
    }

    private static void assertParts(SitePart part, double wipeMin, double installMin) {
        assertThat(part.wipeS()).isCloseTo(60 * wipeMin, within(1e-6));
        assertThat(part.installS()).isCloseTo(60 * installMin, within(1e-6));
    }

    @ParameterizedTest
    @CsvSource({
        // One day: 40 min to set up, 60 to wipe, 360 of heat. Of the wiping 120 / 360 go before a window of 2 h.
        "60, 36,  120, 60,   400",
        // A window as long as the work, or longer: all of it.
        "60, 36,  360, 100,  360",
        "60, 36,  999, 100,  360",
        // 60 and 1000 min of work with 440 a day: three days, 120 min of setting up; 60 x 120 / 1000 = 7.2 min are wiped first.
        "60, 100, 120, 47.2, 1132.8"})
    void sitePart_wiping_goesAheadByTheWindow(double visibleM2, double heatedM2, long windowMin, double wipeMin, double installMin) {
        WorkDay day = WorkDay.of(Read.time("8 h"));
        assertParts(SitePart.of(site(SET_UP + WIPE + HEAT, visibleM2, heatedM2), day, 60 * windowMin), wipeMin, installMin);
    }

    @Test
    void sitePart_withoutWiping_isAllInstalling() {
        WorkDay day = WorkDay.of(Read.time("8 h"));
        assertParts(SitePart.of(site(SET_UP + HEAT, 60, 36), day, 7200), 0, 400);
        // Where a trip does the wiping, it is none of the installing days.
        Trip wash = Trip.of(Trip.Purpose.WASH, Read.time("0 h"), Read.time("0 h")).doing("wipe");
        LabourEstimate ahead = labour(SET_UP + WIPE + HEAT).withTrips(List.of(wash)).estimate(
                Amounts.none().withArea(Driver.VISIBLE_AREA, Read.area("60 m2")).withArea(Driver.HEATED_AREA, Read.area("36 m2")));
        assertParts(SitePart.of(ahead, day, 7200), 0, 400);
    }

    @Test
    void sitePart_noWorkOnSite_takesNoTime() {
        assertThat(SitePart.of(site(SET_UP + WIPE + HEAT, 0, 0), WorkDay.of(Read.time("8 h")), 7200)).isEqualTo(new SitePart(0, 0));
    }
}
