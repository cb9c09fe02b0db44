package io.github.bedjoint.units;

import java.util.concurrent.TimeUnit;
import javax.measure.MetricPrefix;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/** What a length costs at the door: by the table, by a unit object the table has not met, and by a unit of the caller's own. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class DoorBenchmark {

    private final Quantity<Length> ours = Quantities.getQuantity(54, ShopUnits.INCH);
    private final Quantity<Length> equalUnit = Quantities.getQuantity(1372, MetricPrefix.MILLI(Units.METRE));
    private final Quantity<Length> ownUnit = Quantities.getQuantity(3, Units.METRE.multiply(1.8288));

    /** A unit of the library. */
    @Benchmark
    public double ourUnit() {
        return Door.lengthM("length", ours, Range.POSITIVE);
    }

    /** A unit equal to one of the library's, made by the caller. */
    @Benchmark
    public double equalUnit() {
        return Door.lengthM("length", equalUnit, Range.POSITIVE);
    }

    /** A unit that only the caller knows. */
    @Benchmark
    public double ownUnit() {
        return Door.lengthM("length", ownUnit, Range.POSITIVE);
    }

    /** From text. */
    @Benchmark
    public Quantity<Length> read() {
        return Read.length("12' 6 1/2\"");
    }
}
