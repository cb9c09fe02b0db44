package io.github.bedjoint.labour;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.working.Source;

/**
 * A place where work is done, such as a wall, with what there is to do and how much slower it goes there.
 *
 * @param name    the place, for a reader
 * @param amounts what there is to do
 * @param factor  by what the time of tasks is multiplied that height and access slow down; 0.1 to 10
 * @param source  where the factor comes from
 */
public record WorkPlace(String name, Amounts amounts, double factor, Source source) {
    private static final Source NORMAL = Source.practice("paces are those of work from the ground");

    /**
     * Checks name and factor.
     *
     * @param name    the place, for a reader
     * @param amounts what there is to do
     * @param factor  by what the time of tasks is multiplied that height and access slow down; 0.1 to 10
     * @param source  where the factor comes from
     * @throws io.github.bedjoint.units.RefusedException if one cannot be accepted
     */
    public WorkPlace {
        name = Door.text("place", name);
        Door.number("access factor", factor, Range.closed(0.1, 10));
    }

    /**
     * A place worked at from the ground.
     *
     * @param name    the place
     * @param amounts what there is to do
     * @return the place, with factor 1
     */
    public static WorkPlace of(String name, Amounts amounts) {
        return new WorkPlace(name, amounts, 1, NORMAL);
    }

    /**
     * The same with another access factor.
     *
     * @param times      by what the time is multiplied, 0.1 to 10
     * @param fromSource where the factor comes from
     * @return a new place
     */
    public WorkPlace withFactor(double times, Source fromSource) {
        return new WorkPlace(name, amounts, times, fromSource);
    }
}
