package io.github.bedjoint.survey;

import static io.github.bedjoint.survey.OutlineTest.points;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.bedjoint.units.RefusedException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Rims moved outward and points inside, worked by hand in whole steps; outlines from every corner and in both senses. */
class OutlineShapeTest {
    private static List<List<Point>> everyWayToCount(List<Point> corners) {
        List<List<Point>> ways = new ArrayList<>();
        for (int k = 0; k < corners.size(); k++) {
            List<Point> turned = new ArrayList<>(corners);
            Collections.rotate(turned, k);
            ways.add(turned);
            List<Point> back = new ArrayList<>(turned);
            Collections.reverse(back);
            ways.add(back);
        }
        return ways;
    }

    @ParameterizedTest
    @ValueSource(strings = {"0 0; 40 0; 40 30; 20 50; 0 30", "0 0; 40 0; 40 30; 20 30; 20 60; 0 60", "0 10; 20 0; 40 10; 20 50", "10 0; 40 0; 40 30; 0 30"})
    void equals_countedFromAnyCorner_isTheSame(String text) {
        Outline first = Outline.of(points(text));
        for (List<Point> way : everyWayToCount(points(text))) {
            assertThat(Outline.of(way)).isEqualTo(first).hasSameHashCodeAs(first);
        }
        assertThat(first).isNotEqualTo(Outline.of(points("0 0; 41 0; 41 30; 0 30"))).isNotEqualTo(Outline.of(points("1 0; 40 0; 40 30; 20 50")));
    }

    /** Edges that cross, corners on edges and corners on corners, whichever edge is looked at first. */
    @ParameterizedTest
    @ValueSource(strings = {
        "0 0; 40 0; 0 30; 40 30",
        "0 0; 40 0; 40 30; 20 0; 0 30",
        "0 0; 40 0; 20 20; 40 40; 0 40; 20 20",
        "0 0; 40 0; 40 30; 30 30; 30 0; 10 0; 10 30; 0 30",
        "0 0; 40 0; 40 40; 30 40; 30 -10; 20 -10; 20 40; 0 40"
    })
    void of_notSimple_isRefusedFromAnyCorner(String text) {
        for (List<Point> way : everyWayToCount(points(text))) {
            assertThatThrownBy(() -> Outline.of(way)).isInstanceOf(RefusedException.class).hasMessageContaining("must not");
        }
    }

    /** Edges whose lines cross beyond their ends do not meet. */
    @ParameterizedTest
    @ValueSource(strings = {"0 0; 60 0; 60 60; 40 60; 40 20; 20 20; 20 60; 0 60", "0 0; 50 0; 50 10; 20 10; 20 20; 50 20; 50 30; 0 30"})
    void of_edgesOnOneLine_isNoTouching(String text) {
        for (List<Point> way : everyWayToCount(points(text))) {
            assertThat(Outline.of(way).points()).hasSize(8);
        }
    }

    @Test
    void of_fiveHundredCorners_isTheMost() {
        List<Point> teeth = new ArrayList<>(points("0 0; 2000 0"));
        for (int k = 0; k < 498; k++) {
            teeth.add(new Point(2000 - 4 * k, 10 + k % 2 * 5));
        }
        assertThat(Outline.of(teeth).points()).hasSize(500);
        teeth.add(new Point(0, 5));
        assertThatThrownBy(() -> Outline.of(teeth)).hasMessageContaining("501 corners").hasMessageContaining("must have 3 to 500");
        assertThat(Outline.of(points("0 0; 10 0; 0 10")).points()).hasSize(3);
    }

    @Test
    void grown_byNothing_isTheSame() {
        Outline gable = Outline.of(points("0 0; 40 0; 40 30; 20 50; 0 30"));
        assertThat(gable.grown(0, 0, 0, 0)).containsSame(gable);
        assertThat(gable.grown(1, 0, 0, 0)).contains(Outline.of(points("-1 0; 40 0; 40 30; 20 50; 0 30; -1 30")));
        assertThat(gable.grown(0, 0, 1, 0)).contains(Outline.of(points("0 -1; 40 -1; 40 30; 20 50; 0 30")));
        assertThat(gable.grown(0, 0, 0, 1)).contains(Outline.of(points("0 0; 40 0; 40 31; 20 51; 0 31")));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                // A tip to the right between a lower and an upper edge: down 2 and up 3.
                "0 0; 20 10; 0 20 | 0 | 0 | 2 | 3 | 0 -2; 20 8; 20 13; 0 23",
                // A tip to the left.
                "20 0; 20 20; 0 10 | 0 | 0 | 2 | 3 | 0 8; 20 -2; 20 23; 0 13",
                // A roof that falls 10 on 20 meets a tower at (20, 30): at 22 it has fallen by 1 and is moved up by 4.
                "0 0; 40 0; 40 20; 20 30; 20 60; 0 60 | 0 | 2 | 0 | 4 | 0 0; 42 0; 42 24; 40 24; 22 33; 22 64; 0 64",
                // 13 on 20: at 22 it has fallen by 1.3, outward to a whole step 1.
                "0 0; 40 0; 40 17; 20 30; 20 60; 0 60 | 0 | 2 | 0 | 4 | 0 0; 42 0; 42 21; 40 21; 22 33; 22 64; 0 64",
                // The same mirrored.
                "0 0; 40 0; 40 60; 20 60; 20 30; 0 17 | 2 | 0 | 0 | 4 | -2 0; 40 0; 40 64; 18 64; 18 33; 0 21; -2 21",
                // A step in the ground: the inner corner (20, 10) goes to (22, 7).
                "0 0; 20 0; 20 10; 40 10; 40 40; 0 40 | 0 | 2 | 3 | 0 | 0 -3; 22 -3; 22 7; 42 7; 42 40; 0 40",
                // Ground that rises 7 on 20 behind it: 0.7 at 22, outward to a whole step 0.
                "0 0; 20 0; 20 10; 40 17; 40 40; 0 40 | 0 | 2 | 3 | 0 | 0 -3; 22 -3; 22 7; 40 14; 42 14; 42 40; 0 40",
                // The same mirrored.
                "20 0; 40 0; 40 40; 0 40; 0 17; 20 10 | 2 | 0 | 3 | 0 | 18 -3; 40 -3; 40 40; -2 40; -2 14; 0 14; 18 7",
                // A notch with a level lower arm: 32 = 28 + (x - 20) at 24.
                "0 0; 40 0; 40 30; 20 30; 40 50; 40 60; 0 60 | 0 | 0 | 2 | 2 | 0 -2; 40 -2; 40 32; 24 32; 40 48; 40 62; 0 62"
            })
    void grown_corners_goWhereTheirEdgesGo(String from, long left, long right, long bottom, long top, String to) {
        assertThat(Outline.of(points(from)).grown(left, right, bottom, top)).contains(Outline.of(points(to)));
    }

    /** A square of 40 with a step of 20 x 20 missing at the upper right, and one missing at the lower right. */
    @ParameterizedTest
    @CsvSource({
        "20, 20, true", "20, 40, true", "10, 30, true", "30, 10, true", "30, 20, true", "0, 0, true", "40, 20, true",
        "30, 30, false", "40, 40, false", "50, 10, false", "-1, 10, false", "10, -1, false", "10, 41, false", "-5, 20, false", "-5, 40, false", "45, 20, false", "30, 0, true"
    })
    void holdsPoint_ofAStep_insideOrOnTheRim(long x, long y, boolean inside) {
        assertThat(Outline.of(points("0 0; 40 0; 40 20; 20 20; 20 40; 0 40")).holdsPoint(new Point(x, y))).isEqualTo(inside);
    }

    @ParameterizedTest
    @CsvSource({"20, 1, true", "1, 10, true", "39, 10, true", "5, 5, false", "35, 5, false", "5, 20, false", "35, 20, false", "20, 29, true", "10, 5, true", "11, 4, false"})
    void holdsPoint_ofAKite_rightOfRisingAndFallingEdges(long x, long y, boolean inside) {
        assertThat(Outline.of(points("0 10; 20 0; 40 10; 20 30")).holdsPoint(new Point(x, y))).isEqualTo(inside);
    }

    /** A rectangle that touches the rim from inside is held; one whose sides only meet corners from outside is not entered. */
    @Test
    void holds_rectanglesAroundAStep_byHand() {
        Outline step = Outline.of(points("0 0; 40 0; 40 20; 20 20; 20 40; 0 40"));
        assertThat(step.holds(0, 0, 20, 40)).isTrue();
        assertThat(step.holds(0, 0, 40, 20)).isTrue();
        assertThat(step.holds(0, 0, 21, 21)).isFalse();
        assertThat(step.holds(20, 20, 40, 40)).isFalse();
        assertThat(step.holds(-10, 0, 0, 40)).isFalse();
        assertThat(step.holds(0, -10, 40, 0)).isFalse();
        assertThat(step.holds(0, 40, 20, 50)).isFalse();
        Outline kite = Outline.of(points("0 10; 20 0; 40 10; 20 30"));
        assertThat(kite.holds(10, 5, 30, 20)).isTrue();
        assertThat(kite.holds(9, 5, 30, 20)).isFalse();
        assertThat(kite.holds(10, 4, 30, 20)).isFalse();
        assertThat(kite.holds(10, 5, 31, 20)).isFalse();
        assertThat(kite.holds(10, 5, 30, 21)).isFalse();
        // In a corner of its box, entered by no edge and outside.
        assertThat(kite.holds(0, 0, 4, 4)).isFalse();
    }

    @Test
    void toString_pointsAsCuts() {
        assertThat(Outline.of(points("0 0; 80 0; 0 160"))).hasToString("[(0.0 mm, 0.0 mm), (1.0 mm, 0.0 mm), (0.0 mm, 2.0 mm)]");
    }
}
