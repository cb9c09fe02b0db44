package io.github.bedjoint.jobfile;

import io.github.bedjoint.job.JobBuilder;
import io.github.bedjoint.labour.Allowance;
import io.github.bedjoint.labour.Crew;
import io.github.bedjoint.labour.Driver;
import io.github.bedjoint.labour.Labour;
import io.github.bedjoint.labour.Learning;
import io.github.bedjoint.labour.Machine;
import io.github.bedjoint.labour.Pace;
import io.github.bedjoint.labour.Premium;
import io.github.bedjoint.labour.Stage;
import io.github.bedjoint.labour.Task;
import io.github.bedjoint.labour.TaskKind;
import io.github.bedjoint.labour.TaskTable;
import io.github.bedjoint.labour.WorkDay;
import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Read;
import io.github.bedjoint.working.Source;
import java.util.Objects;
import org.joda.money.CurrencyUnit;

/** Reads tasks, paces, crews, the working day and what person-hours cost. */
final class LabourReader {
    private static final Source SHOP = Source.shop("pace given with the job");

    private LabourReader() {}

    static void read(Fields job, JobBuilder builder, CurrencyUnit currency) {
        job.object("labour", f -> {
            builder.labour(labour(f));
            if (f.has("production") || f.has("site")) {
                builder.labourRates(
                        f.priced("production", currency, Read::pricePerTime), f.priced("site", currency, Read::pricePerTime));
            }
            f.with(builder, "learning", n -> f.object(n, LabourReader::learning), JobBuilder::learning);
            return f.with(builder, "twoPeopleFrom", n -> f.read(n, Read::length), JobBuilder::twoPeopleFrom);
        });
    }

    private static Labour labour(Fields f) {
        Labour labour = Labour.withDefaults().withTasks(tasks(f));
        labour = f.with(labour, "allowance", n -> f.object(n, LabourReader::allowance), Labour::withAllowance);
        labour = f.with(labour, "shopCrew", f::count, (l, people) -> l.withShopCrew(Crew.of(people)));
        labour = f.with(labour, "siteCrew", f::count, (l, people) -> l.withSiteCrew(Crew.of(people)));
        labour = f.with(labour, "tandemEfficiency", f::number, (l, q) ->
                l.withSiteCrew(l.siteCrew().withTandemEfficiency(q)).withShopCrew(l.shopCrew().withTandemEfficiency(q)));
        labour = f.with(labour, "shift", n -> f.read(n, Read::time), (l, shift) -> l.withWorkDay(WorkDay.of(shift)));
        if (f.has("travel")) {
            WorkDay day = labour.workDay();
            labour = labour.withWorkDay(f.object("travel", t -> {
                t.get("perDay");
                boolean within = t.has("withinShift") && t.flag("withinShift");
                return t.with(day, "perDay", n -> t.read(n, Read::time), (d, time) ->
                        within ? d.withTravelInShift(time) : d.withTravelOutsideShift(time));
            }));
        }
        labour = f.with(labour, "premium", n -> f.object(n, LabourReader::premium), Labour::withPremium);
        return f.has("trips") ? TripsReader.trips(f, labour) : labour;
    }

    private static Premium premium(Fields f) {
        return new Premium(f.text("name"), f.has("shop") ? f.number("shop") : 0, f.has("site") ? f.number("site") : 0);
    }

    private static Learning learning(Fields f) {
        return new Learning(f.word("law", Learning.Law.class), f.number("rate"));
    }

    private static Allowance allowance(Fields f) {
        boolean onJobTime = f.oneOf("onJobTime", "onWorkingDay").equals("onJobTime");
        return f.with(Allowance.none(), onJobTime ? "onJobTime" : "onWorkingDay", f::number, (none, share) ->
                onJobTime ? Allowance.onJobTime(share) : Allowance.onWorkingDay(share));
    }

    private static TaskTable tasks(Fields f) {
        TaskTable table = TaskTable.defaults();
        if (f.has("without")) {
            for (JsonNode id : f.list("without", LabourReader::text)) {
                TaskTable before = table;
                table = Fields.under(id, () -> before.without(Objects.toString(id.scalar())));
            }
        }
        if (f.has("paces")) {
            TaskTable before = table;
            table = f.object("paces", p -> {
                TaskTable paced = before;
                for (Task task : before.tasks()) {
                    paced = p.with(paced, task.id(), n -> p.read(n, text -> Pace.parse(task.driver(), text)), (t, pace) ->
                            t.withPace(task.id(), pace, SHOP));
                }
                return paced;
            });
        }
        if (f.has("tasks")) {
            for (Task task : f.list("tasks", node -> Fields.whole(node, LabourReader::task))) {
                table = table.with(task);
            }
        }
        return table;
    }

    /** A node that must be a text. */
    static JsonNode text(JsonNode node) {
        if (node.scalar() instanceof String) {
            return node;
        }
        throw node.refused("must be the id of a task, a text", "Maybe quotation marks are missing.");
    }

    private static Task task(Fields f) {
        Driver driver = f.word("driver", Driver.class);
        Machine machine = f.has("machine") ? f.word("machine", Machine.class) : Machine.NONE;
        TaskKind kind = new TaskKind(
                f.read("id", text -> Door.text("id", text)),
                f.text("title"),
                f.word("stage", Stage.class),
                driver,
                f.has("people") ? f.count("people") : 1,
                machine,
                f.has("attended") ? f.number("attended") : 1,
                f.has("allowance") ? f.flag("allowance") : machine == Machine.NONE,
                f.has("slowedByHeight") && f.flag("slowedByHeight"));
        return new Task(kind, f.read("pace", text -> Pace.parse(driver, text)), SHOP);
    }
}
