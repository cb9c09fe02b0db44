package io.github.bedjoint.job;

import io.github.bedjoint.film.RollOffer;
import io.github.bedjoint.labour.Crew;
import io.github.bedjoint.layout.Direction;
import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Print;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.waste.WastePart;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * One job costed in several ways, side by side: film, direction, crew, choice of rolls. Immutable; costing takes place once, when an
 * alternative is added.
 *
 * <p>The order is: what can be done, lower price, fewer panels, more kept remnant, drops before bands, and then as added.
 */
public final class Alternatives {
    private static final Comparator<Alternative> ORDER = Comparator.comparing((Alternative one) -> !one.cost().isPriced() || !one.cost().isPossible())
            .thenComparing(one -> !one.cost().isPriced())
            .thenComparing(one -> one.cost().isPriced() ? one.cost().total().getAmount() : BigDecimal.ZERO)
            .thenComparing(Alternative::panels)
            .thenComparing(one -> -one.keptM2())
            .thenComparing(one -> one.cost().layouts().stream().filter(layout -> layout.direction() == Direction.BANDS).count());

    private final Job base;
    private final List<Alternative> all;

    private Alternatives(Job base, List<Alternative> all) {
        this.base = base;
        this.all = all;
    }

    /**
     * One way to do a job.
     *
     * @param name what it is called
     * @param cost what it costs, or why it cannot be done
     */
    public record Alternative(String name, JobCost cost) {
        int panels() {
            return cost.layouts().stream().mapToInt(layout -> layout.panels().size()).sum();
        }

        double keptM2() {
            return cost.isPriced() ? cost.waste().partsM2().getOrDefault(WastePart.KEPT_REMNANT, 0.0) : 0;
        }
    }

    /**
     * The job as given, which is the first alternative.
     *
     * @param job the job
     * @return one alternative, called "as given"
     */
    public static Alternatives of(Job job) {
        return new Alternatives(job, List.of()).with("as given", job);
    }

    /**
     * The same with one more way.
     *
     * @param name what it is called, not used before
     * @param job  the job done that way, in the same currency
     * @return more alternatives
     * @throws RefusedException if the name is blank or used before, or the currency is another
     */
    public Alternatives with(String name, Job job) {
        String checked = Door.text("alternative", name);
        if (all.stream().anyMatch(one -> one.name().equals(checked))) {
            throw new RefusedException("alternative", "'" + checked + "'", "must differ from those before", "Maybe it was added twice.");
        }
        if (!job.rules().currency().equals(base.rules().currency())) {
            throw new RefusedException(
                    "alternative", "in " + job.rules().currency(), "must be in " + base.rules().currency(), "Maybe convert it first.");
        }
        List<Alternative> more = new ArrayList<>(all);
        more.add(new Alternative(checked, JobCost.of(job)));
        return new Alternatives(base, List.copyOf(more));
    }

    /**
     * The same with all drops and with all bands.
     *
     * @return two alternatives more
     */
    public Alternatives withDirections() {
        return with("drops", base.toBuilder().layout(base.layout().withDirection(Direction.DROPS)).build())
                .with("bands", base.toBuilder().layout(base.layout().withDirection(Direction.BANDS)).build());
    }

    /**
     * The same with crews of other sizes on site, at the tandem efficiency of the job.
     *
     * @param people how many, 1 to 50, each once
     * @return one alternative more for each
     * @throws RefusedException if a crew is out of range or stands twice
     */
    public Alternatives withSiteCrews(int... people) {
        Alternatives more = this;
        for (int count : people) {
            Crew crew = new Crew(count, base.labour().siteCrew().efficiency());
            more = more.with("crew of " + count, base.toBuilder().labour(base.labour().withSiteCrew(crew)).build());
        }
        return more;
    }

    /**
     * The same with each film roll on offer alone; those that no laminate covers are left out.
     *
     * @return one alternative more for each offer
     */
    public Alternatives withEachRollAlone() {
        Alternatives more = this;
        for (RollOffer offer : new FilmWidths(base.materials()).covered()) {
            Materials alone = base.materials().withFilm(base.materials().film(), List.of(offer));
            more = more.with("only roll " + offer.id(), base.toBuilder().materials(alone).build());
        }
        return more;
    }

    /**
     * All alternatives as added.
     *
     * @return the job as given first
     */
    public List<Alternative> all() {
        return all;
    }

    /**
     * All alternatives from best to worst.
     *
     * @return in the order described above
     */
    public List<Alternative> ranked() {
        return all.stream().sorted(ORDER).toList();
    }

    /**
     * The best that can be done.
     *
     * @return the first of {@link #ranked()}, or empty where none can be done
     */
    public Optional<Alternative> best() {
        return ranked().stream().findFirst().filter(one -> one.cost().isPossible());
    }

    /** A line for each, best first: name, total, panels, rolls, paid hours, days, hand-over; or why it cannot be done. */
    @Override
    public String toString() {
        StringBuilder out = new StringBuilder();
        for (Alternative one : ranked()) {
            out.append(one.name()).append(": ").append(summary(one)).append('\n');
        }
        return out.toString();
    }

    private static String summary(Alternative one) {
        JobCost cost = one.cost();
        if (!cost.isPriced()) {
            return String.join("; ", cost.reasons());
        }
        String dates = cost.timetable().filter(dated -> dated.isPossible()).map(dated -> ", ready " + dated.handOver().toLocalDate()).orElse("");
        return cost.total() + ", " + Print.count(one.panels(), "panel") + ", " + Print.count(cost.filmPlan().rolls().size(), "roll") + ", "
                + Print.fixed(cost.labour().totalPaidS() / 3600, 2) + " h, " + Print.count(cost.labour().siteDays().days(), "day") + dates
                + (cost.isPossible() ? "" : ", but " + String.join("; ", cost.reasons()));
    }
}
