package io.github.bedjoint.labour;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Print;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.working.Explained;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Working;
import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Time;

/** Times of repeated identical units under a learning law. Immutable. */
public final class LearnedTime implements Explained {
    private static final Source SOURCE = Source.handbook("learning curve: unit law (Crawford) and cumulative-average law (Wright)");
    private static final Symbol EXPONENT = Symbol.number("b", "learning exponent");
    private static final Symbol FIRST = new Symbol("t_1", Measure.TIME, "time of the first unit");
    private static final Symbol COUNT = Symbol.number("n", "number of the unit");
    private static final Symbol UNIT = new Symbol("t_n", Measure.TIME, "time of the n-th unit");
    private static final Symbol TOTAL = new Symbol("T_n", Measure.TIME, "time of the first n units");

    static final Formula RATE =
            Formula.of("labour.learning-exponent", "Learning exponent", EXPONENT, "ln(R) / ln(2)", SOURCE, Symbol.number("R", "rate of each doubling"));
    static final Formula UNIT_LAW = Formula.of("labour.unit-law", "Time of the n-th unit, unit law", UNIT, "t_1 * n ^ b", SOURCE, FIRST, COUNT, EXPONENT);
    static final Formula UNIT_LAW_TOTAL = Formula.of(
            "labour.unit-law-total", "Time of the first n units, unit law", TOTAL, "sum(t_i)", SOURCE, new Symbol("t_i", Measure.TIME, "time of each unit"));
    static final Formula AVERAGE_LAW = Formula.of(
            "labour.average-law-total", "Time of the first n units, cumulative-average law", TOTAL, "n * t_1 * n ^ b", SOURCE, COUNT, FIRST, EXPONENT);
    static final Formula AVERAGE_LAW_UNIT = Formula.of(
            "labour.average-law", "Time of the n-th unit, cumulative-average law", UNIT, "t_1 * (n * n ^ b - (n - 1) * max(n - 1, 1) ^ b)", SOURCE, FIRST, COUNT, EXPONENT);

    private final Learning law;
    private final double firstS;
    private final int n;
    private final double exponent;
    private final double unitS;
    private final double totalS;

    LearnedTime(Learning law, double firstS, int n) {
        this.law = law;
        this.firstS = firstS;
        this.n = n;
        this.exponent = law.exponent();
        if (law.law() == Learning.Law.UNIT) {
            this.unitS = unit(n);
            this.totalS = units().stream().mapToDouble(Double::doubleValue).sum();
        } else {
            this.unitS = firstS * (n * Math.pow(n, exponent) - (n - 1) * Math.pow(Math.max(n - 1, 1), exponent));
            this.totalS = n * firstS * Math.pow(n, exponent);
        }
    }

    private double unit(int i) {
        return firstS * Math.pow(i, exponent);
    }

    private List<Double> units() {
        List<Double> units = new ArrayList<>(n);
        for (int i = 1; i <= n; i++) {
            units.add(unit(i));
        }
        return units;
    }

    /**
     * The time of the n-th unit.
     *
     * @return its time
     */
    public Quantity<Time> unit() {
        return Door.time(unitS);
    }

    /**
     * The time of the first n units together.
     *
     * @return their time
     */
    public Quantity<Time> total() {
        return Door.time(totalS);
    }

    /**
     * {@link #unit()} as a plain number.
     *
     * @return seconds
     */
    public double unitS() {
        return unitS;
    }

    /**
     * {@link #total()} as a plain number.
     *
     * @return seconds
     */
    public double totalS() {
        return totalS;
    }

    @Override
    public Working working() {
        Working exponentWorking = Working.of(RATE, exponent, law.rate());
        Working unit = law.law() == Learning.Law.UNIT
                ? Working.of(UNIT_LAW, unitS, firstS, n, exponent)
                : Working.of(AVERAGE_LAW_UNIT, unitS, firstS, n, exponent);
        Working total = law.law() == Learning.Law.UNIT
                ? Working.sum(UNIT_LAW_TOTAL, totalS, units())
                : Working.of(AVERAGE_LAW, totalS, n, firstS, exponent);
        return Working.group("Learning", List.of(unit.because(exponentWorking), total));
    }

    /** The time of the last unit and of all, and the first. */
    @Override
    public String toString() {
        return Measure.TIME.print(unitS, UnitStyle.METRIC) + " for unit " + n + ", " + Measure.TIME.print(totalS, UnitStyle.METRIC) + " for all: first unit " + Measure.TIME.print(firstS, UnitStyle.METRIC) + ", each doubling takes " + Print.number(100 * law.rate()) + " %";
    }
}
