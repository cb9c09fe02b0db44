package io.github.bedjoint.layout;

import io.github.bedjoint.film.Film;
import io.github.bedjoint.survey.Edge;
import io.github.bedjoint.survey.Opening;
import io.github.bedjoint.survey.Point;
import io.github.bedjoint.survey.Side;
import io.github.bedjoint.survey.Wall;
import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.ShopUnits;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The time to plan drops on a wall with an opening every 2.3 m, with ruled and with the cheapest seams. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class LayoutBenchmark {
    @Param({"3", "6", "12", "24"})
    public double widthM;

    @Param({"false", "true"})
    public boolean gable;

    @Param({"FULL_WIDTH", "CHEAPEST"})
    public Fit fit;

    /** Whether an edge in a head joint of half a brick's stretcher bond costs more. */
    @Param({"false", "true"})
    public boolean pricedHeads;

    private final Film film = Film.of("54 in", Door.of(54, ShopUnits.INCH));
    private Wall wall;
    private LayoutPlanner planner;

    @Setup
    public void wall() {
        List<Point> corners = new ArrayList<>(List.of(at(0, 0), at(widthM, 0), at(widthM, 3.217)));
        if (gable) {
            corners.add(at(widthM * 0.44, 5.7));
        }
        corners.add(at(0, 3.217));
        List<Opening> openings = new ArrayList<>();
        for (int i = 0; i < (int) ((widthM - 0.8) / 2.32); i++) {
            boolean door = i % 3 == 0;
            openings.add(Opening.of(
                    door ? Opening.Kind.DOOR : Opening.Kind.WINDOW, Door.length(0.713 + 2.31 * i), Door.length(door ? 0 : 0.9),
                    Door.length(i % 2 == 0 ? 1.013 : 1.57), Door.length(door ? 2.1 : 1.2)));
        }
        wall = Wall.polygon("wall", corners)
                .withEdge(Side.BOTTOM, Edge.of(Edge.Kind.GROUND, Door.length(0.03)))
                .withOpenings(openings);
        SeamRules rules = SeamRules.withDefaults()
                .withJambClearance(Door.length(0.05))
                .withCornerClearance(Door.length(0.1));
        planner = LayoutPlanner.withDefaults()
                .withFit(fit)
                .withRates(new Rates(8, 4, 2, 3))
                .withSeamRules(pricedHeads
                        ? rules.withHeadJoints(JointPhase.priced(Door.length(0.1125), Door.length(0), Door.length(0.01), 1.5))
                        : rules);
    }

    private static Point at(double x, double y) {
        return Point.of(Door.length(x), Door.length(y));
    }

    @Benchmark
    public PanelLayout plan() {
        return planner.plan(wall, film);
    }
}
