package io.github.bedjoint.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.bedjoint.checker.PlanChecker;
import io.github.bedjoint.rolls.RollPlan;
import io.github.bedjoint.rolls.Stop;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The invented shop jobs against values proven with CP-SAT 9.15; see {@code rolls/SOURCES.md}. */
class ShopJobsTest {

    static List<Instances.Instance> jobs() {
        return Stream.of("shop1d", "shoplot").flatMap(kind -> Instances.of(kind).stream()).toList();
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void plan_shopJob_isProvenAtTheKnownValue(Instances.Instance job) {
        RollPlan plan = job.planner().plan(job.cuts(), job.stock());
        assertThat(PlanChecker.check(plan)).matches(PlanChecker.Verdict::accepted);
        assertThat(plan.stop()).isEqualTo(Stop.PROVEN);
        assertThat(plan.cost()).isEqualTo(job.best());
    }
}
