package io.github.bedjoint.jobfile;

import io.github.bedjoint.labour.Trip;
import java.io.IOException;
import java.util.List;

/** Writes trips beside the installing days with everything that they have. */
final class TripsWriter {
    private final JsonOut out;

    TripsWriter(JsonOut out) {
        this.out = out;
    }

    void write(List<Trip> trips) throws IOException {
        out.array("trips", () -> {
            for (Trip trip : trips) {
                out.item(() -> trip(trip));
            }
        });
    }

    private void trip(Trip trip) throws IOException {
        out.word("purpose", trip.purpose());
        out.count("count", trip.count());
        out.count("people", trip.people());
        out.sized("travel", trip.travelS(), "s");
        out.sized("onSite", trip.onSiteS(), "s");
        out.sized("wait", trip.waitS(), "s");
        if (!trip.tasks().isEmpty()) {
            out.array("tasks", () -> {
                for (String task : trip.tasks()) {
                    out.text(task);
                }
            });
        }
    }
}
