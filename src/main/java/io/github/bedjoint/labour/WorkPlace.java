package io.github.bedjoint.labour;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.working.Source;

/**
 * A place where work is done, such as a wall, with what there is to do and how it is reached.
 *
 * @param name     the place, for a reader
 * @param amounts  what there is to do at one such place
 * @param reach    by what height and access slow down the tasks that are marked so
 * @param repeats  how many identical places there are, 1 to 10 000
 * @param learning how work by hand gets faster from one to the next
 */
public record WorkPlace(String name, Amounts amounts, Reach reach, int repeats, Learning learning) {
    private static final Learning NONE = Learning.crawford(1);

    /**
     * Checks name and count.
     *
     * @param name     the place, for a reader
     * @param amounts  what there is to do at one such place
     * @param reach    by what height and access slow down the tasks that are marked so
     * @param repeats  how many identical places there are, 1 to 10 000
     * @param learning how work by hand gets faster from one to the next
     * @throws io.github.bedjoint.units.RefusedException if one cannot be accepted
     */
    public WorkPlace {
        name = Door.text("place", name);
        Door.count("identical places", repeats, 1, 10_000);
    }

    /**
     * A place worked at from the ground.
     *
     * @param name    the place
     * @param amounts what there is to do
     * @return the place, with factor 1
     */
    public static WorkPlace of(String name, Amounts amounts) {
        return new WorkPlace(name, amounts, Reach.GROUND, 1, NONE);
    }

    /**
     * The same with one access factor.
     *
     * @param times      by what the time is multiplied, 0.1 to 10
     * @param fromSource where the factor comes from
     * @return a new place
     * @throws io.github.bedjoint.units.RefusedException if the factor is not 0.1 to 10
     */
    public WorkPlace withFactor(double times, Source fromSource) {
        return withReach(Reach.of(times, fromSource));
    }

    /**
     * The same with other amounts.
     *
     * @param other what there is to do
     * @return a new place
     */
    public WorkPlace withAmounts(Amounts other) {
        return new WorkPlace(name, other, reach, repeats, learning);
    }

    /**
     * The same reached in another way.
     *
     * @param other height and access
     * @return a new place
     */
    public WorkPlace withReach(Reach other) {
        return new WorkPlace(name, amounts, other, repeats, learning);
    }

    /**
     * Several identical places, one after another, at which work by hand gets faster.
     *
     * @param times 1 to 10 000
     * @param law   how it gets faster
     * @return a new place that stands for all of them
     * @throws io.github.bedjoint.units.RefusedException if the count is not 1 to 10 000
     */
    public WorkPlace repeated(int times, Learning law) {
        return new WorkPlace(name, amounts, reach, times, law);
    }
}
