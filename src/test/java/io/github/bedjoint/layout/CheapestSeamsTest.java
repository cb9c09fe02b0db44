package io.github.bedjoint.layout;

import static io.github.bedjoint.layout.LayoutPlannerTest.m;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.film.Film;
import io.github.bedjoint.survey.MovementJoint;
import io.github.bedjoint.survey.Opening;
import io.github.bedjoint.survey.Point;
import io.github.bedjoint.survey.RandomWalls;
import io.github.bedjoint.survey.Side;
import io.github.bedjoint.survey.Wall;
import io.github.bedjoint.units.Steps;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The cheapest seams against a search over every place of a grid, and against every tuple of places where there are few. */
class CheapestSeamsTest {
    private static final Film FILM = Film.of("film", m(0.8)).withOverlapRange(m(0.02), m(0.05));

    private static Rates rates(Random random) {
        return new Rates(1, random.nextInt(3) * 0.3, random.nextInt(3) * 0.1, random.nextInt(3) * 0.05);
    }

    private static Wall jointed(Wall wall, Random random) {
        if (random.nextInt(4) > 0) {
            return wall;
        }
        long x = (1 + random.nextInt((int) (wall.widthSteps() / RandomWalls.GRID) - 1)) * RandomWalls.GRID;
        boolean throughAnEdge = wall.openings().stream().anyMatch(o -> o.leftSteps() <= x && x <= o.rightSteps())
                || wall.outline().points().stream().anyMatch(p -> p.xSteps() == x);
        return throughAnEdge ? wall : wall.withMovementJoints(List.of(MovementJoint.upright(Steps.toLength(x))));
    }

    @Test
    void plan_200SteppedWalls_costWhatTheSearchOfEveryPlaceFinds() {
        int possible = 0;
        for (int seed = 0; seed < 200; seed++) {
            Random random = new Random(seed);
            Wall wall = jointed(LayoutProperties.edged(RandomWalls.stepped(seed, 280), seed), random);
            Rates rates = rates(random);
            int jamb = random.nextInt(4);
            int corner = random.nextInt(3) * 5;
            int least = random.nextInt(3) * 10;
            GridReference reference = new GridReference(wall, rates, 80, 2, least, jamb, corner);
            SeamRules rules = SeamRules.withDefaults().withJambClearance(m(jamb * 0.01)).withCornerClearance(m(corner * 0.01));
            if (random.nextInt(3) > 0) {
                int period = 8 + random.nextInt(20);
                int offset = random.nextInt(period);
                int clearance = 1 + random.nextInt(3);
                double perM = random.nextBoolean() ? Double.POSITIVE_INFINITY : 0.05;
                reference.withJoints(period, offset, clearance, perM);
                rules = rules.withHeadJoints(new JointPhase(period * RandomWalls.GRID, offset * RandomWalls.GRID, clearance * RandomWalls.GRID, perM));
            }
            PanelLayout layout = LayoutPlanner.withDefaults()
                    .withFit(Fit.CHEAPEST).withStart(Side.LEFT)
                    .withRates(rates)
                    .withLeastSliver(m(least * 0.01))
                    .withSeamRules(rules)
                    .plan(wall, FILM);
            double cost = reference.cost();
            assertThat(layout.isPossible()).as("seed " + seed + " " + layout.reasons()).isEqualTo(cost < Double.POSITIVE_INFINITY);
            if (layout.isPossible()) {
                possible++;
                assertThat(layout.cost()).as("seed " + seed).isCloseTo(cost, within(1e-9));
                Raster.assertSame(wall, layout.panels());
            }
        }
        assertThat(possible).isGreaterThan(150);
    }

    @Test
    void plan_200GablesWithoutOpenings_costNoMoreThanAnyPlaceOfTheGrid() {
        for (int seed = 0; seed < 200; seed++) {
            Wall wall = RandomWalls.gabled(seed).withOpenings(List.of());
            Film film = Film.of("film", m(1.37)).withOverlapRange(m(0.02), m(0.05));
            PanelLayout layout = LayoutPlanner.withDefaults().withFit(Fit.CHEAPEST).withStart(Side.LEFT).withLeastSliver(m(0)).plan(wall, film);
            double least = leastFilm(wall, 137, 2);
            assertThat(layout.cost()).as("seed " + seed).isLessThanOrEqualTo(least + 1e-9);
        }
    }

    /** Mirrored walls whose cheapest seams were once found in one of the two only, each for a reason of its own. */
    @ParameterizedTest
    @CsvSource({
        "2772574685907528049, a row of full panels behind a least sliver",
        "-1127287419158965231, a panel from the level end of a rim to where its slope back is as high",
        "-2647638461194669359, an overlap that settles on a bend of the rim",
        "-7525771064329863335, the same with a row of full panels behind it",
        "8386128459556081653, a row between a least sliver and a peak",
        "8890136059688072801, a panel between two slopes before a row of full ones"})
    void cost_ofMirroredWallsThatDiffered_isTheSame(long seed, String why) {
        new CheapestSeamsProperties().cost_ofAMirroredWall_isTheSame(seed);
    }

    /** Least film on a grid of 10 mm; the height of a strip is that of the highest corner or rim point in it, rounded up to a step. */
    private static double leastFilm(Wall wall, int printable, int overlap) {
        int n = (int) (wall.widthSteps() / RandomWalls.GRID);
        double[] least = new double[n + 1];
        java.util.Arrays.fill(least, Double.POSITIVE_INFINITY);
        double total = Double.POSITIVE_INFINITY;
        for (int s = 0; s < n; s++) {
            double before = s == 0 ? 0 : least[s];
            for (int e = s + 1; e <= Math.min(n, s + printable); e++) {
                double cost = before + highest(wall, s * RandomWalls.GRID, e * RandomWalls.GRID);
                if (e == n && (s == 0 || n - s >= 2 * overlap)) {
                    total = Math.min(total, cost);
                } else if (e < n && e - overlap >= s + overlap && e >= 2 * overlap) {
                    least[e - overlap] = Math.min(least[e - overlap], cost);
                }
            }
        }
        return total;
    }

    private static double highest(Wall wall, long from, long to) {
        double highest = 0;
        List<Point> p = wall.outline().points();
        for (int i = 0; i < p.size(); i++) {
            Point a = p.get(i);
            Point b = p.get((i + 1) % p.size());
            if (from <= a.xSteps() && a.xSteps() <= to) {
                highest = Math.max(highest, a.ySteps());
            }
            for (long x : new long[] {from, to}) {
                if (Math.min(a.xSteps(), b.xSteps()) < x && x < Math.max(a.xSteps(), b.xSteps())) {
                    highest = Math.max(highest, a.ySteps() + (double) (b.ySteps() - a.ySteps()) * (x - a.xSteps()) / (b.xSteps() - a.xSteps()));
                }
            }
        }
        return Math.ceil(highest - 1e-6) / Steps.PER_METRE;
    }

    @Test
    void plan_upToFourStrips_costsWhatTheBestOfAllTuplesDoes() {
        // 2.4 m wide, a window and a step; panels of 0.8 m, so four strips at most; every tuple of places of 50 mm is laid out.
        for (int seed = 0; seed < 5; seed++) {
            Random random = new Random(seed);
            long low = 100 + 5 * random.nextInt(20);
            Wall wall = Wall.polygon("w", List.of(Point.of(m(0), m(0)), Point.of(m(2.4), m(0)), Point.of(m(2.4), m(low * 0.01)),
                            Point.of(m(1.5), m(low * 0.01)), Point.of(m(1.5), m(2.4)), Point.of(m(0), m(2.4))))
                    .withOpening(Opening.of(Opening.Kind.WINDOW, m(0.35 + 0.05 * random.nextInt(4)), m(0.5), m(0.9), m(0.4)));
            Film film = Film.of("film", m(0.8)).withOverlapRange(m(0.05), m(0.05));
            Rates rates = rates(random);
            PanelLayout layout = LayoutPlanner.withDefaults().withFit(Fit.CHEAPEST).withStart(Side.LEFT).withRates(rates).withLeastSliver(m(0)).plan(wall, film);
            WallRegions regions = WallRegions.of(wall, new Frame(Direction.DROPS, Side.LEFT)).orElseThrow();
            double best = enumerate(wall, regions, rates, new long[0]);
            assertThat(layout.cost()).as("seed " + seed).isCloseTo(best, within(1e-9));
        }
    }

    @Test
    void best_threeOfAllTuples_areTheSameThree() {
        // 2.4 m wide with a step at 1.5 m and a window: of all tuples on 50 mm, the three cheapest that differ in their lengths.
        for (int seed = 0; seed < 5; seed++) {
            long low = 100 + 5 * new Random(seed).nextInt(20);
            Wall wall = Wall.polygon("w", List.of(Point.of(m(0), m(0)), Point.of(m(2.4), m(0)), Point.of(m(2.4), m(low * 0.01)),
                            Point.of(m(1.5), m(low * 0.01)), Point.of(m(1.5), m(2.4)), Point.of(m(0), m(2.4))))
                    .withOpening(Opening.of(Opening.Kind.WINDOW, m(0.35), m(0.5), m(0.9), m(0.4)));
            Film film = Film.of("film", m(0.8)).withOverlapRange(m(0.05), m(0.05));
            WallRegions regions = WallRegions.of(wall, new Frame(Direction.DROPS, Side.LEFT)).orElseThrow();
            Map<List<Long>, Double> byLengths = new HashMap<>();
            gather(wall, regions, new long[0], byLengths);
            List<PanelLayout> best = LayoutPlanner.withDefaults().withFit(Fit.CHEAPEST).withStart(Side.LEFT).withLeastSliver(m(0)).best(wall, film, 3);
            List<Double> expected = byLengths.values().stream().sorted().limit(3).toList();
            assertThat(best).hasSize(3);
            for (int i = 0; i < 3; i++) {
                assertThat(best.get(i).cost()).as("seed " + seed + ", place " + i).isCloseTo(expected.get(i), within(1e-9));
            }
        }
    }

    private static void gather(Wall wall, WallRegions regions, long[] begins, Map<List<Long>, Double> byLengths) {
        long overlap = 4000;
        long last = begins.length == 0 ? 0 : begins[begins.length - 1];
        if (wall.widthSteps() - last <= 64_000) {
            Placement placed = placed(wall, regions, Rates.filmOnly(), begins, overlap);
            List<Long> lengths = placed.panels().stream().map(Panel::cutLengthSteps).sorted().toList();
            byLengths.merge(lengths, lengths.stream().mapToDouble(Steps::toM).sum(), Math::min);
        }
        for (long next = last + overlap; begins.length < 4 && next + overlap - last <= 64_000 && next + 2 * overlap <= wall.widthSteps();
                next += 4000) {
            long[] more = java.util.Arrays.copyOf(begins, begins.length + 1);
            more[begins.length] = next;
            gather(wall, regions, more, byLengths);
        }
    }

    /** The least cost over all ways to go on from the strips that begin at the places given. */
    private static double enumerate(Wall wall, WallRegions regions, Rates rates, long[] begins) {
        long step = 4000;
        long overlap = 4000;
        long printable = 64_000;
        long last = begins.length == 0 ? 0 : begins[begins.length - 1];
        double best = Double.POSITIVE_INFINITY;
        if (wall.widthSteps() - last <= printable) {
            best = costOf(wall, regions, rates, begins, overlap);
        }
        if (begins.length < 3) {
            for (long next = last + overlap; next + overlap - last <= printable && next + 2 * overlap <= wall.widthSteps(); next += step) {
                long[] more = java.util.Arrays.copyOf(begins, begins.length + 1);
                more[begins.length] = next;
                best = Math.min(best, enumerate(wall, regions, rates, more));
            }
        }
        return best;
    }

    private static double costOf(Wall wall, WallRegions regions, Rates rates, long[] begins, long overlap) {
        Placement placed = placed(wall, regions, rates, begins, overlap);
        double film = placed.panels().stream().mapToDouble(p -> Steps.toM(p.cutLengthSteps())).sum();
        double seams = placed.seams().stream().mapToDouble(Seam::lengthM).sum();
        return rates.cost(film, placed.panels().size(), seams, placed.panels().stream().mapToInt(Panel::cutOuts).sum(), 0);
    }

    private static Placement placed(Wall wall, WallRegions regions, Rates rates, long[] begins, long overlap) {
        List<Strip> strips = new java.util.ArrayList<>();
        for (int i = 0; i <= begins.length; i++) {
            strips.add(new Strip(i == 0 ? 0 : begins[i - 1], i == begins.length ? wall.widthSteps() : begins[i] + overlap));
        }
        Cutting cutting = new Cutting(regions, rates, new Feed(0, 0), Limits.ANY_LENGTH, Optional.empty());
        return new Placement(wall, regions, cutting, SeamRules.withDefaults(), new Feed(0, 0), new Feed(0, 0), strips, true, true);
    }
}
