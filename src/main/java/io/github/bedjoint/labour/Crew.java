package io.github.bedjoint.labour;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Print;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.working.Verdict;
import java.util.Optional;

/**
 * How many people work together and how well.
 *
 * <p>Work that takes one person {@code T} takes {@code n} people {@code T / (n q)}, and {@code T / q} is paid. Whoever works alone
 * has q = 1. Where {@code n q} is below 1, one does what one person can do, and the others wait and are paid:
 * q counts as 1/n. For a task that demands more people than the crew has, helpers join for that task only, at the same q.
 *
 * @param people     how many, 1 to 50
 * @param efficiency q, the share of the time together that does work, more than 0 and at most 1
 */
public record Crew(int people, double efficiency) {

    /**
     * Checks both.
     *
     * @param people     how many, 1 to 50
     * @param efficiency q, the share of the time together that does work, more than 0 and at most 1
     * @throws io.github.bedjoint.units.RefusedException if people are not 1 to 50 or the efficiency not in (0, 1]
     */
    public Crew {
        Door.count("people", people, 1, 50);
        Door.number("tandem efficiency", efficiency, Range.above(0, 1));
    }

    /**
     * A crew that loses nothing by working together.
     *
     * @param people how many, 1 to 50
     * @return the crew with efficiency 1; the shop replaces it by its own
     * @throws io.github.bedjoint.units.RefusedException if people are not 1 to 50
     */
    public static Crew of(int people) {
        return new Crew(people, 1);
    }

    /**
     * The same people with a stated efficiency.
     *
     * @param q more than 0 and at most 1
     * @return a new crew
     * @throws io.github.bedjoint.units.RefusedException if it is not in (0, 1]
     */
    public Crew withTandemEfficiency(double q) {
        return new Crew(people, q);
    }

    /** How many work on a task that demands at least so many. */
    int peopleFor(int demanded) {
        return Math.max(people, demanded);
    }

    /** The efficiency of so many together at a task: where they are slower than one person and one is enough, one works and the others wait. */
    double efficiencyOf(int together, int demanded) {
        return oneWorks(together, demanded) ? 1.0 / together : efficiency;
    }

    /** Whether one does a task that one person can do, since together they are slower; so also where only one is there. */
    boolean oneWorks(int together, int demanded) {
        return together == 1 || demanded == 1 && together * efficiency < 1;
    }

    /**
     * A warning where the crew together is slower than one person.
     *
     * @param whose whose crew it is, such as {@code site}
     * @return the warning, or empty where working together is no slower
     */
    public Optional<Verdict> slowerThanOne(String whose) {
        return people == 1 || !oneWorks(people, 1)
                ? Optional.empty()
                : Optional.of(new Verdict(
                        Verdict.Level.WARNING,
                        "crew: " + whose,
                        people + " people at a tandem efficiency of " + Print.number(efficiency)
                                + " together are slower than one, so one does each task that one person can do; the others wait and are paid. Maybe a crew of one.",
                        TaskTime.TANDEM));
    }
}
