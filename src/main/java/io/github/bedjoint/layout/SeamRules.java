package io.github.bedjoint.layout;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Print;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.Steps;
import io.github.bedjoint.units.UnitStyle;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * Where seams may run when {@link Fit#CHEAPEST} chooses their places: how far from openings, from upright edges of the wall and from
 * movement joints, and which masonry joints to stay off. By default anywhere, but never over an opening that must not be covered.
 *
 * <p>Joints across panels that are longer than any roll keep off openings and masonry joints under every {@link Fit}. Immutable.
 */
public final class SeamRules {
    private static final Range CLEARANCE = Range.closed(0, 10);

    private final long jamb;
    private final long corner;
    private final long movement;
    private final Optional<JointPhase> heads;
    private final Optional<JointPhase> beds;

    private SeamRules(long jamb, long corner, long movement, Optional<JointPhase> heads, Optional<JointPhase> beds) {
        this.jamb = jamb;
        this.corner = corner;
        this.movement = movement;
        this.heads = heads;
        this.beds = beds;
    }

    /**
     * No clearances, no joints to stay off.
     *
     * @return the rules
     */
    public static SeamRules withDefaults() {
        return new SeamRules(0, 0, 0, Optional.empty(), Optional.empty());
    }

    /**
     * The same with a clearance between an overlap and the sides of openings: jambs for drops, sill and head for bands and for joints
     * across drops.
     *
     * @param least 0 to 10 m; above 0 no overlap lies across a side either
     * @return new rules
     * @throws io.github.bedjoint.units.RefusedException if the length is absent or out of range
     */
    public SeamRules withJambClearance(Quantity<Length> least) {
        return new SeamRules(steps("jamb clearance", least), corner, movement, heads, beds);
    }

    /**
     * The same with a clearance between an overlap and edges of the wall that run beside it: its corners and the sides of steps.
     *
     * @param least 0 to 10 m
     * @return new rules
     * @throws io.github.bedjoint.units.RefusedException if the length is absent or out of range
     */
    public SeamRules withCornerClearance(Quantity<Length> least) {
        return new SeamRules(jamb, steps("corner clearance", least), movement, heads, beds);
    }

    /**
     * The same with a clearance between an overlap and movement joints that run beside it.
     *
     * @param least 0 to 10 m
     * @return new rules
     * @throws io.github.bedjoint.units.RefusedException if the length is absent or out of range
     */
    public SeamRules withMovementClearance(Quantity<Length> least) {
        return new SeamRules(jamb, corner, steps("movement joint clearance", least), heads, beds);
    }

    /**
     * The same with head joints that the edge of a drop stays off, and the edge on top of a joint across a band.
     *
     * @param joints the joints, measured along the wall
     * @return new rules
     */
    public SeamRules withHeadJoints(JointPhase joints) {
        return new SeamRules(jamb, corner, movement, Optional.of(joints), beds);
    }

    /**
     * The same with bed joints that the edge of a band stays off, and the edge on top of a joint across a drop, so that it lies on faces
     * of units.
     *
     * @param joints the joints, measured up the wall
     * @return new rules
     */
    public SeamRules withBedJoints(JointPhase joints) {
        return new SeamRules(jamb, corner, movement, heads, Optional.of(joints));
    }

    private static long steps(String parameter, Quantity<Length> length) {
        return Steps.up(Door.lengthM(parameter, length, CLEARANCE));
    }

    /**
     * The clearance between an overlap and the sides of openings.
     *
     * @return steps
     */
    public long jambSteps() {
        return jamb;
    }

    /**
     * The clearance between an overlap and edges of the wall.
     *
     * @return steps
     */
    public long cornerSteps() {
        return corner;
    }

    /**
     * The clearance between an overlap and movement joints.
     *
     * @return steps
     */
    public long movementSteps() {
        return movement;
    }

    /**
     * The head joints that the edge of a drop stays off.
     *
     * @return the joints, or empty
     */
    public Optional<JointPhase> headJoints() {
        return heads;
    }

    /**
     * The bed joints that the edge of a band stays off.
     *
     * @return the joints, or empty
     */
    public Optional<JointPhase> bedJoints() {
        return beds;
    }

    private List<Object> parts() {
        return List.of(jamb, corner, movement, heads, beds);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof SeamRules that && parts().equals(that.parts());
    }

    @Override
    public int hashCode() {
        return parts().hashCode();
    }

    /** Clearances, and whether joints are stayed off. */
    @Override
    public String toString() {
        return "clear of jambs " + cut(jamb) + ", of corners " + cut(corner) + ", of movement joints " + cut(movement)
                + heads.map(phase -> ", off head joints").orElse("") + beds.map(phase -> ", off bed joints").orElse("");
    }

    private static String cut(long steps) {
        return Print.cut(steps, UnitStyle.METRIC);
    }

    /** What a metre of seam costs more whose edge on top lies at u. */
    double besideJointPerM(Frame frame, long u) {
        return beside(frame.direction()).map(phase -> phase.perMAt(frame.place(u))).orElse(0.0);
    }

    Optional<JointPhase> beside(Direction direction) {
        return direction == Direction.DROPS ? heads : beds;
    }

    /** What a metre of a joint across a panel costs more whose edge on top lies there along it. */
    double acrossJointPerM(Direction direction, long place) {
        return across(direction).map(phase -> phase.perMAt(place)).orElse(0.0);
    }

    /** The masonry joints that a joint across a panel keeps off. */
    Optional<JointPhase> across(Direction direction) {
        return direction == Direction.DROPS ? beds : heads;
    }
}
