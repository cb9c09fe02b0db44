package io.github.bedjoint.texture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Profiles and grids against surfaces whose area is known in closed form. */
class TeachingSurfacesTest {
    private static List<String> lines(String resource) throws IOException {
        try (var in = GridFile.open(resource)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().skip(1).toList();
        }
    }

    @ParameterizedTest
    @CsvSource({"15, 1.0352762", "30, 1.1547005", "45, 1.4142136", "60, 2", "75, 3.8637033"}) // 1 / cos, derived
    void triangleWave_anySlope_isItsSecant(double slope, double secant) throws IOException {
        ContourProfile profile = TeachingSurfaces.profile(x -> TeachingSurfaces.triangleWave(slope, x), 20, 40);
        assertThat(profile.ratio()).isCloseTo(secant, within(5e-8));
        GridSurface grid = GridSurface.of(TeachingSurfaces.grid((x, y) -> TeachingSurfaces.triangleWave(slope, x), 20, 40), Diagonal.RISING);
        assertThat(grid.areaRatio()).isCloseTo(secant, within(5e-8));
        assertThat(grid.meanStretchAlong()).isCloseTo(secant - 1, within(5e-8));
        assertThat(grid.sdq()).isCloseTo(Math.tan(Math.toRadians(slope)), within(1e-9));
    }

    @Test
    void sine_everyAmplitudeOfTheTable_isTheEllipticIntegral() throws IOException {
        // sine_developed_ratio.csv: (2/pi) sqrt(1 + k^2) E(m); E from elliptic_E_of_m.csv (numberdb), see SOURCES.md.
        Map<String, Double> elliptic = new HashMap<>();
        for (String line : lines("elliptic_E_of_m.csv")) {
            elliptic.put(line.split(",")[0], Double.parseDouble(line.split(",")[1]));
        }
        for (String line : lines("sine_developed_ratio.csv")) {
            String[] cells = line.split(",");
            double k = Double.parseDouble(cells[1]);
            double ratio = Double.parseDouble(cells[3]);
            assertThat(2 / Math.PI * Math.sqrt(1 + k * k) * elliptic.get(cells[0])).as(line).isCloseTo(ratio, within(1e-12));
            double amplitude = 10 * Double.parseDouble(cells[2]);
            ContourProfile profile = TeachingSurfaces.profile(x -> TeachingSurfaces.sine(amplitude, x), 10, 20_000);
            assertThat(profile.ratio()).as(line).isCloseTo(ratio, within(1e-7));
        }
    }

    @Test
    void sine_ofEllipticParameter80By81_isAbramowitzAndStegun() {
        // E(80/81) = 1.019106060 (Abramowitz and Stegun ch. 17 example 4): k^2 = 80, ratio (2/pi) 9 E.
        double amplitude = Math.sqrt(80) * 10 / (2 * Math.PI);
        ContourProfile profile = TeachingSurfaces.profile(x -> TeachingSurfaces.sine(amplitude, x), 10, 40_000);
        assertThat(profile.ratio()).isCloseTo(2 / Math.PI * 9 * 1.019106060, within(1e-7));
    }

    @Test
    void eggbox_refined_tendsToTheQuadrature() throws IOException {
        // 1.1981073985 by quadrature elsewhere.
        double coarse = GridSurface.of(TeachingSurfaces.grid(TeachingSurfaces::eggbox, 10, 200), Diagonal.FALLING).areaRatio();
        double fine = GridSurface.of(TeachingSurfaces.grid(TeachingSurfaces::eggbox, 10, 400), Diagonal.FALLING).areaRatio();
        assertThat(fine + (fine - coarse) / 3).isCloseTo(1.1981073985, within(1e-8));
        assertThat(coarse).isLessThan(fine);
    }

    @Test
    void hemispheres_uprightRim_areNearTheirClosedFormWithAWarning() throws IOException {
        double exact = 1 + Math.PI * 16 / 100;
        // The rim is upright: reading it as slopes leaves an error that falls only with the root of the pitch.
        for (int n : new int[] {250, 1000}) {
            GridSurface grid = GridSurface.of(TeachingSurfaces.grid(TeachingSurfaces::hemispheres, 10, n), Diagonal.FALLING);
            assertThat(grid.areaRatio()).isCloseTo(exact, within(3e-3));
            assertThat(grid.steppedRatio()).isGreaterThan(exact);
            assertThat(grid.scale().level()).isEqualTo(io.github.bedjoint.working.Verdict.Level.WARNING);
        }
    }

    @Test
    void sine_statistics_areTheAnalyticOnes() throws IOException {
        // One dimension, whole periods: Sq = A / sqrt 2, Sa = 2 A / pi, Sdq = k / sqrt 2 (ISO 25178-2 definitions, integrals by hand).
        HeightGrid grid = TeachingSurfaces.grid((x, y) -> TeachingSurfaces.sine(2, x), 10, 1000);
        HeightStatistics statistics = HeightStatistics.of(grid);
        // A period's last column repeats its first, whence a thousandth.
        assertThat(statistics.sqM() * 1000).isCloseTo(2 / Math.sqrt(2), within(2e-3));
        assertThat(statistics.saM() * 1000).isCloseTo(4 / Math.PI, within(2e-3));
        assertThat(GridSurface.of(grid, Diagonal.FALLING).sdq()).isCloseTo(2 * Math.PI * 2 / 10 / Math.sqrt(2), within(1e-5));
    }
}
