package io.github.bedjoint.job;

import io.github.bedjoint.film.Film;
import io.github.bedjoint.jobfile.JobFile;
import io.github.bedjoint.labour.Allowance;
import io.github.bedjoint.labour.Rating;
import io.github.bedjoint.labour.StandardTime;
import io.github.bedjoint.texture.JointProfile;
import io.github.bedjoint.texture.MasonrySurface;
import io.github.bedjoint.units.Read;
import io.github.bedjoint.units.ShopUnits;
import io.github.bedjoint.waste.FilmYield;
import io.github.bedjoint.waste.RollCoverage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Time;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import tech.units.indriya.unit.Units;

/** Single figures and a whole job, quantities in: beside hand-written arithmetic and beside Indriya's quantities all the way. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class FigureBenchmark {
    private final Quantity<Area> visible = Read.area("17.80 m2");
    private final Quantity<Area> opened = Read.area("27.44 m2");
    private final Film film = Film.of("film", Read.length("54 in"));
    private final Quantity<Length> roll = Read.length("25 m");
    private final Quantity<Length> overlap = Read.length("20 mm");
    private final Quantity<Length> height = Read.length("3 m");
    private final Quantity<Length> cut = Read.length("3.05 m");
    private final Quantity<Length> length = Read.length("215 mm");
    private final Quantity<Length> unitHeight = Read.length("65 mm");
    private final Quantity<Length> joint = Read.length("10 mm");
    private final Quantity<Length> depth = Read.length("5 mm");
    private final JointProfile raked = JointProfile.raked(depth);
    private final Quantity<Time> observed = Read.time("25 min");
    private final Rating rating = Rating.percent(95);
    private final Allowance allowance = Allowance.onJobTime(0.15);
    private final Quantity<Length> wall = Read.length("7.2 m");
    private double visibleM2 = 17.80;
    private double openedM2 = 27.44;
    private double rollM = 25;
    private double cutM = 3.05;
    private double l = 0.215;
    private double h = 0.065;
    private double j = 0.010;
    private double d = 0.005;
    private double observedS = 1500;
    private double ratio = 1.1659259259259259;
    private double wallM = 7.2;
    private double heightM = 3;
    private Job job;
    private JobPlan plan;

    /** Reads the job once, plans its panels and rolls, and makes sure that all ways come to the same price. */
    @Setup
    public void read() throws IOException {
        job = JobFile.read(Path.of("docs", "jobs", "brick-front.json"));
        plan = JobPlan.of(job);
        double total = JobCost.of(job).total().getAmount().doubleValue();
        for (double sum : new double[] {jobPlain(), jobQuantities()}) {
            if (Math.abs(sum - total) > 0.05) {
                throw new IllegalStateException(sum + " is not " + total);
            }
        }
    }

    /** Visible over opened. */
    @Benchmark
    public double yieldPlain() {
        return visibleM2 / openedM2;
    }

    /** Visible over opened. */
    @Benchmark
    public double yieldBedjoint() {
        return FilmYield.of(visible, opened).share();
    }

    /** Visible over opened. */
    @Benchmark
    public double yieldQuantities() {
        return visible.divide(opened).asType(Dimensionless.class).to(ShopUnits.ONE).getValue().doubleValue();
    }

    /** Drops a roll. */
    @Benchmark
    public double coveragePlain() {
        return Math.floor(rollM / cutM);
    }

    /** Drops a roll. */
    @Benchmark
    public long coverageBedjoint() {
        return RollCoverage.of(film, roll, overlap, height, cut).dropsPerRoll();
    }

    /** Drops a roll. */
    @Benchmark
    public double coverageQuantities() {
        return Math.floor(roll.divide(cut).asType(Dimensionless.class).to(ShopUnits.ONE).getValue().doubleValue());
    }

    /** Area ratio of raked brickwork. */
    @Benchmark
    public double texturePlain() {
        return 1 + 2 * (l + h) * d / ((l + j) * (h + j));
    }

    /** Area ratio of raked brickwork. */
    @Benchmark
    public double textureBedjoint() {
        return MasonrySurface.of(length, unitHeight, joint, joint, raked).areaRatio();
    }

    /** Area ratio of raked brickwork. */
    @Benchmark
    public double textureQuantities() {
        return 1 + length.add(unitHeight).multiply(2).multiply(depth).divide(length.add(joint).multiply(unitHeight.add(joint)))
                .asType(Dimensionless.class).to(ShopUnits.ONE).getValue().doubleValue();
    }

    /** Observed time, rated, with its allowance. */
    @Benchmark
    public double standardTimePlain() {
        return observedS * 0.95 * (1 + 0.15);
    }

    /** Observed time, rated, with its allowance. */
    @Benchmark
    public Quantity<Time> standardTimeBedjoint() {
        return StandardTime.of(observed, rating, allowance).standard();
    }

    /** Observed time, rated, with its allowance. */
    @Benchmark
    public Quantity<Time> standardTimeQuantities() {
        return observed.multiply(0.95).multiply(1 + 0.15).to(Units.SECOND);
    }

    /** All sums of a job but its dates. */
    @Benchmark
    public double jobPlain() {
        return BrickFrontSums.plain(wallM, heightM, ratio);
    }

    /** All sums of a job but its dates. */
    @Benchmark
    public double jobQuantities() {
        return BrickFrontSums.quantities(wall, height, ratio);
    }

    /** Hours, dates, lines and price, panels and rolls given. */
    @Benchmark
    public JobFigures jobPlanned() {
        return plan.figures(job);
    }

    /** The whole job, panels and rolls optimised and proven. */
    @Benchmark
    public JobCost jobCosted() {
        return JobCost.of(job);
    }
}
