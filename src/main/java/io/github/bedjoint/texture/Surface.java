package io.github.bedjoint.texture;

import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.working.Explained;
import io.github.bedjoint.working.Verdict;
import io.github.bedjoint.working.Working;
import java.util.List;
import java.util.Optional;

/**
 * The texture of a wall: how much surface a square metre of it really has, and how far a film must stretch to follow it.
 *
 * <p>A stretch is a share of length: 0 is none, 1 is twice the length. It is never the area's ratio less one, since a film gives way in length.
 * All surfaces are immutable values.
 */
public sealed interface Surface extends Explained permits AdjustedSurface, FlatSurface, GridSurface, MasonrySurface, ProfileSurface, SpotSurface {
    /**
     * Developed area ratio r: area along the texture divided by the area seen from the front, 1 + Sdr (ISO 25178-2).
     *
     * @return 1 or more
     */
    double areaRatio();

    /**
     * The stretch that the steepest place asks for when the film is held at both of its arrises: at a joint raked d deep and j
     * wide 2 d / j.
     *
     * @return a share of length, 0 or more
     */
    default double localStretch() {
        return Math.max(localStretchUp(), localStretchAlong());
    }

    /**
     * The stretch up the wall that the steepest place asks for, such as a bed joint.
     *
     * @return a share of length, 0 or more
     */
    double localStretchUp();

    /**
     * The stretch along the wall that the steepest place asks for, such as a head joint.
     *
     * @return a share of length, 0 or more
     */
    double localStretchAlong();

    /**
     * The stretch up the wall when the film slides until it is even: length along the texture divided by height, less one.
     *
     * @return a share of length, 0 or more
     */
    double meanStretchUp();

    /**
     * The stretch along the wall when the film slides until it is even: length along the texture divided by width, less one.
     *
     * @return a share of length, 0 or more
     */
    double meanStretchAlong();

    /**
     * How the three stretches came about; {@link #working()} shows the ratio.
     *
     * @return the workings of local stretch, mean stretch up and mean stretch along, under one heading
     */
    Working stretchWorking();

    /**
     * How uncertain the ratio is, where the survey says how uncertain its measurements are.
     *
     * @return the standard uncertainty, or empty where nothing was said
     */
    default Optional<RatioUncertainty> uncertainty() {
        return Optional.empty();
    }

    /**
     * How much of the surface lies in joints.
     *
     * @return their developed area, or empty where joints and faces are not told apart, as on a measured surface
     */
    default Optional<JointAreas> joints() {
        return Optional.empty();
    }

    /**
     * What is to be said of how it was measured: what the spacing of points hides, and what their noise adds.
     *
     * @return verdicts, harmless ones included; none where nothing was measured point by point
     */
    default List<Verdict> measuring() {
        return List.of();
    }

    /**
     * The place that {@link #localStretch()} speaks of.
     *
     * @param style the reader's units
     * @return a few words, such as "bed joint raked 5 mm deep, 10 mm wide", or an empty text where no place is steep
     */
    String steepestPlace(UnitStyle style);

    /**
     * The surface in words.
     *
     * @param style the reader's units
     * @return one line without a full stop
     */
    String describe(UnitStyle style);
}
