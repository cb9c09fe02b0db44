package io.github.bedjoint.labour;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.RefusedException;
import org.joda.money.Money;

/**
 * Something hired by the day, such as a scaffold or a lift: delivery and collection once, a rate for each day, and a least number of days. Immutable.
 *
 * @param name     what is hired
 * @param delivery delivery and collection, not negative
 * @param dayRate  rate of one for each day, not negative, in the same currency
 * @param leastDays days that are charged at least, 0 to 3650
 */
public record Hire(String name, Money delivery, Money dayRate, int leastDays) {

    /**
     * Checks every part.
     *
     * @param name     what is hired
     * @param delivery delivery and collection, not negative
     * @param dayRate  rate of one for each day, not negative, in the same currency
     * @param leastDays days that are charged at least, 0 to 3650
     * @throws RefusedException if a part cannot be accepted or the currencies differ
     */
    public Hire {
        name = Door.text("hire", name);
        Door.count("least days of hire", leastDays, 0, 3650);
        if (!delivery.getCurrencyUnit().equals(dayRate.getCurrencyUnit())) {
            throw new RefusedException(
                    "day rate of " + name, dayRate.toString(), "must be in " + delivery.getCurrencyUnit() + " as the delivery is", "Maybe convert one.");
        }
        if (delivery.isNegative() || dayRate.isNegative()) {
            throw new RefusedException(
                    "hire of " + name, delivery.isNegative() ? delivery.toString() : dayRate.toString(), "must not be negative", "Maybe a discount belongs to the price.");
        }
    }

    /**
     * What the hire costs.
     *
     * @param days  days on site, 0 to 3650; fewer than the least are charged as the least
     * @param items how many are hired, 1 to 100
     * @return the cost, exact
     * @throws RefusedException if a count cannot be accepted
     */
    public HireCost over(int days, int items) {
        return new HireCost(this, Door.count("days of hire", days, 0, 3650), Door.count("items hired", items, 1, 100));
    }
}
