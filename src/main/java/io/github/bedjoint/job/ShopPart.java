package io.github.bedjoint.job;

import io.github.bedjoint.labour.Driver;
import io.github.bedjoint.labour.LabourEstimate;
import io.github.bedjoint.labour.Machine;
import io.github.bedjoint.labour.Stage;
import io.github.bedjoint.labour.Task;
import io.github.bedjoint.labour.TaskTime;
import java.util.List;

/**
 * Elapsed time in the shop before, at and between the machines, and after them. Tasks stand in order of work: what stands above the print in
 * the table prepares it, what stands between print and laminate goes with the print, what stands below finishes the panels. A machine keeps as many
 * people as its task demands if it is attended all the time; otherwise someone looks in between other work.
 */
record ShopPart(double prepareS, double printS, double laminateS, double finishS, int atPrinter, int atLaminator) {
    static ShopPart of(LabourEstimate labour) {
        List<TaskTime> shop = labour.tasks().stream().filter(time -> time.task().stage() == Stage.PRODUCTION).toList();
        int printed = last(shop, Machine.PRINTER);
        int laminated = last(shop, Machine.LAMINATOR);
        double[] parts = new double[4];
        int[] people = new int[4];
        for (int i = 0; i < shop.size(); i++) {
            Task task = shop.get(i).task();
            int part = isAt(task, Machine.PRINTER) ? 1 : isAt(task, Machine.LAMINATOR) ? 2 : i < printed ? 0 : i < laminated ? 1 : 3;
            parts[part] += shop.get(i).elapsedS();
            people[part] = Math.max(people[part], task.attended() == 1 ? task.people() : 0);
        }
        return new ShopPart(parts[0], parts[1], parts[2], parts[3], people[1], people[2]);
    }

    private static int last(List<TaskTime> shop, Machine machine) {
        int last = -1;
        for (int i = 0; i < shop.size(); i++) {
            last = isAt(shop.get(i).task(), machine) ? i : last;
        }
        return last;
    }

    /** A task that is timed by the length of the web is at its machine even where the table does not name it. */
    private static boolean isAt(Task task, Machine machine) {
        Driver web = machine == Machine.PRINTER ? Driver.PRINTED_LENGTH : Driver.LAMINATED_LENGTH;
        return task.machine() == machine || task.driver() == web;
    }
}
