package io.github.bedjoint.job;

import java.util.Optional;
import org.joda.money.Money;

/**
 * How sure it is that no other layouts of the walls, with the rolls that they need, make the job cheaper.
 *
 * <p>Compared is what layouts decide: film and laminate rolls as ordered, less what remnants are worth; ink for what is printed; and by the
 * rates of the job the hours. Hire, days, disposal and what else is known only of the whole job is left out. Layouts are those that the
 * planner may choose, given its directions, starts and fit; the bound holds for all of them, with whichever film and laminate rolls, also where
 * panels share the width of a roll.
 *
 * @param layouts    combinations of layouts that were compared
 * @param plans      combinations of which film and laminate rolls were planned
 * @param cost       cost of the layouts and rolls chosen
 * @param lowerBound no layouts and rolls cost less
 * @param runnerUp   the best of the other combinations, or empty where there is none
 */
public record LayoutChoice(int layouts, int plans, Money cost, Money lowerBound, Optional<RunnerUp> runnerUp) {

    /**
     * The second best combination.
     *
     * @param what how it differs: panels and direction of each wall that is divided in another way
     * @param more what it costs more
     */
    public record RunnerUp(String what, Money more) {}

    /**
     * Whether the choice is proven for the whole job.
     *
     * @return true if the cost is the lower bound
     */
    public boolean isProven() {
        return gap().isZero();
    }

    /**
     * What other layouts and rolls may at most save.
     *
     * @return cost less lower bound, 0 or more
     */
    public Money gap() {
        return cost.minus(lowerBound);
    }

    /** Cost, how sure it is, and the runner-up, in one line. */
    @Override
    public String toString() {
        String sure = isProven() ? "proven the cheapest for the whole job" : "within " + gap() + " of the cheapest for the whole job";
        return cost + " for rolls and work that depend on the layout, " + sure
                + runnerUp.map(other -> "; next: " + other.what() + ", " + other.more() + " more").orElse("");
    }
}
