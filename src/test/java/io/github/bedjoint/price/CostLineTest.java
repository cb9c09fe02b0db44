package io.github.bedjoint.price;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.bedjoint.units.Read;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.working.WorkingCheck;
import java.math.BigDecimal;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CostLineTest {
    @ParameterizedTest
    @CsvSource({
        // 24.785 EUR: public euro rounding rules; Regulation (EC) 1103/97 art. 5. The rest: java.math.RoundingMode's table.
        "24.785, HALF_UP, 24.79",
        "24.785, HALF_EVEN, 24.78",
        "24.785, UP, 24.79",
        "24.785, DOWN, 24.78",
        "24.781, UP, 24.79",
        // As text, 1.005 rounds half up to 1.01; as a double it would be 1.00.
        "1.005, HALF_UP, 1.01"
    })
    void round_decimalAmount_followsItsMode(BigDecimal value, Rounding rounding, BigDecimal expected) {
        assertThat(rounding.round(CurrencyUnit.EUR, value).getAmount()).isEqualByComparingTo(expected);
    }

    @Test
    void round_noiseInTheSeventeenthDigit_fallsOnTheSameSide() {
        BigDecimal below = new BigDecimal("2.4449999999999999");
        BigDecimal above = new BigDecimal("2.4450000000000001");
        assertThat(Rounding.HALF_UP.round(CurrencyUnit.EUR, below)).isEqualTo(Rounding.HALF_UP.round(CurrencyUnit.EUR, above));
    }

    /** 31.5 m2 x 7.90 = 248.85. */
    @Test
    void of_areaTimesPricePerArea_isRoundedOnce() {
        CostLine line = CostLine.of(
                LineKind.FILM, "Film", Read.area("31.5 m2"), Read.pricePerArea("EUR 7.90/m2"), Rounding.HALF_UP);
        assertThat(line.amount()).isEqualTo(Money.parse("EUR 248.85"));
        assertThat(line).hasToString("Film: 31.5 m² x EUR 7.90/m2 = EUR 248.85");
        WorkingCheck.check(line.working());
    }

    /** The same in feet: 1 m2 = 10.7639104 ft2; EUR 10 a square foot on 12 ft x 3 ft = 360. */
    @Test
    void of_sameLineInFeetAndMetres_isTheSameMoney() {
        CostLine feet = CostLine.of(
                LineKind.FILM, "Film", Read.area("36 ft2"), Read.pricePerArea("EUR 10/ft2"), Rounding.HALF_UP);
        CostLine metres = CostLine.of(
                LineKind.FILM, "Film", Read.area("3.34450944 m2"), Read.pricePerArea("EUR 10/ft2"), Rounding.HALF_UP);
        assertThat(feet.amount()).isEqualTo(Money.parse("EUR 360.00")).isEqualTo(metres.amount());
    }

    @ParameterizedTest
    @CsvSource({"-1", "NaN", "Infinity", "1e13"})
    void ofInner_quantityOutOfRange_isRefused(double quantity) {
        assertThatThrownBy(() -> CostLine.ofInner(LineKind.INK, "Ink", quantity, Read.pricePerVolume("EUR 95/L"), Rounding.HALF_UP))
                .isInstanceOf(RefusedException.class)
                .hasMessageStartingWith("Ink is ");
    }

    @Test
    void each_negativeCountOrPrice_isRefused() {
        assertThatThrownBy(() -> CostLine.each(LineKind.LUMP, "Permit", -1, Money.parse("EUR 5"))).isInstanceOf(RefusedException.class);
        assertThatThrownBy(() -> CostLine.each(LineKind.LUMP, "Permit", 1, Money.parse("EUR -5"))).isInstanceOf(RefusedException.class);
        assertThatThrownBy(() -> CostLine.each(LineKind.LUMP, " ", 1, Money.parse("EUR 5"))).isInstanceOf(RefusedException.class);
    }
}
