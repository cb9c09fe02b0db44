package io.github.bedjoint.labour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.units.Read;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.working.WorkingCheck;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class StandardTimeTest {
    /** Source: public work-study exam key. 20 s x 1.2 = 24 s; 24 s x 1.2 = 28.8 s. */
    @Test
    void of_allowanceOnJobTime_examKey() {
        StandardTime time = StandardTime.of(Read.time("20 s"), Rating.percent(120), Allowance.onJobTime(0.2));
        assertThat(time.basicS()).isCloseTo(24, within(1e-12));
        assertThat(time.standardS()).isCloseTo(28.8, within(1e-12));
        WorkingCheck.check(time.working());
    }

    /** Source: public MTM teaching note. 800 s x 1.1 = 880 s. */
    @Test
    void of_ratedHigher_teachingNote() {
        StandardTime time = StandardTime.of(Read.time("800 s"), Rating.percent(110), Allowance.none());
        assertThat(time.standardS()).isCloseTo(880, within(1e-9));
    }

    /** Source: operations textbook extract. 1.150 / 0.87 = 1.3218; on job time it would be 1.150 x 1.13 = 1.2995. */
    @Test
    void of_theTwoBases_differ() {
        StandardTime day = StandardTime.of(Read.time("1.150 min"), Rating.NORMAL, Allowance.onWorkingDay(0.13));
        StandardTime job = StandardTime.of(Read.time("1.150 min"), Rating.NORMAL, Allowance.onJobTime(0.13));
        assertThat(day.standardS() / 60).isCloseTo(1.322, within(5e-4));
        assertThat(job.standardS() / 60).isCloseTo(1.2996, within(1.1e-4));
        assertThat(day.working().formula().orElseThrow().text()).isEqualTo("t_b / (1 - a)");
        WorkingCheck.check(day.working());
        WorkingCheck.check(job.working());
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.01, 1, 1.5, Double.NaN, Double.POSITIVE_INFINITY})
    void onWorkingDay_outOfRange_refused(double share) {
        assertThatThrownBy(() -> Allowance.onWorkingDay(share)).isInstanceOf(RefusedException.class).hasMessageContaining("allowance");
    }

    @Test
    void onJobTime_onceAsMuchAgain_accepted() {
        assertThat(Allowance.onJobTime(1).standardS(60)).isEqualTo(120);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -100, 201, Double.NaN})
    void rating_outOfRange_refused(double percent) {
        assertThatThrownBy(() -> Rating.percent(percent)).isInstanceOf(RefusedException.class).hasMessageContaining("rating");
    }

    @Test
    void of_negativeTime_refusedWithUnit() {
        assertThatThrownBy(() -> StandardTime.of(Read.time("-3 min"), Rating.NORMAL, Allowance.none()))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("observed time")
                .hasMessageContaining("min");
    }
}
