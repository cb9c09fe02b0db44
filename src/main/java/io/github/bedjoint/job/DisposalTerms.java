package io.github.bedjoint.job;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.MassPerArea;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.PriceRate;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.ShopUnits;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;

/**
 * What liner and film weigh, and what it costs to throw a kilogram away. Weights are those of the data sheets; there is no default.
 *
 * @param linerKgM2 mass of the liner by area in kilograms per square metre, 0 to 10
 * @param filmKgM2  mass of the film by area without liner, with laminate if there is one, 0 to 10
 * @param price     price of disposal by mass
 */
public record DisposalTerms(double linerKgM2, double filmKgM2, PriceRate<Mass> price) {
    private static final Range WEIGHT = Range.closed(0, 10);

    /**
     * Checks the weights.
     *
     * @param linerKgM2 mass of the liner by area, 0 to 10
     * @param filmKgM2  mass of the film by area, 0 to 10
     * @param price     price of disposal by mass
     * @throws io.github.bedjoint.units.RefusedException if a weight is out of range
     */
    public DisposalTerms {
        Door.in(Measure.MASS_PER_AREA, linerKgM2, "liner", WEIGHT);
        Door.in(Measure.MASS_PER_AREA, filmKgM2, "film", WEIGHT);
    }

    /**
     * Terms of disposal.
     *
     * @param liner mass of the liner by area, at most 10 kg per square metre
     * @param film  mass of the film by area without liner, with laminate if there is one
     * @param price price of disposal by mass
     * @return the terms
     * @throws io.github.bedjoint.units.RefusedException if a weight is out of range
     */
    public static DisposalTerms of(Quantity<MassPerArea> liner, Quantity<MassPerArea> film, PriceRate<Mass> price) {
        return new DisposalTerms(
                Door.in(Measure.MASS_PER_AREA, "liner", liner, WEIGHT), Door.in(Measure.MASS_PER_AREA, "film", film, WEIGHT), price);
    }

    Quantity<MassPerArea> liner() {
        return Door.of(linerKgM2 * 1000, ShopUnits.GRAM_PER_SQUARE_METRE);
    }

    Quantity<MassPerArea> film() {
        return Door.of(filmKgM2 * 1000, ShopUnits.GRAM_PER_SQUARE_METRE);
    }
}
