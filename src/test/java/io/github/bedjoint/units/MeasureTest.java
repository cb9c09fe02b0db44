package io.github.bedjoint.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.EnumSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class MeasureTest {
    // Worked from the published factors (UCUM 2.2): 1 m = 3.28084 ft; 1 m2 = 10.7639 ft2; 1 kg = 2.20462 lb; 1 L = 0.264172 gal = 33.814 fl oz;
    // 60 s/m2 = 1 min/m2 = 0.09290304 min/ft2; 12 mL/m2 = 12 x 0.09290304 / 29.5735295625 fl oz/ft2 = 0.0376971;
    // 0.14 kg/m2 = 140 x 0.09290304 / 28.349523125 oz/ft2 = 0.458788; ¤ 1/m2 = ¤ 0.09290304/ft2; ¤ 100/m3 = ¤ 0.1/L = ¤ 0.378541/gal.
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "NUMBER          | 2.5    | 2.5           | 2.5",
                "NUMBER          | 0      | 0             | 0",
                "NUMBER          | -3     | -3            | -3",
                "LENGTH          | 1.3716 | 1.3716 m      | 4.5 ft",
                "LENGTH          | 0      | 0 m           | 0 ft",
                "LENGTH          | 0.1    | 0.1 m         | 3.937 in",
                "LENGTH          | 0.09999 | 99.99 mm     | 3.9366 in",
                "LENGTH          | 0.3048 | 0.3048 m      | 1 ft",
                "LENGTH          | 0.3047 | 0.3047 m      | 11.9961 in",
                "LENGTH          | 0.002  | 2 mm          | 0.0787402 in",
                "LENGTH          | 0.0000508 | 0.0508 mm  | 2 mil",
                "LENGTH          | -0.0254 | -25.4 mm     | -1 in",
                "LENGTH          | -2     | -2 m          | -6.5617 ft",
                "STEPS           | 109728 | 1.3716 m      | 4.5 ft",
                "STEPS           | 8000   | 0.1 m         | 3.937 in",
                "STEPS           | 7999   | 99.9875 mm    | 3.9365 in",
                "STEPS           | 24384  | 0.3048 m      | 1 ft",
                "STEPS           | 127    | 1.5875 mm     | 0.0625 in",
                "STEPS           | 0      | 0 m           | 0 ft",
                "AREA            | 62.709552 | 62.7096 m² | 675 ft²",
                "AREA            | 0.01   | 0.01 m²       | 0.107639 ft²",
                "AREA            | 0.009  | 9000 mm²      | 13.95 in²",
                "AREA            | 0      | 0 m²          | 0 ft²",
                "TIME            | 259200 | 72 h          | 72 h",
                "TIME            | 3600   | 1 h           | 1 h",
                "TIME            | 3599   | 59.9833 min   | 59.9833 min",
                "TIME            | 60     | 1 min         | 1 min",
                "TIME            | 59.5   | 59.5 s        | 59.5 s",
                "TIME            | 0      | 0 h           | 0 h",
                "TIME            | -90    | -1.5 min      | -1.5 min",
                "MASS            | 2      | 2 kg          | 4.4092 lb",
                "VOLUME          | 0.003785411784 | 3.7854 L | 1 gal",
                "VOLUME          | 0.0000295735295625 | 29.5735 mL | 1 fl oz",
                "VOLUME          | 0.001  | 1 L           | 33.814 fl oz",
                "VOLUME          | 0      | 0 L           | 0 gal",
                "TEMPERATURE     | 278.15 | 5 °C          | 41 °F",
                "TEMPERATURE     | 233.15 | -40 °C        | -40 °F",
                "TEMPERATURE     | 273.15 | 0 °C          | 32 °F",
                "TEMPERATURE     | 273.16 | 0.01 °C       | 32.018 °F",
                "TEMPERATURE     | 0      | -273.15 °C    | -459.67 °F",
                "TEMPERATURE_INTERVAL | 3 | 3 K           | 5.4 °F",
                "TEMPERATURE_INTERVAL | 0 | 0 K           | 0 °F",
                "SPEED           | 0.1016 | 6.096 m/min   | 20 ft/min",
                "TIME_PER_AREA   | 1500   | 25 min/m²     | 2.3226 min/ft²",
                "TIME_PER_LENGTH | 60     | 1 min/m       | 0.3048 min/ft",
                "VOLUME_PER_AREA | 0.000012 | 12 mL/m²    | 0.0376971 fl oz/ft²",
                "MASS_PER_AREA   | 0.14   | 140 g/m²      | 0.458788 oz/ft²",
                "ANGLE           | 1.5707963267948966 | 90° | 90°",
                "ANGLE           | 0      | 0°            | 0°",
                "MONEY           | 7.9    | ¤ 7.9         | ¤ 7.9",
                "MONEY           | -7.9   | ¤ -7.9        | ¤ -7.9",
                "MONEY_PER_AREA  | 1      | ¤ 1/m²        | ¤ 0.092903/ft²",
                "MONEY_PER_LENGTH | 1     | ¤ 1/m         | ¤ 0.3048/ft",
                "MONEY_PER_TIME  | 0.01   | ¤ 36/h        | ¤ 36/h",
                "MONEY_PER_VOLUME | 100   | ¤ 0.1/L       | ¤ 0.378541/gal",
                "MONEY_PER_MASS  | 1      | ¤ 1/kg        | ¤ 0.453592/lb"
            })
    void print_everyMeasure_readsAsItsReaderExpects(Measure measure, double inner, String metric, String imperial) {
        assertThat(measure.print(inner, UnitStyle.METRIC)).isEqualTo(metric);
        assertThat(measure.print(inner, UnitStyle.IMPERIAL)).isEqualTo(imperial);
    }

    @Test
    void print_table_leavesNoMeasureOut() throws NoSuchMethodException {
        CsvSource table = MeasureTest.class
                .getDeclaredMethod("print_everyMeasure_readsAsItsReaderExpects", Measure.class, double.class, String.class, String.class)
                .getAnnotation(CsvSource.class);
        EnumSet<Measure> covered = EnumSet.noneOf(Measure.class);
        Arrays.stream(table.value()).map(row -> row.split("\\|")[0].strip()).map(Measure::valueOf).forEach(covered::add);
        assertThat(covered).isEqualTo(EnumSet.allOf(Measure.class));
    }

    /** Decimal money is printed as it is, cents kept; a long count of steps and an int are numbers like any other. */
    @Test
    void print_otherNumbers_asTheyAre() {
        assertThat(Measure.MONEY.print(new BigDecimal("7.90"), UnitStyle.METRIC)).isEqualTo("¤ 7.90");
        assertThat(Measure.MONEY.print(new BigDecimal("1E+3"), UnitStyle.IMPERIAL)).isEqualTo("¤ 1000");
        assertThat(Measure.MONEY.print(new BigDecimal("3.850000000000000500"), UnitStyle.METRIC)).isEqualTo("¤ 3.85");
        assertThat(Measure.MONEY.print(new BigDecimal("16.0000000000"), UnitStyle.METRIC)).isEqualTo("¤ 16.00");
        assertThat(Measure.MONEY_PER_AREA.print(new BigDecimal("7.90"), UnitStyle.METRIC)).isEqualTo("¤ 7.9/m²");
        assertThat(Measure.STEPS.print(109_728L, UnitStyle.METRIC)).isEqualTo("1.3716 m");
        assertThat(Measure.NUMBER.print(3, UnitStyle.METRIC)).isEqualTo("3");
    }

    /** What a reading in Fahrenheit leaves behind at zero must not print as 0.00000000000005. */
    @ParameterizedTest
    @CsvSource({"0 degF, -17.7778 °C, 0 °F", "0 degC, 0 °C, 32 °F", "1 degF, -17.2222 °C, 1 °F"})
    void print_temperatureAtZero_isClean(String text, String metric, String imperial) {
        double kelvin = Door.temperatureK("t", Read.temperature(text), Range.closed(0, 1000));
        assertThat(Measure.TEMPERATURE.print(kelvin, UnitStyle.METRIC)).isEqualTo(metric);
        assertThat(Measure.TEMPERATURE.print(kelvin, UnitStyle.IMPERIAL)).isEqualTo(imperial);
    }

    @ParameterizedTest
    @EnumSource(Measure.class)
    void unit_ofEveryMeasure_isThere(Measure measure) {
        assertThat(measure.unit()).isNotNull();
        assertThat(measure.unit().getSystemUnit().isCompatible(measure.unit())).isTrue();
    }

    /** A measure's steps are an eighty-thousandth of a metre, so a walk with units can tell them from metres. */
    @Test
    void unit_ofSteps_isTheEightyThousandthOfAMetre() throws Exception {
        assertThat(Measure.STEPS.unit().getConverterToAny(ShopUnits.METRE).convert(80_000.0)).isEqualTo(1.0);
        assertThat(Measure.STEPS.unit()).isNotEqualTo(Measure.LENGTH.unit());
    }
}
