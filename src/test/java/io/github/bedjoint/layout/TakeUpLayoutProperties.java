package io.github.bedjoint.layout;

import static io.github.bedjoint.layout.LayoutPlannerTest.m;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.bedjoint.film.Film;
import io.github.bedjoint.survey.Edge;
import io.github.bedjoint.survey.Side;
import io.github.bedjoint.survey.Wall;
import io.github.bedjoint.texture.JointProfile;
import io.github.bedjoint.texture.MasonrySurface;
import io.github.bedjoint.texture.TakeUp;
import io.github.bedjoint.working.WorkingCheck;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** Film fed in, against the sums that one would do by hand with real numbers. */
class TakeUpLayoutProperties {
    private static final double P = 1;
    private static final double OVERLAP = 0.02;
    private static final Film FILM = Film.of("film", m(P)).withOverlapRange(m(OVERLAP), m(OVERLAP));
    private static final double STEP = 12.5e-6;

    private static Wall bled(double width, double height, Random random, MasonrySurface surface) {
        Wall wall = Wall.rectangle("north", m(width), m(height)).withSurface(surface);
        for (Side side : Side.values()) {
            wall = wall.withEdge(side, Edge.of(Edge.Kind.FREE, m(random.nextInt(100) * 0.001)));
        }
        return wall;
    }

    private static MasonrySurface brick(Random random) {
        return MasonrySurface.of(m(0.215), m(0.065), m(0.01), m(0.01), JointProfile.raked(m(0.001 * (1 + random.nextInt(8)))));
    }

    private static double extra(Wall wall, Side side) {
        return STEP * wall.edge(side).extraSteps();
    }

    /** n panels carry n p of film; a row takes W (1 + u e) and the bleeds, and each overlap o (1 + u e). */
    @Property
    void strips_ofARectangleWithBleeds_areTheFewestWhoseFilmCoversIt(@ForAll long seed) {
        Random random = new Random(seed);
        TakeUp takeUp = new TakeUp(random.nextDouble(), random.nextDouble());
        Wall wall = bled(0.3 + random.nextInt(9000) * 0.001, 2, random, brick(random));
        Fit fit = Fit.values()[random.nextInt(4)];
        PanelLayout layout = LayoutPlanner.withDefaults().withFit(fit).withLeastSliver(m(0)).withTakeUp(takeUp).plan(wall, FILM);
        double factor = 1 + takeUp.along() * wall.surface().meanStretchAlong();
        double film = STEP * wall.widthSteps() * factor + extra(wall, Side.LEFT) + extra(wall, Side.RIGHT);
        double lap = OVERLAP * factor;
        int least = (int) Math.ceil((film - lap) / (P - lap));
        // Whole steps may ask for one more where the film fits to a few steps.
        int rounded = (int) Math.ceil((film + 4 * least * STEP - lap) / (P - lap));
        assertThat(layout.strips()).isBetween(Math.max(1, least), Math.max(1, rounded));
        assertThat(layout.panels()).allMatch(panel -> panel.cutWidthSteps() <= FILM.printableWidthSteps());
        WorkingCheck.check(layout.working());
    }

    @Property
    void pieces_joinedAcross_areTheFewestThatKeepTheLongestCut(@ForAll long seed) {
        Random random = new Random(seed);
        TakeUp takeUp = new TakeUp(random.nextDouble(), random.nextDouble());
        Wall wall = bled(0.5, 0.3 + random.nextInt(9000) * 0.001, random, brick(random));
        double longest = 0.5 + random.nextInt(3000) * 0.001;
        Fit fit = Fit.values()[random.nextInt(4)];
        PanelLayout layout = LayoutPlanner.withDefaults()
                .withFit(fit).withTakeUp(takeUp).withJointsAcross(true).withLongestCut(m(longest)).plan(wall, FILM);
        double factor = 1 + takeUp.up() * wall.surface().meanStretchUp();
        double film = STEP * wall.heightSteps() * factor + extra(wall, Side.BOTTOM) + extra(wall, Side.TOP);
        double lap = OVERLAP * factor;
        int least = (int) Math.ceil((film - lap) / (longest - lap));
        int rounded = (int) Math.ceil((film + 4 * least * STEP - lap) / (longest - lap));
        assertThat(layout.panels().size()).isBetween(Math.max(1, least), Math.max(1, rounded));
        assertThat(layout.panels()).allMatch(panel -> STEP * panel.cutLengthSteps() <= longest + 1e-12);
    }
}
