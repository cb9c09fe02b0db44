package io.github.bedjoint.survey;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Print;
import io.github.bedjoint.units.Steps;
import io.github.bedjoint.units.UnitStyle;
import javax.measure.Quantity;
import javax.measure.quantity.Length;

/**
 * A joint within a wall that moves; the film is cut at it and never bridges it.
 *
 * @param upright whether it runs up the wall, else along it
 * @param atSteps x of an upright one, y of a level one
 */
public record MovementJoint(boolean upright, long atSteps) {
    /**
     * A joint that runs up the wall.
     *
     * @param x how far right of the origin, -1000 m to 1000 m, brought up to a whole step
     * @return the joint
     * @throws io.github.bedjoint.units.RefusedException if the length is absent or out of range
     */
    public static MovementJoint upright(Quantity<Length> x) {
        return new MovementJoint(true, Steps.up(Door.lengthM("movement joint", x, Point.REACH)));
    }

    /**
     * A joint that runs along the wall.
     *
     * @param y how far above the origin, -1000 m to 1000 m, brought up to a whole step
     * @return the joint
     * @throws io.github.bedjoint.units.RefusedException if the length is absent or out of range
     */
    public static MovementJoint level(Quantity<Length> y) {
        return new MovementJoint(false, Steps.up(Door.lengthM("movement joint", y, Point.REACH)));
    }

    /** Direction and place. */
    @Override
    public String toString() {
        return (upright ? "upright joint at x = " : "level joint at y = ") + Print.cut(atSteps, UnitStyle.METRIC);
    }
}
