package io.github.bedjoint.price;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.PriceRate;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Working;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.Objects;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;

/**
 * How overhead is absorbed: as a share of direct cost, as a share of labour cost, or by the person-hour.
 *
 * <p>The three bases are those of absorption costing as cost accounting textbooks describe it. Immutable.
 */
public final class Overhead {
    private static final Symbol RESULT = new Symbol("O", Measure.MONEY, "overhead before rounding");
    private static final Source SOURCE = Source.handbook("cost accounting: absorption of overhead by cost, by labour cost or by hour");
    static final Formula ON_COST = Formula.of(
            "price.overhead-on-cost", "Overhead on cost", RESULT, "s * C", SOURCE,
            Symbol.number("s", "overhead share"), new Symbol("C", Measure.MONEY, "cost it is taken on"));
    static final Formula ON_HOURS = Formula.of(
            "price.overhead-on-hours", "Overhead on hours", RESULT, "h * p", SOURCE,
            new Symbol("h", Measure.TIME, "person-hours"), new Symbol("p", Measure.MONEY_PER_TIME, "overhead rate"));

    /** What overhead is taken on. */
    public enum Basis {
        /** The direct cost. */
        DIRECT_COST,
        /** The labour of the direct cost. */
        LABOUR_COST,
        /** The person-hours. */
        HOURS
    }

    private final Basis basis;
    private final BigDecimal share;
    private final @Nullable PriceRate<Time> rate;

    private Overhead(Basis basis, BigDecimal share, @Nullable PriceRate<Time> rate) {
        this.basis = basis;
        this.share = share;
        this.rate = rate;
    }

    /**
     * No overhead.
     *
     * @return overhead of zero
     */
    public static Overhead none() {
        return new Overhead(Basis.DIRECT_COST, BigDecimal.ZERO, null);
    }

    /**
     * A share of all direct cost.
     *
     * @param share 0.12 for 12 %, from 0 to 10
     * @return the overhead
     * @throws io.github.bedjoint.units.RefusedException if the share is out of range
     */
    public static Overhead onDirectCost(double share) {
        return new Overhead(Basis.DIRECT_COST, share(share), null);
    }

    /**
     * A share of labour cost, production and site.
     *
     * @param share 1.15 for 115 %, from 0 to 10
     * @return the overhead
     * @throws io.github.bedjoint.units.RefusedException if the share is out of range
     */
    public static Overhead onLabourCost(double share) {
        return new Overhead(Basis.LABOUR_COST, share(share), null);
    }

    /**
     * A rate by the person-hour.
     *
     * @param rate the overhead of one person-hour
     * @return the overhead
     */
    public static Overhead perHour(PriceRate<Time> rate) {
        return new Overhead(Basis.HOURS, BigDecimal.ZERO, rate);
    }

    private static BigDecimal share(double share) {
        return PriceRules.exact(Door.number("overhead share", share, Range.closed(0, 10)));
    }

    /**
     * What overhead is taken on.
     *
     * @return the basis
     */
    public Basis basis() {
        return basis;
    }

    /**
     * The share of the basis.
     *
     * @return the share; 0 where overhead is taken on hours
     */
    public BigDecimal share() {
        return share;
    }

    /**
     * The rate by hour.
     *
     * @return the rate, or null where overhead is a share
     */
    public @Nullable PriceRate<Time> rate() {
        return rate;
    }

    BigDecimal of(BigDecimal direct, BigDecimal labour, double labourS) {
        return rate != null ? rate.cost(labourS) : share.multiply(basis == Basis.DIRECT_COST ? direct : labour);
    }

    Working working(BigDecimal overhead, BigDecimal direct, BigDecimal labour, double labourS) {
        if (rate != null) {
            return Working.of(ON_HOURS, overhead, labourS, rate.perInner());
        }
        return Working.of(ON_COST, overhead, share, basis == Basis.DIRECT_COST ? direct : labour);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Overhead that && basis == that.basis && share.compareTo(that.share) == 0 && Objects.equals(rate, that.rate);
    }

    @Override
    public int hashCode() {
        return Objects.hash(basis, share.stripTrailingZeros(), rate);
    }

    /** The basis with its share or rate. */
    @Override
    public String toString() {
        return rate != null ? rate + " on hours" : share.toPlainString() + " on " + basis.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
