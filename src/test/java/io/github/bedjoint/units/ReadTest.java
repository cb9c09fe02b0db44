package io.github.bedjoint.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ReadTest {
    private static final Range ANY = Range.closed(-1e12, 1e12);
    private static final Locale BEFORE = Locale.getDefault();

    @AfterEach
    void restore() {
        Locale.setDefault(BEFORE);
    }

    private static double metres(String text) {
        return Door.lengthM("length", Read.length(text), ANY);
    }

    // Right-hand sides worked by hand from 1 in = 0.0254 m: 54 x 0.0254 = 1.3716; 12 x 12 + 6.5 = 150.5 in = 3.8227 m;
    // 5/8 in = 0.015875 m; 2 mil = 50.8 um (GNU Units 2.22); 10 yd = 9.144 m.
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "54 in         | 1.3716",
                "54in          | 1.3716",
                "54\"          | 1.3716",
                "4 1/2 ft      | 1.3716",
                "1371.6 mm     | 1.3716",
                "137.16 cm     | 1.3716",
                "12' 6 1/2\"   | 3.8227",
                "12'6 1/2\"    | 3.8227",
                "12 ft 6.5 in  | 3.8227",
                "12 feet 6 1/2 inches | 3.8227",
                "12′ 6 1/2″    | 3.8227",
                "12’ 6 1/2”    | 3.8227",
                "-12' 6 1/2\"  | -3.8227",
                "5' 0\"        | 1.524",
                "5'            | 1.524",
                "5/8 in        | 0.015875",
                "5 / 8 in      | 0.015875",
                "5/8\"         | 0.015875",
                ".5 in         | 0.0127",
                "2 mil         | 0.0000508",
                "3.2 m         | 3.2",
                "10 yd         | 9.144",
                "3 ft          | 0.9144",
                "0 mm          | 0",
                "123456789012345678 um | 123456789012.345678",
                "-0 mm         | 0",
                "- 3 m         | -3"
            })
    void length_asPeopleWriteIt_isThatLength(String text, double metres) {
        assertThat(metres(text)).isEqualTo(metres);
    }

    @ParameterizedTest
    @ValueSource(strings = {"12'\u00a06\u00a01/2\"", "12\u202fft 6\u20091/2\u00a0in", "\u00a012' 6 1/2\"\u00a0", "\t12'  6   1/2 \"\n"})
    void length_withUnusualSpaces_readsTheSame(String text) {
        assertThat(metres(text)).isEqualTo(3.8227);
    }

    @ParameterizedTest
    @ValueSource(strings = {"50.8 um", "50.8 µm", "50.8 μm", "2 mils", "0.0508 mm"})
    void length_ofAFilm_isThatOfGnuUnits(String text) {
        // GNU Units 2.22: 2 mil = 50.8 um; 50.8 is no double, so the last place may differ.
        assertThat(metres(text)).isCloseTo(50.8e-6, within(1e-20));
    }

    @Test
    void length_ofOneKind_keepsTheUnitWritten() {
        Quantity<Length> yards = Read.length("10 yd");
        assertThat(yards.getUnit()).isEqualTo(ShopUnits.YARD);
        assertThat(yards.getValue().doubleValue()).isEqualTo(10);
        Quantity<Length> mixed = Read.length("12' 6 1/2\"");
        assertThat(mixed.getUnit()).isEqualTo(ShopUnits.INCH);
        assertThat(mixed.getValue().doubleValue()).isEqualTo(150.5);
    }

    // 1 ft2 = 0.09290304 m2 and 1 yd2 = 0.83612736 m2 exactly (UCUM [sft_i], [syd_i]); 40 ft2 = 3.7161216 m2.
    @ParameterizedTest
    @CsvSource({
        "3.2 m2, 3.2", "3.2 m², 3.2", "3.2 m^2, 3.2", "3.2m2, 3.2", "40 sq ft, 3.7161216", "40 sq  ft, 3.7161216", "40 sq\u00a0ft, 3.7161216",
        "40 sqft, 3.7161216", "40 ft², 3.7161216", "40 ft2, 3.7161216", "1 sq yd, 0.83612736", "1/2 m2, 0.5", "1 1/2 m2, 1.5",
        "100 in2, 0.064516"
    })
    void area_asPeopleWriteIt_isThatArea(String text, double squareMetres) {
        assertThat(Door.areaM2("area", Read.area(text), ANY)).isEqualTo(squareMetres);
    }

    @ParameterizedTest
    @CsvSource({"72 h, 259200", "25 min, 1500", "1 1/2 hours, 5400", "3 d, 259200", "90 s, 90", "2 minutes, 120"})
    void time_asPeopleWriteIt_isThatTime(String text, double seconds) {
        assertThat(Door.timeS("time", Read.time(text), ANY)).isEqualTo(seconds);
    }

    // 41 F = 5 C, -40 F = -40 C: GNU Units 2.22.
    @ParameterizedTest
    @CsvSource({"110 degC, 383.15", "110 °C, 383.15", "5 C, 278.15", "41 degF, 278.15", "41°F, 278.15", "-40 degF, 233.15", "-40 degC, 233.15",
        "300 K, 300"})
    void temperature_asPeopleWriteIt_isThatTemperature(String text, double kelvin) {
        assertThat(Door.temperatureK("temperature", Read.temperature(text), ANY)).isCloseTo(kelvin, within(1e-10));
    }

    @Test
    void rates_asPeopleWriteThem_areThoseRates() {
        // 25 min/m2 = 1500 s/m2; 1.8 min/ft = 108 s / 0.3048 m = 354.330708661417... s/m.
        assertThat(Door.in(Measure.TIME_PER_AREA, "pace", Read.timePerArea("25 min/m2"), ANY)).isEqualTo(1500);
        assertThat(Door.in(Measure.TIME_PER_AREA, "pace", Read.timePerArea("25 min / m²"), ANY)).isEqualTo(1500);
        assertThat(Door.in(Measure.TIME_PER_AREA, "pace", Read.timePerArea("1 hour/sq ft"), ANY)).isEqualTo(3600 / 0.09290304);
        assertThat(Door.in(Measure.TIME_PER_LENGTH, "pace", Read.timePerLength("1.8 min/ft"), ANY)).isCloseTo(354.330708661417323, within(1e-12));
        assertThat(Door.in(Measure.VOLUME_PER_AREA, "ink", Read.volumePerArea("12 mL/m2"), ANY)).isCloseTo(12e-6, within(1e-20));
        assertThat(Door.in(Measure.VOLUME_PER_AREA, "ink", Read.volumePerArea("0.5 m3/m2"), ANY)).isEqualTo(0.5);
        assertThat(Door.in(Measure.MASS_PER_AREA, "weight", Read.massPerArea("140 g/m2"), ANY)).isEqualTo(0.14);
        // 20 ft/min = 6.096 m / 60 s.
        assertThat(Door.in(Measure.SPEED, "speed", Read.speed("20 ft/min"), ANY)).isCloseTo(0.1016, within(1e-16));
        assertThat(Door.in(Measure.SPEED, "speed", Read.speed("1.5 m/min"), ANY)).isEqualTo(0.025);
        assertThat(Door.in(Measure.SPEED, "speed", Read.speed("1.5 meters/minute"), ANY)).isEqualTo(0.025);
        assertThat(Door.in(Measure.MASS, "mass", Read.mass("12 oz"), ANY)).isCloseTo(0.3401942775, within(1e-16));
        assertThat(Door.in(Measure.VOLUME, "volume", Read.volume("1 gal"), ANY)).isEqualTo(0.003785411784);
        assertThat(Door.in(Measure.VOLUME, "volume", Read.volume("2 fl oz"), ANY)).isEqualTo(0.000059147059125);
    }

    @Test
    void money_asPeopleWriteIt_isThatAmount() {
        assertThat(Read.money("USD 512.00")).hasToString("USD 512.00");
        assertThat(Read.money("USD 512")).isEqualTo(Read.money("USD 512.000"));
        assertThat(Read.money("AUD 7.95")).hasToString("AUD 7.95");
        assertThat(Read.money("ZAR 0.01")).hasToString("ZAR 0.01");
        assertThat(Read.money("EUR\u00a07.90")).hasToString("EUR 7.90");
        assertThat(Read.money("JPY 900")).hasToString("JPY 900");
        assertThat(Read.money("EUR 0")).hasToString("EUR 0.00");
    }

    @ParameterizedTest
    @CsvSource({"EUR 7.90/m2, EUR 7.90/m2", "EUR 7.90 / m², EUR 7.90/m2", "EUR7.90/m2, EUR 7.90/m2", "USD 0.75/sq ft, USD 0.75/ft2"})
    void pricePerArea_asPeopleWriteIt_printsInOneWay(String text, String printed) {
        assertThat(Read.pricePerArea(text)).hasToString(printed);
    }

    @Test
    void prices_ofEveryKind_areRead() {
        assertThat(Read.pricePerLength("USD 1.25/ft").measure()).isEqualTo(Measure.LENGTH);
        assertThat(Read.pricePerTime("EUR 38/h").measure()).isEqualTo(Measure.TIME);
        assertThat(Read.pricePerVolume("EUR 95/L").measure()).isEqualTo(Measure.VOLUME);
        assertThat(Read.pricePerMass("EUR 0.40/kg").measure()).isEqualTo(Measure.MASS);
        assertThat(Read.priceEach("EUR 2.50/piece").measure()).isEqualTo(Measure.NUMBER);
    }

    /** Text, place and what was expected, word for word: this is what a user sees. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "54 inn | length is '54 inn', but must have another unit than 'inn' at character 4 ('inn'). Maybe one of: m, cm, mm, um, in, ft, yd, mil.",
                "54     | length is '54', but must go on with a unit at its end. Maybe one of: m, cm, mm, um, in, ft, yd, mil.",
                "5,4 in | length is '5,4 in', but must not hold a comma at character 2 (',4 in'). Maybe a decimal point was meant; thousands are not grouped.",
                "in     | length is 'in', but must have a number at character 1 ('in').",
                "NaN m  | length is 'NaN m', but must have a number at character 1 ('NaN m').",
                "Infinity m | length is 'Infinity m', but must have a number at character 1 ('Infinity m').",
                "1e5 m  | length is '1e5 m', but must have another unit than 'e5 m' at character 2 ('e5 m'). Maybe one of: m, cm, mm, um, in, ft, yd, mil.",
                "5. in  | length is '5. in', but must have a digit after the point at character 3 (' in').",
                "3 1/0 in | length is '3 1/0 in', but cannot be divided by zero at character 5 ('0 in').",
                "5' 12″ | length is '5' 12″', but must go on after the feet with less than 12 inches at character 4 ('12″'). Maybe leave the second part away.",
                "5' 3 m | length is '5' 3 m', but must go on after the feet with less than 12 inches at character 4 ('3 m'). Maybe leave the second part away.",
                "5.5' 3 in | length is '5.5' 3 in', but must end here, since inches follow whole feet only at character 6 ('3 in'). Maybe leave the second part away.",
                "3 kg   | length is '3 kg', but must have another unit than 'kg' at character 3 ('kg'). Maybe one of: m, cm, mm, um, in, ft, yd, mil.",
                "5 in 3 | length is '5 in 3', but must end here at character 6 ('3').",
                "1234567890123456789 m | length is '1234567890123456789 m', but must have at most 18 digits before the point at character 1 ('1234567890123456789 m')."
            })
    void length_thatCannotBeRead_saysTextPlaceAndExpected(String text, String message) {
        assertThatThrownBy(() -> Read.length(text)).isInstanceOf(RefusedException.class).hasMessage(message);
    }

    @ParameterizedTest
    @ValueSource(strings = {"1E5 m", "0x10 m", "٣ m", "५ m", "+3 m", "--3 m", "3 -1 m", "1/2/3 in", "1.5/2 in", "5/m", "6 5 in", "1.2.3 m", "5' 6", "5' -6\"", "3 M", "3 IN",
        "1.000,5 m", "12ft6", "½ in"})
    void length_otherwiseWritten_isRefused(String text) {
        RefusedException refused = catchThrowableOfType(RefusedException.class, () -> Read.length(text));
        assertThat(refused.parameter()).isEqualTo("length");
        assertThat(refused.value()).contains(text);
        assertThat(refused.limit()).containsPattern(" at (character|its end)").doesNotEndWith(".");
        assertThat(refused.hint()).matches("|Maybe .*\\.");
    }

    @Test
    void length_absentBlankOrTooLong_isRefused() {
        assertThatThrownBy(() -> Read.length(null)).hasMessage("length is absent, but must be written out. Maybe it was forgotten.");
        assertThatThrownBy(() -> Read.length(" \u00a0")).hasMessage("length is blank, but must be written out. Maybe it was forgotten.");
        assertThatThrownBy(() -> Read.length("1".repeat(101))).hasMessageContaining("at most 100 characters");
        assertThatThrownBy(() -> Read.length("5\u0007 m")).hasMessageContaining("'5? m'");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "512.00 USD | must begin with a currency code of three capital letters",
                "usd 5      | must begin with a currency code of three capital letters",
                "QQQ 5      | must begin with a known currency code",
                "EURO 5     | must begin with a currency code of three capital letters",
                "EUR        | must have a number at its end",
                "EUR 1.234  | must have at most 2 decimals in EUR",
                "JPY 1.5    | must have at most 0 decimals in JPY",
                "EUR 1,50   | must not hold a comma",
                "EUR -5     | must have a number at character 5",
                "EUR 1/2    | must end here at character 6",
                "EUR 1 1/2  | must end here at character 7",
                "EUR 5 m    | must end here"
            })
    void money_thatCannotBeRead_isRefused(String text, String expected) {
        assertThatThrownBy(() -> Read.money(text)).isInstanceOf(RefusedException.class).hasMessageContaining("'" + text + "', but " + expected);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "EUR 7.90     | must go on with '/' and a unit at its end. Maybe one of: m2, mm2, in2, ft2, yd2.",
                "EUR 7.90 m2  | must go on with '/' and a unit at character 10 ('m2'). Maybe one of: m2, mm2, in2, ft2, yd2.",
                "EUR 7.90/m   | must have another unit than 'm' at character 10 ('m'). Maybe one of: m2, mm2, in2, ft2, yd2.",
                "EUR 7.90/    | must go on with a unit at its end. Maybe one of: m2, mm2, in2, ft2, yd2.",
                "EUR 5/8/m2   | must have another unit than '8/m2' at character 7 ('8/m2'). Maybe one of: m2, mm2, in2, ft2, yd2.",
                "EUR 7.90/m2 5 | must end here at character 13 ('5').",
                "EUR -7.90/m2 | must have a number at character 5 ('-7.90/m2')."
            })
    void price_thatCannotBeRead_saysWhatWasExpected(String text, String expected) {
        assertThatThrownBy(() -> Read.pricePerArea(text)).hasMessage("price is '" + text + "', but " + expected);
    }

    @Test
    void every_reader_refusesTheUnitOfAnother() {
        Map<String, Function<String, ?>> readers = Map.ofEntries(
                Map.entry("length", Read::length), Map.entry("area", Read::area), Map.entry("time", Read::time), Map.entry("mass", Read::mass),
                Map.entry("volume", Read::volume), Map.entry("temperature", Read::temperature), Map.entry("speed", Read::speed),
                Map.entry("time per area", Read::timePerArea), Map.entry("time per length", Read::timePerLength),
                Map.entry("volume per area", Read::volumePerArea), Map.entry("mass per area", Read::massPerArea));
        readers.forEach((what, reader) -> {
            String other = what.equals("length") ? "5 kg" : "5 mm";
            assertThatThrownBy(() -> reader.apply(other)).isInstanceOf(RefusedException.class).hasMessageContaining("another unit").hasMessageContaining("Maybe one of: ");
        });
    }

    @ParameterizedTest
    @ValueSource(strings = {"de-DE", "tr-TR", "ar-EG-u-nu-arab", "hi-IN-u-nu-deva", "fr-CH"})
    void reading_underAnyLocale_isTheSame(String tag) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        assertThat(metres("1.5 m")).isEqualTo(1.5);
        assertThat(metres("54 in")).isEqualTo(1.3716);
        assertThat(Read.pricePerArea("EUR 7.90/m2")).hasToString("EUR 7.90/m2");
        assertThatThrownBy(() -> Read.length("1.5 inn")).hasMessageContaining("at character 5 ('inn')");
        assertThatThrownBy(() -> Door.lengthM("width", Read.length("-1234.5 mm"), Range.POSITIVE))
                .hasMessageStartingWith("width is -1234.5 mm, but must be more than 0 m and at most 10000 m.");
    }
}
