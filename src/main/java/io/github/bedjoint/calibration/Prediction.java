package io.github.bedjoint.calibration;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Print;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.working.Explained;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Working;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Time;

/** What the fitted paces foretell for a new job, and between which hours it will lie. Immutable. */
public final class Prediction implements Explained {
    private static final Source SOURCE = Source.handbook("linear regression: prediction interval of a new observation");
    private static final Symbol MEAN = new Symbol("t", Measure.TIME, "hours foretold");
    private static final Symbol QUANTILE = Symbol.number("q", "quantile of Student's t for the level");
    private static final Symbol SPREAD = new Symbol("u", Measure.TIME, "standard error of a new job");

    static final Formula HOURS = Formula.of(
            "calibration.hours-foretold", "Hours foretold", MEAN, "sum(t_i)", SOURCE, new Symbol("t_i", Measure.TIME, "amount times pace of each driver"));
    static final Formula ERROR = Formula.of(
            "calibration.prediction-error",
            "Standard error of a new job",
            SPREAD,
            "s * sqrt(1 / w + h)",
            SOURCE,
            new Symbol("s", Measure.TIME, "residual standard deviation"),
            Symbol.number("w", "weight of the new job"),
            Symbol.number("h", "leverage: how far the new job lies from those of the log"));
    static final Formula LOW = Formula.of(
            "calibration.prediction-low", "Lower end", new Symbol("t_low", Measure.TIME, "lower end"), "t - q * u", SOURCE, MEAN, QUANTILE, SPREAD);
    static final Formula HIGH = Formula.of(
            "calibration.prediction-high", "Upper end", new Symbol("t_high", Measure.TIME, "upper end"), "t + q * u", SOURCE, MEAN, QUANTILE, SPREAD);

    private final List<Double> terms;
    private final double hoursS;
    private final double residualS;
    private final double weight;
    private final double leverage;
    private final double quantile;
    private final double errorS;
    private final double lowS;
    private final double highS;

    Prediction(List<Double> terms, double residualS, double weight, double leverage, double quantile) {
        this.terms = List.copyOf(terms);
        this.hoursS = terms.stream().mapToDouble(Double::doubleValue).sum();
        this.residualS = residualS;
        this.weight = weight;
        this.leverage = leverage;
        this.quantile = quantile;
        this.errorS = residualS * Math.sqrt(1 / weight + leverage);
        this.lowS = hoursS - quantile * errorS;
        this.highS = hoursS + quantile * errorS;
    }

    /**
     * The hours foretold.
     *
     * @return paid time, all people together
     */
    public Quantity<Time> hours() {
        return Door.time(hoursS);
    }

    /**
     * {@link #hours()} as a plain number.
     *
     * @return seconds
     */
    public double hoursS() {
        return hoursS;
    }

    /**
     * The lower end of the interval.
     *
     * @return seconds; below zero where the log says very little
     */
    public double lowS() {
        return lowS;
    }

    /**
     * The upper end of the interval.
     *
     * @return seconds
     */
    public double highS() {
        return highS;
    }

    /**
     * The standard error of a new job.
     *
     * @return seconds
     */
    public double errorS() {
        return errorS;
    }

    @Override
    public Working working() {
        Working mean = Working.sum(HOURS, hoursS, terms);
        Working error = Working.of(ERROR, errorS, residualS, weight, leverage);
        return Working.group(
                "Prediction",
                List.of(
                        Working.of(LOW, lowS, hoursS, quantile, errorS).because(mean, error),
                        Working.of(HIGH, highS, hoursS, quantile, errorS)));
    }

    /** The hours foretold and between which they lie. */
    @Override
    public String toString() {
        return Measure.TIME.print(hoursS, UnitStyle.METRIC) + ", between " + Measure.TIME.print(lowS, UnitStyle.METRIC) + " and " + Measure.TIME.print(highS, UnitStyle.METRIC) + ": from " + Print.count(terms.size(), "pace") + ", standard error " + Measure.TIME.print(errorS, UnitStyle.METRIC);
    }
}
