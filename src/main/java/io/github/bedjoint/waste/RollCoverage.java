package io.github.bedjoint.waste;

import io.github.bedjoint.film.Film;
import io.github.bedjoint.rolls.CuttingTerms;
import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.Steps;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.working.Explained;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Working;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;

/**
 * How much wall one roll covers: whole drops, not area by area.
 *
 * <p>A roll gives whole drops only, each drop covers its width less one overlap, and the first one covers the overlap too. Dividing the
 * roll's area by a drop's area forgets all three; the working shows both numbers so that the difference is seen. Immutable.
 */
public final class RollCoverage implements Explained {
    private static final Symbol DROPS = Symbol.number("n", "drops from one roll");
    private static final Symbol CUT = new Symbol("h", Measure.STEPS, "cut length of a drop");

    static final Formula DROPS_PER_ROLL = Formula.of(
            "rolls.drops-per-roll", "Drops per roll", DROPS, "max(0, floor((L - a - e + g) / (h + g)))",
            Source.geometry("whole pieces along a roll"),
            new Symbol("L", Measure.STEPS, "length on the roll"),
            new Symbol("a", Measure.STEPS, "lead, lost at the start"),
            new Symbol("e", Measure.STEPS, "tail, lost at the core"),
            new Symbol("g", Measure.STEPS, "gap between pieces"),
            CUT);
    static final Formula COVERAGE = Formula.of(
            "rolls.coverage", "Roll coverage", new Symbol("A_roll", Measure.AREA, "wall covered by one roll"),
            "(n * (w - o) + min(n, 1) * o) * H", Source.geometry("drops side by side, each overlapping the one before"),
            DROPS,
            new Symbol("w", Measure.LENGTH, "printable width"),
            new Symbol("o", Measure.LENGTH, "overlap"),
            new Symbol("H", Measure.LENGTH, "visible height of a drop"));
    static final Formula AREA_DIVISION = Formula.of(
            "rolls.area-division", "Drops by area division (a trap: not used)", Symbol.number("n_a", "drops by area division"),
            "L * W / (w * h)", Source.geometry("area of the roll over area of a drop; ignores whole pieces, lead and overlap"),
            new Symbol("L", Measure.LENGTH, "length on the roll"),
            new Symbol("W", Measure.LENGTH, "roll width"),
            new Symbol("w", Measure.LENGTH, "printable width"),
            new Symbol("h", Measure.LENGTH, "cut length of a drop"));

    private final Film film;
    private final long rollSteps;
    private final long overlapSteps;
    private final double heightM;
    private final long cutSteps;
    private final CuttingTerms terms;
    private final long drops;
    private final double areaM2;

    private RollCoverage(Film film, long rollSteps, long overlapSteps, double heightM, long cutSteps, CuttingTerms terms) {
        this.film = film;
        this.rollSteps = rollSteps;
        this.overlapSteps = overlapSteps;
        this.heightM = heightM;
        this.cutSteps = cutSteps;
        this.terms = terms;
        long usable = rollSteps - terms.leadSteps() - terms.tailSteps();
        this.drops = Math.max(0, Math.floorDiv(usable + terms.gapSteps(), cutSteps + terms.gapSteps()));
        this.areaM2 = (drops * (widthM() - overlapM()) + Math.min(drops, 1) * overlapM()) * heightM;
    }

    /**
     * The coverage of a roll that loses nothing at its ends and between pieces; see {@link #withTerms}.
     *
     * @param film          the film, whose printable width is used
     * @param rollLength    length on the roll, above 0
     * @param overlap       overlap of neighbouring drops, at least 0, less than the printable width
     * @param visibleHeight height of wall that one drop covers, above 0
     * @param cutLength     length cut for one drop, at least the visible height
     * @return the coverage
     * @throws RefusedException if a length is absent or out of range
     */
    public static RollCoverage of(
            Film film,
            Quantity<Length> rollLength,
            Quantity<Length> overlap,
            Quantity<Length> visibleHeight,
            Quantity<Length> cutLength) {
        long roll = Steps.down(Door.lengthM("roll length", rollLength, Range.POSITIVE));
        long lap = Steps.up(Door.lengthM("overlap", overlap, Range.NOT_NEGATIVE));
        double height = Door.lengthM("visible height", visibleHeight, Range.POSITIVE);
        long cut = Steps.up(Door.lengthM("cut length", cutLength, Range.POSITIVE));
        if (lap >= film.printableWidthSteps()) {
            throw new RefusedException(
                    "overlap", overlap.toString(), "must be less than the printable width " + film.printableWidth(), "Maybe the unit is another one.");
        }
        if (cut < Steps.up(height)) {
            throw new RefusedException(
                    "cut length", cutLength.toString(), "must be at least the visible height " + visibleHeight, "Maybe the two are swapped.");
        }
        return new RollCoverage(film, roll, lap, height, cut, CuttingTerms.plain());
    }

    /**
     * The same under other cutting terms.
     *
     * @param other lead, tail and gap
     * @return the coverage
     */
    public RollCoverage withTerms(CuttingTerms other) {
        return new RollCoverage(film, rollSteps, overlapSteps, heightM, cutSteps, other);
    }

    /**
     * Whole drops from one roll.
     *
     * @return the count, 0 when a drop is longer than the usable roll
     */
    public long dropsPerRoll() {
        return drops;
    }

    /**
     * The wall that one roll covers.
     *
     * @return the area
     */
    public Quantity<Area> area() {
        return Door.area(areaM2);
    }

    /**
     * What area division alone would promise, for comparison.
     *
     * @return drops per roll, not whole
     */
    public double dropsByAreaDivision() {
        return Steps.toM(rollSteps) * Steps.toM(film.rollWidthSteps()) / (widthM() * Steps.toM(cutSteps));
    }

    private double widthM() {
        return Steps.toM(film.printableWidthSteps());
    }

    private double overlapM() {
        return Steps.toM(overlapSteps);
    }

    @Override
    public Working working() {
        Working whole = Working.of(
                DROPS_PER_ROLL, drops, rollSteps, terms.leadSteps(), terms.tailSteps(), terms.gapSteps(), cutSteps);
        Working byArea = Working.of(
                AREA_DIVISION, dropsByAreaDivision(), Steps.toM(rollSteps), Steps.toM(film.rollWidthSteps()), widthM(), Steps.toM(cutSteps));
        return Working.of(COVERAGE, areaM2, drops, widthM(), overlapM(), heightM).because(whole, byArea);
    }

    /** Drops and area in one line. */
    @Override
    public String toString() {
        return drops + " drops cover " + Measure.AREA.print(areaM2, UnitStyle.METRIC);
    }
}
