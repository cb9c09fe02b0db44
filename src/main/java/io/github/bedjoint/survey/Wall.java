package io.github.bedjoint.survey;

import io.github.bedjoint.texture.FlatSurface;
import io.github.bedjoint.texture.Surface;
import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.Steps;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * One plane face of a building: its outline, openings, edges, surface, and how people reach it.
 *
 * <p>Stored are corners and openings in whole steps as one stands before the wall. Until told otherwise the surface is flat, each side
 * is a free edge cut flush, there are no openings, one works from the ground, and lengths are exact. Openings must lie inside and may not overlap.
 * Immutable.
 */
public final class Wall {
    private static final Range SIZE = Range.above(0, 1000);
    private static final int MOST_OPENINGS = 1000;

    private final String name;
    private final Outline outline;
    private final List<Opening> openings;
    private final Map<Side, Edge> edges;
    private final Surface surface;
    private final Access access;
    private final List<MovementJoint> joints;
    private final LengthTolerance tolerance;

    private Wall(
            String name, Outline outline, List<Opening> openings, Map<Side, Edge> edges, Surface surface, Access access,
            List<MovementJoint> joints, LengthTolerance tolerance) {
        this.name = name;
        this.outline = outline;
        this.openings = openings;
        this.edges = edges;
        this.surface = surface;
        this.access = access;
        this.joints = joints;
        this.tolerance = tolerance;
    }

    /**
     * A rectangular wall with the origin at its lower left corner.
     *
     * @param name   what the survey calls it
     * @param width  above 0, at most 1000 m, brought up to a whole step
     * @param height above 0, at most 1000 m, brought up to a whole step
     * @return the wall
     * @throws RefusedException if the name is blank or a size is absent or out of range
     */
    public static Wall rectangle(String name, Quantity<Length> width, Quantity<Length> height) {
        long w = Steps.up(Door.lengthM("wall width", width, SIZE));
        long h = Steps.up(Door.lengthM("wall height", height, SIZE));
        return polygon(name, List.of(new Point(0, 0), new Point(w, 0), new Point(w, h), new Point(0, h)));
    }

    /**
     * A wall with straight edges of any shape that does not cross itself, such as a gable.
     *
     * @param name    what the survey calls it
     * @param outline 3 to 500 corners in order, either way round
     * @return the wall
     * @throws RefusedException if the name is blank or the outline crosses itself or has no area
     */
    public static Wall polygon(String name, List<Point> outline) {
        Map<Side, Edge> edges = new EnumMap<>(Side.class);
        for (Side side : Side.values()) {
            edges.put(side, Edge.flush(Edge.Kind.FREE));
        }
        return new Wall(
                Door.text("wall name", name), Outline.of(outline), List.of(), edges, FlatSurface.flat(), Access.GROUND,
                List.of(), LengthTolerance.none());
    }

    /**
     * The same with another surface.
     *
     * @param other its texture
     * @return a new wall
     */
    public Wall withSurface(Surface other) {
        return new Wall(name, outline, openings, edges, other, access, joints, tolerance);
    }

    /**
     * The same with these openings in place of those it had.
     *
     * @param all the openings; rims may touch each other and the outline
     * @return a new wall
     * @throws RefusedException if an opening is not inside the outline or overlaps another
     */
    public Wall withOpenings(List<Opening> all) {
        Door.count("openings", all.size(), 0, MOST_OPENINGS);
        for (int i = 0; i < all.size(); i++) {
            Opening opening = all.get(i);
            String parameter = "openings[" + i + "]";
            if (!outline.holds(opening.leftSteps(), opening.bottomSteps(), opening.rightSteps(), opening.topSteps())) {
                throw new RefusedException(parameter, opening.toString(), "must lie inside the wall", "Maybe its left or bottom"
                        + " is measured from another corner.");
            }
            for (int j = 0; j < i; j++) {
                if (opening.overlaps(all.get(j))) {
                    throw new RefusedException(parameter, opening.toString(), "must not overlap openings[" + j + "]",
                            "Maybe it is given twice.");
                }
            }
        }
        return new Wall(name, outline, List.copyOf(all), edges, surface, access, joints, tolerance);
    }

    /**
     * The same with one opening more.
     *
     * @param opening the opening
     * @return a new wall
     * @throws RefusedException if it is not inside the outline or overlaps another
     */
    public Wall withOpening(Opening opening) {
        Opening[] more = Arrays.copyOf(openings.toArray(new Opening[0]), openings.size() + 1);
        more[openings.size()] = opening;
        return withOpenings(Arrays.asList(more));
    }

    /**
     * The same with another edge on one side; it holds for every edge of the outline that faces this side.
     *
     * @param side which side
     * @param edge what it ends at
     * @return a new wall
     */
    public Wall withEdge(Side side, Edge edge) {
        Map<Side, Edge> changed = new EnumMap<>(edges);
        changed.put(side, edge);
        return new Wall(name, outline, openings, changed, surface, access, joints, tolerance);
    }

    /**
     * The same with another access.
     *
     * @param other how people reach it
     * @return a new wall
     */
    public Wall withAccess(Access other) {
        return new Wall(name, outline, openings, edges, surface, other, joints, tolerance);
    }

    /**
     * The same with these movement joints in place of those it had.
     *
     * @param all joints that run through the wall
     * @return a new wall
     * @throws RefusedException if a joint does not cross the wall
     */
    public Wall withMovementJoints(List<MovementJoint> all) {
        Door.count("movement joints", all.size(), 0, MOST_OPENINGS);
        for (int i = 0; i < all.size(); i++) {
            MovementJoint joint = all.get(i);
            long low = outline.reach(joint.upright() ? Side.LEFT : Side.BOTTOM);
            long high = outline.reach(joint.upright() ? Side.RIGHT : Side.TOP);
            if (joint.atSteps() <= low || joint.atSteps() >= high) {
                throw new RefusedException("movement joints[" + i + "]", joint.toString(), "must cross the wall",
                        "Maybe it is measured from another corner.");
            }
        }
        return new Wall(name, outline, openings, edges, surface, access, List.copyOf(all), tolerance);
    }

    /**
     * The same with standard uncertainties of its lengths and those of its openings.
     *
     * @param other the uncertainties
     * @return a new wall
     */
    public Wall withTolerance(LengthTolerance other) {
        return new Wall(name, outline, openings, edges, surface, access, joints, other);
    }

    /**
     * What the survey calls it.
     *
     * @return the name
     */
    public String name() {
        return name;
    }

    /**
     * Its rim.
     *
     * @return the outline
     */
    public Outline outline() {
        return outline;
    }

    /**
     * Its openings.
     *
     * @return the openings in the order given
     */
    public List<Opening> openings() {
        return openings;
    }

    /**
     * Its movement joints.
     *
     * @return the joints in the order given
     */
    public List<MovementJoint> movementJoints() {
        return joints;
    }

    /**
     * What a side ends at.
     *
     * @param side which side
     * @return its edge
     */
    public Edge edge(Side side) {
        return Objects.requireNonNull(edges.get(side));
    }

    /**
     * What all sides end at.
     *
     * @return the edge of each side
     */
    public Map<Side, Edge> edges() {
        return Collections.unmodifiableMap(edges);
    }

    /**
     * Its texture.
     *
     * @return the surface
     */
    public Surface surface() {
        return surface;
    }

    /**
     * How people reach it.
     *
     * @return the access
     */
    public Access access() {
        return access;
    }

    /**
     * How uncertain its lengths are.
     *
     * @return the standard uncertainties
     */
    public LengthTolerance tolerance() {
        return tolerance;
    }

    /**
     * Greatest width.
     *
     * @return the length in metres
     */
    public Quantity<Length> width() {
        return Steps.toLength(widthSteps());
    }

    /**
     * Greatest height.
     *
     * @return the length in metres
     */
    public Quantity<Length> height() {
        return Steps.toLength(heightSteps());
    }

    /**
     * Greatest width in steps.
     *
     * @return steps from the leftmost to the rightmost corner
     */
    public long widthSteps() {
        return outline.reach(Side.RIGHT) - outline.reach(Side.LEFT);
    }

    /**
     * Greatest height in steps.
     *
     * @return steps from the lowest to the highest corner
     */
    public long heightSteps() {
        return outline.reach(Side.TOP) - outline.reach(Side.BOTTOM);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Wall that
                && name.equals(that.name)
                && outline.equals(that.outline)
                && openings.equals(that.openings)
                && edges.equals(that.edges)
                && surface.equals(that.surface)
                && access == that.access
                && joints.equals(that.joints)
                && tolerance.equals(that.tolerance);
    }

    @Override
    public int hashCode() {
        return Objects.hash(name, outline, openings, edges, surface, access, joints, tolerance);
    }

    /** Name, size, surface and openings. */
    @Override
    public String toString() {
        return name + ", " + Steps.toM(widthSteps()) + " x " + Steps.toM(heightSteps()) + " m, " + surface + ", "
                + openings.size() + " openings";
    }
}
