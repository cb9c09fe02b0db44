package io.github.bedjoint.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.bedjoint.checker.PlanChecker;
import io.github.bedjoint.rolls.RollPlan;
import io.github.bedjoint.rolls.Stock;
import io.github.bedjoint.rolls.Stop;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;

/** Panels side by side: published strips and invented shop jobs at little and at much work; run by the profile {@code corpus} only. */
class SideBySideCorpusTest {

    private static final StringBuilder REPORT = new StringBuilder();

    /** One measured job: what was reached, what is shown to be least, the best known value. */
    private record Row(String family, String name, long value, long bound, long best, double ms) {

        double gap() {
            return 100.0 * (value - best) / best;
        }
    }

    @AfterAll
    static void write() throws IOException {
        Files.writeString(Path.of("target", "side-by-side-corpus.txt"), REPORT);
    }

    private static long cpu() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    /** The length that panels need on one roll that is long enough, and a shorter roll that the planner shows to be too short. */
    private static Row strip(Instances.Instance job, long work) {
        RollPlanner planner = job.planner().withWorkLimit(work);
        long start = cpu();
        RollPlan plan = planner.plan(job.cuts(), List.of(roll(job, Instances.OPEN)));
        double ms = (cpu() - start) / 1e6;
        assertThat(PlanChecker.check(plan)).matches(PlanChecker.Verdict::accepted);
        long used = plan.rolls().get(0).usedSteps();
        long bound = bound(job);
        assertThat(bound).isLessThanOrEqualTo(used);
        long best = job.best() == Instances.UNKNOWN ? bound : job.best();
        assertThat(used).as(job.name()).isGreaterThanOrEqualTo(job.least());
        if (job.best() != Instances.UNKNOWN) {
            assertThat(bound).as(job.name()).isLessThanOrEqualTo(job.best());
        }
        return new Row(job.family(), job.name(), used, bound, best, ms);
    }

    private static Stock roll(Instances.Instance job, long length) {
        return new Stock("roll", job.stock().get(0).widthSteps(), length, 1, 1, "");
    }

    /** One more than the longest roll that is shown to be too short; each claim goes through the checker. */
    private static long bound(Instances.Instance job) {
        long low = 0;
        long high = Instances.OPEN;
        while (low + 1 < high) {
            long middle = (low + high) / 2;
            RollPlan plan = job.planner().withWorkLimit(1_000_000).plan(job.cuts(), List.of(roll(job, middle)));
            if (plan.stop() == Stop.INFEASIBLE) {
                assertThat(PlanChecker.check(plan)).matches(PlanChecker.Verdict::accepted);
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    private static Row shop(Instances.Instance job, long work) {
        RollPlanner planner = job.planner().withWorkLimit(work);
        planner.plan(job.cuts(), job.stock());
        long start = cpu();
        RollPlan plan = planner.plan(job.cuts(), job.stock());
        double ms = (cpu() - start) / 1e6;
        assertThat(PlanChecker.check(plan)).matches(PlanChecker.Verdict::accepted);
        assertThat(plan.lowerBound()).isLessThanOrEqualTo(job.best());
        assertThat(plan.cost()).isGreaterThanOrEqualTo(job.best());
        return new Row(job.family(), job.name(), plan.cost(), plan.lowerBound(), job.best(), ms);
    }

    private static List<Row> report(String title, List<Row> rows) {
        REPORT.append(title).append('\n');
        Map<String, List<Row>> families = new TreeMap<>();
        rows.forEach(row -> families.computeIfAbsent(row.family, f -> new ArrayList<>()).add(row));
        families.forEach((family, all) -> {
            all.forEach(row -> REPORT.append(String.format(
                    Locale.ROOT, "  %-10s known %d found %d bound %d gap %.2f %% %.0f ms%n", row.name, row.best, row.value, row.bound, row.gap(), row.ms)));
            REPORT.append(String.format(
                    Locale.ROOT, "%-16s jobs %d, known value reached %d, proven %d, mean gap %.3f %%, mean %.0f ms, worst %.0f ms%n", family, all.size(),
                    all.stream().filter(row -> row.value == row.best).count(),
                    all.stream().filter(row -> row.value == row.bound).count(),
                    mean(all), all.stream().mapToDouble(Row::ms).average().orElseThrow(), all.stream().mapToDouble(Row::ms).max().orElseThrow()));
        });
        return rows;
    }

    private static double mean(List<Row> rows) {
        return rows.stream().mapToDouble(Row::gap).average().orElseThrow();
    }

    private static double stripGap(long work) {
        List<Row> rows = report(
                "strips, work " + work, Instances.of("strip2d").stream().map(job -> strip(job, work)).toList());
        return mean(rows.stream().filter(row -> List.of("hopper_turton_c", "burke_n", "beng").contains(row.family)).toList());
    }

    @Test
    void strips_littleAndMuchWork_areCloseToTheKnownLength() {
        assertThat(stripGap(25_000_000)).isLessThanOrEqualTo(1.0);
        assertThat(stripGap(600_000_000)).isLessThanOrEqualTo(0.5);
    }

    @Test
    void shopJobs_littleWork_areWithinTwoPercent() {
        List<Instances.Instance> jobs = Instances.of("shop2d");
        assertThat(mean(report("shop jobs, work 25000000", jobs.stream().map(job -> shop(job, 25_000_000)).toList()))).isLessThanOrEqualTo(2.0);
        report("shop jobs, work 600000000", jobs.stream().map(job -> shop(job, 600_000_000)).toList());
    }
}
