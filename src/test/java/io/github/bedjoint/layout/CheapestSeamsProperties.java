package io.github.bedjoint.layout;

import static io.github.bedjoint.layout.LayoutPlannerTest.m;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.film.Film;
import io.github.bedjoint.survey.Opening;
import io.github.bedjoint.survey.Point;
import io.github.bedjoint.survey.RandomWalls;
import io.github.bedjoint.survey.Side;
import io.github.bedjoint.survey.Wall;
import io.github.bedjoint.units.Steps;
import io.github.bedjoint.working.WorkingCheck;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** Laws that the cheapest seams keep on any wall. */
class CheapestSeamsProperties {
    private static final Film FILM = Film.of("film", m(1.37)).withOverlapRange(m(0.02), m(0.05));

    /** A step or two for each panel, at the dearest film drawn below: slopes meet whole steps from one side or the other. */
    private static final double STEPS = 10 * Steps.toM(2);

    private static LayoutPlanner planner(long seed) {
        Random random = new Random(seed);
        SeamRules rules = SeamRules.withDefaults()
                .withJambClearance(m(random.nextInt(3) * 0.03))
                .withCornerClearance(m(random.nextInt(3) * 0.04));
        return LayoutPlanner.withDefaults()
                .withFit(Fit.CHEAPEST)
                .withLeastSliver(m(random.nextInt(2) * 0.1))
                .withRates(new Rates(1 + random.nextInt(9), random.nextInt(5), random.nextInt(3), random.nextInt(2)))
                .withSeamRules(rules)
                .withDirection(random.nextInt(4) == 0 ? Direction.BANDS : Direction.DROPS);
    }

    private static Wall wall(long seed) {
        return LayoutProperties.edged((seed & 1) == 0 ? RandomWalls.stepped(seed, 400) : RandomWalls.gabled(seed), seed);
    }

    private static double cost(PanelLayout layout) {
        return layout.isPossible() ? layout.cost() : Double.POSITIVE_INFINITY;
    }

    @Property
    void cost_isNeverMoreThanThatOfFullOrEqualPanels(@ForAll long seed) {
        LayoutPlanner free = planner(seed).withSeamRules(SeamRules.withDefaults());
        PanelLayout best = free.plan(wall(seed), FILM);
        for (Fit fit : List.of(Fit.FULL_WIDTH, Fit.EQUALISED)) {
            PanelLayout ruled = free.withFit(fit).plan(wall(seed), FILM);
            assertThat(cost(best)).isLessThanOrEqualTo(cost(ruled) + STEPS * (1 + ruled.panels().size()));
        }
        if (best.isPossible()) {
            WorkingCheck.check(best.working());
            assertThat(best.overlapM2()).isCloseTo(best.places().overlapM2(), within(1e-9));
        }
    }

    @Property
    void cost_ofAMirroredWall_isTheSame(@ForAll long seed) {
        PanelLayout here = planner(seed).withWeatherSide(Side.LEFT).plan(wall(seed), FILM);
        PanelLayout there = planner(seed).withWeatherSide(Side.RIGHT).plan(RandomWalls.mirrored(wall(seed)), FILM);
        assertSame(here, there);
        PanelLayout fromRight = planner(seed).withStart(Side.RIGHT).withWeatherSide(Side.LEFT).plan(wall(seed), FILM);
        assertSame(here, fromRight);
    }

    @Property
    void cost_ofAWallMovedElsewhere_isTheSame(@ForAll long seed) {
        Wall wall = wall(seed);
        long dx = 1_234_567;
        long dy = -76_543;
        List<Opening> openings = wall.openings().stream()
                .map(o -> new Opening(o.kind(), o.leftSteps() + dx, o.bottomSteps() + dy, o.rightSteps() + dx, o.topSteps() + dy,
                        o.treatment(), o.turnSteps()))
                .toList();
        Wall moved = Wall.polygon(wall.name(), wall.outline().points().stream().map(p -> new Point(p.xSteps() + dx, p.ySteps() + dy)).toList())
                .withOpenings(openings);
        for (Side side : Side.values()) {
            moved = moved.withEdge(side, wall.edge(side));
        }
        assertSame(planner(seed).plan(wall, FILM), planner(seed).plan(moved, FILM));
    }

    private static void assertSame(PanelLayout here, PanelLayout there) {
        assertThat(there.isPossible()).isEqualTo(here.isPossible());
        assertThat(there.cost()).isCloseTo(here.cost(), within(STEPS * (1 + here.panels().size())));
    }

    @Property
    void cost_withMoreForbiddenGround_isNeverLess(@ForAll long seed) {
        Wall wall = RandomWalls.stepped(seed, 400);
        LayoutPlanner free = planner(seed).withSeamRules(SeamRules.withDefaults());
        LayoutPlanner bound = planner(seed).withSeamRules(SeamRules.withDefaults().withJambClearance(m(0.05)).withCornerClearance(m(0.2)));
        assertThat(cost(bound.plan(wall, FILM))).isGreaterThanOrEqualTo(cost(free.plan(wall, FILM)) - 1e-9);
    }

    @Property
    void cost_withAWiderRoll_isNeverMore(@ForAll long seed) {
        Wall wall = RandomWalls.stepped(seed, 400);
        Film wider = Film.of("wider", m(1.52)).withOverlapRange(m(0.02), m(0.05));
        assertThat(cost(planner(seed).plan(wall, wider))).isLessThanOrEqualTo(cost(planner(seed).plan(wall, FILM)) + 1e-9);
    }

    @Property(tries = 200)
    void best_first_isThePlan_andTheyAscend(@ForAll long seed) {
        List<PanelLayout> best = planner(seed).best(wall(seed), FILM, 4);
        // The two searches add the same costs in another order; a millionth of a coin is no difference.
        assertThat(cost(best.get(0))).isCloseTo(cost(planner(seed).plan(wall(seed), FILM)), within(1e-6));
        for (int i = 1; i < best.size(); i++) {
            assertThat(best.get(i).cost()).isGreaterThanOrEqualTo(best.get(i - 1).cost() - 1e-9);
        }
    }
}
