package io.github.bedjoint.labour;

import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.working.Source;

/**
 * A kind of work and how fast it goes. Immutable; the {@code with} methods give changed copies.
 *
 * @param kind   what is done, by whom and where
 * @param pace   basic time per unit of the driver: for one person, or of the machine
 * @param source where the pace comes from
 */
public record Task(TaskKind kind, Pace pace, Source source) {
    /**
     * Checks that the pace is one of the task's driver.
     *
     * @param kind   what is done, by whom and where
     * @param pace   basic time per unit of the driver: for one person, or of the machine
     * @param source where the pace comes from
     * @throws RefusedException if the pace is not per the driver's unit
     */
    public Task {
        if (pace.measure() != kind.driver().paceMeasure()) {
            throw new RefusedException(
                    "pace of task " + kind.id(),
                    pace.toString(),
                    "must be in " + kind.driver().paceMeasure().unit() + " or its like, since the driver is " + kind.driver(),
                    "Maybe the driver is another one.");
        }
    }

    /**
     * Work by hand of one person or more, with allowance, not slowed by height.
     *
     * @param id     its short name
     * @param title  its name for a reader
     * @param stage  where it is done
     * @param driver what its time grows with
     * @param pace   basic time per unit of the driver for one person
     * @param source where the pace comes from
     * @return the task
     * @throws RefusedException if a part cannot be accepted
     */
    public static Task byHand(String id, String title, Stage stage, Driver driver, Pace pace, Source source) {
        return new Task(new TaskKind(id, title, stage, driver, 1, Machine.NONE, 1, true, false), pace, source);
    }

    /**
     * The same at another pace.
     *
     * @param other       basic time per unit of the driver
     * @param otherSource where that pace comes from
     * @return a new task
     * @throws RefusedException if the pace is not per the driver's unit
     */
    public Task withPace(Pace other, Source otherSource) {
        return new Task(kind, other, otherSource);
    }

    /**
     * The same taking at least so many people.
     *
     * @param least 1 to 10
     * @return a new task
     * @throws RefusedException if it is not 1 to 10
     */
    public Task withPeople(int least) {
        return new Task(
                new TaskKind(id(), title(), stage(), driver(), least, machine(), attended(), allowed(), reached()), pace, source);
    }

    /**
     * The same slowed, or not slowed, by height and access.
     *
     * @param slowed whether the factors of a {@link WorkPlace} apply
     * @return a new task
     */
    public Task withReached(boolean slowed) {
        return new Task(
                new TaskKind(id(), title(), stage(), driver(), people(), machine(), attended(), allowed(), slowed), pace, source);
    }

    /**
     * Its short name.
     *
     * @return lower case letters, digits and dashes
     */
    public String id() {
        return kind.id();
    }

    /**
     * Its name for a reader.
     *
     * @return the title
     */
    public String title() {
        return kind.title();
    }

    /**
     * Where it is done.
     *
     * @return shop or site
     */
    public Stage stage() {
        return kind.stage();
    }

    /**
     * What its time grows with.
     *
     * @return the driver
     */
    public Driver driver() {
        return kind.driver();
    }

    /**
     * How many people it takes at least.
     *
     * @return 1 to 10
     */
    public int people() {
        return kind.people();
    }

    /**
     * What does the work.
     *
     * @return a machine, or none
     */
    public Machine machine() {
        return kind.machine();
    }

    /**
     * The share of machine time in which someone stands by.
     *
     * @return 0 to 1; 1 for work by hand
     */
    public double attended() {
        return kind.attended();
    }

    /**
     * Whether the allowance is added to its time.
     *
     * @return true if it is
     */
    public boolean allowed() {
        return kind.allowed();
    }

    /**
     * Whether height and access slow it down.
     *
     * @return true if they do
     */
    public boolean reached() {
        return kind.reached();
    }
}
