package io.github.bedjoint.labour;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Working;

/**
 * Time for personal needs, fatigue, heat or cold breaks and small delays, added to basic time; the base says of what it is a share.
 *
 * @param base  of which time the share is taken
 * @param share the share: 0.15 is 15 %; at most 2 on job time, below 1 on the working day
 */
public record Allowance(Base base, double share) {

    /** Of which time an allowance is a share. */
    public enum Base {
        /** A share of the basic time: standard = basic x (1 + share). */
        JOB_TIME,
        /** A share of the whole working day: standard = basic / (1 - share). */
        WORKING_DAY
    }

    private static final Allowance NONE = new Allowance(Base.JOB_TIME, 0);
    private static final Source WORK_STUDY = Source.handbook("work study: standard time is basic time plus allowances");
    private static final Symbol STANDARD = new Symbol("t_s", Measure.TIME, "standard time");
    private static final Symbol BASIC = new Symbol("t_b", Measure.TIME, "basic time");

    static final Formula ON_JOB_TIME = Formula.of(
            "labour.standard-on-job-time",
            "Standard time, allowance on job time",
            STANDARD,
            "t_b * (1 + a)",
            WORK_STUDY,
            BASIC,
            Symbol.number("a", "allowance as a share of basic time"));

    static final Formula ON_WORKING_DAY = Formula.of(
            "labour.standard-on-working-day",
            "Standard time, allowance on the working day",
            STANDARD,
            "t_b / (1 - a)",
            WORK_STUDY,
            BASIC,
            Symbol.number("a", "allowance as a share of the working day"));

    /**
     * Checks the share.
     *
     * @param base  of which time the share is taken
     * @param share the share: 0.15 is 15 %; at most 2 on job time, below 1 on the working day
     * @throws io.github.bedjoint.units.RefusedException if the share is negative, over 2 on job time, or 1 and more on the day
     */
    public Allowance {
        Door.number("allowance", share, base == Base.JOB_TIME ? Range.closed(0, 2) : Range.BELOW_ONE);
    }

    /**
     * An allowance as a share of basic time.
     *
     * @param share 0 to 2
     * @return the allowance
     */
    public static Allowance onJobTime(double share) {
        return new Allowance(Base.JOB_TIME, share);
    }

    /**
     * An allowance as a share of the working day.
     *
     * @param share 0 to less than 1
     * @return the allowance
     */
    public static Allowance onWorkingDay(double share) {
        return new Allowance(Base.WORKING_DAY, share);
    }

    /**
     * No allowance.
     *
     * @return an allowance of zero on job time
     */
    public static Allowance none() {
        return NONE;
    }

    /**
     * The same with a further share of the same base, such as breaks in heat or cold.
     *
     * @param more the share to add
     * @return a new allowance
     * @throws io.github.bedjoint.units.RefusedException if the sum cannot be accepted
     */
    public Allowance plus(double more) {
        return new Allowance(base, share + Door.number("allowance added", more, Range.closed(0, 2)));
    }

    /** Standard time for a basic time, both in seconds. */
    double standardS(double basicS) {
        return base == Base.JOB_TIME ? basicS * (1 + share) : basicS / (1 - share);
    }

    Working working(double basicS, double standardS) {
        return Working.of(base == Base.JOB_TIME ? ON_JOB_TIME : ON_WORKING_DAY, standardS, basicS, share);
    }
}
