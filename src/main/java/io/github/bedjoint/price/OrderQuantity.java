package io.github.bedjoint.price;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Print;
import io.github.bedjoint.working.Explained;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Working;
import java.util.List;
import org.joda.money.Money;

/**
 * How many rolls must be ordered when a supplier sells whole cartons and at least so many; what is over goes on the shelf.
 *
 * <p>Rolls are planned first and ordered after: with cartons another mix of rolls may be cheaper than the one that was planned. Immutable.
 *
 * @param needed   rolls that the plan opens, 0 to a million
 * @param least    the least that is sold, 0 to a million
 * @param inCarton rolls in a carton, 1 to 1000
 */
public record OrderQuantity(int needed, int least, int inCarton) implements Explained {
    static final Formula ORDERED = Formula.of(
            "price.ordered", "Rolls to order", Symbol.number("k_o", "rolls ordered"), "max(ceil(k / c), ceil(m / c)) * c",
            Source.practice("whole cartons, at least the minimum order"), Symbol.number("k", "rolls needed"),
            Symbol.number("c", "rolls in a carton"), Symbol.number("m", "minimum order"));

    /**
     * Checks the counts.
     *
     * @param needed   rolls that the plan opens, 0 to a million
     * @param least    the least that is sold, 0 to a million
     * @param inCarton rolls in a carton, 1 to 1000
     * @throws io.github.bedjoint.units.RefusedException if one is out of range
     */
    public OrderQuantity {
        Door.count("rolls needed", needed, 0, 1_000_000);
        Door.count("minimum order", least, 0, 1_000_000);
        Door.count("rolls in a carton", inCarton, 1, 1000);
    }

    /**
     * The rolls to order.
     *
     * @return whole cartons that hold what is needed and the minimum; 0 where nothing is needed
     */
    public int ordered() {
        return needed == 0 ? 0 : Math.max(cartons(needed), cartons(least)) * inCarton;
    }

    /**
     * The rolls that are left.
     *
     * @return ordered less needed
     */
    public int left() {
        return ordered() - needed;
    }

    private int cartons(int rolls) {
        return (rolls + inCarton - 1) / inCarton;
    }

    /**
     * The line that pays for the order.
     *
     * @param kind  film or laminate
     * @param title what the customer reads
     * @param each  the price of a roll
     * @return the line
     * @throws io.github.bedjoint.units.RefusedException if the title is blank or the price negative
     */
    public CostLine line(LineKind kind, String title, Money each) {
        return CostLine.each(kind, title, ordered(), each);
    }

    @Override
    public Working working() {
        return needed == 0
                ? Working.group(ORDERED.title(), List.of()).noting("Nothing is needed, so nothing is ordered.")
                : Working.of(ORDERED, ordered(), needed, inCarton, least);
    }

    /** How many are ordered and why. */
    @Override
    public String toString() {
        return Print.count(ordered(), "roll") + " ordered: " + needed + " needed, at least " + least + ", " + inCarton + " in a carton";
    }
}
