package io.github.bedjoint.labour;

import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Print;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.working.Explained;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Working;
import java.util.Optional;

/** How many days the crew needs on site, and what each day costs beside the work itself. Immutable. */
public final class SiteDays implements Explained {
    private static final Source SOURCE = Source.geometry("whole days of what is left of a shift");
    private static final Symbol COUNT = Symbol.number("N_d", "installing days");

    static final Formula DAYS = Formula.of(
            "labour.site-days",
            "Installing days",
            COUNT,
            "ceil(E / (S - u - v) - 0.000000001)",
            SOURCE,
            new Symbol("E", Measure.TIME, "elapsed work on site"),
            new Symbol("S", Measure.TIME, "shift"),
            new Symbol("u", Measure.TIME, "set-up and clearing away each day"),
            new Symbol("v", Measure.TIME, "travel each day within the shift"));
    static final Formula SET_UP = Formula.of(
            "labour.set-up-paid",
            "Paid time of daily set-up",
            new Symbol("P_u", Measure.TIME, "paid time of daily set-up"),
            "N_d * t_d",
            SOURCE,
            COUNT,
            new Symbol("t_d", Measure.TIME, "paid time of set-up each day, all people"));
    static final Formula TRAVEL = Formula.of(
            "labour.travel-paid",
            "Paid time of daily travel",
            new Symbol("P_v", Measure.TIME, "paid time of daily travel"),
            "N_d * n * v_d",
            SOURCE,
            COUNT,
            Symbol.number("n", "people who travel"),
            new Symbol("v_d", Measure.TIME, "travel each day of each person"));

    private final double elapsedS;
    private final WorkDay day;
    private final double setUpElapsedS;
    private final double setUpPaidS;
    private final int people;
    private final double leftS;
    private final double days;

    private SiteDays(double elapsedS, WorkDay day, double setUpElapsedS, double setUpPaidS, int people) {
        this.elapsedS = elapsedS;
        this.day = day;
        this.setUpElapsedS = setUpElapsedS;
        this.setUpPaidS = setUpPaidS;
        this.people = people;
        this.leftS = day.shiftS() - setUpElapsedS - day.travelWithinS();
        // Forgives the rounding of doubles: two full days must not become three. Adding zero turns -0.0 into 0.
        this.days = leftS > 0 ? Math.ceil(elapsedS / leftS - 1e-9) + 0.0 : 0;
    }

    static SiteDays of(double elapsedS, WorkDay day, double setUpElapsedS, double setUpPaidS, int people) {
        return new SiteDays(elapsedS, day, setUpElapsedS, setUpPaidS, people);
    }

    /**
     * Whether a day leaves time for work at all.
     *
     * @return false where set-up and travel fill the shift
     */
    public boolean isPossible() {
        return leftS > 0 || elapsedS == 0;
    }

    /**
     * Why the work cannot be done in days.
     *
     * @return the reason, or empty where it can
     */
    public Optional<String> reason() {
        return isPossible()
                ? Optional.empty()
                : Optional.of("Set-up of " + print(setUpElapsedS) + " and travel of " + print(day.travelWithinS()) + " fill the shift of "
                        + print(day.shiftS()) + ": no time is left for work. Maybe stay near the site or lengthen the shift.");
    }

    /**
     * The installing days.
     *
     * @return whole days; 0 where it is not possible
     */
    public int days() {
        return (int) days;
    }

    /**
     * What a day leaves for work.
     *
     * @return seconds; not positive where it is not possible
     */
    public double workPerDayS() {
        return leftS;
    }

    /**
     * Paid time of set-up over all days.
     *
     * @return person-seconds
     */
    public double setUpPaidS() {
        return days * setUpPaidS;
    }

    /**
     * Paid time of travel over all days.
     *
     * @return person-seconds
     */
    public double travelPaidS() {
        return days * people * day.travelS();
    }

    private static String print(double seconds) {
        return Measure.TIME.print(seconds, UnitStyle.METRIC);
    }

    @Override
    public Working working() {
        return leftS > 0
                ? Working.of(DAYS, days, elapsedS, day.shiftS(), setUpElapsedS, day.travelWithinS())
                : Working.group(DAYS.title(), java.util.List.of()).noting(reason().orElse("There is no work on site."));
    }

    Working setUpWorking() {
        return Working.of(SET_UP, setUpPaidS(), days, setUpPaidS).because(working());
    }

    Working travelWorking() {
        return Working.of(TRAVEL, travelPaidS(), days, people, day.travelS()).because(working());
    }

    /** How many days and why, or why not. */
    @Override
    public String toString() {
        return reason().orElseGet(() -> Print.count(days(), "day") + ": " + print(elapsedS) + " of work, " + print(leftS) + " of it a day");
    }
}
