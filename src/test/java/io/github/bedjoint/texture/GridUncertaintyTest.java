package io.github.bedjoint.texture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Read;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.ShopUnits;
import io.github.bedjoint.working.Verdict;
import io.github.bedjoint.working.WorkingCheck;
import java.io.IOException;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Errors of a grid's heights, by first order, by moving each height, and by drawing them. */
class GridUncertaintyTest {
    private static final double U_MM = 0.0125;

    /** An egg box of 2 mm on a slope, 40 x 25 points, pitches 1 mm and 1.5 mm, with two heights missing; in millimetres. */
    private static double[][] wavy() {
        double[][] heights = new double[25][40];
        for (int i = 0; i < heights.length; i++) {
            for (int j = 0; j < heights[i].length; j++) {
                heights[i][j] = 2 * Math.sin(j / 3.0) * Math.cos(i / 2.0) + 0.3 * j - 0.2 * i;
            }
        }
        heights[3][4] = Double.NaN;
        heights[24][39] = Double.NaN;
        return heights;
    }

    private static GridSurface surface(double[][] heights, Diagonal diagonal) throws IOException {
        return GridSurface.of(
                HeightGrid.of(heights, Read.length("1 mm"), Read.length("1.5 mm"), ShopUnits.MILLIMETRE), diagonal);
    }

    private static GridSurface noisy(Diagonal diagonal) throws IOException {
        return surface(wavy(), diagonal).withHeightUncertainty(Door.of(U_MM, ShopUnits.MILLIMETRE));
    }

    @ParameterizedTest
    @EnumSource(Diagonal.class)
    void standard_ofAnEggBox_agreesWithSimulation(Diagonal diagonal) throws IOException {
        RatioUncertainty found = noisy(diagonal).uncertainty().orElseThrow();
        Random random = new Random(3);
        int n = 5000;
        double sum = 0;
        double squares = 0;
        for (int k = 0; k < n; k++) {
            double[][] drawn = wavy();
            for (double[] row : drawn) {
                for (int j = 0; j < row.length; j++) {
                    row[j] += U_MM * random.nextGaussian();
                }
            }
            double off = surface(drawn, diagonal).areaRatio() - found.ratio();
            sum += off;
            squares += off * off;
        }
        double mean = sum / n;
        double simulated = Math.sqrt((squares - sum * mean) / (n - 1));
        // Standard errors of 5,000 draws: 1 % of the deviation, and of the mean 1.4 % of the deviation.
        assertThat(found.standard()).isCloseTo(simulated, within(0.04 * simulated));
        assertThat(found.bias()).isCloseTo(mean, within(0.02 * mean + 0.05 * simulated));
        WorkingCheck.check(found.working());
    }

    /** Each height moved up and down by a thousandth of a millimetre: central differences of the area itself. */
    @ParameterizedTest
    @EnumSource(Diagonal.class)
    void standard_ofAnEggBox_agreesWithMovingEachHeight(Diagonal diagonal) throws IOException {
        RatioUncertainty found = noisy(diagonal).uncertainty().orElseThrow();
        double step = 1e-3;
        double first = 0;
        double second = 0;
        for (int i = 0; i < 25; i++) {
            for (int j = 0; j < 40; j++) {
                double[][] heights = wavy();
                if (!Double.isNaN(heights[i][j])) {
                    heights[i][j] += step;
                    double plus = surface(heights, diagonal).areaRatio();
                    heights[i][j] -= 2 * step;
                    double minus = surface(heights, diagonal).areaRatio();
                    first += Math.pow((plus - minus) / (2 * step), 2);
                    second += (plus - 2 * found.ratio() + minus) / (step * step);
                }
            }
        }
        assertThat(found.standard()).isCloseTo(U_MM * Math.sqrt(first), within(1e-6 * found.standard()));
        assertThat(found.bias()).isCloseTo(U_MM * U_MM * second / 2, within(1e-5 * found.bias()));
    }

    /** On a level grid of pitch p every height's error u adds 2 u^2 / p^2 to the ratio: 2 * 0.01 = 0.02. */
    @Test
    void bias_onALevelGrid_isTheHandSum() throws IOException {
        GridSurface level = GridSurface.of(
                        HeightGrid.of(new double[5][7], Read.length("1 mm"), Read.length("1 mm"), ShopUnits.MILLIMETRE), Diagonal.FALLING)
                .withHeightUncertainty(Read.length("0.1 mm"));
        RatioUncertainty found = level.uncertainty().orElseThrow();
        assertThat(found.bias()).isCloseTo(0.02, within(1e-12));
        assertThat(found.standard()).isZero();
        assertThat(found.lessNoise()).isEqualTo(1);
        assertThat(level.measuring()).extracting(Verdict::level).containsExactly(Verdict.Level.FINE, Verdict.Level.CAUTION);
        assertThat(level.areaRatio()).isEqualTo(1);
        WorkingCheck.check(level.working());
    }

    @Test
    void withHeightUncertainty_zeroOrOutOfRange_isNoneOrRefused() throws IOException {
        GridSurface surface = surface(wavy(), Diagonal.RISING);
        assertThat(surface.withHeightUncertainty(Read.length("0 mm")).uncertainty()).isEmpty();
        assertThat(surface.withHeightUncertainty(Read.length("0 mm"))).isEqualTo(surface);
        assertThat(noisy(Diagonal.RISING)).isNotEqualTo(surface).isEqualTo(noisy(Diagonal.RISING));
        assertThat(noisy(Diagonal.RISING).heightUncertaintyM()).isEqualTo(1.25e-5);
        assertThatThrownBy(() -> surface.withHeightUncertainty(Read.length("3 cm")))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("uncertainty of the height");
    }
}
