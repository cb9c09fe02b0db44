package io.github.bedjoint.layout;

import io.github.bedjoint.units.Steps;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * A plane region cut into slabs at every corner: within a slab it is a stack of trapezoids. Built from edges by the even-odd rule,
 * so that openings are simply more edges.
 */
final class Region {
    /** A trapezoid of a slab, between two lines. */
    record Cell(Line low, Line high) {}

    private final long[] cuts;
    private final Cell[][] slabs;

    private Region(long[] cuts, Cell[][] slabs) {
        this.cuts = cuts;
        this.slabs = slabs;
    }

    /** The region bounded by these lines; upright edges need not be among them. */
    static Region of(List<Line> lines) {
        long[] cuts = lines.stream().flatMapToLong(l -> Arrays.stream(new long[] {l.u1(), l.u2()})).sorted().distinct().toArray();
        Cell[][] slabs = new Cell[Math.max(0, cuts.length - 1)][];
        for (int i = 0; i < slabs.length; i++) {
            slabs[i] = stack(lines, cuts[i], cuts[i + 1]);
        }
        return new Region(cuts, slabs);
    }

    private static Cell[] stack(List<Line> lines, long from, long to) {
        double middle = (from + to) / 2.0;
        Line[] across = lines.stream()
                .filter(l -> l.u1() <= from && l.u2() >= to)
                .sorted(Comparator.comparingDouble(l -> l.at(middle)))
                .toArray(Line[]::new);
        List<Cell> cells = new ArrayList<>();
        for (int i = 0; i + 1 < across.length; i += 2) {
            if (across[i + 1].at(middle) > across[i].at(middle)) {
                cells.add(new Cell(across[i], across[i + 1]));
            }
        }
        return cells.toArray(new Cell[0]);
    }

    int slabs() {
        return slabs.length;
    }

    long from(int slab) {
        return cuts[slab];
    }

    long to(int slab) {
        return cuts[slab + 1];
    }

    Cell[] cells(int slab) {
        return slabs[slab];
    }

    /** The first slab that reaches beyond u. */
    int slabBeyond(long u) {
        int found = Arrays.binarySearch(cuts, u);
        return found >= 0 ? found : Math.max(0, -found - 2);
    }

    /** The stretches of u on which there is anything, in order. */
    List<long[]> stretches() {
        List<long[]> all = new ArrayList<>();
        for (int i = 0; i < slabs.length; i++) {
            if (slabs[i].length == 0) {
                continue;
            }
            if (!all.isEmpty() && all.get(all.size() - 1)[1] == cuts[i]) {
                all.get(all.size() - 1)[1] = cuts[i + 1];
            } else {
                all.add(new long[] {cuts[i], cuts[i + 1]});
            }
        }
        return all;
    }

    /** The least rectangle around what lies within a rectangle, or an empty one. */
    Rect around(Rect r) {
        long u1 = Long.MAX_VALUE;
        long u2 = Long.MIN_VALUE;
        long v1 = Long.MAX_VALUE;
        long v2 = Long.MIN_VALUE;
        for (int i = slabBeyond(r.u1()); i < slabs.length && cuts[i] < r.u2(); i++) {
            long a = Math.max(cuts[i], r.u1());
            long b = Math.min(cuts[i + 1], r.u2());
            for (Cell cell : slabs[i]) {
                long low = Math.max(r.v1(), Math.min(cell.low.floorAt(a), cell.low.floorAt(b)));
                long high = Math.min(r.v2(), Math.max(cell.high.ceilAt(a), cell.high.ceilAt(b)));
                if (a < b && low < high) {
                    u1 = Math.min(u1, a);
                    u2 = Math.max(u2, b);
                    v1 = Math.min(v1, low);
                    v2 = Math.max(v2, high);
                }
            }
        }
        return u1 > u2 ? new Rect(r.u1(), r.u1(), r.v1(), r.v1()) : new Rect(u1, u2, v1, v2);
    }

    /** The area within a rectangle, in square metres. */
    double areaM2(Rect r) {
        double steps = 0;
        for (int i = slabBeyond(r.u1()); i < slabs.length && cuts[i] < r.u2(); i++) {
            double a = Math.max(cuts[i], r.u1());
            double b = Math.min(cuts[i + 1], r.u2());
            if (a < b) {
                for (Cell cell : slabs[i]) {
                    steps += clipped(cell, a, b, r.v1(), r.v2());
                }
            }
        }
        return steps / Steps.PER_METRE / Steps.PER_METRE;
    }

    /** The area within any of several rectangles, each place counted once, in square metres. */
    double areaM2(List<Rect> rects) {
        long[] edges = rects.stream().flatMapToLong(r -> Arrays.stream(new long[] {r.u1(), r.u2()})).sorted().distinct().toArray();
        double area = 0;
        for (int i = 0; i + 1 < edges.length; i++) {
            long u1 = edges[i];
            long u2 = edges[i + 1];
            List<Rect> across = rects.stream()
                    .filter(r -> r.u1() <= u1 && r.u2() >= u2 && !r.isEmpty())
                    .sorted(Comparator.comparingLong(Rect::v1))
                    .toList();
            long reached = Long.MIN_VALUE;
            for (Rect r : across) {
                if (r.v2() > reached) {
                    area += areaM2(new Rect(u1, u2, Math.max(reached, r.v1()), r.v2()));
                    reached = r.v2();
                }
            }
        }
        return area;
    }

    /** Between the bends where a line crosses the clip, heights are straight, so the height in the middle is the mean. */
    private static double clipped(Cell cell, double a, double b, long c, long d) {
        if (cell.low.v1() == cell.low.v2() && cell.high.v1() == cell.high.v2()) {
            return Math.max(0, Math.min(cell.high.v1(), d) - Math.max(cell.low.v1(), c)) * (b - a);
        }
        double[] bends = {a, b, cross(cell.low, c, a, b), cross(cell.low, d, a, b), cross(cell.high, c, a, b), cross(cell.high, d, a, b)};
        Arrays.sort(bends);
        double area = 0;
        for (int i = 0; i + 1 < bends.length; i++) {
            double middle = (bends[i] + bends[i + 1]) / 2;
            double height = Math.min(cell.high.at(middle), d) - Math.max(cell.low.at(middle), c);
            area += Math.max(0, height) * (bends[i + 1] - bends[i]);
        }
        return area;
    }

    private static double cross(Line line, long v, double a, double b) {
        if (line.v1() == line.v2()) {
            return a;
        }
        double u = line.u1() + (double) (v - line.v1()) * (line.u2() - line.u1()) / (line.v2() - line.v1());
        return Math.max(a, Math.min(b, u));
    }
}
