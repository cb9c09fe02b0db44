package io.github.bedjoint.labour;

import io.github.bedjoint.units.Measure;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Working;

/** Basic time of one task at one place. */
record PlaceTime(Task task, String place, double amount, double factor, double basicS) {
    private static final Source SOURCE = Source.geometry("amount times pace");
    private static final String TITLE = "Basic time at a place";
    private static final Symbol TIME = new Symbol("t_w", Measure.TIME, "basic time of one person, or of the machine");
    private static final Symbol FACTOR = Symbol.number("f", "factor of height and access");

    static final Formula BY_AREA = by("labour.basic-by-area", Measure.AREA, Measure.TIME_PER_AREA);
    static final Formula BY_LENGTH = by("labour.basic-by-length", Measure.LENGTH, Measure.TIME_PER_LENGTH);
    static final Formula BY_PIECE = by("labour.basic-by-piece", Measure.NUMBER, Measure.TIME);

    private static Formula by(String id, Measure amount, Measure pace) {
        return Formula.of(
                id, TITLE, TIME, "x * p * f", SOURCE, new Symbol("x", amount, "amount of the driver"), new Symbol("p", pace, "pace"), FACTOR);
    }

    static PlaceTime of(Task task, WorkPlace place) {
        return of(task, place.name(), place.amounts().inner(task.driver()), task.reached() ? place.factor() : 1);
    }

    static PlaceTime of(Task task, String place, double amount, double factor) {
        return new PlaceTime(task, place, amount, factor, amount * task.pace().inner() * factor);
    }

    Working working() {
        Formula formula = switch (task.driver().measure()) {
            case AREA -> BY_AREA;
            case LENGTH -> BY_LENGTH;
            default -> BY_PIECE;
        };
        return Working.of(formula, basicS, amount, task.pace().inner(), factor)
                .whose(task.title() + ", " + place)
                .noting("Driver: " + task.driver().meaning() + ". Pace " + task.pace() + ": " + task.source() + ".");
    }
}
