package io.github.bedjoint.labour;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Range;
import javax.measure.Quantity;
import javax.measure.quantity.Time;

/**
 * How repeated identical work gets faster: each doubling brings the time down to a rate.
 *
 * @param law  of which time the rate is
 * @param rate more than 0.5 and at most 1: 0.85 means that a doubling brings it down to 85 %
 */
public record Learning(Law law, double rate) {

    /** Of which time the rate of learning is. */
    public enum Law {
        /** The time of the n-th unit falls (Crawford). */
        UNIT,
        /** The mean time of the first n units falls (Wright). */
        CUMULATIVE_AVERAGE
    }

    /** Most units that are summed one by one. */
    private static final int MOST = 10_000;

    /**
     * Checks the rate.
     *
     * @param law  of which time the rate is
     * @param rate more than 0.5 and at most 1: 0.85 means that a doubling brings it down to 85 %
     * @throws io.github.bedjoint.units.RefusedException if it is not more than 0.5 and at most 1
     */
    public Learning {
        Door.number("learning rate", rate, Range.above(0.5, 1));
    }

    /**
     * The unit law.
     *
     * @param rate more than 0.5 and at most 1
     * @return the law of Crawford
     */
    public static Learning crawford(double rate) {
        return new Learning(Law.UNIT, rate);
    }

    /**
     * The cumulative-average law.
     *
     * @param rate more than 0.5 and at most 1
     * @return the law of Wright
     */
    public static Learning wright(double rate) {
        return new Learning(Law.CUMULATIVE_AVERAGE, rate);
    }

    /**
     * The exponent: the power of n by which the time goes.
     *
     * @return the binary logarithm of the rate, zero or negative
     */
    public double exponent() {
        return Math.log(rate) / Math.log(2) + 0.0;
    }

    /**
     * The times of the first n units.
     *
     * @param first time of the first unit, zero or more
     * @param n     how many units, 1 to 10 000
     * @return time of the n-th, of all, and on average
     * @throws io.github.bedjoint.units.RefusedException if a value cannot be accepted
     */
    public LearnedTime over(Quantity<Time> first, int n) {
        return new LearnedTime(this, Door.timeS("time of the first unit", first, Range.closed(0, 1e9)), Door.count("units", n, 1, MOST));
    }
}
