package io.github.bedjoint.layout;

import io.github.bedjoint.film.Film;
import io.github.bedjoint.survey.RandomWalls;
import io.github.bedjoint.survey.Wall;
import io.github.bedjoint.units.Door;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;

/** The cheapest seams beside trying every centimetre, on the same walls in one run: the time of the thread, so that a busy machine does not count. */
public final class LayoutReferenceTime {
    private static final int WALLS = 50;
    private static final int ROUNDS = 5;
    private static final Rates RATES = new Rates(1, 0.3, 0.1, 0.05);
    private static final LayoutPlanner PLANNER = LayoutPlanner.withDefaults()
            .withFit(Fit.CHEAPEST)
            .withRates(RATES)
            .withLeastSliver(Door.length(0.1))
            .withSeamRules(SeamRules.withDefaults().withJambClearance(Door.length(0.02)).withCornerClearance(Door.length(0.05)));
    private static final Film FILM = Film.of("film", Door.length(0.8)).withOverlapRange(Door.length(0.02), Door.length(0.05));
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    private LayoutReferenceTime() {}

    /** Prints for walls of several widths what a wall takes of a processor, in the median of five rounds. */
    public static void main(String[] args) {
        for (int squares : new int[] {300, 600, 1200}) {
            List<Wall> walls = new ArrayList<>();
            for (int seed = 0; seed < WALLS; seed++) {
                walls.add(RandomWalls.stepped(seed, squares));
            }
            ToDoubleFunction<Wall> planned = wall -> {
                PanelLayout layout = PLANNER.plan(wall, FILM);
                return layout.isPossible() ? layout.cost() : 0;
            };
            ToDoubleFunction<Wall> tried = wall -> {
                double cost = new GridReference(wall, RATES, 80, 2, 10, 2, 5).cost();
                return Double.isInfinite(cost) ? 0 : cost;
            };
            double[] width = walls.stream().mapToDouble(wall -> wall.width().getValue().doubleValue()).sorted().toArray();
            double[] a = micros(walls, planned, 40);
            double[] b = micros(walls, tried, 2);
            System.out.printf(Locale.ROOT, "walls of %.1f to %.1f m: planned %.0f us, every centimetre tried %.0f us; cost %.4f and %.4f%n",
                    width[0], width[WALLS - 1], a[0], b[0], a[1], b[1]);
        }
    }

    /** Median time of a wall, after so many rounds to warm up, and the sum of all costs. */
    private static double[] micros(List<Wall> walls, ToDoubleFunction<Wall> cost, int warmUp) {
        double[] all = new double[ROUNDS];
        double sum = 0;
        for (int round = -warmUp; round < ROUNDS; round++) {
            long before = THREADS.getCurrentThreadCpuTime();
            sum = walls.stream().mapToDouble(cost).sum();
            if (round >= 0) {
                all[round] = (THREADS.getCurrentThreadCpuTime() - before) / 1e3 / walls.size();
            }
        }
        Arrays.sort(all);
        return new double[] {all[ROUNDS / 2], sum};
    }
}
