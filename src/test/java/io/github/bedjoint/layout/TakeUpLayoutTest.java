package io.github.bedjoint.layout;

import static io.github.bedjoint.layout.LayoutPlannerTest.m;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.film.Film;
import io.github.bedjoint.survey.Edge;
import io.github.bedjoint.survey.Side;
import io.github.bedjoint.survey.Wall;
import io.github.bedjoint.texture.JointProfile;
import io.github.bedjoint.texture.MasonrySurface;
import io.github.bedjoint.texture.TakeUp;
import io.github.bedjoint.working.WorkingCheck;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class TakeUpLayoutTest {
    private static final Film FILM = Film.of("film", m(1)).withOverlapRange(m(0.02), m(0.02));

    /** Units 190 x 90 mm, joints 10 mm raked 5 mm: mean stretch up 2 * 5 / 100 = 0.1, along 2 * 5 / 200 = 0.05. */
    private static Wall wall(double width, double height) {
        return Wall.rectangle("north", m(width), m(height))
                .withSurface(MasonrySurface.of(m(0.19), m(0.09), m(0.01), m(0.01), JointProfile.raked(m(0.005))));
    }

    private static PanelLayout plan(Wall wall, Direction direction, TakeUp takeUp) {
        return LayoutPlanner.withDefaults().withDirection(direction).withTakeUp(takeUp).plan(wall, FILM);
    }

    @Test
    void plan_dropWithAllFedInUp_growsByTheMeanStretchButNotItsBleeds() {
        Wall bled = wall(0.9, 2)
                .withEdge(Side.TOP, Edge.of(Edge.Kind.FREE, m(0.03)))
                .withEdge(Side.BOTTOM, Edge.of(Edge.Kind.FREE, m(0.02)));
        Panel panel = plan(bled, Direction.DROPS, new TakeUp(1, 0)).panels().get(0);
        // 2 m * 1.1 + 50 mm = 2.25 m, in steps of 12.5 um: 180000. Width as on the wall: 0.9 m = 72000.
        assertThat(panel.cutLengthSteps()).isEqualTo(180_000);
        assertThat(panel.cutWidthSteps()).isEqualTo(72_000);
        assertThat(panel.upSteps()).isEqualTo(164_000);
        // Fed in: 0.2 m x 0.9 m.
        assertThat(panel.places().takeUpM2()).isCloseTo(0.18, within(1e-12));
        assertThat(panel.places().visibleM2()).isCloseTo(1.8, within(1e-12));
        assertThat(panel.places().bleedM2()).isCloseTo(0.045, within(1e-12));
        WorkingCheck.check(panel.working());
    }

    @Test
    void plan_halfFedInBothWays_growsHalfAsMuch() {
        Panel panel = plan(wall(0.8, 2), Direction.DROPS, new TakeUp(0.5, 0.5)).panels().get(0);
        // 2 m * 1.05 = 2.1 m = 168000; 0.8 m * 1.025 = 0.82 m = 65600. Fed in: 0.82 * 2.1 - 0.8 * 2 = 0.122.
        assertThat(panel.cutLengthSteps()).isEqualTo(168_000);
        assertThat(panel.cutWidthSteps()).isEqualTo(65_600);
        assertThat(panel.places().takeUpM2()).isCloseTo(0.122, within(1e-12));
    }

    @Test
    void plan_bandsOfTheSameWall_turnTheDirections() {
        Panel band = plan(wall(2, 0.8), Direction.BANDS, new TakeUp(1, 1)).panels().get(0);
        // Along the roll lies along the wall: 2 m * 1.05 = 2.1 m; across it 0.8 m * 1.1 = 0.88 m.
        assertThat(band.cutLengthSteps()).isEqualTo(168_000);
        assertThat(band.cutWidthSteps()).isEqualTo(70_400);
    }

    @Test
    void plan_wallThatJustFits_needsOneMorePanelWithTakeUp() {
        // 4 panels of 1 m, overlaps 20 mm: 4 - 3 * 0.02 = 3.94 m of wall.
        assertThat(plan(wall(3.94, 2), Direction.DROPS, TakeUp.NONE).strips()).isEqualTo(4);
        PanelLayout fed = plan(wall(3.94, 2), Direction.DROPS, new TakeUp(0, 1));
        // A panel covers 80000 / 1.05 = 76190 steps, less the overlap 74590: (315200 - 1600) / 74590 = 4.2, so five.
        assertThat(fed.strips()).isEqualTo(5);
        assertThat(fed.places().takeUpM2()).isCloseTo(fed.panels().stream().mapToDouble(panel -> panel.places().takeUpM2()).sum(), within(1e-12)).isPositive();
        assertThat(fed.panels()).allMatch(panel -> panel.cutWidthSteps() <= FILM.printableWidthSteps());
        assertThat(fed.working().find("layout.reach").orElseThrow().result().orElseThrow().longValue()).isEqualTo(76_190);
        WorkingCheck.check(fed.working());
    }

    @Test
    void plan_wallThatReachesTheLongestCut_isTooLongWithTakeUp() {
        LayoutPlanner planner = LayoutPlanner.withDefaults().withLongestCut(m(2.1));
        assertThat(planner.plan(wall(0.9, 2), FILM).isPossible()).isTrue();
        assertThat(planner.withTakeUp(new TakeUp(1, 0)).plan(wall(0.9, 2), FILM).isPossible()).isFalse();
        assertThat(planner.withTakeUp(new TakeUp(0.5, 0)).plan(wall(0.9, 2), FILM).isPossible()).isTrue();
    }

    @Test
    void plan_panelThatWouldCoverNoMoreThanItsOverlaps_saysWhy() {
        Film narrow = Film.of("narrow", m(0.042)).withOverlapRange(m(0.02), m(0.02));
        PanelLayout none = LayoutPlanner.withDefaults().withTakeUp(new TakeUp(0, 1)).plan(wall(1, 1), narrow);
        assertThat(none.reasons()).singleElement().asString().contains("fed in").contains("two overlaps");
    }

    private static Wall bled(double width, double height, double bleed) {
        Wall wall = wall(width, height);
        for (Side side : Side.values()) {
            wall = wall.withEdge(side, Edge.of(Edge.Kind.FREE, m(bleed)));
        }
        return wall;
    }

    /** 0.857 m * 1.05 + 2 * 50 mm = 0.99985 m of the 1 m roll; were film fed in at the bleeds too, 0.957 m * 1.05 = 1.00485 m. */
    @ParameterizedTest
    @EnumSource(Fit.class)
    void plan_wallWithBleedsThatJustFits_isOnePanel(Fit fit) {
        LayoutPlanner planner = LayoutPlanner.withDefaults().withFit(fit).withTakeUp(new TakeUp(0, 1));
        PanelLayout layout = planner.plan(bled(0.857, 2, 0.05), FILM);
        assertThat(layout.panels()).singleElement().satisfies(panel -> assertThat(panel.cutWidthSteps()).isEqualTo(79_988));
        assertThat(planner.plan(bled(0.858, 2, 0.05), FILM).strips()).isEqualTo(2);
        WorkingCheck.check(layout.working());
    }

    /**
     * Four panels of 1 m carry 4 - 0.1 m of bleeds, and three overlaps of 20 mm that take 21 mm of film each:
     * (3.9 - 0.063) / 1.05 = 3.65428 m of wall. Were film fed in at the bleeds too, 4 (1 / 1.05 - 0.02) + 0.02 - 0.1 = 3.6495 m.
     */
    @ParameterizedTest
    @EnumSource(Fit.class)
    void plan_rowWithBleeds_countsThemAsFilmNotAsWall(Fit fit) {
        LayoutPlanner planner = LayoutPlanner.withDefaults().withFit(fit).withTakeUp(new TakeUp(0, 1));
        PanelLayout four = planner.plan(bled(3.654, 2, 0.05), FILM);
        assertThat(four.strips()).isEqualTo(4);
        assertThat(four.panels()).allMatch(panel -> panel.cutWidthSteps() <= FILM.printableWidthSteps());
        assertThat(planner.plan(bled(3.655, 2, 0.05), FILM).strips()).isEqualTo(5);
        WorkingCheck.check(four.working());
    }

    /** 2 m * 1.1 + 2 * 50 mm = 2.3 m. */
    @ParameterizedTest
    @EnumSource(Fit.class)
    void plan_longestCut_holdsForTheFilmNotForTheWall(Fit fit) {
        LayoutPlanner planner = LayoutPlanner.withDefaults().withFit(fit).withTakeUp(new TakeUp(1, 0));
        Wall wall = bled(0.9, 2, 0.05);
        assertThat(planner.withLongestCut(m(2.3)).plan(wall, FILM).panels()).singleElement()
                .satisfies(panel -> assertThat(panel.cutLengthSteps()).isEqualTo(184_000));
        PanelLayout shorter = planner.withLongestCut(m(2.2999)).plan(wall, FILM);
        assertThat(shorter.isPossible()).isFalse();
        assertThat(shorter.reasons()).singleElement().asString().contains("2300.0 mm");
    }

    /** Two pieces: 2.3 m and a lap of 20 mm that takes 22 mm of film, 2.322 m in halves of 1.161 m. */
    @ParameterizedTest
    @EnumSource(Fit.class)
    void plan_jointsAcross_shareTheFilmWithItsBleeds(Fit fit) {
        LayoutPlanner planner = LayoutPlanner.withDefaults().withFit(fit).withTakeUp(new TakeUp(1, 0)).withJointsAcross(true);
        Wall wall = bled(0.9, 2, 0.05);
        PanelLayout two = planner.withLongestCut(m(1.162)).plan(wall, FILM);
        assertThat(two.panels()).hasSize(2).allSatisfy(panel -> assertThat(panel.cutLengthSteps()).isCloseTo(92_880, within(3L)));
        assertThat(planner.withLongestCut(m(1.16)).plan(wall, FILM).panels()).hasSize(3);
    }

    @Test
    void plan_jointsAcrossThatWouldBeAllOverlap_saysThatThePanelIsTooLong() {
        PanelLayout none = LayoutPlanner.withDefaults().withJointsAcross(true).withLongestCut(m(0.11))
                .withOverlap(m(0.06)).plan(wall(0.9, 2), FILM.withOverlapRange(m(0.02), m(0.06)));
        assertThat(none.reasons()).singleElement().asString().contains("longer than the longest cut");
    }

    /** The last panel would show 0.97 m and have 40 mm of bleed: 10 mm more than the roll has. */
    @Test
    void plan_sliverThatTakesWidthFromItsNeighbour_isNoWiderThanTheRoll() {
        Wall wall = Wall.rectangle("north", m(1.93), m(2)).withEdge(Side.RIGHT, Edge.of(Edge.Kind.FREE, m(0.04)));
        assertThat(LayoutPlanner.withDefaults().withLeastSliver(m(0.97)).plan(wall, FILM).isPossible()).isFalse();
        PanelLayout layout = LayoutPlanner.withDefaults().withLeastSliver(m(0.96)).plan(wall, FILM);
        assertThat(layout.panels()).hasSize(2).allMatch(panel -> panel.cutWidthSteps() <= FILM.printableWidthSteps());
    }
}
