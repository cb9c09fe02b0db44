package io.github.bedjoint.layout;

import static io.github.bedjoint.layout.LayoutPlannerTest.EXACT;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RegionTest {
    /** 2 m wide, eaves 1 m, ridge 2 m in the middle, and a window of 0.25 m by 0.25 m from 0.5 m on and 0.25 m up. */
    private static final Region GABLE = Region.of(List.of(
            new Line(0, 0, 160_000, 0), new Line(0, 80_000, 80_000, 160_000), new Line(80_000, 160_000, 160_000, 80_000),
            new Line(40_000, 20_000, 60_000, 20_000), new Line(40_000, 40_000, 60_000, 40_000)));
    /** A square of 4 m. */
    private static final Region SQUARE = Region.of(List.of(new Line(0, 0, 320_000, 0), new Line(0, 320_000, 320_000, 320_000)));

    private static Rect rect(double u1, double u2, double v1, double v2) {
        return new Rect(Math.round(u1 * 80_000), Math.round(u2 * 80_000), Math.round(v1 * 80_000), Math.round(v2 * 80_000));
    }

    @ParameterizedTest
    @CsvSource({"-5, 0", "0, 0", "39999, 0", "40000, 1", "40001, 1", "60000, 2", "80000, 3", "159999, 3", "160000, 4", "170000, 4"})
    void slabBeyond_place_isTheFirstThatReachesBeyondIt(long u, int slab) {
        assertThat(GABLE.slabs()).isEqualTo(4);
        assertThat(GABLE.slabBeyond(u)).isEqualTo(slab);
    }

    @Test
    void stretches_partsThatTouch_areOneAndAGapEndsThem() {
        Region parts = Region.of(List.of(
                new Line(0, 0, 10, 0), new Line(0, 10, 10, 10), new Line(10, 0, 20, 0), new Line(10, 5, 20, 5),
                new Line(30, 0, 40, 0), new Line(30, 5, 40, 5)));
        assertThat(parts.stretches()).containsExactly(new long[] {0, 20}, new long[] {30, 40});
    }

    @Test
    void of_linesThatEncloseNothing_isEmpty() {
        assertThat(Region.of(List.of(new Line(0, 5, 10, 5), new Line(0, 5, 10, 5))).stretches()).isEmpty();
        assertThat(Region.of(List.of()).slabs()).isZero();
    }

    @ParameterizedTest
    @CsvSource({
        // Wall 2 m2, gable 1 m2, window 0.0625 m2.
        "-1, 3, -1, 3, 2.9375",
        // The gable is 2 m wide at 1 m, 1 m wide at 1.5 m, 0.5 m wide at 1.75 m.
        "0, 2, 1, 1.5, 0.75",
        "0, 2, 1.75, 3, 0.0625",
        // Under a rim that rises from 1 to 1.5 m: a triangle of 0.25 m to where it leaves at 1.25 m, then 0.25 m by 0.25 m.
        "0, 0.5, 1, 1.25, 0.09375",
        "1.5, 2, 1, 1.25, 0.09375",
        "0.5, 1, 1, 1.25, 0.125",
        // The window, and 0.4 m by 0.4 m around it.
        "0.5, 0.75, 0.25, 0.5, 0",
        "0.4, 0.8, 0.2, 0.6, 0.0975",
        // Beside the wall, above it, and of no width.
        "2, 3, 0, 1, 0", "-1, 0, 0, 1, 0", "0, 1, 2, 3, 0", "0.5, 0.5, 0, 1, 0"})
    void areaM2_rectangle_isClippedByRimsAndOpenings(double u1, double u2, double v1, double v2, double area) {
        assertThat(GABLE.areaM2(rect(u1, u2, v1, v2))).isEqualTo(area, EXACT);
    }

    @Test
    void areaM2_severalRectangles_countEachPlaceOnce() {
        Rect square = rect(0, 2, 0, 2);
        assertThat(SQUARE.areaM2(List.of())).isZero();
        assertThat(SQUARE.areaM2(List.of(square, square))).isEqualTo(4, EXACT);
        assertThat(SQUARE.areaM2(List.of(square, rect(1, 3, 1, 3)))).isEqualTo(7, EXACT);
        assertThat(SQUARE.areaM2(List.of(rect(0.5, 1, 0.5, 1), square))).isEqualTo(4, EXACT);
        assertThat(SQUARE.areaM2(List.of(square, rect(0, 2, 3, 4)))).isEqualTo(6, EXACT);
        assertThat(SQUARE.areaM2(List.of(square, rect(0, 2, 2, 3)))).isEqualTo(6, EXACT);
        assertThat(SQUARE.areaM2(List.of(square, rect(0, 4, 3, 1)))).isEqualTo(4, EXACT);
    }

    @ParameterizedTest
    @CsvSource({
        // The rim rises with u: 1.3 m at 0.3 m.
        "0.1, 0.3, -1, 9,      0.1, 0.3, 0, 1.3",
        "0.1, 0.3, 0.05, 0.25, 0.1, 0.3, 0.05, 0.25",
        // Above 1.875 m only the two slabs beside the ridge reach, which begin and end at corners: at 0.75 and 2 m.
        "0, 2, 1.875, 3,       0.75, 2, 1.875, 2",
        // Beside the window on the left.
        "0.4, 0.75, 0.25, 0.5, 0.4, 0.5, 0.25, 0.5",
        // The window itself, a place beside the wall and one above it hold nothing.
        "0.5, 0.75, 0.25, 0.5, 0.5, 0.5, 0.25, 0.25",
        "-1, 0, 0.25, 0.5,     -1, -1, 0.25, 0.25",
        "0, 2, 2, 3,           0, 0, 2, 2"})
    void around_rectangle_isTheLeastAroundWhatItHolds(
            double u1, double u2, double v1, double v2, double left, double right, double low, double high) {
        assertThat(GABLE.around(rect(u1, u2, v1, v2))).isEqualTo(rect(left, right, low, high));
    }

    @Test
    void line_betweenWholeSteps_isBroughtDownOrUp() {
        // A third of a step for each step, up and down.
        Line rising = Line.of(0, 0, 3, 1);
        Line falling = Line.of(3, -1, 0, 0);
        assertThat(falling).isEqualTo(new Line(0, 0, 3, -1));
        for (long u = 0; u <= 3; u++) {
            assertThat(rising.at(u)).isEqualTo(u / 3.0, EXACT);
            assertThat(falling.at(u)).isEqualTo(-u / 3.0, EXACT);
        }
        assertThat(new long[] {rising.floorAt(0), rising.floorAt(1), rising.floorAt(2), rising.floorAt(3)}).containsExactly(0, 0, 0, 1);
        assertThat(new long[] {rising.ceilAt(0), rising.ceilAt(1), rising.ceilAt(2), rising.ceilAt(3)}).containsExactly(0, 1, 1, 1);
        assertThat(new long[] {falling.floorAt(0), falling.floorAt(1), falling.floorAt(2), falling.floorAt(3)}).containsExactly(0, -1, -1, -1);
        assertThat(new long[] {falling.ceilAt(0), falling.ceilAt(1), falling.ceilAt(2), falling.ceilAt(3)}).containsExactly(0, 0, 0, -1);
    }

    @Test
    void line_thatDoesNotBeginAtTheOrigin_isMeasuredFromItsOwnEnd() {
        Line line = new Line(10, 100, 14, 106);
        assertThat(line.floorAt(11)).isEqualTo(101);
        assertThat(line.ceilAt(11)).isEqualTo(102);
        assertThat(line.at(11)).isEqualTo(101.5, EXACT);
    }
}
