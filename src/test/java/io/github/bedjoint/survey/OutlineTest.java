package io.github.bedjoint.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.bedjoint.units.RefusedException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OutlineTest {
    /** Points from "x y, x y" in steps. */
    static List<Point> points(String text) {
        List<Point> points = new ArrayList<>();
        for (String pair : text.split(";")) {
            String[] xy = pair.trim().split(" ");
            points.add(new Point(Long.parseLong(xy[0]), Long.parseLong(xy[1])));
        }
        return points;
    }

    @Test
    void of_eitherSense_isOneOutline() {
        List<Point> corners = points("0 0; 40 0; 40 30; 20 50; 0 30");
        List<Point> back = new ArrayList<>(corners);
        Collections.reverse(back);
        assertThat(Outline.of(back)).isEqualTo(Outline.of(corners)).hasSameHashCodeAs(Outline.of(corners));
    }

    @Test
    void of_cornerOnAStraightLine_isDropped() {
        assertThat(Outline.of(points("0 0; 20 0; 40 0; 40 30; 0 30"))).isEqualTo(Outline.of(points("0 0; 40 0; 40 30; 0 30")));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "bow tie                | 0 0; 40 0; 0 30; 40 30",
                "corner on an edge      | 0 0; 40 0; 40 30; 20 0; 0 30",
                "corner on a corner     | 0 0; 40 0; 20 20; 40 40; 0 40; 20 20",
                "spike                  | 0 0; 40 0; 60 0; 40 0; 40 30; 0 30",
                "one line               | 0 0; 10 10; 20 20",
                "two corners            | 0 0; 10 10",
                "one corner thrice      | 5 5; 5 5; 5 5",
                "edge over an edge      | 0 0; 40 0; 40 30; 30 30; 30 0; 10 0; 10 30; 0 30"
            })
    void of_notSimple_isRefused(String what, String corners) {
        assertThatThrownBy(() -> Outline.of(points(corners)))
                .as(what)
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("outline is")
                .hasMessageContaining("Maybe");
    }

    @Test
    void side_ofAGable_slopedUpperEdgesAreTop() {
        Outline gable = Outline.of(points("0 0; 40 0; 40 30; 20 50; 0 30"));
        assertThat(List.of(gable.side(0), gable.side(1), gable.side(2), gable.side(3), gable.side(4)))
                .containsExactly(Side.BOTTOM, Side.RIGHT, Side.TOP, Side.TOP, Side.LEFT);
    }

    @Test
    void grown_rectangle_movesEverySide() {
        assertThat(Outline.of(points("0 0; 40 0; 40 30; 0 30")).grown(1, 2, 3, 4))
                .contains(Outline.of(points("-1 -3; 42 -3; 42 34; -1 34")));
    }

    @Test
    void grown_gable_keepsItsEavesLevelBesideTheWall() {
        // Eave corner (40, 30): right 2, top 4, so (42, 30), (42, 34), (40, 34); the ridge goes straight up.
        assertThat(Outline.of(points("0 0; 40 0; 40 30; 20 50; 0 30")).grown(0, 2, 0, 4))
                .contains(Outline.of(points("0 0; 42 0; 42 34; 40 34; 20 54; 0 34")));
    }

    @Test
    void grown_step_movesItsInnerCornerOut() {
        // Low part 0 to 40 at height 30, tower 0 to 20 at height 60: the inner corner (20, 30) goes to (22, 34).
        assertThat(Outline.of(points("0 0; 40 0; 40 30; 20 30; 20 60; 0 60")).grown(0, 2, 0, 4))
                .contains(Outline.of(points("0 0; 42 0; 42 34; 22 34; 22 64; 0 64")));
    }

    @Test
    void grown_stepLowerThanTheBleed_isStillARim() {
        // Step of 3 up to the right, bleeds of 2 sideways and 5 up: the inner corner (20, 30) goes to (18, 35), the outer to (18, 38).
        assertThat(Outline.of(points("0 0; 40 0; 40 33; 20 33; 20 30; 0 30")).grown(2, 0, 0, 5))
                .contains(Outline.of(points("-2 0; 40 0; 40 38; 18 38; 18 35; -2 35")));
    }

    @Test
    void grown_acrossANarrowNotch_isEmpty() {
        // A notch 10 wide, edges that face each other move 6 each.
        assertThat(Outline.of(points("0 0; 50 0; 50 50; 30 50; 30 20; 20 20; 20 50; 0 50")).grown(6, 6, 0, 0)).isEmpty();
        assertThat(Outline.of(points("0 0; 50 0; 50 50; 30 50; 30 20; 20 20; 20 50; 0 50")).grown(4, 4, 0, 0)).isPresent();
    }

    @Test
    void grown_slopedNotch_meetsFurtherOut() {
        // A notch from the right with its point at (20, 30), upper edge falling and lower edge rising at slope 1; both move by 2,
        // so they meet 2 further right: 30 + t - ... up 2 on the lower arm, down 2 on the upper one, t = 4 / 2.
        assertThat(Outline.of(points("0 0; 40 0; 40 10; 20 30; 40 50; 40 60; 0 60")).grown(0, 0, 2, 2))
                .isPresent()
                .get()
                .satisfies(grown -> assertThat(grown.points()).contains(new Point(22, 30)));
    }

    @Test
    void holds_rectangle_insideOrOnTheRimOnly() {
        Outline gable = Outline.of(points("0 0; 40 0; 40 30; 20 50; 0 30"));
        assertThat(gable.holds(0, 0, 40, 30)).isTrue();
        assertThat(gable.holds(10, 0, 30, 40)).isTrue();
        assertThat(gable.holds(9, 0, 30, 40)).isFalse();
        assertThat(gable.holds(0, 0, 41, 30)).isFalse();
        assertThat(gable.holds(50, 0, 60, 10)).isFalse();
    }
}
