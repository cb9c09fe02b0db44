package io.github.bedjoint.risk;

import io.github.bedjoint.job.Job;
import io.github.bedjoint.job.JobBuilder;
import io.github.bedjoint.job.JobDates;
import io.github.bedjoint.job.JobPlan;
import io.github.bedjoint.job.Materials;
import io.github.bedjoint.labour.Labour;
import io.github.bedjoint.labour.Machine;
import io.github.bedjoint.labour.Pace;
import io.github.bedjoint.labour.Task;
import io.github.bedjoint.labour.TaskTable;
import io.github.bedjoint.price.CostLine;
import io.github.bedjoint.units.PriceRate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;

/** A simulated job while its inputs are put in: what leaves panels and rolls as they are. Used by one thread. */
final class Draft {
    private final Job base;
    private final List<Task> tasks;
    private final double[] paces;
    private final Map<String, Double> ratios = new TreeMap<>();
    private final Map<String, Double> access = new TreeMap<>();
    private double crewPace = 1;
    private double rainChance;
    private @Nullable Labour labour;
    private @Nullable Materials materials;
    private @Nullable JobDates dates;
    private @Nullable PriceRate<Time> shopRate;
    private @Nullable PriceRate<Time> siteRate;
    private @Nullable List<CostLine> extras;

    Draft(Job base, List<Task> tasks) {
        this.base = base;
        this.tasks = tasks;
        this.paces = new double[tasks.size()];
        Arrays.fill(paces, Double.NaN);
    }

    void pace(int task, double inner) {
        paces[task] = inner;
    }

    void crewPace(double factor) {
        crewPace = factor;
    }

    void rainChance(double chance) {
        rainChance = chance;
    }

    double rainChance() {
        return rainChance;
    }

    void areaRatio(String wall, double ratio) {
        ratios.put(wall, ratio);
    }

    void labour(UnaryOperator<Labour> change) {
        labour = change.apply(labour == null ? base.labour() : labour);
    }

    void materials(UnaryOperator<Materials> change) {
        materials = change.apply(materials == null ? base.materials() : materials);
    }

    void dates(UnaryOperator<JobDates> change) {
        dates = change.apply(dates == null ? base.dates().orElseThrow() : dates);
    }

    void rates(UnaryOperator<PriceRate<Time>> shop, UnaryOperator<PriceRate<Time>> site) {
        shopRate = shop.apply(shopRate == null ? base.productionRate().orElseThrow() : shopRate);
        siteRate = site.apply(siteRate == null ? base.siteRate().orElseThrow() : siteRate);
    }

    void extra(String title, UnaryOperator<CostLine> change) {
        List<CostLine> other = new ArrayList<>(extras == null ? base.extras() : extras);
        other.replaceAll(line -> line.title().equals(title) ? change.apply(line) : line);
        extras = other;
    }

    void access(String wall, double factor) {
        access.put(wall, factor);
    }

    /** The plan with other area ratios, where some were put in. */
    JobPlan plan(JobPlan planned) {
        JobPlan plan = planned;
        for (Map.Entry<String, Double> entry : ratios.entrySet()) {
            plan = plan.withAreaRatio(entry.getKey(), entry.getValue());
        }
        return plan;
    }

    /** The job with everything put in, and dates changed once more. */
    Job job(UnaryOperator<JobDates> change) {
        return build(change.apply(dates == null ? base.dates().orElseThrow() : dates));
    }

    /** The job with everything put in. */
    Job job() {
        return build(dates);
    }

    private Job build(@Nullable JobDates dated) {
        JobBuilder job = base.toBuilder();
        TaskTable table = tasks();
        if (table != null) {
            labour(calculator -> calculator.withTasks(table));
        }
        if (labour != null) {
            job.labour(labour);
        }
        if (materials != null) {
            job.materials(materials);
        }
        if (dated != null) {
            job.dates(dated);
        }
        if (shopRate != null && siteRate != null) {
            job.labourRates(shopRate, siteRate);
        }
        if (extras != null) {
            job.extras(extras);
        }
        access.forEach(job::accessFactor);
        return job.build();
    }

    private @Nullable TaskTable tasks() {
        List<Task> other = new ArrayList<>(tasks.size());
        boolean same = true;
        for (int i = 0; i < paces.length; i++) {
            Task task = tasks.get(i);
            double pace = Double.isNaN(paces[i]) ? task.pace().inner() : paces[i];
            pace = task.machine() == Machine.NONE ? pace * crewPace : pace;
            if (pace != task.pace().inner()) {
                task = task.withPace(new Pace(task.pace().measure(), pace), task.source());
                same = false;
            }
            other.add(task);
        }
        return same ? null : TaskTable.of(other);
    }
}
