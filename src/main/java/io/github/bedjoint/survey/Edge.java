package io.github.bedjoint.survey;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Print;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.Steps;
import io.github.bedjoint.units.UnitStyle;
import javax.measure.Quantity;
import javax.measure.quantity.Length;

/**
 * What a side of a wall ends at, what length of film it adds to the cut, and whether the film's edge is sealed there.
 *
 * @param kind       what the side ends at
 * @param extraSteps the length added to the cut: bleed, tuck or corner turn
 * @param sealed     whether the film's edge is sealed
 */
public record Edge(Kind kind, long extraSteps, boolean sealed) {
    private static final Range EXTRA = Range.closed(0, 10);

    /** What a side of a wall ends at. */
    public enum Kind {
        /** Open all round: the film ends on the wall's rim. */
        FREE,
        /** Paving or soil, into which the film may be tucked. */
        GROUND,
        /** The underside of a roof or ledge. */
        SOFFIT,
        /** A corner that a wall beside it closes. */
        INSIDE_CORNER,
        /** A corner around which the film may be turned. */
        OUTSIDE_CORNER,
        /** A joint that moves: the film is cut there and never bridges it. */
        MOVEMENT_JOINT
    }

    /**
     * Checks the extra length.
     *
     * @param kind       what the side ends at
     * @param extraSteps the length added to the cut: bleed, tuck or corner turn
     * @param sealed     whether the film's edge is sealed
     * @throws io.github.bedjoint.units.RefusedException if it is negative or above 10 m
     */
    public Edge {
        Door.number("edge extra", Steps.toM(extraSteps), EXTRA);
    }

    /**
     * An edge; a ground edge is sealed, since water stands there, any other is not until {@link #withSealed} says so.
     *
     * @param kind  what the side ends at
     * @param extra the length added to the cut (bleed, tuck or turn), 0 to 10 m, brought up to a whole step
     * @return the edge
     * @throws io.github.bedjoint.units.RefusedException if the length is absent, negative or above 10 m
     */
    public static Edge of(Kind kind, Quantity<Length> extra) {
        return new Edge(kind, Steps.up(Door.lengthM("edge extra", extra, EXTRA)), kind == Kind.GROUND);
    }

    /**
     * An edge at which the film is cut flush.
     *
     * @param kind what the side ends at
     * @return the edge without extra length
     */
    public static Edge flush(Kind kind) {
        return new Edge(kind, 0, kind == Kind.GROUND);
    }

    /**
     * The same with the film's edge sealed or not.
     *
     * @param yes whether it is sealed
     * @return a new edge
     */
    public Edge withSealed(boolean yes) {
        return new Edge(kind, extraSteps, yes);
    }

    /** Kind and extra length: {@code GROUND + 30.0 mm, sealed}. */
    @Override
    public String toString() {
        return kind + " + " + Print.cut(extraSteps, UnitStyle.METRIC) + (sealed ? ", sealed" : "");
    }
}
