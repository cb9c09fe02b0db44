package io.github.bedjoint.texture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.units.ShopUnits;
import io.github.bedjoint.working.WorkingCheck;
import java.io.IOException;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

class ProfileSurfaceProperties {
    private static double[] random(long seed, int n) {
        return new Random(seed).doubles(n, 0, 5).toArray();
    }

    private static double[] places(int n) {
        double[] places = new double[n];
        for (int i = 0; i < n; i++) {
            places[i] = i;
        }
        return places;
    }

    @Property
    void areaRatio_anyProfile_isAtLeastOneWhateverItsLevelUnitsAndDirection(
            @ForAll long seed, @ForAll @IntRange(min = 2, max = 30) int n, @ForAll @DoubleRange(min = -9, max = 9) double lift) {
        double[] heights = random(seed, n);
        ProfileSurface surface = ProfileSurface.up(ContourProfile.of(places(n), heights, ShopUnits.MILLIMETRE));
        assertThat(surface.areaRatio()).isGreaterThanOrEqualTo(1);
        assertThat(surface.localStretch()).isNotNegative();
        WorkingCheck.check(surface.working(), new HashMap<>());
        WorkingCheck.check(surface.stretchWorking(), new HashMap<>());
        GaugeTolerance gauge = new GaugeTolerance(1e-5 + 1e-4 * Math.abs(lift), 1e-5);
        WorkingCheck.check(surface.withTolerance(gauge).uncertainty().orElseThrow().working());

        double[] other = new double[n];
        for (int i = 0; i < n; i++) {
            other[i] = (heights[n - 1 - i] + lift) / 25.4;
        }
        double[] inches = Arrays.stream(places(n)).map(x -> x / 25.4).toArray();
        ProfileSurface mirrored = ProfileSurface.up(ContourProfile.of(inches, other, ShopUnits.INCH));
        assertThat(mirrored.areaRatio()).isCloseTo(surface.areaRatio(), within(1e-9));
        assertThat(mirrored.localStretch()).isCloseTo(surface.localStretch(), within(1e-9));
    }

    @Property
    void areaRatio_productSurface_isBetweenTheLargerDirectionAndTheSum(
            @ForAll long seed, @ForAll @DoubleRange(min = 0.1, max = 3) double scale) throws IOException {
        // z(x, y) = f(x) + g(y): its lines along and up the wall are f and g everywhere.
        double[] f = Arrays.stream(random(seed, 9)).map(z -> z * scale).toArray();
        double[] g = Arrays.stream(random(seed + 1, 9)).map(z -> z * scale).toArray();
        double[][] heights = new double[9][9];
        for (int i = 0; i < 9; i++) {
            for (int j = 0; j < 9; j++) {
                heights[i][j] = f[j] + g[i];
            }
        }
        ContourProfile along = ContourProfile.of(places(9), f, ShopUnits.MILLIMETRE);
        ContourProfile up = ContourProfile.of(places(9), g, ShopUnits.MILLIMETRE);
        double area = GridSurface.of(GridFile.mm(heights, 1, 1), Diagonal.FALLING).areaRatio();
        assertThat(area).isLessThanOrEqualTo(ProfileSurface.of(up, along).areaRatio() + 1e-12);
        assertThat(area).isGreaterThanOrEqualTo(Math.max(up.ratio(), along.ratio()) - 1e-12);
    }
}
