package io.github.bedjoint.jobfile;

import io.github.bedjoint.job.Job;
import io.github.bedjoint.labour.Allowance;
import io.github.bedjoint.labour.Labour;
import io.github.bedjoint.labour.Premium;
import io.github.bedjoint.labour.Task;
import io.github.bedjoint.labour.TaskTable;
import io.github.bedjoint.units.Steps;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Writes tasks as what differs from the default table, crews, the working day and what person-hours cost. */
final class LabourWriter {
    private final JsonOut out;

    LabourWriter(JsonOut out) {
        this.out = out;
    }

    void write(Job job) throws IOException {
        Labour labour = job.labour();
        if (job.productionRate().isPresent() && job.siteRate().isPresent()) {
            out.field("production", job.productionRate().get().toString());
            out.field("site", job.siteRate().get().toString());
        }
        if (job.twoPeopleFrom().isPresent()) {
            out.steps("twoPeopleFrom", Steps.up(job.twoPeopleFrom().get().getValue().doubleValue()));
        }
        out.object("allowance", () -> out.number(
                labour.allowance().base() == Allowance.Base.JOB_TIME ? "onJobTime" : "onWorkingDay", labour.allowance().share()));
        out.count("shopCrew", labour.shopCrew().people());
        out.count("siteCrew", labour.siteCrew().people());
        out.number("tandemEfficiency", labour.siteCrew().efficiency());
        out.sized("shift", labour.workDay().shiftS(), "s");
        out.object("travel", () -> {
            out.sized("perDay", labour.workDay().travelS(), "s");
            out.flag("withinShift", labour.workDay().inShift());
        });
        if (!labour.premium().equals(Premium.NONE)) {
            out.object("premium", () -> {
                out.field("name", labour.premium().name());
                out.number("shop", labour.premium().shop());
                out.number("site", labour.premium().site());
            });
        }
        if (job.learning().isPresent()) {
            out.object("learning", () -> {
                out.word("law", job.learning().get().law());
                out.number("rate", job.learning().get().rate());
            });
        }
        if (!labour.trips().isEmpty()) {
            new TripsWriter(out).write(labour.trips());
        }
        tasks(labour.tasks());
    }

    private void tasks(TaskTable table) throws IOException {
        Map<String, Task> has = table.tasks().stream().collect(Collectors.toMap(Task::id, Function.identity(), (a, b) -> a, LinkedHashMap::new));
        List<String> without = new ArrayList<>();
        Map<String, Task> paces = new LinkedHashMap<>();
        for (Task preset : TaskTable.defaults().tasks()) {
            Task task = has.get(preset.id());
            if (task == null) {
                without.add(preset.id());
            } else if (task.equals(preset)) {
                has.remove(preset.id());
            } else if (task.equals(preset.withPace(task.pace(), task.source()))) {
                paces.put(preset.id(), has.remove(preset.id()));
            }
        }
        if (!without.isEmpty()) {
            out.array("without", () -> {
                for (String id : without) {
                    out.text(id);
                }
            });
        }
        if (!paces.isEmpty()) {
            out.object("paces", () -> {
                for (Task task : paces.values()) {
                    out.field(task.id(), task.pace().toString());
                }
            });
        }
        if (!has.isEmpty()) {
            out.array("tasks", () -> {
                for (Task task : has.values()) {
                    out.item(() -> task(task));
                }
            });
        }
    }

    private void task(Task task) throws IOException {
        out.field("id", task.id());
        out.field("title", task.title());
        out.word("stage", task.stage());
        out.word("driver", task.driver());
        out.field("pace", task.pace().toString());
        out.count("people", task.people());
        out.word("machine", task.machine());
        out.number("attended", task.attended());
        out.flag("allowance", task.allowed());
        out.flag("slowedByHeight", task.reached());
    }
}
