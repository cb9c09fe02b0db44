package io.github.bedjoint.risk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.job.Job;
import io.github.bedjoint.job.JobCost;
import io.github.bedjoint.labour.Machine;
import io.github.bedjoint.labour.Task;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Print;
import io.github.bedjoint.units.Read;
import io.github.bedjoint.units.RefusedException;
import java.util.Locale;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SimulationTest {
    private static final Job JOB = Demo.job();

    private static Simulation some() {
        return Simulation.of(JOB)
                .with(Input.pace("heat-roll"), Spread.triangular(Read.timePerArea("8 min/m2"), Read.timePerArea("10 min/m2"), Read.timePerArea("15 min/m2")))
                .with(Input.pace("wipe"), Spread.normal(Read.timePerArea("1 min/m2"), Read.timePerArea("0.3 min/m2"), Read.timePerArea("0.6 min/m2")))
                .with(Input.crewPace(), Spread.pert(0.85, 1, 1.4))
                .with(Input.sizes(), Spread.list(1, 1.01))
                .with(Input.inkPrice(), Spread.list(Money.parse("EUR 100"), Money.parse("EUR 130")))
                .with(Input.rainChance(), Spread.triangular(0.1, 0.2, 0.4));
    }

    private static void assertSame(RiskResult one, RiskResult other) {
        assertThat(one).hasToString(other.toString());
        for (Outcome outcome : Outcome.values()) {
            for (double share : new double[] {0, 0.1, 0.5, 0.8, 0.95, 1}) {
                assertThat(one.of(outcome).percentile(share)).isEqualTo(other.of(outcome).percentile(share));
            }
            assertThat(one.of(outcome).mean()).isEqualTo(other.of(outcome).mean());
            assertThat(one.of(outcome).shares()).isEqualTo(other.of(outcome).shares());
        }
        assertThat(one.redraws(Input.pace("wipe"))).isEqualTo(other.redraws(Input.pace("wipe"))).isPositive();
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 8})
    void run_otherThreads_sameResult(int threads) {
        assertSame(some().withThreads(1).run(42, 700), some().withThreads(threads).run(42, 700));
    }

    @Test
    void run_otherOrderOfInputs_sameResult() {
        Simulation other = Simulation.of(JOB)
                .with(Input.rainChance(), Spread.triangular(0.1, 0.2, 0.4))
                .with(Input.inkPrice(), Spread.list(Money.parse("EUR 100"), Money.parse("EUR 130")))
                .with(Input.pace("wipe"), Spread.normal(Read.timePerArea("1 min/m2"), Read.timePerArea("0.3 min/m2"), Read.timePerArea("0.6 min/m2")))
                .with(Input.sizes(), Spread.list(1, 1.01))
                .with(Input.pace("heat-roll"), Spread.triangular(
                        Read.timePerArea("8 min/m2"), Read.timePerArea("10 min/m2"), Read.timePerArea("15 min/m2")))
                .with(Input.crewPace(), Spread.pert(0.85, 1, 1.4));

        assertSame(some().run(42, 300), other.run(42, 300));
    }

    @Test
    void run_otherSeed_otherResult() {
        assertThat(some().run(1, 200).of(Outcome.COST).mean()).isNotEqualTo(some().run(2, 200).of(Outcome.COST).mean());
    }

    @Test
    void run_withoutRanges_givesTheJobsOwnFigures() {
        RiskResult result = Simulation.of(JOB).run(1, 3);
        JobCost cost = JobCost.of(JOB);

        assertThat(result.price(0.5)).isEqualTo(cost.total());
        assertThat(result.cost(0.95)).isEqualTo(cost.price().cost());
        assertThat(result.of(Outcome.PAID_TIME).percentile(0.5)).isEqualTo(cost.labour().totalPaidS());
        assertThat(result.handOver(0.8)).contains(cost.timetable().orElseThrow().handOver());
        assertThat(result.plans()).isEqualTo(1);
        assertThat(result.impossible()).isZero();
    }

    /** Paid time is linear in the pace of cutting panels, so mean, deviation and percentiles follow exactly from those of the range. */
    @Test
    void run_onePaceOfTheShop_paidTimeHasTheExactMoments() {
        Spread spread = Spread.triangular(Read.time("5 min"), Read.time("6 min"), Read.time("10 min"));
        JobCost cost = JobCost.of(JOB);
        Task trim = JOB.labour().tasks().task("trim");
        double slope = cost.labour().task("trim").orElseThrow().paidS() / trim.pace().inner();
        double rest = cost.labour().totalPaidS() - slope * trim.pace().inner();

        Outlook hours = Simulation.of(JOB).with(Input.pace("trim"), spread).run(7, 20_000).of(Outcome.PAID_TIME);

        double error = slope * Math.sqrt(spread.variance() / 20_000);
        assertThat(hours.mean()).isCloseTo(rest + slope * spread.mean(), within(5 * error));
        assertThat(hours.deviation()).isCloseTo(slope * Math.sqrt(spread.variance()), within(0.03 * hours.deviation()));
        // P80 of the triangular range (5, 6, 10): b - sqrt(0.2 (b - a)(b - m)) = 10 - sqrt(0.2 x 5 x 4) = 8 min
        assertThat(hours.percentile(0.8)).isCloseTo(rest + slope * 8 * 60, within(8 * error));
        assertThat(hours.shares().get(0).share()).isGreaterThan(0.99);
    }

    @Test
    void run_sharedCrewPace_hasHigherP80ThanIndependentPaces() {
        Simulation independent = Simulation.of(JOB);
        for (Task task : JOB.labour().tasks().tasks()) {
            if (task.machine() == Machine.NONE && task.driver().paceMeasure() == Measure.TIME) {
                double pace = task.pace().inner() / 60;
                independent = independent.with(Input.pace(task.id()), Spread.triangular(
                        Read.time(0.7 * pace + " min"), Read.time(pace + " min"), Read.time(1.6 * pace + " min")));
            } else if (task.machine() == Machine.NONE && task.driver().paceMeasure() == Measure.TIME_PER_AREA) {
                double pace = task.pace().inner() / 60;
                independent = independent.with(Input.pace(task.id()), Spread.triangular(
                        Read.timePerArea(0.7 * pace + " min/m2"), Read.timePerArea(pace + " min/m2"), Read.timePerArea(1.6 * pace + " min/m2")));
            }
        }
        RiskResult apart = independent.run(9, 4000);
        RiskResult together = Simulation.of(JOB).with(Input.crewPace(), Spread.triangular(0.7, 1, 1.6)).run(9, 4000);

        assertThat(together.of(Outcome.PAID_TIME).percentile(0.8)).isGreaterThan(apart.of(Outcome.PAID_TIME).percentile(0.8) * 1.03);
    }

    @Test
    void run_moreRain_neverEarlierAndNeverDearer() {
        RiskResult dry = Simulation.of(JOB).run(3, 500);
        RiskResult wet = Simulation.of(JOB).with(Input.rainChance(), Spread.list(0.4)).run(3, 500);

        assertThat(wet.of(Outcome.HAND_OVER).percentile(0)).isGreaterThanOrEqualTo(dry.of(Outcome.HAND_OVER).percentile(0));
        assertThat(wet.of(Outcome.HAND_OVER).mean()).isGreaterThan(dry.of(Outcome.HAND_OVER).mean());
        assertThat(wet.cost(1)).isEqualTo(dry.cost(0));
    }

    @Test
    void run_wallTooHighForAnyRoll_countsAndTellsWhy() {
        // 3 m x 2 = 6 m still fits rolls of 25 m; drops of a wall ten times as high need 30 m and do not.
        Input higher = Input.of("height", Measure.NUMBER, (job, factor) -> PlanInputs.size(job, Demo.WALL).replan().make(job, factor));
        RiskResult result = Simulation.of(JOB).with(higher, Spread.list(1, 10)).run(1, 400);

        assertThat(result.impossible()).isBetween(150, 250);
        assertThat(result.plans()).isEqualTo(2);
        assertThat(result.reasons()).hasSize(1).first().asString().contains("longest roll");
        assertThat(result.of(Outcome.COST).count()).isEqualTo(400 - result.impossible());
        assertThat(result.cost(1)).isEqualTo(JobCost.of(JOB).price().cost());
    }

    @Test
    void run_nothingCanBeDone_isAResultWithoutFigures() {
        Input higher = Input.of("height", Measure.NUMBER, (job, factor) -> PlanInputs.size(job, Demo.WALL).replan().make(job, factor));
        RiskResult result = Simulation.of(JOB).with(higher, Spread.list(10)).run(1, 5);

        assertThat(result.impossible()).isEqualTo(5);
        assertThat(result.toString()).contains("Cannot be done").doesNotContain("P80");
        assertThatThrownBy(() -> result.price(0.5)).isInstanceOf(IllegalStateException.class);
    }

    @Test
    void run_sizesInGrains_arePlannedOnceEach() {
        RiskResult result = Simulation.of(JOB).with(Input.sizes(), Spread.triangular(0.998, 1, 1.002)).run(1, 1000);

        // 0.998 to 1.002 in steps of 1/2048: from round(2043.9) to round(2052.1), at most 9 of them
        assertThat(result.plans()).isBetween(5, 9);
        assertThat(result.toString()).contains("planned anew for " + result.plans());
    }

    @Test
    void chanceOfCostAbove_risingAmounts_falls() {
        RiskResult result = some().run(4, 500);

        assertThat(result.chanceOfCostAbove(result.cost(0))).isGreaterThan(0.9);
        assertThat(result.chanceOfCostAbove(result.cost(0.8))).isCloseTo(0.2, within(0.01));
        assertThat(result.chanceOfCostAbove(Money.parse("EUR 100000"))).isZero();
        assertThatThrownBy(() -> result.chanceOfCostAbove(Money.parse("USD 1"))).isInstanceOf(RefusedException.class);
    }

    @Test
    void with_whatTheJobHasNot_refused() {
        Simulation none = Simulation.of(JOB);

        assertThatThrownBy(() -> none.with(Input.pace("paint"), Spread.list(1))).isInstanceOf(RefusedException.class).hasMessageContaining("heat-roll");
        assertThatThrownBy(() -> none.with(Input.areaRatio("Back"), Spread.list(1.2))).isInstanceOf(RefusedException.class);
        assertThatThrownBy(() -> none.with(Input.rollPrice("C"), Spread.list(Money.parse("EUR 1")))).isInstanceOf(RefusedException.class);
        assertThatThrownBy(() -> none.with(Input.extraPrice("Crane"), Spread.list(Money.parse("EUR 1")))).isInstanceOf(RefusedException.class);
        assertThatThrownBy(() -> none.with(Input.consumablePrice("Tape"), Spread.list(Money.parse("EUR 1")))).isInstanceOf(RefusedException.class);
    }

    @Test
    void with_wrongKindOrRange_refused() {
        Simulation none = Simulation.of(JOB);

        assertThatThrownBy(() -> none.with(Input.pace("heat-roll"), Spread.list(1))).isInstanceOf(RefusedException.class)
                .hasMessageContaining("TIME_PER_AREA");
        assertThatThrownBy(() -> none.with(Input.siteRate(), Spread.list(Money.parse("USD 40")))).isInstanceOf(RefusedException.class)
                .hasMessageContaining("EUR");
        assertThatThrownBy(() -> none.with(Input.areaRatio(Demo.WALL), Spread.triangular(0.9, 1, 1.1))).isInstanceOf(RefusedException.class)
                .hasMessageContaining("area ratio of Street front");
        assertThatThrownBy(() -> none.with(Input.rainChance(), Spread.list(0.95))).isInstanceOf(RefusedException.class);
        assertThatThrownBy(() -> none.run(1, 0)).isInstanceOf(RefusedException.class);
        assertThatThrownBy(() -> none.withThreads(0)).isInstanceOf(RefusedException.class);
    }

    /** Where nothing is unsure every percentile is the job's own figure, each in its column. */
    @Test
    void toString_inputsWithoutWidth_printsTheJobsOwnFigures() {
        JobCost plain = JobCost.of(JOB);
        RiskResult result = Simulation.of(JOB).with(Input.crewPace(), Spread.list(1)).withThreads(1).run(7, 3);
        String hours = Print.fixed(plain.labour().totalPaidS() / 3600, 2) + " h";
        assertThat(result.toString().lines()).contains(
                row("", "P50", "P80", "P95"), row(Outcome.PAID_TIME.title(), hours, hours, hours),
                row(Outcome.PRICE.title(), plain.total().toString(), plain.total().toString(), plain.total().toString()),
                "Share of the variance of the price");
        assertThat(result.toString().lines().filter(line -> line.startsWith(Outcome.FILM.title()))).singleElement().asString().endsWith(" m");
        assertThat(result.toString().lines().filter(line -> line.startsWith(Outcome.COST.title()))).singleElement().asString().contains(" EUR ");
        if (JOB.dates().isPresent()) {
            String day = plain.timetable().orElseThrow().handOver().toLocalDate().toString();
            assertThat(result.toString().lines().filter(line -> line.startsWith(Outcome.HAND_OVER.title()))).singleElement().asString().contains(day + "T");
        }
        assertThat(result.toString()).endsWith(" % jointly\n");
    }

    private static String row(String title, String... cells) {
        return String.format(Locale.ROOT, "%-14s%-20s%-20s%s", title, cells[0], cells[1], cells[2]);
    }

    /** One line an input, whatever order they were given in. */
    @Test
    void toString_sharesOfThePrice_standLargestFirst() {
        String text = some().withThreads(1).run(42, 700).toString();
        double[] shares = text.lines().dropWhile(line -> !line.startsWith("Share of")).skip(1).filter(line -> !line.endsWith("jointly"))
                .mapToDouble(line -> Double.parseDouble(line.substring(0, line.indexOf(" %")))).toArray();
        assertThat(shares).hasSize(6).isSortedAccordingTo((a, b) -> Double.compare(b, a));
    }
}
