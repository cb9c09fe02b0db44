package io.github.bedjoint.waste;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Print;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.working.Explained;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Working;
import javax.measure.Quantity;
import javax.measure.quantity.Area;

/**
 * The share of the film opened that ends as visible area on the wall, from 0 to 1; with and without the remnants that go back on the
 * shelf. Immutable.
 */
public final class FilmYield implements Explained {
    private static final Range FILM = Range.closed(0, 1e8);
    private static final Symbol VISIBLE = new Symbol("A_v", Measure.AREA, "visible area");
    private static final Symbol OPENED = new Symbol("A_opened", Measure.AREA, "film opened");

    static final Formula YIELD = Formula.of(
            "rolls.yield", "Yield", Symbol.number("y", "yield"), "A_v / A_opened", Source.geometry("definition"), VISIBLE, OPENED);
    static final Formula NET_YIELD = Formula.of(
            "rolls.net-yield", "Yield without kept remnants", Symbol.number("y_net", "yield of film used up"), "A_v / (A_opened - A_kept)",
            Source.geometry("definition"), VISIBLE, OPENED, new Symbol("A_kept", Measure.AREA, "remnants kept"));

    private final double visibleM2;
    private final double openedM2;
    private final double keptM2;

    private FilmYield(double visibleM2, double openedM2, double keptM2) {
        this.visibleM2 = visibleM2;
        this.openedM2 = openedM2;
        this.keptM2 = keptM2;
    }

    /**
     * The yield of film of which nothing is kept; see {@link #withKept}.
     *
     * @param visible area seen covered, above 0
     * @param opened  area of all film opened, at least the visible area
     * @return the yield
     * @throws RefusedException if an area is absent or out of range, or more is seen than was opened
     */
    public static FilmYield of(Quantity<Area> visible, Quantity<Area> opened) {
        return ofM2(Door.areaM2("visible area", visible, Range.above(0, 1e8)), Door.areaM2("film opened", opened, FILM));
    }

    static FilmYield ofM2(double visibleM2, double openedM2) {
        if (visibleM2 > openedM2 * (1 + 1e-9)) {
            throw new RefusedException(
                    "visible area", Print.number(visibleM2) + " m2", "must not be more than the film opened, " + Print.number(openedM2) + " m2",
                    "Maybe an opening was not taken off.");
        }
        return new FilmYield(visibleM2, openedM2, 0);
    }

    /**
     * The same with remnants that go back on the shelf.
     *
     * @param kept their area, not negative, at most the film opened less the visible area
     * @return the yield
     * @throws RefusedException if the area is absent or out of range
     */
    public FilmYield withKept(Quantity<Area> kept) {
        return withKeptM2(Door.areaM2("remnants kept", kept, Range.closed(0, Math.max(0, openedM2 - visibleM2))));
    }

    FilmYield withKeptM2(double kept) {
        return new FilmYield(visibleM2, openedM2, kept);
    }

    /**
     * Visible area over film opened.
     *
     * @return a share from 0 to 1
     */
    public double share() {
        return visibleM2 / openedM2;
    }

    /**
     * Visible area over film used up, kept remnants left out.
     *
     * @return a share from 0 to 1, not less than {@link #share()}
     */
    public double netShare() {
        return visibleM2 / (openedM2 - keptM2);
    }

    @Override
    public Working working() {
        return Working.of(YIELD, share(), visibleM2, openedM2)
                .because(Working.of(NET_YIELD, netShare(), visibleM2, openedM2, keptM2));
    }

    /** The share in percent: {@code 74.6 %}. */
    @Override
    public String toString() {
        return Print.fixed(share() * 100, 1) + " %: " + Measure.AREA.print(visibleM2, UnitStyle.METRIC) + " visible of "
                + Measure.AREA.print(openedM2, UnitStyle.METRIC) + " opened";
    }
}
