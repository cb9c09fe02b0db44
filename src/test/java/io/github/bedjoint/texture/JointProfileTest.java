package io.github.bedjoint.texture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Read;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.UnitStyle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class JointProfileTest {
    private static Joint tenWide(JointProfile profile) {
        return new Joint(Joint.Place.BED, profile, 0.01);
    }

    @ParameterizedTest
    @CsvSource({
        // Length along the profile less 10 mm, by hand.
        "flush, 0, 0",
        "raked, 5, 10",
        "vee, 90, 4.14213562", // 10 (sqrt 2 - 1)
        "vee, 60, 10", // two sides of an equilateral triangle
        "concave, 3, 2.2495087", // arc of 12.2495087 (derived)
        "half round, 0, 5.70796327", // 5 pi - 10
        "struck, 5, 6.18033989", // sqrt 125 + 5 - 10
        "weathered, 5, 6.18033989"
    })
    void extraM_tenWide_isWorkedByHand(String kind, String size, double extra) {
        assertThat(tenWide(MasonrySurfaceTest.profile(kind, size)).extraM() * 1000).isCloseTo(extra, within(5e-8));
    }

    @ParameterizedTest
    @CsvSource({"raked, 5, 5", "vee, 90, 5", "vee, 60, 8.66025404", "concave, 3, 3", "half round, 0, 5", "struck, 4, 4", "flush, 0, 0"})
    void depthM_tenWide_isItsDeepest(String kind, String size, double depth) {
        assertThat(tenWide(MasonrySurfaceTest.profile(kind, size)).depthM() * 1000).isCloseTo(depth, within(5e-9));
    }

    @ParameterizedTest
    @CsvSource({"vee, 70", "concave, 2.5", "half round, 0"})
    void halfWidthAt_anyDepth_undoesDepthAt(String kind, String size) {
        Joint joint = tenWide(MasonrySurfaceTest.profile(kind, size));
        for (double u = 0; u <= 0.005; u += 0.00025) {
            assertThat(joint.halfWidthAt(joint.depthAt(u))).isCloseTo(u, within(1e-9));
        }
        assertThat(joint.halfWidthAt(joint.depthM() * 1.5)).isZero();
        assertThat(2 * joint.alongTo(0.005)).isCloseTo(joint.extraM() + 0.01, within(1e-12));
    }

    @Test
    void vee_radiansAndDegrees_areTheSame() {
        JointProfile radians = JointProfile.vee(Door.of(Math.PI / 2, tech.units.indriya.unit.Units.RADIAN));
        JointProfile degrees = JointProfile.vee(Door.of(90, JointProfile.DEGREE));
        assertThat(radians.size()).isCloseTo(degrees.size(), within(1e-15));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -10, 180, 200})
    void vee_angleOutOfRange_isRefused(double degrees) {
        assertThatThrownBy(() -> JointProfile.vee(Door.of(degrees, JointProfile.DEGREE)))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("V angle");
    }

    @ParameterizedTest
    @ValueSource(strings = {"0 mm", "-1 mm", "201 mm"})
    void depth_outOfRange_isRefused(String depth) {
        assertThatThrownBy(() -> JointProfile.raked(Read.length(depth))).hasMessageContaining("raked depth");
        assertThatThrownBy(() -> JointProfile.concave(Read.length(depth))).hasMessageContaining("concave sagitta");
        assertThatThrownBy(() -> JointProfile.struck(Read.length(depth))).hasMessageContaining("struck recess");
        assertThatThrownBy(() -> JointProfile.weathered(Read.length(depth))).hasMessageContaining("weathered recess");
    }

    @Test
    void describe_inBothStyles_namesKindAndSize() {
        assertThat(JointProfile.raked(Read.length("1/4 in")).describe(UnitStyle.IMPERIAL)).isEqualTo("raked 0.25 in");
        assertThat(JointProfile.weathered(Read.length("4 mm"))).hasToString("weathered 4 mm");
        assertThat(JointProfile.struck(Read.length("4 mm"))).hasToString("struck 4 mm");
        assertThat(JointProfile.halfRound()).hasToString("half round");
        assertThat(JointProfile.flush()).isEqualTo(JointProfile.flush()).hasSameHashCodeAs(JointProfile.flush());
        assertThat(JointProfile.struck(Read.length("4 mm"))).isNotEqualTo(JointProfile.weathered(Read.length("4 mm")));
    }
}
