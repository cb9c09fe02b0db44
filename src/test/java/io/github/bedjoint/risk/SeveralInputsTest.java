package io.github.bedjoint.risk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.film.Film;
import io.github.bedjoint.film.RollOffer;
import io.github.bedjoint.job.Job;
import io.github.bedjoint.job.JobCost;
import io.github.bedjoint.job.JobDates;
import io.github.bedjoint.job.JobPlan;
import io.github.bedjoint.job.Materials;
import io.github.bedjoint.price.CostLine;
import io.github.bedjoint.price.LineKind;
import io.github.bedjoint.price.PriceRules;
import io.github.bedjoint.schedule.Span;
import io.github.bedjoint.schedule.Timetable;
import io.github.bedjoint.survey.Survey;
import io.github.bedjoint.survey.Wall;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Read;
import io.github.bedjoint.units.RefusedException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.stream.IntStream;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Several values put into one job at once stand beside each other, and jobs that lack what is asked for, or cannot be done, say so. */
class SeveralInputsTest {
    private static final Job JOB = Demo.job();
    private static final Materials MATERIALS = JOB.materials();

    private static Job bare(Wall... walls) {
        Materials film = Materials.of(Film.of("Film", Read.length("1.372 m")), List.of(RollOffer.of("25 m", Read.length("25 m"), Money.parse("EUR 400"))));
        return Job.builder("Bare", Survey.of(walls), film, PriceRules.in(CurrencyUnit.EUR)).build();
    }

    private static Wall wall(String name) {
        return Wall.rectangle(name, Read.length("2 m"), Read.length("2 m"));
    }

    @Test
    void two_pricesOfMaterials_standBesideEachOther() {
        RiskResult both = Simulation.of(JOB)
                .with(Input.inkPrice(), Spread.list(Money.parse("EUR 200")))
                .with(Input.consumablePrice("Cleaner, edge sealer, blades"), Spread.list(Money.parse("EUR 3")))
                .run(1, 2);
        Materials byHand = MATERIALS.withInk(MATERIALS.ink().orElseThrow().withPrice(Read.pricePerVolume("EUR 200/L")))
                .withConsumables(List.of(new Materials.Consumable("Cleaner, edge sealer, blades", Read.pricePerArea("EUR 3/m2"))));
        assertThat(both.cost(0.5)).isEqualTo(JobCost.of(JOB.toBuilder().materials(byHand).build()).price().cost());
    }

    @Test
    void two_ratesOfLabour_standBesideEachOther() {
        RiskResult both = Simulation.of(JOB)
                .with(Input.siteRate(), Spread.list(Money.parse("EUR 60")))
                .with(Input.productionRate(), Spread.list(Money.parse("EUR 30")))
                .run(1, 2);
        Job byHand = JOB.toBuilder().labourRates(Read.pricePerTime("EUR 30/h"), Read.pricePerTime("EUR 60/h")).build();
        assertThat(both.cost(0.5)).isEqualTo(JobCost.of(byHand).price().cost());
    }

    @Test
    void two_ofOneExtraLine_standBesideEachOther() {
        RiskResult both = Simulation.of(JOB)
                .with(Input.extraPrice("Van, two days"), Spread.list(Money.parse("EUR 50")))
                .with(Input.extraQuantity("Van, two days"), Spread.list(5))
                .run(1, 2);
        Job byHand = JOB.toBuilder().extras(List.of(CostLine.each(LineKind.TRIPS, "Van, two days", 5, Money.parse("EUR 50")), JOB.extras().get(1))).build();
        assertThat(both.cost(0.5)).isEqualTo(JobCost.of(byHand).price().cost());
    }

    @Test
    void two_waits_standBesideEachOther() {
        JobDates dates = JOB.dates().orElseThrow();
        RiskResult both = Simulation.of(JOB)
                .with(Input.cure(), Spread.list(List.of(Read.time("120 h"))))
                .with(Input.delay(), Spread.list(List.of(Read.time("48 h"))))
                .run(1, 2);
        Job byHand = JOB.toBuilder().dates(dates.withCure(Span.elapsed(Read.time("120 h"))).withStart(dates.start().plusHours(48))).build();
        assertThat(both.handOver(0.5)).isEqualTo(JobCost.of(byHand).timetable().map(Timetable::handOver));
        // Rain is drawn on top of what else moves the dates.
        RiskResult wet = Simulation.of(JOB)
                .with(Input.delay(), Spread.list(List.of(Read.time("48 h"))))
                .with(Input.rainChance(), Spread.list(0.3))
                .run(1, 1);
        List<LocalDate> rainy = new RainyDays(dates.start().toLocalDate(), 0.3, Streams.of(1, "days of rain").of(0)).in(400);
        Job drawn = JOB.toBuilder().dates(dates.withStart(dates.start().plusHours(48)).withRain(dates.rain().on(rainy))).build();
        assertThat(wet.handOver(0.5)).isEqualTo(JobCost.of(drawn).timetable().map(Timetable::handOver));
    }

    /** Of two walls the one named grows by a half and gets its own ratio; the other stays. */
    @Test
    void size_ofOneOfTwoWalls_leavesTheOther() {
        Job two = bare(wall("east"), wall("west"));
        Job scaled = PlanInputs.size(two, "west").replan().make(two, 1.5);
        assertThat(scaled.survey().wall("east").widthSteps()).isEqualTo(160_000);
        assertThat(scaled.survey().wall("west").widthSteps()).isEqualTo(240_000);
        Job rough = PlanInputs.ratio("west").replan().make(two, 1.2);
        assertThat(rough.survey().wall("east").surface().areaRatio()).isEqualTo(1);
        assertThat(rough.survey().wall("west").surface().areaRatio()).isCloseTo(1.2, within(1e-12));
    }

    @Test
    void with_whatABareJobLacks_isRefused() {
        Simulation bare = Simulation.of(bare(wall("east")));
        assertThatThrownBy(() -> bare.with(Input.inkPrice(), Spread.list(Money.parse("EUR 1")))).isInstanceOf(RefusedException.class)
                .hasMessageContaining("ink is 'Bare', but must be in the job");
        assertThatThrownBy(() -> bare.with(Input.siteRate(), Spread.list(Money.parse("EUR 1")))).hasMessageContaining("labour rates is 'Bare'");
        assertThatThrownBy(() -> bare.with(Input.productionRate(), Spread.list(Money.parse("EUR 1")))).hasMessageContaining("labour rates is 'Bare'");
        assertThatThrownBy(() -> bare.with(Input.cure(), Spread.list(List.of(Read.time("1 h"))))).isInstanceOf(RefusedException.class);
        assertThatThrownBy(() -> bare.with(Input.rainChance(), Spread.list(0.1))).isInstanceOf(RefusedException.class);
    }

    /** A job without dates has no hand-over, and its outlook says that none was counted. */
    @Test
    void run_withoutDates_hasNoHandOver() {
        RiskResult result = Simulation.of(bare(wall("east"))).with(Input.filmPrices(), Spread.triangular(1, 1.1, 1.4)).run(1, 50);
        assertThat(result.handOver(0.5)).isEmpty();
        assertThat(result.of(Outcome.HAND_OVER)).hasToString("Hand-over of 0 simulated jobs");
        assertThat(result.of(Outcome.FILM).toString()).startsWith("Film").contains(" of 50 simulated jobs: P50 ");
        assertThat(result.toString()).doesNotContain("Hand-over");
    }

    /** Eight of ten factors are refused, each in a sentence of its own; five are told. */
    @Test
    void reasons_ofManyKinds_areFiveAtMost() {
        Input height = Input.of("height", Measure.NUMBER, (job, factor) -> {
            if (factor > 2) {
                throw new RefusedException("height", Double.toString(factor), "must be at most 2", "Maybe a digit slipped.");
            }
            return job;
        });
        double[] factors = IntStream.rangeClosed(1, 10).mapToDouble(k -> k).toArray();
        RiskResult result = Simulation.of(bare(wall("east"))).with(height, Spread.list(factors)).run(1, 500);
        assertThat(result.reasons()).hasSize(5).doesNotHaveDuplicates().allMatch(reason -> reason.contains("must be at most 2"));
        // Eight of ten values are refused.
        assertThat(result.impossible()).isBetween(340, 460);
        assertThat(result.of(Outcome.COST).count()).isEqualTo(500 - result.impossible());
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void forEach_whatGoesWrong_comesOutAsItWas(int threads) {
        Workers workers = new Workers(threads);
        IllegalArgumentException wrong = new IllegalArgumentException("seven");
        assertThatThrownBy(() -> workers.forEach(300, i -> {
            if (i == 7) {
                throw wrong;
            }
        })).isSameAs(wrong);
        int[] done = new int[300];
        workers.forEach(300, i -> done[i]++);
        assertThat(done).containsOnly(1);
    }

    @Test
    void forEach_onThreads_errorAndInterruption_areStates() {
        Workers two = new Workers(2);
        assertThatThrownBy(() -> two.forEach(300, i -> {
            throw new StackOverflowError("deep");
        })).isInstanceOf(IllegalStateException.class).hasCauseInstanceOf(StackOverflowError.class);
        Thread.currentThread().interrupt();
        // Jobs that never end by themselves: were they done at once, nobody would notice the interruption.
        CountDownLatch never = new CountDownLatch(1);
        assertThatThrownBy(() -> two.forEach(300, i -> {
            try {
                never.await();
            } catch (InterruptedException e) {
                throw new IllegalStateException(e);
            }
        })).isInstanceOf(IllegalStateException.class).hasMessage("The simulation was interrupted");
        assertThat(Thread.interrupted()).isTrue();
    }

    /** A bell without width is its mean; the kinds that have no formula tell mean and variance in words. */
    @Test
    void spread_withoutWidthOrFormula_isTold() {
        Spread point = Spread.normal(5, 0, 1);
        assertThat(point.mean()).isEqualTo(5);
        assertThat(point.variance()).isZero();
        assertThat(point.draw(Streams.of(1, "x").of(0), new Shape.Redraws())).isEqualTo(5);
        assertThat(Spread.normal(5, 2, 5).mean()).isGreaterThan(5);
        assertThatThrownBy(() -> Spread.normal(5, 2, 5.1)).hasMessageContaining("must not be above the mean 5");
        assertThat(point.working().toString()).contains("mean 5.0, variance 0.0");
        // (1 + 2 + 6) / 3 = 3, and (4 + 1 + 9) / 3
        assertThat(Spread.list(1, 2, 6).working().toString()).contains("mean 3.0, variance 4.66");
        assertThat(Spread.triangular(1, 2, 6).working().parts()).hasSize(2);
        assertThat(Spread.pert(1, 2, 6).working().parts()).hasSize(2);
    }

    /** Weather is drawn for 1024 days; what lies behind them counts as known, so that a wall that never dries comes to an end. */
    @Test
    void isUnknown_behindTheLastDayDrawn_ends() {
        LocalDate start = LocalDate.of(2027, 5, 3);
        RainyDays days = new RainyDays(start, 0.5, Streams.of(1, "x").of(0));
        assertThat(days.in(1023)).isNotEmpty();
        assertThat(days.isUnknown(start.plusYears(10))).isTrue();
        List<LocalDate> all = new ArrayList<>(days.in(1024));
        assertThat(days.isUnknown(start.plusYears(10))).isFalse();
        assertThat(days.in(1024)).isEqualTo(all);
    }

    /** A price does not plan the job anew, and stands before the size by its name; the size does all the same. */
    @Test
    void size_besideAPrice_isPlannedAndThePriceIsNot() {
        Spread prices = Spread.list(Money.parse("EUR 90"), Money.parse("EUR 100"), Money.parse("EUR 110"));
        RiskResult alone = Simulation.of(Demo.job()).with(Input.sizes(), Spread.list(1.5)).run(1, 20);
        RiskResult both = Simulation.of(Demo.job()).with(Input.inkPrice(), prices).with(Input.sizes(), Spread.list(1.5)).run(1, 20);
        RiskResult price = Simulation.of(Demo.job()).with(Input.inkPrice(), prices).run(1, 20);
        assertThat(both.plans()).isEqualTo(1);
        assertThat(both.of(Outcome.FILM).percentile(0.5)).isEqualTo(alone.of(Outcome.FILM).percentile(0.5));
        assertThat(price.of(Outcome.FILM).percentile(0.5)).isEqualTo(JobPlan.of(Demo.job()).filmOpenedM())
                .isLessThan(both.of(Outcome.FILM).percentile(0.5));
        assertThat(both.count()).isEqualTo(20);
        assertThat(both.toString()).contains("planned anew");
        assertThat(price.toString()).doesNotContain("planned anew");
        assertThat(Input.sizes().replans()).isTrue();
        assertThat(Input.inkPrice().replans()).isFalse();
    }

    @Test
    void with_rangeOfAnotherKind_saysWhatIsWanted() {
        // One second for a square metre is a sixtieth of a minute.
        Simulation simulation = Simulation.of(Demo.job());
        assertThatThrownBy(() -> simulation.with(Input.crewPace(), Spread.list(Money.parse("EUR 1")))).hasMessageContaining("(a plain number)");
        assertThatThrownBy(() -> simulation.with(Input.pace("wipe"), Spread.list(1))).hasMessageContaining("(like 0.0166667 min/m²)");
    }

    @Test
    void with_endBeyondWhatTheInputTakes_isRefused() {
        Simulation simulation = Simulation.of(Demo.job());
        assertThatThrownBy(() -> simulation.with(Input.rainChance(), Spread.list(2.0))).isInstanceOf(RefusedException.class);
        assertThatThrownBy(() -> simulation.with(Input.rainChance(), Spread.triangular(2, 2, 2))).isInstanceOf(RefusedException.class);
        assertThatThrownBy(() -> simulation.with(Input.rainChance(), Spread.normal(0.5, 0.1, -0.1))).isInstanceOf(RefusedException.class);
    }
}
