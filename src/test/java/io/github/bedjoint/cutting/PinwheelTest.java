package io.github.bedjoint.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.bedjoint.checker.PlanChecker;
import io.github.bedjoint.rolls.Cut;
import io.github.bedjoint.rolls.CutKind;
import io.github.bedjoint.rolls.RollPlan;
import io.github.bedjoint.rolls.Stock;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Two of 2 x 3 and two of 3 x 2 around a hole fill 24 of the 25 of a roll of 5 x 5, and no straight cut from edge to edge parts them: one roll would do where any cut is
 * allowed, two where only straight ones are.
 */
class PinwheelTest {
    private static final List<Cut> WHEEL = List.of(new Cut("U", 2, 3, 2, ""), new Cut("F", 3, 2, 2, ""));
    private static final List<Stock> STOCK = List.of(new Stock("R", 5, 5, 10, Stock.UNLIMITED, ""));

    @Test
    void plan_anyCuts_isNotCalledProvenWithTwo() {
        RollPlan plan = RollPlanner.withDefaults().plan(WHEEL, STOCK);
        assertThat(plan.lowerBound()).isEqualTo(10);
        assertThat(plan.isProven()).isEqualTo(plan.cost() == 10);
        assertThat(PlanChecker.check(plan)).matches(PlanChecker.Verdict::accepted);
    }

    @Test
    void plan_straightCuts_takesTwo() {
        RollPlan plan = RollPlanner.withDefaults().withCuts(CutKind.GUILLOTINE).withWorkLimit(5_000_000).plan(WHEEL, STOCK);
        assertThat(plan.cost()).isEqualTo(20);
        assertThat(plan.rolls()).noneMatch(roll -> roll.cuts() == CutKind.FREE);
        assertThat(PlanChecker.check(plan)).matches(PlanChecker.Verdict::accepted);
    }
}
