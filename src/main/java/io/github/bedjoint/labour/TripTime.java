package io.github.bedjoint.labour;

import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Print;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.working.Explained;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Working;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Hours and days of a trip of its own. Immutable. */
public final class TripTime implements Explained {
    private static final Symbol VISITS = Symbol.number("N_t", "days of the trip");
    private static final Symbol COUNT = Symbol.number("c", "trips");
    private static final Symbol STAY = new Symbol("t", Measure.TIME, "time on site of each, beside tasks");
    private static final Symbol TASKS = new Symbol("w", Measure.TIME, "elapsed time of the tasks that are done on it");
    private static final Symbol WITHIN = new Symbol("v_w", Measure.TIME, "travel within the shift");

    static final Formula TASKS_ELAPSED = Formula.of(
            "labour.trip-tasks",
            "Tasks done on a trip",
            TASKS,
            "sum(t_i)",
            Source.geometry("one task after another"),
            new Symbol("t_i", Measure.TIME, "elapsed time of each task, or the share of what is done for all trips together"));
    static final Formula DAYS = Formula.of(
            "labour.trip-days",
            "Days of a trip",
            VISITS,
            "max(c, ceil((c * t + w) / (S - v_w) - 0.000000001))",
            Source.geometry("whole days of what is left of a shift, each with its travel"),
            COUNT,
            STAY,
            TASKS,
            new Symbol("S", Measure.TIME, "shift"),
            WITHIN);
    static final Formula PAID = Formula.of(
            "labour.trip-paid",
            "Paid time of a trip",
            new Symbol("P_i", Measure.TIME, "paid time of a trip, beside its tasks"),
            "n * (N_t * v + c * t)",
            Source.geometry("people times travel and stay"),
            Symbol.number("n", "people"),
            VISITS,
            new Symbol("v", Measure.TIME, "travel there and back"),
            COUNT,
            STAY);
    static final Formula ELAPSED = Formula.of(
            "labour.trip-elapsed",
            "Working time of a trip",
            new Symbol("E_t", Measure.TIME, "elapsed time within the shifts"),
            "N_t * v_w + c * t + w",
            Source.geometry("travel, stay and tasks, one after another"),
            VISITS,
            WITHIN,
            COUNT,
            STAY,
            TASKS);

    private final Trip trip;
    private final WorkDay day;
    private final List<Double> tasks;
    private final double withinS;
    private final double tasksS;
    private final double visits;
    private final double paidS;
    private final double elapsedS;

    TripTime(Trip trip, List<Double> tasks, WorkDay day) {
        this.trip = trip;
        this.day = day;
        this.tasks = tasks;
        this.withinS = day.inShift() ? trip.travelS() : 0;
        this.tasksS = Totals.of(tasks, term -> term);
        this.visits = followsFromHours() ? Math.max(trip.count(), Math.ceil(workS() / (day.shiftS() - withinS) - 1e-9)) : trip.count();
        this.paidS = trip.people() * (visits * trip.travelS() + trip.count() * trip.onSiteS());
        this.elapsedS = visits * withinS + workS();
    }

    private double workS() {
        return trip.count() * trip.onSiteS() + tasksS;
    }

    /** The days of installing follow from all of its hours; those of a trip that nobody can make are as given. */
    private boolean followsFromHours() {
        return trip.purpose() != Trip.Purpose.INSTALL && day.shiftS() > withinS;
    }

    /**
     * The trip.
     *
     * @return the trip as given
     */
    public Trip trip() {
        return trip;
    }

    /**
     * How often someone travels there: as often as given, or more often where the work does not fit into so many shifts.
     *
     * @return days, 1 or more
     */
    public int days() {
        return (int) visits;
    }

    /**
     * Travel and stay of all people; the tasks done on it are paid with the tasks.
     *
     * @return person-seconds
     */
    public double paidS() {
        return paidS;
    }

    /**
     * Time of the shifts that it takes: travel within the shift, stay, and the tasks done on it.
     *
     * @return seconds over all its days
     */
    public double elapsedS() {
        return elapsedS;
    }

    /** Why it cannot be made: its travel leaves no time of a shift for its work. */
    Optional<String> reason() {
        return trip.purpose() == Trip.Purpose.INSTALL || day.shiftS() > withinS || workS() == 0
                ? Optional.empty()
                : Optional.of("Travel of " + Measure.TIME.print(withinS, UnitStyle.METRIC) + " for " + trip.purpose().words() + " fills the shift of "
                        + Measure.TIME.print(day.shiftS(), UnitStyle.METRIC) + ". Maybe travel outside the shift.");
    }

    @Override
    public Working working() {
        return Working.group("Trip: " + trip.purpose().words(), List.of(paidWorking(), elapsedWorking()));
    }

    Working elapsedWorking() {
        List<Working> reasons = new ArrayList<>();
        if (tasksS > 0) {
            reasons.add(Working.sum(TASKS_ELAPSED, tasksS, tasks).whose(trip.purpose().words()));
        }
        if (followsFromHours()) {
            reasons.add(daysWorking());
        }
        return Working.of(ELAPSED, elapsedS, visits, withinS, trip.count(), trip.onSiteS(), tasksS)
                .whose(trip.purpose().words())
                .because(reasons.toArray(Working[]::new));
    }

    Working paidWorking() {
        Working paid = Working.of(PAID, paidS, trip.people(), visits, trip.travelS(), trip.count(), trip.onSiteS()).whose(trip.purpose().words());
        return followsFromHours() ? paid.because(daysWorking()) : paid;
    }

    private Working daysWorking() {
        return Working.of(DAYS, visits, trip.count(), trip.onSiteS(), tasksS, day.shiftS(), withinS).whose(trip.purpose().words());
    }

    /** The paid time and what it is made of. */
    @Override
    public String toString() {
        return Measure.TIME.print(paidS, UnitStyle.METRIC) + " paid: " + Print.count((int) visits, trip.purpose().words() + " trip") + ", "
                + Print.count(trip.people(), "person", "people") + ", " + Measure.TIME.print(elapsedS, UnitStyle.METRIC) + " by the clock";
    }
}
