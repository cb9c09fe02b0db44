package io.github.bedjoint.price;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.PriceRate;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.ShopUnits;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.working.Explained;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Working;
import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.Map;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import org.joda.money.Money;

/**
 * One line of a price: a quantity times a rate of the same kind, rounded once to the currency's decimals.
 *
 * <p>Stored are the quantity in its inner unit, the rate, the rounding and the amount. Quantities are not negative. Immutable.
 */
public final class CostLine implements Explained {
    private static final Range QUANTITY = Range.closed(0, 1e12);
    private static final Symbol VALUE = new Symbol("v", Measure.MONEY, "unrounded amount");
    private static final Map<Measure, Formula> VALUES = new EnumMap<>(Measure.class);

    static {
        value(Measure.NUMBER, Measure.MONEY, "each", "count");
        value(Measure.AREA, Measure.MONEY_PER_AREA, "area", "area");
        value(Measure.LENGTH, Measure.MONEY_PER_LENGTH, "length", "length");
        value(Measure.TIME, Measure.MONEY_PER_TIME, "time", "time");
        value(Measure.VOLUME, Measure.MONEY_PER_VOLUME, "volume", "volume");
        value(Measure.MASS, Measure.MONEY_PER_MASS, "mass", "mass");
    }

    private final LineKind kind;
    private final String title;
    private final double quantity;
    private final PriceRate<?> rate;
    private final Rounding rounding;
    private final BigDecimal value;
    private final Money amount;

    private CostLine(LineKind kind, String title, double quantity, PriceRate<?> rate, Rounding rounding) {
        this.kind = kind;
        this.title = Door.text("line title", title);
        this.quantity = Door.in(rate.measure(), quantity, title, QUANTITY);
        this.rate = rate;
        this.rounding = rounding;
        this.value = rate.cost(quantity);
        this.amount = rounding.round(rate.currency(), value);
    }

    private static void value(Measure quantity, Measure rate, String id, String word) {
        VALUES.put(
                quantity,
                Formula.of(
                        "price.line-by-" + id,
                        "Line by " + word,
                        VALUE,
                        "q * p",
                        Source.geometry("quantity times rate"),
                        new Symbol("q", quantity, word),
                        new Symbol("p", rate, "rate")));
    }

    /**
     * A line.
     *
     * @param kind     what it pays for
     * @param title    what the customer reads
     * @param quantity how much, not negative
     * @param rate     the rate, of the quantity's kind
     * @param rounding how the amount is rounded
     * @param <Q>      the kind of quantity
     * @return the line
     * @throws io.github.bedjoint.units.RefusedException if the title is blank or the quantity is negative or not finite
     */
    public static <Q extends Quantity<Q>> CostLine of(
            LineKind kind, String title, Quantity<Q> quantity, PriceRate<Q> rate, Rounding rounding) {
        return new CostLine(kind, title, Door.in(rate.measure(), title, quantity, QUANTITY), rate, rounding);
    }

    /**
     * A line whose quantity is already in the inner unit of the rate's measure.
     *
     * @param kind     what it pays for
     * @param title    what the customer reads
     * @param inner    how much, in the inner unit, not negative
     * @param rate     the rate
     * @param rounding how the amount is rounded
     * @return the line
     * @throws io.github.bedjoint.units.RefusedException if the title is blank or the quantity is negative or not finite
     */
    public static CostLine ofInner(LineKind kind, String title, double inner, PriceRate<?> rate, Rounding rounding) {
        return new CostLine(kind, title, inner, rate, rounding);
    }

    /**
     * A line of pieces at a price each; a lump sum is one piece.
     *
     * @param kind  what it pays for
     * @param title what the customer reads
     * @param count how many pieces, 0 to a million
     * @param each  the price of one, not negative
     * @return the line
     * @throws io.github.bedjoint.units.RefusedException if the title is blank, or count or price out of range
     */
    public static CostLine each(LineKind kind, String title, int count, Money each) {
        PriceRate<Dimensionless> rate = PriceRate.of(each, ShopUnits.ONE);
        return new CostLine(kind, title, Door.count(title, count, 0, 1_000_000), rate, Rounding.HALF_UP);
    }

    /**
     * What the line pays for.
     *
     * @return the kind
     */
    public LineKind kind() {
        return kind;
    }

    /**
     * What the customer reads.
     *
     * @return the title
     */
    public String title() {
        return title;
    }

    /**
     * How much, in the inner unit of {@code rate().measure()}.
     *
     * @return the quantity
     */
    public double quantity() {
        return quantity;
    }

    /**
     * The rate.
     *
     * @return the price per quantity
     */
    public PriceRate<?> rate() {
        return rate;
    }

    /**
     * The amount, rounded.
     *
     * @return the money
     */
    public Money amount() {
        return amount;
    }

    @Override
    public Working working() {
        Formula formula = VALUES.get(rate.measure());
        return rounding.working(amount, value)
                .because(Working.of(formula, value, quantity, rate.perInner()))
                .whose(title)
                .in(rate.currency());
    }

    /** Title, quantity, rate and amount in one line, in metric units. */
    @Override
    public String toString() {
        return title + ": " + rate.measure().print(quantity, UnitStyle.METRIC) + " x " + rate + " = " + amount;
    }
}
