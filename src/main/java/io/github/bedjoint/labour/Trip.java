package io.github.bedjoint.labour;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.working.Source;
import java.util.List;
import java.util.Locale;
import javax.measure.Quantity;
import javax.measure.quantity.Time;

/**
 * A trip to the site beside those of the installing days: what for, who, how long, and how long to wait after it.
 *
 * <p>Tasks of the table that are done on this trip, such as washing, are named; those who travel do them, and their hours are then not part
 * of the installing days. Where the work does not fit into a shift it goes on the next day, with the travel again. Immutable.
 *
 * @param purpose what for
 * @param count   how many such trips at least, 1 to 100
 * @param people  how many travel, 1 to 50
 * @param travelS there and back, in seconds, for each person
 * @param onSiteS time on site in seconds of each, beside the tasks that are done
 * @param waitS   least time in seconds before what waits for it: print preparation after a survey or a test patch, installing after
 *                washing, installing after the panels are packed where it is for installing, and an inspection after installing
 * @param tasks   ids of the tasks that are done on it
 */
public record Trip(Purpose purpose, int count, int people, double travelS, double onSiteS, double waitS, List<String> tasks) {
    /** Where the wait after washing comes from. */
    public static final Source WASH_SOURCE = Source.practice("a wall is washed 7 days before film is applied");

    private static final Range DAY = Range.closed(0, 86_400);
    private static final Range TWO_YEARS = Range.closed(0, 2 * 365 * 86_400.0);
    private static final Range LIFE = Range.closed(0, 50 * 366 * 86_400.0);

    /** What a trip is for. */
    public enum Purpose {
        /** To measure. */
        SURVEY(true),
        /** To try the film on the wall; its result comes before film is ordered. */
        TEST_PATCH(true),
        /** To wash the wall ahead of applying. */
        WASH(true),
        /**
         * To install: the way there and back once beside the daily travel, such as where the crew stays the night. Its days follow from
         * the hours of the tasks.
         */
        INSTALL(false),
        /** To look over the work before hand-over. */
        INSPECTION(false),
        /** To take the film off at the end of its life. */
        REMOVAL(false);

        private final boolean before;

        Purpose(boolean before) {
            this.before = before;
        }

        /**
         * Whether it comes before the installing.
         *
         * @return true for survey, test patch and washing
         */
        public boolean isBeforeInstalling() {
            return before;
        }

        /**
         * The purpose for a reader.
         *
         * @return lower case words, such as "test patch"
         */
        public String words() {
            return name().toLowerCase(Locale.ROOT).replace('_', ' ');
        }
    }

    /**
     * Checks every part.
     *
     * @param purpose what for
     * @param count   how many such trips, 1 to 100
     * @param people  how many travel, 1 to 50
     * @param travelS there and back, in seconds, for each person, 0 to 24 h
     * @param onSiteS time on site in seconds, beside the tasks that are done, 0 to 24 h
     * @param waitS   least time in seconds before what waits for it, at most 730 days, for a removal 50 years
     * @param tasks   ids of the tasks that are done on it
     * @throws RefusedException if a part cannot be accepted, or a trip for installing names tasks
     */
    public Trip {
        Door.count("trips for " + purpose, count, 1, 100);
        Door.count("people on the trip for " + purpose, people, 1, 50);
        Door.in(Measure.TIME, travelS, "travel for " + purpose, DAY);
        Door.in(Measure.TIME, onSiteS, "time on site for " + purpose, DAY);
        Door.in(Measure.TIME, waitS, "wait at the trip for " + purpose, purpose == Purpose.REMOVAL ? LIFE : TWO_YEARS);
        tasks = List.copyOf(tasks);
        if (purpose == Purpose.INSTALL && !tasks.isEmpty()) {
            throw new RefusedException(
                    "tasks of the trip for installing", tasks.toString(), "must not be named", "Maybe leave them out: the installing days hold every task that no other trip does.");
        }
    }

    /**
     * One trip of one person.
     *
     * @param purpose what for
     * @param travel  there and back, 0 to 24 h
     * @param onSite  time on site beside the tasks that are done, 0 to 24 h
     * @return the trip
     * @throws RefusedException if a time cannot be accepted
     */
    public static Trip of(Purpose purpose, Quantity<Time> travel, Quantity<Time> onSite) {
        return new Trip(
                purpose, 1, 1, Door.timeS("travel for " + purpose, travel, DAY), Door.timeS("time on site for " + purpose, onSite, DAY), 0, List.of());
    }

    /**
     * The same several times.
     *
     * @param times 1 to 100
     * @return a new trip
     */
    public Trip times(int times) {
        return new Trip(purpose, times, people, travelS, onSiteS, waitS, tasks);
    }

    /**
     * The same with more people.
     *
     * @param travellers 1 to 50
     * @return a new trip
     */
    public Trip withPeople(int travellers) {
        return new Trip(purpose, count, travellers, travelS, onSiteS, waitS, tasks);
    }

    /**
     * The same with another way.
     *
     * @param way there and back, 0 to 24 h
     * @return a new trip
     * @throws RefusedException if it cannot be accepted
     */
    public Trip withTravel(Quantity<Time> way) {
        return new Trip(purpose, count, people, Door.timeS("travel for " + purpose, way, DAY), onSiteS, waitS, tasks);
    }

    /**
     * The same with another stay.
     *
     * @param stay time on site beside the tasks that are done, 0 to 24 h
     * @return a new trip
     * @throws RefusedException if it cannot be accepted
     */
    public Trip withOnSite(Quantity<Time> stay) {
        return new Trip(purpose, count, people, travelS, Door.timeS("time on site for " + purpose, stay, DAY), waitS, tasks);
    }

    /**
     * The same with a wait after it, or for an inspection before it.
     *
     * @param wait elapsed time, zero or more
     * @return a new trip
     * @throws RefusedException if it cannot be accepted
     */
    public Trip withWait(Quantity<Time> wait) {
        return new Trip(purpose, count, people, travelS, onSiteS, Door.timeS("wait", wait, LIFE), tasks);
    }

    /**
     * The same doing tasks of the table.
     *
     * @param ids the tasks' ids
     * @return a new trip
     */
    public Trip doing(String... ids) {
        return new Trip(purpose, count, people, travelS, onSiteS, waitS, List.of(ids));
    }
}
