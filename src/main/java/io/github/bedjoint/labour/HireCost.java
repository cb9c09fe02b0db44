package io.github.bedjoint.labour;

import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Print;
import io.github.bedjoint.working.Explained;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Working;
import org.joda.money.Money;

/** What a hire costs, exact to the cent since days are whole. Immutable. */
public final class HireCost implements Explained {
    static final Formula FORMULA = Formula.of(
            "labour.hire-cost",
            "Cost of hire",
            new Symbol("H", Measure.MONEY, "cost of hire"),
            "D + n * max(d, d_min) * R",
            Source.practice("hire is charged by the day with a least number of days, and delivery once"),
            new Symbol("D", Measure.MONEY, "delivery and collection"),
            Symbol.number("n", "items"),
            Symbol.number("d", "days on site"),
            Symbol.number("d_min", "least days"),
            new Symbol("R", Measure.MONEY, "rate of one item for a day"));

    private final Hire hire;
    private final int days;
    private final int items;
    private final Money cost;

    HireCost(Hire hire, int days, int items) {
        this.hire = hire;
        this.days = days;
        this.items = items;
        this.cost = hire.delivery().plus(hire.dayRate().multipliedBy((long) items * Math.max(days, hire.leastDays())));
    }

    /**
     * The cost.
     *
     * @return delivery and charged days
     */
    public Money cost() {
        return cost;
    }

    /**
     * The days that are charged.
     *
     * @return days on site, or the least
     */
    public int chargedDays() {
        return Math.max(days, hire.leastDays());
    }

    @Override
    public Working working() {
        return Working.of(FORMULA, cost.getAmount(), hire.delivery().getAmount(), items, days, hire.leastDays(), hire.dayRate().getAmount())
                .whose(hire.name())
                .in(cost.getCurrencyUnit());
    }

    /** The cost and what it is made of. */
    @Override
    public String toString() {
        return cost + ": " + Print.count(items, hire.name()) + ", " + Print.count(chargedDays(), "day") + " at " + hire.dayRate()
                + ", delivery " + hire.delivery();
    }
}
