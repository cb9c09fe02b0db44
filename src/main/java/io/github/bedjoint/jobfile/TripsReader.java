package io.github.bedjoint.jobfile;

import io.github.bedjoint.labour.Labour;
import io.github.bedjoint.labour.Trip;
import io.github.bedjoint.units.Read;
import java.util.ArrayList;
import java.util.List;

/** Reads trips beside the installing days: what for, how often, who, how long, how long to wait after, and which tasks are done. */
final class TripsReader {
    private TripsReader() {}

    static Labour trips(Fields f, Labour labour) {
        List<Trip> trips = new ArrayList<>();
        Labour read = labour;
        for (JsonNode node : f.nodes("trips")) {
            trips.add(Fields.whole(node, t -> trip(t, labour)));
            read = Fields.under(node, () -> labour.withTrips(trips));
        }
        return read;
    }

    /** What is not given is as on an installing day: the crew on site, its travel; no time beside the tasks, no wait. */
    private static Trip trip(Fields f, Labour labour) {
        Trip.Purpose purpose = f.word("purpose", Trip.Purpose.class);
        Trip trip = new Trip(purpose, 1, labour.siteCrew().people(), labour.workDay().travelS(), 0, 0, List.of());
        trip = f.with(trip, "count", f::count, Trip::times);
        trip = f.with(trip, "people", f::count, Trip::withPeople);
        trip = f.with(trip, "travel", n -> f.read(n, Read::time), Trip::withTravel);
        trip = f.with(trip, "onSite", n -> f.read(n, Read::time), Trip::withOnSite);
        trip = f.with(trip, "wait", n -> f.read(n, Read::time), Trip::withWait);
        return f.with(trip, "tasks", n -> f.list(n, node -> task(node, labour)), (t, ids) -> t.doing(ids.toArray(String[]::new)));
    }

    private static String task(JsonNode node, Labour labour) {
        String id = String.valueOf(LabourReader.text(node).scalar());
        return Fields.under(node, () -> labour.checkOnTrip(id).id());
    }
}
