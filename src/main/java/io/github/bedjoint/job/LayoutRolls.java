package io.github.bedjoint.job;

import io.github.bedjoint.layout.PanelLayout;
import io.github.bedjoint.rolls.LaminatePlan;
import io.github.bedjoint.rolls.RollPlan;
import io.github.bedjoint.rolls.Stop;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;

/**
 * One layout for each wall with the rolls that are opened for them.
 *
 * @param layouts  one for each wall
 * @param film     the film rolls, or why there are none
 * @param laminate the laminate of these film rolls, or null where there is none or they hold no panels
 * @param cost     film and laminate as ordered and everything else; null where rolls are missing
 * @param bound    no rolls for these layouts cost less with everything else; null where no rolls hold them
 */
record LayoutRolls(
        List<PanelLayout> layouts, RollPlan film, @Nullable LaminatePlan laminate, @Nullable BigDecimal cost, @Nullable BigDecimal bound) {
    static final Comparator<LayoutRolls> CHEAPEST_FIRST =
            Comparator.comparing(LayoutRolls::cost, Comparator.nullsLast(Comparator.naturalOrder())).thenComparing(LayoutRolls::panels);

    /**
     * Plans the rolls of layouts.
     *
     * @param atLeast what they cost at least with everything else, whatever the rolls
     * @param other   everything else
     * @param work    work on each plan
     */
    static LayoutRolls of(Job job, List<PanelLayout> layouts, BigDecimal atLeast, BigDecimal other, long work) {
        RollPlan film = RollJob.film(job, layouts, work);
        if (!film.isFeasible()) {
            return new LayoutRolls(layouts, film, null, null, film.stop() == Stop.INFEASIBLE ? null : atLeast);
        }
        OrderedRolls rolls = new OrderedRolls(job.materials().filmRolls());
        BigDecimal cost = other.add(money(job, rolls.cost(film)));
        BigDecimal bound = other.add(money(job, rolls.atLeast(film)));
        LaminatePlan laminate = RollJob.laminate(job, film, work).orElse(null);
        if (laminate == null) {
            return new LayoutRolls(layouts, film, null, cost, bound);
        }
        OrderedRolls covers = new OrderedRolls(job.materials().laminateRolls());
        RollPlan least = covers.isOneOfTheCheapest(laminate.plan()) ? laminate.plan() : RollJob.leastLaminate(job, film, work);
        return new LayoutRolls(layouts, film, laminate,
                laminate.plan().isFeasible() ? cost.add(money(job, covers.cost(laminate.plan()))) : null,
                least.stop() == Stop.INFEASIBLE ? null : bound.add(money(job, covers.atLeast(least))));
    }

    private static BigDecimal money(Job job, long minor) {
        return Money.ofMinor(job.rules().currency(), minor).getAmount();
    }

    BigDecimal known() {
        return Objects.requireNonNull(cost);
    }

    /** Whether more work on it might show cheaper rolls than those of another, or that there are none. */
    boolean isOpen(LayoutRolls other) {
        return bound != null && !bound.equals(cost) && (other.cost() == null || bound.compareTo(other.known()) < 0);
    }

    private int panels() {
        return layouts.stream().mapToInt(layout -> layout.panels().size()).sum();
    }
}
