package io.github.bedjoint.layout;

import io.github.bedjoint.survey.Side;
import io.github.bedjoint.survey.Wall;
import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.Steps;
import javax.measure.Quantity;
import javax.measure.quantity.Length;

/**
 * The rectangle on a wall that the picture fills, in steps of the wall.
 *
 * @param leftSteps   its left side
 * @param bottomSteps its lower side
 * @param rightSteps  its right side
 * @param topSteps    its upper side
 */
public record Picture(long leftSteps, long bottomSteps, long rightSteps, long topSteps) {
    private static final Range PLACE = Range.closed(-1000, 1000);

    /**
     * Checks that it has a size.
     *
     * @param leftSteps   its left side
     * @param bottomSteps its lower side
     * @param rightSteps  its right side
     * @param topSteps    its upper side
     * @throws io.github.bedjoint.units.RefusedException if it has no width or height
     */
    public Picture {
        Door.number("picture width", Steps.toM(rightSteps - leftSteps), Range.POSITIVE);
        Door.number("picture height", Steps.toM(topSteps - bottomSteps), Range.POSITIVE);
    }

    /**
     * A picture that fills a wall and the extra film at its edges.
     *
     * @param wall the wall
     * @return the least rectangle around the wall and its bleeds, tucks and turns
     */
    public static Picture over(Wall wall) {
        return new Picture(
                wall.outline().reach(Side.LEFT) - wall.edge(Side.LEFT).extraSteps(),
                wall.outline().reach(Side.BOTTOM) - wall.edge(Side.BOTTOM).extraSteps(),
                wall.outline().reach(Side.RIGHT) + wall.edge(Side.RIGHT).extraSteps(),
                wall.outline().reach(Side.TOP) + wall.edge(Side.TOP).extraSteps());
    }

    /**
     * A picture somewhere on the wall, or reaching beyond it.
     *
     * @param left   from the wall's origin to its left side, -1000 m to 1000 m
     * @param bottom from the wall's origin to its lower side, -1000 m to 1000 m
     * @param width  its width, above 0
     * @param height its height, above 0
     * @return the picture
     * @throws io.github.bedjoint.units.RefusedException if a length is absent or out of range
     */
    public static Picture at(Quantity<Length> left, Quantity<Length> bottom, Quantity<Length> width, Quantity<Length> height) {
        double x = Door.lengthM("picture left", left, PLACE);
        double y = Door.lengthM("picture bottom", bottom, PLACE);
        double w = Door.lengthM("picture width", width, Range.POSITIVE);
        double h = Door.lengthM("picture height", height, Range.POSITIVE);
        return new Picture(Steps.up(x), Steps.up(y), Steps.up(x + w), Steps.up(y + h));
    }
}
