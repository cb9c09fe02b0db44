package io.github.bedjoint.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.bedjoint.checker.PlanChecker;
import io.github.bedjoint.rolls.RollPlan;
import io.github.bedjoint.rolls.Stop;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** Plans of small random jobs against trying everything. */
class RollPlanProperties {

    @Property
    void plan_anyRolls_isTheCheapestAndProven(@ForAll long seed) {
        verify(SmallJobs.any(seed));
    }

    @Property
    void plan_leadTailAndGap_isTheCheapestAndProven(@ForAll long seed) {
        verify(SmallJobs.withTerms(seed));
    }

    @Property
    void plan_remnantCredit_isTheCheapestAndProven(@ForAll long seed) {
        verify(SmallJobs.withRemnants(seed));
    }

    @Property
    void plan_oneLotPerWall_isTheCheapestAndProven(@ForAll long seed) {
        verify(SmallJobs.withLots(seed));
    }

    @Property
    void plan_workOver_isStillValidAndTheBoundNeverCrossesTheOptimum(@ForAll long seed) {
        Random random = new Random(seed);
        SmallJobs.Job job = random.nextBoolean() ? SmallJobs.withLots(seed) : SmallJobs.withRemnants(seed);
        RollPlan plan = RollPlanner.withDefaults()
                .withTerms(job.terms())
                .withWorkLimit(1 + random.nextInt(400))
                .plan(job.cuts(), job.stock());
        long best = job.best();
        assertThat(PlanChecker.check(plan)).matches(PlanChecker.Verdict::accepted);
        if (best == Exhaustive.NONE) {
            assertThat(plan.isFeasible()).isFalse();
        } else {
            assertThat(plan.stop()).isNotEqualTo(Stop.INFEASIBLE);
            assertThat(plan.lowerBound()).isLessThanOrEqualTo(best);
            assertThat(!plan.isFeasible() || plan.cost() >= best).isTrue();
        }
    }

    private static void verify(SmallJobs.Job job) {
        RollPlan plan = job.plan();
        long best = job.best();
        assertThat(PlanChecker.check(plan)).matches(PlanChecker.Verdict::accepted);
        if (best == Exhaustive.NONE) {
            assertThat(plan.stop()).isEqualTo(Stop.INFEASIBLE);
        } else {
            assertThat(plan.stop()).isEqualTo(Stop.PROVEN);
            assertThat(plan.cost()).isEqualTo(best);
            assertThat(plan.lowerBound()).isEqualTo(best);
        }
    }
}
