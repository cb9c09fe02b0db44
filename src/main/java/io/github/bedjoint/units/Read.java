package io.github.bedjoint.units;

import java.math.BigDecimal;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import javax.measure.quantity.Volume;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * Reads what people write: {@code 54 in}, {@code 12' 6 1/2"}, {@code 3.2 m2}, {@code 5/8 in}, {@code 110 degC}, {@code 25 min/m2},
 * {@code EUR 7.90/m2}; the same under every locale.
 *
 * <p>A number is written with a point and without grouping; a comma is refused, since it means different things in different
 * places, and so is an exponent. A quantity may be a fraction or a whole number, a blank and a fraction; it may have a minus sign,
 * since only the parameter it is given to knows what is too small. Money has neither. Names of units are written exactly as the
 * examples and hints show them: {@code m} and {@code M} differ. Every value has a unit. The quantity keeps the unit it was written in.
 * What cannot be read is refused with the text, the place and what was expected there.
 */
public final class Read {
    private Read() {}

    /**
     * A length: a number with a unit, or feet and inches.
     *
     * @param text such as {@code 54 in}, {@code 12' 6 1/2"}, {@code 3.2 m}, {@code 2 mil}
     * @return the length, in the unit written (inches where feet and inches are mixed)
     * @throws RefusedException if it cannot be read
     */
    public static Quantity<Length> length(String text) {
        return TextReader.quantity(Measure.LENGTH, "length", text);
    }

    /**
     * An area.
     *
     * @param text such as {@code 3.2 m2}, {@code 40 sq ft}
     * @return the area, in the unit written
     * @throws RefusedException if it cannot be read
     */
    public static Quantity<Area> area(String text) {
        return TextReader.quantity(Measure.AREA, "area", text);
    }

    /**
     * A time.
     *
     * @param text such as {@code 72 h}, {@code 25 min}
     * @return the time, in the unit written
     * @throws RefusedException if it cannot be read
     */
    public static Quantity<Time> time(String text) {
        return TextReader.quantity(Measure.TIME, "time", text);
    }

    /**
     * A mass.
     *
     * @param text such as {@code 5 kg}, {@code 12 oz}
     * @return the mass, in the unit written
     * @throws RefusedException if it cannot be read
     */
    public static Quantity<Mass> mass(String text) {
        return TextReader.quantity(Measure.MASS, "mass", text);
    }

    /**
     * A volume.
     *
     * @param text such as {@code 2 L}, {@code 1 gal}
     * @return the volume, in the unit written
     * @throws RefusedException if it cannot be read
     */
    public static Quantity<Volume> volume(String text) {
        return TextReader.quantity(Measure.VOLUME, "volume", text);
    }

    /**
     * A temperature; an interval between temperatures is something else.
     *
     * @param text such as {@code 110 degC}, {@code 41 degF}
     * @return the temperature, in the unit written
     * @throws RefusedException if it cannot be read
     */
    public static Quantity<Temperature> temperature(String text) {
        return TextReader.quantity(Measure.TEMPERATURE, "temperature", text);
    }

    /**
     * A speed.
     *
     * @param text such as {@code 1.5 m/min}, {@code 20 ft/min}
     * @return the speed, in the unit written
     * @throws RefusedException if it cannot be read
     */
    public static Quantity<Speed> speed(String text) {
        return TextReader.quantity(Measure.SPEED, "speed", text);
    }

    /**
     * A pace by area.
     *
     * @param text such as {@code 25 min/m2}
     * @return the pace, in the unit written
     * @throws RefusedException if it cannot be read
     */
    public static Quantity<TimePerArea> timePerArea(String text) {
        return TextReader.quantity(Measure.TIME_PER_AREA, "time per area", text);
    }

    /**
     * A pace by length.
     *
     * @param text such as {@code 1.8 min/ft}
     * @return the pace, in the unit written
     * @throws RefusedException if it cannot be read
     */
    public static Quantity<TimePerLength> timePerLength(String text) {
        return TextReader.quantity(Measure.TIME_PER_LENGTH, "time per length", text);
    }

    /**
     * A consumption.
     *
     * @param text such as {@code 12 mL/m2}
     * @return the consumption, in the unit written
     * @throws RefusedException if it cannot be read
     */
    public static Quantity<VolumePerArea> volumePerArea(String text) {
        return TextReader.quantity(Measure.VOLUME_PER_AREA, "volume per area", text);
    }

    /**
     * A basis weight.
     *
     * @param text such as {@code 140 g/m2}
     * @return the basis weight, in the unit written
     * @throws RefusedException if it cannot be read
     */
    public static Quantity<MassPerArea> massPerArea(String text) {
        return TextReader.quantity(Measure.MASS_PER_AREA, "mass per area", text);
    }

    /**
     * An amount of money, not negative, with no more decimals than its currency has.
     *
     * @param text a currency code and an amount, such as {@code USD 512.00}
     * @return the money
     * @throws RefusedException if it cannot be read
     */
    public static Money money(String text) {
        TextReader reader = new TextReader("amount of money", text);
        CurrencyUnit currency = reader.currency();
        BigDecimal amount = reader.digits(true);
        reader.end();
        if (amount.stripTrailingZeros().scale() > currency.getDecimalPlaces()) {
            throw reader.refused(
                    "must have at most " + currency.getDecimalPlaces() + " decimals in " + currency.getCode(), "Maybe a rate was meant.");
        }
        return Money.of(currency, amount.setScale(currency.getDecimalPlaces()));
    }

    /**
     * A price per area.
     *
     * @param text such as {@code EUR 7.90/m2}
     * @return the price
     * @throws RefusedException if it cannot be read
     */
    public static PriceRate<Area> pricePerArea(String text) {
        return TextReader.price(Measure.AREA, text);
    }

    /**
     * A price per length.
     *
     * @param text such as {@code USD 1.25/ft}
     * @return the price
     * @throws RefusedException if it cannot be read
     */
    public static PriceRate<Length> pricePerLength(String text) {
        return TextReader.price(Measure.LENGTH, text);
    }

    /**
     * A price per time.
     *
     * @param text such as {@code EUR 38/h}
     * @return the price
     * @throws RefusedException if it cannot be read
     */
    public static PriceRate<Time> pricePerTime(String text) {
        return TextReader.price(Measure.TIME, text);
    }

    /**
     * A price per volume.
     *
     * @param text such as {@code EUR 95/L}
     * @return the price
     * @throws RefusedException if it cannot be read
     */
    public static PriceRate<Volume> pricePerVolume(String text) {
        return TextReader.price(Measure.VOLUME, text);
    }

    /**
     * A price per mass.
     *
     * @param text such as {@code EUR 0.40/kg}
     * @return the price
     * @throws RefusedException if it cannot be read
     */
    public static PriceRate<Mass> pricePerMass(String text) {
        return TextReader.price(Measure.MASS, text);
    }

    /**
     * A price each.
     *
     * @param text such as {@code EUR 2.50/piece}
     * @return the price
     * @throws RefusedException if it cannot be read
     */
    public static PriceRate<Dimensionless> priceEach(String text) {
        return TextReader.price(Measure.NUMBER, text);
    }
}
