package io.github.bedjoint.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.bedjoint.checker.PlanChecker;
import io.github.bedjoint.rolls.RollPlan;
import io.github.bedjoint.rolls.Stop;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Published bin packing jobs against their published optima; see {@code rolls/SOURCES.md}. */
class PublishedJobsTest {

    /** Little work for the hard ones: the point is that no bound crosses the known value, however early it stops. */
    private static final long LITTLE = 6_000_000;

    private static final Set<String> SURE = Set.of("falkenauer_u", "scholl1", "schwerin");

    static List<Instances.Instance> jobs() {
        return Instances.of("bpp1d");
    }

    static List<Instances.Instance> sureJobs() {
        return jobs().stream().filter(job -> SURE.contains(job.family())).toList();
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void plan_littleWork_enclosesThePublishedOptimum(Instances.Instance job) {
        RollPlan plan = job.planner().withWorkLimit(LITTLE).plan(job.cuts(), job.stock());
        assertThat(PlanChecker.check(plan)).matches(PlanChecker.Verdict::accepted);
        assertThat(plan.isFeasible()).isTrue();
        assertThat(plan.lowerBound()).isLessThanOrEqualTo(job.best());
        assertThat(plan.cost()).isGreaterThanOrEqualTo(job.best());
        assertThat(plan.gap()).isLessThanOrEqualTo(2);
    }

    @ParameterizedTest
    @MethodSource("sureJobs")
    void plan_falkenauerUniformAndScholl1AndSchwerin_isProvenAtThePublishedOptimum(Instances.Instance job) {
        RollPlan plan = job.planner().plan(job.cuts(), job.stock());
        assertThat(plan.stop()).isEqualTo(Stop.PROVEN);
        assertThat(plan.cost()).isEqualTo(job.best());
    }
}
