package io.github.bedjoint.labour;

import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Print;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.working.Explained;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Working;
import java.util.Locale;

/** Hours of a trip of its own. Immutable. */
public final class TripTime implements Explained {
    static final Formula PAID = Formula.of(
            "labour.trip-paid",
            "Paid time of a trip",
            new Symbol("P_i", Measure.TIME, "paid time of a trip, beside its tasks"),
            "c * n * (v + t)",
            Source.geometry("trips times people times travel and stay"),
            Symbol.number("c", "trips"),
            Symbol.number("n", "people"),
            new Symbol("v", Measure.TIME, "travel there and back"),
            new Symbol("t", Measure.TIME, "time on site, beside tasks"));
    static final Formula STAY = Formula.of(
            "labour.trip-elapsed",
            "Time on site of a trip",
            new Symbol("E_t", Measure.TIME, "elapsed time on site"),
            "c * t + w",
            Source.geometry("stay and tasks, one after another"),
            Symbol.number("c", "trips"),
            new Symbol("t", Measure.TIME, "time on site, beside tasks"),
            new Symbol("w", Measure.TIME, "elapsed time of the tasks that are done on it"));

    private final Trip trip;
    private final double tasksS;
    private final double paidS;
    private final double elapsedS;

    TripTime(Trip trip, double tasksS) {
        this.trip = trip;
        this.tasksS = tasksS;
        this.paidS = trip.count() * trip.people() * (trip.travelS() + trip.onSiteS());
        this.elapsedS = trip.count() * trip.onSiteS() + tasksS;
    }

    /**
     * The trip.
     *
     * @return the trip as given
     */
    public Trip trip() {
        return trip;
    }

    /**
     * Travel and stay of all people; the tasks done on it are paid with the tasks.
     *
     * @return person-seconds
     */
    public double paidS() {
        return paidS;
    }

    /**
     * Time on site, the tasks done on it included.
     *
     * @return seconds over all such trips
     */
    public double elapsedS() {
        return elapsedS;
    }

    @Override
    public Working working() {
        String name = trip.purpose().name().toLowerCase(Locale.ROOT).replace('_', ' ');
        return Working.group("Trip: " + name, java.util.List.of(paidWorking(), Working.of(STAY, elapsedS, trip.count(), trip.onSiteS(), tasksS).whose(name)));
    }

    Working paidWorking() {
        return Working.of(PAID, paidS, trip.count(), trip.people(), trip.travelS(), trip.onSiteS())
                .whose(trip.purpose().name().toLowerCase(Locale.ROOT).replace('_', ' '));
    }

    /** The paid time and what it is made of. */
    @Override
    public String toString() {
        return Measure.TIME.print(paidS, UnitStyle.METRIC) + " paid: " + Print.count(trip.count(), trip.purpose().toString().toLowerCase(Locale.ROOT) + " trip") + ", "
                + Print.count(trip.people(), "person", "people") + ", travel " + Measure.TIME.print(trip.travelS(), UnitStyle.METRIC) + ", on site " + Measure.TIME.print(elapsedS / trip.count(), UnitStyle.METRIC);
    }
}
