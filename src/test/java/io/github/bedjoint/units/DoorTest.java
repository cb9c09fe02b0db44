package io.github.bedjoint.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.lang.reflect.Proxy;
import java.math.BigDecimal;
import javax.measure.MetricPrefix;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

class DoorTest {
    private static final Range ANY = Range.closed(-1e12, 1e12);
    private static final Range KELVIN = Range.closed(0, 2000);

    /** A quantity of another implementation: Indriya itself refuses NaN and infinity before they come to the door. */
    @SuppressWarnings("unchecked")
    private static Quantity<Length> foreign(Number value, Unit<Length> unit) {
        return (Quantity<Length>) Proxy.newProxyInstance(DoorTest.class.getClassLoader(), new Class<?>[] {Quantity.class}, (p, method, a) ->
                switch (method.getName()) {
                    case "getValue" -> value;
                    case "getUnit" -> unit;
                    case "getScale" -> Quantity.Scale.ABSOLUTE;
                    default -> throw new UnsupportedOperationException(method.getName());
                });
    }

    @SuppressWarnings({"unchecked", "rawtypes"})
    private static Quantity<Length> castToLength(Quantity<?> other) {
        return (Quantity<Length>) (Quantity) other;
    }

    @Test
    void length_inUserBuiltUnits_converts() {
        // 1371.6 mm = 54 in = 1.3716 m; a furlong is 220 yd = 201.168 m.
        assertThat(Door.lengthM("w", Quantities.getQuantity(1371.6, MetricPrefix.MILLI(Units.METRE)), ANY)).isCloseTo(1.3716, within(1e-15));
        assertThat(Door.lengthM("w", Quantities.getQuantity(2, MetricPrefix.KILO(Units.METRE)), ANY)).isEqualTo(2000);
        assertThat(Door.lengthM("w", Quantities.getQuantity(1, ShopUnits.YARD.multiply(220)), ANY)).isCloseTo(201.168, within(1e-12));
        assertThat(Door.areaM2("a", Quantities.getQuantity(3, ShopUnits.FOOT.multiply(ShopUnits.FOOT).asType(javax.measure.quantity.Area.class)), ANY))
                .isCloseTo(0.27870912, within(1e-15));
        assertThat(Door.in(Measure.VOLUME, "v", Quantities.getQuantity(3, Units.LITRE), ANY)).isCloseTo(0.003, within(1e-18));
        assertThat(Door.in(Measure.TIME_PER_AREA, "p",
                        Quantities.getQuantity(2, Units.HOUR.divide(MetricPrefix.CENTI(Units.METRE).pow(2)).asType(TimePerArea.class)), ANY))
                .isCloseTo(72e6, within(1e-6));
    }

    @Test
    void length_inAnyNumberType_converts() {
        assertThat(Door.lengthM("w", Quantities.getQuantity(54, ShopUnits.INCH), ANY)).isEqualTo(1.3716);
        assertThat(Door.lengthM("w", Quantities.getQuantity(new BigDecimal("54.0"), ShopUnits.INCH), ANY)).isEqualTo(1.3716);
        assertThat(Door.lengthM("w", Quantities.getQuantity(54L, ShopUnits.INCH).to(ShopUnits.CENTIMETRE), ANY)).isCloseTo(1.3716, within(1e-15));
        assertThat(Door.lengthM("w", foreign(54, ShopUnits.INCH), ANY)).isEqualTo(1.3716);
    }

    @Test
    void temperature_withItsOffset_converts() {
        // GNU Units 2.22: 41 F = 5 C.
        assertThat(Door.temperatureK("t", Quantities.getQuantity(41, ShopUnits.FAHRENHEIT), KELVIN)).isCloseTo(278.15, within(1e-12));
        assertThat(Door.temperatureK("t", Quantities.getQuantity(5, ShopUnits.CELSIUS), KELVIN)).isCloseTo(278.15, within(1e-12));
        assertThat(Door.temperatureK("t", Quantities.getQuantity(5, Units.CELSIUS), KELVIN)).isCloseTo(278.15, within(1e-12));
        assertThat(Door.temperatureK("t", Quantities.getQuantity(278.15, ShopUnits.KELVIN), KELVIN)).isEqualTo(278.15);
    }

    @Test
    void interval_ofTemperatures_hasNoOffset() {
        // GNU Units 2.22: an interval of 5 F is 2.7778 K.
        assertThat(interval(5, ShopUnits.FAHRENHEIT, Quantity.Scale.RELATIVE)).isCloseTo(2.77777777777777778, within(1e-15));
        assertThat(interval(3, ShopUnits.CELSIUS, Quantity.Scale.RELATIVE)).isEqualTo(3);
        assertThat(interval(3, ShopUnits.KELVIN, Quantity.Scale.ABSOLUTE)).isEqualTo(3);
        assertThat(interval(3, ShopUnits.KELVIN, Quantity.Scale.RELATIVE)).isEqualTo(3);
        assertThat(interval(3, ShopUnits.KELVIN.shift(100), Quantity.Scale.RELATIVE)).isCloseTo(3, within(1e-12));
        assertThat(interval(3000, MetricPrefix.MILLI(Units.KELVIN), Quantity.Scale.RELATIVE)).isCloseTo(3, within(1e-12));
    }

    private static double interval(double value, Unit<Temperature> unit, Quantity.Scale scale) {
        return Door.intervalK("margin", Quantities.getQuantity(value, unit, scale), Range.closed(0, 100));
    }

    @Test
    void intervalAndTemperature_mistakenForEachOther_areRefused() {
        assertThatThrownBy(() -> interval(5, ShopUnits.FAHRENHEIT, Quantity.Scale.ABSOLUTE))
                .hasMessage("margin is 5 degF, but must be an interval, not a temperature. Maybe give it in kelvin or with Quantity.Scale.RELATIVE.");
        assertThatThrownBy(() -> Door.temperatureK("surface", Quantities.getQuantity(5, ShopUnits.FAHRENHEIT, Quantity.Scale.RELATIVE), KELVIN))
                .hasMessage("surface is an interval of 5 degF, but must be a temperature. Maybe leave Scale.RELATIVE away.");
        assertThatThrownBy(() -> interval(-1, ShopUnits.KELVIN, Quantity.Scale.ABSOLUTE))
                .hasMessageStartingWith("margin is -1 K, but must be at least 0 K and at most 100 K.");
        assertThatThrownBy(() -> interval(500, ShopUnits.FAHRENHEIT, Quantity.Scale.RELATIVE)).hasMessageStartingWith("margin is 500 degF, but ");
        assertThatThrownBy(() -> Door.intervalK("margin", null, KELVIN)).hasMessageStartingWith("margin is absent, but ");
    }

    @Test
    void wrongDimension_throughARawCast_isRefused() {
        RefusedException refused = catchThrowableOfType(
                RefusedException.class, () -> Door.lengthM("width", castToLength(Quantities.getQuantity(5.5, ShopUnits.POUND)), ANY));
        assertThat(refused).hasMessage("width is 5.5 lb, but must be measured in m or a unit that converts to it. Maybe another quantity was meant.");
        assertThat(refused.parameter()).isEqualTo("width");
        assertThat(refused.value()).isEqualTo("5.5 lb");
        for (Unit<?> unit : new Unit<?>[] {ShopUnits.SQUARE_METRE, ShopUnits.MINUTE_PER_FOOT, ShopUnits.ONE, ShopUnits.KELVIN, Units.VOLT, Measure.MONEY.unit()}) {
            assertThatThrownBy(() -> Door.lengthM("width", castToLength(Quantities.getQuantity(5, unit)), ANY))
                    .as(unit.toString()).isInstanceOf(RefusedException.class).hasMessageContaining("must be measured in m ");
        }
    }

    @Test
    void notANumber_fromAnotherImplementation_isRefused() {
        for (Unit<Length> unit : java.util.List.of(ShopUnits.METRE, ShopUnits.INCH, MetricPrefix.MILLI(Units.METRE))) {
            assertThatThrownBy(() -> Door.lengthM("width", foreign(Double.NaN, unit), ANY))
                    .isInstanceOf(RefusedException.class).hasMessageStartingWith("width is NaN ").hasMessageContaining("Maybe a division by zero");
            assertThatThrownBy(() -> Door.lengthM("width", foreign(Double.NEGATIVE_INFINITY, unit), ANY))
                    .isInstanceOf(RefusedException.class).hasMessageStartingWith("width is -Infinity ");
        }
        assertThatThrownBy(() -> Door.length(Double.NaN)).isInstanceOf(RefusedException.class).hasMessageStartingWith("quantity is NaN m, but must be finite.");
        assertThatThrownBy(() -> Door.area(Double.NaN)).isInstanceOf(RefusedException.class);
        assertThatThrownBy(() -> Door.time(Double.NEGATIVE_INFINITY)).isInstanceOf(RefusedException.class);
        assertThatThrownBy(() -> Door.of(Double.POSITIVE_INFINITY, ShopUnits.INCH)).hasMessageStartingWith("quantity is Infinity in, but must be finite.");
    }

    @Test
    void outOfRange_negativeZeroOrHuge_namesParameterValueAndLimit() {
        assertThatThrownBy(() -> Door.lengthM("width", Quantities.getQuantity(-54.5, ShopUnits.INCH), Range.POSITIVE))
                .hasMessage("width is -54.5 in, but must be more than 0 m and at most 10000 m. Maybe a sign or a difference is the wrong way round.");
        assertThatThrownBy(() -> Door.lengthM("width", Quantities.getQuantity(0, ShopUnits.FOOT), Range.POSITIVE))
                .hasMessage("width is 0 ft, but must be more than 0 m and at most 10000 m. Maybe a sign or a difference is the wrong way round.");
        assertThatThrownBy(() -> Door.lengthM("width", Quantities.getQuantity(1e20, ShopUnits.FOOT), Range.POSITIVE))
                .hasMessage("width is 1.0E20 ft, but must be more than 0 m and at most 10000 m. Maybe the unit is not the one meant.");
        assertThatThrownBy(() -> Door.lengthM("width", Quantities.getQuantity(new BigDecimal("1e400"), ShopUnits.METRE), Range.POSITIVE))
                .hasMessageStartingWith("width is Infinity m, but ");
        assertThatThrownBy(() -> Door.lengthM("width", null, Range.POSITIVE))
                .hasMessage("width is absent, but must be more than 0 m and at most 10000 m. Maybe it was forgotten.");
        assertThatThrownBy(() -> Door.temperatureK("surface", Quantities.getQuantity(-300, ShopUnits.CELSIUS), Range.closed(200, 400)))
                .hasMessageStartingWith("surface is -300 degC, but must be at least -73.15 °C and at most 126.85 °C.");
    }

    @Test
    void number_outOfRange_isRefused() {
        assertThat(Door.number("share", 0.25, Range.SHARE)).isEqualTo(0.25);
        assertThat(Door.number("share", 1, Range.SHARE)).isEqualTo(1);
        assertThatThrownBy(() -> Door.number("share", 1.25, Range.SHARE)).hasMessage("share is 1.25, but must be at least 0 and at most 1. Maybe the unit is not the one meant.");
        assertThatThrownBy(() -> Door.number("margin", 1, Range.BELOW_ONE)).hasMessageContaining("must be at least 0 and less than 1");
        assertThatThrownBy(() -> Door.number("share", Double.NaN, Range.SHARE)).hasMessageStartingWith("share is NaN, but ");
        assertThatThrownBy(() -> Door.number("share", 1e-9, Range.above(0.1, 1))).hasMessageStartingWith("share is 0.000000001, but ");
    }

    @Test
    void in_numberAlreadyInner_isCheckedAgainstItsRange() {
        assertThat(Door.in(Measure.LENGTH, 1.5, "width", Range.POSITIVE)).isEqualTo(1.5);
        assertThatThrownBy(() -> Door.in(Measure.LENGTH, -1.5, "width", Range.POSITIVE))
                .hasMessageStartingWith("width is -1.5 m, but must be more than 0 m and at most 10000 m.");
        assertThatThrownBy(() -> Door.in(Measure.TIME, Double.NaN, "wait", Range.NOT_NEGATIVE)).isInstanceOf(RefusedException.class);
    }

    @Test
    void count_outOfRange_isRefused() {
        assertThat(Door.count("people", 1, 1, 20)).isEqualTo(1);
        assertThat(Door.count("people", 20, 1, 20)).isEqualTo(20);
        assertThatThrownBy(() -> Door.count("people", 0, 1, 20)).hasMessageStartingWith("people is 0, but must be a whole number from 1 to 20.");
        assertThatThrownBy(() -> Door.count("people", 21, 1, 20)).isInstanceOf(RefusedException.class);
    }

    @Test
    void text_accepted_isStripped() {
        assertThat(Door.text("name", "  Mill Lane, east gable ")).isEqualTo("Mill Lane, east gable");
        assertThat(Door.text("name", "\u00a0 Mill\u00a0Lane \u2007")).isEqualTo("Mill\u00a0Lane");
        assertThat(Door.text("name", "x".repeat(200))).hasSize(200);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "\t\n", "\u00a0", "two\nlines", "bell\u0007", "c1\u0085control", "del\u007f"})
    void text_blankOrWithControls_isRefusedWithoutRepeatingThem(String text) {
        RefusedException refused = catchThrowableOfType(RefusedException.class, () -> Door.text("name", text));
        assertThat(refused.parameter()).isEqualTo("name");
        assertThat(refused.getMessage().chars()).noneMatch(Character::isISOControl);
    }

    @Test
    void text_absentOrTooLong_isRefused() {
        assertThatThrownBy(() -> Door.text("name", null)).hasMessageStartingWith("name is absent, but must be a text.");
        assertThatThrownBy(() -> Door.text("name", "x".repeat(201))).hasMessageContaining("at most 200 characters");
    }

    @Test
    void quantities_madeAtTheDoor_comeBackThroughIt() {
        assertThat(Door.lengthM("l", Door.length(1.3716), ANY)).isEqualTo(1.3716);
        assertThat(Door.areaM2("a", Door.area(62.709552), ANY)).isEqualTo(62.709552);
        assertThat(Door.time(5400).getValue().doubleValue()).isEqualTo(1.5);
        assertThat(Door.time(5400).getUnit()).isEqualTo(ShopUnits.HOUR);
        assertThat(Door.timeS("t", Door.time(5400), ANY)).isEqualTo(5400);
    }

    @Test
    void range_withImpossibleEnds_isRefused() {
        assertThatThrownBy(() -> Range.closed(1, 0)).isInstanceOf(RefusedException.class).hasMessageStartingWith("range is 1.0 to 0.0");
        assertThatThrownBy(() -> Range.closed(0, Double.POSITIVE_INFINITY)).isInstanceOf(RefusedException.class);
        assertThatThrownBy(() -> Range.above(Double.NaN, 1)).isInstanceOf(RefusedException.class);
    }

    @Test
    void range_atItsEnds_acceptsOnlyClosedOnes() {
        assertThat(Range.POSITIVE.contains(0)).isFalse();
        assertThat(Range.POSITIVE.contains(Double.MIN_VALUE)).isTrue();
        assertThat(Range.POSITIVE.contains(10_000)).isTrue();
        assertThat(Range.NOT_NEGATIVE.contains(-0.0)).isTrue();
        assertThat(Range.NOT_NEGATIVE.contains(-Double.MIN_VALUE)).isFalse();
        assertThat(Range.BELOW_ONE.contains(Math.nextDown(1))).isTrue();
        assertThat(Range.BELOW_ONE.contains(1)).isFalse();
        assertThat(Range.SHARE.contains(Double.NaN)).isFalse();
        assertThat(Range.SHARE.contains(Double.NEGATIVE_INFINITY)).isFalse();
    }

    @Test
    void refusal_seenFromFurtherOut_hasTheLongerName() {
        RefusedException inner = new RefusedException("width", "0 m", "must be more than 0 m", "");
        assertThat(inner).hasMessage("width is 0 m, but must be more than 0 m.");
        assertThat(new RefusedException("width", "0 m", "must be more than 0 m", "Maybe wait.").within("w.").hint()).isEqualTo("Maybe wait.");
        RefusedException outer = inner.within("walls[0].");
        assertThat(outer).hasMessage("walls[0].width is 0 m, but must be more than 0 m.");
        assertThat(outer.parameter()).isEqualTo("walls[0].width");
        assertThat(outer.value()).isEqualTo("0 m");
        assertThat(outer.limit()).isEqualTo("must be more than 0 m");
        assertThat(outer.hint()).isEmpty();
        assertThat(outer.getStackTrace()).isEqualTo(inner.getStackTrace());
    }

    /** 140 degF is 60 degC exactly, but in doubles 333.15000000000003 K. */
    @Test
    void in_limitWrittenInAnotherUnit_isAccepted() {
        Range upTo60 = Range.closed(228.15, 333.15);
        assertThat(Door.temperatureK("air", Read.temperature("140 degF"), upTo60)).isEqualTo(333.15);
        assertThat(Door.temperatureK("air", Read.temperature("-49 degF"), upTo60)).isEqualTo(228.15);
        assertThatThrownBy(() -> Door.temperatureK("air", Read.temperature("140.0001 degF"), upTo60))
                .isInstanceOf(RefusedException.class);
    }

    @Test
    void in_smallValueOfAWideRange_isKept() {
        assertThat(Door.in(Measure.VOLUME, "ink", Read.volume("0.5 mL"), Range.closed(0, 1e12))).isEqualTo(5e-7);
    }

    @Test
    void text_atTheLimit_isKeptAndOneMoreIsRefused() {
        String name = "n".repeat(200);
        assertThat(Door.text("name", name)).isEqualTo(name);
        assertThat(Door.text("name", " " + name + " ")).isEqualTo(name);
        assertThat(Door.text("name", "ü".repeat(200))).hasSize(200);
        assertThatThrownBy(() -> Door.text("name", name + "n")).hasMessageContaining("must have at most 200 characters");
        assertThatThrownBy(() -> Door.text("name", "ü".repeat(201))).hasMessageContaining("must have at most 200 characters");
    }

    @Test
    void text_blanksAround_areCutOff() {
        assertThat(Door.text("name", " a b")).isEqualTo("a b");
        assertThat(Door.text("name", "a b ")).isEqualTo("a b");
        assertThat(Door.text("name", "~ a !")).isEqualTo("~ a !");
    }
}
