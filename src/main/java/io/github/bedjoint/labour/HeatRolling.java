package io.github.bedjoint.labour;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.Steps;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Speed;

/**
 * How fast a heat source goes over a panel: speed, heated width, overlap of its passes, number of passes, and along what the
 * speed was measured.
 *
 * <p>There is no default speed: measure it at a test patch. Immutable.
 */
public final class HeatRolling {
    /** Along what the speed of the heat source was measured; otherwise texture would be counted twice, or not at all. */
    public enum Speeds {
        /** On the plane of the wall: the texture slowed the hand already. */
        PROJECTED,
        /** Along the texture: the path is longer than the panel by the area ratio. */
        DEVELOPED
    }

    static final Formula STRIPS = Formula.of(
            "labour.heat-strips",
            "Strips of the heat source on a panel",
            Symbol.number("m", "strips"),
            "ceil(w_n / (b - o))",
            Source.geometry("strips that overlap, side by side over a width"),
            new Symbol("w_n", Measure.STEPS, "panel width"),
            new Symbol("b", Measure.STEPS, "heated width"),
            new Symbol("o", Measure.STEPS, "overlap of passes"));

    private final double speedMps;
    private final Speeds along;
    private final long heatedSteps;
    private final long overlapSteps;
    private final int passes;

    private HeatRolling(double speedMps, Speeds along, long heatedSteps, long overlapSteps, int passes) {
        this.speedMps = speedMps;
        this.along = along;
        this.heatedSteps = heatedSteps;
        this.overlapSteps = overlapSteps;
        this.passes = passes;
    }

    /**
     * A heat source that goes over a panel once, without overlap of its strips.
     *
     * @param speed       more than 0 and at most 10 m/s
     * @param along       along what the speed was measured
     * @param heatedWidth more than 0 and at most 5 m; fractions of 12.5 micrometres are cut off
     * @return the heat source
     * @throws RefusedException if a value cannot be accepted
     */
    public static HeatRolling of(Quantity<Speed> speed, Speeds along, Quantity<Length> heatedWidth) {
        double metresPerSecond = Door.in(Measure.SPEED, "speed of the heat source", speed, Range.above(0, 10));
        double width = Door.lengthM("heated width", heatedWidth, Range.closed(0.001, 5));
        return new HeatRolling(metresPerSecond, along, Steps.down(width), 0, 1);
    }

    /**
     * The same with strips that overlap.
     *
     * @param overlap zero or more, less than the heated width
     * @return a new heat source
     * @throws RefusedException if it is not less than the heated width
     */
    public HeatRolling withPassOverlap(Quantity<Length> overlap) {
        double width = Door.lengthM("overlap of passes", overlap, new Range(0, false, Steps.toM(heatedSteps), true));
        return new HeatRolling(speedMps, along, heatedSteps, Math.min(Steps.up(width), heatedSteps - 1), passes);
    }

    /**
     * The same going over each strip several times.
     *
     * @param times 1 to 20
     * @return a new heat source
     * @throws RefusedException if it is not 1 to 20
     */
    public HeatRolling withPasses(int times) {
        return new HeatRolling(speedMps, along, heatedSteps, overlapSteps, Door.count("passes", times, 1, 20));
    }

    /**
     * The time it takes on a panel.
     *
     * @param width     width of the panel with its overlap, more than 0
     * @param length    length of the panel along which the heat source moves, more than 0
     * @param areaRatio developed area over projected area, 1 to 20
     * @return time and pace
     * @throws RefusedException if a value cannot be accepted
     */
    public HeatRollTime over(Quantity<Length> width, Quantity<Length> length, double areaRatio) {
        double lengthM = Door.lengthM("panel length", length, Range.POSITIVE);
        long widthSteps = Steps.up(Door.lengthM("panel width", width, Range.POSITIVE));
        return new HeatRollTime(this, widthSteps, lengthM, Door.number("area ratio", areaRatio, Range.closed(1, 20)));
    }

    double speedMps() {
        return speedMps;
    }

    Speeds along() {
        return along;
    }

    long heatedSteps() {
        return heatedSteps;
    }

    long overlapSteps() {
        return overlapSteps;
    }

    int passes() {
        return passes;
    }

    /** How many strips cover a width. */
    long strips(long widthSteps) {
        return -Math.floorDiv(-widthSteps, heatedSteps - overlapSteps);
    }
}
