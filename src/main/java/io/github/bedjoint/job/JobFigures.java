package io.github.bedjoint.job;

import io.github.bedjoint.schedule.Timetable;
import java.time.ZonedDateTime;
import java.util.List;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;

/**
 * The figures by which jobs are compared.
 *
 * @param paidS    paid time in all, in person-seconds
 * @param siteDays installing days
 * @param filmM    length of the film rolls opened, in metres
 * @param cost     total cost before profit and tax, or null where the hours are impossible
 * @param total    what the customer pays, or null where the hours are impossible
 * @param handOver the earliest hand-over, or null where the job has no calendar or no dates keep it
 * @param reasons  why the job cannot be done as given; empty where it can
 */
public record JobFigures(
        double paidS,
        int siteDays,
        double filmM,
        @Nullable Money cost,
        @Nullable Money total,
        @Nullable ZonedDateTime handOver,
        List<String> reasons) {

    static JobFigures of(JobWork work, double filmM) {
        Timetable dates = work.timetable();
        return new JobFigures(
                work.labour().totalPaidS(),
                work.labour().siteDays().days(),
                filmM,
                work.price() == null ? null : work.price().cost(),
                work.price() == null ? null : work.price().total(),
                dates == null || !dates.isPossible() ? null : dates.handOver(),
                work.reasons());
    }

    /**
     * Whether the job can be done.
     *
     * @return true if it has a price, and dates where dates are asked for
     */
    public boolean isPossible() {
        return reasons.isEmpty();
    }
}
