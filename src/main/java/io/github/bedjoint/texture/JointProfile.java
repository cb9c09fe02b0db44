package io.github.bedjoint.texture;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.UnitStyle;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;
import tech.units.indriya.unit.Units;

/**
 * The shape of a mortar joint across its width: flush, raked, V, concave, half round, struck or weathered.
 *
 * <p>Stored are the kind and its one size (depth, angle or sagitta). The width belongs to the joint, not to the profile, so one profile serves beds
 * and heads of different width. Immutable.
 */
public final class JointProfile {
    /** Degree of angle, for {@link #vee}. */
    public static final Unit<Angle> DEGREE = Units.RADIAN.multiply(Math.PI / 180);

    private static final Range DEPTH = Range.above(0, 0.2);
    private static final Range OPENING = new Range(0, true, Math.PI, true);

    private final Kind kind;
    private final double size;

    private JointProfile(Kind kind, double size) {
        this.kind = kind;
        this.size = size;
    }

    /** The kinds of profile. */
    public enum Kind {
        /** Level with the faces of the units. */
        FLUSH,
        /** Set back with a flat floor and square sides. */
        RAKED,
        /** Two slopes that meet in the middle. */
        V,
        /** An arc of a circle between the two arrises. */
        CONCAVE,
        /** Half a circle over the width of the joint. */
        HALF_ROUND,
        /** One slope: level with the unit above, set back at the unit below, where it leaves a ledge. */
        STRUCK,
        /** One slope: set back under the unit above, level with the unit below, so that it sheds water. */
        WEATHERED;

        /** Whether a tool is drawn along beds and heads, so that the grooves cut through each other. */
        boolean isTooled() {
            return this == V || this == CONCAVE || this == HALF_ROUND;
        }

        /** Whether it is one slope with a ledge. */
        boolean isSloped() {
            return this == STRUCK || this == WEATHERED;
        }
    }

    /**
     * A flush joint.
     *
     * @return the profile
     */
    public static JointProfile flush() {
        return new JointProfile(Kind.FLUSH, 0);
    }

    /**
     * A raked joint.
     *
     * @param depth how far it is set back, above 0, at most 200 mm
     * @return the profile
     * @throws io.github.bedjoint.units.RefusedException if the depth is out of range
     */
    public static JointProfile raked(Quantity<Length> depth) {
        return new JointProfile(Kind.RAKED, Door.lengthM("raked depth", depth, DEPTH));
    }

    /**
     * A V joint. A joint j wide and d deep has the angle 2 atan(j / 2d).
     *
     * @param angle the angle between its two slopes, above 0 and below 180 degrees
     * @return the profile
     * @throws io.github.bedjoint.units.RefusedException if the angle is out of range
     */
    public static JointProfile vee(Quantity<Angle> angle) {
        return new JointProfile(Kind.V, Door.in(Measure.ANGLE, "V angle", angle, OPENING));
    }

    /**
     * A concave joint, an arc between the arrises.
     *
     * @param sagitta how deep it is in the middle, above 0, at most half the width of any joint it is used in
     * @return the profile
     * @throws io.github.bedjoint.units.RefusedException if the sagitta is out of range
     */
    public static JointProfile concave(Quantity<Length> sagitta) {
        return new JointProfile(Kind.CONCAVE, Door.lengthM("concave sagitta", sagitta, DEPTH));
    }

    /**
     * A half-round joint, half as deep as the joint is wide.
     *
     * @return the profile
     */
    public static JointProfile halfRound() {
        return new JointProfile(Kind.HALF_ROUND, 0);
    }

    /**
     * A struck joint: set back at the lower arris.
     *
     * @param recess how far it is set back there, above 0, at most 200 mm
     * @return the profile
     * @throws io.github.bedjoint.units.RefusedException if the recess is out of range
     */
    public static JointProfile struck(Quantity<Length> recess) {
        return new JointProfile(Kind.STRUCK, Door.lengthM("struck recess", recess, DEPTH));
    }

    /**
     * A weathered joint: set back at the upper arris.
     *
     * @param recess how far it is set back there, above 0, at most 200 mm
     * @return the profile
     * @throws io.github.bedjoint.units.RefusedException if the recess is out of range
     */
    public static JointProfile weathered(Quantity<Length> recess) {
        return new JointProfile(Kind.WEATHERED, Door.lengthM("weathered recess", recess, DEPTH));
    }

    /**
     * The kind of profile.
     *
     * @return the kind
     */
    public Kind kind() {
        return kind;
    }

    /**
     * What the kind of profile is given with.
     *
     * @return depth, sagitta or recess in metres, the angle of a V in radians, or 0 where the kind has no size
     */
    public double size() {
        return size;
    }

    /** A kind of profile with a depth in a joint of a width, both in metres; flush where the depth is 0. */
    static JointProfile atDepth(Kind kind, double depthM, double widthM) {
        if (kind == Kind.FLUSH || kind == Kind.HALF_ROUND) {
            throw new RefusedException("profile kind", kind.name(), "must be one with a depth of its own", "Maybe CONCAVE.");
        }
        if (depthM == 0) {
            return flush();
        }
        return new JointProfile(kind, kind == Kind.V ? 2 * Math.atan(widthM / (2 * depthM)) : depthM);
    }

    /** The same kind with another size: for the propagation of uncertainty. */
    JointProfile resized(double newSize) {
        return new JointProfile(kind, newSize);
    }

    /**
     * The profile in words.
     *
     * @param style the reader's units
     * @return a few words, such as "raked 5 mm"
     */
    public String describe(UnitStyle style) {
        return switch (kind) {
            case FLUSH -> "flush";
            case RAKED -> "raked " + length(style);
            case V -> "V of " + Measure.ANGLE.print(size, style);
            case CONCAVE -> "concave, " + length(style) + " deep";
            case HALF_ROUND -> "half round";
            case STRUCK -> "struck " + length(style);
            case WEATHERED -> "weathered " + length(style);
        };
    }

    private String length(UnitStyle style) {
        return Measure.LENGTH.print(size, style);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof JointProfile that && kind == that.kind && Double.compare(size, that.size) == 0;
    }

    @Override
    public int hashCode() {
        return Objects.hash(kind, size);
    }

    /** The profile in words and metric units. */
    @Override
    public String toString() {
        return describe(UnitStyle.METRIC);
    }
}
