package io.github.bedjoint.labour;

import io.github.bedjoint.units.Measure;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Working;

/** Basic time of one task at one place, or at several identical ones. */
record PlaceTime(Task task, WorkPlace place, double amount, double factor, double times, double basicS) {
    private static final Source SOURCE = Source.geometry("amount times pace");
    private static final String TITLE = "Basic time at a place";
    private static final Symbol TIME = new Symbol("t_w", Measure.TIME, "basic time of one person, or of the machine");
    private static final Symbol FACTOR = Symbol.number("f", "factor of height and access");
    private static final Symbol TIMES = Symbol.number("k", "times that the first of identical places is counted");

    static final Formula BY_AREA = by("labour.basic-by-area", Measure.AREA, Measure.TIME_PER_AREA);
    static final Formula BY_LENGTH = by("labour.basic-by-length", Measure.LENGTH, Measure.TIME_PER_LENGTH);
    static final Formula BY_PIECE = by("labour.basic-by-piece", Measure.NUMBER, Measure.TIME);
    static final Formula REPEATED = Formula.of(
            "labour.repeated",
            "Basic time at identical places",
            TIME,
            "t_1 * k",
            SOURCE,
            new Symbol("t_1", Measure.TIME, "basic time at the first"),
            TIMES);
    static final Formula TIMES_LEARNED = Formula.of(
            "labour.times-learned",
            "Identical places as times of the first",
            TIMES,
            "T_n / t_1",
            SOURCE,
            new Symbol("T_n", Measure.TIME, "time of all, for a first of one second"),
            new Symbol("t_1", Measure.TIME, "one second"));

    private static Formula by(String id, Measure amount, Measure pace) {
        return Formula.of(
                id, TITLE, TIME, "x * p * f", SOURCE, new Symbol("x", amount, "amount of the driver"), new Symbol("p", pace, "pace"), FACTOR);
    }

    static PlaceTime of(Task task, WorkPlace place) {
        double amount = place.amounts().inner(task.driver());
        double factor = task.reached() ? place.reach().factor() : 1;
        double times = learns(task, place) ? new LearnedTime(place.learning(), 1, place.repeats()).totalS() : place.repeats();
        return new PlaceTime(task, place, amount, factor, times, amount * task.pace().inner() * factor * times);
    }

    /** A machine does not learn. */
    private static boolean learns(Task task, WorkPlace place) {
        return place.repeats() > 1 && task.machine() == Machine.NONE;
    }

    Working working() {
        Formula formula = switch (task.driver().measure()) {
            case AREA -> BY_AREA;
            case LENGTH -> BY_LENGTH;
            default -> BY_PIECE;
        };
        double firstS = amount * task.pace().inner() * factor;
        Working first = Working.of(formula, firstS, amount, task.pace().inner(), factor)
                .whose(task.title() + ", " + place.name())
                .noting("Driver: " + task.driver().meaning() + ". Pace " + task.pace() + ": " + task.source() + ".");
        if (factor != 1) {
            first = first.because(place.reach().working().whose(place.name()));
        }
        if (place.repeats() == 1) {
            return first;
        }
        Working all = Working.of(REPEATED, basicS, firstS, times).whose(task.title() + ", " + place.name()).because(first);
        return learns(task, place)
                ? all.because(Working.of(TIMES_LEARNED, times, times, 1.0).because(new LearnedTime(place.learning(), 1, place.repeats()).working()))
                : all;
    }
}
