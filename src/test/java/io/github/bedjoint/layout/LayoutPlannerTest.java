package io.github.bedjoint.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.film.Film;
import io.github.bedjoint.survey.Edge;
import io.github.bedjoint.survey.Opening;
import io.github.bedjoint.survey.Point;
import io.github.bedjoint.survey.Side;
import io.github.bedjoint.survey.Wall;
import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.ShopUnits;
import io.github.bedjoint.working.WorkingCheck;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LayoutPlannerTest {
    static final Offset<Double> EXACT = within(1e-9);
    /** 54 in, overlap 1/2 to 1 in: common practice, no source. */
    static final Film FILM = Film.of("54 in film", Door.of(54, ShopUnits.INCH));
    /** Round figures for hand arithmetic: 1 m, overlap 20 mm. */
    static final Film METRE = Film.of("metre film", m(1)).withOverlapRange(m(0.02), m(0.05));
    static final LayoutPlanner DROPS = LayoutPlanner.withDefaults();

    static Quantity<Length> m(double metres) {
        return Door.length(metres);
    }

    /** Lengths of 0.1 mm in steps. */
    static long mm(double millimetres) {
        return Math.round(millimetres * 80);
    }

    @Test
    void plan_rectangle_isWorkedByHand() {
        // (10 - 0.0127) / (1.3716 - 0.0127) = 7.3495..., so 8. Seven panels reach 7 * 1.3589 + 0.0127 = 9.5250; the last begins
        // 0.0127 before: 10 - 9.5123 = 0.4877. Film 8 * 2.5 = 20 m; seams 7 * 2.5 = 17.5 m; allowance 17.5 * 0.0127 = 0.22225 m2.
        PanelLayout layout = DROPS.plan(Wall.rectangle("w", m(10), m(2.5)), FILM);
        assertThat(layout.panels()).hasSize(8);
        assertThat(layout.panels().subList(0, 7)).allMatch(p -> p.cutWidthSteps() == mm(1371.6));
        assertThat(layout.panels().get(7).cutWidthSteps()).isEqualTo(mm(487.7));
        assertThat(layout.panels().get(7).visibleWidthSteps()).isEqualTo(mm(475));
        assertThat(layout.filmM()).isEqualTo(20, EXACT);
        assertThat(layout.seamM()).isEqualTo(17.5, EXACT);
        assertThat(layout.overlapM2()).isEqualTo(0.22225, EXACT);
        assertThat(layout.places().visibleM2()).isEqualTo(25, EXACT);
        WorkingCheck.check(layout.working());
        layout.panels().forEach(p -> WorkingCheck.check(p.working()));
    }

    @ParameterizedTest
    @CsvSource({
        // p = 1 m, o = 20 mm: three panels reach 3 * 0.98 + 0.02 = 2.96 m; a step of 12.5 um more takes a fourth.
        "2.96,        0,    3",
        "2.9600125,   0,    4",
        "1,           0,    1",
        "1.0000125,   0,    2",
        "0.05,        0,    1",
        "2.90,        0.03, 3",
        "2.9000125,   0.03, 4",
        "0.94,        0.03, 1"
    })
    void plan_width_takesTheLeastPanels(double width, double bleed, int panels) {
        Wall wall = Wall.rectangle("w", m(width), m(2))
                .withEdge(Side.LEFT, Edge.of(Edge.Kind.FREE, m(bleed)))
                .withEdge(Side.RIGHT, Edge.of(Edge.Kind.OUTSIDE_CORNER, m(bleed)));
        assertThat(DROPS.withLeastSliver(m(0)).plan(wall, METRE).panels()).hasSize(panels);
    }

    @Test
    void plan_edges_addWhatTheyNeed() {
        // Ground tuck 30 below, bleed 10 above, corner turn 50 at the right, bleed 20 at the left: 2 + 0.04 long.
        Wall wall = Wall.rectangle("w", m(1.5), m(2))
                .withEdge(Side.BOTTOM, Edge.of(Edge.Kind.GROUND, m(0.03)))
                .withEdge(Side.TOP, Edge.of(Edge.Kind.SOFFIT, m(0.01)))
                .withEdge(Side.RIGHT, Edge.of(Edge.Kind.OUTSIDE_CORNER, m(0.05)))
                .withEdge(Side.LEFT, Edge.of(Edge.Kind.FREE, m(0.02)));
        PanelLayout layout = DROPS.plan(wall, METRE);
        // First 1 m from -20 to 980 mm, second from 960 to 1550 mm.
        assertThat(layout.panels()).extracting(Panel::cutWidthSteps).containsExactly(mm(1000), mm(590));
        assertThat(layout.panels()).extracting(Panel::cutLengthSteps).containsOnly(mm(2040));
        assertThat(layout.panels()).extracting(Panel::lowerLeft)
                .containsExactly(new Point(mm(-20), mm(-30)), new Point(mm(960), mm(-30)));
        assertThat(layout.panels()).extracting(Panel::visibleWidthSteps).containsExactly(mm(980), mm(520));
        // Bleed: first 1 * 2.04 - 0.98 * 2 = 0.08; second 0.59 * 2.04 - 0.54 * 2 = 0.1236.
        assertThat(layout.places().bleedM2()).isEqualTo(0.2036, EXACT);
        assertThat(layout.places().trimM2()).isEqualTo(0, EXACT);
    }

    @Test
    void plan_lastPanelNarrowerThanTheLeastSliver_takesFromItsNeighbour() {
        // Three panels reach 2.96; the fourth would be 70 mm on the wall, from 2.94. It begins at 2.91 instead, so the third, from
        // 1.96, ends at 2.93.
        PanelLayout layout = DROPS.plan(Wall.rectangle("w", m(3.01), m(2)), METRE);
        assertThat(layout.panels()).extracting(Panel::cutWidthSteps).containsExactly(mm(1000), mm(1000), mm(970), mm(100));
        assertThat(layout.panels()).extracting(Panel::visibleWidthSteps).containsExactly(mm(1000), mm(980), mm(950), mm(80));
    }

    @Test
    void plan_sliverThatNoWidthAvoids_isImpossibleWithAReason() {
        PanelLayout layout = DROPS.withLeastSliver(m(0.6)).plan(Wall.rectangle("w", m(1.1), m(2)), METRE);
        assertThat(layout.isPossible()).isFalse();
        assertThat(layout.panels()).isEmpty();
        assertThat(layout.reasons()).singleElement().asString().contains("600.0 mm", "equal width");
    }

    @Test
    void plan_equalised_sharesToAStep() {
        // 10 m and 7 overlaps of 12.7: 10.0889 / 8 = 1.2611125 m = 100889 steps, even.
        PanelLayout layout = DROPS.withFit(Fit.EQUALISED).plan(Wall.rectangle("w", m(10), m(2.5)), FILM);
        assertThat(layout.panels()).hasSize(8).allMatch(p -> p.cutWidthSteps() == 100_889);
        // A step more: one panel is a step wider, the first.
        PanelLayout odd = DROPS.withFit(Fit.EQUALISED).plan(Wall.rectangle("w", m(10.0000125), m(2.5)), FILM);
        assertThat(odd.panels()).extracting(Panel::cutWidthSteps).startsWith(100_890L, 100_889L).endsWith(100_889L);
    }

    @ParameterizedTest
    @CsvSource({
        // Three panels of 1 m with overlaps of 20 mm reach 2.96. To 2.93: 30 mm to spare, 15 for each overlap.
        "2.93,      35,      35,      1000",
        // To 2.95 and a step of 12.5 um less: 801 steps to spare, 401 and 400.
        "2.9499875, 25.0125, 25,      1000",
        // To 2.8: overlaps of 50 mm at most, so the last panel is trimmed to 2.8 - 1.9.
        "2.8,       50,      50,      900"
    })
    void plan_widerOverlaps_shareWhatIsToSpare(double width, double first, double second, double last) {
        PanelLayout layout = DROPS.withFit(Fit.WIDER_OVERLAPS).plan(Wall.rectangle("w", m(width), m(2)), METRE);
        assertThat(layout.seams()).extracting(Seam::overlapSteps).containsExactly(mm(first), mm(second));
        assertThat(layout.panels()).extracting(Panel::cutWidthSteps).containsExactly(mm(1000), mm(1000), mm(last));
        assertThat(layout.overlapM2()).isEqualTo(2 * (first + second) / 1000, EXACT);
        assertThat(layout.places().visibleM2()).isEqualTo(2 * width, EXACT);
        WorkingCheck.check(layout.working());
    }

    @Test
    void plan_gable_cutsToTheHighestPointInTheStrip() {
        // Eaves 3 m, ridge 5 m at 4 m: slope 1/2. Panels end at 1.00, 1.98, 2.96, 3.94, 4.92 ...: 3 + 1/2 of that until the ridge
        // at 4 lies in the fifth, 5 m; then the left side counts: begins at 4.90, 5.88, 6.86, 7.84.
        Wall gable = Wall.polygon("g", List.of(Point.of(m(0), m(0)), Point.of(m(8), m(0)), Point.of(m(8), m(3)), Point.of(m(4), m(5)),
                Point.of(m(0), m(3))));
        PanelLayout layout = DROPS.withLeastSliver(m(0.1)).plan(gable, METRE);
        assertThat(layout.panels()).extracting(Panel::cutLengthSteps).containsExactly(
                mm(3500), mm(3990), mm(4480), mm(4970), mm(5000), mm(4550), mm(4060), mm(3570), mm(3080));
        assertThat(layout.places().visibleM2()).isEqualTo(32, EXACT);
        // A seam is as long as the wall is high in its middle: at 0.99 m 3.495 m.
        assertThat(layout.seams().get(0).lengthM()).isEqualTo(3.495, EXACT);
        assertThat(layout.overlapM2()).isEqualTo(layout.places().overlapM2(), EXACT);
    }

    @Test
    void plan_panelOverAWindow_isOnePieceWithACutOut() {
        // Window from 0.5 to 0.9 wide inside the first panel of 1 m: 0.4 * 1 m2 of cut-out, one piece.
        Wall wall = Wall.rectangle("w", m(1.5), m(2)).withOpening(Opening.of(Opening.Kind.WINDOW, m(0.5), m(0.5), m(0.4), m(1)));
        PanelLayout layout = DROPS.plan(wall, METRE);
        assertThat(layout.panels()).hasSize(2);
        assertThat(layout.panels().get(0).places().cutOutM2()).isEqualTo(0.4, EXACT);
        assertThat(layout.cutOuts()).isEqualTo(1);
        assertThat(layout.seamM()).isEqualTo(2, EXACT);
    }

    @Test
    void plan_seamOverAWindow_wastesBothLayersAndIsShorter() {
        // Seam from 0.98 to 1.00, window from 0.8 to 1.2 m, 1 m high: in the first panel 0.2 m2, in the second 0.22 m2.
        Wall wall = Wall.rectangle("w", m(1.5), m(2)).withOpening(Opening.of(Opening.Kind.WINDOW, m(0.8), m(0.5), m(0.4), m(1)));
        PanelLayout layout = DROPS.plan(wall, METRE);
        assertThat(layout.panels()).extracting(p -> p.places().cutOutM2()).satisfies(areas -> {
            assertThat(areas.get(0)).isEqualTo(0.2, EXACT);
            assertThat(areas.get(1)).isEqualTo(0.22, EXACT);
        });
        assertThat(layout.places().cutOutM2()).isEqualTo(0.42, EXACT);
        assertThat(layout.seamM()).isEqualTo(1, EXACT);
        assertThat(layout.cutOuts()).isEqualTo(2);
    }

    @Test
    void plan_stripWithinAWindow_isTwoPieces() {
        // Window from 0.9 to 2.1: the second strip, 0.98 to 1.98, has wall only below 0.5 and above 1.5 m.
        Wall wall = Wall.rectangle("w", m(3), m(2)).withOpening(Opening.of(Opening.Kind.WINDOW, m(0.9), m(0.5), m(1.2), m(1)));
        PanelLayout layout = DROPS.plan(wall, METRE);
        assertThat(layout.strips()).isEqualTo(4);
        assertThat(layout.panels()).extracting(Panel::strip).containsExactly(1, 2, 2, 3, 4);
        assertThat(layout.panels().get(1).cutLengthSteps()).isEqualTo(mm(500));
        assertThat(layout.panels().get(2).lowerLeft()).isEqualTo(new Point(mm(980), mm(1500)));
    }

    @Test
    void plan_doorToTheTop_dividesTheWall() {
        // 2 m wall with nothing from 0.7 to 1.8: two panels of 0.7 and 0.2 m, no seam.
        Wall wall = Wall.rectangle("w", m(2), m(2)).withOpening(Opening.of(Opening.Kind.DOOR, m(0.7), m(0), m(1.1), m(2)));
        PanelLayout layout = DROPS.plan(wall, METRE);
        assertThat(layout.panels()).extracting(Panel::cutWidthSteps).containsExactly(mm(700), mm(200));
        assertThat(layout.seams()).isEmpty();
        assertThat(layout.places().cutOutM2()).isZero();
    }

    @Test
    void plan_doorAtTheGround_leavesTheLintelToAShortPiece() {
        // Door 1.2 m wide from 0.9, 1.5 m high, ground tuck 30: the second strip, 0.98 to 1.98, needs only the 0.5 m above it.
        Wall wall = Wall.rectangle("w", m(3), m(2)).withEdge(Side.BOTTOM, Edge.of(Edge.Kind.GROUND, m(0.03)))
                .withOpening(Opening.of(Opening.Kind.DOOR, m(0.9), m(0), m(1.2), m(1.5)));
        List<Panel> panels = DROPS.plan(wall, METRE).panels();
        assertThat(panels).extracting(Panel::cutLengthSteps).containsExactly(mm(2030), mm(500), mm(2030), mm(2030));
    }

    @Test
    void plan_turnedInWindow_keepsItsFlaps() {
        // As the strip within a window, turned in by 40: pieces reach 40 into it. 0.5 + 0.04 below, 0.5 + 0.04 above.
        Wall wall = Wall.rectangle("w", m(3), m(2))
                .withOpening(Opening.of(Opening.Kind.WINDOW, m(0.9), m(0.5), m(1.2), m(1)).turnedIn(m(0.04)));
        List<Panel> panels = DROPS.plan(wall, METRE).panels();
        assertThat(panels.get(1).cutLengthSteps()).isEqualTo(mm(540));
        assertThat(panels.get(2).cutLengthSteps()).isEqualTo(mm(540));
        assertThat(panels.get(1).places().cutOutM2()).isZero();
        assertThat(panels.get(1).places().bleedM2()).isEqualTo(0.04 * 1, EXACT);
    }

    @Test
    void plan_leftWhole_cutsNothingOut() {
        Wall wall = Wall.rectangle("w", m(1.5), m(2)).withOpening(
                Opening.of(Opening.Kind.WINDOW, m(0.5), m(0.5), m(0.4), m(1)).withTreatment(Opening.Treatment.LEFT_WHOLE));
        PanelLayout layout = DROPS.plan(wall, METRE);
        assertThat(layout.places().cutOutM2()).isZero();
        assertThat(layout.places().visibleM2()).isEqualTo(3, EXACT);
    }

    @Test
    void plan_step_cutsTheLowPartShort() {
        // Tower to 2 m, 3 m high; low part 1 m high beyond. The third strip 1.96 to 2.96 holds 40 mm of the tower.
        Wall wall = Wall.polygon("s", List.of(Point.of(m(0), m(0)), Point.of(m(4), m(0)), Point.of(m(4), m(1)), Point.of(m(2), m(1)),
                Point.of(m(2), m(3)), Point.of(m(0), m(3))));
        PanelLayout layout = DROPS.plan(wall, METRE);
        assertThat(layout.panels()).extracting(Panel::cutLengthSteps)
                .containsExactly(mm(3000), mm(3000), mm(3000), mm(1000), mm(1000));
        // Beyond the wall, above 1 m: 0.96 * 2 in the third, nothing in the others.
        assertThat(layout.places().trimM2()).isEqualTo(1.92, EXACT);
    }

    @Test
    void plan_bands_goUpFromTheBottomWithTheirEdgesDown() {
        // 3 m wide, 1.5 m high: bands of 1 m and 0.52 m; the upper one is hung second and laps over the lower.
        PanelLayout layout = DROPS.withDirection(Direction.BANDS).plan(Wall.rectangle("w", m(3), m(1.5)), METRE);
        assertThat(layout.panels()).extracting(Panel::cutLengthSteps).containsOnly(mm(3000));
        assertThat(layout.panels()).extracting(Panel::cutWidthSteps).containsExactly(mm(1000), mm(520));
        assertThat(layout.panels().get(1).lowerLeft()).isEqualTo(new Point(0, mm(980)));
        assertThat(layout.panels().get(1).alongSteps()).isEqualTo(mm(3000));
        assertThat(layout.seams()).singleElement().satisfies(s -> assertThat(s.shows()).isEqualTo(Side.BOTTOM));
    }

    @Test
    void plan_bandsFullFromTheTop_areStillHungFromBelow() {
        PanelLayout layout = DROPS.withDirection(Direction.BANDS).withStart(Side.TOP).plan(Wall.rectangle("w", m(3), m(1.5)), METRE);
        assertThat(layout.panels()).extracting(Panel::cutWidthSteps).containsExactly(mm(520), mm(1000));
        assertThat(layout.panels()).extracting(Panel::lowerLeft).containsExactly(new Point(0, 0), new Point(0, mm(500)));
        assertThat(layout.panels().get(0).places().overlapM2()).isZero();
        assertThat(layout.seams().get(0).shows()).isEqualTo(Side.BOTTOM);
    }

    @Test
    void plan_weatherSide_isTheSideThatNoEdgeFaces() {
        Wall wall = Wall.rectangle("w", m(1.5), m(2));
        PanelLayout plain = DROPS.plan(wall, METRE);
        assertThat(plain.seams().get(0).shows()).isEqualTo(Side.LEFT);
        // Weather from the left: hung from right to left, so that the edge on top faces right.
        PanelLayout left = DROPS.withWeatherSide(Side.LEFT).plan(wall, METRE);
        assertThat(left.panels()).extracting(Panel::strip).containsExactly(2, 1);
        assertThat(left.seams().get(0).shows()).isEqualTo(Side.RIGHT);
        assertThat(left.panels().get(1).places().overlapM2()).isEqualTo(0.04, EXACT);
        assertThat(DROPS.withWeatherSide(Side.RIGHT).plan(wall, METRE).seams().get(0).shows()).isEqualTo(Side.LEFT);
        assertThatThrownBy(() -> DROPS.withWeatherSide(Side.TOP)).isInstanceOf(RefusedException.class).hasMessageContaining("Maybe");
    }

    @Test
    void plan_cheapest_isTheOneWithLessFilm() {
        // 3 m by 0.9 m: three drops and a sliver of 60 mm would be 4 * 0.9 = 3.6 m; one band is 3 m.
        PanelLayout layout = DROPS.withDirection(Direction.CHEAPEST).plan(Wall.rectangle("w", m(3), m(0.9)), METRE);
        assertThat(layout.direction()).isEqualTo(Direction.BANDS);
        assertThat(layout.cost()).isEqualTo(3, EXACT);
        // 0.9 m by 3 m: one drop; and a square of 0.9 m: as much film, so drops.
        assertThat(DROPS.withDirection(Direction.CHEAPEST).plan(Wall.rectangle("w", m(0.9), m(3)), METRE).direction())
                .isEqualTo(Direction.DROPS);
        assertThat(DROPS.withDirection(Direction.CHEAPEST).plan(Wall.rectangle("w", m(0.9), m(0.9)), METRE).direction())
                .isEqualTo(Direction.DROPS);
    }

    @Test
    void plan_overlapOutsideTheFilmsRange_isImpossibleWithAReason() {
        PanelLayout layout = DROPS.withOverlap(m(0.06)).plan(Wall.rectangle("w", m(3), m(2)), METRE);
        assertThat(layout.isPossible()).isFalse();
        assertThat(layout.reasons()).singleElement().asString().contains("60.0 mm", "20.0 mm to 50.0 mm");
        assertThat(layout.working().note()).contains("60.0 mm");
        assertThat(DROPS.withOverlap(m(0.05)).plan(Wall.rectangle("w", m(3), m(2)), METRE).isPossible()).isTrue();
    }
}
