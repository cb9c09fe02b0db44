package io.github.bedjoint.film;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.working.Source;
import javax.measure.Quantity;
import javax.measure.quantity.Time;

/**
 * The families of ink and how long a print rests before it is laminated, so that solvent does not end up under the laminate.
 *
 * <p>Common practice gives 24 to 72 h, without a published source; how the families divide that range is assumed here. The data
 * sheets of ink and film win: {@link Film#withOutgas}.
 */
public enum InkFamily {
    /** Solvent ink: 72 h, the upper end of the range. */
    SOLVENT(72),
    /** Eco-solvent ink: 48 h, the middle of the range. */
    ECO_SOLVENT(48),
    /** Latex ink: 24 h, the lower end of the range. */
    LATEX(24),
    /** Ink cured by ultraviolet light: 24 h, the lower end of the range. */
    UV(24);

    private static final Source SOURCE =
            Source.practice("outgas 24 to 72 h; which family takes how much of that is assumed, the data sheet wins");

    private final double hours;

    InkFamily(double hours) {
        this.hours = hours;
    }

    /**
     * Time from printing to laminating.
     *
     * @return the time in hours
     */
    public Quantity<Time> outgas() {
        return Door.time(outgasS());
    }

    /**
     * Time from printing to laminating.
     *
     * @return seconds
     */
    public double outgasS() {
        return hours * 3600;
    }

    /**
     * Where the time comes from.
     *
     * @return the source, the same for every family
     */
    public Source source() {
        return SOURCE;
    }
}
