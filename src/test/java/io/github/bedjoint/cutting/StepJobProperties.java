package io.github.bedjoint.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.bedjoint.checker.PlanChecker;
import io.github.bedjoint.rolls.Cut;
import io.github.bedjoint.rolls.CuttingTerms;
import io.github.bedjoint.rolls.LotRule;
import io.github.bedjoint.rolls.RollPlan;
import io.github.bedjoint.rolls.Stock;
import io.github.bedjoint.rolls.Stop;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** Laws that plans of shop-sized jobs in true steps keep. */
class StepJobProperties {

    private static RollPlan plan(SmallJobs.Job job) {
        RollPlan plan = job.plan();
        assertThat(PlanChecker.check(plan)).matches(PlanChecker.Verdict::accepted);
        return plan;
    }

    @Property(tries = 150)
    void plan_shopJob_isProven(@ForAll long seed) {
        assertThat(plan(StepJobs.of(seed, 30)).stop()).isEqualTo(Stop.PROVEN);
    }

    @Property(tries = 100)
    void plan_rowsInAnotherOrder_costTheSame(@ForAll long seed) {
        SmallJobs.Job job = StepJobs.of(seed, 16);
        List<Cut> cuts = new ArrayList<>(job.cuts());
        List<Stock> stock = new ArrayList<>(job.stock());
        Collections.shuffle(cuts, new Random(seed));
        Collections.shuffle(stock, new Random(seed + 1));
        assertThat(plan(new SmallJobs.Job(cuts, stock, job.terms())).cost()).isEqualTo(plan(job).cost());
    }

    @Property(tries = 100)
    void plan_oneMoreRemnantOnTheShelf_neverCostsMore(@ForAll long seed) {
        SmallJobs.Job job = StepJobs.of(seed, 16);
        List<Stock> more = new ArrayList<>(job.stock());
        more.add(new Stock("more", 109_728, 400_000, 1_000, 1, "old"));
        assertThat(plan(new SmallJobs.Job(job.cuts(), more, job.terms())).cost())
                .isLessThanOrEqualTo(plan(job).cost());
    }

    @Property(tries = 100)
    void plan_oneMorePanelOrALargerGap_neverCostsLess(@ForAll long seed) {
        SmallJobs.Job job = StepJobs.of(seed, 16);
        List<Cut> more = new ArrayList<>(job.cuts());
        more.add(new Cut("more", 100_000, 200_000, 1, "W0"));
        long cost = plan(job).cost();
        assertThat(plan(new SmallJobs.Job(more, job.stock(), job.terms())).cost()).isGreaterThanOrEqualTo(cost);
        CuttingTerms t = job.terms();
        CuttingTerms wider = new CuttingTerms(t.leadSteps(), t.tailSteps(), t.gapSteps() + 800, t.remnants(), t.lots());
        assertThat(plan(new SmallJobs.Job(job.cuts(), job.stock(), wider)).cost()).isGreaterThanOrEqualTo(cost);
    }

    @Property(tries = 60)
    void plan_oneLotPerWall_neverCostsLessThanAnyLot(@ForAll long seed) {
        SmallJobs.Job job = StepJobs.of(seed, 24);
        CuttingTerms t = job.terms();
        CuttingTerms lots = new CuttingTerms(
                t.leadSteps(), t.tailSteps(), t.gapSteps(), t.remnants(), LotRule.ONE_LOT_PER_WALL);
        RollPlan strict = plan(new SmallJobs.Job(job.cuts(), job.stock(), lots));
        assertThat(strict.lowerBound()).isGreaterThanOrEqualTo(plan(job).lowerBound());
        assertThat(strict.isFeasible()).isTrue();
    }
}
