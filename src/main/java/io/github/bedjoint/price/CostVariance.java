package io.github.bedjoint.price;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.working.Explained;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Working;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.measure.Quantity;
import javax.measure.quantity.Time;
import org.joda.money.Money;

/**
 * After the job: why it cost more or less than estimated, told apart as standard costing does.
 *
 * <p>Positive is dearer than estimated (adverse), negative cheaper (favourable). All parts add up to the difference of the costs exactly.
 * Lines are matched by kind and title; a line on one side only is usage altogether. Immutable.
 */
public final class CostVariance implements Explained {
    private static final Source SOURCE = Source.handbook("standard costing: variances between estimated and actual cost");
    private static final Symbol ABSORBED = new Symbol("O_b", Measure.MONEY, "overhead that the actual work bears by the shop's rule");

    static final Formula SPENDING = Formula.of(
            "price.overhead-spending", "Overhead spending variance", new Symbol("V_s", Measure.MONEY, "overhead spending variance"), "O_a - O_b",
            SOURCE, new Symbol("O_a", Measure.MONEY, "actual overhead"), ABSORBED);
    static final Formula EFFICIENCY = Formula.of(
            "price.overhead-efficiency", "Overhead efficiency variance", new Symbol("V_e", Measure.MONEY, "overhead efficiency variance"),
            "O_b - O_e", SOURCE, ABSORBED, new Symbol("O_e", Measure.MONEY, "estimated overhead"));
    static final Formula TOTAL = Formula.of(
            "price.variance", "Actual cost less estimated cost", new Symbol("V", Measure.MONEY, "difference of costs"), "sum(V_i)", SOURCE,
            new Symbol("V_i", Measure.MONEY, "variance"));

    private final PriceBuildUp estimate;
    private final List<LineVariance> lines;
    private final Money actualOverhead;
    private final Money absorbed;
    private final Money actualCost;
    private final Map<VarianceKind, Money> parts = new EnumMap<>(VarianceKind.class);

    private CostVariance(PriceBuildUp estimate, List<CostLine> actual, double actualS, Money actualOverhead) {
        PriceRules rules = estimate.rules();
        Rounding rounding = rules.rounding();
        this.estimate = estimate;
        this.lines = matched(estimate.lines(), actual, rounding);
        this.actualOverhead = actualOverhead;
        Money direct = Money.zero(rules.currency());
        Money labour = direct;
        for (CostLine line : actual) {
            direct = direct.plus(line.amount());
            labour = VarianceKind.price(line.kind()) == VarianceKind.LABOUR_RATE ? labour.plus(line.amount()) : labour;
        }
        absorbed = rounding.round(rules.currency(), rules.overhead().of(direct.getAmount(), labour.getAmount(), actualS));
        actualCost = direct.plus(actualOverhead);
        for (VarianceKind kind : VarianceKind.values()) {
            parts.put(kind, Money.zero(rules.currency()));
        }
        for (LineVariance line : lines) {
            parts.merge(VarianceKind.price(line.kind()), line.price(), Money::plus);
            parts.merge(VarianceKind.usage(line.kind()), line.usage(), Money::plus);
            parts.merge(VarianceKind.ROUNDING, line.leftOver(), Money::plus);
        }
        parts.put(VarianceKind.OVERHEAD_SPENDING, actualOverhead.minus(absorbed));
        parts.put(VarianceKind.OVERHEAD_EFFICIENCY, absorbed.minus(estimate.overhead()));
        parts.put(VarianceKind.CONTINGENCY, estimate.contingency().negated());
    }

    /**
     * The variances of a job.
     *
     * @param estimate       the price as estimated
     * @param actual         the lines as they were in the end, in the currency of the estimate, each kind and title once
     * @param actualHours    the person-hours as they were in the end, not negative
     * @param actualOverhead the overhead as it was in the end
     * @return the variances
     * @throws RefusedException if a line is in another currency, stands twice, or changed what it is measured in
     */
    public static CostVariance of(PriceBuildUp estimate, List<CostLine> actual, Quantity<Time> actualHours, Money actualOverhead) {
        actual.forEach(line -> estimate.rules().same(line.title(), line.amount().getCurrencyUnit()));
        estimate.rules().same("actual overhead", actualOverhead.getCurrencyUnit());
        double hours = Door.timeS("actual person-hours", actualHours, Range.closed(0, 1e12));
        return new CostVariance(estimate, List.copyOf(actual), hours, actualOverhead);
    }

    private static List<LineVariance> matched(List<CostLine> estimated, List<CostLine> actual, Rounding rounding) {
        Map<String, CostLine> left = new LinkedHashMap<>();
        for (CostLine line : actual) {
            if (left.put(key(line), line) != null) {
                throw new RefusedException("actual line", line.title() + " twice", "must stand once", "Maybe add the two up.");
            }
        }
        List<LineVariance> found = new ArrayList<>();
        for (CostLine line : estimated) {
            CostLine match = left.remove(key(line));
            found.add(match == null ? LineVariance.saved(line, rounding) : LineVariance.of(line, match, rounding));
        }
        left.values().forEach(line -> found.add(LineVariance.unplanned(line, rounding)));
        return List.copyOf(found);
    }

    private static String key(CostLine line) {
        return line.kind() + " " + line.title();
    }

    /**
     * The variances of each line.
     *
     * @return in the order of the estimate, then lines that nobody had estimated
     */
    public List<LineVariance> lines() {
        return lines;
    }

    /**
     * One kind of variance over all lines.
     *
     * @param kind the kind
     * @return its amount; positive is dearer than estimated
     */
    public Money of(VarianceKind kind) {
        return parts.get(kind);
    }

    /**
     * The whole difference.
     *
     * @return actual less estimated cost: the sum of all kinds
     */
    public Money total() {
        return actualCost.minus(estimate.cost());
    }

    /**
     * What the job cost in the end.
     *
     * @return the actual lines and the actual overhead
     */
    public Money actualCost() {
        return actualCost;
    }

    @Override
    public Working working() {
        BigDecimal bears = absorbed.getAmount();
        List<Working> reasons = new ArrayList<>();
        lines.forEach(line -> reasons.add(line.working()));
        reasons.add(Working.of(SPENDING, of(VarianceKind.OVERHEAD_SPENDING).getAmount(), actualOverhead.getAmount(), bears));
        reasons.add(Working.of(
                EFFICIENCY, of(VarianceKind.OVERHEAD_EFFICIENCY).getAmount(), bears, estimate.overhead().getAmount()));
        return Working.sum(TOTAL, total().getAmount(), parts.values().stream().map(Money::getAmount).toList())
                .because(reasons.toArray(Working[]::new))
                .in(estimate.rules().currency());
    }

    /** A line for each kind that is not zero, and the total. */
    @Override
    public String toString() {
        StringBuilder out = new StringBuilder();
        parts.forEach((kind, amount) -> {
            if (!amount.isZero()) {
                out.append(kind.title()).append(": ").append(amount).append(amount.isPositive() ? " adverse\n" : " favourable\n");
            }
        });
        return out.append("Actual less estimated cost: ").append(total()).toString();
    }
}
