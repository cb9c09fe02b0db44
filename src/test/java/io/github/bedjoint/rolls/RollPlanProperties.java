package io.github.bedjoint.rolls;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** Plans of small random jobs against trying everything. */
class RollPlanProperties {

    @Property
    void plan_anyRolls_isValidAndBoundNeverCrossesTheOptimum(@ForAll long seed) {
        verify(SmallJobs.any(seed));
    }

    @Property
    void plan_leadTailAndGap_isValidAndBoundNeverCrossesTheOptimum(@ForAll long seed) {
        verify(SmallJobs.withTerms(seed));
    }

    @Property
    void plan_remnantCredit_isValidAndBoundNeverCrossesTheOptimum(@ForAll long seed) {
        verify(SmallJobs.withRemnants(seed));
    }

    private static void verify(SmallJobs.Job job) {
        RollPlan plan = job.plan();
        long best = job.best();
        assertThat(PlanChecker.check(plan)).isEqualTo(PlanChecker.Verdict.yes());
        if (best == Exhaustive.NONE) {
            assertThat(plan.isFeasible()).isFalse();
            return;
        }
        assertThat(plan.stop()).isNotEqualTo(Stop.INFEASIBLE);
        assertThat(plan.lowerBound()).isLessThanOrEqualTo(best);
        if (plan.isFeasible()) {
            assertThat(plan.cost()).isGreaterThanOrEqualTo(best);
        }
    }
}
