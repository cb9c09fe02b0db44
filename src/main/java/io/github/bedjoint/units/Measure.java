package io.github.bedjoint.units;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import javax.measure.Unit;

/**
 * The kinds of number that Bedjoint computes with: for each the inner unit and how a reader sees it.
 *
 * <p>Money has no JSR-385 unit; here it is an alternate unit of one, so that an amount can be neither added to a count nor lost
 * when the units of a formula are walked. It prints as {@code ¤}, which the printer of a working replaces by the currency's code.
 */
public enum Measure {
    /** A count, a ratio or a share. */
    NUMBER(ShopUnits.ONE, List.of(new Shown("", 1, 0)), List.of(new Shown("", 1, 0))),
    /** A length in metres. */
    LENGTH(
            ShopUnits.METRE,
            List.of(new Shown("m", 1, 0.1), new Shown("mm", 1000, 0)),
            List.of(new Shown("ft", 1 / 0.3048, 0.3048), new Shown("in", 1 / 0.0254, 0.002), new Shown("mil", 1 / 25.4e-6, 0))),
    /** A length in whole {@linkplain Steps steps} of 12.5 micrometres. */
    STEPS(
            ShopUnits.METRE.divide(Steps.PER_METRE),
            List.of(new Shown("m", 1.0 / Steps.PER_METRE, 8000), new Shown("mm", 0.0125, 0)),
            List.of(new Shown("ft", 1 / (0.3048 * Steps.PER_METRE), 24384), new Shown("in", 1.0 / 2032, 0))),
    /** An area in square metres. */
    AREA(
            ShopUnits.SQUARE_METRE,
            List.of(new Shown("m²", 1, 0.01), new Shown("mm²", 1e6, 0)),
            List.of(new Shown("ft²", 1 / 0.09290304, 0.00929), new Shown("in²", 1 / 0.00064516, 0))),
    /** A time in seconds. */
    TIME(
            ShopUnits.SECOND,
            List.of(new Shown("h", 1 / 3600.0, 3600), new Shown("min", 1 / 60.0, 60), new Shown("s", 1, 0)),
            List.of(new Shown("h", 1 / 3600.0, 3600), new Shown("min", 1 / 60.0, 60), new Shown("s", 1, 0))),
    /** A mass in kilograms. */
    MASS(ShopUnits.KILOGRAM, List.of(new Shown("kg", 1, 0)), List.of(new Shown("lb", 1 / 0.45359237, 0))),
    /** A volume in cubic metres. */
    VOLUME(
            ShopUnits.CUBIC_METRE,
            List.of(new Shown("L", 1000, 0.001), new Shown("mL", 1e6, 0)),
            List.of(new Shown("gal", 1 / 0.003785411784, 0.003785411784), new Shown("fl oz", 1 / 29.5735295625e-6, 0))),
    /** A temperature in kelvin. */
    TEMPERATURE(
            ShopUnits.KELVIN, List.of(new Shown("°C", 1, 0)), List.of(new Shown("°F", 1.8, 0))) {
        @Override
        double shown(double inner, Shown as, UnitStyle style) {
            // To a millionth of a degree: what the subtraction leaves behind it must not show where zero is meant.
            return Math.rint((style == UnitStyle.METRIC ? inner - 273.15 : inner * 1.8 - 459.67) * 1e6) / 1e6;
        }
    },
    /** A difference between two temperatures in kelvin. */
    TEMPERATURE_INTERVAL(
            ShopUnits.KELVIN, List.of(new Shown("K", 1, 0)), List.of(new Shown("°F", 1.8, 0))),
    /** A speed in metres per second. */
    SPEED(
            ShopUnits.METRE_PER_SECOND,
            List.of(new Shown("m/min", 60, 0)),
            List.of(new Shown("ft/min", 60 / 0.3048, 0))),
    /** A pace by area in seconds per square metre. */
    TIME_PER_AREA(
            ShopUnits.SECOND.divide(ShopUnits.SQUARE_METRE),
            List.of(new Shown("min/m²", 1 / 60.0, 0)),
            List.of(new Shown("min/ft²", 0.09290304 / 60, 0))),
    /** A pace by length in seconds per metre. */
    TIME_PER_LENGTH(
            ShopUnits.SECOND.divide(ShopUnits.METRE),
            List.of(new Shown("min/m", 1 / 60.0, 0)),
            List.of(new Shown("min/ft", 0.3048 / 60, 0))),
    /** A consumption in cubic metres per square metre. */
    VOLUME_PER_AREA(
            ShopUnits.CUBIC_METRE.divide(ShopUnits.SQUARE_METRE),
            List.of(new Shown("mL/m²", 1e6, 0)),
            List.of(new Shown("fl oz/ft²", 0.09290304 / 29.5735295625e-6, 0))),
    /** A basis weight in kilograms per square metre. */
    MASS_PER_AREA(
            ShopUnits.KILOGRAM.divide(ShopUnits.SQUARE_METRE),
            List.of(new Shown("g/m²", 1000, 0)),
            List.of(new Shown("oz/ft²", 0.09290304 / 0.028349523125, 0))),
    /** An angle in radians. */
    ANGLE(
            ShopUnits.ONE,
            List.of(new Shown("°", 180 / Math.PI, 0)),
            List.of(new Shown("°", 180 / Math.PI, 0))),
    /** An amount of money. */
    MONEY(Money.UNIT, List.of(new Shown("¤", 1, 0)), List.of(new Shown("¤", 1, 0))),
    /** A price per square metre. */
    MONEY_PER_AREA(
            Money.UNIT.divide(ShopUnits.SQUARE_METRE),
            List.of(new Shown("¤/m²", 1, 0)),
            List.of(new Shown("¤/ft²", 0.09290304, 0))),
    /** A price per metre. */
    MONEY_PER_LENGTH(
            Money.UNIT.divide(ShopUnits.METRE), List.of(new Shown("¤/m", 1, 0)), List.of(new Shown("¤/ft", 0.3048, 0))),
    /** A price per second of time, shown per hour. */
    MONEY_PER_TIME(
            Money.UNIT.divide(ShopUnits.SECOND),
            List.of(new Shown("¤/h", 3600, 0)),
            List.of(new Shown("¤/h", 3600, 0))),
    /** A price per cubic metre, shown per litre or per US gallon. */
    MONEY_PER_VOLUME(
            Money.UNIT.divide(ShopUnits.CUBIC_METRE),
            List.of(new Shown("¤/L", 0.001, 0)),
            List.of(new Shown("¤/gal", 0.003785411784, 0))),
    /** A price per kilogram. */
    MONEY_PER_MASS(
            Money.UNIT.divide(ShopUnits.KILOGRAM), List.of(new Shown("¤/kg", 1, 0)), List.of(new Shown("¤/lb", 0.45359237, 0)));

    private static final int MONEY_DECIMALS = 6;

    private final Unit<?> unit;
    private final List<Shown> metric;
    private final List<Shown> imperial;

    Measure(Unit<?> unit, List<Shown> metric, List<Shown> imperial) {
        this.unit = unit;
        this.metric = metric;
        this.imperial = imperial;
    }

    /**
     * The inner unit.
     *
     * @return the unit in which Bedjoint computes
     */
    public Unit<?> unit() {
        return unit;
    }

    /**
     * Prints a number with its unit, as a reader of that style expects it: up to four decimals, or six significant digits below
     * one; decimal money as it is.
     *
     * @param inner the number in the inner unit
     * @param style the reader's units
     * @return the text, the same under every locale
     */
    public String print(Number inner, UnitStyle style) {
        if (this == MONEY && inner instanceof BigDecimal exact) {
            return "¤ " + (exact.scale() > MONEY_DECIMALS ? trimmed(exact) : exact).toPlainString();
        }
        double value = inner.doubleValue();
        List<Shown> ladder = style == UnitStyle.METRIC ? metric : imperial;
        Shown as = ladder.get(ladder.size() - 1);
        for (int i = ladder.size() - 1; i >= 0; i--) {
            // Half a unit in the twelfth digit keeps 0.1 m from printing as 100 mm in one style of input and 0.1 m in another.
            if (value == 0 ? i == 0 : Math.abs(value) >= ladder.get(i).from() * (1 - 1e-12)) {
                as = ladder.get(i);
            }
        }
        String number = Print.number(shown(value, as, style));
        if (as.label().startsWith("¤")) {
            return "¤ " + number + as.label().substring(1);
        }
        return number + (as.label().isEmpty() || as.label().startsWith("°") && this == ANGLE ? "" : " ") + as.label();
    }

    /** An amount not yet rounded, without the noise of a quantity's last digits; two decimals at least. */
    private static BigDecimal trimmed(BigDecimal amount) {
        BigDecimal shorter = amount.setScale(MONEY_DECIMALS, RoundingMode.HALF_UP).stripTrailingZeros();
        return shorter.scale() < 2 ? shorter.setScale(2) : shorter;
    }

    /** The number in the unit that is shown; temperatures have an offset of their own. */
    double shown(double inner, Shown as, UnitStyle style) {
        return inner * as.factor();
    }

    /** One rung of a reader's ladder of units: label, factor from the inner unit, and the least size it is used for. */
    private record Shown(String label, double factor, double from) {}

    /** Holds the unit of money apart, since an enum constant cannot refer to a static field of its own enum. */
    private static final class Money {
        static final Unit<?> UNIT = ShopUnits.ONE.alternate("¤");
    }
}
