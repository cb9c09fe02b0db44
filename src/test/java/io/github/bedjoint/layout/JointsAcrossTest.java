package io.github.bedjoint.layout;

import static io.github.bedjoint.layout.LayoutPlannerTest.m;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.film.Film;
import io.github.bedjoint.survey.Edge;
import io.github.bedjoint.survey.Opening;
import io.github.bedjoint.survey.Point;
import io.github.bedjoint.survey.RandomWalls;
import io.github.bedjoint.survey.Side;
import io.github.bedjoint.survey.Wall;
import io.github.bedjoint.units.Steps;
import io.github.bedjoint.working.WorkingCheck;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where panels that are longer than any roll are joined across: worked by hand on courses of 75 mm, and against every place of a grid. */
class JointsAcrossTest {
    private static final Film METRE = Film.of("film", m(1)).withOverlapRange(m(0.02), m(0.05));
    private static final Wall TOWER = Wall.rectangle("tower", m(1), m(5));
    private static final LayoutPlanner JOINED = LayoutPlanner.withDefaults().withLongestCut(m(3)).withJointsAcross(true);

    private static JointPhase joints(double offsetMm, double clearanceMm) {
        return JointPhase.forbidden(m(0.075), m(offsetMm / 1000), m(clearanceMm / 1000));
    }

    private static List<Double> heights(PanelLayout layout) {
        return layout.panels().stream().skip(1).map(p -> Steps.toM(p.lowerLeft().ySteps()) * 1000).toList();
    }

    /**
     * A tower of 5 m in two pieces with an overlap of 20 mm: alike they are 2510 mm long, and the upper one begins at 2490 mm. Bed joints
     * lie at the offset and each 75 mm above; 33 courses are 2475 mm.
     */
    @ParameterizedTest
    @CsvSource({
        "0, 10, 3.000, 2490, the bed joint at 2475 mm is 15 mm away",
        "0, 15, 3.000, 2490, just as near as it may come",
        "0, 20, 3.000, 2495, 5 mm up rather than 35 mm down to 2455 mm",
        "12, 10, 3.000, 2497, 7 mm up rather than 13 mm down from the bed joint at 2487 mm",
        "-55, 10, 3.000, 2485, the bed joint at 34 courses less 55 mm is at 2495 mm: 5 mm down rather than 15 mm up",
        "12, 10, 2.517, 2497, as high as a lower piece of 2517 mm reaches"})
    void plan_towerOnCourses_joinsOffTheBedJoints(double offset, double clearance, double longest, double height, String why) {
        PanelLayout layout = JOINED.withLongestCut(m(longest))
                .withSeamRules(SeamRules.withDefaults().withBedJoints(joints(offset, clearance)))
                .plan(TOWER, METRE);
        assertThat(heights(layout)).as(why).containsExactly(height);
        assertThat(layout.filmM()).isEqualTo(5.02, within(1e-9));
        assertThat(layout.places().visibleM2()).isEqualTo(5, within(1e-9));
    }

    @Test
    void plan_noPlaceBetweenTwoPieces_takesThree() {
        // Two pieces of 2515 mm leave 2485 to 2495 mm, all of it within 10 mm of the bed joint at 2487 mm. Three alike begin at 0, 1660 and
        // 3320 mm, both within reach of joints at 1662 and 3312 mm. Of 1652 or 1672 mm with 3302 or 3322 mm the pieces of 1672, 1690 and
        // 1678 mm are the most alike.
        LayoutPlanner tight = JOINED.withLongestCut(m(2.515)).withSeamRules(SeamRules.withDefaults().withBedJoints(joints(12, 10)));
        for (Fit fit : List.of(Fit.FULL_WIDTH, Fit.CHEAPEST)) {
            PanelLayout layout = tight.withFit(fit).plan(TOWER, METRE);
            assertThat(heights(layout)).containsExactly(1652.0, 3322.0);
            assertThat(layout.filmM()).isEqualTo(5.04, within(1e-9));
        }
    }

    @Test
    void plan_pricedBedJoint_isPaidWhereAnotherPieceCostsMore() {
        JointPhase priced = JointPhase.priced(m(0.075), m(0.012), m(0.01), 1.5);
        LayoutPlanner tight = JOINED.withLongestCut(m(2.515)).withSeamRules(SeamRules.withDefaults().withBedJoints(priced));
        // One more piece takes 20 mm of film more; the joint in two would cost 1.50 for its metre.
        assertThat(heights(tight.plan(TOWER, METRE))).containsExactly(1652.0, 3322.0);
        PanelLayout paid = tight.withRates(new Rates(1, 2, 0.25, 0)).plan(TOWER, METRE);
        assertThat(heights(paid)).containsExactly(2490.0);
        assertThat(paid.seams()).singleElement().satisfies(seam -> assertThat(seam.jointPerM()).isEqualTo(1.5));
        // 5.02 m of film, two panels, a metre of seam, a metre in a joint.
        assertThat(paid.cost()).isEqualTo(5.02 + 4 + 0.25 + 1.5, within(1e-9));
        WorkingCheck.check(paid.working());
    }

    @ParameterizedTest
    @CsvSource({
        "RIGHT, 20, 2485, the left piece first: the right one's edge at 2490 mm is 5 mm from the head joint at 2495 mm",
        "LEFT, 20, 2490, the right piece first: the left one's edge at 2510 mm keeps 15 mm",
        "LEFT, 32, 2497, its edge at 2510 mm is 3 mm from the head joint at 2507 mm: 7 mm on rather than 13 mm back"})
    void plan_band_joinsOffTheHeadJointsByTheEdgeOnTop(Side weather, double offset, double left, String why) {
        Wall plinth = Wall.rectangle("plinth", m(5), m(1));
        PanelLayout layout = JOINED.withDirection(Direction.BANDS)
                .withWeatherSide(weather)
                .withSeamRules(SeamRules.withDefaults().withHeadJoints(joints(offset, 10)).withBedJoints(joints(0, 30)))
                .plan(plinth, METRE);
        long begin = layout.panels().stream().mapToLong(p -> p.lowerLeft().xSteps()).max().orElseThrow();
        assertThat(Steps.toM(begin) * 1000).as(why).isEqualTo(left);
    }

    @Test
    void plan_seamsThatCost_joinsOverAWindow() {
        // The window leaves 400 mm of the metre; the lowest place within it is the nearest to the middle.
        Wall wall = TOWER.withOpening(Opening.of(Opening.Kind.WINDOW, m(0.2), m(2.6), m(0.6), m(0.3)));
        PanelLayout layout = JOINED.withRates(new Rates(8, 4, 2, 0)).plan(wall, METRE);
        assertThat(heights(layout)).containsExactly(2600.0);
        assertThat(layout.seamM()).isEqualTo(0.4, within(1e-9));
        // To cut the window out of both pieces costs more than the 600 mm of seam.
        assertThat(heights(JOINED.withRates(new Rates(8, 4, 2, 3)).plan(wall, METRE))).containsExactly(2490.0);
        PanelLayout clear = JOINED.withRates(new Rates(8, 4, 2, 0))
                .withSeamRules(SeamRules.withDefaults().withJambClearance(m(0.15)))
                .plan(wall, METRE);
        // 150 mm below its sill at 2600 mm, less the overlap; within it are only 300 mm.
        assertThat(heights(clear)).containsExactly(2430.0);
    }

    @Test
    void plan_gable_joinsAsHighAsTheLowerPieceReaches() {
        Wall gable = Wall.polygon("gable", List.of(Point.of(m(0), m(0)), Point.of(m(1), m(0)), Point.of(m(1), m(2)), Point.of(m(0.5), m(4)),
                Point.of(m(0), m(2))));
        PanelLayout layout = JOINED.withRates(new Rates(8, 4, 2, 0)).plan(gable, METRE);
        assertThat(heights(layout)).containsExactly(2980.0);
        // Half-way up the overlap, at 2990 mm, the gable is 1010 / 2000 of a metre wide.
        assertThat(layout.seamM()).isEqualTo(0.505, within(1e-9));
        // The bed joint at 3000 mm, 40 courses, pushes it down to 30 mm below.
        PanelLayout off = JOINED.withRates(new Rates(8, 4, 2, 0))
                .withSeamRules(SeamRules.withDefaults().withBedJoints(joints(0, 30)))
                .plan(gable, METRE);
        assertThat(heights(off)).containsExactly(2970.0);
    }

    @Test
    void plan_ventThatIsNeverCovered_isNotCrossed() {
        Wall wall = TOWER.withOpening(Opening.of(Opening.Kind.VENT, m(0.4), m(2.4), m(0.2), m(0.19)));
        // Up to 2590 mm rather than down to 2400 less the overlap.
        assertThat(heights(JOINED.plan(wall, METRE))).containsExactly(2590.0);
    }

    @Test
    void plan_dropBesideAHigherPartsBleed_isJoinedTooWhereItShowsNoWall() {
        // The first drop ends at 950 mm, 30 mm into the bleed of the part that is 5 m high; of wall it shows no more than 1 m.
        Wall wall = Wall.polygon("step", List.of(Point.of(m(0), m(0)), Point.of(m(2), m(0)), Point.of(m(2), m(5)), Point.of(m(0.97), m(5)),
                        Point.of(m(0.97), m(1)), Point.of(m(0), m(1))))
                .withEdge(Side.LEFT, Edge.of(Edge.Kind.FREE, m(0.05)));
        PanelLayout layout = JOINED.plan(wall, METRE);
        assertThat(layout.panels().get(0).lowerLeft()).isEqualTo(Point.of(m(-0.05), m(0)));
        assertThat(layout.panels()).hasSizeGreaterThan(3).allMatch(panel -> panel.cutLengthSteps() <= 3 * Steps.PER_METRE);
        assertThat(layout.places().visibleM2()).isEqualTo(0.97 + 1.03 * 5, within(1e-9));
    }

    @Test
    void plan_noPlaceAtAll_saysSo() {
        JointPhase everywhere = JointPhase.forbidden(m(10), m(2.5), m(2.4));
        LayoutPlanner planner = JOINED.withSeamRules(SeamRules.withDefaults().withBedJoints(everywhere));
        for (Fit fit : List.of(Fit.FULL_WIDTH, Fit.CHEAPEST)) {
            PanelLayout layout = planner.withFit(fit).plan(TOWER, METRE);
            assertThat(layout.reasons()).containsExactly("a panel of 5000.0 mm is longer than the longest cut, 3000.0 mm, and no place for a"
                    + " joint across it keeps the clearances, the joints and the least sliver");
            assertThat(layout.alternatives()).extracting(Alternative::what).contains("a roll that yields 5000.0 mm");
        }
    }

    @Test
    void plan_150SteppedWallsInOneDrop_costWhatTheBestOfAllPlacesDoes() {
        int joined = 0;
        for (int seed = 0; seed < 150; seed++) {
            Random random = new Random(seed);
            Wall wall = RandomWalls.stepped(seed, 280);
            Rates rates = new Rates(1, random.nextInt(3) * 0.2, random.nextInt(3) * 0.2, random.nextInt(3) * 0.1);
            int longest = 60 + random.nextInt(200);
            int period = 8 + random.nextInt(40);
            JointPhase beds = new JointPhase(period * RandomWalls.GRID, random.nextInt(period) * RandomWalls.GRID,
                    (1 + random.nextInt(3)) * RandomWalls.GRID, random.nextBoolean() ? Double.POSITIVE_INFINITY : 0.1);
            int n = (int) (wall.heightSteps() / RandomWalls.GRID);
            double[] widthM = new double[n];
            for (int row = 0; row < n; row++) {
                widthM[row] = widthM(wall, row);
            }
            if (n <= longest || Arrays.stream(widthM).anyMatch(w -> w == 0)) {
                continue;
            }
            PanelLayout layout = LayoutPlanner.withDefaults()
                    .withRates(rates)
                    .withLongestCut(m(longest * 0.01))
                    .withJointsAcross(true)
                    .withSeamRules(SeamRules.withDefaults().withBedJoints(beds))
                    .plan(wall, Film.of("wide", m(2.8)).withOverlapRange(m(0.02), m(0.05)));
            double least = leastCost(wall, rates, beds, longest, widthM);
            assertThat(layout.isPossible()).as("seed " + seed).isEqualTo(least < Double.POSITIVE_INFINITY);
            if (layout.isPossible()) {
                joined++;
                assertThat(layout.cost()).as("seed " + seed).isCloseTo(least, within(1e-9));
            }
        }
        assertThat(joined).isGreaterThan(60);
    }

    /** The wall seen in a row of the grid, cell by cell. */
    private static double widthM(Wall wall, int row) {
        long g = RandomWalls.GRID;
        long y = row * g + g / 2;
        long cells = LongStream.range(0, wall.widthSteps() / g)
                .map(i -> i * g + g / 2)
                .filter(x -> RandomWalls.isInside(wall, x, y))
                .filter(x -> wall.openings().stream().noneMatch(o ->
                        o.leftSteps() < x && x < o.rightSteps() && o.bottomSteps() < y && y < o.topSteps()))
                .count();
        return Steps.toM(cells * g);
    }

    /** The least cost of one drop in pieces, with overlaps of two rows and pieces of ten rows at least, over all rows. */
    private static double leastCost(Wall wall, Rates rates, JointPhase beds, int longest, double[] widthM) {
        int n = widthM.length;
        double[] least = new double[n + 1];
        Arrays.fill(least, Double.POSITIVE_INFINITY);
        double all = Double.POSITIVE_INFINITY;
        for (int end = 10; end <= n; end++) {
            double before = end <= longest ? rates.perPanel() + rates.filmPerM() * end * 0.01 : Double.POSITIVE_INFINITY;
            for (int begin = Math.max(1, end - longest); begin <= end - 10; begin++) {
                before = Math.min(before, least[begin] + rates.perPanel() + rates.filmPerM() * (end - begin) * 0.01);
            }
            if (end == n) {
                all = before;
            } else {
                int joint = end - 2;
                long away = Math.floorMod(joint * RandomWalls.GRID - beds.offsetSteps(), beds.periodSteps());
                boolean near = Math.min(away, beds.periodSteps() - away) < beds.clearanceSteps();
                int cut = cutTwice(wall, joint * RandomWalls.GRID, end * RandomWalls.GRID);
                least[joint] = before + (rates.seamPerM() + (near ? beds.perM() : 0)) * (widthM[joint] + widthM[joint + 1]) / 2
                        + rates.perCutOut() * cut;
            }
        }
        return all + rates.perCutOut() * wall.openings().size();
    }

    private static int cutTwice(Wall wall, long from, long to) {
        return (int) wall.openings().stream().filter(o -> o.bottomSteps() < to && from < o.topSteps()).count();
    }
}
