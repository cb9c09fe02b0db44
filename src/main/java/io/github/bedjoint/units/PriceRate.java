package io.github.bedjoint.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;
import org.joda.money.BigMoney;
import org.joda.money.BigMoneyProvider;
import org.joda.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;

/**
 * A price per quantity, such as EUR 7.90 per square metre, that can be multiplied only by a quantity of its own kind.
 *
 * <p>Stored are the amount and the unit as given, both exact. Zero is allowed, a negative price is refused: a reduction is a line of
 * its own. Two rates are equal when they have the same currency and the same price per inner unit to 28 digits, so EUR 1 per
 * yard equals EUR 1 per 3 ft. Immutable.
 *
 * @param <Q> what the price is per
 */
public final class PriceRate<Q extends Quantity<Q>> {
    private static final BigDecimal HIGHEST = new BigDecimal("1000000000");
    private static final MathContext COMPARED = new MathContext(28);

    private final BigMoney amount;
    private final Unit<Q> per;
    private final Measure measure;
    private final BigDecimal perInner;

    private PriceRate(BigMoney amount, Unit<Q> per, Measure measure, BigDecimal perInner) {
        this.amount = amount;
        this.per = per;
        this.measure = measure;
        this.perInner = perInner;
    }

    /**
     * A price per unit.
     *
     * @param amount the price of one unit, 0 to a thousand million, any number of decimals
     * @param per    the unit, one of {@link ShopUnits} (or of {@link Read})
     * @param <Q>    what the price is per
     * @return the rate
     * @throws RefusedException if the amount is negative or huge, or the unit is not in the table
     */
    public static <Q extends Quantity<Q>> PriceRate<Q> of(BigMoneyProvider amount, Unit<Q> per) {
        BigMoney money = amount.toBigMoney();
        if (money.isNegative() || money.getAmount().compareTo(HIGHEST) > 0) {
            throw new RefusedException(
                    "price", money.toString(), "must be from 0 to " + HIGHEST.toPlainString(), "Maybe a reduction was meant: make it a line.");
        }
        UnitTable.Entry entry = UnitTable.find(per);
        if (entry == null) {
            throw new RefusedException("price unit", per.toString(), "must be a unit of ShopUnits", "Maybe use metres or feet.");
        }
        return new PriceRate<>(
                money, per, entry.measure(), money.getAmount().divide(entry.exact(), MathContext.DECIMAL128));
    }

    /**
     * The price of a quantity, unrounded.
     *
     * @param quantity how much, of the kind the price is per, not negative
     * @return the money, exact to 34 digits
     * @throws RefusedException if the quantity is negative, not finite or of another dimension
     */
    public BigMoney times(Quantity<Q> quantity) {
        double inner = Door.in(measure, "quantity", quantity, Range.closed(0, 1e12));
        return BigMoney.of(amount.getCurrencyUnit(), cost(inner));
    }

    /**
     * The price of a quantity given in the inner unit of {@link #measure()}, unrounded.
     *
     * @param inner how much, finite
     * @return the amount, exact to 34 digits
     */
    public BigDecimal cost(double inner) {
        return perInner.multiply(BigDecimal.valueOf(inner), MathContext.DECIMAL128);
    }

    /**
     * The price of one inner unit, unrounded.
     *
     * @return the amount per metre, square metre, second, kilogram, cubic metre or piece
     */
    public BigDecimal perInner() {
        return perInner;
    }

    /**
     * What the price is per.
     *
     * @return the kind of quantity
     */
    public Measure measure() {
        return measure;
    }

    /**
     * The price of one {@link #per() unit}.
     *
     * @return the amount as given
     */
    public BigMoney amount() {
        return amount;
    }

    /**
     * The unit as given.
     *
     * @return what one amount buys
     */
    public Unit<Q> per() {
        return per;
    }

    /**
     * The currency.
     *
     * @return the currency of the amount
     */
    public CurrencyUnit currency() {
        return amount.getCurrencyUnit();
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof PriceRate<?> that
                && measure == that.measure
                && currency().equals(that.currency())
                && perInner.round(COMPARED).compareTo(that.perInner.round(COMPARED)) == 0;
    }

    @Override
    public int hashCode() {
        return Objects.hash(measure, currency(), perInner.round(COMPARED).stripTrailingZeros());
    }

    /** The rate as {@link Read} reads it back: {@code EUR 7.90/m2}. */
    @Override
    public String toString() {
        return currency().getCode() + " " + amount.getAmount().toPlainString() + "/" + UnitTable.label(per);
    }
}
