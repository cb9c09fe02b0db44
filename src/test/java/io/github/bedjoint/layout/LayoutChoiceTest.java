package io.github.bedjoint.layout;

import static io.github.bedjoint.layout.LayoutPlannerTest.EXACT;
import static io.github.bedjoint.layout.LayoutPlannerTest.METRE;
import static io.github.bedjoint.layout.LayoutPlannerTest.m;
import static io.github.bedjoint.layout.LayoutPlannerTest.mm;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.bedjoint.film.Film;
import io.github.bedjoint.survey.Edge;
import io.github.bedjoint.survey.MovementJoint;
import io.github.bedjoint.survey.Opening;
import io.github.bedjoint.survey.Point;
import io.github.bedjoint.survey.Side;
import io.github.bedjoint.survey.Wall;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.working.WorkingCheck;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Choices worked by hand: places of seams, windows over and under, drops that are too long, several films. */
class LayoutChoiceTest {
    private static final LayoutPlanner CHEAPEST = LayoutPlanner.withDefaults().withFit(Fit.CHEAPEST).withStart(Side.LEFT);

    @Test
    void plan_step_putsASeamWhereTheTowerEnds() {
        Wall wall = Wall.polygon("s", List.of(Point.of(m(0), m(0)), Point.of(m(2.94), m(0)), Point.of(m(2.94), m(1)), Point.of(m(0.98), m(1)),
                Point.of(m(0.98), m(3)), Point.of(m(0), m(3))));
        // Tower 0.98 and overlap 0.02: one panel of 3 m covers it with the seam beyond its side; the low part, 0.98 to 2.94, takes
        // two panels of 1 m: 0.98 to 1.98 and 1.96 to 2.94. In all 5 m.
        PanelLayout layout = CHEAPEST.plan(wall, METRE);
        assertThat(layout.filmM()).isEqualTo(5, EXACT);
        assertThat(layout.panels()).extracting(Panel::cutLengthSteps).containsExactly(mm(3000), mm(1000), mm(1000));
    }

    @ParameterizedTest
    @CsvSource({
        // A strip that falls within a window 1 m high saves 1 m of film at a rate of 1, and costs one panel more.
        "0.5, 5, 7.0",
        "1.5, 4, 8.0"
    })
    void plan_windowWiderThanAPanel_isSplitWhereThatIsCheaper(double perPanel, int panels, double film) {
        // Wall 3.9 x 2 m, window from 0.9 to 2.5 m: four strips; the second, 0.98 to 1.98, lies within it.
        Wall wall = Wall.rectangle("w", m(3.9), m(2)).withOpening(Opening.of(Opening.Kind.WINDOW, m(0.9), m(0.5), m(1.6), m(1)));
        PanelLayout layout = LayoutPlanner.withDefaults().withRates(new Rates(1, perPanel, 0, 0)).plan(wall, METRE);
        assertThat(layout.panels()).hasSize(panels);
        assertThat(layout.filmM()).isEqualTo(film, EXACT);
    }

    /** Neither pieces of 3 m nor longer ones: the search for longer ones must end too. */
    @Test
    void plan_noPlaceForSeamsAndRollsOfOneLength_saysWhy() {
        Wall wall = Wall.rectangle("w", m(1.9), m(2)).withOpening(Opening.of(Opening.Kind.WINDOW, m(0.5), m(0.5), m(1), m(1)));
        // The overlap must lie between 0.90 and 1.00 m, within the window from 0.5 to 1.5 m and 0.4 m or more off its jambs.
        PanelLayout layout = CHEAPEST.withSeamRules(SeamRules.withDefaults().withJambClearance(m(0.6))).withLongestCut(m(3)).plan(wall, METRE);
        assertThat(layout.isPossible()).isFalse();
        assertThat(layout.reasons()).singleElement().asString().startsWith("no places for seams");
    }

    @Test
    void plan_jambClearance_keepsOverlapsOffTheJambs() {
        Wall wall = Wall.rectangle("w", m(1.9), m(2)).withOpening(Opening.of(Opening.Kind.WINDOW, m(0.5), m(0.5), m(0.5), m(1)));
        // Two panels of 1 m reach 1.98, so the overlap may begin between 0.90 and 0.98 m; at the least 80 mm off the jamb at 1 m it
        // must end at 0.92: only 0.90 is left.
        PanelLayout layout = CHEAPEST.withSeamRules(SeamRules.withDefaults().withJambClearance(m(0.08))).plan(wall, METRE);
        assertThat(layout.seams()).singleElement().satisfies(s -> assertThat(s.fromSteps()).isEqualTo(mm(900)));
        PanelLayout three = CHEAPEST.withSeamRules(SeamRules.withDefaults().withJambClearance(m(0.081))).plan(wall, METRE);
        assertThat(three.strips()).isEqualTo(3);
    }

    @Test
    void plan_neverCovered_hasNoSeamOverIt() {
        Wall wall = Wall.rectangle("w", m(1.9), m(2)).withOpening(Opening.of(Opening.Kind.VENT, m(0.85), m(0.5), m(0.1), m(0.1)));
        PanelLayout layout = CHEAPEST.plan(wall, METRE);
        assertThat(layout.seams()).hasSize(1).allMatch(s -> s.fromSteps() + s.overlapSteps() <= mm(850) || s.fromSteps() >= mm(950));
    }

    @Test
    void plan_headJoints_keepTheEdgeOnFaces() {
        // Joints every 225 mm from 0, 10 mm off: the edge on top, where the overlap begins, may lie from 0.910 to 0.980 but not from
        // 0.890 to 0.910.
        Wall wall = Wall.rectangle("w", m(1.89), m(2));
        SeamRules rules = SeamRules.withDefaults().withHeadJoints(JointPhase.forbidden(m(0.225), m(0), m(0.01)));
        PanelLayout layout = CHEAPEST.withSeamRules(rules).plan(wall, METRE);
        assertThat(layout.seams()).hasSize(1).allMatch(s -> Math.floorMod(s.fromSteps(), mm(225)) >= mm(10)
                && Math.floorMod(s.fromSteps(), mm(225)) <= mm(215));
        // Hung from the right, the edge on top is where the overlap ends.
        PanelLayout fromRight = CHEAPEST.withWeatherSide(Side.LEFT).withSeamRules(rules).plan(wall, METRE);
        assertThat(fromRight.seams()).hasSize(1)
                .allMatch(s -> Math.floorMod(s.fromSteps() + s.overlapSteps(), mm(225)) >= mm(10)
                        && Math.floorMod(s.fromSteps() + s.overlapSteps(), mm(225)) <= mm(215));
    }

    @Test
    void plan_pricedJoint_isTakenWhereItIsCheaperThanAPanel() {
        // 1.98 m in two panels allows one place only: the overlap from 0.98. There is a joint; three panels would cost 2 m more.
        Wall wall = Wall.rectangle("w", m(1.98), m(2));
        SeamRules cheap = SeamRules.withDefaults().withHeadJoints(JointPhase.priced(m(0.245), m(0), m(0.01), 0.5));
        PanelLayout layout = CHEAPEST.withSeamRules(cheap).plan(wall, METRE);
        assertThat(layout.strips()).isEqualTo(2);
        // 4 m of film and 2 m of seam at 0.5.
        assertThat(layout.cost()).isEqualTo(5, EXACT);
        WorkingCheck.check(layout.working());
        SeamRules dear = SeamRules.withDefaults().withHeadJoints(JointPhase.priced(m(0.245), m(0), m(0.01), 5));
        assertThat(CHEAPEST.withSeamRules(dear).plan(wall, METRE).strips()).isEqualTo(3);
    }

    @Test
    void plan_movementJoint_cutsTheFilm() {
        Wall wall = Wall.rectangle("w", m(1.5), m(2)).withMovementJoints(List.of(MovementJoint.upright(m(0.7))));
        for (Fit fit : Fit.values()) {
            PanelLayout drops = LayoutPlanner.withDefaults().withFit(fit).plan(wall, METRE);
            assertThat(drops.panels()).extracting(Panel::cutWidthSteps).containsExactly(mm(700), mm(800));
            assertThat(drops.seams()).isEmpty();
            PanelLayout bands = LayoutPlanner.withDefaults().withFit(fit).withDirection(Direction.BANDS).plan(wall, METRE);
            assertThat(bands.panels()).extracting(Panel::cutLengthSteps).containsOnly(mm(700), mm(800)).hasSize(6);
            assertThat(bands.places().visibleM2()).isEqualTo(3, EXACT);
        }
        assertThatThrownBy(() -> wall.withMovementJoints(List.of(MovementJoint.level(m(2))))).isInstanceOf(RefusedException.class);
    }

    @Test
    void plan_dropLongerThanAnyRoll_offersWhatElseThereIs() {
        // 2 m wide, 5 m high, cuts of 3 m at most. Bands: six of 2 m, 12 m. A joint across: three strips of 5.02 m, 15.06 m.
        // A longer roll: three drops of 5 m.
        Wall wall = Wall.rectangle("w", m(2), m(5));
        PanelLayout layout = LayoutPlanner.withDefaults().withLongestCut(m(3)).plan(wall, METRE);
        assertThat(layout.isPossible()).isFalse();
        assertThat(layout.reasons()).singleElement().asString().contains("5000.0 mm", "3000.0 mm");
        assertThat(layout.alternatives()).extracting(Alternative::what)
                .containsExactly("bands", "a joint across", "a roll that yields 5000.0 mm");
        assertThat(layout.alternatives()).extracting(a -> a.layout().panels().size()).containsExactly(6, 6, 3);
        assertThat(layout.alternatives().get(0).layout().cost()).isEqualTo(12, EXACT);
        assertThat(layout.alternatives().get(0)).hasToString("bands: w: 6 panels in 6 bands, 12 m of film, cost 12");
        assertThat(layout.alternatives().get(1).layout().cost()).isEqualTo(15.06, EXACT);
        assertThat(layout.alternatives().get(2).layout().cost()).isEqualTo(15, EXACT);
    }

    @Test
    void plan_jointAcross_lapsTheUpperPieceOverTheLower() {
        Wall wall = Wall.rectangle("w", m(1.5), m(5));
        PanelLayout layout = LayoutPlanner.withDefaults().withLongestCut(m(3)).withJointsAcross(true).plan(wall, METRE);
        // 5.02 m in two: 2.51 each; the upper one begins at 2.49.
        assertThat(layout.panels()).extracting(Panel::cutLengthSteps).containsOnly(mm(2510)).hasSize(4);
        assertThat(layout.panels().get(1).lowerLeft()).isEqualTo(new Point(0, mm(2490)));
        // Level seams 1 m and 0.52 m, upright one 5 m: the square where four panels meet lies under all of them.
        assertThat(layout.seamM()).isEqualTo(6.52, EXACT);
        assertThat(layout.overlapM2()).isEqualTo(0.1304, EXACT);
        assertThat(layout.seams()).filteredOn(s -> !s.upright()).hasSize(2).allMatch(s -> s.shows() == Side.BOTTOM);
        assertThat(layout.places().visibleM2()).isEqualTo(7.5, EXACT);
        Raster.assertSame(wall, layout.panels());
    }

    @Test
    void best_several_differInTheLengthsOfTheirPanels() {
        Wall wall = Wall.polygon("g", List.of(Point.of(m(0), m(0)), Point.of(m(5), m(0)), Point.of(m(5), m(2)), Point.of(m(2.2), m(4)),
                Point.of(m(0), m(3))));
        List<PanelLayout> best = CHEAPEST.best(wall, METRE, 5);
        assertThat(best).hasSize(5);
        assertThat(best).isSortedAccordingTo(java.util.Comparator.comparingDouble(PanelLayout::cost));
        assertThat(best).extracting(l -> l.panels().stream().map(Panel::cutLengthSteps).sorted().toList()).doesNotHaveDuplicates();
        assertThat(best.get(0).cost()).isEqualTo(CHEAPEST.plan(wall, METRE).cost());
    }

    @Test
    void best_ofSeveralFilms_isTheCheapestAtItsOwnRate() {
        // 2.9 m wide, 2 m high: three panels of the 1 m film at 5 a metre: 30; two of the 1.5 m film at 7 a metre: 28, at 8: 32.
        Wall wall = Wall.rectangle("w", m(2.9), m(2));
        Film wide = Film.of("wide film", m(1.5)).withOverlapRange(m(0.02), m(0.05));
        RatedFilm narrow = new RatedFilm(METRE, new Rates(5, 0, 0, 0));
        List<PanelLayout> best = LayoutPlanner.withDefaults().best(wall, List.of(narrow, new RatedFilm(wide, new Rates(7, 0, 0, 0))), 2);
        assertThat(best).extracting(PanelLayout::cost).containsExactly(28.0, 30.0);
        assertThat(LayoutPlanner.withDefaults().best(wall, List.of(narrow, new RatedFilm(wide, new Rates(8, 0, 0, 0))), 1))
                .singleElement().satisfies(l -> assertThat(l.film()).isEqualTo(METRE));
        assertThatThrownBy(() -> CHEAPEST.best(wall, List.of(), 1)).isInstanceOf(RefusedException.class);
        assertThatThrownBy(() -> CHEAPEST.best(wall, METRE, 0)).isInstanceOf(RefusedException.class);
    }

    @ParameterizedTest
    @CsvSource({"0.225, 0.1125", "0.225, 0.2", "0.225, 0", "0.001, 0.0001"})
    void jointPhase_clearancesThatMeet_areRefused(double period, double clearance) {
        assertThatThrownBy(() -> JointPhase.forbidden(m(period), m(0), m(clearance))).isInstanceOf(RefusedException.class);
    }

    @Test
    void rates_badNumbers_areRefused() {
        for (double bad : new double[] {-1, Double.NaN, Double.POSITIVE_INFINITY, 2e12}) {
            assertThatThrownBy(() -> new Rates(bad, 0, 0, 0)).isInstanceOf(RefusedException.class);
            assertThatThrownBy(() -> new Rates(0, bad, 0, 0)).isInstanceOf(RefusedException.class);
            assertThatThrownBy(() -> new Rates(0, 0, bad, 0)).isInstanceOf(RefusedException.class);
            assertThatThrownBy(() -> new Rates(0, 0, 0, bad)).isInstanceOf(RefusedException.class);
        }
    }

    @ParameterizedTest
    @CsvSource({
        // The gap of 1 m costs 1 of film; a cut-out more comes to it, and one panel more is dearer or not.
        "1.0, 0,   5", "1.1, 0,   4", "1.5, 0.4, 4", "1.5, 0.5, 5", "1.5, 1, 5"})
    void plan_stripWithinAWindow_isSplitWhereFilmAndCutOutCostNoLess(double perPanel, double perCutOut, int panels) {
        Wall wall = Wall.rectangle("w", m(3.9), m(2)).withOpening(Opening.of(Opening.Kind.WINDOW, m(0.9), m(0.5), m(1.6), m(1)));
        assertThat(LayoutPlanner.withDefaults().withRates(new Rates(1, perPanel, 0, perCutOut)).plan(wall, METRE).panels()).hasSize(panels);
    }

    @Test
    void plan_windowBesideASeam_isCutOutOnceWhereThatCosts() {
        // Two panels of 1 m on 1.9 m: the overlap begins from 0.90 to 0.98 m. A window from 0.905 to 0.915 m lies under both if it begins at 0.90.
        Wall wall = Wall.rectangle("w", m(1.9), m(2)).withOpening(Opening.of(Opening.Kind.WINDOW, m(0.905), m(0.5), m(0.01), m(1)));
        PanelLayout layout = CHEAPEST.withRates(new Rates(1, 0, 0, 0.5)).plan(wall, METRE);
        assertThat(layout.cutOuts()).isEqualTo(1);
        assertThat(layout.cost()).isEqualTo(4.5, EXACT);
    }

    @Test
    void plan_sliverOfTwoOverlaps_isTheLeastWithoutAnotherLimit() {
        // Overlaps of 50 mm: on 1.04 m the second panel would show 90 mm, so it begins 10 mm before.
        PanelLayout layout = LayoutPlanner.withDefaults().withOverlap(m(0.05)).withLeastSliver(m(0)).plan(Wall.rectangle("w", m(1.04), m(2)), METRE);
        assertThat(layout.panels()).extracting(Panel::cutWidthSteps).containsExactly(mm(990), mm(100));
    }

    @Test
    void plan_bleedsThatMeetAcrossANotch_saysWhy() {
        // A slot of 20 mm from above, and bleeds of 20 mm into it from both sides.
        Wall slotted = Wall.polygon("s", List.of(Point.of(m(0), m(0)), Point.of(m(2), m(0)), Point.of(m(2), m(2)), Point.of(m(1.02), m(2)),
                        Point.of(m(1.02), m(1)), Point.of(m(1), m(1)), Point.of(m(1), m(2)), Point.of(m(0), m(2))))
                .withEdge(Side.LEFT, Edge.of(Edge.Kind.FREE, m(0.02)))
                .withEdge(Side.RIGHT, Edge.of(Edge.Kind.FREE, m(0.02)));
        assertThat(LayoutPlanner.withDefaults().plan(slotted, METRE).reasons()).singleElement().asString().contains("meet across a notch");
    }

    @Test
    void plan_moreThanTwoThousandPanels_saysSo() {
        // Tape of 100 mm with overlaps of 20 mm: 2000 panels reach 2000 x 0.08 + 0.02 m.
        Film tape = Film.of("tape", m(0.1)).withOverlapRange(m(0.02), m(0.02));
        assertThat(LayoutPlanner.withDefaults().plan(Wall.rectangle("w", m(160.02), m(1)), tape).strips()).isEqualTo(2000);
        assertThat(LayoutPlanner.withDefaults().plan(Wall.rectangle("w", m(160.0200125), m(1)), tape).reasons())
                .singleElement().asString().startsWith("more than 2000 panels");
    }

    /** 5.02 m in two pieces of 2.51 m. Weather from the left: the right piece is hung first, and the edge of the left one faces right. */
    @ParameterizedTest
    @CsvSource({"RIGHT, 0, 2490, LEFT", "LEFT, 2490, 0, RIGHT"})
    void plan_bandJoinedAcross_isHungTowardsTheWeather(Side weather, double first, double second, Side shows) {
        PanelLayout layout = LayoutPlanner.withDefaults().withDirection(Direction.BANDS).withLongestCut(m(3)).withJointsAcross(true)
                .withWeatherSide(weather).plan(Wall.rectangle("w", m(5), m(0.9)), METRE);
        assertThat(layout.panels()).extracting(Panel::lowerLeft).containsExactly(new Point(mm(first), 0), new Point(mm(second), 0));
        assertThat(layout.panels()).extracting(panel -> panel.places().overlapM2() > 0).containsExactly(false, true);
        assertThat(layout.seams()).singleElement().satisfies(seam -> {
            assertThat(seam.upright()).isTrue();
            assertThat(seam.fromSteps()).isEqualTo(mm(2490));
            assertThat(seam.overlapSteps()).isEqualTo(mm(20));
            assertThat(seam.lengthM()).isEqualTo(0.9, EXACT);
            assertThat(seam.shows()).isEqualTo(shows);
        });
    }

    @Test
    void best_fromEitherSideOfARectangle_isOneLayout() {
        assertThat(LayoutPlanner.withDefaults().withCheapestStart().best(Wall.rectangle("w", m(2.5), m(2)), METRE, 9)).hasSize(1);
    }
}
