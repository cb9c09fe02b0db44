package io.github.bedjoint.risk;

import io.github.bedjoint.job.Job;
import io.github.bedjoint.job.JobDates;
import io.github.bedjoint.risk.Input.Bound;
import io.github.bedjoint.risk.Input.Change;
import io.github.bedjoint.schedule.Span;
import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.RefusedException;
import java.util.function.BiFunction;

/** Inputs of the dates. */
final class DateInputs {
    private static final Range TWO_YEARS = Range.closed(0, 2 * 365 * 86_400.0);

    private DateInputs() {}

    static Bound cure(Job job) {
        return dated(job, (dates, value) -> dates.withCure(Span.elapsed(Door.time(value))));
    }

    static Bound wash(Job job) {
        return dated(job, (dates, value) -> dates.withWashBefore(Span.elapsed(Door.time(value))));
    }

    static Bound delay(Job job) {
        return dated(job, (dates, value) -> dates.withStart(dates.start().plusSeconds(Math.round(value))));
    }

    static Bound outgas() {
        return Bound.of(Measure.TIME, TWO_YEARS, (draft, value) -> draft.materials(
                materials -> materials.withFilm(materials.film().withOutgas(Door.time(value)), materials.filmRolls())));
    }

    static Bound rain(Job job) {
        checkDates(job);
        return Bound.of(Measure.NUMBER, Range.closed(0, 0.9), (draft, value) -> draft.rainChance(value));
    }

    private static Bound dated(Job job, BiFunction<JobDates, Double, JobDates> with) {
        checkDates(job);
        Change change = (draft, value) -> draft.dates(dates -> with.apply(dates, value));
        return Bound.of(Measure.TIME, TWO_YEARS, change);
    }

    private static void checkDates(Job job) {
        if (job.dates().isEmpty()) {
            throw new RefusedException("input", "of dates", "must belong to a job with a calendar", "Maybe the job's dates are missing.");
        }
    }
}
