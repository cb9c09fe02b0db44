package io.github.bedjoint.price;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Range;
import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Time;
import org.joda.money.Money;

/**
 * What one change does to a price: one more hour, metre or roll.
 *
 * @param title  what changes
 * @param before the price without it
 * @param after  the price with it
 */
public record PriceEffect(String title, PriceBuildUp before, PriceBuildUp after) {

    /**
     * The effect of one more line.
     *
     * @param before the price without it
     * @param line   the line that is added, in the currency of the price
     * @param hours  person-hours that come with it, on which overhead by the hour is taken; not negative
     * @return the effect
     * @throws io.github.bedjoint.units.RefusedException if the line is in another currency or the hours are negative
     */
    public static PriceEffect of(PriceBuildUp before, CostLine line, Quantity<Time> hours) {
        List<CostLine> lines = new ArrayList<>(before.lines());
        lines.add(line);
        double more = Door.timeS("hours", hours, Range.closed(0, 1e9));
        return new PriceEffect(line.title(), before, PriceBuildUp.of(lines, Door.time(before.labourS() + more), before.rules()));
    }

    /**
     * What it costs the shop, with overhead and contingency.
     *
     * @return the difference of total costs; negative where it saves
     */
    public Money cost() {
        return after.cost().minus(before.cost());
    }

    /**
     * What it adds to the price before tax, if the price follows the cost.
     *
     * @return the difference of net prices
     */
    public Money net() {
        return after.net().minus(before.net());
    }

    /**
     * What the customer pays more, if the price follows the cost.
     *
     * @return the difference of totals
     */
    public Money total() {
        return after.total().minus(before.total());
    }

    /**
     * What is left of the margin when the price was quoted before and stays: the share of the old net price above the new cost.
     *
     * @return the margin kept at the old price, negative where the job loses money, 0 where that price is zero
     */
    public double marginAtOldPrice() {
        return before.net().isZero() ? 0 : 1 - after.cost().getAmount().doubleValue() / before.net().getAmount().doubleValue();
    }

    /** What changes, and by how much cost and total change. */
    @Override
    public String toString() {
        return title + ": cost " + cost() + ", total " + total();
    }
}
