package io.github.bedjoint.risk;

import io.github.bedjoint.job.Job;
import io.github.bedjoint.labour.Task;
import io.github.bedjoint.labour.WorkDay;
import io.github.bedjoint.risk.Input.Bound;
import io.github.bedjoint.texture.TakeUp;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Range;
import java.util.List;

/** Inputs of the hours. */
final class WorkInputs {
    private WorkInputs() {}

    static Bound pace(Job job, String id) {
        List<Task> tasks = job.labour().tasks().tasks();
        Task task = job.labour().tasks().task(id);
        int index = tasks.indexOf(task);
        return Bound.of(task.pace().measure(), Range.closed(0, 1e7), (draft, value) -> draft.pace(index, value));
    }

    static Bound tandem() {
        return Bound.of(Measure.NUMBER, Range.above(0, 1), (draft, value) -> draft.labour(
                labour -> labour.withSiteCrew(labour.siteCrew().withTandemEfficiency(value))));
    }

    static Bound travel() {
        return Bound.of(Measure.TIME, Range.closed(0, 86_400), (draft, value) -> draft.labour(labour -> {
            WorkDay day = labour.workDay();
            return labour.withWorkDay(new WorkDay(day.shiftS(), value, day.inShift()));
        }));
    }

    static Bound access(Job job, String wall) {
        job.survey().wall(wall);
        return Bound.of(Measure.NUMBER, Range.closed(0.1, 10), (draft, value) -> draft.access(wall, value));
    }

    static Bound ratio(Job job, String wall) {
        job.survey().wall(wall);
        return job.takeUp().equals(TakeUp.NONE)
                ? Bound.of(Measure.NUMBER, Range.closed(1, 20), (draft, value) -> draft.areaRatio(wall, value))
                : PlanInputs.ratio(wall);
    }
}
