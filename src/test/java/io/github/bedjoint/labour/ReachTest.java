package io.github.bedjoint.labour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.survey.Access;
import io.github.bedjoint.units.Read;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Verdict;
import io.github.bedjoint.working.WorkingCheck;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReachTest {
    private static final HeightBands BANDS = HeightBands.defaults();

    /** By hand: 5 m high from the ground: 2 m at 1, 2 m at 1.15, 1 m at 1.3: (2 + 2.3 + 1.3) / 5 = 1.12. From 3 m up: 1 m at 1.15 and 4 m at 1.3: 6.35 / 5. */
    @ParameterizedTest
    @CsvSource({"0 m, 5 m, 1.12", "3 m, 5 m, 1.27", "0 m, 2 m, 1", "10 m, 3 m, 1.3", "0 ft, 2 m, 1"})
    void over_rectangle_byHand(String bottom, String height, double factor) {
        Reach reach = BANDS.over(Read.length(bottom), Read.length(height));
        assertThat(reach.factor()).isCloseTo(factor, within(1e-12));
        assertThat(reach.verdicts()).isEmpty();
        WorkingCheck.check(reach.working());
    }

    /** By hand: 12 m2 from a platform at 1.15 and 4 m2 from a lift at 1.4: (13.8 + 5.6) / 16 = 1.2125. */
    @Test
    void over_areasByAccess_byHand() {
        Reach reach = BANDS.over(Map.of(Access.PLATFORM, Read.area("12 m2"), Access.LIFT, Read.area("4 m2")));
        assertThat(reach.factor()).isCloseTo(1.2125, within(1e-12));
        assertThat(reach.source().kind()).isEqualTo(Source.Kind.ASSUMED);
        WorkingCheck.check(reach.working());
    }

    /** Common practice, no source: a ladder is no access for two-handed heat work. */
    @Test
    void verdicts_ladder_warns() {
        assertThat(BANDS.all(Access.LADDER).over(Read.length("0 m"), Read.length("3 m")).verdicts())
                .singleElement()
                .satisfies(verdict -> assertThat(verdict.level()).isEqualTo(Verdict.Level.WARNING));
    }

    @Test
    void estimate_ladder_carriesTheWarningWithThePlace() {
        Reach ladder = BANDS.all(Access.LADDER).over(Read.length("0 m"), Read.length("3 m"));
        WorkPlace place = WorkPlace.of("gable", Amounts.none().withInner(Driver.SEAM, 1)).withReach(ladder);
        LabourEstimate hours = Labour.withDefaults().estimate(List.of(place));
        assertThat(hours.verdicts()).singleElement().satisfies(verdict -> assertThat(verdict.subject()).startsWith("gable"));
        WorkingCheck.check(hours.working());
    }

    @Test
    void withBandsAndFactors_ofTheShop_replaceTheAssumed() {
        HeightBands mine = BANDS.upTo(Read.length("3 m"), Access.GROUND)
                .above(Access.LIFT)
                .withFactor(Access.LIFT, 1.5, Source.shop("log of lift days"));
        // 3 m at 1, 1 m at 1.15, 2 m at 1.5
        assertThat(mine.over(Read.length("0 m"), Read.length("6 m")).factor()).isCloseTo((3 + 1.15 + 3) / 6, within(1e-12));
    }

    @Test
    void over_nothing_refused() {
        assertThatThrownBy(() -> BANDS.over(Map.of(Access.LIFT, Read.area("0 m2")))).isInstanceOf(RefusedException.class);
        assertThatThrownBy(() -> BANDS.over(Read.length("0 m"), Read.length("0 m"))).isInstanceOf(RefusedException.class).hasMessageContaining("height of the wall");
        assertThatThrownBy(() -> BANDS.withFactor(Access.LIFT, 0, Source.shop("x"))).isInstanceOf(RefusedException.class);
    }
}
