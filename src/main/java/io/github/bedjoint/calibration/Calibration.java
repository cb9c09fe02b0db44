package io.github.bedjoint.calibration;

import io.github.bedjoint.labour.Driver;
import java.util.ArrayList;
import java.util.List;

/**
 * Fits paces to a job log by least squares: every job counts the same, paces may come out negative, and no time per job is assumed.
 *
 * <p>Stateless and immutable; the {@code with} methods give changed copies.
 */
public final class Calibration {
    /** How much each job counts. */
    public enum Weighting {
        /** Each the same. */
        EQUAL,
        /** As the log says. */
        GIVEN
    }

    /** Which paces are accepted. */
    public enum Sign {
        /** Any; a negative pace is a sign that the log cannot tell its drivers apart. */
        FREE,
        /** Zero or more. */
        NOT_NEGATIVE
    }

    private static final Calibration DEFAULTS = new Calibration(Weighting.EQUAL, Sign.FREE, false);

    private final Weighting weighting;
    private final Sign sign;
    private final boolean jobTime;

    private Calibration(Weighting weighting, Sign sign, boolean jobTime) {
        this.weighting = weighting;
        this.sign = sign;
        this.jobTime = jobTime;
    }

    /**
     * Ordinary least squares.
     *
     * @return a calibration
     */
    public static Calibration withDefaults() {
        return DEFAULTS;
    }

    /**
     * The same with other weights.
     *
     * @param how how much each job counts
     * @return a new calibration
     */
    public Calibration withWeighting(Weighting how) {
        return new Calibration(how, sign, jobTime);
    }

    /**
     * The same with or without a limit on paces.
     *
     * @param which which paces are accepted
     * @return a new calibration
     */
    public Calibration withSign(Sign which) {
        return new Calibration(weighting, which, jobTime);
    }

    /**
     * The same with a time per job, whatever its size, fitted as the pace of {@link Driver#JOB}.
     *
     * @param fitted whether to fit it
     * @return a new calibration
     */
    public Calibration withJobTime(boolean fitted) {
        return new Calibration(weighting, sign, fitted);
    }

    /**
     * Fits paces.
     *
     * @param log the jobs
     * @return the paces and how sure they are, or the reasons why the log gives none
     */
    public PaceFit fit(JobLog log) {
        List<Driver> drivers = new ArrayList<>(log.drivers());
        if (jobTime && !drivers.contains(Driver.JOB)) {
            drivers.add(0, Driver.JOB);
        }
        int n = log.entries().size();
        double[][] rows = new double[n][drivers.size()];
        double[] hours = new double[n];
        double[] weights = new double[n];
        for (int i = 0; i < n; i++) {
            LogEntry entry = log.entries().get(i);
            for (int j = 0; j < drivers.size(); j++) {
                rows[i][j] = jobTime && drivers.get(j) == Driver.JOB ? 1 : entry.amounts().inner(drivers.get(j));
            }
            hours[i] = entry.hoursS();
            weights[i] = weighting == Weighting.GIVEN ? entry.weight() : 1;
        }
        return PaceFit.of(new Problem(drivers, rows, hours, weights, sign));
    }
}
