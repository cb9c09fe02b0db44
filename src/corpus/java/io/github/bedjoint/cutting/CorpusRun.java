package io.github.bedjoint.cutting;

import io.github.bedjoint.checker.PlanChecker;
import io.github.bedjoint.rolls.RollPlan;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/** Plans jobs twice and reports the second, warm pass in processor time: one line a family, one a job. */
final class CorpusRun {

    /** One measured job. */
    record Row(Instances.Instance job, RollPlan plan, double ms, String fault) {}

    private CorpusRun() {}

    static List<Row> measure(List<Instances.Instance> jobs) {
        List<Row> rows = new ArrayList<>();
        jobs.forEach(job -> job.planner().plan(job.cuts(), job.stock()));
        for (Instances.Instance job : jobs) {
            long start = cpu();
            RollPlan plan = job.planner().plan(job.cuts(), job.stock());
            double ms = (cpu() - start) / 1e6;
            rows.add(new Row(job, plan, ms, fault(job, plan)));
        }
        return rows;
    }

    /** Processor time of this thread, so that other load on the machine does not count. */
    private static long cpu() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    private static String fault(Instances.Instance job, RollPlan plan) {
        if (!plan.isFeasible() || plan.lowerBound() > job.best() || plan.cost() < job.best()) {
            return plan.stop() + " " + plan.lowerBound() + ".." + plan.cost() + " against " + job.best();
        }
        PlanChecker.Verdict verdict = PlanChecker.check(plan);
        return verdict.accepted() ? "" : verdict.reason();
    }

    static String report(List<Row> rows, boolean eachJob) {
        StringBuilder text = new StringBuilder();
        Map<String, List<Row>> families = new TreeMap<>();
        rows.forEach(r -> families.computeIfAbsent(r.job.family(), f -> new ArrayList<>()).add(r));
        families.forEach((family, all) -> {
            if (eachJob) {
                all.forEach(r -> text.append(String.format(
                        Locale.ROOT, "  %-20s best %d cost %d bound %d %s %.1f ms work %d %s%n", r.job.name(),
                        r.job.best(), r.plan.cost(), r.plan.lowerBound(), r.plan.stop(), r.ms, r.plan.work(), r.fault)));
            }
            double[] ms = all.stream().mapToDouble(Row::ms).sorted().toArray();
            text.append(String.format(
                    Locale.ROOT,
                    "%-14s jobs %d, optimal %d, proven %d (100 ms: %d, 1 s: %d), median %.1f ms, worst %.1f ms, faults %d%n",
                    family,
                    all.size(),
                    all.stream().filter(r -> r.plan.cost() == r.job.best()).count(),
                    all.stream().filter(r -> r.plan.isProven()).count(),
                    all.stream().filter(r -> r.plan.isProven() && r.ms <= 100).count(),
                    all.stream().filter(r -> r.plan.isProven() && r.ms <= 1000).count(),
                    ms[ms.length / 2],
                    ms[ms.length - 1],
                    all.stream().filter(r -> !r.fault.isEmpty()).count()));
        });
        return text.toString();
    }
}
