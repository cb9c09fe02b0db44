package io.github.bedjoint.calibration;

import io.github.bedjoint.units.Print;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What stands against fitted paces, in sentences. */
final class Findings {
    private static final double SERIOUS_INFLATION = 10;
    private static final double HOPELESS_INFLATION = 1_000;
    private static final double HOPELESS_CONDITION = 1e8;
    private static final Source INFLATION = Source.practice("a variance inflation above 10 is commonly taken as serious, above 1000 nothing can be told apart");
    private static final Source ERROR = Source.handbook("linear regression: a coefficient within two standard errors of zero is not told from zero");

    private Findings() {}

    /** Why the log cannot tell its drivers apart, or empty where it can. */
    static Optional<String> alike(Problem problem, List<FittedPace> paces, double condition) {
        int worst = 0;
        for (int j = 0; j < paces.size(); j++) {
            // What is not a number is worse than any.
            if (Double.compare(paces.get(j).inflation(), paces.get(worst).inflation()) > 0) {
                worst = j;
            }
        }
        double inflation = paces.get(worst).inflation();
        // Less than, so that what is not a number is refused.
        if (inflation < HOPELESS_INFLATION && condition < HOPELESS_CONDITION || paces.size() == 1) {
            return Optional.empty();
        }
        return Optional.of("The log cannot tell " + paces.get(worst).driver() + " from " + problem.drivers().get(problem.mostAlike(worst))
                + ": in every job they grow together (variance inflation " + shown(inflation) + ", condition " + shown(condition)
                + "). Maybe leave one of them out, or add jobs in which they differ.");
    }

    private static String shown(double value) {
        return value < 1e6 ? Print.number(value) : "over a million";
    }

    static List<Verdict> of(Problem problem, List<String> reasons, List<FittedPace> paces) {
        List<Verdict> verdicts = new ArrayList<>();
        reasons.forEach(reason -> verdicts.add(new Verdict(Verdict.Level.REFUSED, "log", reason, INFLATION)));
        for (int j = 0; j < paces.size(); j++) {
            FittedPace pace = paces.get(j);
            String subject = "pace of " + pace.driver();
            if (pace.isHeldAtZero()) {
                verdicts.add(new Verdict(Verdict.Level.WARNING, subject, "It would be negative and was held at zero", ERROR));
            } else if (pace.inner() < 0) {
                verdicts.add(new Verdict(Verdict.Level.WARNING, subject, "It is negative: the log does not tell it from other drivers. Maybe fit without negative paces", ERROR));
            } else if (Math.abs(pace.inner()) < 2 * pace.standardError()) {
                verdicts.add(new Verdict(
                        Verdict.Level.CAUTION,
                        subject,
                        "It is not told from zero: " + Print.number(pace.inner()) + " s with a standard error of " + Print.number(pace.standardError()) + " s",
                        ERROR));
            }
            if (pace.inflation() > SERIOUS_INFLATION && paces.size() > 1) {
                verdicts.add(new Verdict(
                        Verdict.Level.CAUTION,
                        subject,
                        "It is hard to tell from " + problem.drivers().get(problem.mostAlike(j)) + ": variance inflation " + Print.number(pace.inflation()),
                        INFLATION));
            }
        }
        if (verdicts.isEmpty()) {
            verdicts.add(new Verdict(Verdict.Level.FINE, "paces", "The log tells all drivers apart", INFLATION));
        }
        return List.copyOf(verdicts);
    }
}
