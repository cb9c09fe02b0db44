package io.github.bedjoint.job;

import io.github.bedjoint.cutting.LaminatePlan;
import io.github.bedjoint.layout.PanelLayout;
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
 * @param layouts   one for each wall
 * @param film      the film rolls, or why there are none
 * @param laminate  the laminate of these film rolls, or null where there is none or they hold no panels
 * @param cost      film and laminate as ordered and everything else; null where rolls are missing
 * @param bound     no rolls for these layouts cost less with everything else; null where no rolls hold them
 * @param filmBound the same without laminate; null where no film was found
 */
record LayoutRolls(
        List<PanelLayout> layouts, RollPlan film, @Nullable LaminatePlan laminate, @Nullable BigDecimal cost, @Nullable BigDecimal bound,
        @Nullable BigDecimal filmBound) {
    /** Work at most on the bound of the laminate. */
    private static final long BOUND_WORK = 2_000_000;

    static final Comparator<LayoutRolls> CHEAPEST_FIRST =
            Comparator.comparing(LayoutRolls::cost, Comparator.nullsLast(Comparator.naturalOrder())).thenComparing(LayoutRolls::panels);

    /**
     * Plans the rolls of layouts. The bound of the laminate is that of one roll, which any laminate opens.
     *
     * @param atLeast what they cost at least with everything else, whatever the rolls
     * @param other   everything else
     * @param work    work on each plan
     */
    static LayoutRolls of(Job job, List<PanelLayout> layouts, BigDecimal atLeast, BigDecimal other, long work) {
        RollPlan film = RollJob.film(job, layouts, work);
        if (!film.isFeasible()) {
            return new LayoutRolls(layouts, film, null, null, film.stop() == Stop.INFEASIBLE ? null : atLeast, null);
        }
        OrderedRolls rolls = new OrderedRolls(job.materials().filmRolls());
        BigDecimal cost = other.add(money(job, rolls.cost(film)));
        BigDecimal bound = other.add(money(job, rolls.atLeast(film)));
        LaminatePlan laminate = RollJob.laminate(job, film, work).orElse(null);
        if (laminate == null) {
            return new LayoutRolls(layouts, film, null, cost, bound, bound);
        }
        OrderedRolls covers = covers(job);
        BigDecimal covered = laminate.plan().isFeasible() ? cost.add(money(job, covers.cost(laminate.plan()))) : null;
        return new LayoutRolls(layouts, film, laminate, covered, bound.add(money(job, covers.leastOrder())).max(atLeast), bound);
    }

    /** The same with a bound of its laminate that is worked for, where that of one roll is below the cost. */
    LayoutRolls bounded(Job job) {
        if (laminate == null || filmBound == null || bound == null || cost != null && bound.compareTo(cost) >= 0) {
            return this;
        }
        RollPlan least = RollJob.leastLaminate(job, film, BOUND_WORK);
        BigDecimal closer = least.stop() == Stop.INFEASIBLE ? null : bound.max(filmBound.add(money(job, covers(job).atLeast(least))));
        return new LayoutRolls(layouts, film, laminate, cost, closer, filmBound);
    }

    private static OrderedRolls covers(Job job) {
        return new OrderedRolls(job.materials().laminateRolls());
    }

    private static BigDecimal money(Job job, long minor) {
        return Money.ofMinor(job.rules().currency(), minor).getAmount();
    }

    BigDecimal known() {
        return Objects.requireNonNull(cost);
    }

    boolean isBelow(@Nullable BigDecimal amount) {
        return bound != null && (amount == null || bound.compareTo(amount) < 0);
    }

    /** Whether more work on its plans might show cheaper rolls, or that there are none. */
    boolean isOpen() {
        return !film.isProven() || laminate != null && !laminate.plan().isProven();
    }

    private int panels() {
        return layouts.stream().mapToInt(layout -> layout.panels().size()).sum();
    }
}
