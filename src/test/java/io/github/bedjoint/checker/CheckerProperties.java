package io.github.bedjoint.checker;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.bedjoint.bounds.ModelMaker;
import io.github.bedjoint.cutting.Exhaustive;
import io.github.bedjoint.cutting.SmallJobs;
import io.github.bedjoint.rolls.Certificate;
import io.github.bedjoint.rolls.Cut;
import io.github.bedjoint.rolls.CuttingTerms;
import io.github.bedjoint.rolls.LotBound;
import io.github.bedjoint.rolls.LotRule;
import io.github.bedjoint.rolls.OpenedRoll;
import io.github.bedjoint.rolls.PriceList;
import io.github.bedjoint.rolls.RemnantRule;
import io.github.bedjoint.rolls.RollPlan;
import io.github.bedjoint.rolls.Stock;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** The checker is never talked into a bound above the optimum, and finds what was changed in a good plan. */
class CheckerProperties {

    private static PlanChecker.Verdict bound(SmallJobs.Job job, long bound, Certificate certificate) {
        return BoundCheck.check(job.cuts(), job.stock(), job.terms(), bound, certificate);
    }

    private static SmallJobs.Job job(Random random) {
        return switch (random.nextInt(3)) {
            case 0 -> SmallJobs.withTerms(random.nextLong());
            case 1 -> SmallJobs.withRemnants(random.nextLong());
            default -> SmallJobs.withLots(random.nextLong());
        };
    }

    @Property
    void check_trueCertificate_showsTheOptimumAndNotOneMore(@ForAll long seed) {
        SmallJobs.Job job = job(new Random(seed));
        long best = job.best();
        RollPlan plan = job.plan();
        if (best != Exhaustive.NONE) {
            assertThat(bound(job, best, plan.certificate()).accepted()).isTrue();
            assertThat(bound(job, best + 1, plan.certificate()).accepted()).isFalse();
        } else {
            assertThat(bound(job, LotBound.IMPOSSIBLE, plan.certificate()).accepted()).isTrue();
        }
    }

    @Property
    void check_randomCertificate_isRefusedAboveTheOptimum(@ForAll long seed) {
        Random random = new Random(seed);
        SmallJobs.Job job = job(random);
        long best = job.best();
        Certificate wild = wild(job, random);
        if (best != Exhaustive.NONE) {
            assertThat(bound(job, best + 1, wild).accepted()).isFalse();
            assertThat(bound(job, LotBound.IMPOSSIBLE, wild).accepted()).isFalse();
        }
    }

    /** Prices and counts drawn at random; with lots, the same claims for single walls. */
    private static Certificate wild(SmallJobs.Job job, Random random) {
        if (job.terms().lots() == LotRule.ONE_LOT_PER_WALL && random.nextBoolean()) {
            List<LotBound> bounds = new ArrayList<>();
            for (Stock row : job.stock()) {
                String wall = job.cuts().get(0).group();
                List<Cut> cuts = job.cuts().stream().filter(c -> c.group().equals(wall)).toList();
                List<Stock> stock = job.stock().stream().filter(s -> s.lot().equals(row.lot())).toList();
                CuttingTerms any = new CuttingTerms(0, 0, 0, RemnantRule.none(), LotRule.ANY);
                bounds.add(new LotBound(
                        row.lot(), List.of(wall), random.nextInt(60), wild(new SmallJobs.Job(cuts, stock, any), random)));
            }
            return new Certificate(List.of(), List.of(), bounds);
        }
        List<PriceList> lists = new ArrayList<>();
        List<List<List<Integer>>> exhausted = new ArrayList<>();
        for (int q = 0; q < 1 + random.nextInt(3); q++) {
            List<Long> prices = job.cuts().stream().map(c -> (long) random.nextInt(9)).toList();
            List<List<Long>> held = new ArrayList<>();
            List<List<Integer>> counts = new ArrayList<>();
            for (Stock row : job.stock()) {
                int levels = ModelMaker.levels(row, job.terms()).size();
                held.add(random.longs(levels, 0, 30).boxed().toList());
                counts.add(random.ints(levels, 0, 3).boxed().toList());
            }
            lists.add(new PriceList(prices, held));
            if (random.nextBoolean()) {
                exhausted.add(counts);
            }
        }
        return new Certificate(lists, exhausted, List.of());
    }

    @Property
    void check_changedPlan_isRefused(@ForAll long seed) {
        Random random = new Random(seed);
        SmallJobs.Job job = job(random);
        RollPlan plan = job.plan();
        if (!plan.isFeasible()) {
            return;
        }
        int at = random.nextInt(plan.rolls().size());
        OpenedRoll roll = plan.rolls().get(at);
        List<OpenedRoll> without = new ArrayList<>(plan.rolls());
        without.remove(at);
        assertThat(PlanChecker.checkRolls(job.cuts(), job.stock(), job.terms(), without).accepted())
                .isFalse();
        List<OpenedRoll> twice = new ArrayList<>(plan.rolls());
        twice.add(roll);
        assertThat(PlanChecker.checkRolls(job.cuts(), job.stock(), job.terms(), twice).accepted())
                .isFalse();
        List<OpenedRoll> wrong = new ArrayList<>(plan.rolls());
        wrong.set(at, new OpenedRoll(roll.stockId(), roll.placed(), roll.usedSteps() - 1, roll.remnantSteps() + 1, roll.credit()));
        assertThat(PlanChecker.checkRolls(job.cuts(), job.stock(), job.terms(), wrong).accepted())
                .isFalse();
    }

    @Property
    void levels_anyRule_agreeWithTheCheckersReading(@ForAll long seed) {
        SmallJobs.Job job = SmallJobs.withRemnants(seed);
        for (Stock row : job.stock()) {
            List<Long> remnants = ModelMaker.levels(row, job.terms()).stream()
                    .map(ModelMaker.Level::leastRemnant)
                    .toList();
            assertThat(CreditCheck.steps(row, job.terms()).keySet()).containsExactlyElementsOf(remnants);
            for (long left = 0; left <= row.lengthSteps(); left++) {
                assertThat(CreditCheck.credit(row, job.terms().remnants(), left))
                        .isEqualTo(job.terms().remnants().credit(row, left));
            }
        }
    }
}
