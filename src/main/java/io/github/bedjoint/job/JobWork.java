package io.github.bedjoint.job;

import io.github.bedjoint.labour.LabourEstimate;
import io.github.bedjoint.price.PriceBuildUp;
import io.github.bedjoint.schedule.Timetable;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Hours, dates and price of a job whose panels and rolls are planned.
 *
 * @param labour    the hours
 * @param hires     what is hired, none where the hours are impossible
 * @param timetable the dates, or null where none are asked for or the hours are impossible
 * @param price     the price, or null where the hours are impossible
 * @param reasons   why the work cannot be done as given
 */
record JobWork(
        LabourEstimate labour, List<JobHire> hires, @Nullable Timetable timetable, @Nullable PriceBuildUp price, List<String> reasons) {

    static JobWork of(Job job, JobPlan plan) {
        LabourEstimate hours = LabourJob.estimate(job, plan.places());
        List<String> reasons = new ArrayList<>(hours.reasons());
        if (!hours.isPossible()) {
            return new JobWork(hours, List.of(), null, null, List.copyOf(reasons));
        }
        Timetable dates = job.dates().isPresent() ? new JobNetwork(job, hours).network().plan() : null;
        if (dates != null) {
            reasons.addAll(dates.reasons());
        }
        List<JobHire> hires = JobHire.of(job, plan.accesses(), hours);
        PriceBuildUp price = PriceBuildUp.of(new JobLines(job).of(plan, hours, hires), hours.totalPaid(), job.rules());
        return new JobWork(hours, hires, dates, price, List.copyOf(reasons));
    }
}
