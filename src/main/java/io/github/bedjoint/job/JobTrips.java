package io.github.bedjoint.job;

import io.github.bedjoint.labour.Labour;
import io.github.bedjoint.labour.Trip;
import java.util.ArrayList;
import java.util.List;

/**
 * The trips of a job beside its installing days: those that were given, and the usual one to wash the wall where no other does it.
 *
 * <p>The usual one is made by the crew on site with the travel of an installing day; how long before applying it comes is a matter of the dates.
 */
record JobTrips(List<Trip> all) {
    /** The task that is done ahead of applying, never on an installing day. */
    static final String WASH = "wash";

    static JobTrips of(Labour labour) {
        List<Trip> all = new ArrayList<>(labour.trips());
        boolean washes = labour.tasks().tasks().stream().anyMatch(task -> task.id().equals(WASH));
        if (washes && all.stream().noneMatch(trip -> trip.tasks().contains(WASH))) {
            all.add(new Trip(Trip.Purpose.WASH, 1, labour.siteCrew().people(), labour.workDay().travelS(), 0, 0, List.of(WASH)));
        }
        return new JobTrips(List.copyOf(all));
    }

    /** How many trips there are on which tasks of the table are done. */
    int working() {
        return all.stream().filter(trip -> !trip.tasks().isEmpty()).mapToInt(Trip::count).sum();
    }
}
