package io.github.bedjoint.labour;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.working.Source;

/**
 * A kind of work and how fast it goes. Immutable; the {@code with} methods give changed copies.
 *
 * @param id       its short name, lower case letters, digits and dashes
 * @param title    its name for a reader
 * @param stage    where it is done
 * @param driver   what its time grows with
 * @param pace     basic time per unit of the driver: for one person, or of the machine
 * @param people   how many people it takes at least, 1 to 10
 * @param machine  what does the work
 * @param attended the share of machine time in which someone stands by, 0 to 1; 1 for work by hand
 * @param allowed  whether the allowance is added to its time
 * @param reached  whether height and access slow it down
 * @param source   where the pace comes from
 */
public record Task(
        String id,
        String title,
        Stage stage,
        Driver driver,
        Pace pace,
        int people,
        Machine machine,
        double attended,
        boolean allowed,
        boolean reached,
        Source source) {
    /**
     * Checks every part.
     *
     * @param id       its short name, lower case letters, digits and dashes
     * @param title    its name for a reader
     * @param stage    where it is done
     * @param driver   what its time grows with
     * @param pace     basic time per unit of the driver: for one person, or of the machine
     * @param people   how many people it takes at least, 1 to 10
     * @param machine  what does the work
     * @param attended the share of machine time in which someone stands by, 0 to 1; 1 for work by hand
     * @param allowed  whether the allowance is added to its time
     * @param reached  whether height and access slow it down
     * @param source   where the pace comes from
     * @throws RefusedException if a part cannot be accepted, or the pace is not per the driver's unit
     */
    public Task {
        id = Door.text("task", id);
        if (!isId(id)) {
            throw new RefusedException(
                    "task", "'" + id + "'", "must be lower case letters, digits and dashes", "Maybe put the words into the title.");
        }
        title = Door.text("title of task", title);
        if (pace.measure() != driver.paceMeasure()) {
            throw new RefusedException(
                    "pace of task " + id,
                    pace.toString(),
                    "must be in " + driver.paceMeasure().unit() + " or its like, since the driver is " + driver,
                    "Maybe the driver is another one.");
        }
        if (people < 1 || people > 10 || !Range.SHARE.contains(attended)) {
            Door.count("people of task " + id, people, 1, 10);
            Door.number("attended share of task " + id, attended, Range.SHARE);
        }
        if (machine == Machine.NONE && attended != 1) {
            throw new RefusedException(
                    "attended share of task " + id,
                    Double.toString(attended),
                    "must be 1 where no machine does the work",
                    "Maybe name the machine.");
        }
        if (driver == Driver.DAY && stage != Stage.SITE) {
            throw new RefusedException(
                    "stage of task " + id, stage.toString(), "must be SITE for a task of each installing day", "Maybe use JOB.");
        }
    }

    private static boolean isId(String id) {
        for (int i = 0; i < id.length(); i++) {
            char c = id.charAt(i);
            if (!(c >= 'a' && c <= 'z' || c >= '0' && c <= '9' || c == '-' && i > 0)) {
                return false;
            }
        }
        return true;
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
        return new Task(id, title, stage, driver, pace, 1, Machine.NONE, 1, true, false, source);
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
        return new Task(id, title, stage, driver, other, people, machine, attended, allowed, reached, otherSource);
    }

    /**
     * The same taking at least so many people.
     *
     * @param least 1 to 10
     * @return a new task
     * @throws RefusedException if it is not 1 to 10
     */
    public Task withPeople(int least) {
        return new Task(id, title, stage, driver, pace, least, machine, attended, allowed, reached, source);
    }

    /**
     * The same slowed, or not slowed, by height and access.
     *
     * @param slowed whether the factors of a {@link WorkPlace} apply
     * @return a new task
     */
    public Task withReached(boolean slowed) {
        return new Task(id, title, stage, driver, pace, people, machine, attended, allowed, slowed, source);
    }
}
