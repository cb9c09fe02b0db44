package io.github.bedjoint.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.bedjoint.checker.PlanChecker;
import io.github.bedjoint.rolls.CutKind;
import io.github.bedjoint.rolls.CuttingTerms;
import io.github.bedjoint.rolls.RollPlan;
import io.github.bedjoint.rolls.Stop;
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

    /** Cuts from edge to edge are never cheaper than free ones. */
    @Property
    void plan_guillotineCuts_neverBeatsTheCheapestFreePlan(@ForAll long seed) {
        SmallJobs.Job job = FlatJobs.any(seed, CutKind.GUILLOTINE);
        RollPlan plan = job.plan();
        CuttingTerms free = job.terms().withCuts(CutKind.FREE);
        long best = FlatJobs.best(new SmallJobs.Job(job.cuts(), job.stock(), free));
        assertThat(PlanChecker.check(plan)).matches(PlanChecker.Verdict::accepted);
        assertThat(!plan.isFeasible() || best != Exhaustive.NONE && plan.cost() >= best).isTrue();
        assertThat(plan.rolls()).noneMatch(roll -> roll.cuts() == CutKind.FREE);
    }

    private static void verify(SmallJobs.Job job) {
        RollPlan plan = job.plan();
        long best = FlatJobs.best(job);
        assertThat(PlanChecker.check(plan)).matches(PlanChecker.Verdict::accepted);
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
