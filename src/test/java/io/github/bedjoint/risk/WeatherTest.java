package io.github.bedjoint.risk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WeatherTest {

    /**
     * A day can be worked when it and the day before are dry, so one working day waits for two dry days in a row, the day before the first
     * counted. A run of two successes of chance q takes (1 + q)/q^2 trials in the mean (renewal theory, Feller, from memory); two of them
     * are the dry days themselves.
     */
    @ParameterizedTest
    @ValueSource(doubles = {0.05, 0.3, 0.6})
    void lostDays_oneDayOfWork_hasTheMeanOfARunOfTwo(double chance) {
        Streams streams = Streams.of(1, "days");
        int many = 200_000;
        long lost = 0;
        for (int i = 0; i < many; i++) {
            lost += Weather.lostDays(streams.of(i), chance, 1);
        }
        double dry = 1 - chance;
        double exact = (1 + dry) / (dry * dry) - 2;

        assertThat((double) lost / many).isCloseTo(exact, within(0.02 * exact + 0.005));
    }

    @Test
    void lostDays_noRainOrNoWork_none() {
        assertThat(Weather.lostDays(Streams.of(1, "days").of(0), 0, 20)).isZero();
        assertThat(Weather.lostDays(Streams.of(1, "days").of(0), 0.5, 0)).isZero();
    }
}
