package io.github.bedjoint.texture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.units.Read;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.ShopUnits;
import io.github.bedjoint.working.Verdict;
import io.github.bedjoint.working.WorkingCheck;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Errors of a contour gauge's points, by first order and by drawing them. */
class GaugeToleranceTest {
    private static final GaugeTolerance GAUGE = GaugeTolerance.none().withHeight(Read.length("0.02 mm")).withPlace(Read.length("0.02 mm"));

    /** Four rough courses: gentle waves of 2 mm with a joint of 45 degree flanks, a point each millimetre. */
    private static ContourProfile courses(int phase) {
        double[] places = new double[301];
        double[] heights = new double[301];
        for (int i = 0; i < places.length; i++) {
            int inCourse = (i + phase) % 75;
            places[i] = i;
            heights[i] = 2 * Math.sin(i / 8.0) - (inCourse < 10 ? Math.min(5, 5 - Math.abs(inCourse - 5)) : 0);
        }
        return ContourProfile.of(places, heights, ShopUnits.MILLIMETRE);
    }

    private static ContourProfile drawn(ContourProfile profile, GaugeTolerance gauge, Random random) {
        double[] places = profile.placesM();
        double[] heights = profile.heightsM();
        for (int i = 0; i < places.length; i++) {
            places[i] += gauge.placeM() * random.nextGaussian();
            heights[i] += gauge.heightM() * random.nextGaussian();
        }
        return ContourProfile.of(places, heights, ShopUnits.METRE);
    }

    @Test
    void standard_ofTwoDirections_agreesWithSimulation() {
        ContourProfile up = courses(0);
        ContourProfile along = courses(30);
        RatioUncertainty found = ProfileSurface.of(up, along).withTolerance(GAUGE).uncertainty().orElseThrow();
        Random random = new Random(8);
        int n = 10_000;
        double sum = 0;
        double squares = 0;
        for (int i = 0; i < n; i++) {
            double off = ProfileSurface.of(drawn(up, GAUGE, random), drawn(along, GAUGE, random)).areaRatio() - found.ratio();
            sum += off;
            squares += off * off;
        }
        double mean = sum / n;
        double simulated = Math.sqrt((squares - sum * mean) / (n - 1));
        // Standard errors of 10,000 draws: 0.7 % of the deviation, and of the mean a hundredth of the deviation; fourth order is 2 % here.
        assertThat(found.standard()).isCloseTo(simulated, within(0.03 * simulated));
        assertThat(found.bias()).isCloseTo(mean, within(0.03 * mean + 0.03 * simulated));
        WorkingCheck.check(found.working());
    }

    /** A line of n pieces of p, each error of height u: variance 0 to first order, and each piece is longer by u^2 / p on the average. */
    @Test
    void bias_onALevelLine_isTheHandSum() {
        double[] places = {0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10};
        ContourProfile level = ContourProfile.of(places, new double[11], ShopUnits.MILLIMETRE);
        RatioUncertainty found =
                ProfileSurface.up(level).withTolerance(GaugeTolerance.none().withHeight(Read.length("0.1 mm"))).uncertainty().orElseThrow();
        // 10 pieces: 10 * 0.01 mm2 / 1 mm = 0.1 mm on 10 mm.
        assertThat(found.standard()).isZero();
        assertThat(found.bias()).isCloseTo(0.01, within(1e-12));
        assertThat(found.lessNoise()).isEqualTo(1);
        assertThat(found.noise().orElseThrow().level()).isEqualTo(Verdict.Level.CAUTION);
        assertThat(found.noise().orElseThrow().reason()).contains("0.0100");
        assertThat(found).hasToString("1.0000 ± 0.0000 (standard uncertainty), less noise 1.0000");
        WorkingCheck.check(found.working());
    }

    /** One slope of 3 : 4, 5 mm long over 4 mm: each end changes the length by 0.6 of its height, so u_R = 0.1 * sqrt(2 * 0.36) / 4. */
    @Test
    void standard_ofOneSlope_isTheHandDerivative() {
        ContourProfile slope = ContourProfile.of(new double[] {0, 4}, new double[] {0, 3}, ShopUnits.MILLIMETRE);
        ProfileSurface heights = ProfileSurface.along(slope).withTolerance(GaugeTolerance.none().withHeight(Read.length("0.1 mm")));
        assertThat(heights.uncertainty().orElseThrow().standard()).isCloseTo(0.1 * Math.sqrt(0.72) / 4, within(1e-12));
        // A place changes the length by 0.8 and the straight length, whose ratio is 1.25, by 1: 0.8 - 1.25 = -0.45 at each end.
        ProfileSurface places = ProfileSurface.along(slope).withTolerance(GaugeTolerance.none().withPlace(Read.length("0.1 mm")));
        assertThat(places.uncertainty().orElseThrow().standard()).isCloseTo(0.1 * Math.sqrt(2 * 0.2025) / 4, within(1e-12));
    }

    @Test
    void uncertainty_notGiven_isNotKnown() {
        ProfileSurface surface = ProfileSurface.up(courses(0));
        assertThat(surface.uncertainty()).isEmpty();
        assertThat(surface.measuring()).hasSize(1);
        assertThat(surface.withTolerance(GAUGE).measuring()).hasSize(2);
        assertThat(surface.withTolerance(GAUGE)).isNotEqualTo(surface).isEqualTo(ProfileSurface.up(courses(0)).withTolerance(GAUGE));
        assertThat(surface.withTolerance(GAUGE).areaRatio()).isEqualTo(surface.areaRatio());
    }

    @Test
    void withHeight_outOfRange_isRefused() {
        assertThatThrownBy(() -> GaugeTolerance.none().withHeight(Read.length("-0.1 mm")))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("uncertainty of the height");
        assertThatThrownBy(() -> new GaugeTolerance(0, 1)).hasMessageContaining("uncertainty of the place");
        assertThat(GAUGE).hasToString("points to 0.02 mm in height and 0.02 mm in place (standard uncertainty)");
    }
}
