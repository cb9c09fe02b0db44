package io.github.bedjoint.calibration;

import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.working.Explained;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Verdict;
import io.github.bedjoint.working.Working;
import java.util.List;

/**
 * Do the new paces foretell jobs better than those in use? Each job of the log is foretold by paces that were fitted without it. Immutable.
 */
public final class PaceComparison implements Explained {
    private static final Source SOURCE = Source.handbook("cross-validation, leaving one out");

    static final Formula NEW = rms("left-out-error", "Error of the new paces", "e_new");
    static final Formula PRESENT = rms("present-error", "Error of the paces in use", "e_now");

    private final List<Double> newErrorsS;
    private final double newNormS;
    private final double presentNormS;
    private final double newS;
    private final double presentS;

    PaceComparison(List<Double> newErrorsS, List<Double> presentErrorsS) {
        this.newErrorsS = List.copyOf(newErrorsS);
        this.newNormS = norm(newErrorsS);
        this.presentNormS = norm(presentErrorsS);
        this.newS = newNormS / Math.sqrt(newErrorsS.size());
        this.presentS = presentNormS / Math.sqrt(newErrorsS.size());
    }

    private static Formula rms(String name, String title, String letter) {
        return Formula.of(
                "calibration." + name,
                title + ", root mean square",
                new Symbol(letter, Measure.TIME, title),
                "D / sqrt(n)",
                SOURCE,
                new Symbol("D", Measure.TIME, "root of the sum of squared errors"),
                Symbol.number("n", "jobs"));
    }

    private static double norm(List<Double> errors) {
        return Math.sqrt(errors.stream().mapToDouble(e -> e * e).sum());
    }

    /**
     * The error of each job, foretold without it, by the new paces.
     *
     * @return seconds, hours taken less hours foretold
     */
    public List<Double> leftOutErrorsS() {
        return newErrorsS;
    }

    /**
     * The error of the new paces.
     *
     * @return root mean square in seconds
     */
    public double newErrorS() {
        return newS;
    }

    /**
     * The error of the paces in use.
     *
     * @return root mean square in seconds
     */
    public double presentErrorS() {
        return presentS;
    }

    /**
     * Whether the new paces foretell jobs better.
     *
     * @return true if their error is smaller
     */
    public boolean isBetter() {
        return newS < presentS;
    }

    /**
     * The finding in a sentence.
     *
     * @return fine where the new paces are better, a caution where they are not
     */
    public Verdict verdict() {
        String errors = Measure.TIME.print(newS, UnitStyle.METRIC) + " against " + Measure.TIME.print(presentS, UnitStyle.METRIC) + " a job";
        return isBetter()
                ? new Verdict(Verdict.Level.FINE, "paces", "The new paces miss jobs they have not seen by less: " + errors, SOURCE)
                : new Verdict(Verdict.Level.CAUTION, "paces", "The paces in use are as good or better: " + errors + ". Maybe keep them", SOURCE);
    }

    @Override
    public Working working() {
        return Working.group(
                "New paces against those in use",
                List.of(Working.of(NEW, newS, newNormS, newErrorsS.size()), Working.of(PRESENT, presentS, presentNormS, newErrorsS.size())));
    }

    /** Which paces miss by less, and by how much. */
    @Override
    public String toString() {
        return verdict().reason();
    }
}
