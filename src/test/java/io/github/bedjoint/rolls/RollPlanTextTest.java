package io.github.bedjoint.rolls;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What a roll plan is printed as. */
class RollPlanTextTest {
    private static final Cut A = new Cut("A", 2, 4, 1, "");
    private static final Stock ROW = new Stock("R", 2, 4, 10, Stock.UNLIMITED, "");
    private static final Shortage SHORT = new Shortage(Shortage.Reason.CUT_TOO_LONG, "A", 4, 3);

    private static RollPlan plan(long bound, Stop stop) {
        OpenedRoll roll = OpenedRoll.inLine(ROW, List.of(A), CuttingTerms.plain());
        List<OpenedRoll> rolls = stop == Stop.PROVEN || stop == Stop.WORK_LIMIT ? List.of(roll) : List.of();
        return new RollPlan(List.of(A), List.of(ROW), CuttingTerms.plain(), rolls, rolls.isEmpty() ? 0 : 10, bound, stop, Certificate.empty(),
                rolls.isEmpty() ? List.of(SHORT) : List.of(), 0);
    }

    @Test
    void toString_provenBoundedOrNone_isSaid() {
        assertThat(plan(10, Stop.PROVEN)).hasToString("1 roll, 10 minor units of money, proven the cheapest");
        assertThat(plan(7, Stop.WORK_LIMIT)).hasToString("1 roll, 10 minor units of money, no plan costs less than 7");
        assertThat(plan(0, Stop.INFEASIBLE)).hasToString("no plan: [" + SHORT + "]");
    }

    @Test
    void gap_isWhatMayBeSaved_andNothingWithoutAPlan() {
        assertThat(plan(7, Stop.WORK_LIMIT).gap()).isEqualTo(3);
        assertThat(plan(10, Stop.PROVEN).gap()).isZero();
        assertThat(plan(7, Stop.NO_PLAN_FOUND).gap()).isZero();
    }
}
