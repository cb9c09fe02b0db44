package io.github.bedjoint.survey;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Print;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.Steps;
import io.github.bedjoint.units.UnitStyle;
import javax.measure.Quantity;
import javax.measure.quantity.Length;

/**
 * A rectangular opening in a wall, or a thing on it that film goes around: a door, a window, a vent.
 *
 * <p>Stored are its four sides in steps. Immutable.
 *
 * @param kind        what it is
 * @param leftSteps   its left side
 * @param bottomSteps its lower side
 * @param rightSteps  its right side
 * @param topSteps    its upper side
 * @param treatment   what the film does there
 * @param turnSteps   how far the film is turned in, for {@link Treatment#TURNED_IN}
 */
public record Opening(
        Kind kind, long leftSteps, long bottomSteps, long rightSteps, long topSteps, Treatment treatment, long turnSteps) {

    /** What an opening is. */
    public enum Kind {
        /** A door; one that stands on the ground shortens the ground edge. */
        DOOR,
        /** A window. */
        WINDOW,
        /** A vent, which must stay open. */
        VENT,
        /** A weep hole, which must stay open. */
        WEEP_HOLE,
        /** An alarm or detector, which must stay free. */
        ALARM,
        /** A sign that stays on the wall. */
        SIGN,
        /** Anything else. */
        OTHER;

        boolean mustStayOpen() {
            return this == VENT || this == WEEP_HOLE || this == ALARM;
        }
    }

    /** What the film does at an opening. */
    public enum Treatment {
        /** The film is hung over it and trimmed flush with its rim. */
        TRIMMED,
        /** The film is hung over it, cut, and turned into the reveal. */
        TURNED_IN,
        /** The film is left whole over it: nothing is cut out, and what covers it is seen. */
        LEFT_WHOLE,
        /** The film is cut out before it is hung; it never covers the opening, not even for a moment. */
        NEVER_COVERED
    }

    /**
     * Checks that it has a size, and that what must stay open does.
     *
     * @param kind        what it is
     * @param leftSteps   its left side
     * @param bottomSteps its lower side
     * @param rightSteps  its right side
     * @param topSteps    its upper side
     * @param treatment   what the film does there
     * @param turnSteps   how far the film is turned in, for {@link Treatment#TURNED_IN}
     * @throws RefusedException if it has no width or height, a turn that is negative or belongs to another treatment, or if a vent,
     *     weep hole or alarm would be covered
     */
    public Opening {
        new Point(leftSteps, bottomSteps);
        new Point(rightSteps, topSteps);
        Door.number("opening width", Steps.toM(rightSteps - leftSteps), Range.POSITIVE);
        Door.number("opening height", Steps.toM(topSteps - bottomSteps), Range.POSITIVE);
        Door.number("turned in by", Steps.toM(turnSteps), Range.closed(0, 10));
        if (turnSteps > 0 && treatment != Treatment.TURNED_IN) {
            throw new RefusedException("turned in by", Print.cut(turnSteps, UnitStyle.METRIC),
                    "must be 0 mm where the film is not turned in", "Maybe the treatment is missing.");
        }
        if (kind.mustStayOpen() && treatment != Treatment.NEVER_COVERED) {
            throw new RefusedException("treatment", treatment.toString(), "must be NEVER_COVERED for " + kind,
                    "Maybe it is another kind of opening.");
        }
    }

    /**
     * An opening; vents, weep holes, alarms and signs are never covered, any other is trimmed flush until told otherwise. Its sides
     * are brought up to the next whole step.
     *
     * @param kind   what it is
     * @param left   from the origin to its left side, -1000 m to 1000 m
     * @param bottom from the origin to its lower side, -1000 m to 1000 m
     * @param width  its width, above 0
     * @param height its height, above 0
     * @return the opening
     * @throws RefusedException if a length is absent or out of range
     */
    public static Opening of(
            Kind kind, Quantity<Length> left, Quantity<Length> bottom, Quantity<Length> width, Quantity<Length> height) {
        double x = Door.lengthM("opening left", left, Point.REACH);
        double y = Door.lengthM("opening bottom", bottom, Point.REACH);
        double w = Door.lengthM("opening width", width, Range.POSITIVE);
        double h = Door.lengthM("opening height", height, Range.POSITIVE);
        Treatment treatment = kind.mustStayOpen() || kind == Kind.SIGN ? Treatment.NEVER_COVERED : Treatment.TRIMMED;
        return new Opening(kind, Steps.up(x), Steps.up(y), Steps.up(x + w), Steps.up(y + h), treatment, 0);
    }

    /**
     * The same with another treatment; for turning in see {@link #turnedIn}.
     *
     * @param other what the film does there
     * @return a new opening
     * @throws RefusedException if it must stay open and would be covered
     */
    public Opening withTreatment(Treatment other) {
        return new Opening(kind, leftSteps, bottomSteps, rightSteps, topSteps, other, 0);
    }

    /**
     * The same with the film turned into the reveal.
     *
     * @param by how far, 0 to 10 m, brought up to a whole step
     * @return a new opening
     * @throws RefusedException if the length is absent or out of range, or the opening must stay open
     */
    public Opening turnedIn(Quantity<Length> by) {
        long turn = Steps.up(Door.lengthM("turned in by", by, Range.closed(0, 10)));
        return new Opening(kind, leftSteps, bottomSteps, rightSteps, topSteps, Treatment.TURNED_IN, turn);
    }

    /**
     * Its area.
     *
     * @return square metres
     */
    public double areaM2() {
        return Steps.toM(rightSteps - leftSteps) * Steps.toM(topSteps - bottomSteps);
    }

    /**
     * Whether the wall stays open there, so that its area is not part of the visible area.
     *
     * @return false where the film is left whole over it
     */
    public boolean staysOpen() {
        return treatment != Treatment.LEFT_WHOLE;
    }

    /** Whether the two have inner points in common; rims may touch. */
    boolean overlaps(Opening other) {
        return leftSteps < other.rightSteps && other.leftSteps < rightSteps
                && bottomSteps < other.topSteps && other.bottomSteps < topSteps;
    }

    /** Kind, sides and treatment. */
    @Override
    public String toString() {
        return kind + " " + new Point(leftSteps, bottomSteps) + " to " + new Point(rightSteps, topSteps) + ", " + treatment
                + (turnSteps > 0 ? " by " + Print.cut(turnSteps, UnitStyle.METRIC) : "");
    }
}
