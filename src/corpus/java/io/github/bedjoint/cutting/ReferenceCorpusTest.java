package io.github.bedjoint.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.bedjoint.checker.PlanChecker;
import io.github.bedjoint.rolls.RollPlan;
import io.github.bedjoint.rolls.Stock;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;

/** The planner and a general solver on the same jobs, one after the other, one thread each; run by the profile {@code corpus} only. */
class ReferenceCorpusTest {

    private static final double SECONDS = 1;

    /** As many jobs of a published family, so that the run takes minutes. */
    private static final int FIRST = 4;

    private static final StringBuilder REPORT = new StringBuilder();

    private record Pair(long own, double ownMs, boolean ownProven, CpSat.Answer other) {}

    @AfterAll
    static void write() throws IOException {
        Files.writeString(Path.of("target", "reference-corpus.txt"), REPORT);
    }

    private static void report(String family, List<Pair> pairs) {
        double ratio = Math.exp(pairs.stream().mapToDouble(p -> Math.log(p.other.ms() / Math.max(0.01, p.ownMs))).average().orElseThrow());
        REPORT.append(String.format(
                Locale.ROOT,
                "%-16s jobs %d; proven: planner %d, CP-SAT %d; better value: planner %d, CP-SAT %d; without a value: CP-SAT %d; time of CP-SAT / planner %.1f%n",
                family, pairs.size(),
                pairs.stream().filter(Pair::ownProven).count(),
                pairs.stream().filter(p -> p.other.proven()).count(),
                pairs.stream().filter(p -> p.other.value() != Instances.UNKNOWN && p.own < p.other.value()).count(),
                pairs.stream().filter(p -> p.other.value() != Instances.UNKNOWN && p.other.value() < p.own).count(),
                pairs.stream().filter(p -> p.other.value() == Instances.UNKNOWN).count(),
                ratio));
    }

    private static Pair pair(Instances.Instance job, boolean flat) {
        RollPlanner planner = job.planner().withWorkLimit(250_000_000);
        planner.plan(job.cuts(), job.stock());
        long start = System.nanoTime();
        RollPlan plan = planner.plan(job.cuts(), job.stock());
        double ms = (System.nanoTime() - start) / 1e6;
        assertThat(PlanChecker.check(plan)).matches(PlanChecker.Verdict::accepted);
        CpSat.Answer other = flat ? new CpSat().flat(job, plan, SECONDS) : new CpSat().line(job, plan, SECONDS);
        // Neither bound may cross the other's value.
        assertThat(other.value() == Instances.UNKNOWN || plan.lowerBound() <= other.value()).isTrue();
        return new Pair(plan.cost(), ms, plan.isProven(), other);
    }

    private static Map<String, List<Instances.Instance>> families(String kind) {
        Map<String, List<Instances.Instance>> families = new HashMap<>();
        Instances.of(kind).forEach(job -> families.computeIfAbsent(job.family(), f -> new ArrayList<>()).add(job));
        return families;
    }

    @Test
    void line_publishedAndShopJobs_areComparedWithTheSolver() {
        report("shop1d", Instances.of("shop1d").stream().map(job -> pair(job, false)).toList());
        families("bpp1d").forEach((family, jobs) -> report(family, jobs.stream().limit(FIRST).map(job -> pair(job, false)).toList()));
    }

    @Test
    void flat_shopJobs_areComparedWithTheSolver() {
        report("shop2d", Instances.of("shop2d").stream().map(job -> pair(job, true)).toList());
    }

    @Test
    void strip_publishedJobs_areComparedWithTheSolver() {
        families("strip2d").forEach((family, jobs) -> {
            List<Pair> pairs = new ArrayList<>();
            for (Instances.Instance job : jobs) {
                List<Stock> roll = List.of(new Stock("roll", job.stock().get(0).widthSteps(), Instances.OPEN, 1, 1, ""));
                RollPlanner planner = job.planner().withWorkLimit(250_000_000);
                planner.plan(job.cuts(), roll);
                long start = System.nanoTime();
                long used = planner.plan(job.cuts(), roll).rolls().get(0).usedSteps();
                double ms = (System.nanoTime() - start) / 1e6;
                long area = job.cuts().stream().mapToLong(c -> c.widthSteps() * c.lengthSteps() * c.quantity()).sum();
                long width = job.stock().get(0).widthSteps();
                CpSat.Answer other = new CpSat().strip(job, 2 * used, SECONDS);
                assertThat(other.bound()).isLessThanOrEqualTo(used);
                pairs.add(new Pair(used, ms, used == (area + width - 1) / width, other));
            }
            report(family, pairs);
        });
    }
}
