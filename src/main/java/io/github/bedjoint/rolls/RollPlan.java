package io.github.bedjoint.rolls;

import io.github.bedjoint.units.Print;
import java.util.List;

/**
 * The answer to a job of cuts and stock: the rolls to open, what they cost, and how cheap any plan could be.
 *
 * @param cuts the job, as given
 * @param stock the stock, as given
 * @param terms how it was cut
 * @param rolls the rolls opened; empty if there is no plan
 * @param cost price of the rolls opened less the credits of their remnants, in minor money units; 0 if there is no plan
 * @param lowerBound no plan costs less, in minor money units
 * @param stop what ended the search
 * @param certificate shows the lower bound, or that no plan exists
 * @param shortages why there is no plan; empty if there is one
 * @param work counted work of the search
 */
public record RollPlan(
        List<Cut> cuts,
        List<Stock> stock,
        CuttingTerms terms,
        List<OpenedRoll> rolls,
        long cost,
        long lowerBound,
        Stop stop,
        Certificate certificate,
        List<Shortage> shortages,
        long work) {

    /**
     * Copies the lists.
     *
     * @param cuts as above
     * @param stock as above
     * @param terms as above
     * @param rolls as above
     * @param cost as above
     * @param lowerBound as above
     * @param stop as above
     * @param certificate as above
     * @param shortages as above
     * @param work as above
     */
    public RollPlan {
        cuts = List.copyOf(cuts);
        stock = List.copyOf(stock);
        rolls = List.copyOf(rolls);
        shortages = List.copyOf(shortages);
    }

    /**
     * Whether there is a plan.
     *
     * @return true if the rolls hold every cut
     */
    public boolean isFeasible() {
        return stop == Stop.PROVEN || stop == Stop.WORK_LIMIT;
    }

    /**
     * The row of the stock that a roll is taken from.
     *
     * @param roll a roll of this plan
     * @return its row
     * @throws IllegalArgumentException if the stock has no such row
     */
    public Stock row(OpenedRoll roll) {
        return stock.stream()
                .filter(row -> row.id().equals(roll.stockId()))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("the plan opens a roll '" + roll.stockId() + "' that is not in its stock"));
    }

    /**
     * Whether the plan is proven the cheapest.
     *
     * @return true if the cost equals the lower bound and the certificate shows it
     */
    public boolean isProven() {
        return stop == Stop.PROVEN;
    }

    /**
     * What may at most be saved by another plan.
     *
     * @return cost less lower bound, in minor money units, 0 or more; 0 if there is no plan
     */
    public long gap() {
        return isFeasible() ? cost - lowerBound : 0;
    }

    /** Rolls, cost and how sure it is, in one line: {@code 2 rolls, 39600 minor units of money, proven the cheapest}. */
    @Override
    public String toString() {
        if (!isFeasible()) {
            return "no plan: " + shortages;
        }
        return Print.count(rolls.size(), "roll") + ", " + cost + " minor units of money" + (isProven() ? ", proven the cheapest" : ", no plan costs less than " + lowerBound);
    }
}
