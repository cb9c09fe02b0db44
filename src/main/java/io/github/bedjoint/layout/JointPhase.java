package io.github.bedjoint.layout;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.Steps;
import javax.measure.Quantity;
import javax.measure.quantity.Length;

/**
 * Masonry joints that run beside a seam, repeating across the wall: where an edge of film on top should not lie, or what it costs there.
 *
 * @param periodSteps    from joint to joint: course height, or half a unit with its joint in stretcher bond
 * @param offsetSteps    from the wall's origin to the middle of one of them
 * @param clearanceSteps how near the edge may come to the middle of a joint: half the joint and what is wished beyond
 * @param perM           what a metre of seam costs more there; infinite where it is forbidden
 */
public record JointPhase(long periodSteps, long offsetSteps, long clearanceSteps, double perM) {
    private static final Range PERIOD = Range.closed(0.01, 100);

    /**
     * Checks the sizes.
     *
     * @param periodSteps    10 mm to 100 m
     * @param offsetSteps    any
     * @param clearanceSteps above 0, less than half the period
     * @param perM           above 0, may be infinite
     * @throws RefusedException if the clearances of two joints meet, or a size is out of range
     */
    public JointPhase {
        Door.number("joint period", Steps.toM(periodSteps), PERIOD);
        Door.number("joint offset", Steps.toM(offsetSteps), Range.closed(-1000, 1000));
        if (clearanceSteps <= 0 || 2 * clearanceSteps >= periodSteps) {
            throw new RefusedException("joint clearance", Steps.toM(clearanceSteps) + " m",
                    "must be more than 0 m and less than half the period of " + Steps.toM(periodSteps) + " m",
                    "Maybe the clearance to both sides was meant.");
        }
        if (!(perM > 0)) {
            throw new RefusedException("cost beside a joint", Double.toString(perM), "must be more than 0",
                    "Maybe there is nothing against an edge there.");
        }
    }

    /**
     * Joints beside which no edge may lie.
     *
     * @param period    from joint to joint, 10 mm to 100 m
     * @param offset    from the wall's origin to the middle of one of them
     * @param clearance how near the edge may come to the middle, above 0, less than half the period
     * @return the joints
     * @throws RefusedException if a length is absent or out of range
     */
    public static JointPhase forbidden(Quantity<Length> period, Quantity<Length> offset, Quantity<Length> clearance) {
        return priced(period, offset, clearance, Double.POSITIVE_INFINITY);
    }

    /**
     * Joints beside which an edge costs more.
     *
     * @param period    from joint to joint, 10 mm to 100 m
     * @param offset    from the wall's origin to the middle of one of them
     * @param clearance how near the edge may come to the middle at no extra cost, above 0, less than half the period
     * @param perM      what a metre of seam costs more there, above 0
     * @return the joints
     * @throws RefusedException if a length is absent or out of range
     */
    public static JointPhase priced(Quantity<Length> period, Quantity<Length> offset, Quantity<Length> clearance, double perM) {
        return new JointPhase(
                Steps.up(Door.lengthM("joint period", period, PERIOD)),
                Steps.up(Door.lengthM("joint offset", offset, Range.closed(-1000, 1000))),
                Steps.up(Door.lengthM("joint clearance", clearance, Range.POSITIVE)),
                perM);
    }

    /** What a metre of seam costs more whose edge lies at a place on the wall. */
    double perMAt(long place) {
        long beyond = Math.floorMod(place - offsetSteps, periodSteps);
        return Math.min(beyond, periodSteps - beyond) < clearanceSteps ? perM : 0;
    }

    /** The nearest place at which an edge costs nothing, the place itself or above it, or below. */
    long keptOff(long place, boolean up) {
        long beyond = Math.floorMod(place - offsetSteps + clearanceSteps, periodSteps);
        return beyond == 0 || beyond >= 2 * clearanceSteps ? place : place - beyond + (up ? 2 * clearanceSteps : 0);
    }

    /**
     * Whether no edge may lie there at all.
     *
     * @return true if so, false where it costs more
     */
    public boolean isForbidden() {
        return Double.isInfinite(perM);
    }
}
