package io.github.bedjoint.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.EnumSet;
import java.util.Objects;
import java.util.Set;
import javax.measure.Quantity;
import javax.measure.Unit;
import org.joda.money.BigMoney;
import org.joda.money.BigMoneyProvider;
import org.joda.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;

/**
 * A price per quantity, such as EUR 7.90 per square metre, that can be multiplied only by a quantity of its own kind.
 *
 * <p>Stored are the amount and the unit as given, both exact. {@link #parse} reads what {@link #toString} writes. Zero is allowed, a negative price is refused: a reduction is a line of
 * its own. Two rates are equal when they have the same currency and the same price per inner unit to 28 digits, so EUR 1 per
 * yard equals EUR 1 per 3 ft. Immutable.
 *
 * @param <Q> what the price is per
 */
public final class PriceRate<Q extends Quantity<Q>> {
    private static final BigDecimal HIGHEST = new BigDecimal("1000000000");
    private static final int MOST_DECIMALS = 60;
    private static final Set<Measure> PRICED =
            EnumSet.of(Measure.LENGTH, Measure.AREA, Measure.TIME, Measure.MASS, Measure.VOLUME, Measure.NUMBER);
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
     * @param amount the price of one unit, 0 to a thousand million, with at most 60 decimals
     * @param per    the unit of length, area, time, mass, volume or number, one of {@link ShopUnits}
     * @param <Q>    what the price is per
     * @return the rate
     * @throws RefusedException if the amount is negative, huge or finer, or the unit is another
     */
    public static <Q extends Quantity<Q>> PriceRate<Q> of(BigMoneyProvider amount, Unit<Q> per) {
        BigMoney money = amount.toBigMoney();
        if (money.isNegative() || money.getAmount().compareTo(HIGHEST) > 0) {
            throw new RefusedException(
                    "price", money.toString(), "must be from 0 to " + HIGHEST.toPlainString(), "Maybe a reduction was meant: make it a line.");
        }
        if (money.getScale() > MOST_DECIMALS) {
            throw new RefusedException("price", money.toString(), "must have at most " + MOST_DECIMALS + " decimals", "Maybe round it.");
        }
        UnitTable.Entry entry = UnitTable.find(per);
        if (entry == null || !PRICED.contains(entry.measure())) {
            throw new RefusedException(
                    "price unit",
                    UnitTable.label(per),
                    "must be a unit of length, area, time, mass, volume or number of ShopUnits",
                    "Maybe use metres or feet.");
        }
        return new PriceRate<>(money, per, entry.measure(), perInner(money.getAmount(), entry));
    }

    /** Most rates are per inner unit or a whole part of it, and to divide takes far longer than to multiply. */
    private static BigDecimal perInner(BigDecimal amount, UnitTable.Entry entry) {
        BigDecimal fits = entry.fits();
        return fits == null ? amount.divide(entry.exact(), MathContext.DECIMAL128) : amount.multiply(fits, MathContext.DECIMAL128);
    }

    /**
     * Reads a rate of any kind, when the kind shows only in the unit; {@link Read} has a method for each kind.
     *
     * @param text such as {@code EUR 7.90/m2}
     * @return the rate; its {@link #measure()} tells what it is per
     * @throws RefusedException if it cannot be read
     */
    public static PriceRate<?> parse(String text) {
        return TextReader.price(PRICED, text);
    }

    /**
     * The price of a quantity, unrounded: that of its number in the inner unit, which is a {@code double}.
     *
     * @param quantity how much, of the kind the price is per, not negative
     * @return the money, to 34 digits
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
     * @return the amount, {@link #perInner()} times the shortest decimal that tells the number from its neighbours, to 34 digits
     */
    public BigDecimal cost(double inner) {
        return perInner.multiply(BigDecimal.valueOf(inner), MathContext.DECIMAL128);
    }

    /**
     * The price of one inner unit, to 34 digits.
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

    /** The rate as {@link #parse} reads it back: {@code EUR 7.90/m2}. */
    @Override
    public String toString() {
        return currency().getCode() + " " + amount.getAmount().toPlainString() + "/" + UnitTable.label(per);
    }
}
