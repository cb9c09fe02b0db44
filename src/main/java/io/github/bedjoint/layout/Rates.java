package io.github.bedjoint.layout;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;

/**
 * What a layout costs by what it consists of, as plain numbers in one currency; the job fills them from its prices and paces.
 *
 * @param filmPerM   a metre of film off the roll, printed and laminated
 * @param perPanel   handling a panel, from the cut to the wall
 * @param seamPerM   a metre of seam: overlaps are heated and rolled twice
 * @param perCutOut  cutting an opening out of a panel
 */
public record Rates(double filmPerM, double perPanel, double seamPerM, double perCutOut) {
    private static final Range RATE = Range.closed(0, 1e12);

    /** Cost of a layout. */
    static final Formula COST = Formula.of(
            "layout.cost", "Cost of a layout", new Symbol("C", Measure.MONEY, "cost of the layout"),
            "c_f * l_f + c_p * N + c_s * L + c_x * N_x + C_j", Source.shop("rates from prices and paces of the job"),
            new Symbol("c_f", Measure.MONEY_PER_LENGTH, "film by the metre"),
            new Symbol("l_f", Measure.LENGTH, "length of film"),
            new Symbol("c_p", Measure.MONEY, "handling of a panel"),
            Symbol.number("N", "panels"),
            new Symbol("c_s", Measure.MONEY_PER_LENGTH, "seam by the metre"),
            new Symbol("L", Measure.LENGTH, "length of seams"),
            new Symbol("c_x", Measure.MONEY, "an opening cut out of a panel"),
            Symbol.number("N_x", "openings cut out of panels"),
            new Symbol("C_j", Measure.MONEY, "surcharge of seams in masonry joints"));

    /**
     * Checks the rates.
     *
     * @param filmPerM   a metre of film off the roll, 0 to a trillion
     * @param perPanel   handling a panel, 0 to a trillion
     * @param seamPerM   a metre of seam, 0 to a trillion
     * @param perCutOut  cutting an opening out of a panel, 0 to a trillion
     * @throws io.github.bedjoint.units.RefusedException if a rate is negative, not finite or above a trillion
     */
    public Rates {
        Door.number("film per metre", filmPerM, RATE);
        Door.number("cost per panel", perPanel, RATE);
        Door.number("seam per metre", seamPerM, RATE);
        Door.number("cost per cut-out", perCutOut, RATE);
    }

    /**
     * Only the length of film counts.
     *
     * @return one for a metre of film, nothing for the rest
     */
    public static Rates filmOnly() {
        return new Rates(1, 0, 0, 0);
    }

    /**
     * The same with another cost of film.
     *
     * @param other a metre of film off the roll, 0 to a trillion
     * @return other rates
     * @throws io.github.bedjoint.units.RefusedException if the rate is negative, not finite or above a trillion
     */
    public Rates withFilmPerM(double other) {
        return new Rates(other, perPanel, seamPerM, perCutOut);
    }

    /** The cost of a layout. */
    double cost(double filmM, int panels, double seamM, int cutOuts, double joints) {
        return filmPerM * filmM + perPanel * panels + seamPerM * seamM + perCutOut * cutOuts + joints;
    }
}
