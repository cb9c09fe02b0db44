package io.github.bedjoint.survey;

import static io.github.bedjoint.survey.WallTest.m;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.texture.JointProfile;
import io.github.bedjoint.texture.MasonrySurface;
import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.ShopUnits;
import io.github.bedjoint.working.WorkingCheck;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

class WallAreasTest {
    private static final Offset<Double> EXACT = within(1e-12);

    /** 10 m x 4 m with a door 1 x 2.1 at the ground and a window 2 x 1.5. */
    private static final Wall FRONT = Wall.rectangle("front", m(10), m(4))
            .withEdge(Side.BOTTOM, Edge.of(Edge.Kind.GROUND, m(0.03)))
            .withEdge(Side.RIGHT, Edge.of(Edge.Kind.OUTSIDE_CORNER, m(0.05)))
            .withOpenings(List.of(
                    Opening.of(Opening.Kind.DOOR, m(2), m(0), m(1), m(2.1)),
                    Opening.of(Opening.Kind.WINDOW, m(5), m(1), m(2), m(1.5))));

    @Test
    void visible_doorAndWindow_areOut() {
        // 40 - 2.1 - 3 = 34.9
        assertThat(WallAreas.of(FRONT, DeductionRule.none()).visibleM2()).isEqualTo(34.9, EXACT);
    }

    @Test
    void measured_byRule_deductsWhatItSays() {
        assertThat(WallAreas.of(FRONT, DeductionRule.allOpenings()).measuredM2()).isEqualTo(34.9, EXACT);
        assertThat(WallAreas.of(FRONT, DeductionRule.none()).measuredM2()).isEqualTo(40, EXACT);
        // Only the window has 2.5 m2 or more: 40 - 3.
        assertThat(WallAreas.of(FRONT, DeductionRule.atLeast(Door.area(2.5))).measuredM2()).isEqualTo(37, EXACT);
        // The door has just 2.1 m2, and 2.1 m2 are 22.604 ft2.
        assertThat(WallAreas.of(FRONT, DeductionRule.atLeast(Door.of(2.1 / 0.09290304, ShopUnits.SQUARE_FOOT))).measuredM2())
                .isEqualTo(34.9, EXACT);
    }

    @Test
    void leftWhole_isSeenAndNotDeducted() {
        Wall covered = FRONT.withOpenings(List.of(FRONT.openings().get(1).withTreatment(Opening.Treatment.LEFT_WHOLE)));
        WallAreas areas = WallAreas.of(covered, DeductionRule.allOpenings());
        assertThat(areas.visibleM2()).isEqualTo(40, EXACT);
        assertThat(areas.measuredM2()).isEqualTo(40, EXACT);
        assertThat(areas.edges().openingRimsM()).isZero();
    }

    @Test
    void gable_area_isBodyAndTriangle() {
        // 8 x 3 and a triangle of 8 x 2 / 2: 24 + 8; less a window 1 x 1.
        Wall gable = Wall.polygon("gable", List.of(Point.of(m(0), m(0)), Point.of(m(8), m(0)), Point.of(m(8), m(3)), Point.of(m(4), m(5)),
                        Point.of(m(0), m(3))))
                .withOpening(Opening.of(Opening.Kind.WINDOW, m(3.5), m(3), m(1), m(1)));
        WallAreas areas = WallAreas.of(gable, DeductionRule.none());
        assertThat(areas.visibleM2()).isEqualTo(31, EXACT);
        // Two verges of hypot(4, 2) = 4.4721359549996 and the two sides and the base: all free.
        assertThat(areas.edges().lengthM(Edge.Kind.FREE)).isEqualTo(2 * Math.sqrt(20) + 3 + 3 + 8, EXACT);
    }

    @Test
    void edges_doorOnTheGround_shortensGroundAndItsOwnRim() {
        WallEdges edges = WallAreas.of(FRONT, DeductionRule.none()).edges();
        assertThat(edges.groundM()).isEqualTo(9, EXACT);
        assertThat(edges.lengthM(Edge.Kind.GROUND)).isEqualTo(9, EXACT);
        assertThat(edges.lengthM(Edge.Kind.OUTSIDE_CORNER)).isEqualTo(4, EXACT);
        assertThat(edges.lengthM(Edge.Kind.FREE)).isEqualTo(14, EXACT);
        // Door: two jambs and the head, 2.1 + 2.1 + 1; window: 2 (2 + 1.5).
        assertThat(edges.openingRimsM()).isEqualTo(5.2 + 7, EXACT);
        assertThat(edges.sealedM()).isEqualTo(9, EXACT);
    }

    @Test
    void edges_openingsThatTouch_shareNoRim() {
        Wall wall = Wall.rectangle("w", m(6), m(3)).withOpenings(List.of(
                Opening.of(Opening.Kind.WINDOW, m(1), m(1), m(1), m(1)), Opening.of(Opening.Kind.WINDOW, m(2), m(1), m(1), m(1))));
        // One window of 2 x 1 in effect.
        assertThat(WallAreas.of(wall, DeductionRule.none()).edges().openingRimsM()).isEqualTo(6, EXACT);
    }

    @Test
    void developed_rakedBrick_isTheVisibleAreaTimesItsRatio() {
        // 215 x 65 mm, joints 10, raked 5 mm: 1.16592593 (derived: 1 + 2 (l + h) d / C, C = 225 x 75).
        Wall brick = FRONT.withSurface(MasonrySurface.of(m(0.215), m(0.065), m(0.01), m(0.01), JointProfile.raked(m(0.005))));
        WallAreas areas = WallAreas.of(brick, DeductionRule.none());
        assertThat(areas.developedM2()).isCloseTo(34.9 * (1 + 2 * 280 * 5 / (225.0 * 75)), within(1e-9));
        WorkingCheck.check(areas.working());
    }

    @Test
    void working_ofAWall_evaluates() {
        WorkingCheck.check(WallAreas.of(FRONT, DeductionRule.atLeast(Door.area(2.5))).working());
    }
}
