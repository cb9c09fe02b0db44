package io.github.bedjoint.price;

import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.working.Explained;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Working;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.EnumMap;
import java.util.Map;
import org.joda.money.Money;

/**
 * Why one line cost more or less than estimated: its price variance, its usage variance, and what rounding leaves over.
 *
 * <p>Positive is dearer than estimated (adverse), negative cheaper (favourable). The three add up to the difference of the two amounts
 * exactly. For hours the two are called rate and efficiency. Immutable.
 */
public final class LineVariance implements Explained {
    private static final Source SOURCE = Source.handbook("standard costing: price variance at actual quantity, usage variance at standard price");
    private static final MathContext DIGITS = MathContext.DECIMAL128;
    private static final Symbol PRICE = new Symbol("V_p", Measure.MONEY, "price variance before rounding");
    private static final Symbol USAGE = new Symbol("V_u", Measure.MONEY, "usage variance before rounding");
    private static final Map<Measure, Formula> PRICES = new EnumMap<>(Measure.class);
    private static final Map<Measure, Formula> USAGES = new EnumMap<>(Measure.class);

    static final Formula LEFT_OVER = Formula.of(
            "price.variance-rounding", "What rounding leaves over", new Symbol("V_r", Measure.MONEY, "rounding"), "A - E - P - U",
            Source.geometry("difference of rounded amounts"), new Symbol("A", Measure.MONEY, "actual amount"),
            new Symbol("E", Measure.MONEY, "estimated amount"), new Symbol("P", Measure.MONEY, "price variance"),
            new Symbol("U", Measure.MONEY, "usage variance"));

    static {
        kind(Measure.NUMBER, Measure.MONEY, "each");
        kind(Measure.AREA, Measure.MONEY_PER_AREA, "area");
        kind(Measure.LENGTH, Measure.MONEY_PER_LENGTH, "length");
        kind(Measure.TIME, Measure.MONEY_PER_TIME, "time");
        kind(Measure.VOLUME, Measure.MONEY_PER_VOLUME, "volume");
        kind(Measure.MASS, Measure.MONEY_PER_MASS, "mass");
    }

    private final CostLine estimated;
    private final CostLine actual;
    private final Rounding rounding;
    private final BigDecimal priceValue;
    private final Money price;
    private final BigDecimal usageValue;
    private final Money usage;
    private final Money leftOver;

    private LineVariance(CostLine estimated, CostLine actual, Rounding rounding) {
        this.estimated = estimated;
        this.actual = actual;
        this.rounding = rounding;
        BigDecimal most = BigDecimal.valueOf(actual.quantity());
        BigDecimal more = most.subtract(BigDecimal.valueOf(estimated.quantity()), DIGITS);
        priceValue = actual.rate().perInner().subtract(estimated.rate().perInner(), DIGITS).multiply(most, DIGITS);
        price = rounding.round(actual.rate().currency(), priceValue);
        usageValue = more.multiply(estimated.rate().perInner(), DIGITS);
        usage = rounding.round(actual.rate().currency(), usageValue);
        leftOver = total().minus(price).minus(usage);
    }

    private static void kind(Measure quantity, Measure rate, String id) {
        Symbol used = new Symbol("q_a", quantity, "actual quantity");
        Symbol planned = new Symbol("p_e", rate, "estimated price");
        PRICES.put(quantity, Formula.of(
                "price.price-variance-by-" + id, "Price variance", PRICE, "(p_a - p_e) * q_a", SOURCE,
                new Symbol("p_a", rate, "actual price"), planned, used));
        USAGES.put(quantity, Formula.of(
                "price.usage-variance-by-" + id, "Usage variance", USAGE, "(q_a - q_e) * p_e", SOURCE,
                used, new Symbol("q_e", quantity, "estimated quantity"), planned));
    }

    /**
     * The variances of a line.
     *
     * @param estimated the line as estimated
     * @param actual    the line as it was in the end
     * @param rounding  how amounts are rounded
     * @return the variances
     * @throws RefusedException if the two are of different kind, currency, or kind of quantity
     */
    public static LineVariance of(CostLine estimated, CostLine actual, Rounding rounding) {
        if (estimated.kind() != actual.kind()
                || estimated.rate().measure() != actual.rate().measure()
                || !estimated.rate().currency().equals(actual.rate().currency())) {
            throw new RefusedException(
                    "actual line", actual.toString(), "must be of the kind, measure and currency of " + estimated,
                    "Maybe give it another title, so that it is a line of its own.");
        }
        return new LineVariance(estimated, actual, rounding);
    }

    /** A line that was estimated and never came: all of it is usage. */
    static LineVariance saved(CostLine estimated, Rounding rounding) {
        return new LineVariance(estimated, none(estimated, rounding), rounding);
    }

    /** A line that nobody had estimated: all of it is usage. */
    static LineVariance unplanned(CostLine actual, Rounding rounding) {
        return new LineVariance(none(actual, rounding), actual, rounding);
    }

    private static CostLine none(CostLine like, Rounding rounding) {
        return CostLine.ofInner(like.kind(), like.title(), 0, like.rate(), rounding);
    }

    /**
     * What the line pays for.
     *
     * @return the kind of both lines
     */
    public LineKind kind() {
        return actual.kind();
    }

    /**
     * Its title.
     *
     * @return the title as it was in the end
     */
    public String title() {
        return actual.title();
    }

    /**
     * The price variance; of hours the rate variance.
     *
     * @return the difference of prices times the actual quantity, rounded
     */
    public Money price() {
        return price;
    }

    /**
     * The usage variance; of hours the efficiency variance.
     *
     * @return the difference of quantities times the estimated price, rounded
     */
    public Money usage() {
        return usage;
    }

    /**
     * What rounding leaves over.
     *
     * @return a few of the smallest coins at most
     */
    public Money leftOver() {
        return leftOver;
    }

    /**
     * The whole difference.
     *
     * @return actual less estimated amount, which is the sum of the three
     */
    public Money total() {
        return actual.amount().minus(estimated.amount());
    }

    @Override
    public Working working() {
        Measure measure = actual.rate().measure();
        BigDecimal planned = estimated.rate().perInner();
        Working ofPrice = rounding.working(price, priceValue)
                .because(Working.of(PRICES.get(measure), priceValue, actual.rate().perInner(), planned, actual.quantity()))
                .whose("price variance of " + title());
        Working ofUsage = rounding.working(usage, usageValue)
                .because(Working.of(USAGES.get(measure), usageValue, actual.quantity(), estimated.quantity(), planned))
                .whose("usage variance of " + title());
        return Working.of(
                        LEFT_OVER, leftOver.getAmount(), actual.amount().getAmount(), estimated.amount().getAmount(), price.getAmount(),
                        usage.getAmount())
                .whose(title())
                .because(ofPrice, ofUsage)
                .in(actual.rate().currency());
    }

    /** Title, price, usage and total in one line. */
    @Override
    public String toString() {
        return title() + ": price " + price + ", usage " + usage + ", in all " + total();
    }
}
