package io.github.bedjoint.risk;

import io.github.bedjoint.job.Job;
import io.github.bedjoint.job.JobFigures;
import io.github.bedjoint.job.JobPlan;
import io.github.bedjoint.labour.Task;
import io.github.bedjoint.risk.Input.Bound;
import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.UnitStyle;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicLongArray;
import org.apache.commons.rng.UniformRandomProvider;

/**
 * Costs a job many times with inputs drawn from ranges; as many threads as the machine has processors unless told otherwise.
 *
 * <p>The same job, ranges, seed and count give the same result on any machine and any number of threads. Panels and rolls are planned once
 * for each distinct combination of the inputs that change them, and kept where no input does. Immutable.
 */
public final class Simulation {
    private static final int MOST = 1_000_000;
    /** Days for which weather is drawn at first: enough for most jobs; the others are looked at once more. */
    private static final int FIRST_DAYS = 24;
    private static final Comparator<Ranged> ORDER =
            Comparator.comparing((Ranged one) -> !one.bound().replans()).thenComparing(one -> one.input().name());

    private final Job job;
    private final List<Ranged> inputs;
    private final int threads;

    private Simulation(Job job, List<Ranged> inputs, int threads) {
        this.job = job;
        this.inputs = inputs;
        this.threads = threads;
    }

    /** An input with its range. */
    private record Ranged(Input input, Spread spread, Bound bound) {}

    /** Panels and rolls that are planned, and the tasks of the job they were planned for. */
    private record Planned(JobPlan plan, List<Task> tasks, String refusal) {}

    /**
     * A simulation in which nothing is a range yet.
     *
     * @param job the job
     * @return the simulation
     */
    public static Simulation of(Job job) {
        return new Simulation(job, List.of(), Runtime.getRuntime().availableProcessors());
    }

    /**
     * The same with one more range, or with another in place of the one the input had.
     *
     * @param input  what varies
     * @param spread what it may be
     * @return a new simulation
     * @throws RefusedException if the job has no such input, or the range is of another kind, another currency or beyond what the input
     *     takes
     */
    public Simulation with(Input input, Spread spread) {
        Bound bound = input.to(job);
        if (spread.measure() != bound.measure()) {
            throw new RefusedException(
                    "range of " + input.name(), spread.toString(), "must be a " + words(bound), "Maybe another input was meant.");
        }
        if (spread.currency() != null && !spread.currency().equals(job.rules().currency())) {
            throw new RefusedException(
                    "range of " + input.name(), spread.toString(), "must be in " + job.rules().currency(), "Maybe convert it first.");
        }
        for (double end : new double[] {spread.shape().low(), spread.shape().high()}) {
            if (!Double.isInfinite(end) && !bound.accepts().contains(end)) {
                Door.in(bound.measure(), end, "range of " + input.name(), bound.accepts());
            }
        }
        List<Ranged> more = new ArrayList<>(inputs);
        more.removeIf(one -> one.input().equals(input));
        more.add(new Ranged(input, spread, bound));
        more.sort(ORDER);
        return new Simulation(job, List.copyOf(more), threads);
    }

    private static String words(Bound bound) {
        String shown = bound.measure().print(1, UnitStyle.METRIC);
        return bound.measure() + (shown.equals("1") ? " (a plain number)" : " (like " + shown + ")");
    }

    /**
     * The same on another number of threads, which changes the time it takes and nothing else.
     *
     * @param count 1 to 256
     * @return a new simulation
     * @throws RefusedException if it is out of range
     */
    public Simulation withThreads(int count) {
        return new Simulation(job, inputs, Door.count("threads", count, 1, 256));
    }

    /**
     * The inputs that vary.
     *
     * @return those that change panels and rolls first, then the others, by name
     */
    public List<Input> inputs() {
        return inputs.stream().map(Ranged::input).toList();
    }

    /**
     * Costs the job many times.
     *
     * @param seed  where the random numbers begin; the same seed gives the same result
     * @param count how many simulated jobs, 1 to 1,000,000
     * @return how the figures are spread
     * @throws RefusedException if the count is out of range
     */
    public RiskResult run(long seed, int count) {
        Door.count("simulated jobs", count, 1, MOST);
        Workers workers = new Workers(threads);
        AtomicLongArray redrawn = new AtomicLongArray(inputs.size());
        double[][] draws = draws(workers, seed, count, redrawn);
        int[] planOf = new int[count];
        List<Planned> plans = plans(workers, draws, planOf);

        double[][] figures = new double[Outcome.values().length][count];
        String[] reasons = new String[count];
        Streams days = Streams.of(seed, "days of rain");
        workers.forEach(count, i -> {
            Planned planned = plans.get(planOf[i]);
            String reason = planned.refusal();
            try {
                JobFigures found = reason.isEmpty() ? figures(planned, draws, i, days) : null;
                reason = found == null ? reason : String.join("; ", found.reasons());
                for (Outcome outcome : Outcome.values()) {
                    figures[outcome.ordinal()][i] = found == null || !reason.isEmpty() ? Double.NaN : outcome.of(found);
                }
            } catch (RefusedException e) {
                reason = e.getMessage();
                for (double[] row : figures) {
                    row[i] = Double.NaN;
                }
            }
            reasons[i] = reason;
        });

        Bins[] bins = new Bins[inputs.size()];
        workers.forEach(bins.length, k -> bins[k] = Bins.of(draws[k]));
        boolean replanned = inputs.stream().anyMatch(one -> one.bound().replans());
        return RiskResult.of(job, inputs(), seed, figures, List.of(bins), plans.size(), replanned, redrawn, reasons);
    }

    private double[][] draws(Workers workers, long seed, int count, AtomicLongArray redrawn) {
        double[][] draws = new double[inputs.size()][count];
        List<Streams> streams = inputs.stream().map(one -> Streams.of(seed, one.input().name())).toList();
        workers.forEach(count, i -> {
            for (int k = 0; k < draws.length; k++) {
                Ranged one = inputs.get(k);
                Shape.Redraws redraws = new Shape.Redraws();
                draws[k][i] = one.bound().snap(one.spread().draw(streams.get(k).of(i), redraws));
                if (redraws.count > 0) {
                    redrawn.addAndGet(k, redraws.count);
                }
            }
        });
        return draws;
    }

    /** Plans each distinct combination of the inputs that change panels or rolls; they stand first. */
    private List<Planned> plans(Workers workers, double[][] draws, int[] planOf) {
        int planning = (int) inputs.stream().filter(one -> one.bound().replans()).count();
        Map<List<Double>, Integer> numbers = new HashMap<>();
        List<List<Double>> combinations = new ArrayList<>();
        for (int i = 0; i < planOf.length; i++) {
            List<Double> values = new ArrayList<>(planning);
            for (int k = 0; k < planning; k++) {
                values.add(draws[k][i]);
            }
            planOf[i] = numbers.computeIfAbsent(values, key -> {
                combinations.add(key);
                return combinations.size() - 1;
            });
        }
        Planned[] plans = new Planned[combinations.size()];
        workers.forEach(plans.length, p -> plans[p] = planned(combinations.get(p)));
        return List.of(plans);
    }

    private Planned planned(List<Double> values) {
        Job changed = job;
        try {
            for (int k = 0; k < values.size(); k++) {
                Input.Replan replan = inputs.get(k).bound().replan();
                changed = replan == null ? changed : replan.make(changed, values.get(k));
            }
        } catch (RefusedException e) {
            return new Planned(JobPlan.of(job), List.of(), e.getMessage());
        }
        JobPlan plan = JobPlan.of(changed);
        return new Planned(plan, changed.labour().tasks().tasks(), String.join("; ", plan.reasons()));
    }

    private JobFigures figures(Planned planned, double[][] draws, int i, Streams rain) {
        Draft draft = new Draft(planned.plan().job(), planned.tasks());
        for (int k = 0; k < draws.length; k++) {
            Input.Change change = inputs.get(k).bound().change();
            if (change != null) {
                change.make(draft, draws[k][i]);
            }
        }
        JobPlan plan = draft.plan(planned.plan());
        return draft.rainChance() > 0 ? inRain(plan, draft, rain.of(i)) : plan.figures(draft.job());
    }

    /** Days are drawn until the hand-over is known; whoever is done before they end needs no more of them. */
    private JobFigures inRain(JobPlan plan, Draft draft, UniformRandomProvider random) {
        RainyDays weather = new RainyDays(job.dates().orElseThrow().start().toLocalDate(), draft.rainChance(), random);
        int days = FIRST_DAYS;
        while (true) {
            List<LocalDate> rainy = weather.in(days);
            JobFigures found = plan.figures(draft.job(dates -> dates.withRain(dates.rain().on(rainy))));
            ZonedDateTime handOver = found.handOver();
            if (handOver == null || !weather.isUnknown(handOver.toLocalDate())) {
                return found;
            }
            days *= 2;
        }
    }
}
