package io.github.bedjoint.labour;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Print;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.working.Explained;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Working;
import javax.measure.Quantity;
import javax.measure.quantity.Time;

/** Basic and standard time of something that was timed with a watch: observed time, rated, with its allowance. Immutable. */
public final class StandardTime implements Explained {
    static final Formula BASIC = Formula.of(
            "labour.basic-of-observed",
            "Basic time of an observed time",
            new Symbol("t_b", Measure.TIME, "basic time"),
            "t_o * R",
            Source.handbook("work study: basic time is observed time times rating"),
            new Symbol("t_o", Measure.TIME, "observed time"),
            Symbol.number("R", "rating, 1 is normal performance"));

    private final double observedS;
    private final Rating rating;
    private final Allowance allowance;
    private final double basicS;
    private final double standardS;

    private StandardTime(double observedS, Rating rating, Allowance allowance) {
        this.observedS = observedS;
        this.rating = rating;
        this.allowance = allowance;
        this.basicS = observedS * rating.factor();
        this.standardS = allowance.standardS(basicS);
    }

    /**
     * The standard time of an observation.
     *
     * @param observed  the time on the watch, zero or more
     * @param rating    how fast the observed worker was
     * @param allowance what is added, and on which base
     * @return basic and standard time
     * @throws io.github.bedjoint.units.RefusedException if the time cannot be accepted
     */
    public static StandardTime of(Quantity<Time> observed, Rating rating, Allowance allowance) {
        return new StandardTime(Door.timeS("observed time", observed, Range.closed(0, 1e8)), rating, allowance);
    }

    /**
     * Observed time brought to normal performance.
     *
     * @return basic time
     */
    public Quantity<Time> basic() {
        return Door.time(basicS);
    }

    /**
     * Basic time with its allowance.
     *
     * @return standard time
     */
    public Quantity<Time> standard() {
        return Door.time(standardS);
    }

    /**
     * {@link #basic()} as a plain number.
     *
     * @return seconds
     */
    public double basicS() {
        return basicS;
    }

    /**
     * {@link #standard()} as a plain number.
     *
     * @return seconds
     */
    public double standardS() {
        return standardS;
    }

    @Override
    public Working working() {
        return allowance.working(basicS, standardS).because(Working.of(BASIC, basicS, observedS, rating.factor()));
    }

    /** The standard time and what it is made of. */
    @Override
    public String toString() {
        return Measure.TIME.print(standardS, UnitStyle.METRIC) + " standard: " + Measure.TIME.print(observedS, UnitStyle.METRIC) + " observed at a rating of " + Print.number(100 * rating.factor()) + " %, allowance of "
                + Print.number(100 * allowance.share()) + " % " + (allowance.base() == Allowance.Base.JOB_TIME ? "on job time" : "on the working day");
    }
}
