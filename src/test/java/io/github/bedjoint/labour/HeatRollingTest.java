package io.github.bedjoint.labour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.labour.HeatRolling.Speeds;
import io.github.bedjoint.units.Read;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.working.WorkingCheck;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HeatRollingTest {
    private static HeatRolling source(Speeds along) {
        return HeatRolling.of(Read.speed("0.6 m/min"), along, Read.length("250 mm"))
                .withPassOverlap(Read.length("50 mm"))
                .withPasses(2);
    }

    /**
     * By hand: strips of 250 - 50 = 200 mm on 1300 mm: 6.5, so 7. On the plane 7 x 3 m x 2 passes = 42 m at 0.6 m/min: 70 min = 4200 s.
     */
    @Test
    void over_speedOnThePlane_textureDoesNotCountTwice() {
        HeatRollTime time = source(Speeds.PROJECTED).over(Read.length("1300 mm"), Read.length("3 m"), 1.25);
        assertThat(time.strips()).isEqualTo(7);
        assertThat(time.timeS()).isCloseTo(4200, within(1e-9));
        // 4200 s over 1.25 x 1.3 x 3 = 4.875 m2
        assertThat(time.pace().inner()).isCloseTo(4200 / 4.875, within(1e-9));
        WorkingCheck.check(time.working());
    }

    /** By hand: the path is longer by 1.25: 5250 s over the same 4.875 m2. */
    @Test
    void over_speedAlongTheTexture_pathIsLonger() {
        HeatRollTime time = source(Speeds.DEVELOPED).over(Read.length("1300 mm"), Read.length("3 m"), 1.25);
        assertThat(time.timeS()).isCloseTo(5250, within(1e-9));
        assertThat(time.pace().inner()).isCloseTo(5250 / 4.875, within(1e-9));
        WorkingCheck.check(time.working());
    }

    @Test
    void pace_timesHeatedArea_isTheTimeAgain() {
        HeatRollTime time = source(Speeds.DEVELOPED).over(Read.length("1300 mm"), Read.length("3 m"), 1.25);
        HeatedArea area = HeatedArea.of(1.25, Read.area("3.8 m2"), Read.area("0.1 m2"));
        assertThat(time.pace().inner() * area.areaM2()).isCloseTo(time.timeS(), within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"200 mm, 1", "200.1 mm, 2", "400 mm, 2", "1 mm, 1", "54 in, 7"})
    void strips_atTheBorder_wholeOnes(String width, long strips) {
        assertThat(source(Speeds.PROJECTED).over(Read.length(width), Read.length("1 m"), 1).strips()).isEqualTo(strips);
    }

    @Test
    void withPassOverlap_asWideAsTheHeat_refused() {
        HeatRolling source = HeatRolling.of(Read.speed("1 m/min"), Speeds.PROJECTED, Read.length("50 mm"));
        assertThatThrownBy(() -> source.withPassOverlap(Read.length("50 mm")))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("overlap of passes");
        assertThatThrownBy(() -> source.withPasses(0)).isInstanceOf(RefusedException.class);
        assertThatThrownBy(() -> HeatRolling.of(Read.speed("0 m/min"), Speeds.PROJECTED, Read.length("50 mm")))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("speed of the heat source");
    }

    /** Common practice, no source: overlaps are heated and rolled twice. 1.2 x (10 + 0.5) = 12.6, not 1.2 x 10 + 2 x 0.5. */
    @Test
    void heatedArea_overlapsCountOnceMore() {
        HeatedArea area = HeatedArea.of(1.2, Read.area("10 m2"), Read.area("0.5 m2"));
        assertThat(area.areaM2()).isCloseTo(12.6, within(1e-12));
        WorkingCheck.check(area.working());
        assertThatThrownBy(() -> HeatedArea.of(0.99, Read.area("1 m2"), Read.area("0 m2")))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("area ratio");
    }
}
