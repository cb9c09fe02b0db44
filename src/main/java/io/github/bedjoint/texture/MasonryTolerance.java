package io.github.bedjoint.texture;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.RefusedException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * Standard uncertainties of the sizes of a masonry surface, each 0 until given; they are taken as independent.
 *
 * <p>A ruler read to 1 mm has a standard uncertainty of 0.29 mm (half the interval by the root of three), but walls vary more than rulers: measure
 * several units and joints and give their standard deviation by the root of their number. Immutable.
 */
public final class MasonryTolerance {
    private static final Range LENGTH = Range.closed(0, 0.1);
    private static final Range RATIO = Range.closed(0, 1);
    private static final Range ANGLE = Range.closed(0, 0.5);

    private final Map<Input, Double> inputs;

    private MasonryTolerance(Map<Input, Double> inputs) {
        this.inputs = inputs;
    }

    /** The inputs of a masonry surface. */
    public enum Input {
        /** Length of a unit's face. */
        UNIT_LENGTH("unit length"),
        /** Height of a unit's face. */
        UNIT_HEIGHT("unit height"),
        /** Width of the head joint. */
        HEAD_JOINT("head joint"),
        /** Width of the bed joint. */
        BED_JOINT("bed joint"),
        /** Depth, recess or sagitta. */
        DEPTH("depth"),
        /** Angle of a V. */
        ANGLE("angle"),
        /** Developed area ratio of the unit faces. */
        FACE_RATIO("face ratio");

        private final String words;

        Input(String words) {
            this.words = words;
        }
    }

    /**
     * No uncertainty at all.
     *
     * @return the tolerances
     */
    public static MasonryTolerance none() {
        return new MasonryTolerance(new EnumMap<>(Input.class));
    }

    /**
     * The same with an uncertainty of the unit's length.
     *
     * @param u standard uncertainty, 0 to 100 mm
     * @return the tolerances
     * @throws RefusedException if it is out of range
     */
    public MasonryTolerance withUnitLength(Quantity<Length> u) {
        return with(Input.UNIT_LENGTH, length(Input.UNIT_LENGTH, u));
    }

    /**
     * The same with an uncertainty of the unit's height.
     *
     * @param u standard uncertainty, 0 to 100 mm
     * @return the tolerances
     * @throws RefusedException if it is out of range
     */
    public MasonryTolerance withUnitHeight(Quantity<Length> u) {
        return with(Input.UNIT_HEIGHT, length(Input.UNIT_HEIGHT, u));
    }

    /**
     * The same with an uncertainty of the head joint's width.
     *
     * @param u standard uncertainty, 0 to 100 mm
     * @return the tolerances
     * @throws RefusedException if it is out of range
     */
    public MasonryTolerance withHeadJoint(Quantity<Length> u) {
        return with(Input.HEAD_JOINT, length(Input.HEAD_JOINT, u));
    }

    /**
     * The same with an uncertainty of the bed joint's width.
     *
     * @param u standard uncertainty, 0 to 100 mm
     * @return the tolerances
     * @throws RefusedException if it is out of range
     */
    public MasonryTolerance withBedJoint(Quantity<Length> u) {
        return with(Input.BED_JOINT, length(Input.BED_JOINT, u));
    }

    /**
     * The same with an uncertainty of the depth, recess or sagitta, which moves beds and heads together; no matter to a V, which has an angle.
     *
     * @param u standard uncertainty, 0 to 100 mm
     * @return the tolerances
     * @throws RefusedException if it is out of range
     */
    public MasonryTolerance withDepth(Quantity<Length> u) {
        return with(Input.DEPTH, length(Input.DEPTH, u));
    }

    /**
     * The same with an uncertainty of the angle of a V, which moves beds and heads together.
     *
     * @param u standard uncertainty, 0 to 0.5 radian
     * @return the tolerances
     * @throws RefusedException if it is out of range
     */
    public MasonryTolerance withAngle(Quantity<Angle> u) {
        return with(Input.ANGLE, Door.in(Measure.ANGLE, "uncertainty of the angle", u, ANGLE));
    }

    /**
     * The same with an uncertainty of the developed area ratio of the unit faces.
     *
     * @param u standard uncertainty, 0 to 1
     * @return the tolerances
     * @throws RefusedException if it is out of range
     */
    public MasonryTolerance withFaceRatio(double u) {
        return with(Input.FACE_RATIO, Door.number("uncertainty of the face ratio", u, RATIO));
    }

    private static double length(Input input, Quantity<Length> u) {
        return Door.lengthM("uncertainty of the " + input.words, u, LENGTH);
    }

    private MasonryTolerance with(Input input, double u) {
        Map<Input, Double> changed = new EnumMap<>(inputs);
        changed.put(input, u);
        return new MasonryTolerance(changed);
    }

    /**
     * One of the uncertainties.
     *
     * @param input which
     * @return metres, radians for the angle, a plain number for the face ratio; 0 where none was given
     */
    public double inner(Input input) {
        return inputs.getOrDefault(input, 0.0);
    }

    /**
     * Whether any uncertainty was given.
     *
     * @return false where all are 0
     */
    public boolean isNone() {
        return inputs.values().stream().allMatch(u -> u == 0);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof MasonryTolerance that && Arrays.stream(Input.values()).allMatch(input -> inner(input) == that.inner(input));
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(Arrays.stream(Input.values()).mapToDouble(this::inner).toArray());
    }

    /** The uncertainties given, in inner units: {@code standard uncertainties {DEPTH=5.0E-4}}. */
    @Override
    public String toString() {
        return "standard uncertainties " + inputs;
    }

    /**
     * What these uncertainties make of a surface's ratio.
     *
     * @param surface the surface
     * @return the uncertainty of its ratio
     * @throws RefusedException if a size less its uncertainty, or with it, is no longer possible
     */
    public RatioUncertainty of(MasonrySurface surface) {
        List<RatioUncertainty.Moved> parts = new ArrayList<>();
        inputs.forEach((input, u) -> {
            if (u > 0) {
                parts.add(new RatioUncertainty.Moved(
                        input.words, moved(surface, input, u).areaRatio(), moved(surface, input, -u).areaRatio()));
            }
        });
        return new RatioUncertainty(surface.areaRatio(), parts);
    }

    private static MasonrySurface moved(MasonrySurface surface, Input input, double by) {
        MasonrySizes sizes = surface.sizes();
        return MasonrySurface.of(switch (input) {
            case UNIT_LENGTH -> sizes.moved(by, 0, 0, 0, 0, 0, 0);
            case UNIT_HEIGHT -> sizes.moved(0, by, 0, 0, 0, 0, 0);
            case HEAD_JOINT -> sizes.moved(0, 0, by, 0, 0, 0, 0);
            case BED_JOINT -> sizes.moved(0, 0, 0, by, 0, 0, 0);
            case DEPTH -> sizes.moved(0, 0, 0, 0, by, 0, 0);
            case ANGLE -> sizes.moved(0, 0, 0, 0, 0, by, 0);
            case FACE_RATIO -> sizes.moved(0, 0, 0, 0, 0, 0, by);
        });
    }
}
