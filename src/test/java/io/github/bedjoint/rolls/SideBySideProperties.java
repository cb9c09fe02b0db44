package io.github.bedjoint.rolls;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** Plans of small random jobs of panels side by side against trying every place. */
class SideBySideProperties {

    @Property
    void plan_freeCuts_enclosesTheCheapest(@ForAll long seed) {
        verify(FlatJobs.any(seed, CutKind.FREE));
    }

    @Property
    void plan_oneAcrossAndTurned_enclosesTheCheapest(@ForAll long seed) {
        verify(FlatJobs.any(seed, CutKind.CROSS));
    }

    private static void verify(SmallJobs.Job job) {
        RollPlan plan = job.plan();
        long best = FlatJobs.best(job);
        assertThat(PlanChecker.check(plan)).isEqualTo(PlanChecker.Verdict.yes());
        if (best == Exhaustive.NONE) {
            assertThat(plan.isFeasible()).isFalse();
        } else {
            assertThat(plan.stop()).isNotEqualTo(Stop.INFEASIBLE);
            assertThat(plan.lowerBound()).isLessThanOrEqualTo(best);
            assertThat(!plan.isFeasible() || plan.cost() >= best).isTrue();
            assertThat(!plan.isProven() || plan.cost() == best).isTrue();
        }
    }
}
