package io.github.bedjoint.survey;

import static io.github.bedjoint.survey.WallTest.m;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How much of a wall can be reached from below, by hand in square metres. */
class BelowHeightTest {
    private static double below(Wall wall, double heightM) {
        return WallAreas.of(wall, DeductionRule.none()).visibleBelowM2(heightM);
    }

    private static Wall wall(double... xy) {
        List<Point> points = new java.util.ArrayList<>();
        for (int i = 0; i < xy.length; i += 2) {
            points.add(Point.of(m(xy[i]), m(xy[i + 1])));
        }
        return Wall.polygon("north", points);
    }

    /** 4 m wide, eaves at 3 m, ridge at 5 m: between 3 and 4 m it narrows from 4 to 2 m, so 12 + 3; in all 12 + 4. */
    @ParameterizedTest
    @CsvSource({"0, 0", "1, 4", "3, 12", "4, 15", "5, 16", "9, 16"})
    void visibleBelow_gable_narrowsAboveItsEaves(double heightM, double areaM2) {
        assertThat(below(wall(0, 0, 4, 0, 4, 3, 2, 5, 0, 3), heightM)).isCloseTo(areaM2, within(1e-9));
        // Heights count from the lowest point, wherever the origin is.
        assertThat(below(wall(7, 1, 11, 1, 11, 4, 9, 6, 7, 4), heightM)).isCloseTo(areaM2, within(1e-9));
    }

    /** Ground that rises 2 m over 4 m: below 1 m there is a triangle of 2 x 1 / 2; below 2 m one of 4 x 2 / 2, below 3 m 4 m2 more. */
    @ParameterizedTest
    @CsvSource({"1, 1", "2, 4", "3, 8", "5, 16"})
    void visibleBelow_risingGround_takesTheTriangle(double heightM, double areaM2) {
        assertThat(below(wall(0, 0, 4, 2, 4, 5, 0, 5), heightM)).isCloseTo(areaM2, within(1e-9));
    }

    /** A window of 1 x 1 m from 0.5 to 1.5 m goes out as far as it is below; one that film runs over does not. */
    @ParameterizedTest
    @CsvSource({"0.5, 3, 3", "1, 5.5, 6", "1.5, 8, 9", "3, 17, 18"})
    void visibleBelow_opening_goesOutAsFarAsItReaches(double heightM, double without, double whole) {
        Opening window = Opening.of(Opening.Kind.WINDOW, m(1), m(0.5), m(1), m(1));
        Wall wall = Wall.rectangle("north", m(6), m(3));
        assertThat(below(wall.withOpening(window), heightM)).isCloseTo(without, within(1e-9));
        assertThat(below(wall.withOpening(window.withTreatment(Opening.Treatment.LEFT_WHOLE)), heightM)).isCloseTo(whole, within(1e-9));
    }

    @Test
    void openings_ofTheWall_areKnown() {
        Wall wall = Wall.rectangle("north", m(6), m(3)).withOpening(Opening.of(Opening.Kind.WINDOW, m(1), m(1), m(1.5), m(1)));
        assertThat(WallAreas.of(wall, DeductionRule.none()).openingsM2()).isCloseTo(1.5, within(1e-9));
    }
}
