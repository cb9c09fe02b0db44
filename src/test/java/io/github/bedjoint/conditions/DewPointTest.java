package io.github.bedjoint.conditions;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Read;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.ShopUnits;
import io.github.bedjoint.working.Verdict;
import io.github.bedjoint.working.WorkingCheck;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DewPointTest {
    private static DewPoint of(double celsius, double share) {
        return DewPoint.of(Door.of(celsius, ShopUnits.CELSIUS), share);
    }

    private static List<String> reference() throws IOException {
        try (InputStream in = Objects.requireNonNull(DewPointTest.class.getResourceAsStream("/conditions/dewpoint_reference.csv"))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().skip(1).toList();
        }
    }

    @Test
    void celsius_wholeReferenceGrid_isMagnusAndNearAshrae() throws IOException {
        // Columns: t, rh, PsychroLib 2.5.0 (ASHRAE), Magnus 17.62/243.12, two other pairs.
        int compared = 0;
        for (String line : reference()) {
            String[] cells = line.split(",");
            double[] row = java.util.Arrays.stream(cells).mapToDouble(Double::parseDouble).toArray();
            DewPoint dewPoint = of(row[0], row[1]);
            assertThat(dewPoint.celsius()).as(line).isCloseTo(row[3], within(5.1e-5));
            if (row[2] >= 0) {
                assertThat(dewPoint.celsius()).as(line).isCloseTo(row[2], within(0.055));
                compared++;
            }
        }
        assertThat(compared).isGreaterThan(30);
    }

    @ParameterizedTest
    @CsvSource({"20, 0.5, 9.27", "25, 0.6, 16.70"}) // PsychroLib 2.5.0
    void celsius_twoKnownAirs_isTheReferenceToATwentieth(double air, double humidity, double dew) {
        assertThat(of(air, humidity).celsius()).isCloseTo(dew, within(0.055));
    }

    @Test
    void celsius_saturatedAir_isTheAir() {
        assertThat(of(17.3, 1).celsius()).isCloseTo(17.3, within(1e-12));
    }

    @Test
    void celsius_airAt50WithTheVapourOf25_is25() {
        // Saturation pressures of 3169.7 Pa at 25 C and 12351.3 Pa at 50 C: ASHRAE Fundamentals 2017 ch. 1 Table 3, via PsychroLib's tests.
        // Magnus is 0.3 % low at 25 C, which is 0.05 K here.
        assertThat(of(50, 3169.7 / 12351.3).celsius()).isCloseTo(25, within(0.055));
    }

    @Test
    void leastSurface_70F65Percent_isTheChartsFormula() {
        // A public dew point chart gives the formula's 57.69 F and a surface of at least 62.69 F; floored to 57 it would pass 62.0 F.
        DewPoint dewPoint = DewPoint.of(Read.temperature("70 degF"), 0.65);
        double dewF = dewPoint.celsius() * 1.8 + 32;
        assertThat(dewF).isCloseTo(57.69, within(0.02));
        double leastF = SpreadRule.FIVE_FAHRENHEIT.leastSurface(dewPoint).getValue().doubleValue() * 1.8 + 32;
        assertThat(leastF).isCloseTo(62.69, within(0.02));
        assertThat(SpreadRule.FIVE_FAHRENHEIT.verdict(dewPoint, Read.temperature("62.0 degF")).level())
                .isEqualTo(Verdict.Level.WARNING);
        assertThat(SpreadRule.FIVE_FAHRENHEIT.verdict(dewPoint, Read.temperature("62.8 degF")).level())
                .isEqualTo(Verdict.Level.FINE);
    }

    @Test
    void verdict_betweenTheTwoRules_differs() {
        // Dew point 17.3 (saturated air): 2.9 K above passes 5 deg F (2.78 K) and fails 3 K.
        DewPoint dewPoint = of(17.3, 1);
        assertThat(SpreadRule.THREE_KELVIN.verdict(dewPoint, Read.temperature("20.2 degC")).level())
                .isEqualTo(Verdict.Level.WARNING);
        assertThat(SpreadRule.FIVE_FAHRENHEIT.verdict(dewPoint, Read.temperature("20.2 degC")).level())
                .isEqualTo(Verdict.Level.FINE);
        assertThat(SpreadRule.THREE_KELVIN.verdict(dewPoint, Read.temperature("20.3 degC")).level())
                .isEqualTo(Verdict.Level.FINE);
    }

    @Test
    void verdict_surfaceAtDewPointOrBelow_isRefusedWithFigures() {
        Verdict wet = SpreadRule.THREE_KELVIN.verdict(of(17.3, 1), Read.temperature("16 degC"));
        assertThat(wet.level()).isEqualTo(Verdict.Level.REFUSED);
        assertThat(wet.reason())
                .isEqualTo("the surface at 16.00 °C is 1.30 K below the dew point of 17.30 °C; the 3 K rule asks for 3.00 K above it");
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -0.1, 1.0001, 50, 101, Double.NaN, Double.POSITIVE_INFINITY})
    void of_humidityOutOfRange_isRefused(double humidity) {
        assertThatThrownBy(() -> of(20, humidity)).isInstanceOf(RefusedException.class).hasMessageContaining("relative humidity");
    }

    @Test
    void of_percent_getsAHint() {
        assertThatThrownBy(() -> of(20, 50))
                .hasMessage("relative humidity is 50, but must be more than 0 and at most 1. Maybe it is in percent: 50 % is 0.5.");
    }

    @ParameterizedTest
    @ValueSource(doubles = {-45.1, 60.1})
    void of_airOutsideTheFormula_isRefused(double celsius) {
        assertThatThrownBy(() -> of(celsius, 0.5)).hasMessageContaining("air temperature");
    }

    @Test
    void working_bothRules_isRight() {
        for (SpreadRule rule : SpreadRule.values()) {
            WorkingCheck.check(rule.working(of(21, 0.55)));
        }
        assertThat(of(20, 0.5)).isEqualTo(of(20, 0.5)).hasSameHashCodeAs(of(20, 0.5)).isNotEqualTo(of(20, 0.6));
        assertThat(of(20, 0.5).toString()).matches("dew point 9\\.2\\d °C of air at 20 °C and 50 %");
    }

    /** At 100 % the air's temperature is its dew point: a surface at it is wet, and the sentence says "at". */
    @Test
    void verdict_surfaceAboveAtAndBelowTheDewPoint_isSaid() {
        DewPoint dew = DewPoint.of(Read.temperature("10 degC"), 1);
        assertThat(SpreadRule.THREE_KELVIN.verdict(dew, Read.temperature("12 degC")).reason()).startsWith("the surface at 12.00 °C is 2.00 K above the dew point of 10.00 °C");
        assertThat(SpreadRule.THREE_KELVIN.verdict(dew, Read.temperature("10 degC")).reason()).startsWith("the surface at 10.00 °C is 0.00 K at the dew point");
        assertThat(SpreadRule.THREE_KELVIN.verdict(dew, Read.temperature("9 degC")).reason()).startsWith("the surface at 9.00 °C is 1.00 K below the dew point");
    }

    /** One is saturated air, a hair more is no share, and from there to a hundred it is taken for a percentage. */
    @Test
    void of_humidityAboveOne_isTakenForAPercentage() {
        assertThat(DewPoint.of(Read.temperature("10 degC"), 1).celsius()).isCloseTo(10, within(1e-12));
        assertThatThrownBy(() -> DewPoint.of(Read.temperature("10 degC"), 100)).hasMessageContaining("Maybe it is in percent");
        assertThatThrownBy(() -> DewPoint.of(Read.temperature("10 degC"), 100.5)).hasMessageContaining("relative humidity").message().doesNotContain("percent");
    }
}
