package io.github.bedjoint.schedule;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.working.Explained;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Working;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Time;

/**
 * A duration guessed at three points, with the mean and the spread that network planning takes from them. Immutable.
 *
 * <p>The spread is the textbook's approximation of a sixth of the range, not the exact one of a beta distribution.
 */
public final class ThreePoint implements Explained {
    private static final Source SOURCE = Source.handbook("network planning with three time estimates");
    private static final Symbol LOW = new Symbol("a", Measure.TIME, "if all goes well");
    private static final Symbol MODE = new Symbol("m", Measure.TIME, "most likely");
    private static final Symbol HIGH = new Symbol("b", Measure.TIME, "if all goes badly");

    static final Formula MEAN = Formula.of(
            "schedule.three-point-mean", "Mean of three points", new Symbol("t", Measure.TIME, "mean time"), "(a + 4 * m + b) / 6", SOURCE, LOW, MODE, HIGH);
    static final Formula SPREAD = Formula.of(
            "schedule.three-point-spread", "Standard deviation of three points", new Symbol("s", Measure.TIME, "standard deviation"), "(b - a) / 6", SOURCE, HIGH, LOW);

    private final double lowS;
    private final double modeS;
    private final double highS;
    private final double meanS;
    private final double spreadS;

    private ThreePoint(double lowS, double modeS, double highS) {
        this.lowS = lowS;
        this.modeS = modeS;
        this.highS = highS;
        this.meanS = (lowS + 4 * modeS + highS) / 6;
        this.spreadS = (highS - lowS) / 6;
    }

    /**
     * Three points.
     *
     * @param low  if all goes well, zero or more
     * @param mode most likely, not below {@code low}
     * @param high if all goes badly, not below {@code mode}
     * @return mean and spread
     * @throws RefusedException if a time cannot be accepted or they are out of order
     */
    public static ThreePoint of(Quantity<Time> low, Quantity<Time> mode, Quantity<Time> high) {
        double a = Door.timeS("low", low, Range.closed(0, 1e8));
        double m = Door.timeS("most likely", mode, Range.closed(a, 1e8));
        return new ThreePoint(a, m, Door.timeS("high", high, Range.closed(m, 1e8)));
    }

    /**
     * The mean.
     *
     * @return the time to plan with
     */
    public Quantity<Time> mean() {
        return Door.time(meanS);
    }

    /**
     * {@link #mean()} as a plain number.
     *
     * @return seconds
     */
    public double meanS() {
        return meanS;
    }

    /**
     * The standard deviation.
     *
     * @return seconds
     */
    public double spreadS() {
        return spreadS;
    }

    @Override
    public Working working() {
        return Working.group("Three points", List.of(Working.of(MEAN, meanS, lowS, modeS, highS), Working.of(SPREAD, spreadS, highS, lowS)));
    }

    /** The mean, its spread and the three estimates. */
    @Override
    public String toString() {
        return Measure.TIME.print(meanS, UnitStyle.METRIC) + " ± " + Measure.TIME.print(spreadS, UnitStyle.METRIC) + ": at least " + Measure.TIME.print(lowS, UnitStyle.METRIC) + ", most likely " + Measure.TIME.print(modeS, UnitStyle.METRIC)
                + ", at most " + Measure.TIME.print(highS, UnitStyle.METRIC);
    }
}
