package io.github.bedjoint.job;

import io.github.bedjoint.jobfile.JobFile;
import io.github.bedjoint.working.Working;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
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

/** What a shipped job costs in time: read from its text, costed from the parsed job, and explained. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class JobBenchmark {

    /** The file's name in docs/jobs. */
    @Param({"brick-front", "reading-room", "block-gable"})
    public String name;

    private String json;
    private Job job;
    private JobCost cost;

    /** Reads the file once. */
    @Setup
    public void read() throws IOException {
        json = Files.readString(Path.of("docs", "jobs", name + ".json"));
        job = JobFile.parse(json);
        cost = JobCost.of(job);
    }

    /** From the parsed job to the total. */
    @Benchmark
    public JobCost cost() {
        return JobCost.of(job);
    }

    /** From the text of the job file to the job. */
    @Benchmark
    public Job parse() {
        return JobFile.parse(json);
    }

    /** The working of every figure, built when asked. */
    @Benchmark
    public Working working() {
        return cost.working();
    }
}
