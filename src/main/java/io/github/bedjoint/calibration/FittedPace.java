package io.github.bedjoint.calibration;

import io.github.bedjoint.labour.Allowance;
import io.github.bedjoint.labour.Driver;
import io.github.bedjoint.labour.Pace;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.working.Explained;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Working;
import java.util.Locale;

/**
 * A pace as the log has it, and how sure it is. It is a pace of paid time, allowances in it, since that is what a log holds. Immutable.
 */
public final class FittedPace implements Explained {
    static final Formula BY_AREA = error("area", Measure.AREA, Measure.TIME_PER_AREA);
    static final Formula BY_LENGTH = error("length", Measure.LENGTH, Measure.TIME_PER_LENGTH);
    static final Formula BY_PIECE = error("piece", Measure.NUMBER, Measure.TIME);

    private final Driver driver;
    private final double inner;
    private final double residualS;
    private final double inflation;
    private final double spread;
    private final double standardError;
    private final boolean heldAtZero;

    FittedPace(Driver driver, double inner, double residualS, double inflation, double spread, boolean heldAtZero) {
        this.driver = driver;
        this.inner = inner;
        this.residualS = residualS;
        this.inflation = inflation;
        this.spread = spread;
        this.heldAtZero = heldAtZero;
        this.standardError = heldAtZero ? 0 : residualS * Math.sqrt(inflation) / spread;
    }

    private static Formula error(String by, Measure amount, Measure pace) {
        return Formula.of(
                "calibration.standard-error-by-" + by,
                "Standard error of a pace",
                new Symbol("u_p", pace, "standard error of the pace"),
                "s * sqrt(V) / L",
                Source.handbook("linear regression: variance of a coefficient by variance inflation"),
                new Symbol("s", Measure.TIME, "residual standard deviation"),
                Symbol.number("V", "variance inflation: 1 if no other driver is like this one"),
                new Symbol("L", amount, "spread of the driver over the log: root of its sum of squares, about the mean where a time per job is fitted"));
    }

    /**
     * The driver.
     *
     * @return what it is a pace of
     */
    public Driver driver() {
        return driver;
    }

    /**
     * The pace in inner units; it may be negative, and is then no pace.
     *
     * @return seconds of paid time per unit of the driver
     */
    public double inner() {
        return inner;
    }

    /**
     * The standard error of the pace; 0 where it is held at zero, since then it was not fitted.
     *
     * @return seconds per unit of the driver
     */
    public double standardError() {
        return standardError;
    }

    /**
     * By how much the likeness of other drivers blows up the variance.
     *
     * @return the variance inflation, 1 or more; 0 where the pace is held at zero
     */
    public double inflation() {
        return inflation;
    }

    /**
     * Whether the pace would be negative and was held at zero.
     *
     * @return true only for a fit without negative paces
     */
    public boolean isHeldAtZero() {
        return heldAtZero;
    }

    /**
     * The pace without its allowance, as a task table has it.
     *
     * @param allowance the allowance in the hours of the log
     * @return the basic pace for one person
     * @throws RefusedException if the pace is negative
     */
    public Pace basic(Allowance allowance) {
        if (inner < 0) {
            throw new RefusedException("pace of " + driver, Double.toString(inner), "must not be negative", "Maybe fit without negative paces.");
        }
        double share = allowance.share();
        return new Pace(driver.paceMeasure(), allowance.base() == Allowance.Base.JOB_TIME ? inner / (1 + share) : inner * (1 - share));
    }

    @Override
    public Working working() {
        if (heldAtZero) {
            return Working.group("Pace of " + driver, java.util.List.of()).noting("Held at zero.");
        }
        Formula formula = switch (driver.measure()) {
            case AREA -> BY_AREA;
            case LENGTH -> BY_LENGTH;
            default -> BY_PIECE;
        };
        return Working.of(formula, standardError, residualS, inflation, spread).whose(driver.name());
    }

    /** The pace and its standard error. */
    @Override
    public String toString() {
        Measure measure = driver.paceMeasure();
        return driver.toString().toLowerCase(Locale.ROOT).replace('_', ' ') + ": " + measure.print(inner, UnitStyle.METRIC) + (heldAtZero ? ", held at zero: it would be negative" : " ± " + measure.print(standardError, UnitStyle.METRIC) + " (standard error)");
    }
}
