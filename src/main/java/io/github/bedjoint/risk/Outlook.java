package io.github.bedjoint.risk;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Working;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * How one figure of a job is spread over the simulated jobs that can be done. Figures are in the unit that {@link Outcome} says. Immutable.
 *
 * <p>Percentiles are of type 7 of Hyndman and Fan: linear between the order statistics, the first at 0 and the last at 1.
 */
public final class Outlook {
    private static final Source TYPE_7 =
            Source.handbook("Hyndman and Fan, Sample Quantiles in Statistical Packages, The American Statistician 50 (1996), type 7");

    static final Formula PERCENTILE = Formula.of(
            "risk.percentile", "Percentile, type 7", Symbol.number("Q", "percentile"), "x_k + (h - k) * (x_l - x_k)", TYPE_7,
            Symbol.number("x_k", "figure at the rank below"), Symbol.number("h", "rank asked for, counted from 0"),
            Symbol.number("k", "rank below"), Symbol.number("x_l", "figure at the rank above"));
    static final Formula RANK = Formula.of(
            "risk.rank", "Rank of a percentile, type 7", Symbol.number("h", "rank asked for, counted from 0"), "(n - 1) * p", TYPE_7,
            Symbol.number("n", "simulated jobs that can be done"), Symbol.number("p", "share of them below"));

    private final Outcome outcome;
    private final double[] sorted;
    private final List<InputShare> shares;
    private final double jointly;

    private Outlook(Outcome outcome, double[] sorted, List<InputShare> shares, double jointly) {
        this.outcome = outcome;
        this.sorted = sorted;
        this.shares = shares;
        this.jointly = jointly;
    }

    /**
     * What one input alone explains.
     *
     * @param input the input
     * @param share its first-order share of the variance, 0 to 1
     */
    public record InputShare(Input input, double share) {}

    static Outlook of(Outcome outcome, double[] figures, List<Input> inputs, List<Bins> bins) {
        double[] sorted = Arrays.stream(figures).filter(figure -> !Double.isNaN(figure)).sorted().toArray();
        List<InputShare> raw = new ArrayList<>();
        double sum = 0;
        for (int k = 0; k < inputs.size(); k++) {
            double share = bins.get(k).shareOf(figures);
            raw.add(new InputShare(inputs.get(k), share));
            sum += share;
        }
        // The shares are estimates; together they may pass 1 by chance, never by meaning.
        double scale = Math.max(1, sum);
        boolean spread = sorted.length > 0 && sorted[0] < sorted[sorted.length - 1];
        List<InputShare> shares = raw.stream().map(one -> new InputShare(one.input(), one.share() / scale)).toList();
        return new Outlook(outcome, sorted, shares, spread ? Math.max(0, 1 - sum) : 0);
    }

    /**
     * Which figure it is.
     *
     * @return the outcome
     */
    public Outcome outcome() {
        return outcome;
    }

    /**
     * How many simulated jobs have the figure.
     *
     * @return the count
     */
    public int count() {
        return sorted.length;
    }

    /**
     * The figure that a share of the simulated jobs does not pass.
     *
     * @param share 0 to 1; 0.8 is P80
     * @return the percentile of type 7
     * @throws io.github.bedjoint.units.RefusedException if the share is out of range
     * @throws IllegalStateException if no simulated job has the figure
     */
    public double percentile(double share) {
        int last = some() - 1;
        double rank = last * Door.number("share", share, Range.SHARE);
        int below = (int) Math.floor(rank);
        double at = sorted[below];
        return at + (rank - below) * (sorted[Math.min(last, below + 1)] - at);
    }

    /**
     * How a percentile came about.
     *
     * @param share 0 to 1
     * @return the working
     * @throws io.github.bedjoint.units.RefusedException if the share is out of range
     * @throws IllegalStateException if no simulated job has the figure
     */
    public Working working(double share) {
        double figure = percentile(share);
        double rank = (sorted.length - 1) * share;
        int below = (int) Math.floor(rank);
        return Working.of(PERCENTILE, figure, sorted[below], rank, below, sorted[Math.min(sorted.length - 1, below + 1)])
                .whose(outcome.title())
                .because(Working.of(RANK, rank, sorted.length, share));
    }

    /**
     * The mean.
     *
     * @return the sum in rising order, divided by the count
     * @throws IllegalStateException if no simulated job has the figure
     */
    public double mean() {
        int n = some();
        // Taken from the least figure, so that large ones such as dates keep their digits.
        double sum = 0;
        for (double figure : sorted) {
            sum += figure - sorted[0];
        }
        return sorted[0] + sum / n;
    }

    /**
     * The standard deviation.
     *
     * @return the root of the mean square from the mean, with n - 1; 0 for one simulated job
     * @throws IllegalStateException if no simulated job has the figure
     */
    public double deviation() {
        double mean = mean();
        double squares = 0;
        for (double figure : sorted) {
            squares += (figure - mean) * (figure - mean);
        }
        return sorted.length == 1 ? 0 : Math.sqrt(squares / (sorted.length - 1));
    }

    /**
     * How many of the simulated jobs pass a figure.
     *
     * @param limit the figure
     * @return the share above it, 0 to 1
     * @throws IllegalStateException if no simulated job has the figure
     */
    public double chanceAbove(double limit) {
        int n = some();
        return (double) Arrays.stream(sorted).filter(figure -> figure > limit).count() / n;
    }

    /**
     * What each input alone explains of the variance.
     *
     * <p>First-order shares, estimated as the correlation ratio of the simulated jobs in groups of like values, with Kelley's correction.
     *
     * @return one for each input, in the order of their names
     */
    public List<InputShare> shares() {
        return shares;
    }

    /**
     * What no input explains alone: inputs that act jointly, weather by its days, and the rest.
     *
     * @return what is left of 1, or 0 where the figure is the same in all simulated jobs
     */
    public double jointly() {
        return jointly;
    }

    private int some() {
        if (sorted.length == 0) {
            throw new IllegalStateException("No simulated job has a figure for " + outcome.title());
        }
        return sorted.length;
    }

    /** The figure's title, count and P50, P80, P95 in its unit. */
    @Override
    public String toString() {
        return outcome.title() + " of " + sorted.length + " simulated jobs"
                + (sorted.length == 0 ? "" : ": P50 " + percentile(0.5) + ", P80 " + percentile(0.8) + ", P95 " + percentile(0.95));
    }
}
