package io.github.bedjoint.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Arrays;
import java.util.stream.Stream;
import javax.measure.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The factors against UCUM 2.2 and NIST SP 811 appendix B; the name of the UCUM code stands beside each. */
class ShopUnitsTest {
    static Stream<Arguments> published() {
        return Stream.of(
                Arguments.of("cm", ShopUnits.CENTIMETRE, "0.01"),
                Arguments.of("mm", ShopUnits.MILLIMETRE, "0.001"),
                Arguments.of("um", ShopUnits.MICROMETRE, "0.000001"),
                Arguments.of("[in_i]", ShopUnits.INCH, "0.0254"),
                Arguments.of("[ft_i]", ShopUnits.FOOT, "0.3048"),
                Arguments.of("[yd_i]", ShopUnits.YARD, "0.9144"),
                Arguments.of("[mil_i]", ShopUnits.MIL, "0.0000254"),
                Arguments.of("mm2", ShopUnits.SQUARE_MILLIMETRE, "0.000001"),
                Arguments.of("[sin_i]", ShopUnits.SQUARE_INCH, "0.00064516"),
                Arguments.of("[sft_i]", ShopUnits.SQUARE_FOOT, "0.09290304"),
                Arguments.of("[syd_i]", ShopUnits.SQUARE_YARD, "0.83612736"),
                Arguments.of("min", ShopUnits.MINUTE, "60"),
                Arguments.of("h", ShopUnits.HOUR, "3600"),
                Arguments.of("d", ShopUnits.DAY, "86400"),
                Arguments.of("g", ShopUnits.GRAM, "0.001"),
                Arguments.of("[lb_av]", ShopUnits.POUND, "0.45359237"),
                Arguments.of("[oz_av]", ShopUnits.OUNCE, "0.028349523125"),
                Arguments.of("L", ShopUnits.LITRE, "0.001"),
                Arguments.of("mL", ShopUnits.MILLILITRE, "0.000001"),
                Arguments.of("[gal_us]", ShopUnits.US_GALLON, "0.003785411784"),
                Arguments.of("[foz_us]", ShopUnits.US_FLUID_OUNCE, "0.0000295735295625"));
    }

    @ParameterizedTest
    @MethodSource("published")
    void factor_inTheTable_isThePublishedOne(String ucum, Unit<?> unit, BigDecimal factor) {
        assertThat(UnitTable.find(unit).exact()).as(ucum).isEqualByComparingTo(factor);
    }

    /** The JSR-385 constant itself, through its own converter and not through our table. */
    @ParameterizedTest
    @MethodSource("published")
    void converter_ofTheConstant_agreesWithThePublishedFactor(String ucum, Unit<?> unit, BigDecimal factor) throws Exception {
        double converted = unit.getConverterToAny(unit.getSystemUnit()).convert(1.0);
        assertThat(converted).as(ucum).isCloseTo(factor.doubleValue(), within(factor.doubleValue() * 1e-15));
    }

    /** Every unit of the table, rates included: its own converter must give what the table gives. */
    @Test
    void table_everyUnit_agreesWithItsOwnConverter() throws Exception {
        String[] names = Arrays.stream(Measure.values()).flatMap(m -> Arrays.stream(UnitTable.names(m).split(", "))).toArray(String[]::new);
        assertThat(names).contains("in", "m2", "min/m2", "min/ft", "mL/m2", "g/m2", "ft/min", "degF", "each");
        for (Measure over : new Measure[] {Measure.TIME, Measure.VOLUME, Measure.MASS}) {
            for (String top : UnitTable.names(over).split(", ")) {
                for (String bottom : UnitTable.names(Measure.AREA).split(", ")) {
                    UnitTable.Entry rate = UnitTable.named(top + "/" + bottom);
                    BigDecimal exact = UnitTable.named(top).exact().divide(UnitTable.named(bottom).exact(), MathContext.DECIMAL64);
                    double converted = rate.unit().getConverterToAny(rate.measure().unit()).convert(1.0);
                    assertThat(converted).as(rate.label()).isCloseTo(exact.doubleValue(), within(exact.doubleValue() * 1e-13));
                    assertThat(rate.inner(1)).as(rate.label()).isCloseTo(exact.doubleValue(), within(exact.doubleValue() * 1e-15));
                }
            }
        }
    }

    /** NIST SP 811 (1200/3937 m is UCUM [ft_us]): the survey foot is 2 ppm longer and is not ours. */
    @Test
    void foot_againstTheSurveyFoot_isShorter() {
        assertThat(UnitTable.find(ShopUnits.FOOT).exact().doubleValue()).isLessThan(1200.0 / 3937);
    }

    /** GNU Units 2.22: 41 F = 5 C, 1000 F = 537.7778 C, -40 F = -40 C. */
    @ParameterizedTest
    @CsvSource({"41, 5", "1000, 537.77777777777778", "-40, -40", "32, 0", "230, 110", "248, 120"})
    void fahrenheit_asATemperature_isTheCelsiusOfGnuUnits(double fahrenheit, double celsius) throws Exception {
        double table = UnitTable.find(ShopUnits.FAHRENHEIT).inner(fahrenheit) - 273.15;
        double own = ShopUnits.FAHRENHEIT.getConverterToAny(ShopUnits.CELSIUS).convert(fahrenheit);
        assertThat(table).isCloseTo(celsius, within(1e-9));
        assertThat(own).isCloseTo(celsius, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"m, LENGTH", "m2, AREA", "m3, VOLUME", "s, TIME", "kg, MASS", "K, TEMPERATURE", "m/s, SPEED", "each, NUMBER"})
    void find_innerUnits_keepTheirOwnMeasure(String name, Measure measure) {
        UnitTable.Entry named = UnitTable.named(name);
        assertThat(named.measure()).isEqualTo(measure);
        assertThat(named.unit()).isEqualTo(measure.unit());
        // m3/m2 is the metre itself to JSR-385; it must not have taken the metre's place.
        assertThat(UnitTable.find(measure.unit()).measure()).isEqualTo(measure);
        assertThat(UnitTable.label(measure.unit())).isEqualTo(name);
    }

    @Test
    void money_asAUnit_isNeitherACountNorLost() {
        assertThat(Measure.MONEY.unit()).isNotEqualTo(ShopUnits.ONE);
        assertThat(Measure.MONEY.unit().isCompatible(ShopUnits.METRE)).isFalse();
        assertThat(Measure.MONEY_PER_AREA.unit().multiply(Measure.AREA.unit())).isEqualTo(Measure.MONEY.unit());
        assertThat(Measure.MONEY_PER_TIME.unit().multiply(Measure.TIME.unit())).isEqualTo(Measure.MONEY.unit());
    }

    @ParameterizedTest
    @CsvSource({"TIME_PER_AREA, s/m2", "TIME_PER_LENGTH, s/m", "MASS_PER_AREA, kg/m2"})
    void label_ofInnerRates_isOneThatReadsBack(Measure measure, String label) {
        assertThat(UnitTable.label(measure.unit())).isEqualTo(label);
        assertThat(UnitTable.named(label).measure()).isEqualTo(measure);
    }
}
