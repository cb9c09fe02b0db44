package io.github.bedjoint.layout;

import static io.github.bedjoint.layout.LayoutPlannerTest.m;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.film.Film;
import io.github.bedjoint.survey.DeductionRule;
import io.github.bedjoint.survey.Opening;
import io.github.bedjoint.survey.Point;
import io.github.bedjoint.survey.RandomWalls;
import io.github.bedjoint.survey.Side;
import io.github.bedjoint.survey.Wall;
import io.github.bedjoint.survey.WallAreas;
import io.github.bedjoint.units.Steps;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** Laws that joints across panels keep on any wall. */
class JointsAcrossProperties {
    private static final Film FILM = Film.of("film", m(1.37)).withOverlapRange(m(0.02), m(0.05));
    /** A step or two for each of some hundred panels, at the rates drawn below: slopes meet whole steps from one side or the other. */
    private static final double STEPS = 0.01;

    private static JointPhase phase(Random random, long moved, double perM) {
        long period = 4000 + random.nextInt(8000);
        return new JointPhase(period, random.nextInt(8000) + moved, 400 + random.nextInt(1500), perM);
    }

    private static LayoutPlanner planner(long seed, long dx, long dy, double perM) {
        Random random = new Random(seed);
        boolean bands = random.nextBoolean();
        SeamRules rules = bands
                ? SeamRules.withDefaults().withHeadJoints(phase(random, dx, perM))
                : SeamRules.withDefaults().withBedJoints(phase(random, dy, perM));
        return LayoutPlanner.withDefaults()
                .withRates(new Rates(1 + random.nextInt(9), random.nextInt(5), random.nextInt(3), random.nextInt(2)))
                .withDirection(bands ? Direction.BANDS : Direction.DROPS)
                .withFit(random.nextInt(4) == 0 ? Fit.CHEAPEST : Fit.EQUALISED)
                .withLongestCut(m(0.9 + random.nextInt(20) * 0.1))
                .withJointsAcross(true)
                .withSeamRules(rules);
    }

    private static Wall wall(long seed) {
        return (seed & 1) == 0 ? RandomWalls.stepped(seed, 400) : RandomWalls.gabled(seed);
    }

    private static double cost(PanelLayout layout) {
        return layout.isPossible() ? layout.cost() : Double.POSITIVE_INFINITY;
    }

    @Property(tries = 100)
    void plan_forbiddenJoints_areKeptOffByEveryJointAcross(@ForAll long seed) {
        LayoutPlanner planner = planner(seed, 0, 0, Double.POSITIVE_INFINITY);
        PanelLayout layout = planner.plan(wall(seed), FILM);
        boolean drops = planner.direction() == Direction.DROPS;
        JointPhase phase = (drops ? planner.seamRules().bedJoints() : planner.seamRules().headJoints()).orElseThrow();
        layout.seams().stream().filter(seam -> seam.upright() != drops).forEach(seam -> {
            assertThat(seam.shows()).isEqualTo(drops ? Side.BOTTOM : Side.LEFT);
            long beyond = Math.floorMod(seam.fromSteps() - phase.offsetSteps(), phase.periodSteps());
            assertThat(Math.min(beyond, phase.periodSteps() - beyond)).isGreaterThanOrEqualTo(phase.clearanceSteps());
            assertThat(seam.jointPerM()).isZero();
        });
        assertThat(layout.panels()).allMatch(panel -> panel.cutLengthSteps() <= planner.longestCutSteps());
        if (layout.isPossible()) {
            assertThat(layout.places().visibleM2()).isCloseTo(WallAreas.of(wall(seed), DeductionRule.none()).visibleM2(), within(1e-6));
        }
    }

    @Property(tries = 100)
    void cost_withMoreForbiddenGround_isNeverLess(@ForAll long seed) {
        LayoutPlanner forbidden = planner(seed, 0, 0, Double.POSITIVE_INFINITY);
        double free = cost(forbidden.withSeamRules(SeamRules.withDefaults()).plan(wall(seed), FILM));
        double priced = cost(planner(seed, 0, 0, 0.5).plan(wall(seed), FILM));
        double off = cost(forbidden.plan(wall(seed), FILM));
        assertThat(priced).isGreaterThanOrEqualTo(free - STEPS);
        assertThat(off).isGreaterThanOrEqualTo(priced - STEPS);
    }

    @Property(tries = 100)
    void cost_ofAWallMovedWithItsJoints_isTheSame(@ForAll long seed) {
        long dx = 1_234_567;
        long dy = -76_543;
        Wall wall = wall(seed);
        Wall moved = Wall.polygon(wall.name(), wall.outline().points().stream().map(p -> new Point(p.xSteps() + dx, p.ySteps() + dy)).toList())
                .withOpenings(wall.openings().stream()
                        .map(o -> new Opening(o.kind(), o.leftSteps() + dx, o.bottomSteps() + dy, o.rightSteps() + dx, o.topSteps() + dy,
                                o.treatment(), o.turnSteps()))
                        .toList());
        double perM = (seed & 2) == 0 ? 0.5 : Double.POSITIVE_INFINITY;
        PanelLayout here = planner(seed, 0, 0, perM).plan(wall, FILM);
        PanelLayout there = planner(seed, dx, dy, perM).plan(moved, FILM);
        assertThat(there.isPossible()).isEqualTo(here.isPossible());
        assertThat(there.cost()).isCloseTo(here.cost(), within(1e-9 + 1e-12 * here.cost()));
        assertThat(there.panels()).extracting(Panel::cutLengthSteps).isEqualTo(here.panels().stream().map(Panel::cutLengthSteps).toList());
    }

    @Property(tries = 100)
    void cost_ofAMirroredWall_isTheSame(@ForAll long seed) {
        Wall wall = wall(seed);
        LayoutPlanner planner = planner(seed, 0, 0, 0.5);
        SeamRules mirrored = planner.seamRules().headJoints()
                .map(heads -> SeamRules.withDefaults()
                        .withHeadJoints(new JointPhase(heads.periodSteps(), -heads.offsetSteps(), heads.clearanceSteps(), heads.perM())))
                .orElse(planner.seamRules());
        // Full panels begin on the other side, and joints across bands lap the other way.
        PanelLayout here = planner.withWeatherSide(Side.RIGHT).withStart(Side.LEFT).plan(wall, FILM);
        PanelLayout there = planner.withSeamRules(mirrored)
                .withWeatherSide(Side.LEFT)
                .withStart(Side.RIGHT)
                .plan(RandomWalls.mirrored(wall), FILM);
        assertThat(there.isPossible()).isEqualTo(here.isPossible());
        assertThat(there.cost()).isCloseTo(here.cost(), within(STEPS + Steps.toM(2) * 10 * here.panels().size()));
    }
}
