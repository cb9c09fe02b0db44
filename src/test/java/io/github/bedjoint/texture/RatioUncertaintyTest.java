package io.github.bedjoint.texture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Read;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.working.WorkingCheck;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RatioUncertaintyTest {
    private static final MasonryTolerance TOLERANCE = MasonryTolerance.none()
            .withUnitLength(Read.length("1 mm"))
            .withUnitHeight(Read.length("0.8 mm"))
            .withHeadJoint(Read.length("0.5 mm"))
            .withBedJoint(Read.length("0.6 mm"))
            .withDepth(Read.length("0.2 mm"))
            .withAngle(Door.of(3, JointProfile.DEGREE))
            .withFaceRatio(0.01);

    @ParameterizedTest
    @CsvSource({"raked, 5", "concave, 3", "struck, 5", "weathered, 4", "vee, 90", "half round, 0", "flush, 0"})
    void standard_everyProfile_agreesWithSimulation(String kind, String size) {
        MasonrySurface wall = MasonrySurfaceTest.metric(MasonrySurfaceTest.profile(kind, size)).withFaceRatio(1.2);
        RatioUncertainty uncertainty = TOLERANCE.of(wall);
        WorkingCheck.check(uncertainty.working());
        assertThat(uncertainty.ratio()).isEqualTo(wall.areaRatio());

        // The whole wall drawn again and again with every size off by its own normal error.
        Random random = new Random(20);
        int n = 10_000;
        double sum = 0;
        double squares = 0;
        for (int i = 0; i < n; i++) {
            double ratio = drawn(random, wall).areaRatio() - wall.areaRatio();
            sum += ratio;
            squares += ratio * ratio;
        }
        double simulated = Math.sqrt((squares - sum * sum / n) / (n - 1));
        // Standard error of a standard deviation: 1 / sqrt(2 n) = 0.7 %; second-order terms are below 2 % here.
        assertThat(uncertainty.standard()).isCloseTo(simulated, within(0.03 * simulated));
    }

    private static MasonrySurface drawn(Random random, MasonrySurface wall) {
        return MasonrySurface.of(wall.sizes()
                .moved(
                        0.001 * random.nextGaussian(),
                        0.0008 * random.nextGaussian(),
                        0.0005 * random.nextGaussian(),
                        0.0006 * random.nextGaussian(),
                        0.0002 * random.nextGaussian(),
                        Math.toRadians(3) * random.nextGaussian(),
                        0.01 * random.nextGaussian()));
    }

    @Test
    void standard_rakedDepthAlone_isTheHandDerivative() {
        // dr/dd = 2 (l + h) / C = 560 / 16875 a millimetre; times 0.2 mm.
        MasonrySurface wall = MasonrySurfaceTest.metric(JointProfile.raked(Read.length("5 mm")));
        RatioUncertainty uncertainty = MasonryTolerance.none().withDepth(Read.length("0.2 mm")).of(wall);
        assertThat(uncertainty.standard()).isCloseTo(560 / 16875.0 * 0.2, within(1e-12));
        assertThat(uncertainty).hasToString("1.1659 ± 0.0066 (standard uncertainty)");
    }

    @Test
    void developedM2_areaAndRatioUncertain_addInSquares() {
        // 40 m2 +- 0.5 m2, r = 1.16592593 +- 0.00663704: sqrt((1.16592593 x 0.5)^2 + (40 x 0.00663704)^2) = sqrt(0.339846 + 0.070480)
        MasonrySurface wall = MasonrySurfaceTest.metric(JointProfile.raked(Read.length("5 mm")));
        RatioUncertainty uncertainty = MasonryTolerance.none().withDepth(Read.length("0.2 mm")).of(wall);
        assertThat(uncertainty.developedM2(Read.area("40 m2"), Read.area("0.5 m2"))).isCloseTo(Math.sqrt(0.339846 + 0.070480), within(1e-6));
        WorkingCheck.check(uncertainty.developedWorking(Read.area("40 m2"), Read.area("0.5 m2")));
    }

    @Test
    void none_atAll_isZero() {
        RatioUncertainty uncertainty = MasonryTolerance.none().of(MasonrySurfaceTest.metric(JointProfile.halfRound()));
        assertThat(uncertainty.standard()).isZero();
        WorkingCheck.check(uncertainty.working());
    }

    @Test
    void of_uncertaintyLargerThanTheSize_isRefused() {
        MasonrySurface wall = MasonrySurfaceTest.metric(JointProfile.raked(Read.length("5 mm")));
        assertThatThrownBy(() -> MasonryTolerance.none().withBedJoint(Read.length("11 mm")).of(wall))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("bed joint less its uncertainty");
        assertThatThrownBy(() -> MasonryTolerance.none().withDepth(Read.length("-1 mm"))).hasMessageContaining("uncertainty of the depth");
        assertThatThrownBy(() -> MasonryTolerance.none().withFaceRatio(Double.NaN)).hasMessageContaining("face ratio");
    }
}
