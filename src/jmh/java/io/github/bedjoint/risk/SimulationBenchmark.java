package io.github.bedjoint.risk;

import io.github.bedjoint.job.Job;
import io.github.bedjoint.jobfile.JobFile;
import io.github.bedjoint.units.Read;
import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.joda.money.Money;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** 100,000 simulated jobs with twenty ranges, sizes among them, hand-over included; the aim is two seconds on two cores. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 3)
@Measurement(iterations = 5)
@Fork(1)
public class SimulationBenchmark {

    @Param({"1", "2"})
    private int threads;

    private Simulation twenty;
    private Simulation without;

    /** Reads the demo job and gives it its ranges. */
    @Setup
    public void ranges() throws IOException {
        ranges(threads);
    }

    void ranges(int count) throws IOException {
        Job job = JobFile.read(Path.of("docs/jobs/brick-front.json"));
        String wall = job.survey().walls().get(0).name();
        without = Simulation.of(job)
                .with(Input.pace("heat-roll"), Spread.triangular(Read.timePerArea("8 min/m2"), Read.timePerArea("10 min/m2"), Read.timePerArea("15 min/m2")))
                .with(Input.pace("hang"), Spread.pert(Read.time("9 min"), Read.time("12 min"), Read.time("20 min")))
                .with(Input.pace("wash"), Spread.pert(Read.timePerArea("1 min/m2"), Read.timePerArea("2 min/m2"), Read.timePerArea("4 min/m2")))
                .with(Input.pace("wipe"), Spread.normal(Read.timePerArea("1 min/m2"), Read.timePerArea("0.3 min/m2"), Read.timePerArea("0.5 min/m2")))
                .with(Input.pace("seam"), Spread.triangular(Read.timePerLength("1 min/m"), Read.timePerLength("1.5 min/m"), Read.timePerLength("2.5 min/m")))
                .with(Input.pace("edge"), Spread.triangular(Read.timePerLength("2 min/m"), Read.timePerLength("3 min/m"), Read.timePerLength("5 min/m")))
                .with(Input.pace("opening"), Spread.triangular(Read.time("10 min"), Read.time("15 min"), Read.time("30 min")))
                .with(Input.pace("print"), Spread.pert(Read.timePerLength("4 min/m"), Read.timePerLength("5 min/m"), Read.timePerLength("8 min/m")))
                .with(Input.crewPace(), Spread.pert(0.85, 1, 1.4))
                .with(Input.tandemEfficiency(), Spread.triangular(0.8, 0.9, 0.95))
                .with(Input.areaRatio(wall), Spread.triangular(1.12, 1.166, 1.22))
                .with(Input.accessFactor(wall), Spread.triangular(1, 1, 1.2))
                .with(Input.filmPrices(), Spread.triangular(0.95, 1, 1.1))
                .with(Input.inkPrice(), Spread.list(Money.parse("EUR 100"), Money.parse("EUR 110"), Money.parse("EUR 130")))
                .with(Input.siteRate(), Spread.triangular(Money.parse("EUR 42"), Money.parse("EUR 44"), Money.parse("EUR 50")))
                .with(Input.travel(), Spread.triangular(Read.time("20 min"), Read.time("30 min"), Read.time("60 min")))
                .with(Input.cure(), Spread.triangular(Read.time("48 h"), Read.time("72 h"), Read.time("96 h")))
                .with(Input.outgas(), Spread.triangular(Read.time("24 h"), Read.time("24 h"), Read.time("72 h")))
                .with(Input.rainChance(), Spread.triangular(0.1, 0.2, 0.4))
                .withThreads(count);
        twenty = without.with(Input.sizes(), Spread.triangular(0.99, 1, 1.02));
    }

    /** Twenty ranges; panels and rolls planned for each distinct size. */
    @Benchmark
    public RiskResult twentyInputsWithSizes() {
        return twenty.run(2027, 100_000);
    }

    /** Nineteen of them, which leave panels and rolls as they are. */
    @Benchmark
    public RiskResult nineteenInputs() {
        return without.run(2027, 100_000);
    }
}
