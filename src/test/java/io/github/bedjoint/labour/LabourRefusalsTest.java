package io.github.bedjoint.labour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Read;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.ShopUnits;
import io.github.bedjoint.working.Source;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Every number that labour takes: negative, zero where zero is none, huge, not a number. The refusal names parameter, value and limit, and hints. */
class LabourRefusalsTest {
    private static final Source SOURCE = Source.shop("test");
    private static final Pace PACE = new Pace(Measure.TIME, 60);
    private static final Task TASK = Task.byHand("hang", "Hang", Stage.SITE, Driver.PANEL, PACE, SOURCE);

    private static DynamicTest refused(String parameter, org.assertj.core.api.ThrowableAssert.ThrowingCallable call) {
        return DynamicTest.dynamicTest(parameter, () -> assertThatThrownBy(call)
                .isInstanceOfSatisfying(RefusedException.class, refusal -> {
                    assertThat(refusal.parameter()).contains(parameter);
                    assertThat(refusal.value()).isNotBlank();
                    assertThat(refusal.limit()).startsWith("must ");
                    assertThat(refusal.hint()).startsWith("Maybe ");
                }));
    }

    @TestFactory
    Stream<DynamicTest> numbers_outOfRange_areRefused() {
        return Stream.of(Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, -1.0, 1e300).flatMap(bad -> Stream.of(
                refused("pace", () -> new Pace(Measure.TIME_PER_AREA, bad)),
                refused("panels", () -> Amounts.none().withCount(Driver.PANEL, bad)),
                refused("edges", () -> Amounts.none().withInner(Driver.EDGE, bad)),
                refused("allowance", () -> Allowance.onJobTime(bad)),
                refused("allowance", () -> Allowance.onWorkingDay(bad)),
                refused("allowance added", () -> Allowance.none().plus(bad)),
                refused("rating", () -> new Rating(bad)),
                refused("tandem efficiency", () -> Crew.of(2).withTandemEfficiency(bad)),
                refused("learning rate", () -> Learning.wright(bad)),
                refused("shift", () -> new WorkDay(bad, 0, true)),
                refused("travel", () -> new WorkDay(3600, bad, true)),
                refused("access factor", () -> Reach.of(bad, SOURCE)),
                refused("access factor", () -> WorkPlace.of("wall", Amounts.none()).withFactor(bad, SOURCE)),
                refused("premium on site", () -> Premium.onSite("night", bad)),
                refused("premium in the shop", () -> new Premium("night", bad, 0)),
                refused("attended share", () -> new TaskKind("p", "P", Stage.PRODUCTION, Driver.PANEL, 1, Machine.PRINTER, bad, false, false)),
                refused("area ratio", () -> HeatedArea.of(bad, Read.area("1 m2"), Read.area("1 m2")))));
    }

    /** A quantity cannot hold what is not finite: Indriya refuses that itself. */
    @TestFactory
    Stream<DynamicTest> quantities_outOfRange_areRefused() {
        return Stream.of(-1.0, 1e300).flatMap(bad -> Stream.of(
                refused("pace", () -> Pace.perPiece(Door.of(bad, ShopUnits.SECOND))),
                refused("pace", () -> Pace.perArea(Door.of(bad, ShopUnits.MINUTE_PER_SQUARE_METRE))),
                refused("pace", () -> Pace.perLength(Door.of(bad, ShopUnits.MINUTE_PER_METRE))),
                refused("seams", () -> Amounts.none().withLength(Driver.SEAM, Door.of(bad, ShopUnits.METRE))),
                refused("area seen", () -> Amounts.none().withArea(Driver.VISIBLE_AREA, Door.of(bad, ShopUnits.SQUARE_METRE))),
                refused("time of the first unit", () -> Learning.wright(0.9).over(Door.of(bad, ShopUnits.HOUR), 3)),
                refused("observed time", () -> StandardTime.of(Door.of(bad, ShopUnits.HOUR), Rating.NORMAL, Allowance.none())),
                refused("shift", () -> WorkDay.of(Door.of(bad, ShopUnits.HOUR))),
                refused("travel", () -> WorkDay.of(Read.time("8 h")).withTravelInShift(Door.of(bad, ShopUnits.HOUR))),
                refused("travel", () -> WorkDay.of(Read.time("8 h")).withTravelOutsideShift(Door.of(bad, ShopUnits.HOUR))),
                refused("time on site", () -> Trip.of(Trip.Purpose.SURVEY, Read.time("1 h"), Door.of(bad, ShopUnits.HOUR))),
                refused("wait", () -> Trip.of(Trip.Purpose.SURVEY, Read.time("1 h"), Read.time("1 h")).withWait(Door.of(bad, ShopUnits.HOUR))),
                refused("height of a band", () -> HeightBands.defaults().upTo(Door.of(bad, ShopUnits.METRE), io.github.bedjoint.survey.Access.LIFT)),
                refused("bottom of the wall", () -> HeightBands.defaults().over(Door.of(bad, ShopUnits.METRE), Read.length("1 m"))),
                refused("overlap area", () -> HeatedArea.of(1, Read.area("1 m2"), Door.of(bad, ShopUnits.SQUARE_METRE))),
                refused("heated width", () -> HeatRolling.of(Read.speed("1 m/min"), HeatRolling.Speeds.PROJECTED, Door.of(bad, ShopUnits.METRE))),
                refused("speed", () -> HeatRolling.of(Door.of(bad, ShopUnits.METRE_PER_SECOND), HeatRolling.Speeds.PROJECTED, Read.length("0.2 m")))));
    }

    @TestFactory
    Stream<DynamicTest> counts_outOfRange_areRefused() {
        return Stream.of(-1, 0, Integer.MAX_VALUE, Integer.MIN_VALUE).flatMap(bad -> Stream.of(
                refused("people", () -> Crew.of(bad)),
                refused("people of task", () -> TASK.withPeople(bad)),
                refused("units", () -> Learning.wright(0.9).over(Read.time("1 h"), bad)),
                refused("identical places", () -> WorkPlace.of("wall", Amounts.none()).repeated(bad, Learning.wright(0.9))),
                refused("trips", () -> Trip.of(Trip.Purpose.SURVEY, Read.time("1 h"), Read.time("1 h")).times(bad)),
                refused("people on the trip", () -> Trip.of(Trip.Purpose.SURVEY, Read.time("1 h"), Read.time("1 h")).withPeople(bad)),
                refused("passes", () -> HeatRolling.of(Read.speed("1 m/min"), HeatRolling.Speeds.PROJECTED, Read.length("0.2 m")).withPasses(bad))));
    }

    @TestFactory
    Stream<DynamicTest> names_blankOrBroken_areRefused() {
        return Stream.of("", "  ", "two\nlines", "x".repeat(201)).flatMap(bad -> Stream.of(
                refused("place", () -> WorkPlace.of(bad, Amounts.none())),
                refused("task", () -> Task.byHand(bad, "Hang", Stage.SITE, Driver.PANEL, PACE, SOURCE)),
                refused("title of task", () -> Task.byHand("hang", bad, Stage.SITE, Driver.PANEL, PACE, SOURCE)),
                refused("premium", () -> Premium.onSite(bad, 0.1)),
                refused("hire", () -> new Hire(bad, Read.money("EUR 1.00"), Read.money("EUR 1.00"), 0))));
    }

    @Test
    void quantities_ofResults_agreeWithTheirPlainNumbers() {
        LabourEstimate hours = Labour.withDefaults().estimate(Amounts.none().withPanels(4, 1));
        TaskTime hang = hours.task("hang-two").orElseThrow();
        assertThat(Door.timeS("paid", hang.paid(), io.github.bedjoint.units.Range.POSITIVE)).isEqualTo(hang.paidS());
        assertThat(hang.elapsed().getValue().doubleValue() * 3600).isEqualTo(hang.elapsedS());
        assertThat(hours.totalPaid().getValue().doubleValue() * 3600).isCloseTo(hours.totalPaidS(), org.assertj.core.api.Assertions.within(1e-9));
        assertThat(hours.productionElapsedS()).isPositive();
        assertThat(StandardTime.of(Read.time("1 h"), Rating.NORMAL, Allowance.none()).basic()).isEqualTo(Door.time(3600));
        assertThat(Learning.crawford(0.9).over(Read.time("1 h"), 1).total()).isEqualTo(Door.time(3600));
        assertThat(hours.task("corner")).isEmpty();
    }

    @Test
    void values_ofEqualParts_areEqual() {
        assertThat(Amounts.none().withPanels(3, 1)).hasSameHashCodeAs(Amounts.none().withPanels(3, 1)).hasToString("{PANEL=3.0, PANEL_FOR_ONE=2.0, PANEL_FOR_TWO=1.0}");
        assertThat(Amounts.none().withPanels(3, 1).asMap()).hasSize(3);
        assertThat(TaskTable.of(List.of(TASK))).isEqualTo(TaskTable.of(List.of(TASK))).hasSameHashCodeAs(TaskTable.of(List.of(TASK))).hasToString("1 tasks");
        assertThat(TASK.withReached(true)).isNotEqualTo(TASK);
        assertThatThrownBy(() -> TaskTable.of(List.of(TASK, TASK))).isInstanceOf(RefusedException.class).hasMessageContaining("hang twice");
        assertThat(Labour.withDefaults().shopCrew()).isEqualTo(Crew.of(1));
        assertThat(Labour.withDefaults().withShopCrew(Crew.of(2)).shopCrew().people()).isEqualTo(2);
        assertThat(Labour.withDefaults().trips()).isEmpty();
    }
}
