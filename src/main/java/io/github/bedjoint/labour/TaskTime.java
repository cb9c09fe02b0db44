package io.github.bedjoint.labour;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Print;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.working.Explained;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Working;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Time;

/** The time of one task over all places: basic, standard, paid and elapsed. Immutable. */
public final class TaskTime implements Explained {
    private static final Source WORK_STUDY = Source.handbook("work study: standard time is basic time plus allowances");
    static final Source TANDEM = Source.practice("people together share the work at a stated efficiency");
    private static final Source MACHINE = Source.practice("a machine runs alone but for an attended share");
    private static final Symbol STANDARD = new Symbol("t_s", Measure.TIME, "standard time of one person, or of the machine");
    private static final Symbol ELAPSED_TIME = new Symbol("t_e", Measure.TIME, "elapsed time");
    private static final Symbol PAID_TIME = new Symbol("t_p", Measure.TIME, "paid time, all people together");
    private static final Symbol EFFICIENCY = Symbol.number("q", "tandem efficiency");

    static final Formula BASIC = Formula.of(
            "labour.basic",
            "Basic time of a task",
            new Symbol("t_b", Measure.TIME, "basic time"),
            "sum(t_w_i)",
            WORK_STUDY,
            new Symbol("t_w_i", Measure.TIME, "basic time at each place"));
    static final Formula ELAPSED = Formula.of(
            "labour.elapsed",
            "Elapsed time of a task by hand",
            ELAPSED_TIME,
            "t_s / (n * q)",
            TANDEM,
            STANDARD,
            Symbol.number("n", "people together"),
            EFFICIENCY);
    static final Formula PAID =
            Formula.of("labour.paid", "Paid time of a task by hand", PAID_TIME, "t_s / q", TANDEM, STANDARD, EFFICIENCY);
    static final Formula MACHINE_ELAPSED =
            Formula.of("labour.machine-elapsed", "Elapsed time of a machine task", ELAPSED_TIME, "t_s", MACHINE, STANDARD);
    static final Formula MACHINE_PAID = Formula.of(
            "labour.machine-paid",
            "Paid time of a machine task",
            PAID_TIME,
            "t_s * s",
            MACHINE,
            STANDARD,
            Symbol.number("s", "share of the running time in which someone stands by"));

    private final Task task;
    private final List<PlaceTime> places;
    private final Allowance allowance;
    private final int people;
    private final double efficiency;
    private final boolean oneOfMany;
    private final double basicS;
    private final double standardS;
    private final double elapsedS;
    private final double paidS;

    private TaskTime(Task task, List<PlaceTime> places, Allowance allowance, Crew crew) {
        boolean machine = task.machine() != Machine.NONE;
        this.task = task;
        this.places = places;
        this.allowance = task.allowed() ? allowance : Allowance.none();
        this.people = machine ? task.people() : crew.peopleFor(task.people());
        this.efficiency = crew.efficiencyOf(people, task.people());
        this.oneOfMany = !machine && people > 1 && crew.oneWorks(people, task.people());
        this.basicS = Totals.of(places, PlaceTime::basicS);
        this.standardS = this.allowance.standardS(basicS);
        this.elapsedS = machine ? standardS : standardS / (people * efficiency);
        this.paidS = machine ? standardS * task.attended() : standardS / efficiency;
    }

    static TaskTime of(Task task, List<PlaceTime> places, Allowance allowance, Crew crew) {
        return new TaskTime(task, List.copyOf(places), allowance, crew);
    }

    /**
     * The task.
     *
     * @return the task as the table gave it
     */
    public Task task() {
        return task;
    }

    /**
     * How many people work on it together.
     *
     * @return the crew, or as many as the task demands
     */
    public int people() {
        return people;
    }

    /**
     * Time without allowance, of one person or of the machine.
     *
     * @return seconds
     */
    public double basicS() {
        return basicS;
    }

    /**
     * Time with allowance, of one person or of the machine.
     *
     * @return seconds
     */
    public double standardS() {
        return standardS;
    }

    /**
     * Time on the clock while the task goes on.
     *
     * @return seconds
     */
    public double elapsedS() {
        return elapsedS;
    }

    /**
     * Time paid, all people together.
     *
     * @return person-seconds
     */
    public double paidS() {
        return paidS;
    }

    /**
     * {@link #elapsedS()} as a quantity.
     *
     * @return elapsed time
     */
    public Quantity<Time> elapsed() {
        return Door.time(elapsedS);
    }

    /**
     * {@link #paidS()} as a quantity.
     *
     * @return person-hours
     */
    public Quantity<Time> paid() {
        return Door.time(paidS);
    }

    @Override
    public Working working() {
        return Working.group(task.title(), List.of(paidWorking(), elapsedWorking()));
    }

    Working paidWorking() {
        Working paid = task.machine() == Machine.NONE
                ? Working.of(PAID, paidS, standardS, efficiency)
                : Working.of(MACHINE_PAID, paidS, standardS, task.attended());
        return crewed(paid);
    }

    Working elapsedWorking() {
        Working elapsed = task.machine() == Machine.NONE
                ? Working.of(ELAPSED, elapsedS, standardS, people, efficiency)
                : Working.of(MACHINE_ELAPSED, elapsedS, standardS);
        return crewed(elapsed);
    }

    private Working crewed(Working time) {
        Working whole = time.whose(task.title()).because(standardWorking());
        return oneOfMany ? whole.noting("one works, the others wait and are paid, since together they are slower: q counts as 1/n") : whole;
    }

    private Working standardWorking() {
        Working basic = Working.sum(BASIC, basicS, places.stream().map(PlaceTime::basicS).toList())
                .whose(task.title())
                .because(places.stream().map(PlaceTime::working).toArray(Working[]::new));
        return allowance.working(basicS, standardS).whose(task.title()).because(basic);
    }

    /** The hours and where the pace comes from. */
    @Override
    public String toString() {
        return task.title() + ": " + Measure.TIME.print(paidS, UnitStyle.METRIC) + " paid, " + Measure.TIME.print(elapsedS, UnitStyle.METRIC) + " elapsed, "
                + Print.count(people, "person", "people") + ", pace: " + task.source().kind().words();
    }
}
