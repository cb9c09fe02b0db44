package io.github.bedjoint.risk;

import io.github.bedjoint.job.Job;
import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Print;
import io.github.bedjoint.units.RefusedException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLongArray;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Time;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;

/**
 * How sure a job's hours, film, cost, price and hand-over are.
 *
 * <p>Simulated jobs that cannot be done are counted and told, and left out of the percentiles. P80 of a sum is not the sum of P80s: each
 * figure has its own. Immutable.
 */
public final class RiskResult {
    private final Job job;
    private final long seed;
    private final int count;
    private final Map<Outcome, Outlook> outlooks;
    private final int plans;
    private final boolean replanned;
    private final Map<Input, Long> redraws;
    private final int impossible;
    private final List<String> reasons;

    private RiskResult(
            Job job, long seed, int count, Map<Outcome, Outlook> outlooks, int plans, boolean replanned, Map<Input, Long> redraws,
            int impossible, List<String> reasons) {
        this.job = job;
        this.seed = seed;
        this.count = count;
        this.outlooks = outlooks;
        this.plans = plans;
        this.replanned = replanned;
        this.redraws = redraws;
        this.impossible = impossible;
        this.reasons = reasons;
    }

    static RiskResult of(
            Job job, List<Input> inputs, long seed, double[][] figures, List<Bins> bins, int plans, boolean replanned, AtomicLongArray redrawn,
            @Nullable String[] why) {
        Map<Outcome, Outlook> outlooks = new EnumMap<>(Outcome.class);
        for (Outcome outcome : Outcome.values()) {
            outlooks.put(outcome, Outlook.of(outcome, figures[outcome.ordinal()], inputs, bins));
        }
        Map<Input, Long> redraws = new LinkedHashMap<>();
        for (int k = 0; k < inputs.size(); k++) {
            redraws.put(inputs.get(k), redrawn.get(k));
        }
        List<String> reasons = new ArrayList<>();
        int impossible = 0;
        for (String reason : why) {
            if (reason != null && !reason.isEmpty()) {
                impossible++;
                if (reasons.size() < 5 && !reasons.contains(reason)) {
                    reasons.add(reason);
                }
            }
        }
        return new RiskResult(job, seed, why.length, outlooks, plans, replanned, redraws, impossible, List.copyOf(reasons));
    }

    /**
     * How one figure is spread.
     *
     * @param outcome the figure
     * @return its outlook
     */
    public Outlook of(Outcome outcome) {
        return outlooks.get(outcome);
    }

    /**
     * Paid time that a share of the simulated jobs does not pass.
     *
     * @param share 0 to 1; 0.8 is P80
     * @return person-hours
     * @throws io.github.bedjoint.units.RefusedException if the share is out of range
     * @throws IllegalStateException if no simulated job can be done
     */
    public Quantity<Time> paidTime(double share) {
        return Door.time(of(Outcome.PAID_TIME).percentile(share));
    }

    /**
     * Film opened that a share of the simulated jobs does not pass.
     *
     * @param share 0 to 1; 0.8 is P80
     * @return length of the rolls opened
     * @throws io.github.bedjoint.units.RefusedException if the share is out of range
     * @throws IllegalStateException if no simulated job can be done
     */
    public Quantity<Length> film(double share) {
        return Door.length(of(Outcome.FILM).percentile(share));
    }

    /**
     * Cost that a share of the simulated jobs does not pass.
     *
     * @param share 0 to 1; 0.8 is P80
     * @return total cost before profit and tax, rounded to the currency, halves up
     * @throws io.github.bedjoint.units.RefusedException if the share is out of range
     * @throws IllegalStateException if no simulated job can be done
     */
    public Money cost(double share) {
        return money(of(Outcome.COST).percentile(share));
    }

    /**
     * Price that a share of the simulated jobs does not pass, if each were priced by the job's rules.
     *
     * @param share 0 to 1; 0.8 is P80
     * @return the total with tax, rounded to the currency, halves up
     * @throws io.github.bedjoint.units.RefusedException if the share is out of range
     * @throws IllegalStateException if no simulated job can be done
     */
    public Money price(double share) {
        return money(of(Outcome.PRICE).percentile(share));
    }

    /**
     * The hand-over that a share of the simulated jobs does not pass.
     *
     * @param share 0 to 1; 0.8 is P80
     * @return the moment in the calendar's zone, to the second, or empty where the job has no calendar
     * @throws io.github.bedjoint.units.RefusedException if the share is out of range
     * @throws IllegalStateException if no simulated job can be done
     */
    public Optional<ZonedDateTime> handOver(double share) {
        return job.dates().map(dates -> Instant.ofEpochSecond(Math.round(of(Outcome.HAND_OVER).percentile(share)))
                .atZone(dates.calendar().zone()));
    }

    /**
     * The chance that the cost passes an amount, such as a net price already quoted: the chance to lose money by it.
     *
     * @param amount the amount, in the job's currency
     * @return the share of the simulated jobs whose cost is above it
     * @throws RefusedException if it is in another currency
     * @throws IllegalStateException if no simulated job can be done
     */
    public double chanceOfCostAbove(Money amount) {
        if (!job.rules().currency().equals(amount.getCurrencyUnit())) {
            throw new RefusedException("amount", amount.toString(), "must be in " + job.rules().currency(), "Maybe convert it first.");
        }
        return of(Outcome.COST).chanceAbove(amount.getAmount().doubleValue());
    }

    private Money money(double amount) {
        return Money.of(job.rules().currency(), BigDecimal.valueOf(amount), RoundingMode.HALF_UP);
    }

    /**
     * How many jobs were simulated.
     *
     * @return the count asked for
     */
    public int count() {
        return count;
    }

    /**
     * How many simulated jobs cannot be done.
     *
     * @return the count that is left out of all figures
     */
    public int impossible() {
        return impossible;
    }

    /**
     * Why simulated jobs cannot be done.
     *
     * @return the first five different reasons, by number of simulated job
     */
    public List<String> reasons() {
        return reasons;
    }

    /**
     * How often panels and rolls were planned: once for each distinct combination of the inputs that change them.
     *
     * @return 1 where no input changes them
     */
    public int plans() {
        return plans;
    }

    /**
     * How many draws of an input were thrown away because they lay below its limit.
     *
     * @param input one of the inputs
     * @return the count, 0 for an input that did not vary
     */
    public long redraws(Input input) {
        return redraws.getOrDefault(input, 0L);
    }

    /** Percentiles and shares as a small table, in metric units. */
    @Override
    public String toString() {
        StringBuilder out = new StringBuilder(job.name() + ": " + count + " simulated jobs, seed " + seed + ", " + impossible + " cannot be done\n");
        out.append(replanned
                ? "Panels and rolls planned anew for " + plans + " combinations of the inputs that change them"
                : "Panels and rolls planned once: no input changes them");
        out.append("; percentiles of type 7\n");
        reasons.forEach(reason -> out.append("Cannot be done: ").append(reason).append('\n'));
        if (impossible == count) {
            return out.toString();
        }
        line(out, "", "P50", "P80", "P95");
        line(out, Outcome.PAID_TIME.title(), hours(0.5), hours(0.8), hours(0.95));
        line(out, Outcome.FILM.title(), metres(0.5), metres(0.8), metres(0.95));
        line(out, Outcome.COST.title(), cost(0.5).toString(), cost(0.8).toString(), cost(0.95).toString());
        line(out, Outcome.PRICE.title(), price(0.5).toString(), price(0.8).toString(), price(0.95).toString());
        if (job.dates().isPresent()) {
            line(out, Outcome.HAND_OVER.title(), date(0.5), date(0.8), date(0.95));
        }
        out.append("Share of the variance of the price\n");
        of(Outcome.PRICE).shares().stream()
                .sorted(Comparator.comparingDouble(share -> -share.share()))
                .forEach(share -> out.append(Print.fixed(100 * share.share(), 1)).append(" % ").append(share.input()).append('\n'));
        return out.append(Print.fixed(100 * of(Outcome.PRICE).jointly(), 1)).append(" % jointly\n").toString();
    }

    private String hours(double share) {
        return Print.fixed(of(Outcome.PAID_TIME).percentile(share) / 3600, 2) + " h";
    }

    private String metres(double share) {
        return Print.fixed(of(Outcome.FILM).percentile(share), 2) + " m";
    }

    private String date(double share) {
        return handOver(share).map(moment -> moment.toLocalDateTime().withSecond(0).toString()).orElse("");
    }

    private static void line(StringBuilder out, String title, String... cells) {
        StringBuilder row = new StringBuilder(title);
        int column = 14;
        for (String cell : cells) {
            row.append(" ".repeat(Math.max(1, column - row.length()))).append(cell);
            column += 20;
        }
        out.append(row.toString().stripTrailing()).append('\n');
    }
}
