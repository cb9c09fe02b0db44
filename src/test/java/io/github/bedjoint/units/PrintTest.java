package io.github.bedjoint.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PrintTest {
    private static final Locale BEFORE = Locale.getDefault();

    @AfterEach
    void restore() {
        Locale.setDefault(BEFORE);
    }

    @ParameterizedTest
    @CsvSource({
        "0, 0", "-0.0, 0", "12.5, 12.5", "12.50, 12.5", "10, 10", "1234567.891, 1234567.891", "1e15, 1000000000000000",
        "1.00004, 1", "1.00005, 1.0001", "-1.00005, -1.0001", "9.9999999, 10", "9.99995, 10", "9.99994, 9.9999", "99999.99999, 100000",
        "0.9999994, 0.999999", "0.9999995, 1", "-0.9999995, -1", "0.123456789, 0.123457", "0.001234565, 0.00123457", "1e-7, 0.0000001",
        "0.1, 0.1", "NaN, NaN", "Infinity, Infinity", "-Infinity, -Infinity"
    })
    void number_anyDouble_hasFourDecimalsOrSixDigits(double value, String text) {
        assertThat(Print.number(value)).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({
        "12.5, 2, 12.50", "12.345, 2, 12.35", "-12.345, 2, -12.35", "0.004, 2, 0.00", "-0.004, 2, 0.00", "-0.005, 2, -0.01", "1.005, 2, 1.01",
        "9.9999999, 3, 10.000", "2.5, 0, 3", "-2.5, 0, -3", "-0.4, 0, 0", "1e10, 1, 10000000000.0", "1, 12, 1.000000000000"
    })
    void fixed_anyFiniteNumber_isRoundedHalfUp(double value, int decimals, String text) {
        assertThat(Print.fixed(value, decimals)).isEqualTo(text);
    }

    @Test
    void fixed_notFiniteOrOddDecimals_isRefused() {
        assertThatThrownBy(() -> Print.fixed(Double.NaN, 2)).isInstanceOf(RefusedException.class).hasMessageStartingWith("number is NaN");
        assertThatThrownBy(() -> Print.fixed(1, -1)).isInstanceOf(RefusedException.class).hasMessageStartingWith("decimals is -1");
        assertThatThrownBy(() -> Print.fixed(1, 13)).isInstanceOf(RefusedException.class);
    }

    // 8 steps = 0.1 mm, so 4 steps are half of the last digit; 127 steps = 1/16 in, so 63 fall short of half and 64 pass it.
    // 10 km = 393700.787 in = 32808 ft 4.787 in, and 0.787 x 16 = 12.6.
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "109728 | 1371.6 mm | 4' 6\"",
                "0      | 0.0 mm    | 0\"",
                "3      | 0.0 mm    | 0\"",
                "4      | 0.1 mm    | 0\"",
                "-3     | 0.0 mm    | 0\"",
                "-4     | -0.1 mm   | 0\"",
                "63     | 0.8 mm    | 0\"",
                "64     | 0.8 mm    | 1/16\"",
                "-64    | -0.8 mm   | -1/16\"",
                "127    | 1.6 mm    | 1/16\"",
                "1270   | 15.9 mm   | 5/8\"",
                "2032   | 25.4 mm   | 1\"",
                "24384  | 304.8 mm  | 1' 0\"",
                "24447  | 305.6 mm  | 1' 0\"",
                "24448  | 305.6 mm  | 1' 1/16\"",
                "24320  | 304.0 mm  | 11 15/16\"",
                "24321  | 304.0 mm  | 1' 0\"",
                "305816 | 3822.7 mm | 12' 6 1/2\"",
                "-305816 | -3822.7 mm | -12' 6 1/2\"",
                "800000000 | 10000000.0 mm | 32808' 4 13/16\""
            })
    void cut_inEachStyle_isThatText(long steps, String metric, String imperial) {
        assertThat(Print.cut(steps, UnitStyle.METRIC)).isEqualTo(metric);
        assertThat(Print.cut(steps, UnitStyle.IMPERIAL)).isEqualTo(imperial);
    }

    /** Every sixteenth of twenty feet, both signs: what is printed reads back as the same length. */
    @Test
    void feetInches_everySixteenth_readsBack() {
        for (long sixteenths = -20 * 192; sixteenths <= 20 * 192; sixteenths++) {
            long steps = sixteenths * 127;
            String text = Print.feetInches(steps);
            double metres = Door.lengthM(text, Read.length(text), Range.closed(-10, 10));
            assertThat(Steps.up(metres)).as(text).isEqualTo(steps);
            assertThat(Steps.isExact(metres)).as(text).isTrue();
        }
    }

    /** Every step of a foot goes to the nearest sixteenth. */
    @Test
    void feetInches_everyStep_isNoFartherThanHalfASixteenth() {
        for (long steps = 0; steps <= 24384; steps++) {
            double metres = Door.lengthM("length", Read.length(Print.feetInches(steps)), Range.NOT_NEGATIVE);
            assertThat(Math.abs(Steps.up(metres) - steps)).isLessThanOrEqualTo(63);
        }
    }

    @ParameterizedTest
    @CsvSource({"de-DE", "tr-TR", "ar-EG-u-nu-arab"})
    void printing_underAnyLocale_isTheSame(String tag) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        assertThat(Print.number(1234.5)).isEqualTo("1234.5");
        assertThat(Print.fixed(1234.5, 2)).isEqualTo("1234.50");
        assertThat(Print.cut(305_816, UnitStyle.METRIC)).isEqualTo("3822.7 mm");
        assertThat(Print.cut(305_816, UnitStyle.IMPERIAL)).isEqualTo("12' 6 1/2\"");
        assertThat(Measure.AREA.print(62.709552, UnitStyle.METRIC)).isEqualTo("62.7096 m²");
    }

    @Test
    void count_oneOrMore_takesItsWord() {
        assertThat(Print.count(1, "roll")).isEqualTo("1 roll");
        assertThat(Print.count(0, "roll")).isEqualTo("0 rolls");
        assertThat(Print.count(2, "person", "people")).isEqualTo("2 people");
        assertThat(Print.count(1, "person", "people")).isEqualTo("1 person");
    }
}
