package io.github.bedjoint.rolls;

import java.math.BigInteger;

/**
 * What a remnant is worth when it goes back on the shelf.
 *
 * <p>A remnant counts in whole units of length, from the least length up, at a percentage of what that length cost in
 * its roll; the credit is rounded down to a whole minor unit. With {@link #none()} a remnant is worth nothing: it may
 * well be kept, but no plan is preferred for it.
 *
 * @param leastSteps shortest remnant that is kept, in steps of 12.5 micrometres, 1 to 800,000,000
 * @param unitSteps length in which remnants are counted, in steps, 1 to 800,000,000
 * @param percent share of the roll's price per length, 0 to 100
 */
public record RemnantRule(long leastSteps, long unitSteps, int percent) {

    /**
     * Checks the rule.
     *
     * @param leastSteps as above
     * @param unitSteps as above
     * @param percent as above
     * @throws io.github.bedjoint.units.RefusedException if a number is out of its range
     */
    public RemnantRule {
        Limits.between("least remnant", leastSteps, 1, Limits.MAX_LENGTH, "steps");
        Limits.between("remnant unit", unitSteps, 1, Limits.MAX_LENGTH, "steps");
        Limits.between("remnant share", percent, 0, 100, "percent");
    }

    /**
     * Remnants are worth nothing.
     *
     * @return the default rule
     */
    public static RemnantRule none() {
        return new RemnantRule(1, 1, 0);
    }

    /**
     * The credit for a remnant.
     *
     * @param stock the roll it is left on
     * @param remnantSteps length left, in steps of 12.5 micrometres
     * @return credit in minor money units, 0 or more and at most the price of the roll
     */
    public long credit(Stock stock, long remnantSteps) {
        if (percent == 0 || remnantSteps < leastSteps) {
            return 0;
        }
        long counted = remnantSteps / unitSteps * unitSteps;
        BigInteger value = BigInteger.valueOf(stock.cost())
                .multiply(BigInteger.valueOf(percent))
                .multiply(BigInteger.valueOf(counted))
                .divide(BigInteger.valueOf(stock.lengthSteps()).multiply(BigInteger.valueOf(100)));
        return value.longValueExact();
    }
}
