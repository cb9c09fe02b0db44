package io.github.bedjoint.texture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.units.Read;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.working.WorkingCheck;
import java.util.List;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class SpotSurfaceTest {
    private static final MasonrySurface WALL = MasonrySurfaceTest.metric(JointProfile.flush());

    private static List<Quantity<Length>> mm(double... depths) {
        return java.util.Arrays.stream(depths).boxed().<Quantity<Length>>map(depth -> Read.length(depth + " mm")).toList();
    }

    @Test
    void areaRatio_raked_isThatOfTheMeanDepth() {
        // Raked is linear in depth: 4, 5, 6 mm have the ratio of 5 mm.
        SpotSurface surface = SpotSurface.of(WALL, JointProfile.Kind.RAKED, mm(4, 5, 6));
        assertThat(surface.areaRatio()).isCloseTo(1.16592593, within(5e-9));
        assertThat(surface.localStretch()).isCloseTo(1.2, within(1e-12));
        assertThat(surface.steepestPlace(UnitStyle.METRIC)).isEqualTo("bed joint raked 6 mm, 10 mm wide");
        // s = 1 mm of depth = 0.0331851852, by sqrt 3.
        assertThat(surface.standardUncertainty()).isCloseTo(2 * 280 / 16875.0 / Math.sqrt(3), within(1e-9));
        WorkingCheck.check(surface.working());
        WorkingCheck.check(surface.stretchWorking());
    }

    @Test
    void areaRatio_concave_isTheMeanOfTheRatios() {
        // 1.00446641, 1.01744625, 1.03785793, 1.06433522 for 1 to 4 mm (derived): mean 1.03102645; one flush spot makes 1.02482116.
        assertThat(SpotSurface.of(WALL, JointProfile.Kind.CONCAVE, mm(1, 2, 3, 4)).areaRatio()).isCloseTo(1.03102645, within(1e-8));
        assertThat(SpotSurface.of(WALL, JointProfile.Kind.CONCAVE, mm(1, 2, 3, 4, 0)).areaRatio()).isCloseTo(1.02482116, within(1e-8));
    }

    @Test
    void areaRatio_vDeepAsHalfItsWidth_isTheRightAngle() {
        assertThat(SpotSurface.of(WALL, JointProfile.Kind.V, mm(5)).areaRatio()).isCloseTo(1.07118337, within(5e-9));
    }

    @Test
    void of_flushHeads_stayFlush() {
        MasonrySurface flushHeads = MasonrySurfaceTest.metric(JointProfile.raked(Read.length("1 mm"))).withHeads(JointProfile.flush());
        assertThat(SpotSurface.of(flushHeads, JointProfile.Kind.RAKED, mm(5)).areaRatio()).isCloseTo(1.13333333, within(5e-9));
    }

    @Test
    void standardUncertainty_oneSpot_isNotKnown() {
        assertThat(SpotSurface.of(WALL, JointProfile.Kind.RAKED, mm(5)).standardUncertainty()).isNaN();
    }

    @ParameterizedTest
    @EnumSource(value = JointProfile.Kind.class, names = {"FLUSH", "HALF_ROUND"})
    void of_kindWithoutADepth_isRefused(JointProfile.Kind kind) {
        assertThatThrownBy(() -> SpotSurface.of(WALL, kind, mm(5))).isInstanceOf(RefusedException.class).hasMessageContaining("profile kind");
    }

    @Test
    void of_badDepths_areRefused() {
        assertThatThrownBy(() -> SpotSurface.of(WALL, JointProfile.Kind.RAKED, List.of())).hasMessageContaining("spot depths");
        assertThatThrownBy(() -> SpotSurface.of(WALL, JointProfile.Kind.RAKED, mm(5, -1))).hasMessageContaining("spot depth 2");
        assertThatThrownBy(() -> SpotSurface.of(WALL, JointProfile.Kind.CONCAVE, mm(6))).hasMessageContaining("concave sagitta");
    }

    @Test
    void equals_sameSpots_isEqual() {
        SpotSurface surface = SpotSurface.of(WALL, JointProfile.Kind.STRUCK, mm(2, 3));
        assertThat(surface).isEqualTo(SpotSurface.of(WALL, JointProfile.Kind.STRUCK, mm(2, 3)));
        assertThat(surface).isNotEqualTo(SpotSurface.of(WALL, JointProfile.Kind.STRUCK, mm(3, 2)));
        assertThat(surface.toString()).startsWith("2 spot depths, the first: masonry 0.215 m x 65 mm");
        assertThat(Stream.of(surface.meanStretchUp(), surface.meanStretchAlong())).allMatch(e -> e > 0 && e < surface.localStretch());
    }
}
