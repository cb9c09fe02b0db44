package io.github.bedjoint.film;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.units.Read;
import io.github.bedjoint.working.Source;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class InkTest {
    private static final Ink INK = Ink.of(InkFamily.LATEX, Read.volumePerArea("12 mL/m2"), Read.pricePerVolume("EUR 95/L"));

    @Test
    void volumeM3_25SquareMetresAt80Percent_isWorkedByHand() {
        // 25 x 0.8 x 12 mL = 240 mL, at EUR 95 a litre EUR 22.80
        double volume = INK.withCoverage(0.8).volumeM3(25);
        assertThat(volume).isCloseTo(240e-6, within(1e-18));
        assertThat(INK.price().cost(volume)).isEqualByComparingTo("22.80");
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.01, 1.01, Double.NaN})
    void withCoverage_outOfRange_isRefused(double share) {
        assertThatThrownBy(() -> INK.withCoverage(share)).hasMessageContaining("ink coverage");
    }

    @Test
    void of_consumptionOutOfRange_isRefused() {
        assertThatThrownBy(() -> Ink.of(InkFamily.UV, Read.volumePerArea("0 mL/m2"), INK.price())).hasMessageContaining("ink consumption");
    }

    @ParameterizedTest
    @EnumSource(InkFamily.class)
    void outgas_everyFamily_liesInTheRangeOfPractice(InkFamily family) {
        // Common practice, no source: 24 to 72 h.
        assertThat(family.outgasS()).isBetween(24 * 3600.0, 72 * 3600.0);
        assertThat(family.outgas().getValue().doubleValue()).isBetween(24.0, 72.0);
        assertThat(family.source().kind()).isEqualTo(Source.Kind.PRACTICE);
    }

    @Test
    void equals_sameFigures_isEqual() {
        assertThat(INK).isEqualTo(INK.withCoverage(1)).isNotEqualTo(INK.withCoverage(0.5)).hasSameHashCodeAs(INK.withCoverage(1));
        assertThat(INK).hasToString("LATEX, 12 mL/m², EUR 95/L");
        assertThat(INK.family()).isEqualTo(InkFamily.LATEX);
        assertThat(INK.coverage()).isEqualTo(1);
        assertThat(INK.m3PerM2()).isCloseTo(12e-6, within(1e-18));
    }
}
