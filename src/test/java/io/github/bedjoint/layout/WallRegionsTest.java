package io.github.bedjoint.layout;

import static io.github.bedjoint.layout.LayoutPlannerTest.EXACT;
import static io.github.bedjoint.layout.LayoutPlannerTest.m;
import static io.github.bedjoint.layout.LayoutPlannerTest.mm;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.bedjoint.survey.Edge;
import io.github.bedjoint.survey.MovementJoint;
import io.github.bedjoint.survey.Opening;
import io.github.bedjoint.survey.Point;
import io.github.bedjoint.survey.Side;
import io.github.bedjoint.survey.Wall;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WallRegionsTest {
    /** 4 m wide, 1 m high, with a tower of 2 m by 3 m on its left; bleeds of 10, 20, 30 and 50 mm. */
    private static final Wall TOWER = Wall.polygon("t", List.of(Point.of(m(0), m(0)), Point.of(m(4), m(0)), Point.of(m(4), m(1)),
                    Point.of(m(2), m(1)), Point.of(m(2), m(3)), Point.of(m(0), m(3))))
            .withEdge(Side.LEFT, Edge.of(Edge.Kind.FREE, m(0.01)))
            .withEdge(Side.RIGHT, Edge.of(Edge.Kind.FREE, m(0.02)))
            .withEdge(Side.BOTTOM, Edge.of(Edge.Kind.GROUND, m(0.03)))
            .withEdge(Side.TOP, Edge.of(Edge.Kind.FREE, m(0.05)));
    private static final Frame DROPS = new Frame(Direction.DROPS, Side.LEFT);
    private static final Frame BANDS = new Frame(Direction.BANDS, Side.BOTTOM);

    private static WallRegions regions(Wall wall, Frame frame) {
        return WallRegions.of(wall, frame).orElseThrow();
    }

    private static Opening window(double left, double bottom, double width, double height) {
        return Opening.of(Opening.Kind.WINDOW, m(left), m(bottom), m(width), m(height)).turnedIn(m(0.04));
    }

    private static Rect millimetres(double u1, double u2, double v1, double v2) {
        return new Rect(mm(u1), mm(u2), mm(v1), mm(v2));
    }

    @ParameterizedTest
    @CsvSource({
        // 40 mm are turned in on all sides.
        "0.5, 0.5, 1, 1,     540, 1460, 540,  1460",
        // Where an edge of the wall runs along the opening, nothing is turned in there and the bleed goes on.
        "0.5, 0,   1, 1,     540, 1460, -30,  960",
        "0,   0.5, 1, 1,     -10, 960,  540,  1460",
        "1,   1.5, 1, 1,     1040, 2020, 1540, 2460",
        "0.5, 2,   1, 1,     540, 1460, 2040, 3050",
        "3,   0,   1, 1,     3040, 4020, -30, 1050",
        // On the line of an edge that lies elsewhere it is turned in: below the ledge's height, and in line with the tower's side.
        "0.5, 0.2, 1, 0.8,   540, 1460, 240,  960",
        "1,   0.2, 1, 0.6,   1040, 1960, 240, 760",
        "2,   0.2, 1, 0.6,   2040, 2960, 240, 760"})
    void of_opening_isCutOutButForWhatIsTurnedIn(
            double left, double bottom, double width, double height, double u1, double u2, double v1, double v2) {
        WallRegions regions = regions(TOWER.withOpening(window(left, bottom, width, height)), DROPS);
        assertThat(regions.openings()).singleElement().satisfies(hole -> {
            assertThat(hole.out()).isEqualTo(millimetres(u1, u2, v1, v2));
            assertThat(hole.opening()).isEqualTo(millimetres(1000 * left, 1000 * (left + width), 1000 * bottom, 1000 * (bottom + height)));
            assertThat(hole.neverCovered()).isFalse();
        });
        // As bands the two directions change places.
        assertThat(regions(TOWER.withOpening(window(left, bottom, width, height)), BANDS).openings().get(0).out())
                .isEqualTo(millimetres(v1, v2, u1, u2));
    }

    @Test
    void of_openingLeftWhole_isNone() {
        Wall whole = TOWER.withOpening(window(0.5, 0.5, 1, 1).withTreatment(Opening.Treatment.LEFT_WHOLE));
        assertThat(regions(whole, DROPS).openings()).isEmpty();
        Wall vent = TOWER.withOpening(Opening.of(Opening.Kind.VENT, m(0.5), m(0.5), m(0.1), m(0.1)));
        assertThat(regions(vent, DROPS).openings()).singleElement().satisfies(hole -> assertThat(hole.neverCovered()).isTrue());
    }

    @Test
    void of_openingTurnedInFromAllSidesToItsMiddle_leavesNothingOut() {
        // 80 mm wide and high, 40 mm turned in from each side.
        WallRegions regions = regions(TOWER.withOpening(window(0.5, 0.5, 0.08, 0.08)), DROPS);
        assertThat(regions.cuts()).isEmpty();
        assertThat(regions.needed().areaM2(millimetres(500, 580, 500, 580))).isEqualTo(0.0064, EXACT);
        assertThat(regions.seen().areaM2(millimetres(500, 580, 500, 580))).isZero();
    }

    @Test
    void of_wall_needsItsBleedsAndShowsItself() {
        WallRegions regions = regions(TOWER, DROPS);
        Rect all = millimetres(-1000, 5000, -1000, 5000);
        assertThat(regions.seen().areaM2(all)).isEqualTo(8, EXACT);
        // Up to 1.05 m: 4.03 by 1.08 m; above that the tower with its bleeds: 2.03 by 2 m.
        assertThat(regions.needed().areaM2(all)).isEqualTo(4.03 * 1.08 + 2.03 * 2, EXACT);
        assertThat(regions.uCorners()).containsExactly(0, mm(2000), mm(4000));
        assertThat(regions(TOWER, BANDS).uCorners()).containsExactly(0, mm(1000), mm(3000));
    }

    @Test
    void of_movementJoints_liesBetweenOrAcrossTheStrips() {
        Wall jointed = TOWER.withMovementJoints(List.of(MovementJoint.upright(m(1.5)), MovementJoint.level(m(0.5)), MovementJoint.upright(m(0.5))));
        WallRegions drops = regions(jointed, DROPS);
        assertThat(drops.uBars()).containsExactly(mm(500), mm(1500));
        assertThat(drops.vBars()).containsExactly(mm(500));
        assertThat(drops.isBar(mm(500))).isTrue();
        assertThat(drops.isBar(mm(501))).isFalse();
        assertThat(drops.stretches()).containsExactly(
                new long[] {mm(-10), mm(500)}, new long[] {mm(500), mm(1500)}, new long[] {mm(1500), mm(4020)});
        WallRegions bands = regions(jointed, BANDS);
        assertThat(bands.uBars()).containsExactly(mm(500));
        assertThat(bands.vBars()).containsExactly(mm(500), mm(1500));
        assertThat(regions(jointed, new Frame(Direction.DROPS, Side.RIGHT)).uBars()).containsExactly(mm(-1500), mm(-500));
    }

    @ParameterizedTest
    @CsvSource({"0, 499, false", "0, 500, true", "400, 600, true", "500, 600, true", "501, 600, false"})
    void hasBar_betweenTwoPlaces_countsThePlacesThemselves(double low, double high, boolean has) {
        Wall jointed = TOWER.withMovementJoints(List.of(MovementJoint.level(m(0.5))));
        assertThat(regions(jointed, DROPS).hasBar(mm(low), mm(high))).isEqualTo(has);
    }

    @ParameterizedTest
    @CsvSource({
        // Two windows, 0.5 to 1 m wide and 0.5 to 1.5 m high, and 1.2 to 1.6 m wide and 2 to 2.5 m high. Touching is not cutting.
        "0,    500,  0,    3000, 0, 0",
        "1000, 1200, 0,    3000, 0, 0",
        "0,    1000, 0,    500,  0, 0",
        "0,    1000, 1500, 2000, 0, 0",
        "900,  1100, 1400, 1600, 1, 0",
        "0,    600,  500,  1500, 1, 1",
        "0,    600,  501,  1500, 1, 0",
        "0,    600,  500,  1499, 1, 0",
        "0,    2000, 0,    3000, 2, 2",
        "999,  1201, 500,  2500, 2, 2"})
    void cutOuts_ofAPanel_areTheOpeningsItReachesInto(double u1, double u2, double v1, double v2, int any, int within) {
        Wall windows = TOWER.withOpenings(List.of(
                Opening.of(Opening.Kind.WINDOW, m(0.5), m(0.5), m(0.5), m(1)), Opening.of(Opening.Kind.WINDOW, m(1.2), m(2), m(0.4), m(0.5))));
        WallRegions regions = regions(windows, DROPS);
        assertThat(regions.cutOuts(mm(u1), mm(u2), mm(v1), mm(v2))).isEqualTo(any);
        assertThat(regions.cutOutsWithin(mm(u1), mm(u2), mm(v1), mm(v2))).isEqualTo(within);
    }

    @Test
    void cutOutM2_ofAPanel_isWhatLiesOverOpenings() {
        WallRegions regions = regions(TOWER.withOpening(Opening.of(Opening.Kind.WINDOW, m(0.5), m(0.5), m(0.5), m(1))), DROPS);
        assertThat(regions.cutOutM2(millimetres(0, 800, 0, 1000))).isEqualTo(0.3 * 0.5, EXACT);
        assertThat(regions.cutOutM2(millimetres(0, 500, 0, 1000))).isZero();
    }

    @Test
    void of_gable_hasNoCornerAtItsRidge() {
        Wall gable = Wall.polygon("g", List.of(Point.of(m(0), m(0)), Point.of(m(8), m(0)), Point.of(m(8), m(3)), Point.of(m(4), m(5)), Point.of(m(0), m(3))));
        assertThat(regions(gable, DROPS).uCorners()).containsExactly(0, mm(8000));
        // Level is only the ground.
        assertThat(regions(gable, BANDS).uCorners()).containsExactly(0);
    }
}
