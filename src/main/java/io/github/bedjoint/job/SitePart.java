package io.github.bedjoint.job;

import io.github.bedjoint.labour.LabourEstimate;
import io.github.bedjoint.labour.TaskTime;
import io.github.bedjoint.labour.WorkDay;
import java.util.List;

/**
 * The installing days in two parts: setting up on the first day and wiping the first stretch of wall, and all the rest.
 *
 * <p>A crew wipes no more than it can heat before the window closes, and wipes the next stretch while it works on this one; so only the first
 * stretch is waited for. Its share of the wiping is the window over the work that is left, at most all of it.
 */
record SitePart(double wipeS, double installS) {
    private static final String WIPE = "wipe";

    static SitePart of(LabourEstimate labour, WorkDay day, long windowS) {
        int days = labour.siteDays().days();
        if (days == 0) {
            return new SitePart(0, 0);
        }
        double eachDayS = day.shiftS() - labour.siteDays().workPerDayS();
        double totalS = labour.siteElapsedS() + days * eachDayS;
        List<String> elsewhere = labour.trips().stream().flatMap(trip -> trip.trip().tasks().stream()).toList();
        double wipingS = elsewhere.contains(WIPE) ? 0 : labour.task(WIPE).map(TaskTime::elapsedS).orElse(0.0);
        if (wipingS == 0) {
            return new SitePart(0, totalS);
        }
        double leftS = labour.siteElapsedS() - wipingS;
        double firstS = wipingS * (leftS <= windowS ? 1 : windowS / leftS);
        return new SitePart(eachDayS + firstS, totalS - eachDayS - firstS);
    }
}
