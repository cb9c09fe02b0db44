package io.github.bedjoint.price;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.RefusedException;
import java.math.BigDecimal;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * How a shop turns cost into price. With nothing set: no overhead, no contingency, no profit, no minimum, no discount, no tax, halves
 * rounded up. Immutable.
 *
 * @param currency    the currency of every line
 * @param overhead    how overhead is absorbed
 * @param contingency share of direct cost and overhead, 0 to 1
 * @param profit      margin on price or markup on cost
 * @param minimum     the least price before discount and tax
 * @param discount    share taken off the price, 0 to below 1
 * @param tax         share added to the price, 0 to 1
 * @param rounding    how amounts are rounded
 */
public record PriceRules(
        CurrencyUnit currency,
        Overhead overhead,
        BigDecimal contingency,
        Profit profit,
        Money minimum,
        BigDecimal discount,
        BigDecimal tax,
        Rounding rounding) {
    private static final BigDecimal HIGHEST = new BigDecimal("1000000000000");

    /**
     * Rules with nothing set.
     *
     * @param currency the currency of every line
     * @return the rules
     */
    public static PriceRules in(CurrencyUnit currency) {
        return new PriceRules(
                currency, Overhead.none(), BigDecimal.ZERO, Profit.markup(0), Money.zero(currency), BigDecimal.ZERO,
                BigDecimal.ZERO, Rounding.HALF_UP);
    }

    /**
     * The same with overhead.
     *
     * @param other how overhead is absorbed, in this currency
     * @return new rules
     * @throws RefusedException if its rate is in another currency
     */
    public PriceRules withOverhead(Overhead other) {
        if (other.rate() != null) {
            same("overhead", other.rate().currency());
        }
        return new PriceRules(currency, other, contingency, profit, minimum, discount, tax, rounding);
    }

    /**
     * The same with a contingency.
     *
     * @param share share of direct cost and overhead, 0 to 1
     * @return new rules
     * @throws RefusedException if the share is out of range
     */
    public PriceRules withContingency(double share) {
        BigDecimal checked = share("contingency", share, Range.SHARE);
        return new PriceRules(currency, overhead, checked, profit, minimum, discount, tax, rounding);
    }

    /**
     * The same with a profit.
     *
     * @param other margin or markup
     * @return new rules
     */
    public PriceRules withProfit(Profit other) {
        return new PriceRules(currency, overhead, contingency, other, minimum, discount, tax, rounding);
    }

    /**
     * The same with a least price.
     *
     * @param least the least price before discount and tax, in this currency, not negative
     * @return new rules
     * @throws RefusedException if it is negative or in another currency
     */
    public PriceRules withMinimum(Money least) {
        same("minimum", least.getCurrencyUnit());
        if (least.isNegative()) {
            throw new RefusedException("minimum", least.toString(), "must not be negative", "Maybe leave it away.");
        }
        if (least.getAmount().compareTo(HIGHEST) > 0) {
            throw new RefusedException("minimum", least.toString(), "must be at most " + HIGHEST.toPlainString(), "Maybe a digit slipped.");
        }
        return new PriceRules(currency, overhead, contingency, profit, least, discount, tax, rounding);
    }

    /**
     * The same with a discount.
     *
     * @param share share taken off the price, 0 to below 1
     * @return new rules
     * @throws RefusedException if the share is out of range
     */
    public PriceRules withDiscount(double share) {
        BigDecimal checked = share("discount", share, Range.BELOW_ONE);
        return new PriceRules(currency, overhead, contingency, profit, minimum, checked, tax, rounding);
    }

    /**
     * The same with a tax.
     *
     * @param share share added to the price, 0 to 1
     * @return new rules
     * @throws RefusedException if the share is out of range
     */
    public PriceRules withTax(double share) {
        BigDecimal checked = share("tax", share, Range.SHARE);
        return new PriceRules(currency, overhead, contingency, profit, minimum, discount, checked, rounding);
    }

    /**
     * The same with another rounding.
     *
     * @param other how amounts are rounded
     * @return new rules
     */
    public PriceRules withRounding(Rounding other) {
        return new PriceRules(currency, overhead, contingency, profit, minimum, discount, tax, other);
    }

    void same(String what, CurrencyUnit other) {
        if (!other.equals(currency)) {
            throw new RefusedException(
                    what, "in " + other, "must be in " + currency + " like the rest of the price", "Maybe convert it first: Bedjoint knows no exchange rates.");
        }
    }

    private static BigDecimal share(String parameter, double share, Range range) {
        return exact(Door.number(parameter, share, range));
    }

    /** The shortest decimal of a share, so that 0 and 0.0 are one value. */
    static BigDecimal exact(double share) {
        BigDecimal shortest = BigDecimal.valueOf(share).stripTrailingZeros();
        return shortest.scale() < 0 ? shortest.setScale(0) : shortest;
    }
}
