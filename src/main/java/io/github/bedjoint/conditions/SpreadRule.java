package io.github.bedjoint.conditions;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Print;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.ShopUnits;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Verdict;
import io.github.bedjoint.working.Working;
import java.util.Locale;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;

/**
 * How much warmer than the dew point a surface must be. There are two rules in use, and they are not the same: 3 K is 5.4 degrees
 * Fahrenheit, 5 degrees Fahrenheit are 2.78 K.
 */
public enum SpreadRule {
    /** Surface at least 3 K above the dew point. */
    THREE_KELVIN("3 K rule", 3, Source.handbook("coating application guides; ISO 8502-4 deals with it (title and scope read only)")),
    /** Surface at least 5 degrees Fahrenheit above the dew point. */
    FIVE_FAHRENHEIT("5 deg F rule", 25.0 / 9, Source.handbook("public dew point chart for coatings"));

    /** The lowest surface temperature by a rule. */
    public static final Formula LEAST_SURFACE = Formula.of(
            "conditions.least-surface",
            "Lowest surface temperature above the dew point",
            Symbol.number("t_s", "lowest surface temperature in degrees Celsius"),
            "t_d + m",
            Source.geometry("dew point and the rule's margin"),
            Symbol.number("t_d", "dew point in degrees Celsius"),
            Symbol.number("m", "margin of the rule in kelvin"));

    private static final Range SURFACE = Range.closed(200, 400);

    private final String title;
    private final double marginK;
    private final Source source;

    SpreadRule(String title, double marginK, Source source) {
        this.title = title;
        this.marginK = marginK;
        this.source = source;
    }

    /**
     * The margin.
     *
     * @return kelvin, as an interval
     */
    public double marginK() {
        return marginK;
    }

    /**
     * Where the rule comes from.
     *
     * @return the source
     */
    public Source source() {
        return source;
    }

    /** The lowest surface temperature in degrees Celsius. */
    private double leastC(DewPoint dewPoint) {
        return dewPoint.celsius() + marginK;
    }

    /**
     * The lowest surface temperature that the rule allows, by {@link #LEAST_SURFACE}.
     *
     * @param dewPoint the dew point of the air at the wall
     * @return the temperature in degrees Celsius
     */
    public Quantity<Temperature> leastSurface(DewPoint dewPoint) {
        return Door.of(leastC(dewPoint), ShopUnits.CELSIUS);
    }

    /**
     * How {@link #leastSurface} came about.
     *
     * @param dewPoint the dew point of the air at the wall
     * @return the working
     */
    public Working working(DewPoint dewPoint) {
        return Working.of(LEAST_SURFACE, leastC(dewPoint), dewPoint.celsius(), marginK)
                .whose(title)
                .because(dewPoint.working());
    }

    /**
     * Whether a surface is warm enough.
     *
     * @param dewPoint the dew point of the air at the wall
     * @param surface  temperature of the surface, 200 to 400 K
     * @return fine; a warning when the margin is missed; refused when the surface is at or below the dew point
     * @throws io.github.bedjoint.units.RefusedException if the surface temperature is out of range
     */
    public Verdict verdict(DewPoint dewPoint, Quantity<Temperature> surface) {
        double surfaceC = Door.temperatureK("surface temperature", surface, SURFACE) - DewPoint.ZERO_CELSIUS_K;
        double spread = surfaceC - dewPoint.celsius();
        // A billionth of a kelvin: 62.69 degrees Fahrenheit read as kelvin must not miss its own limit by a rounding.
        boolean fine = spread >= marginK - 1e-9;
        Verdict.Level level = fine ? Verdict.Level.FINE : spread > 1e-9 ? Verdict.Level.WARNING : Verdict.Level.REFUSED;
        String reason = String.format(Locale.ROOT,
                "the surface at %s °C is %s K %s the dew point of %s °C; %s asks for %s K above it",
                Print.fixed(surfaceC, 2),
                Print.fixed(Math.abs(spread), 2),
                spread > 1e-9 ? "above" : spread < -1e-9 ? "below" : "at",
                Print.fixed(dewPoint.celsius(), 2),
                "the " + title,
                Print.fixed(marginK, 2));
        return new Verdict(level, title, reason, source);
    }

    /** The rule's name: {@code 3 K rule}. */
    @Override
    public String toString() {
        return title;
    }
}
