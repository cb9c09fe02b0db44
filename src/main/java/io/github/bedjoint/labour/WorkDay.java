package io.github.bedjoint.labour;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Range;
import javax.measure.Quantity;
import javax.measure.quantity.Time;

/**
 * A day of the crew on site: how long the shift is and how long the crew travels, to the site and back.
 *
 * @param shiftS   length of the shift in seconds, more than 0 and at most 24 h
 * @param travelS  travel of each person per day in seconds, 0 to 24 h
 * @param inShift  whether travel takes place within the shift; otherwise it comes on top and is paid as well
 */
public record WorkDay(double shiftS, double travelS, boolean inShift) {
    private static final double DAY_S = 86_400;

    /**
     * Checks both times.
     *
     * @param shiftS   length of the shift in seconds, more than 0 and at most 24 h
     * @param travelS  travel of each person per day in seconds, 0 to 24 h
     * @param inShift  whether travel takes place within the shift; otherwise it comes on top and is paid as well
     * @throws io.github.bedjoint.units.RefusedException if one cannot be accepted
     */
    public WorkDay {
        Door.in(Measure.TIME, shiftS, "shift", Range.above(0, DAY_S));
        Door.in(Measure.TIME, travelS, "travel", Range.closed(0, DAY_S));
    }

    /**
     * A day without travel.
     *
     * @param shift more than 0 and at most 24 h
     * @return the day
     * @throws io.github.bedjoint.units.RefusedException if it cannot be accepted
     */
    public static WorkDay of(Quantity<Time> shift) {
        return new WorkDay(Door.timeS("shift", shift, Range.above(0, DAY_S)), 0, true);
    }

    /**
     * The same with travel that the shift includes.
     *
     * @param perDay there and back, 0 to 24 h
     * @return a new day
     * @throws io.github.bedjoint.units.RefusedException if it cannot be accepted
     */
    public WorkDay withTravelInShift(Quantity<Time> perDay) {
        return new WorkDay(shiftS, Door.timeS("travel", perDay, Range.closed(0, DAY_S)), true);
    }

    /**
     * The same with travel that is paid on top of the shift.
     *
     * @param perDay there and back, 0 to 24 h
     * @return a new day
     * @throws io.github.bedjoint.units.RefusedException if it cannot be accepted
     */
    public WorkDay withTravelOutsideShift(Quantity<Time> perDay) {
        return new WorkDay(shiftS, Door.timeS("travel", perDay, Range.closed(0, DAY_S)), false);
    }

    /** Travel that shortens the work of a day. */
    double travelWithinS() {
        return inShift ? travelS : 0;
    }
}
