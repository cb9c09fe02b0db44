package io.github.bedjoint.texture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.units.Read;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.working.WorkingCheck;
import org.junit.jupiter.api.Test;

class AdjustedSurfaceTest {
    private static final MasonrySurface RAKED = MasonrySurfaceTest.metric(JointProfile.raked(Read.length("5 mm")));

    /** Raked joints of 8 mm have 8/5 of the extra area and of every extra length of joints of 5 mm. */
    @Test
    void of_rakedJointsAtTheRatioOfDeeperOnes_stretchesAsThose() {
        MasonrySurface deeper = MasonrySurfaceTest.metric(JointProfile.raked(Read.length("8 mm")));
        AdjustedSurface adjusted = AdjustedSurface.of(RAKED, deeper.areaRatio());
        assertThat(adjusted.areaRatio()).isEqualTo(deeper.areaRatio());
        assertThat(adjusted.localStretch()).isCloseTo(deeper.localStretch(), within(1e-12));
        assertThat(adjusted.meanStretchUp()).isCloseTo(deeper.meanStretchUp(), within(1e-12));
        assertThat(adjusted.meanStretchAlong()).isCloseTo(deeper.meanStretchAlong(), within(1e-12));
        WorkingCheck.check(adjusted.working());
        WorkingCheck.check(adjusted.stretchWorking());
        assertThat(adjusted.steepestPlace(UnitStyle.METRIC)).startsWith("bed joint");
        assertThat(adjusted.toString()).endsWith("at a ratio of 1.2655");
    }

    @Test
    void of_flatWall_keepsStretchesOfNothing() {
        AdjustedSurface adjusted = AdjustedSurface.of(FlatSurface.flat(), 1.1);
        assertThat(adjusted.areaRatio()).isEqualTo(1.1);
        assertThat(adjusted.localStretch()).isZero();
        assertThat(adjusted.meanStretchUp()).isZero();
        WorkingCheck.check(adjusted.stretchWorking());
        assertThat(AdjustedSurface.of(RAKED, 1).steepestPlace(UnitStyle.METRIC)).isEmpty();
    }

    @Test
    void equals_sameShapeAndRatio_isTheSame() {
        assertThat(AdjustedSurface.of(RAKED, 1.2)).isEqualTo(AdjustedSurface.of(RAKED, 1.2)).isNotEqualTo(AdjustedSurface.of(RAKED, 1.3));
        assertThatThrownBy(() -> AdjustedSurface.of(RAKED, 0.9)).isInstanceOf(RefusedException.class).hasMessageContaining("area ratio");
    }
}
