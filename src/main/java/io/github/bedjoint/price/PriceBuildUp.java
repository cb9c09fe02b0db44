package io.github.bedjoint.price;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.working.Explained;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Working;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.function.Predicate;
import javax.measure.Quantity;
import javax.measure.quantity.Time;
import org.joda.money.Money;

/**
 * A price from its lines: direct cost, overhead, contingency, profit, minimum, discount, tax, in that order.
 *
 * <p>Stored are the lines, the rules, the person-hours and every amount. Each amount is rounded once and each sum is a sum of rounded
 * amounts. Immutable.
 */
public final class PriceBuildUp implements Explained {
    private static final Source ORDER = Source.practice("order of a price build-up");
    private static final Symbol DIRECT = new Symbol("D", Measure.MONEY, "direct cost");
    private static final Symbol OVERHEAD = new Symbol("O", Measure.MONEY, "overhead");
    private static final Symbol CONTINGENCY = new Symbol("K", Measure.MONEY, "contingency");
    private static final Symbol COST = new Symbol("C", Measure.MONEY, "total cost");
    private static final Symbol UNROUNDED = new Symbol("v", Measure.MONEY, "unrounded amount");
    private static final Symbol NET = new Symbol("N", Measure.MONEY, "net price");

    static final Formula SUM_OF_LINES = Formula.of(
            "price.direct", "Direct cost", DIRECT, "sum(a_i)", Source.geometry("sum of the rounded lines"),
            new Symbol("a_i", Measure.MONEY, "amount of a line"));
    static final Formula SHARE_OF_BOTH = Formula.of(
            "price.contingency", "Contingency", UNROUNDED, "c * (D + O)", ORDER,
            Symbol.number("c", "contingency share"), DIRECT, OVERHEAD);
    static final Formula TOTAL_COST = Formula.of(
            "price.cost", "Total cost", COST, "D + O + K", ORDER, DIRECT, OVERHEAD, CONTINGENCY);
    static final Formula LEAST = Formula.of(
            "price.least", "Price, at least the minimum", new Symbol("L", Measure.MONEY, "list price"), "max(P, M)", ORDER,
            new Symbol("P", Measure.MONEY, "price"), new Symbol("M", Measure.MONEY, "minimum price"));
    static final Formula DISCOUNT = Formula.of(
            "price.discounted", "Price after discount", UNROUNDED, "L * (1 - d)", ORDER,
            new Symbol("L", Measure.MONEY, "list price"), Symbol.number("d", "discount share"));
    static final Formula TAX = Formula.of(
            "price.tax", "Tax", UNROUNDED, "t * N", ORDER, Symbol.number("t", "tax share"), NET);
    static final Formula TOTAL = Formula.of(
            "price.total", "Total", new Symbol("T", Measure.MONEY, "total"), "N + X", ORDER,
            NET, new Symbol("X", Measure.MONEY, "tax"));
    static final Formula MARGIN_KEPT = Formula.of(
            "price.margin-kept", "Margin kept after minimum and discount", Symbol.number("m_k", "margin kept"), "1 - C / N",
            Source.handbook("definition of gross margin on price"), COST, NET);

    private final List<CostLine> lines;
    private final PriceRules rules;
    private final double labourS;
    private final Money direct;
    private final Money labour;
    private final BigDecimal overheadValue;
    private final Money overhead;
    private final BigDecimal contingencyValue;
    private final Money contingency;
    private final Money cost;
    private final BigDecimal priceValue;
    private final Money price;
    private final Money list;
    private final BigDecimal netValue;
    private final Money net;
    private final BigDecimal taxValue;
    private final Money tax;
    private final Money total;

    private PriceBuildUp(List<CostLine> lines, double labourS, PriceRules rules) {
        this.lines = lines;
        this.rules = rules;
        this.labourS = labourS;
        Rounding rounding = rules.rounding();
        direct = sum(line -> true);
        labour = sum(line -> line.kind() == LineKind.PRODUCTION_LABOUR || line.kind() == LineKind.SITE_LABOUR);
        overheadValue = rules.overhead().of(direct.getAmount(), labour.getAmount(), labourS);
        overhead = rounding.round(rules.currency(), overheadValue);
        contingencyValue = rules.contingency().multiply(direct.plus(overhead).getAmount());
        contingency = rounding.round(rules.currency(), contingencyValue);
        cost = direct.plus(overhead).plus(contingency);
        priceValue = rules.profit().price(cost.getAmount());
        price = rounding.round(rules.currency(), priceValue);
        list = price.isLessThan(rules.minimum()) ? rules.minimum() : price;
        netValue = list.getAmount().multiply(BigDecimal.ONE.subtract(rules.discount()));
        net = rounding.round(rules.currency(), netValue);
        taxValue = rules.tax().multiply(net.getAmount());
        tax = rounding.round(rules.currency(), taxValue);
        total = net.plus(tax);
    }

    /**
     * Builds the price up.
     *
     * @param lines       the lines, all in the currency of the rules; none is allowed
     * @param personHours the hours that overhead by the hour is taken on, not negative
     * @param rules       the shop's rules
     * @return the price with all its steps
     * @throws io.github.bedjoint.units.RefusedException if a line is in another currency, or the hours are negative or not finite
     */
    public static PriceBuildUp of(List<CostLine> lines, Quantity<Time> personHours, PriceRules rules) {
        lines.forEach(line -> rules.same(line.title(), line.amount().getCurrencyUnit()));
        return new PriceBuildUp(List.copyOf(lines), Door.timeS("person-hours", personHours, Range.closed(0, 1e12)), rules);
    }

    private Money sum(Predicate<CostLine> counted) {
        Money sum = Money.zero(rules.currency());
        for (CostLine line : lines) {
            sum = counted.test(line) ? sum.plus(line.amount()) : sum;
        }
        return sum;
    }

    /**
     * The lines.
     *
     * @return the lines in the order given
     */
    public List<CostLine> lines() {
        return lines;
    }

    /**
     * The rules the price was built by.
     *
     * @return the shop's rules
     */
    public PriceRules rules() {
        return rules;
    }

    /** The person-hours that overhead by the hour is taken on, in seconds. */
    double labourS() {
        return labourS;
    }

    /**
     * The sum of the rounded lines.
     *
     * @return direct cost
     */
    public Money direct() {
        return direct;
    }

    /**
     * Overhead.
     *
     * @return overhead, rounded
     */
    public Money overhead() {
        return overhead;
    }

    /**
     * Contingency on direct cost and overhead.
     *
     * @return contingency, rounded
     */
    public Money contingency() {
        return contingency;
    }

    /**
     * Direct cost, overhead and contingency.
     *
     * @return total cost
     */
    public Money cost() {
        return cost;
    }

    /**
     * The price before discount and tax, at least the minimum.
     *
     * @return list price
     */
    public Money list() {
        return list;
    }

    /**
     * Whether the minimum price took the place of the computed one.
     *
     * @return true if the job is smaller than the shop's least price
     */
    public boolean isMinimum() {
        return price.isLessThan(rules.minimum());
    }

    /**
     * The price after discount, before tax.
     *
     * @return net price
     */
    public Money net() {
        return net;
    }

    /**
     * The tax on the net price.
     *
     * @return tax, rounded
     */
    public Money tax() {
        return tax;
    }

    /**
     * Net price and tax.
     *
     * @return what the customer pays
     */
    public Money total() {
        return total;
    }

    /**
     * The margin that is left of the net price after minimum and discount: 1 - (1 - m) / (1 - d) for a margin m and a discount d.
     *
     * @return the share of the net price, negative when the job loses money, 0 when the net price is zero
     */
    public double marginKept() {
        return net.isZero()
                ? 0
                : BigDecimal.ONE.subtract(cost.getAmount().divide(net.getAmount(), MathContext.DECIMAL128)).doubleValue();
    }

    @Override
    public Working working() {
        Rounding rounding = rules.rounding();
        Working directWorking = Working.sum(SUM_OF_LINES, direct.getAmount(), lines.stream().map(l -> l.amount().getAmount()).toList())
                .because(lines.stream().map(CostLine::working).toArray(Working[]::new));
        Working overheadWorking = rounding.working(overhead, overheadValue)
                .because(rules.overhead().working(overheadValue, direct.getAmount(), labour.getAmount(), labourS))
                .whose("overhead");
        Working contingencyWorking = rounding.working(contingency, contingencyValue)
                .because(Working.of(SHARE_OF_BOTH, contingencyValue, rules.contingency(), direct.getAmount(), overhead.getAmount()))
                .whose("contingency");
        Working costWorking = Working.of(
                        TOTAL_COST, cost.getAmount(), direct.getAmount(), overhead.getAmount(), contingency.getAmount())
                .because(directWorking, overheadWorking, contingencyWorking);
        Working listWorking = Working.of(LEAST, list.getAmount(), price.getAmount(), rules.minimum().getAmount())
                .because(rounding.working(price, priceValue)
                        .because(rules.profit().working(priceValue, cost.getAmount()).because(costWorking))
                        .whose("price"));
        Working netWorking = rounding.working(net, netValue)
                .because(Working.of(DISCOUNT, netValue, list.getAmount(), rules.discount()).because(listWorking))
                .whose("net price");
        Working taxWorking = rounding.working(tax, taxValue)
                .because(Working.of(TAX, taxValue, rules.tax(), net.getAmount()))
                .whose("tax");
        Working totalWorking = Working.of(TOTAL, total.getAmount(), net.getAmount(), tax.getAmount()).because(netWorking, taxWorking);
        if (!net.isZero()) {
            totalWorking = totalWorking.because(Working.of(MARGIN_KEPT, marginKept(), cost.getAmount(), net.getAmount()));
        }
        return totalWorking.in(rules.currency());
    }

    /** Cost, net price and total in one line. */
    @Override
    public String toString() {
        return "cost " + cost + ", net " + net + ", total " + total;
    }
}
