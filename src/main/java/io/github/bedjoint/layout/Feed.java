package io.github.bedjoint.layout;

import io.github.bedjoint.survey.Wall;
import io.github.bedjoint.texture.TakeUp;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Working;

/**
 * How much film is fed in along the texture, in one direction of a wall.
 *
 * @param share   share of the mean extra length that is fed in, 0 to 1
 * @param stretch mean stretch of the surface in that direction, a share of length
 */
public record Feed(double share, double stretch) {
    private static final double FORGIVEN = 1e-6;

    /** Film fed in on a length of wall, in whole steps; less than a millionth of one is none. */
    public static final Formula FED = Formula.of(
            "layout.take-up", "Film fed in", new Symbol("f", Measure.STEPS, "film fed in"), "ceil(s * u * e - d)",
            Source.geometry("the share fed in of the extra length along the texture"),
            new Symbol("s", Measure.STEPS, "length on the wall"), Symbol.number("u", "share fed in"),
            Symbol.number("e", "mean stretch in that direction"), new Symbol("d", Measure.STEPS, "a millionth of a step, forgiven"));
    /** Length of wall that a length of film covers when film is fed in all along it, in whole steps. */
    public static final Formula REACH = Formula.of(
            "layout.reach", "Reach on the wall", new Symbol("p", Measure.STEPS, "wall that the film covers"), "floor(l / (1 + u * e))",
            Source.geometry("the share fed in of the extra length along the texture"),
            new Symbol("l", Measure.STEPS, "length of film"), Symbol.number("u", "share fed in"),
            Symbol.number("e", "mean stretch in that direction"));

    /** Wall that extra film at an edge would cover, which is what it takes away from the reach. */
    static final Formula COVERED = Formula.of(
            "layout.extra-as-wall", "Extra film as the wall it would cover", new Symbol("b", Measure.STEPS, "wall that it would cover"),
            "ceil(l / (1 + u * e))", Source.geometry("no film is fed in beyond the wall, so extra film takes less away than its length"),
            new Symbol("l", Measure.STEPS, "extra film"), Symbol.number("u", "share fed in"),
            Symbol.number("e", "mean stretch in that direction"));

    static Feed up(Wall wall, TakeUp takeUp) {
        return new Feed(takeUp.up(), wall.surface().meanStretchUp());
    }

    static Feed along(Wall wall, TakeUp takeUp) {
        return new Feed(takeUp.along(), wall.surface().meanStretchAlong());
    }

    /** By {@link #FED}. */
    long fedSteps(long wallSteps) {
        return (long) Math.ceil(wallSteps * share * stretch - FORGIVEN);
    }

    /** By {@link #REACH}. */
    long reachSteps(long filmSteps) {
        return isNone() ? filmSteps : (long) Math.floor(filmSteps / (1 + share * stretch));
    }

    /** By {@link #COVERED}. */
    long coveredSteps(long extraSteps) {
        return isNone() ? extraSteps : (long) Math.ceil(extraSteps / (1 + share * stretch));
    }

    boolean isNone() {
        return share == 0 || stretch == 0;
    }

    /** How the film fed in came about, or nothing where there is none. */
    Working[] workings(long wallSteps) {
        return isNone() ? new Working[0] : new Working[] {Working.of(FED, fedSteps(wallSteps), wallSteps, share, stretch, FORGIVEN)};
    }

    Working[] reachWorkings(long filmSteps) {
        return isNone() ? new Working[0] : new Working[] {Working.of(REACH, reachSteps(filmSteps), filmSteps, share, stretch)};
    }

    Working[] coveredWorkings(long extraSteps) {
        return isNone() || extraSteps == 0
                ? new Working[0]
                : new Working[] {Working.of(COVERED, coveredSteps(extraSteps), extraSteps, share, stretch)};
    }
}
