package io.github.bedjoint.layout;

import static io.github.bedjoint.layout.LayoutPlannerTest.m;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.film.Film;
import io.github.bedjoint.survey.DeductionRule;
import io.github.bedjoint.survey.Edge;
import io.github.bedjoint.survey.Opening;
import io.github.bedjoint.survey.RandomWalls;
import io.github.bedjoint.survey.Side;
import io.github.bedjoint.survey.Wall;
import io.github.bedjoint.survey.WallAreas;
import io.github.bedjoint.texture.JointProfile;
import io.github.bedjoint.texture.MasonrySurface;
import io.github.bedjoint.texture.TakeUp;
import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.ShopUnits;
import io.github.bedjoint.units.Steps;
import io.github.bedjoint.working.WorkingCheck;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

class LayoutProperties {
    private static final Film FILM = Film.of("film", m(1.37)).withOverlapRange(m(0.02), m(0.05));

    /** Bleeds of 0 to 40 mm on the grid, and flaps at some openings. */
    static Wall edged(Wall wall, long seed) {
        Random random = new Random(~seed);
        Wall edged = wall;
        for (Side side : Side.values()) {
            edged = edged.withEdge(side, Edge.of(Edge.Kind.FREE, m(random.nextInt(5) * 0.01)));
        }
        boolean turned = random.nextBoolean();
        return edged.withOpenings(edged.openings().stream()
                .map(o -> turned && o.kind() == Opening.Kind.WINDOW ? o.turnedIn(m(random.nextInt(3) * 0.01)) : o)
                .toList());
    }

    static LayoutPlanner planner(long seed) {
        Random random = new Random(seed * 31);
        LayoutPlanner planner = LayoutPlanner.withDefaults()
                .withDirection(random.nextBoolean() ? Direction.DROPS : Direction.BANDS)
                .withStart(Side.values()[random.nextInt(4)])
                .withOverlap(m(0.02 + 0.01 * random.nextInt(4)));
        return random.nextBoolean() ? planner : planner.withWeatherSide(Side.values()[random.nextInt(2)]);
    }

    @Property
    void places_ofAnySteppedWall_equalTheRaster(@ForAll long seed) {
        Wall wall = edged(RandomWalls.stepped(seed, 400), seed);
        PanelLayout layout = planner(seed).plan(wall, FILM);
        if (layout.isPossible()) {
            Raster.assertSame(wall, layout.panels());
        }
    }

    @Property
    void places_ofAnyWall_addUpToTheFilmAndCoverTheWall(@ForAll long seed) {
        Wall wall = edged(RandomWalls.gabled(seed), seed);
        for (Fit fit : Fit.values()) {
            PanelLayout layout = planner(seed).withFit(fit).plan(wall, FILM);
            if (!layout.isPossible()) {
                continue;
            }
            double visible = WallAreas.of(wall, DeductionRule.none()).visibleM2();
            assertThat(layout.places().visibleM2()).isCloseTo(visible, within(1e-9 * visible));
            assertThat(layout.overlapM2()).isCloseTo(layout.places().overlapM2(), within(1e-9));
            for (Panel panel : layout.panels()) {
                Places p = panel.places();
                assertThat(p.totalM2()).isCloseTo(panel.areaM2(), within(1e-9 * panel.areaM2()));
                assertThat(List.of(p.visibleM2(), p.overlapM2(), p.bleedM2(), p.trimM2(), p.cutOutM2())).allMatch(a -> a > -1e-9);
                assertThat(panel.cutWidthSteps()).isBetween(1L, FILM.printableWidthSteps());
                WorkingCheck.check(panel.working());
            }
            WorkingCheck.check(layout.working());
        }
    }

    @Property
    void places_withFilmFedIn_addUpAndFitTheRoll(@ForAll long seed) {
        Random random = new Random(seed ^ 77);
        Wall wall = edged(RandomWalls.gabled(seed), seed).withSurface(MasonrySurface.of(
                m(0.1 + 0.01 * random.nextInt(20)), m(0.05 + 0.01 * random.nextInt(20)), m(0.01), m(0.01),
                JointProfile.raked(m(0.001 * (1 + random.nextInt(10))))));
        TakeUp takeUp = new TakeUp(random.nextInt(101) / 100.0, random.nextInt(101) / 100.0);
        for (Fit fit : Fit.values()) {
            PanelLayout layout = planner(seed).withFit(fit).withTakeUp(takeUp).plan(wall, FILM);
            for (Panel panel : layout.panels()) {
                assertThat(panel.places().totalM2()).isCloseTo(panel.areaM2(), within(1e-9 * panel.areaM2()));
                assertThat(panel.places().takeUpM2()).isGreaterThanOrEqualTo(0);
                assertThat(panel.cutWidthSteps()).isBetween(1L, FILM.printableWidthSteps());
                WorkingCheck.check(panel.working());
            }
            if (layout.isPossible()) {
                double visible = WallAreas.of(wall, DeductionRule.none()).visibleM2();
                assertThat(layout.places().visibleM2()).isCloseTo(visible, within(1e-9 * visible));
                WorkingCheck.check(layout.working());
            }
        }
    }

    @Property
    void film_ofAMirroredWall_isTheSame(@ForAll long seed) {
        Wall wall = edged(RandomWalls.gabled(seed), seed);
        Wall mirrored = RandomWalls.mirrored(wall);
        LayoutPlanner drops = LayoutPlanner.withDefaults().withLeastSliver(m(0.05));
        PanelLayout here = drops.withWeatherSide(Side.LEFT).plan(wall, FILM);
        PanelLayout there = drops.withStart(Side.RIGHT).withWeatherSide(Side.RIGHT).plan(mirrored, FILM);
        assertThat(there.panels()).extracting(Panel::cutLengthSteps)
                .containsExactlyElementsOf(here.panels().stream().map(Panel::cutLengthSteps).toList());
        assertThat(there.seamM()).isCloseTo(here.seamM(), within(1e-9));
        assertThat(there.seams()).hasSameSizeAs(here.seams()).allMatch(s -> s.shows() == Side.LEFT);
        assertThat(here.seams()).allMatch(s -> s.shows() == Side.RIGHT);
        PanelLayout bands = drops.withDirection(Direction.BANDS).plan(wall, FILM);
        PanelLayout mirroredBands = drops.withDirection(Direction.BANDS).plan(mirrored, FILM);
        assertThat(mirroredBands.filmM()).isCloseTo(bands.filmM(), within(1e-9));
    }

    @Property
    void cost_fromEitherSide_isThatOfTheCheaperAlsoInAMirror(@ForAll long seed, @ForAll boolean bands) {
        Wall wall = edged(RandomWalls.gabled(seed), seed);
        LayoutPlanner one = LayoutPlanner.withDefaults().withLeastSliver(m(0.05)).withDirection(bands ? Direction.BANDS : Direction.DROPS);
        PanelLayout near = one.plan(wall, FILM);
        PanelLayout far = one.withStart(bands ? Side.TOP : Side.RIGHT).plan(wall, FILM);
        PanelLayout either = one.withCheapestStart().plan(wall, FILM);
        assertThat(either.isPossible()).isEqualTo(near.isPossible() || far.isPossible());
        if (either.isPossible()) {
            assertThat(either.cost()).isCloseTo(Math.min(costed(near), costed(far)), within(1e-9));
            assertThat(one.withCheapestStart().plan(RandomWalls.mirrored(wall), FILM).cost()).isCloseTo(either.cost(), within(1e-9));
        }
        if (costed(near) < costed(far) - 1e-6 || Distinct.isNoBetter(far, near)) {
            assertThat(either.start()).isEqualTo(near.start());
        }
    }

    private static double costed(PanelLayout layout) {
        return layout.isPossible() ? layout.cost() : Double.POSITIVE_INFINITY;
    }

    @Property
    void film_ofATurnedRectangle_isTheSame(@ForAll @IntRange(min = 10, max = 200_000) int w, @ForAll @IntRange(min = 10, max = 90_000) int h) {
        Wall upright = Wall.rectangle("w", Steps.toLength(10L * w), Steps.toLength(10L * h));
        Wall turned = Wall.rectangle("w", Steps.toLength(10L * h), Steps.toLength(10L * w));
        PanelLayout drops = LayoutPlanner.withDefaults().plan(upright, FILM);
        PanelLayout bands = LayoutPlanner.withDefaults().withDirection(Direction.BANDS).plan(turned, FILM);
        assertThat(bands.filmM()).isEqualTo(drops.filmM());
        assertThat(bands.panels()).extracting(Panel::cutWidthSteps)
                .containsExactlyElementsOf(drops.panels().stream().map(Panel::cutWidthSteps).toList());
    }

    @Property
    void strips_ofAWiderWall_areNeverFewer(@ForAll @IntRange(min = 1, max = 2_000_000) int w, @ForAll @IntRange(min = 0, max = 200_000) int more) {
        LayoutPlanner planner = LayoutPlanner.withDefaults().withLeastSliver(m(0));
        PanelLayout narrow = planner.plan(Wall.rectangle("w", Steps.toLength(w), m(2)), FILM);
        PanelLayout wide = planner.plan(Wall.rectangle("w", Steps.toLength(w + more), m(2)), FILM);
        assertThat(wide.strips()).isGreaterThanOrEqualTo(narrow.strips());
        assertThat(wide.filmM()).isGreaterThanOrEqualTo(narrow.filmM());
    }

    @Property
    void wall_dividedAtASeam_keepsItsAreaAndItsPanels(@ForAll @IntRange(min = 150_000, max = 2_000_000) int w) {
        PanelLayout whole = LayoutPlanner.withDefaults().plan(Wall.rectangle("w", Steps.toLength(w), m(2)), FILM);
        long at = whole.seams().get(0).fromSteps() + whole.seams().get(0).overlapSteps();
        PanelLayout left = LayoutPlanner.withDefaults().plan(Wall.rectangle("l", Steps.toLength(at), m(2)), FILM);
        Wall rest = Wall.rectangle("r", Steps.toLength(w - at), m(2))
                .withEdge(Side.LEFT, new Edge(Edge.Kind.FREE, whole.seams().get(0).overlapSteps(), false));
        PanelLayout right = LayoutPlanner.withDefaults().plan(rest, FILM);
        assertThat(left.places().visibleM2() + right.places().visibleM2()).isCloseTo(whole.places().visibleM2(), within(1e-9));
        assertThat(left.panels().size() + right.panels().size()).isEqualTo(whole.panels().size());
        assertThat(left.filmM() + right.filmM()).isCloseTo(whole.filmM(), within(1e-9));
    }

    @Property
    void layout_inFeetAndInMetres_isTheSame(@ForAll @IntRange(min = 1, max = 900) int inches, @ForAll @IntRange(min = 1, max = 400) int high) {
        Wall feet = Wall.rectangle("w", Door.of(inches / 12.0, ShopUnits.FOOT), Door.of(high, ShopUnits.INCH));
        Wall metres = Wall.rectangle("w", m(inches * 0.0254), m(high * 0.0254));
        assertThat(feet).isEqualTo(metres);
        Film inFilm = Film.of("f", Door.of(54, ShopUnits.INCH)).withOverlapRange(Door.of(0.5, ShopUnits.INCH), Door.of(1, ShopUnits.INCH));
        Film mmFilm = Film.of("f", m(1.3716)).withOverlapRange(m(0.0127), m(0.0254));
        assertThat(LayoutPlanner.withDefaults().plan(feet, inFilm).panels())
                .isEqualTo(LayoutPlanner.withDefaults().plan(metres, mmFilm).panels());
    }

    /** Least strips by search over end positions of a coarse grid, on walls with gaps that film need not cross. */
    @Property
    void strips_ofAWallWithGaps_areTheLeast(@ForAll long seed) {
        Random random = new Random(seed);
        int columns = 30 + random.nextInt(60);
        boolean[] wall = new boolean[columns];
        java.util.Arrays.fill(wall, true);
        List<Opening> doors = new java.util.ArrayList<>();
        for (int at = 3; at < columns - 6; ) {
            int width = 1 + random.nextInt(5);
            if (random.nextInt(3) == 0) {
                doors.add(Opening.of(Opening.Kind.DOOR, m(at * 0.1), m(0), m(width * 0.1), m(2)));
                java.util.Arrays.fill(wall, at, at + width, false);
                at += width;
            }
            at += 1 + random.nextInt(8);
        }
        Film film = Film.of("film", m(0.7)).withOverlapRange(m(0.1), m(0.1));
        Wall whole = Wall.rectangle("w", m(columns * 0.1), m(2)).withOpenings(doors);
        PanelLayout layout = LayoutPlanner.withDefaults().withLeastSliver(m(0)).plan(whole, film);
        if (layout.isPossible()) {
            assertThat(layout.strips()).isEqualTo(leastStrips(wall, 7, 1));
        }
    }

    /** least[f]: strips so that all wall left of column f is covered and film ends at f. */
    private static int leastStrips(boolean[] wall, int printable, int overlap) {
        int n = wall.length;
        int[] least = new int[n + 1];
        java.util.Arrays.fill(least, Integer.MAX_VALUE / 2);
        int first = 0;
        for (int f = 1; f <= n; f++) {
            for (int e = Math.max(0, f - printable); e < f; e++) {
                if (e == first) {
                    least[f] = Math.min(least[f], 1);
                }
                // Behind a strip that ends at g: either with the whole overlap, or beyond it with no wall between and none at the joint.
                if (e + overlap < f && least[Math.min(n, e + overlap)] < Integer.MAX_VALUE / 2) {
                    least[f] = Math.min(least[f], least[e + overlap] + 1);
                }
                for (int g = 1; g <= e; g++) {
                    boolean gap = g < e || !wall[g - 1] || !wall[e];
                    for (int c = g; c < e; c++) {
                        gap &= !wall[c];
                    }
                    if (gap) {
                        least[f] = Math.min(least[f], least[g] + 1);
                    }
                }
            }
        }
        return least[n];
    }
}
