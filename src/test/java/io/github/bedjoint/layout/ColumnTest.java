package io.github.bedjoint.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class ColumnTest {
    /** A square of 100 steps with a hole from 20 to 40, from 30 to 60 high. */
    private static final Region WALL = Region.of(List.of(
            new Line(0, 0, 100, 0), new Line(0, 100, 100, 100), new Line(20, 30, 40, 30), new Line(20, 60, 40, 60)));

    private static Column column(Region region, long[] bars, long... places) {
        Column column = new Column(bars);
        for (int i = 0; i + 1 < places.length; i++) {
            column.widen(region, places[i], places[i + 1]);
        }
        return column;
    }

    private static Column column(long[] bars, long... places) {
        return column(WALL, bars, places);
    }

    /** Low, high, from, to of each part. */
    private static List<List<Long>> parts(Column column) {
        List<List<Long>> parts = new ArrayList<>();
        for (int i = 0; i < column.size(); i++) {
            parts.add(List.of(column.low(i), column.high(i), column.from(i), column.to(i)));
        }
        return parts;
    }

    private static final long[] NONE = {};

    @Test
    void widen_withinAnOpening_isTwoParts() {
        assertThat(parts(column(NONE, 20, 40))).containsExactly(List.of(0L, 30L, 20L, 40L), List.of(60L, 100L, 20L, 40L));
        assertThat(parts(column(NONE, 25, 30))).containsExactly(List.of(0L, 30L, 25L, 30L), List.of(60L, 100L, 25L, 30L));
    }

    @Test
    void widen_besideAnOpening_isOnePart() {
        assertThat(parts(column(NONE, 5, 15))).containsExactly(List.of(0L, 100L, 5L, 15L));
        assertThat(parts(column(NONE, 10, 20, 40))).containsExactly(List.of(0L, 100L, 10L, 40L));
        assertThat(parts(column(NONE, 20, 40, 50))).containsExactly(List.of(0L, 100L, 20L, 50L));
        assertThat(parts(column(NONE, -9, 999))).containsExactly(List.of(0L, 100L, 0L, 100L));
    }

    @Test
    void widen_overAMovementJoint_keepsItsSidesApart() {
        assertThat(parts(column(new long[] {50}, 0, 20))).containsExactly(List.of(0L, 50L, 0L, 20L), List.of(50L, 100L, 0L, 20L));
        // A joint where the opening begins: the lower part ends there, the upper one comes down to it beside the opening.
        assertThat(parts(column(new long[] {30}, 20, 40))).containsExactly(List.of(0L, 30L, 20L, 40L), List.of(60L, 100L, 20L, 40L));
        assertThat(parts(column(new long[] {30}, 20, 40, 50))).containsExactly(List.of(0L, 30L, 20L, 50L), List.of(30L, 100L, 20L, 50L));
        // The other way round: the part that comes second lies below.
        Region upThenDown = Region.of(List.of(new Line(0, 30, 10, 30), new Line(0, 60, 10, 60), new Line(10, 0, 20, 0), new Line(10, 30, 20, 30)));
        assertThat(parts(column(upThenDown, new long[] {30}, 0, 20))).containsExactly(List.of(0L, 30L, 10L, 20L), List.of(30L, 60L, 0L, 10L));
        assertThat(parts(column(upThenDown, NONE, 0, 20))).containsExactly(List.of(0L, 60L, 0L, 20L));
        // Joints at the ends of the wall part nothing.
        assertThat(parts(column(new long[] {0, 100}, 0, 20))).containsExactly(List.of(0L, 100L, 0L, 20L));
    }

    @Test
    void widen_partsThatOnlyTouch_areOne() {
        Region stairs = Region.of(List.of(new Line(0, 0, 10, 0), new Line(0, 30, 10, 30), new Line(10, 30, 20, 30), new Line(10, 60, 20, 60)));
        assertThat(parts(column(stairs, NONE, 0, 20))).containsExactly(List.of(0L, 60L, 0L, 20L));
    }

    @Test
    void widen_partBetweenTwoOthers_isPutBetweenThem() {
        Region forked = Region.of(List.of(
                new Line(0, 0, 10, 0), new Line(0, 10, 10, 10), new Line(0, 90, 10, 90), new Line(0, 100, 10, 100),
                new Line(10, 40, 20, 40), new Line(10, 50, 20, 50)));
        assertThat(parts(column(forked, NONE, 0, 20)))
                .containsExactly(List.of(0L, 10L, 0L, 10L), List.of(40L, 50L, 10L, 20L), List.of(90L, 100L, 0L, 10L));
    }

    @Test
    void widen_moreThanEightParts_keepsThemAll() {
        List<Line> shelves = new ArrayList<>();
        List<List<Long>> expected = new ArrayList<>();
        for (long k = 0; k < 20; k++) {
            shelves.add(new Line(0, 20 * k, 10, 20 * k));
            shelves.add(new Line(0, 20 * k + 5, 10, 20 * k + 5));
            expected.add(List.of(20 * k, 20 * k + 5, 0L, 10L));
        }
        Column column = column(Region.of(shelves), NONE, 0, 10);
        assertThat(parts(column)).isEqualTo(expected);
        column.clear();
        assertThat(column.size()).isZero();
    }

    @Test
    void widen_underASlope_reachesToTheHigherEndInWholeSteps() {
        // A third of a step for each step: 20 + 2/3 at 2, 20 + 1/3 at 1.
        Region shed = Region.of(List.of(new Line(0, 0, 3, -1), new Line(0, 20, 3, 21)));
        assertThat(parts(column(shed, NONE, 0, 2))).containsExactly(List.of(-1L, 21L, 0L, 2L));
        assertThat(parts(column(shed, NONE, 0, 3))).containsExactly(List.of(-1L, 21L, 0L, 3L));
    }
}
