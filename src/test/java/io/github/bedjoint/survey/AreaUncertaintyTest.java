package io.github.bedjoint.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.texture.JointProfile;
import io.github.bedjoint.texture.MasonrySurface;
import io.github.bedjoint.texture.MasonryTolerance;
import io.github.bedjoint.texture.MasonryUnits;
import io.github.bedjoint.units.Read;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.Steps;
import io.github.bedjoint.working.WorkingCheck;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class AreaUncertaintyTest {
    private static final LengthTolerance TAPE = LengthTolerance.none().withWall(Read.length("5 mm")).withOpening(Read.length("3 mm"));
    private static final MasonrySurface BRICK = MasonrySurface.of(MasonryUnits.named("EN 215x65"), JointProfile.raked(Read.length("5 mm")))
            .withTolerance(MasonryTolerance.none().withDepth(Read.length("0.2 mm")));
    private static final Opening WINDOW =
            Opening.of(Opening.Kind.WINDOW, Read.length("1 m"), Read.length("1 m"), Read.length("1.5 m"), Read.length("2 m"));

    private static AreaUncertainty of(Wall wall) {
        return WallAreas.of(wall, DeductionRule.none()).uncertainty().orElseThrow();
    }

    /** By hand: (5 mm)^2 (4^2 + 3^2) + (3 mm)^2 (1.5^2 + 2^2) = 25e-6 * 25 + 9e-6 * 6.25 = 681.25e-6. */
    @Test
    void visibleM2_ofARectangleWithAWindow_isHeightAndWidthInSquares() {
        Wall wall = Wall.rectangle("north", Read.length("4 m"), Read.length("3 m")).withTolerance(TAPE).withOpening(WINDOW);
        AreaUncertainty found = of(wall);
        assertThat(found.visibleM2()).isCloseTo(Math.sqrt(681.25e-6), within(1e-12));
        // The surface is flat and exact, so the developed area is as sure as the visible one.
        assertThat(found.developedM2()).isCloseTo(Math.sqrt(681.25e-6), within(1e-12));
        assertThat(found).hasToString("ratio 1.0000 ± 0.0000 (standard uncertainty), visible 9 m² ± 0.026 m², developed 9 m² ± 0.026 m²");
        WorkingCheck.check(found.working());
    }

    /** With r = 1.16592593 and u_r = 560 / 16875 * 0.2 = 0.00663704: (r u_A)^2 + (9 u_r)^2. */
    @Test
    void developedM2_withAnUncertainTexture_addsBothInSquares() {
        Wall wall = Wall.rectangle("north", Read.length("4 m"), Read.length("3 m")).withTolerance(TAPE).withOpening(WINDOW).withSurface(BRICK);
        double expected = Math.sqrt(1.16592593 * 1.16592593 * 681.25e-6 + Math.pow(9 * 0.00663704, 2));
        assertThat(of(wall).developedM2()).isCloseTo(expected, within(1e-7));
        WorkingCheck.check(of(wall).working());
    }

    /** A gable with a window: every corner, the window's sides and the depth of the joints drawn again and again. */
    @Test
    void developedM2_ofAGable_agreesWithSimulation() {
        List<Point> corners = List.of(
                Point.of(Read.length("0 m"), Read.length("0 m")), Point.of(Read.length("6 m"), Read.length("0 m")),
                Point.of(Read.length("6 m"), Read.length("3 m")), Point.of(Read.length("2.5 m"), Read.length("5 m")),
                Point.of(Read.length("0 m"), Read.length("2.5 m")));
        LengthTolerance tape = LengthTolerance.none().withWall(Read.length("15 mm")).withOpening(Read.length("20 mm"));
        Wall wall = Wall.polygon("gable", corners).withSurface(BRICK).withOpening(WINDOW).withTolerance(tape);
        AreaUncertainty found = of(wall);
        Random random = new Random(12);
        int n = 10_000;
        double[] visible = new double[2];
        double[] developed = new double[2];
        double slope = 560 / 16.875;
        for (int k = 0; k < n; k++) {
            List<Point> moved = new ArrayList<>();
            for (Point corner : corners) {
                moved.add(new Point(off(corner.xSteps(), 0.015, random), off(corner.ySteps(), 0.015, random)));
            }
            double width = 1.5 + 0.02 * random.nextGaussian();
            double height = 2 + 0.02 * random.nextGaussian();
            double area = WallAreas.of(Wall.polygon("moved", moved), DeductionRule.none()).visibleM2() - width * height;
            double ratio = BRICK.areaRatio() + slope * 0.0002 * random.nextGaussian();
            add(visible, area - WallAreas.of(wall, DeductionRule.none()).visibleM2());
            add(developed, area * ratio - WallAreas.of(wall, DeductionRule.none()).developedM2());
        }
        // Standard error of a standard deviation from 10,000 draws: 0.7 %.
        assertThat(found.visibleM2()).isCloseTo(deviation(visible, n), within(0.03 * found.visibleM2()));
        assertThat(found.developedM2()).isCloseTo(deviation(developed, n), within(0.03 * found.developedM2()));
    }

    private static long off(long steps, double u, Random random) {
        return steps + Math.round(u * random.nextGaussian() * Steps.PER_METRE);
    }

    private static void add(double[] sums, double off) {
        sums[0] += off;
        sums[1] += off * off;
    }

    private static double deviation(double[] sums, int n) {
        return Math.sqrt((sums[1] - sums[0] * sums[0] / n) / (n - 1));
    }

    @Test
    void uncertainty_whereNothingWasSaid_isNotKnown() {
        Wall wall = Wall.rectangle("north", Read.length("4 m"), Read.length("3 m"));
        assertThat(WallAreas.of(wall, DeductionRule.none()).uncertainty()).isEmpty();
        assertThat(of(wall.withSurface(BRICK)).visibleM2()).isZero();
        assertThat(wall.withTolerance(TAPE)).isNotEqualTo(wall);
        assertThat(wall.withTolerance(TAPE).withSurface(BRICK).withAccess(Access.LIFT).tolerance()).isEqualTo(TAPE);
    }

    @Test
    void withWall_outOfRange_isRefused() {
        assertThatThrownBy(() -> TAPE.withWall(Read.length("2 m"))).isInstanceOf(RefusedException.class).hasMessageContaining("of the wall");
        assertThatThrownBy(() -> new LengthTolerance(0, -1)).hasMessageContaining("of an opening");
        assertThat(TAPE).hasToString("lengths of the wall to 5 mm, of openings to 3 mm (standard uncertainty)");
    }
}
