package io.github.bedjoint.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.bedjoint.checker.PlanChecker;
import io.github.bedjoint.rolls.Certificate;
import io.github.bedjoint.rolls.Cut;
import io.github.bedjoint.rolls.CuttingTerms;
import io.github.bedjoint.rolls.OpenedRoll;
import io.github.bedjoint.rolls.RollPlan;
import io.github.bedjoint.rolls.Stock;
import io.github.bedjoint.rolls.Stop;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.UnitStyle;
import java.math.BigDecimal;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What longer rolls save, worked by hand and against trying everything. */
class LongerRollsTest {
    private static final long MM = 80;
    private static final long CM = 10 * MM;

    private static RollPlan drops() {
        List<Cut> cuts = List.of(new Cut("drop", 100_000, 250_000, 7, "north"), new Cut("over the door", 100_000, 90_000, 2, "north"));
        List<Stock> stock = List.of(
                new Stock("10 yd", 109_728, 731_520, 24_000, Stock.UNLIMITED, "new"),
                new Stock("50 yd", 109_728, 3_657_600, 112_000, Stock.UNLIMITED, "new"),
                new Stock("rest", 109_728, 400_000, 6_000, 1, "old"));
        return RollPlanner.withDefaults().withLead(8_000).withGap(400).plan(cuts, stock);
    }

    /**
     * Three drops on a roll of 10 yd: 3 x 250,000 + 2 x 400 = 750,800 on 731,520 - 8,000 = 723,520, so 27,280 steps = 341 mm are missing. Then 3 + 3 + 1 drops
     * go on three rolls, with the pieces over the door on the third: 72000.
     */
    @Test
    void enough_dropsOfThree_isWhatTheThirdIsTooLongBy() {
        LongerRolls longer = LongerRolls.of(drops(), CM);
        assertThat(longer.after().cost()).isEqualTo(78_000);
        assertThat(longer.costByPrices()).hasValue(78_000);
        assertThat(longer.enoughSteps()).hasValue(27_280);
        assertThat(longer.enough().orElseThrow().cost()).isEqualTo(72_000);
        assertThat(longer.isLeast()).isTrue();
    }

    /**
     * A drop is worth 78000 / 7; a roll of 10 yd takes two on 723,520 steps, the rest one on 392,000. A centimetre (800 steps) on each of three and one:
     * 78000 / 7 x 800 x (3 x 2 / 723520 + 1 / 392000) = 8914285.714 x (8.292791e-6 + 2.551020e-6) = 96.6638.
     */
    @Test
    void rate_dropsOfThree_workedByHand() {
        assertThat(LongerRolls.of(drops(), CM).rate().orElseThrow()).isEqualByComparingTo(new BigDecimal("96.6648"));
    }

    @Test
    void lines_dropsOfThree_sayAllThree() {
        assertThat(LongerRolls.of(drops(), CM).lines(UnitStyle.METRIC, minor -> "EUR " + BigDecimal.valueOf(minor, 2))).containsExactly(
                "Every roll 10.0 mm longer at the same price, or as much less lost at its ends; planned again: 4 rolls for EUR 780.00, the same cost."
                        + " By the prices of the certificate nothing can be saved.",
                "At the prices of the certificate 10.0 mm on every roll opened is worth EUR 0.97: a rate, which is earned only where panels of any length can fill it.",
                "The first saving comes with 341.0 mm more: 3 rolls for EUR 720.00, EUR 60.00 less, and not with 1.0 mm less than that.");
    }

    /** Two of 500 on rolls of 995 mm: 1 cm more takes both, and saves one roll of two; 5 mm are enough. */
    @Test
    void of_littleMissing_savesARoll() {
        RollPlan plan = RollPlanner.withDefaults().plan(List.of(new Cut("a", MM, 500 * MM, 2, "")), List.of(new Stock("S", MM, 995 * MM, 300, -1, "")));
        LongerRolls longer = LongerRolls.of(plan, CM);
        assertThat(longer.after().cost()).isEqualTo(300);
        assertThat(longer.costByPrices()).hasValue(300);
        assertThat(longer.enoughSteps()).hasValue(5 * MM);
        assertThat(longer.lines(UnitStyle.METRIC, Long::toString).get(0))
                .endsWith("1 roll for 300, 300 less. By the prices of the certificate at most 300 can be saved.");
    }

    @Test
    void of_oneRoll_savesNothing() {
        RollPlan plan = RollPlanner.withDefaults().plan(List.of(new Cut("a", MM, 500 * MM, 1, "")), List.of(new Stock("S", MM, 995 * MM, 300, -1, "")));
        LongerRolls longer = LongerRolls.of(plan, CM);
        assertThat(longer.enoughSteps()).isEmpty();
        assertThat(longer.enough()).isEmpty();
        assertThat(longer.isLeast()).isFalse();
        assertThat(longer).asString().endsWith("Longer rolls were not found to save anything.");
    }

    /** 1200 mm on 1000: there is a plan with 200 mm more, and not with 199. */
    @Test
    void of_noPlan_saysWhenThereIsOne() {
        RollPlan plan = RollPlanner.withDefaults().plan(List.of(new Cut("a", MM, 1200 * MM, 1, "")), List.of(new Stock("S", MM, 1000 * MM, 300, -1, "")));
        LongerRolls longer = LongerRolls.of(plan, CM);
        assertThat(longer.enoughSteps()).hasValue(200 * MM);
        assertThat(longer.costByPrices()).isEmpty();
        assertThat(longer.rate()).isEmpty();
        assertThat(longer.lines(UnitStyle.METRIC, Long::toString)).containsExactly(
                "Every roll 10.0 mm longer at the same price; planned again: there is no plan.",
                "A plan comes with 200.0 mm more: 1 roll for 300, and not with 1.0 mm less than that.");
        RollPlan wide = RollPlanner.withDefaults().plan(List.of(new Cut("a", 2 * MM, MM, 1, "")), List.of(new Stock("S", MM, 1000 * MM, 300, -1, "")));
        assertThat(LongerRolls.of(wide, CM)).asString().endsWith("Longer rolls were not found to give a plan.");
    }

    /** The plan of two rolls for two of 500 mm on 1000 is not the cheapest, and does not claim to be: a saving with 1 mm more proves nothing about less. */
    @Test
    void isLeast_planNotProven_isNotClaimed() {
        List<Cut> cuts = List.of(new Cut("a", MM, 500 * MM, 2, ""));
        Stock row = new Stock("S", MM, 1000 * MM, 300, -1, "");
        List<OpenedRoll> two = List.of(OpenedRoll.inLine(row, cuts, CuttingTerms.plain()), OpenedRoll.inLine(row, cuts, CuttingTerms.plain()));
        RollPlan plan = new RollPlan(cuts, List.of(row), CuttingTerms.plain(), two, 600, 0, Stop.WORK_LIMIT, Certificate.empty(), List.of(), 1);
        LongerRolls longer = LongerRolls.of(plan, CM);
        assertThat(longer.enoughSteps()).hasValue(MM);
        assertThat(longer.isLeast()).isFalse();
        assertThat(longer.rate()).isEmpty();
        assertThat(longer).asString().endsWith("1 roll for 300, 300 less; less was not found to do, nor proven not to.");
    }

    /** A panel of 900 mm on a roll of 1000 mm: 10 mm are a hundredth of the roll, so 0.01 where it costs 1. */
    @ParameterizedTest
    @CsvSource({"1, less than 1", "100, 1"})
    void lines_cheapRolls_roundTheRate(long cost, String worth) {
        RollPlan plan = RollPlanner.withDefaults().plan(List.of(new Cut("a", MM, 900 * MM, 1, "")), List.of(new Stock("S", MM, 1000 * MM, cost, -1, "")));
        assertThat(LongerRolls.of(plan, CM).lines(UnitStyle.METRIC, Long::toString)).contains("At the prices of the certificate 10.0 mm on every roll opened is worth "
                + worth + ": a rate, which is earned only where panels of any length can fill it.");
    }

    @Test
    void of_lengthOutOfRange_isRefused() {
        assertThatThrownBy(() -> LongerRolls.of(drops(), 0)).isInstanceOf(RefusedException.class);
        assertThatThrownBy(() -> LongerRolls.of(drops(), 8_000_001)).isInstanceOf(RefusedException.class);
    }

    private static long cost(SmallJobs.Job job, long more) {
        List<Stock> longer = job.stock().stream()
                .map(row -> new Stock(row.id(), row.widthSteps(), row.lengthSteps() + more, row.cost(), row.available(), row.lot()))
                .toList();
        return Exhaustive.cost(job.cuts(), longer, job.terms());
    }

    /** Step by step, with grains of one step, the first saving and the plan just below it are what trying everything gives. */
    @Property
    void enough_anyJob_isTheFirstSaving(@ForAll long seed) {
        SmallJobs.Job job = new Random(seed).nextBoolean() ? SmallJobs.withTerms(seed) : SmallJobs.withLots(seed);
        RollPlan plan = job.plan();
        LongerRolls longer = LongerRolls.of(plan, 1);
        long before = plan.isFeasible() ? plan.cost() : Exhaustive.NONE;
        assertThat(PlanChecker.check(longer.after())).matches(PlanChecker.Verdict::accepted);
        assertThat(longer.after().isFeasible() ? longer.after().cost() : Exhaustive.NONE).isEqualTo(cost(job, 1));
        longer.costByPrices().ifPresent(bound -> assertThat(bound).isLessThanOrEqualTo(longer.after().cost()));
        longer.rate().ifPresent(rate -> assertThat(rate.signum()).isNotNegative());
        if (longer.enoughSteps().isPresent()) {
            long enough = longer.enoughSteps().getAsLong();
            assertThat(longer.isLeast()).isTrue();
            assertThat(cost(job, enough)).isLessThan(before).isEqualTo(longer.enough().orElseThrow().cost());
            assertThat(cost(job, enough - 1)).isEqualTo(before);
        } else {
            assertThat(cost(job, 200)).isEqualTo(before);
        }
    }

    /** With credits for remnants a longer roll may cost more, as its metre is credited less: no bound is crossed, and nothing is called the least. */
    @Property
    void of_remnantsCredited_neverBeatsItsBound(@ForAll long seed) {
        SmallJobs.Job job = SmallJobs.withRemnants(seed);
        LongerRolls longer = LongerRolls.of(job.plan(), 1);
        if (longer.after().isFeasible()) {
            longer.costByPrices().ifPresent(bound -> assertThat(bound).isLessThanOrEqualTo(longer.after().cost()));
        }
        assertThat(longer.isLeast() && job.terms().remnants().percent() > 0).isFalse();
    }
}
