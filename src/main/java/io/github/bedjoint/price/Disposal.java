package io.github.bedjoint.price;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.MassPerArea;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.PriceRate;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.ShopUnits;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.working.Explained;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Working;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Mass;

/**
 * What is thrown away: the liner of the film that was used up, and scrap film. Immutable.
 *
 * <p>Weights are those of the data sheets. A remnant that is kept keeps its liner.
 */
public final class Disposal implements Explained {
    private static final Range AREA = Range.closed(0, 1e6);
    private static final Range WEIGHT = Range.closed(0, 10);

    static final Formula WASTE_MASS = Formula.of(
            "price.disposal-mass", "Mass to dispose of", new Symbol("M", Measure.MASS, "mass of liner and scrap"), "A_l * w_l + A_s * w_s",
            Source.geometry("area times mass per area"), new Symbol("A_l", Measure.AREA, "film whose liner is peeled off"),
            new Symbol("w_l", Measure.MASS_PER_AREA, "liner"), new Symbol("A_s", Measure.AREA, "scrap film"),
            new Symbol("w_s", Measure.MASS_PER_AREA, "film without liner, with laminate if there is one"));

    private final double linerM2;
    private final double linerKgM2;
    private final double scrapM2;
    private final double scrapKgM2;
    private final double massKg;

    private Disposal(double linerM2, double linerKgM2, double scrapM2, double scrapKgM2) {
        this.linerM2 = linerM2;
        this.linerKgM2 = linerKgM2;
        this.scrapM2 = scrapM2;
        this.scrapKgM2 = scrapKgM2;
        this.massKg = linerM2 * linerKgM2 + scrapM2 * scrapKgM2;
    }

    /**
     * What is thrown away.
     *
     * @param peeled      film whose liner is peeled off or thrown away with it, 0 to a million square metres
     * @param linerWeight mass of the liner by area, at most 10 kg per square metre
     * @param scrap       film that ends as scrap, 0 to a million square metres
     * @param filmWeight  mass of the film by area without liner, with laminate if there is one
     * @return the disposal
     * @throws io.github.bedjoint.units.RefusedException if a value is out of range
     */
    public static Disposal of(
            Quantity<Area> peeled, Quantity<MassPerArea> linerWeight, Quantity<Area> scrap, Quantity<MassPerArea> filmWeight) {
        return new Disposal(
                Door.areaM2("film with liner", peeled, AREA),
                Door.in(Measure.MASS_PER_AREA, "liner weight", linerWeight, WEIGHT),
                Door.areaM2("scrap film", scrap, AREA),
                Door.in(Measure.MASS_PER_AREA, "film weight", filmWeight, WEIGHT));
    }

    /**
     * The mass of liner and scrap.
     *
     * @return the mass
     */
    public Quantity<Mass> mass() {
        return Door.of(massKg, ShopUnits.KILOGRAM);
    }

    /**
     * The line that pays for it.
     *
     * @param title    what the customer reads
     * @param rate     the price of disposal by mass
     * @param rounding how the amount is rounded
     * @return a line to be added to a job's extras
     * @throws io.github.bedjoint.units.RefusedException if the title is blank
     */
    public CostLine line(String title, PriceRate<Mass> rate, Rounding rounding) {
        return CostLine.ofInner(LineKind.DISPOSAL, title, massKg, rate, rounding);
    }

    @Override
    public Working working() {
        return Working.of(WASTE_MASS, massKg, linerM2, linerKgM2, scrapM2, scrapKgM2);
    }

    /** The mass and what it is made of. */
    @Override
    public String toString() {
        return Measure.MASS.print(massKg, UnitStyle.METRIC) + " to dispose of: " + Measure.AREA.print(linerM2, UnitStyle.METRIC) + " of liner, " + Measure.AREA.print(scrapM2, UnitStyle.METRIC) + " of scrap";
    }
}
