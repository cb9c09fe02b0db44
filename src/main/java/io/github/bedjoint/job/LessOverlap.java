package io.github.bedjoint.job;

import io.github.bedjoint.film.Film;
import io.github.bedjoint.layout.LayoutPlanner;
import io.github.bedjoint.layout.PanelLayout;
import io.github.bedjoint.price.PriceEffect;
import io.github.bedjoint.rolls.Cut;
import io.github.bedjoint.rolls.RollPlan;
import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Print;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.Steps;
import io.github.bedjoint.units.UnitStyle;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;

/**
 * What a smaller overlap of the panels would change in a job: planned again from the panels to the price, with all else as it is; and how
 * much smaller it must be until the film rolls cost less.
 *
 * <p>The overlap is the one set on the layout, or else the least that the film asks for. A smaller one may lie below what the film asks for:
 * that is said, and is for the maker of the film to allow. Immutable.
 */
public final class LessOverlap {
    private static final int MOST_PLANS = 20;

    private final JobCost before;
    private final long lessSteps;
    private final @Nullable JobCost after;
    private final @Nullable JobCost enough;
    private final long tried;

    private LessOverlap(JobCost before, long lessSteps) {
        this.before = before;
        this.lessSteps = lessSteps;
        long overlap = overlapSteps();
        long least = overlap;
        JobCost first = null;
        JobCost found = null;
        for (int k = 1; k <= MOST_PLANS && found == null && overlap - k * lessSteps > 0; k++) {
            least = overlap - k * lessSteps;
            Job job = with(least);
            if (k == 1) {
                first = Optional.of(JobCost.of(job)).filter(JobCost::isPriced).orElse(null);
                found = first != null && saves(first.filmPlan()) ? first : null;
            } else {
                JobPlan plan = JobPlan.of(job);
                RollPlan film = plan.film();
                found = plan.isPossible() && film != null && saves(film) ? JobCost.of(job) : null;
            }
        }
        this.after = first;
        this.enough = found != null && found.isPriced() ? found : null;
        this.tried = least;
    }

    /**
     * Plans a job again.
     *
     * @param cost a job with a price
     * @param less how much smaller the overlap is, 0.1 mm to 1 m
     * @return what it would change
     * @throws io.github.bedjoint.units.RefusedException if the length is out of range
     * @throws IllegalStateException if the job has no price
     */
    public static LessOverlap of(JobCost cost, Quantity<Length> less) {
        cost.price();
        return new LessOverlap(cost, Steps.up(Door.lengthM("smaller overlap", less, Range.closed(1e-4, 1))));
    }

    private Job with(long overlap) {
        Job job = before.job();
        Film film = job.materials().film();
        LayoutPlanner layout = job.layout().overlapSteps() > 0 ? job.layout().withOverlap(Steps.toLength(overlap)) : job.layout();
        Film other = overlap < film.leastOverlapSteps() ? film.withOverlapRange(Steps.toLength(overlap), Steps.toLength(film.mostOverlapSteps())) : film;
        return job.toBuilder().layout(layout).materials(job.materials().withFilm(other, job.materials().filmRolls())).build();
    }

    private boolean saves(RollPlan film) {
        return film.isFeasible() && film.cost() < before.filmPlan().cost();
    }

    /**
     * The overlap that the job has.
     *
     * @return steps
     */
    public long overlapSteps() {
        long set = before.job().layout().overlapSteps();
        return set > 0 ? set : before.job().materials().film().leastOverlapSteps();
    }

    /**
     * Whether the smaller overlap is less than the film asks for.
     *
     * @return true if the film's least overlap is larger
     */
    public boolean isBelowFilm() {
        return overlapSteps() - lessSteps < before.job().materials().film().leastOverlapSteps();
    }

    /**
     * The job with the smaller overlap.
     *
     * @return the job costed, or empty where the overlap is not larger than what is taken off or the job cannot be done with it
     */
    public Optional<JobCost> after() {
        return Optional.ofNullable(after);
    }

    /**
     * What it does to the price: film, laminate, ink, and the hours that depend on panels and seams.
     *
     * @return the effect, or empty where there is no such job
     */
    public Optional<PriceEffect> effect() {
        return after().map(this::effect);
    }

    private PriceEffect effect(JobCost other) {
        return new PriceEffect("smaller overlap", before.price(), other.price());
    }

    /**
     * What the strips of film taken off all seams are worth at the prices of the film plan's certificate, by area: all panels together are worth
     * its lower bound. It would be earned only if film could be bought by the square metre.
     *
     * @return the worth, rounded to the currency
     */
    public Money rate() {
        double panelsM2 = 0;
        for (Cut cut : before.filmPlan().cuts()) {
            panelsM2 += Steps.toM(cut.widthSteps()) * Steps.toM(cut.lengthSteps()) * cut.quantity();
        }
        BigDecimal bound = Money.ofMinor(before.job().rules().currency(), before.filmPlan().lowerBound()).getAmount();
        BigDecimal share = BigDecimal.valueOf(panelsM2 == 0 ? 0 : seamM() * Steps.toM(lessSteps) / panelsM2);
        return Money.of(before.job().rules().currency(), bound.multiply(share), RoundingMode.HALF_UP);
    }

    private double seamM() {
        return before.layouts().stream().mapToDouble(PanelLayout::seamM).sum();
    }

    /**
     * The job with the largest overlap for which its film rolls cost less, of those smaller by once, twice and up to twenty times as much.
     *
     * @return the job costed, or empty where none of them saves film rolls
     */
    public Optional<JobCost> enough() {
        return Optional.ofNullable(enough);
    }

    /**
     * The overlap that was tried last: that of {@link #enough()}, or else the smallest that was tried.
     *
     * @return steps
     */
    public long lastOverlapSteps() {
        return tried;
    }

    /**
     * What it says, in words.
     *
     * @param style the reader's units
     * @return one or more lines of whole sentences
     */
    public List<String> lines(UnitStyle style) {
        String length = Print.cut(lessSteps, style);
        if (after == null) {
            return List.of("An overlap smaller by " + length + " leaves no job that can be done.");
        }
        List<String> lines = new ArrayList<>();
        lines.add("Overlap of " + Print.cut(overlapSteps() - lessSteps, style) + " in place of " + Print.cut(overlapSteps(), style)
                + (isBelowFilm() ? ", which is less than the film asks for" : "") + "; planned again: film rolls for " + film(after.filmPlan()) + "; " + changes(effect(after)) + ".");
        lines.add("At the prices of the certificate " + length + " off " + Measure.LENGTH.print(seamM(), style) + " of seams is worth " + rate()
                + ": a rate, which is earned only where film can be bought by the square metre.");
        JobCost found = enough;
        lines.add(found == null
                ? "No overlap down to " + Print.cut(tried, style) + " was found to save film rolls."
                : "The first saving of film rolls comes with an overlap of " + Print.cut(tried, style) + ": "
                        + Print.count(found.filmPlan().rolls().size(), "roll") + " for " + film(found.filmPlan()) + "; " + changes(effect(found)) + ".");
        return lines;
    }

    private static String changes(PriceEffect effect) {
        return "cost of the job " + effect.cost() + ", total " + effect.total();
    }

    private String film(RollPlan plan) {
        long less = before.filmPlan().cost() - plan.cost();
        return before.amount(plan.cost()) + (plan.isProven() ? "" : ", not proven the cheapest")
                + (less == 0 ? ", the same cost" : ", " + before.amount(Math.abs(less)) + (less > 0 ? " less" : " more"));
    }

    /** What it says in metric units, a line each. */
    @Override
    public String toString() {
        return String.join("\n", lines(UnitStyle.METRIC));
    }
}
