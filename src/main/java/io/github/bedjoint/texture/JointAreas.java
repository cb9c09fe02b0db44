package io.github.bedjoint.texture;

import io.github.bedjoint.units.Print;
import io.github.bedjoint.working.Explained;

/**
 * How much of a wall's surface lies in its joints: developed area of the joints to the area of the wall, for those that run along the wall and those
 * that run up it. What is left of the developed area ratio is unit faces.
 */
public interface JointAreas extends Explained {
    /**
     * Bed joints with the places where heads end in them; they ask the film to stretch up the wall.
     *
     * @return developed area to the area of the wall, 0 or more
     */
    double level();

    /**
     * Head joints over the height of the units; they ask the film to stretch along the wall.
     *
     * @return developed area to the area of the wall, 0 or more
     */
    double upright();

    /**
     * Both in words.
     *
     * @return one line without a full stop
     */
    default String describe() {
        return Print.fixed(level(), 4) + " m² of level joints and " + Print.fixed(upright(), 4) + " m² of upright ones in each m² of wall";
    }
}
