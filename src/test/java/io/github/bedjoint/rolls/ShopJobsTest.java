package io.github.bedjoint.rolls;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The invented shop jobs against values proven with CP-SAT 9.15; see {@code rolls/SOURCES.md}. */
class ShopJobsTest {

    static List<Instances.Instance> jobs() {
        return Instances.of("shop1d");
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void plan_shopJob_isValidAndEnclosesTheKnownValue(Instances.Instance job) {
        RollPlan plan = job.planner().plan(job.cuts(), job.stock());
        assertThat(PlanChecker.check(plan)).isEqualTo(PlanChecker.Verdict.yes());
        assertThat(plan.isFeasible()).isTrue();
        assertThat(plan.lowerBound()).isLessThanOrEqualTo(job.best());
        assertThat(plan.cost()).isGreaterThanOrEqualTo(job.best());
    }
}
