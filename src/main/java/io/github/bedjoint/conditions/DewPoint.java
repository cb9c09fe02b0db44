package io.github.bedjoint.conditions;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Print;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.ShopUnits;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.working.Explained;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Working;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.jspecify.annotations.Nullable;

/**
 * The dew point of air by the Magnus formula over water: a surface colder than this is wet.
 *
 * <p>Within 0.055 K of the ASHRAE formulation where the dew point is 0 degrees Celsius or more; below that the two differ more, since
 * that formulation turns to ice. Stored are the air's temperature, its relative humidity and the figures. Immutable.
 */
public final class DewPoint implements Explained {
    private static final Source MAGNUS =
            Source.standard("WMO Annex 4.B, constants 17.62 and 243.12 as quoted in an instrument manual");

    /** The logarithm from which the dew point follows. */
    public static final Formula GAMMA = Formula.of(
            "conditions.magnus",
            "Magnus logarithm",
            Symbol.number("g", "Magnus logarithm"),
            "ln(phi) + 17.62 * t / (243.12 + t)",
            MAGNUS,
            Symbol.number("phi", "relative humidity over water as a share"),
            Symbol.number("t", "air temperature in degrees Celsius"));
    /** The dew point. */
    public static final Formula DEW_POINT = Formula.of(
            "conditions.dew-point",
            "Dew point",
            Symbol.number("t_d", "dew point in degrees Celsius"),
            "243.12 * g / (17.62 - g)",
            MAGNUS,
            Symbol.number("g", "Magnus logarithm"));

    static final double ZERO_CELSIUS_K = 273.15;
    private static final Range AIR = Range.closed(ZERO_CELSIUS_K - 45, ZERO_CELSIUS_K + 60);
    private static final Range HUMIDITY = Range.above(0, 1);

    private final double airC;
    private final double humidity;
    private final double gamma;
    private final double celsius;

    private DewPoint(double airC, double humidity) {
        this.airC = airC;
        this.humidity = humidity;
        gamma = Math.log(humidity) + 17.62 * airC / (243.12 + airC);
        celsius = 243.12 * gamma / (17.62 - gamma);
    }

    /**
     * The dew point of air.
     *
     * @param air              temperature of the air, -45 to 60 degrees Celsius
     * @param relativeHumidity relative humidity over water as a share, above 0, at most 1; 50 % is 0.5
     * @return the dew point
     * @throws RefusedException if the temperature is out of range or the humidity is 0, negative or above 1
     */
    public static DewPoint of(Quantity<Temperature> air, double relativeHumidity) {
        return new DewPoint(airK(air) - ZERO_CELSIUS_K, humidity(relativeHumidity));
    }

    /** The air's temperature in kelvin, if it is in the range of the formula. */
    static double airK(Quantity<Temperature> air) {
        return Door.temperatureK("air temperature", air, AIR);
    }

    /** A relative humidity as a share; a percentage is refused with a hint. */
    static double humidity(double share) {
        if (share > 1 && share <= 100) {
            throw new RefusedException(
                    "relative humidity",
                    Print.number(share),
                    "must be more than 0 and at most 1",
                    "Maybe it is in percent: 50 % is 0.5.");
        }
        return Door.number("relative humidity", share, HUMIDITY);
    }

    /**
     * The dew point by {@link #DEW_POINT}.
     *
     * @return the temperature in degrees Celsius
     */
    public Quantity<Temperature> temperature() {
        return Door.of(celsius, ShopUnits.CELSIUS);
    }

    /**
     * The dew point by {@link #DEW_POINT}.
     *
     * @return the number of degrees Celsius
     */
    public double celsius() {
        return celsius;
    }

    @Override
    public Working working() {
        return Working.of(DEW_POINT, celsius, gamma).because(Working.of(GAMMA, gamma, humidity, airC));
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof DewPoint that && Double.compare(airC, that.airC) == 0 && Double.compare(humidity, that.humidity) == 0;
    }

    @Override
    public int hashCode() {
        return Objects.hash(airC, humidity);
    }

    /** Dew point and air: {@code dew point 9.26 °C of air at 20 °C and 50 %}. */
    @Override
    public String toString() {
        return "dew point " + Print.fixed(celsius, 2) + " °C of air at " + Print.number(airC) + " °C and "
                + Measure.NUMBER.print(humidity * 100, UnitStyle.METRIC) + " %";
    }
}
