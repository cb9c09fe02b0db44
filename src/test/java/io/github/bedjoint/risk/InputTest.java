package io.github.bedjoint.risk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.survey.MovementJoint;
import io.github.bedjoint.layout.Panel;
import io.github.bedjoint.texture.TakeUp;
import io.github.bedjoint.film.RollOffer;
import io.github.bedjoint.job.Job;
import io.github.bedjoint.job.JobCost;
import io.github.bedjoint.job.JobDates;
import io.github.bedjoint.job.Materials;
import io.github.bedjoint.labour.Machine;
import io.github.bedjoint.labour.Pace;
import io.github.bedjoint.labour.Task;
import io.github.bedjoint.labour.TaskTable;
import io.github.bedjoint.price.CostLine;
import io.github.bedjoint.price.LineKind;
import io.github.bedjoint.schedule.Span;
import io.github.bedjoint.schedule.Timetable;
import io.github.bedjoint.survey.Survey;
import io.github.bedjoint.survey.Wall;
import io.github.bedjoint.texture.JointProfile;
import io.github.bedjoint.texture.MasonrySurface;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Read;
import io.github.bedjoint.working.Source;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/** A value put in by a handle costs the same as a job that was changed by hand to that value. */
class InputTest {
    private static final Job JOB = Demo.job();
    private static final Materials MATERIALS = JOB.materials();

    private static void assertSame(Input input, Spread value, Job byHand) {
        RiskResult result = Simulation.of(JOB).with(input, value).withThreads(1).run(1, 2);
        JobCost cost = JobCost.of(byHand);

        assertThat(result.impossible()).as("%s", result).isZero();
        assertThat(result.of(Outcome.PAID_TIME).percentile(0.5)).isCloseTo(cost.labour().totalPaidS(), within(1e-6));
        assertThat(result.cost(0.5)).isEqualTo(cost.price().cost());
        assertThat(result.price(0.5)).isEqualTo(cost.total());
        assertThat(result.handOver(0.5)).isEqualTo(cost.timetable().map(Timetable::handOver));
        assertThat(cost.toString() + cost.timetable().orElseThrow().handOver())
                .as("the value changes something")
                .isNotEqualTo(JobCost.of(JOB).toString() + JobCost.of(JOB).timetable().orElseThrow().handOver());
    }

    private static Job with(Materials other) {
        return JOB.toBuilder().materials(other).build();
    }

    private static Job with(JobDates other) {
        return JOB.toBuilder().dates(other).build();
    }

    @Test
    void pace_fixed_asByHand() {
        TaskTable tasks = JOB.labour().tasks().withPace("heat-roll", Pace.perArea(Read.timePerArea("13 min/m2")), Source.shop("try"));

        assertSame(Input.pace("heat-roll"), Spread.list(List.of(Read.timePerArea("13 min/m2"))), JOB.toBuilder().labour(JOB.labour().withTasks(tasks)).build());
    }

    @Test
    void crewPace_fixed_asByHand() {
        List<Task> slow = new ArrayList<>();
        for (Task task : JOB.labour().tasks().tasks()) {
            slow.add(task.machine() != Machine.NONE ? task : task.withPace(new Pace(task.pace().measure(), task.pace().inner() * 1.25), task.source()));
        }

        assertSame(Input.crewPace(), Spread.list(1.25), JOB.toBuilder().labour(JOB.labour().withTasks(TaskTable.of(slow))).build());
    }

    @Test
    void tandemAndTravel_fixed_asByHand() {
        assertSame(Input.tandemEfficiency(), Spread.list(0.75), JOB.toBuilder()
                .labour(JOB.labour().withSiteCrew(JOB.labour().siteCrew().withTandemEfficiency(0.75))).build());
        assertSame(Input.travel(), Spread.list(List.of(Read.time("90 min"))), JOB.toBuilder()
                .labour(JOB.labour().withWorkDay(JOB.labour().workDay().withTravelInShift(Read.time("90 min")))).build());
    }

    @Test
    void accessFactor_fixed_asByHand() {
        assertSame(Input.accessFactor(Demo.WALL), Spread.list(1.4), JOB.toBuilder().accessFactor(Demo.WALL, 1.4).build());
    }

    @Test
    void areaRatio_ofAnotherJointDepth_asByHand() {
        Wall wall = JOB.survey().wall(Demo.WALL);
        // The demo wall with joints raked 8 mm deep: r = 1 + 2 (l + h) d / C = 1 + 2 x 280 x 8/(225 x 75) = 1.26548148
        MasonrySurface deeper = MasonrySurface.of(
                Read.length("215 mm"), Read.length("65 mm"), Read.length("10 mm"), Read.length("10 mm"), JointProfile.raked(Read.length("8 mm")));
        assertThat(deeper.areaRatio()).isCloseTo(1.26548148, within(1e-8));

        assertSame(Input.areaRatio(Demo.WALL), Spread.list(deeper.areaRatio()), JOB.toBuilder().survey(Survey.of(wall.withSurface(deeper))).build());
    }

    /** r = 1.25 is a depth of 0.25 x 16875 / 560 = 7.533482 mm; a deeper joint takes more film where film is fed in. */
    @Test
    void areaRatio_whereFilmIsFedIn_plansPanelsAndRollsAnew() {
        Job fed = JOB.toBuilder().takeUp(new TakeUp(1, 0.5)).build();
        Wall wall = fed.survey().wall(Demo.WALL);
        MasonrySurface deeper = MasonrySurface.of(
                Read.length("215 mm"), Read.length("65 mm"), Read.length("10 mm"), Read.length("10 mm"),
                JointProfile.raked(Read.length("7.533482142857143 mm")));
        Job planned = fed.toBuilder().survey(Survey.of(wall.withSurface(deeper))).build();
        RiskResult result = Simulation.of(fed).with(Input.areaRatio(Demo.WALL), Spread.list(1.25, wall.surface().areaRatio())).run(1, 40);

        JobCost cost = JobCost.of(planned);
        assertThat(result.plans()).isEqualTo(2);
        assertThat(result.toString()).contains("Panels and rolls planned anew for 2 combinations");
        assertThat(result.of(Outcome.COST).percentile(1)).isEqualTo(cost.price().cost().getAmount().doubleValue());
        assertThat(result.of(Outcome.FILM).percentile(1)).isGreaterThan(result.of(Outcome.FILM).percentile(0) - 1e-9);
        Job scaled = PlanInputs.ratio(Demo.WALL).replan().make(fed, 1.25);
        assertThat(JobCost.of(scaled).layouts().get(0).panels()).extracting(Panel::cutLengthSteps)
                .containsExactlyElementsOf(cost.layouts().get(0).panels().stream().map(Panel::cutLengthSteps).toList());
        assertThat(JobCost.of(scaled).layouts().get(0).places().takeUpM2())
                .isGreaterThan(JobCost.of(fed).layouts().get(0).places().takeUpM2());
    }

    @Test
    void size_ofAWallWithAMovementJoint_movesTheJointToo() {
        Wall wall = JOB.survey().wall(Demo.WALL).withMovementJoints(List.of(MovementJoint.upright(Read.length("3 m"))));
        Job jointed = JOB.toBuilder().survey(Survey.of(wall)).build();
        Wall scaled = PlanInputs.size(jointed, Demo.WALL).replan().make(jointed, 1.5).survey().wall(Demo.WALL);
        assertThat(scaled.movementJoints()).containsExactly(MovementJoint.upright(Read.length("4.5 m")));
    }

    @Test
    void size_halfAgain_isAWallOfThatSize() {
        RiskResult result = Simulation.of(JOB).with(Input.size(Demo.WALL), Spread.list(1.5)).run(1, 1);
        RiskResult all = Simulation.of(JOB).with(Input.sizes(), Spread.list(1.5)).run(1, 1);
        Wall wall = PlanInputs.size(JOB, Demo.WALL).replan().make(JOB, 1.5).survey().wall(Demo.WALL);

        // 7.20 x 3.00 m times 1.5; the door of 1.00 x 2.10 m covers 2.25 times as much.
        assertThat(wall.widthSteps()).isEqualTo(864_000);
        assertThat(wall.heightSteps()).isEqualTo(360_000);
        assertThat(wall.openings().get(0).areaM2()).isCloseTo(2.25 * 2.1, within(1e-9));
        assertThat(result.price(0.5)).isEqualTo(all.price(0.5)).isNotEqualTo(JobCost.of(JOB).total());
        assertThat(Input.size(Demo.WALL).replans()).isTrue();
    }

    @Test
    void rollPrice_fixed_asByHand() {
        RollOffer first = MATERIALS.filmRolls().get(0);
        RollOffer dearer = RollOffer.of(first.id(), first.length(), Money.parse("EUR 150.25"));
        List<RollOffer> rolls = List.of(dearer, MATERIALS.filmRolls().get(1));

        assertSame(Input.rollPrice(first.id()), Spread.list(Money.parse("EUR 150.25")), with(MATERIALS.withFilm(MATERIALS.film(), rolls)));
    }

    @Test
    void filmPrices_fixed_asByHand() {
        List<RollOffer> rolls = MATERIALS.filmRolls().stream()
                .map(offer -> {
                    RollOffer other = RollOffer.of(offer.id(), offer.length(), offer.price().multipliedBy(new BigDecimal("1.5"), RoundingMode.UNNECESSARY));
                    return offer.available() < 0 ? other : other.withAvailable(offer.available());
                })
                .toList();

        assertSame(Input.filmPrices(), Spread.list(1.5), with(MATERIALS.withFilm(MATERIALS.film(), rolls)));
    }

    @Test
    void laminatePrices_fixed_asByHand() {
        RollOffer offer = MATERIALS.laminateRolls().get(0);
        RollOffer half = RollOffer.of(offer.id(), offer.length(), Money.parse("EUR 155"));

        assertSame(Input.laminatePrices(), Spread.list(0.5),
                with(MATERIALS.withLaminate(MATERIALS.laminate().orElseThrow(), List.of(half), MATERIALS.leadIn())));
    }

    @Test
    void inkAndConsumables_fixed_asByHand() {
        assertSame(Input.inkPrice(), Spread.list(Money.parse("EUR 200")),
                with(MATERIALS.withInk(MATERIALS.ink().orElseThrow().withPrice(Read.pricePerVolume("EUR 200/L")))));
        assertSame(Input.consumablePrice("Cleaner, edge sealer, blades"), Spread.list(Money.parse("EUR 3")),
                with(MATERIALS.withConsumables(List.of(new Materials.Consumable("Cleaner, edge sealer, blades", Read.pricePerArea("EUR 3/m2"))))));
    }

    @Test
    void rates_fixed_asByHand() {
        assertSame(Input.siteRate(), Spread.list(Money.parse("EUR 60")), JOB.toBuilder()
                .labourRates(JOB.productionRate().orElseThrow(), Read.pricePerTime("EUR 60/h")).build());
        assertSame(Input.productionRate(), Spread.list(Money.parse("EUR 30")), JOB.toBuilder()
                .labourRates(Read.pricePerTime("EUR 30/h"), JOB.siteRate().orElseThrow()).build());
    }

    @Test
    void extras_fixed_asByHand() {
        CostLine permit = JOB.extras().get(1);

        assertSame(Input.extraPrice("Van, two days"), Spread.list(Money.parse("EUR 50")), JOB.toBuilder()
                .extras(List.of(CostLine.each(LineKind.TRIPS, "Van, two days", 2, Money.parse("EUR 50")), permit)).build());
        assertSame(Input.extraQuantity("Van, two days"), Spread.list(5), JOB.toBuilder()
                .extras(List.of(CostLine.each(LineKind.TRIPS, "Van, two days", 5, Money.parse("EUR 35")), permit)).build());
    }

    @Test
    void dates_fixed_asByHand() {
        JobDates dates = JOB.dates().orElseThrow();

        assertSame(Input.cure(), Spread.list(List.of(Read.time("120 h"))), with(dates.withCure(Span.elapsed(Read.time("120 h")))));
        assertSame(Input.washWait(), Spread.list(List.of(Read.time("400 h"))), with(dates.withWashBefore(Span.elapsed(Read.time("400 h")))));
        assertSame(Input.delay(), Spread.list(List.of(Read.time("48 h"))),
                with(dates.withStart(dates.start().plusHours(48))));
        assertSame(Input.outgas(), Spread.list(List.of(Read.time("400 h"))),
                with(MATERIALS.withFilm(MATERIALS.film().withOutgas(Read.time("400 h")), MATERIALS.filmRolls())));
    }

    @Test
    void of_anyOtherNumber_asByHand() {
        Input discount = Input.of("discount", Measure.NUMBER, (job, share) -> job.toBuilder().rules(job.rules().withDiscount(share)).build());

        assertSame(discount, Spread.list(0.1), JOB.toBuilder().rules(JOB.rules().withDiscount(0.1)).build());
        assertThat(discount.replans()).isTrue();
    }

    @Test
    void equals_byName() {
        assertThat(Input.pace("wipe")).isEqualTo(Input.pace("wipe")).hasSameHashCodeAs(Input.pace("wipe")).isNotEqualTo(Input.pace("wash"));
        assertThat(Input.crewPace()).hasToString("crew pace").isNotEqualTo("crew pace");
        assertThat(Simulation.of(JOB).with(Input.crewPace(), Spread.list(1)).with(Input.crewPace(), Spread.list(2)).inputs()).hasSize(1);
    }
}
