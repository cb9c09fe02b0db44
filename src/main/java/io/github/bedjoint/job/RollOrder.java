package io.github.bedjoint.job;

import io.github.bedjoint.film.RollOffer;
import io.github.bedjoint.price.CostLine;
import io.github.bedjoint.price.LineKind;
import io.github.bedjoint.price.OrderQuantity;
import io.github.bedjoint.rolls.OpenedRoll;
import io.github.bedjoint.rolls.RollPlan;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * How many rolls of an offer are ordered for those that a plan opens.
 *
 * @param kind     film or laminate
 * @param name     what it is
 * @param offer    the roll on offer
 * @param quantity rolls needed, and ordered in whole cartons and at least the minimum
 */
public record RollOrder(LineKind kind, String name, RollOffer offer, OrderQuantity quantity) {

    /** One order for each kind of roll that is opened. */
    static List<RollOrder> of(LineKind kind, String name, List<RollOffer> offers, Map<String, Integer> counts) {
        List<RollOrder> orders = new ArrayList<>();
        for (RollOffer offer : offers) {
            int count = counts.getOrDefault(offer.id(), 0);
            if (count > 0) {
                orders.add(new RollOrder(kind, name, offer, quantity(offer, count)));
            }
        }
        return List.copyOf(orders);
    }

    /** What is ordered of an offer where so many rolls are needed. */
    static OrderQuantity quantity(RollOffer offer, int needed) {
        return new OrderQuantity(needed, offer.leastOrder(), offer.inCarton());
    }

    /** How many rolls of each offer a plan opens. */
    static Map<String, Integer> counts(@Nullable RollPlan plan) {
        Map<String, Integer> counts = new HashMap<>();
        for (OpenedRoll roll : plan == null ? List.<OpenedRoll>of() : plan.rolls()) {
            counts.merge(roll.stockId(), 1, Integer::sum);
        }
        return counts;
    }

    /**
     * The line that pays for it.
     *
     * @return rolls ordered times the price of each
     */
    public CostLine line() {
        return quantity.line(kind, name + ", roll " + offer.id(), offer.price());
    }

    /** What is ordered and what of it goes on the shelf: {@code A-10: 4 ordered, 1 on the shelf}. */
    @Override
    public String toString() {
        return offer.id() + ": " + quantity.ordered() + " ordered, " + quantity.left() + " on the shelf";
    }
}
