package io.github.bedjoint.calibration;

import io.github.bedjoint.labour.Amounts;
import io.github.bedjoint.labour.Driver;
import io.github.bedjoint.labour.Pace;
import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.working.Explained;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Verdict;
import io.github.bedjoint.working.Working;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.statistics.distribution.TDistribution;

/**
 * Paces fitted to a log, how sure they are, and what stands against them; or the reasons why the log gives none. Immutable.
 *
 * <p>Where negative paces were not accepted, standard errors and intervals take the drivers held at zero as left out.
 */
public final class PaceFit implements Explained {
    static final Formula RESIDUAL = Formula.of(
            "calibration.residual-deviation",
            "Residual standard deviation",
            new Symbol("s", Measure.TIME, "residual standard deviation"),
            "D / sqrt(n - p)",
            Source.handbook("linear regression: residual variance over degrees of freedom"),
            new Symbol("D", Measure.TIME, "root of the sum of squared residuals, by weight"),
            Symbol.number("n", "jobs"),
            Symbol.number("p", "paces fitted"));

    private final Problem problem;
    private final List<String> reasons;
    private final List<FittedPace> paces;
    private final List<Integer> fitted;
    private final double[][] covariance;
    private final double normS;
    private final double residualS;
    private final double condition;

    /** No fit. */
    private PaceFit(Problem problem, List<String> reasons, double condition) {
        this.problem = problem;
        this.reasons = List.copyOf(reasons);
        this.paces = List.of();
        this.fitted = List.of();
        this.covariance = new double[0][0];
        this.normS = 0;
        this.residualS = 0;
        this.condition = condition;
    }

    private PaceFit(Problem problem, double[] all, List<Integer> fitted, double condition) {
        Problem kept = problem.only(fitted);
        LeastSquares solved = new LeastSquares(kept.rows(), kept.hours(), kept.weights());
        this.problem = problem;
        this.reasons = List.of();
        this.fitted = List.copyOf(fitted);
        this.covariance = solved.covariance();
        this.normS = Math.sqrt(java.util.Arrays.stream(solved.residuals()).map(e -> e * e).sum());
        this.residualS = normS / Math.sqrt(problem.jobs() - fitted.size());
        this.condition = condition;
        List<FittedPace> list = new ArrayList<>();
        for (int j = 0; j < all.length; j++) {
            int at = fitted.indexOf(j);
            double spread = at < 0 ? 0 : kept.spread(at);
            double inflation = at < 0 ? 0 : covariance[at][at] * spread * spread;
            list.add(new FittedPace(problem.drivers().get(j), all[j], residualS, inflation, spread, at < 0));
        }
        this.paces = List.copyOf(list);
    }

    static PaceFit of(Problem problem) {
        List<String> shortages = problem.shortages();
        if (!shortages.isEmpty()) {
            return new PaceFit(problem, shortages, Double.POSITIVE_INFINITY);
        }
        double condition = new LeastSquares(problem.rows(), problem.hours(), problem.weights()).condition();
        double[] all = problem.paces();
        List<Integer> fitted = IntStream.range(0, all.length)
                .filter(j -> problem.sign() == Calibration.Sign.FREE || all[j] > 0)
                .boxed()
                .toList();
        if (fitted.isEmpty()) {
            return new PaceFit(problem, List.of("All paces would be zero: the hours do not grow with any driver."), condition);
        }
        PaceFit fit = new PaceFit(problem, all, fitted, condition);
        Optional<String> alike = Findings.alike(problem, fit.paces, condition);
        return alike.isPresent() ? new PaceFit(problem, List.of(alike.get()), condition) : fit;
    }

    /**
     * Whether the log gives paces.
     *
     * @return false where it is too short or cannot tell its drivers apart
     */
    public boolean isPossible() {
        return reasons.isEmpty();
    }

    /**
     * Why the log gives no paces.
     *
     * @return reasons, none where it does
     */
    public List<String> reasons() {
        return reasons;
    }

    /**
     * The paces.
     *
     * @return one for each driver, none where it is not possible
     */
    public List<FittedPace> paces() {
        return paces;
    }

    /**
     * The pace of a driver.
     *
     * @param driver the driver
     * @return its pace
     * @throws RefusedException if it was not fitted
     */
    public FittedPace pace(Driver driver) {
        return paces.stream()
                .filter(pace -> pace.driver() == driver)
                .findFirst()
                .orElseThrow(() -> new RefusedException("driver", driver.name(), "must have been fitted", "Maybe look at reasons() first."));
    }

    /**
     * How far the log lies from the fitted hours.
     *
     * @return residual standard deviation in seconds, by weight
     */
    public double residualS() {
        return residualS;
    }

    /**
     * How hard it is to tell the drivers apart: largest over smallest singular value of the columns at length one.
     *
     * @return 1 if they have nothing in common; infinite where columns are missing
     */
    public double condition() {
        return condition;
    }

    /**
     * What stands against the paces.
     *
     * @return findings on likeness, sign and size of each pace; fine where there is nothing
     */
    public List<Verdict> verdicts() {
        return Findings.of(problem, reasons, paces);
    }

    /**
     * What the paces foretell for a new job of normal weight.
     *
     * @param amounts what there is to do
     * @param level   how sure the interval is to be, more than 0 and less than 1
     * @return hours and interval
     * @throws RefusedException if there is no fit or the level cannot be accepted
     */
    public Prediction predict(Amounts amounts, double level) {
        Door.number("level", level, new Range(0, true, 1, true));
        possible();
        List<Double> terms = new ArrayList<>();
        double[] x = new double[fitted.size()];
        for (int k = 0; k < x.length; k++) {
            Driver driver = problem.drivers().get(fitted.get(k));
            boolean perJob = driver == Driver.JOB && problem.isConstant(fitted.get(k)) && amounts.inner(Driver.JOB) == 0;
            x[k] = perJob ? problem.rows()[0][fitted.get(k)] : amounts.inner(driver);
            terms.add(x[k] * paces.get(fitted.get(k)).inner());
        }
        double leverage = 0;
        for (int a = 0; a < x.length; a++) {
            for (int b = 0; b < x.length; b++) {
                leverage += x[a] * covariance[a][b] * x[b];
            }
        }
        double quantile = TDistribution.of(problem.jobs() - fitted.size()).inverseCumulativeProbability(0.5 + level / 2);
        return new Prediction(terms, residualS, 1, leverage, quantile);
    }

    /**
     * Compares these paces with those in use, job by job, each foretold by paces fitted without it.
     *
     * @param present the paces in use, of paid time; a driver without one counts as zero
     * @return the comparison, or empty where a job cannot be left out because it alone has some driver
     * @throws RefusedException if there is no fit
     */
    public Optional<PaceComparison> against(Map<Driver, Pace> present) {
        possible();
        List<Double> left = new ArrayList<>();
        List<Double> now = new ArrayList<>();
        for (int i = 0; i < problem.jobs(); i++) {
            Problem without = problem.without(i);
            if (fitted.stream().anyMatch(without::isEmpty)) {
                return Optional.empty();
            }
            double[] paces = without.paces();
            double foretold = 0;
            double asPresent = 0;
            for (int j = 0; j < paces.length; j++) {
                foretold += paces[j] * problem.rows()[i][j];
                Pace pace = present.get(problem.drivers().get(j));
                asPresent += pace == null ? 0 : pace.inner() * problem.rows()[i][j];
            }
            left.add(problem.hours()[i] - foretold);
            now.add(problem.hours()[i] - asPresent);
        }
        return Optional.of(new PaceComparison(left, now));
    }

    private void possible() {
        if (!isPossible()) {
            throw new RefusedException("log", "without a fit", "must give paces: " + String.join(" ", reasons), "Maybe look at reasons() first.");
        }
    }

    @Override
    public Working working() {
        if (!isPossible()) {
            return Working.group("Paces from the log", List.of()).noting(String.join(" ", reasons));
        }
        Working residual = Working.of(RESIDUAL, residualS, normS, problem.jobs(), fitted.size())
                .noting("The paces are those for which the sum of squared residuals is least; " + problem.jobs() + " jobs.");
        List<Working> parts = new ArrayList<>();
        paces.forEach(pace -> parts.add(pace.isHeldAtZero() ? pace.working() : pace.working().because(residual)));
        return Working.group("Paces from the log", parts);
    }

    /** The paces and how far they miss, or why there are none. */
    @Override
    public String toString() {
        if (!isPossible()) {
            return "no paces: " + String.join(" ", reasons);
        }
        return String.join("; ", paces.stream().map(FittedPace::toString).toList()) + "; a job is missed by " + Measure.TIME.print(residualS, UnitStyle.METRIC);
    }
}
