package io.github.bedjoint.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class StepsTest {
    private static final Range ANY = Range.closed(-1e6, 1e6);

    // 12.5 um a step, so 80 000 a metre: 0.1 mm = 8; 1/16 in = 1587.5 um = 127; 54 in = 864 x 127; 50 yd = 45.72 m x 80 000.
    @ParameterizedTest
    @CsvSource({
        "0.1 mm, 8", "12.5 um, 1", "1/16 in, 127", "1 in, 2032", "54 in, 109728", "1371.6 mm, 109728", "1 ft, 24384", "12 ft 6 1/2 in, 305816",
        "50 yd, 3657600", "1 m, 80000", "10000 m, 800000000", "0 m, 0", "-0.1 mm, -8", "-54 in, -109728"
    })
    void steps_ofRulerMarks_areExact(String text, long steps) {
        double metres = Door.lengthM("length", Read.length(text), ANY);
        assertThat(Steps.up(metres)).isEqualTo(steps);
        assertThat(Steps.down(metres)).isEqualTo(steps);
        assertThat(Steps.isExact(metres)).isTrue();
        assertThat(Steps.toM(steps)).isEqualTo(metres);
    }

    // 1 mil = 25.4 um = 2.032 steps; 1/64 in = 31.75 steps; 0.01 mm = 0.8 steps.
    @ParameterizedTest
    @CsvSource({"1 mil, 2, 3", "1/64 in, 31, 32", "0.01 mm, 0, 1", "-1 mil, -3, -2", "1371.601 mm, 109728, 109729"})
    void steps_ofFinerLengths_goToTheSafeSide(String text, long down, long up) {
        double metres = Door.lengthM("length", Read.length(text), ANY);
        assertThat(Steps.down(metres)).isEqualTo(down);
        assertThat(Steps.up(metres)).isEqualTo(up);
        assertThat(Steps.isExact(metres)).isFalse();
    }

    @Test
    void steps_withinTheRoundingOfADouble_areThatStep() {
        assertThat(Steps.up(1 + 1.1e-10)).isEqualTo(80_000); // 0.88e-5 of a step over
        assertThat(Steps.up(1 + 1.4e-10)).isEqualTo(80_001); // 1.12e-5 of a step over
        assertThat(Steps.down(1 - 1.1e-10)).isEqualTo(80_000);
        assertThat(Steps.down(1 - 1.4e-10)).isEqualTo(79_999);
        assertThat(Steps.up(0.1 + 0.2)).isEqualTo(24_000);
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, 1e6 + 1, -1e300})
    void steps_ofNoLength_areRefused(double metres) {
        assertThatThrownBy(() -> Steps.up(metres)).isInstanceOf(RefusedException.class);
        assertThatThrownBy(() -> Steps.down(metres)).isInstanceOf(RefusedException.class);
        assertThatThrownBy(() -> Steps.isExact(metres)).isInstanceOf(RefusedException.class);
    }

    @Test
    void length_ofSteps_isInMetres() {
        assertThat(Steps.toLength(109_728).getValue().doubleValue()).isEqualTo(1.3716);
        assertThat(Steps.toLength(109_728).getUnit()).isEqualTo(ShopUnits.METRE);
        assertThat(Steps.toM(Steps.MAX)).isEqualTo(10_000);
        assertThat(Steps.up(1e6)).isEqualTo(80_000_000_000L);
    }
}
