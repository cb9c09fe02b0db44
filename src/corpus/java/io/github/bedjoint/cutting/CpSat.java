package io.github.bedjoint.cutting;

import com.google.ortools.Loader;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.IntervalVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import com.google.ortools.sat.NoOverlap2dConstraint;
import io.github.bedjoint.rolls.Cut;
import io.github.bedjoint.rolls.RollPlan;
import io.github.bedjoint.rolls.Stock;
import java.util.ArrayList;
import java.util.List;

/**
 * The same jobs as models of a general constraint solver (OR-Tools CP-SAT, Apache-2.0), one thread, for comparison. Panels with as many
 * rolls as the planner opened and one more of each kind; nothing lost, nothing turned.
 */
final class CpSat {

    /** What the solver reached in its time; no value is {@link Instances#UNKNOWN}. */
    record Answer(long value, long bound, double ms, boolean proven) {}

    private final CpModel model = new CpModel();

    CpSat() {
        Loader.loadNativeLibraries();
    }

    private Answer solve(double seconds) {
        CpSolver solver = new CpSolver();
        solver.getParameters().setNumWorkers(1);
        solver.getParameters().setMaxTimeInSeconds(seconds);
        CpSolverStatus status = solver.solve(model);
        boolean found = status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE;
        return new Answer(
                found ? Math.round(solver.objectiveValue()) : Instances.UNKNOWN, (long) Math.ceil(solver.bestObjectiveBound() - 1e-6),
                solver.wallTime() * 1000, status == CpSolverStatus.OPTIMAL);
    }

    private static List<Stock> rolls(Instances.Instance job, RollPlan known) {
        List<Stock> rolls = new ArrayList<>();
        for (Stock row : job.stock()) {
            long most = known.rolls().stream().filter(r -> r.stockId().equals(row.id())).count() + 1;
            for (long k = 0; k < (row.available() < 0 ? most : Math.min(most, row.available())); k++) {
                rolls.add(row);
            }
        }
        return rolls;
    }

    /** Panels in a line: how many of each on each roll. */
    Answer line(Instances.Instance job, RollPlan known, double seconds) {
        List<Stock> rolls = rolls(job, known);
        LinearExprBuilder cost = LinearExpr.newBuilder();
        List<Literal> opened = new ArrayList<>();
        List<LinearExprBuilder> loads = new ArrayList<>();
        for (int r = 0; r < rolls.size(); r++) {
            opened.add(model.newBoolVar("open" + r));
            cost.addTerm(opened.get(r), rolls.get(r).cost());
            loads.add(LinearExpr.newBuilder());
            if (r > 0 && rolls.get(r) == rolls.get(r - 1)) {
                model.addImplication(opened.get(r), opened.get(r - 1));
            }
        }
        for (Cut cut : job.cuts()) {
            LinearExprBuilder all = LinearExpr.newBuilder();
            for (int r = 0; r < rolls.size(); r++) {
                long most = Math.min(cut.quantity(), rolls.get(r).lengthSteps() / cut.lengthSteps());
                IntVar count = model.newIntVar(0, cut.widthSteps() <= rolls.get(r).widthSteps() ? most : 0, cut.id());
                all.add(count);
                loads.get(r).addTerm(count, cut.lengthSteps());
            }
            model.addEquality(all, cut.quantity());
        }
        for (int r = 0; r < rolls.size(); r++) {
            loads.get(r).addTerm(opened.get(r), -rolls.get(r).lengthSteps());
            model.addLessOrEqual(loads.get(r), 0);
        }
        model.minimize(cost);
        return solve(seconds);
    }

    /** Panels side by side on rolls of their own kind: where each lies, and on which roll. */
    Answer flat(Instances.Instance job, RollPlan known, double seconds) {
        List<Stock> rolls = rolls(job, known);
        LinearExprBuilder cost = LinearExpr.newBuilder();
        List<Literal> opened = new ArrayList<>();
        List<NoOverlap2dConstraint> apart = new ArrayList<>();
        for (int r = 0; r < rolls.size(); r++) {
            opened.add(model.newBoolVar("open" + r));
            cost.addTerm(opened.get(r), rolls.get(r).cost());
            apart.add(model.addNoOverlap2D());
            if (r > 0 && rolls.get(r) == rolls.get(r - 1)) {
                model.addImplication(opened.get(r), opened.get(r - 1));
            }
        }
        for (Cut cut : job.cuts()) {
            for (int k = 0; k < cut.quantity(); k++) {
                List<Literal> on = new ArrayList<>();
                for (int r = 0; r < rolls.size(); r++) {
                    if (cut.widthSteps() > rolls.get(r).widthSteps() || cut.lengthSteps() > rolls.get(r).lengthSteps()) {
                        continue;
                    }
                    Literal here = model.newBoolVar(cut.id() + r);
                    on.add(here);
                    model.addImplication(here, opened.get(r));
                    apart.get(r).addRectangle(
                            interval(cut.widthSteps(), rolls.get(r).widthSteps(), here), interval(cut.lengthSteps(), rolls.get(r).lengthSteps(), here));
                }
                model.addExactlyOne(on);
            }
        }
        model.minimize(cost);
        return solve(seconds);
    }

    private IntervalVar interval(long size, long room, Literal here) {
        return model.newOptionalFixedSizeIntervalVar(model.newIntVar(0, room - size, "at"), size, here, "piece");
    }

    /** Panels on one strip: the least length, not more than is known to suffice. */
    Answer strip(Instances.Instance job, long most, double seconds) {
        NoOverlap2dConstraint apart = model.addNoOverlap2D();
        IntVar length = model.newIntVar(0, most, "length");
        long width = job.stock().get(0).widthSteps();
        var across = model.addCumulative(width);
        for (Cut cut : job.cuts()) {
            for (int k = 0; k < cut.quantity(); k++) {
                IntervalVar x = model.newFixedSizeIntervalVar(model.newIntVar(0, width - cut.widthSteps(), "x"), cut.widthSteps(), "across");
                IntervalVar y = model.newFixedSizeIntervalVar(model.newIntVar(0, most - cut.lengthSteps(), "y"), cut.lengthSteps(), "along");
                apart.addRectangle(x, y);
                across.addDemand(y, cut.widthSteps());
                model.addLessOrEqual(LinearExpr.newBuilder().add(y.getEndExpr()).addTerm(length, -1), 0);
            }
        }
        model.minimize(length);
        return solve(seconds);
    }
}
