package io.github.bedjoint.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import javax.measure.MetricPrefix;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PriceRateTest {
    private static BigMoney euro(String amount) {
        return BigMoney.of(CurrencyUnit.EUR, new BigDecimal(amount));
    }

    @Test
    void of_amountAndUnit_keepsBothAsGiven() {
        PriceRate<Area> rate = PriceRate.of(Money.parse("USD 0.75"), ShopUnits.SQUARE_FOOT);
        assertThat(rate.amount()).isEqualTo(BigMoney.parse("USD 0.75"));
        assertThat(rate.per()).isSameAs(ShopUnits.SQUARE_FOOT);
        assertThat(rate.measure()).isEqualTo(Measure.AREA);
        assertThat(rate.currency()).isEqualTo(CurrencyUnit.USD);
        // 0.75 / 0.09290304 (UCUM [sft_i]) = 8.07293786...
        assertThat(rate.perInner()).isEqualByComparingTo(new BigDecimal("0.75").divide(new BigDecimal("0.09290304"), MathContext.DECIMAL128));
        assertThat(rate.perInner().doubleValue()).isCloseTo(8.07293, within(1e-5));
    }

    @Test
    void times_aQuantityInAnyUnit_isThePrice() {
        PriceRate<Area> rate = Read.pricePerArea("EUR 7.90/m2");
        assertThat(rate.times(Read.area("10 m2"))).satisfies(money -> assertThat(money.isEqual(euro("79"))).isTrue());
        assertThat(rate.times(Read.area("0 m2")).isZero()).isTrue();
        // 675 ft2 = 62.709552 m2 (GNU Units 2.22), x 7.90 = 495.4054608.
        assertThat(rate.times(Read.area("675 ft2")).getAmount()).isEqualByComparingTo("495.4054608");
        assertThat(rate.cost(62.709552)).isEqualByComparingTo("495.4054608");
        assertThat(Read.pricePerTime("EUR 38/h").times(Read.time("90 min")).withScale(6, RoundingMode.HALF_EVEN).getAmount()).isEqualByComparingTo("57");
    }

    @Test
    void times_wrongQuantity_isRefused() {
        PriceRate<Area> rate = Read.pricePerArea("EUR 7.90/m2");
        assertThatThrownBy(() -> rate.times(Read.area("-1 m2"))).isInstanceOf(RefusedException.class).hasMessageStartingWith("quantity is -1 m2, but ");
        @SuppressWarnings({"unchecked", "rawtypes"})
        Quantity<Area> length = (Quantity<Area>) (Quantity) Read.length("3 m");
        assertThatThrownBy(() -> rate.times(length)).isInstanceOf(RefusedException.class).hasMessageContaining("must be measured in m2");
    }

    @Test
    void equals_sameCurrencyAndPricePerInnerUnit_whateverTheUnit() {
        PriceRate<?> yard = Read.pricePerLength("EUR 1/yd");
        BigMoney third = BigMoney.of(CurrencyUnit.EUR, BigDecimal.ONE.divide(new BigDecimal(3), MathContext.DECIMAL128));
        assertThat(PriceRate.of(third, ShopUnits.FOOT)).isEqualTo(yard).hasSameHashCodeAs(yard);
        assertThat(Read.pricePerLength("EUR 3/yd")).isEqualTo(Read.pricePerLength("EUR 1/ft")).hasSameHashCodeAs(Read.pricePerLength("EUR 1/ft"));
        assertThat(Read.pricePerLength("EUR 36/yd")).isEqualTo(Read.pricePerLength("EUR 1/in"));
        assertThat(Read.pricePerLength("EUR 1/m")).isEqualTo(Read.pricePerLength("EUR 0.01/cm")).hasSameHashCodeAs(Read.pricePerLength("EUR 0.01/cm"));
        assertThat(Read.pricePerArea("EUR 9/yd2")).isEqualTo(Read.pricePerArea("EUR 1/ft2"));
        assertThat(Read.pricePerTime("EUR 60/h")).isEqualTo(Read.pricePerTime("EUR 1.00/min"));
        assertThat(Read.priceEach("EUR 2.50/each")).isEqualTo(Read.priceEach("EUR 2.5/pc"));
        assertThat(Read.pricePerArea("EUR 0/m2")).isEqualTo(Read.pricePerArea("EUR 0.00/ft2")).hasSameHashCodeAs(Read.pricePerArea("EUR 0.00/ft2"));
    }

    @Test
    void equals_anotherPriceCurrencyOrKind_isFalse() {
        PriceRate<?> rate = Read.pricePerLength("EUR 1/m");
        assertThat(rate.hashCode()).isNotEqualTo(Read.pricePerLength("EUR 2/m").hashCode());
        assertThat(rate).isNotEqualTo(Read.pricePerLength("USD 1/m")).isNotEqualTo(Read.pricePerLength("EUR 1.000001/m"));
        assertThat(rate).isNotEqualTo(Read.pricePerArea("EUR 1/m2")).isNotEqualTo(Read.priceEach("EUR 1/each")).isNotEqualTo("EUR 1/m");
        assertThat(Read.pricePerTime("EUR 1/s")).isNotEqualTo(Read.priceEach("EUR 1/each"));
    }

    @ParameterizedTest
    @ValueSource(strings = {
        "EUR 7.90/m2", "EUR 7.9/m2", "USD 0/ft2", "JPY 900/yd2", "USD 1.25/ft", "EUR 1/mil", "EUR 38/h", "EUR 0.01/s", "EUR 95/L", "USD 4.5/fl oz", "EUR 0.40/kg",
        "USD 3/oz", "EUR 2.50/each", "EUR 1000000000/m3", "EUR 0.0000000000000000000000000000000001/um"
    })
    void parse_ofToString_isEqual(String text) {
        PriceRate<?> rate = PriceRate.parse(text);
        assertThat(rate).hasToString(text);
        assertThat(PriceRate.parse(rate.toString())).isEqualTo(rate);
    }

    @Test
    void parse_otherNames_printsTheUsualOne() {
        assertThat(PriceRate.parse("EUR 2.50 / piece")).hasToString("EUR 2.50/each");
        assertThat(PriceRate.parse("EUR 1/sq ft")).hasToString("EUR 1/ft2");
        assertThat(PriceRate.parse("EUR 1/inch")).hasToString("EUR 1/in");
        assertThat(PriceRate.of(euro("1E+3"), ShopUnits.METRE)).hasToString("EUR 1000/m");
    }

    @Test
    void parse_unreadable_isRefused() {
        assertThatThrownBy(() -> PriceRate.parse("EUR 1/min/m2")).isInstanceOf(RefusedException.class).hasMessageContaining("another unit than 'min/m2'");
        assertThatThrownBy(() -> PriceRate.parse("EUR 1/degC")).isInstanceOf(RefusedException.class);
        assertThatThrownBy(() -> PriceRate.parse("EUR 1/box")).hasMessageContaining("Maybe one of: ").hasMessageContaining("m2").hasMessageContaining("each");
        assertThatThrownBy(() -> PriceRate.parse("EUR 2000000000/m")).hasMessageStartingWith("price is EUR 2000000000, but must be from 0 to 1000000000.");
    }

    @Test
    void of_negativeHugeFineOrOddUnit_isRefused() {
        assertThatThrownBy(() -> PriceRate.of(euro("-0.01"), ShopUnits.METRE))
                .hasMessage("price is EUR -0.01, but must be from 0 to 1000000000. Maybe a reduction was meant: make it a line.");
        assertThatThrownBy(() -> PriceRate.of(euro("1000000000.01"), ShopUnits.METRE)).isInstanceOf(RefusedException.class);
        assertThatThrownBy(() -> PriceRate.of(euro("1E-61"), ShopUnits.METRE)).isInstanceOf(RefusedException.class).hasMessageContaining("60 decimals");
        assertThat(PriceRate.of(euro("1E-60"), ShopUnits.METRE)).isEqualTo(PriceRate.parse(PriceRate.of(euro("1E-60"), ShopUnits.METRE).toString()));
        assertThat(PriceRate.of(euro("1000000000"), ShopUnits.METRE).amount()).isEqualTo(euro("1000000000"));
        assertThatThrownBy(() -> PriceRate.of(euro("1"), MetricPrefix.KILO(ShopUnits.METRE))).isInstanceOf(RefusedException.class);
        // A price per degree would take the offset for an amount of something.
        assertThatThrownBy(() -> PriceRate.of(euro("1"), ShopUnits.CELSIUS)).hasMessageStartingWith("price unit is degC, but must be a unit of length");
        assertThatThrownBy(() -> PriceRate.of(euro("1"), ShopUnits.MINUTE_PER_SQUARE_METRE)).isInstanceOf(RefusedException.class);
    }

    @Test
    void measure_perMetre_isALength() {
        // m3/m2 is the metre to JSR-385: a price per metre must not be one per volume per area.
        assertThat(PriceRate.of(euro("1"), ShopUnits.METRE).measure()).isEqualTo(Measure.LENGTH);
        assertThat(PriceRate.of(euro("1"), ShopUnits.ONE).measure()).isEqualTo(Measure.NUMBER);
    }
}
