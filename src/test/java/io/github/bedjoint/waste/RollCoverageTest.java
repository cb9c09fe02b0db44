package io.github.bedjoint.waste;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.film.Film;
import io.github.bedjoint.rolls.CuttingTerms;
import io.github.bedjoint.rolls.LotRule;
import io.github.bedjoint.rolls.RemnantRule;
import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.Read;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.Steps;
import io.github.bedjoint.working.WorkingCheck;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RollCoverageTest {
    private static final Film FILM = Film.of("film", Read.length("54 in"));

    /** A 54 in x 50 yd roll (common practice, no source): by hand, 45.72 / 2.794 = 16.36 gives 16 drops. */
    @Test
    void of_wholeRoll_countsWholeDropsAndOneOverlapMore() {
        RollCoverage coverage = RollCoverage.of(
                FILM, Read.length("50 yd"), Read.length("1/2 in"), Read.length("9 ft"), Read.length("9 ft 2 in"));
        assertThat(coverage.dropsPerRoll()).isEqualTo(16);
        // (16 x (1.3716 - 0.0127) + 0.0127) x 2.7432 = 21.7551 x 2.7432
        assertThat(Door.areaM2("area", coverage.area(), Range.POSITIVE)).isCloseTo(59.67859, within(5e-6));
        assertThat(coverage.dropsByAreaDivision()).isCloseTo(16.3636, within(1e-4));
        assertThat(coverage).hasToString("16 drops cover 59.6786 m²");
        WorkingCheck.check(coverage.working());
    }

    @ParameterizedTest
    @CsvSource({
        // L, cut, lead, tail, gap in mm, drops: floor((L - a - e + g) / (h + g)), by hand
        "10000, 2500, 0, 0, 0, 4",
        "10000, 2500, 1, 0, 0, 3",
        "10000, 2500, 0, 0, 10, 3",
        "10030, 2500, 0, 0, 10, 4",
        "10530, 2500, 300, 200, 10, 4",
        "10529, 2500, 300, 200, 10, 3",
        "2499, 2499, 0, 0, 50, 1",
        "2498, 2499, 0, 0, 0, 0"
    })
    void dropsPerRoll_atTheBoundary_isExact(int roll, int cut, int lead, int tail, int gap, long drops) {
        RollCoverage coverage = RollCoverage.of(
                        FILM, Read.length(roll + " mm"), Read.length("20 mm"), Read.length("2400 mm"), Read.length(cut + " mm"))
                .withTerms(new CuttingTerms(lead * 80L, tail * 80L, gap * 80L, RemnantRule.none(), LotRule.ANY));
        assertThat(coverage.dropsPerRoll()).isEqualTo(drops);
        WorkingCheck.check(coverage.working());
    }

    @Property
    void working_ofAnyRoll_evaluatesToItsFigures(
            @ForAll @DoubleRange(min = 0.5, max = 60) double roll,
            @ForAll @DoubleRange(min = 0.1, max = 9) double height,
            @ForAll @DoubleRange(max = 0.5) double bleed,
            @ForAll @DoubleRange(max = 1.2) double overlap,
            @ForAll @DoubleRange(max = 2) double lost) {
        RollCoverage coverage = RollCoverage.of(
                        FILM, Door.length(roll), Door.length(overlap), Door.length(height), Door.length(height + bleed))
                .withTerms(new CuttingTerms(Steps.up(lost), Steps.up(lost / 2), Steps.up(lost / 10), RemnantRule.none(), LotRule.ANY));
        WorkingCheck.check(coverage.working());
        assertThat((double) coverage.dropsPerRoll()).isLessThanOrEqualTo(coverage.dropsByAreaDivision() + 1e-9);
    }

    @Test
    void of_impossibleSizes_isRefused() {
        assertThatThrownBy(() -> RollCoverage.of(
                        FILM, Read.length("25 m"), Read.length("54 in"), Read.length("2 m"), Read.length("2 m")))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("overlap is 54")
                .hasMessageContaining("printable width");
        assertThatThrownBy(() -> RollCoverage.of(
                        FILM, Read.length("25 m"), Read.length("1 in"), Read.length("2 m"), Read.length("1.9 m")))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("cut length");
        assertThatThrownBy(() -> RollCoverage.of(
                        FILM, Read.length("0 m"), Read.length("1 in"), Read.length("2 m"), Read.length("2 m")))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("roll length");
    }
}
