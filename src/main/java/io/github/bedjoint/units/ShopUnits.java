package io.github.bedjoint.units;

import javax.measure.Unit;
import javax.measure.quantity.Area;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import javax.measure.quantity.Volume;
import tech.units.indriya.unit.Units;

/**
 * The units of the trade as JSR-385 constants.
 *
 * <p>Customary units are the international ones of 1959 (UCUM 2.2 {@code [in_i]}, {@code [ft_i]}, {@code [yd_i]}, {@code [mil_i]},
 * {@code [sft_i]}; NIST SP 811 appendix B), never the US survey foot; gallon and fluid ounce are the US ones (UCUM
 * {@code [gal_us]}, {@code [foz_us]}). All factors are exact.
 */
public final class ShopUnits {
    /** Metre, the inner unit of length. */
    public static final Unit<Length> METRE = Units.METRE;
    /** Centimetre, 0.01 m. */
    public static final Unit<Length> CENTIMETRE = Units.METRE.divide(100);
    /** Millimetre, 0.001 m. */
    public static final Unit<Length> MILLIMETRE = Units.METRE.divide(1000);
    /** Micrometre, 0.000001 m. */
    public static final Unit<Length> MICROMETRE = Units.METRE.divide(1_000_000);
    /** International inch, 0.0254 m. */
    public static final Unit<Length> INCH = Units.METRE.multiply(127).divide(5000);
    /** International foot, 0.3048 m. */
    public static final Unit<Length> FOOT = Units.METRE.multiply(381).divide(1250);
    /** International yard, 0.9144 m. */
    public static final Unit<Length> YARD = Units.METRE.multiply(1143).divide(1250);
    /** Mil, a thousandth of an inch, 25.4 micrometres. */
    public static final Unit<Length> MIL = Units.METRE.multiply(127).divide(5_000_000);

    /** Square metre, the inner unit of area. */
    public static final Unit<Area> SQUARE_METRE = Units.SQUARE_METRE;
    /** Square millimetre. */
    public static final Unit<Area> SQUARE_MILLIMETRE = Units.SQUARE_METRE.divide(1_000_000);
    /** Square inch, 0.00064516 m2. */
    public static final Unit<Area> SQUARE_INCH = Units.SQUARE_METRE.multiply(16129).divide(25_000_000);
    /** Square foot, 0.09290304 m2. */
    public static final Unit<Area> SQUARE_FOOT = Units.SQUARE_METRE.multiply(145161).divide(1_562_500);
    /** Square yard, 0.83612736 m2. */
    public static final Unit<Area> SQUARE_YARD = Units.SQUARE_METRE.multiply(1306449).divide(1_562_500);

    /** Second, the inner unit of time. */
    public static final Unit<Time> SECOND = Units.SECOND;
    /** Minute, 60 s. */
    public static final Unit<Time> MINUTE = Units.MINUTE;
    /** Hour, 3600 s. */
    public static final Unit<Time> HOUR = Units.HOUR;
    /** Day of 24 elapsed hours. */
    public static final Unit<Time> DAY = Units.DAY;

    /** Kilogram, the inner unit of mass. */
    public static final Unit<Mass> KILOGRAM = Units.KILOGRAM;
    /** Gram. */
    public static final Unit<Mass> GRAM = Units.GRAM;
    /** Avoirdupois pound, 0.45359237 kg. */
    public static final Unit<Mass> POUND = Units.KILOGRAM.multiply(45359237).divide(100_000_000);
    /** Avoirdupois ounce, 28.349523125 g. */
    public static final Unit<Mass> OUNCE = Units.KILOGRAM.multiply(45359237).divide(1_600_000_000);

    /** Cubic metre, the inner unit of volume. */
    public static final Unit<Volume> CUBIC_METRE = Units.CUBIC_METRE;
    /** Litre, 0.001 m3. */
    public static final Unit<Volume> LITRE = Units.CUBIC_METRE.divide(1000);
    /** Millilitre. */
    public static final Unit<Volume> MILLILITRE = Units.CUBIC_METRE.divide(1_000_000);
    /** US gallon, 3.785411784 L. */
    public static final Unit<Volume> US_GALLON = Units.CUBIC_METRE.multiply(473176473).divide(125_000_000_000L);
    /** US fluid ounce, 29.5735295625 mL. */
    public static final Unit<Volume> US_FLUID_OUNCE = Units.CUBIC_METRE.multiply(473176473).divide(16_000_000_000_000L);

    /** Kelvin, the inner unit of temperature. */
    public static final Unit<Temperature> KELVIN = Units.KELVIN;
    /** Degree Celsius, for a temperature: 0 is 273.15 K. */
    public static final Unit<Temperature> CELSIUS = Units.CELSIUS;
    /** Degree Fahrenheit, for a temperature: 32 is 273.15 K. */
    public static final Unit<Temperature> FAHRENHEIT = Units.KELVIN.multiply(5).divide(9).shift(459.67);

    /** Metre per second, the inner unit of speed. */
    public static final Unit<Speed> METRE_PER_SECOND = Units.METRE_PER_SECOND;
    /** Metre per minute. */
    public static final Unit<Speed> METRE_PER_MINUTE = Units.METRE_PER_SECOND.divide(60);
    /** Foot per minute. */
    public static final Unit<Speed> FOOT_PER_MINUTE = Units.METRE_PER_SECOND.multiply(127).divide(25_000);

    /** Minutes per square metre. */
    public static final Unit<TimePerArea> MINUTE_PER_SQUARE_METRE = MINUTE.divide(SQUARE_METRE).asType(TimePerArea.class);
    /** Minutes per square foot. */
    public static final Unit<TimePerArea> MINUTE_PER_SQUARE_FOOT = MINUTE.divide(SQUARE_FOOT).asType(TimePerArea.class);
    /** Minutes per metre. */
    public static final Unit<TimePerLength> MINUTE_PER_METRE = MINUTE.divide(METRE).asType(TimePerLength.class);
    /** Minutes per foot. */
    public static final Unit<TimePerLength> MINUTE_PER_FOOT = MINUTE.divide(FOOT).asType(TimePerLength.class);
    /** Millilitres per square metre. */
    public static final Unit<VolumePerArea> MILLILITRE_PER_SQUARE_METRE =
            MILLILITRE.divide(SQUARE_METRE).asType(VolumePerArea.class);
    /** Grams per square metre. */
    public static final Unit<MassPerArea> GRAM_PER_SQUARE_METRE = GRAM.divide(SQUARE_METRE).asType(MassPerArea.class);

    /** One, the unit of counts: a price each is a price per ONE. */
    public static final Unit<Dimensionless> ONE = Units.PERCENT.getSystemUnit().asType(Dimensionless.class);

    private ShopUnits() {}
}
