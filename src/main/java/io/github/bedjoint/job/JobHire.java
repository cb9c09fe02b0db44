package io.github.bedjoint.job;

import io.github.bedjoint.job.SiteAccess.AccessHire;
import io.github.bedjoint.labour.HireCost;
import io.github.bedjoint.labour.LabourEstimate;
import io.github.bedjoint.labour.Trip;
import io.github.bedjoint.labour.TripTime;
import io.github.bedjoint.price.CostLine;
import io.github.bedjoint.price.LineKind;
import io.github.bedjoint.survey.Access;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * What one hire comes to: for the installing days, and where it comes for the washing too, for each trip on which that is done. Each time the
 * delivery and the least days are charged anew.
 */
record JobHire(AccessHire wanted, List<HireCost> stays) {
    /** The hires whose access some wall needs. */
    static List<JobHire> of(Job job, Set<Access> reached, LabourEstimate labour) {
        List<JobHire> hires = new ArrayList<>();
        for (AccessHire wanted : job.access().hires()) {
            if (reached.contains(wanted.access())) {
                hires.add(of(wanted, labour));
            }
        }
        return List.copyOf(hires);
    }

    private static JobHire of(AccessHire wanted, LabourEstimate labour) {
        List<HireCost> stays = new ArrayList<>();
        if (labour.siteDays().days() > 0) {
            stays.add(wanted.hire().over(labour.siteDays().days(), wanted.items()));
        }
        for (TripTime trip : labour.trips()) {
            if (wanted.alsoForWashing() && trip.trip().purpose() == Trip.Purpose.WASH) {
                stays.add(wanted.hire().over(trip.days(), wanted.items()));
            }
        }
        return new JobHire(wanted, List.copyOf(stays));
    }

    /** A line for the deliveries and one for the days. */
    List<CostLine> lines() {
        int days = stays.stream().mapToInt(HireCost::chargedDays).sum() * wanted.items();
        return List.of(
                CostLine.each(LineKind.HIRE, wanted.hire().name() + ", delivery and return", stays.size(), wanted.hire().delivery()),
                CostLine.each(LineKind.HIRE, wanted.hire().name() + ", days", days, wanted.hire().dayRate()));
    }
}
