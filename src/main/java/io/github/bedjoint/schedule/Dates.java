package io.github.bedjoint.schedule;

import io.github.bedjoint.schedule.Graph.Arc;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Earliest and latest starts by repeated passes.
 *
 * <p>Each link says "not before", each window says "the first not so early"; all are monotone, so passing over them until nothing moves gives
 * the earliest of all timetables that keep them, and backwards the latest. Moments are seconds of the epoch.
 */
final class Dates {
    private static final int MOST_PASSES = 5_000;

    private final Graph graph;
    /** Hours in which lags in shift time count. */
    private final OpenHours hours;
    private final Step[] steps;
    private final long begin;
    /** For each activity the one whose end set its start, or -1 where nothing before it did. */
    final int[] cause;
    /** For each activity the link by which its start was set, or null. */
    final @Nullable Link[] by;
    final long[] early;
    final long[] late;
    /** Window that could not be met, or null. */
    @Nullable Arc unmet;

    private Dates(Graph graph, OpenHours hours, OpenHours dry, long begin) {
        int n = graph.activities.size();
        this.graph = graph;
        this.hours = hours;
        this.begin = begin;
        this.steps = new Step[n];
        for (int i = 0; i < n; i++) {
            Activity activity = graph.activities.get(i);
            steps[i] = new Step(activity, activity.isOutdoors() ? dry : hours);
        }
        this.cause = new int[n];
        this.by = new Link[n];
        this.early = new long[n];
        this.late = new long[n];
    }

    static Dates of(Network network, Graph graph) {
        long begin = network.begin().toEpochSecond();
        return new Dates(graph, network.calendar().openFrom(begin), network.outdoorCalendar().openFrom(begin), begin);
    }

    Step step(int i) {
        return steps[i];
    }

    long earlyEnd(int i) {
        return steps[i].end(early[i]);
    }

    long lateEnd(int i) {
        return steps[i].end(late[i]);
    }

    long handOver() {
        long end = begin;
        for (int i = 0; i < steps.length; i++) {
            end = Math.max(end, earlyEnd(i));
        }
        return end;
    }

    /** Finds the earliest starts; false where a window cannot be met, the hours do not suffice, or an activity starts as late as the limit. */
    boolean forward(long limit) {
        long[] floor = new long[steps.length];
        int[] floorCause = new int[steps.length];
        Arrays.fill(floorCause, -1);
        for (int i = 0; i < steps.length; i++) {
            floor[i] = Math.max(begin, graph.activities.get(i).earliest().map(m -> m.toEpochSecond()).orElse(begin));
        }
        for (int pass = 0; pass < MOST_PASSES; pass++) {
            if (!forwardPass(floor, floorCause, limit)) {
                return false;
            }
            Arc moved = push(floor, floorCause);
            unmet = moved;
            if (moved == null) {
                return true;
            }
        }
        return false;
    }

    private boolean forwardPass(long[] floor, int[] floorCause, long limit) {
        for (int i = 0; i < steps.length; i++) {
            long from = floor[i];
            cause[i] = floorCause[i];
            by[i] = null;
            for (Arc arc : graph.into.get(i)) {
                long ready = Step.after(hours, earlyEnd(arc.from()), arc.link().atLeast());
                if (ready > from) {
                    from = ready;
                    cause[i] = arc.from();
                    by[i] = arc.link();
                }
            }
            early[i] = steps[i].start(from);
            if (early[i] >= limit || earlyEnd(i) >= OpenHours.NEVER) {
                return false;
            }
        }
        return true;
    }

    /** Moves the first of each window later where the second starts too late for it; says which window moved last, or null. */
    private @Nullable Arc push(long[] floor, int[] floorCause) {
        Arc moved = null;
        for (Arc arc : graph.arcs) {
            Span most = arc.link().most();
            if (most == null) {
                continue;
            }
            long least = Step.firstReaching(hours, early[arc.to()], most);
            if (earlyEnd(arc.from()) < least) {
                floor[arc.from()] = steps[arc.from()].startToEndAt(least);
                // Whoever made the second late is the reason; if that was the first itself, its own reason stays.
                floorCause[arc.from()] = cause[arc.to()] == arc.from() ? cause[arc.from()] : cause[arc.to()];
                moved = arc;
            }
        }
        return moved;
    }

    /** Finds the latest starts that still end by a moment; needs {@link #forward} to have succeeded. */
    void backward(long endBy) {
        long[] lastEnd = new long[steps.length];
        long[] lastStart = new long[steps.length];
        Arrays.fill(lastEnd, endBy);
        Arrays.fill(lastStart, OpenHours.NEVER);
        boolean moved = true;
        while (moved) {
            moved = false;
            for (int i = steps.length - 1; i >= 0; i--) {
                for (Arc arc : graph.outOf.get(i)) {
                    lastEnd[i] = Math.min(lastEnd[i], Step.lastWithin(hours, late[arc.to()], arc.link().atLeast()));
                }
                late[i] = Math.max(early[i], steps[i].lastStart(lastStart[i], lastEnd[i]));
            }
            for (Arc arc : graph.arcs) {
                Span most = arc.link().most();
                if (most != null && late[arc.to()] > Step.after(hours, lateEnd(arc.from()), most)) {
                    lastStart[arc.to()] = Step.after(hours, lateEnd(arc.from()), most);
                    moved |= steps[arc.to()].lastStart(lastStart[arc.to()], lastEnd[arc.to()]) < late[arc.to()] && late[arc.to()] > early[arc.to()];
                }
            }
        }
    }

    /** The activities that set an end, one after another, from the first to the one that ends then. */
    List<Integer> chain() {
        int last = -1;
        for (int i = 0; i < steps.length; i++) {
            if (last < 0 || earlyEnd(i) > earlyEnd(last)) {
                last = i;
            }
        }
        List<Integer> chain = new ArrayList<>();
        for (int at = last; at >= 0 && !chain.contains(at); at = cause[at]) {
            chain.add(0, at);
        }
        return chain;
    }

    /** The activities between the two ends of a window that cannot be met, first and last included. */
    List<Integer> between(Arc window) {
        List<Integer> chain = new ArrayList<>();
        int at = window.to();
        while (at >= 0 && at != window.from() && !chain.contains(at)) {
            chain.add(0, at);
            at = cause[at];
        }
        chain.add(0, window.from());
        return chain;
    }
}
