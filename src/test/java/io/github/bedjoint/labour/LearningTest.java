package io.github.bedjoint.labour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.units.CsvTable;
import io.github.bedjoint.units.Read;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.working.WorkingCheck;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LearningTest {
    private static final double HOUR = 3600;

    /** Source: R package learningCurve, vignette. */
    @ParameterizedTest
    @CsvSource({"0.80, -0.3219281", "0.85, -0.2344653", "0.90, -0.1520031"})
    void exponent_ofARate_asPublished(double rate, double exponent) {
        assertThat(Learning.crawford(rate).exponent()).isCloseTo(exponent, within(5e-8));
    }

    /** Source: R package learningCurve, vignette; first unit 100 h, unit 125. */
    @ParameterizedTest
    @CsvSource({"0.85, 32.23647", "0.80, 21.13225", "0.90, 48.00243"})
    void unit_crawford_asPublished(double rate, double hours) {
        LearnedTime time = Learning.crawford(rate).over(Read.time("100 h"), 125);
        assertThat(time.unitS() / HOUR).isCloseTo(hours, within(5e-6));
        WorkingCheck.check(time.working());
    }

    /** Source: R package learningCurve, vignette; first unit 100 h, unit 125, 85 %. */
    @Test
    void unitAndTotal_wright_asPublished() {
        LearnedTime time = Learning.wright(0.85).over(Read.time("100 h"), 125);
        assertThat(time.unitS() / HOUR).isCloseTo(24.70136, within(5e-6));
        assertThat(time.totalS() / HOUR).isCloseTo(4029.559, within(5e-4));
        WorkingCheck.check(time.working());
    }

    /** Source: derived table n^log2(rate), six decimals, see SOURCES.md. */
    @Test
    void unitAndTotal_crawford_asTabulated() throws IOException {
        String text;
        try (InputStream in = Objects.requireNonNull(LearningTest.class.getResourceAsStream("learning_curve_unit.csv"))) {
            text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
        CsvTable table = CsvTable.parse("learning table", text);
        assertThat(table.rows()).hasSizeGreaterThan(15);
        for (CsvTable.Row row : table.rows()) {
            for (int rate = 70; rate <= 95; rate += 5) {
                LearnedTime time = Learning.crawford(rate / 100.0).over(Read.time("1 s"), (int) row.number("n"));
                assertThat(time.unitS()).isCloseTo(row.number("unit_" + rate), within(6e-7));
                assertThat(time.totalS()).isCloseTo(row.number("cum_" + rate), within(6e-7));
            }
        }
    }

    @Test
    void over_withoutLearning_isTheSameEachTime() {
        assertThat(Learning.crawford(1).over(Read.time("2 h"), 5).totalS()).isEqualTo(10 * HOUR);
        assertThat(Learning.wright(1).over(Read.time("2 h"), 5).totalS()).isEqualTo(10 * HOUR);
    }

    @Test
    void over_oneUnit_isTheFirst() {
        assertThat(Learning.wright(0.8).over(Read.time("2 h"), 1).unitS()).isEqualTo(2 * HOUR);
        assertThat(Learning.crawford(0.8).over(Read.time("2 h"), 1).totalS()).isEqualTo(2 * HOUR);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.5, 0, 1.01, Double.NaN})
    void crawford_rateOutOfRange_refused(double rate) {
        assertThatThrownBy(() -> Learning.crawford(rate)).isInstanceOf(RefusedException.class).hasMessageContaining("learning rate");
    }
}
