package io.github.bedjoint.jobfile;

import io.github.bedjoint.job.Job;
import io.github.bedjoint.risk.Input;
import io.github.bedjoint.risk.RiskResult;
import io.github.bedjoint.risk.Simulation;
import io.github.bedjoint.units.Door;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * The ranges of a job file: which inputs vary and how, how often the job is costed, and where the random numbers begin. The same file gives
 * the same result on every machine.
 *
 * @param simulation the job and its ranges
 * @param seed       where the random numbers begin
 * @param jobs       how many simulated jobs
 */
public record JobRanges(Simulation simulation, int seed, int jobs) {
    private static final int MOST_JOBS = 1_000_000;
    private static final int USUAL_JOBS = 10_000;

    private static final Map<String, Supplier<Input>> WHOLE = Map.ofEntries(
            Map.entry("crew-pace", Input::crewPace),
            Map.entry("tandem-efficiency", Input::tandemEfficiency),
            Map.entry("travel", Input::travel),
            Map.entry("sizes", Input::sizes),
            Map.entry("film-prices", Input::filmPrices),
            Map.entry("laminate-prices", Input::laminatePrices),
            Map.entry("ink-price", Input::inkPrice),
            Map.entry("production-rate", Input::productionRate),
            Map.entry("site-rate", Input::siteRate),
            Map.entry("cure", Input::cure),
            Map.entry("wash-wait", Input::washWait),
            Map.entry("outgas", Input::outgas),
            Map.entry("delay", Input::delay),
            Map.entry("rain-chance", Input::rainChance));

    private static final Map<String, Function<String, Input>> NAMED = Map.of(
            "pace", Input::pace,
            "access-factor", Input::accessFactor,
            "area-ratio", Input::areaRatio,
            "size", Input::size,
            "roll-price", Input::rollPrice,
            "consumable-price", Input::consumablePrice,
            "extra-price", Input::extraPrice,
            "extra-quantity", Input::extraQuantity);

    static JobRanges read(Fields f, Job job) {
        int seed = f.has("seed") ? f.count("seed") : 1;
        int jobs = f.with(USUAL_JOBS, "jobs", f::count, (usual, count) -> Door.count("jobs", count, 1, MOST_JOBS));
        Simulation simulation = Simulation.of(job);
        for (JsonNode node : f.nodes("inputs")) {
            Simulation before = simulation;
            simulation = Fields.whole(node, i -> before.with(input(i), SpreadReader.spread(i)));
        }
        return new JobRanges(simulation, seed, jobs);
    }

    private static Input input(Fields f) {
        String name = f.text("input");
        if (WHOLE.containsKey(name)) {
            return WHOLE.get(name).get();
        }
        if (NAMED.containsKey(name)) {
            return NAMED.get(name).apply(f.text("of"));
        }
        List<String> words = Stream.concat(WHOLE.keySet().stream(), NAMED.keySet().stream()).sorted().toList();
        throw f.get("input").refused("must be one of " + String.join(", ", words), "Maybe the spelling differs.");
    }

    /**
     * Costs the job as often as the file says.
     *
     * @return how its figures are spread
     */
    public RiskResult run() {
        return simulation.run(seed, jobs);
    }
}
