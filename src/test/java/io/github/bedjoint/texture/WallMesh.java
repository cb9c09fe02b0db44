package io.github.bedjoint.texture;

import java.util.List;
import java.util.TreeSet;

/**
 * A period of a masonry wall as triangles in space: vertices on every arris, curved faces spaced by arc length, every step a face of its own. It only
 * adds areas of triangles; no formula of the library is used.
 *
 * <p>A course is a list of unit lengths, each followed by a head joint; above each course lies a bed. Tooled grooves cut
 * through each other, the head as far as the bed's centre line; otherwise the bed runs through.
 */
final class WallMesh {
    private final double height;
    private final GrooveCurve bed;
    private final GrooveCurve head;
    private final int n;
    private double area;
    private double projected;

    private WallMesh(double height, GrooveCurve bed, GrooveCurve head, int n) {
        this.height = height;
        this.bed = bed;
        this.head = head;
        this.n = n;
    }

    /** Area along the mesh divided by the area seen from the front; the mesh's own projection must be the wall. */
    static double ratio(List<List<Double>> courses, boolean inLine, double height, GrooveCurve bed, GrooveCurve head, int n) {
        WallMesh mesh = new WallMesh(height, bed, head, n);
        double width = courses.get(0).stream().mapToDouble(unit -> unit + head.width()).sum();
        for (int i = 0; i < courses.size(); i++) {
            mesh.course(courses.get(i));
            mesh.bed(width, courses.get(i).size(), courses.get((i + 1) % courses.size()).size(), inLine);
        }
        double wall = width * courses.size() * (height + bed.width());
        if (Math.abs(mesh.projected - wall) > 1e-9 * wall) {
            throw new AssertionError("the mesh covers " + mesh.projected + " of " + wall);
        }
        return mesh.area / wall;
    }

    private void course(List<Double> units) {
        for (double unit : units) {
            quad(0, 0, 0, unit, height, 0, 0);
            List<GrooveCurve.Node> nodes = head.smooth(n);
            for (int i = 1; i < nodes.size(); i++) {
                GrooveCurve.Node a = nodes.get(i - 1);
                GrooveCurve.Node b = nodes.get(i);
                quad(a.u(), 0, a.depth(), b.u(), height, b.depth(), 0);
            }
            wall(height, 0, nodes.get(0).depth());
            wall(height, 0, nodes.get(nodes.size() - 1).depth());
        }
    }

    /** A bed with the heads that open into its lower half and those that open into its upper half. */
    private void bed(double width, int headsBelow, int headsAbove, boolean inLine) {
        List<GrooveCurve.Node> nodes = bed.smooth(n);
        boolean cut = bed.isTooled() && head.isTooled();
        for (int i = 1; i < nodes.size(); i++) {
            GrooveCurve.Node a = nodes.get(i - 1);
            GrooveCurve.Node b = nodes.get(i);
            int heads = !cut ? 0 : b.u() <= 0 ? headsBelow : headsAbove;
            quad(0, a.u(), a.depth(), width - heads * head.width(), b.u(), a.depth(), b.depth() - a.depth());
        }
        if (cut) {
            for (int i = 0; i < headsBelow + headsAbove; i++) {
                crossing();
                if (!inLine) {
                    centreStep();
                }
            }
        } else {
            edge(nodes.get(0).depth(), width, headsBelow);
            edge(nodes.get(nodes.size() - 1).depth(), width, headsAbove);
        }
    }

    /** Half a crossing: two mirrored quarters, meshed along the levels of both curves so that their meeting line is an edge of triangles. */
    private void crossing() {
        TreeSet<Double> levels = new TreeSet<>(bed.levels(n));
        levels.addAll(head.levels(n));
        List<Double> heads = levels.stream().filter(level -> level <= head.deepest()).toList();
        List<Double> beds = levels.stream().filter(level -> level <= bed.deepest()).toList();
        for (int side = 0; side < 2; side++) {
            for (int i = 1; i < heads.size(); i++) {
                double x0 = head.distance(heads.get(i - 1));
                double x1 = i == heads.size() - 1 ? 0 : head.distance(heads.get(i));
                for (int k = 1; k < beds.size(); k++) {
                    double y0 = bed.distance(beds.get(k - 1));
                    double y1 = k == beds.size() - 1 ? 0 : bed.distance(beds.get(k));
                    double[] p00 = {x0, y0, Math.max(heads.get(i - 1), beds.get(k - 1))};
                    double[] p10 = {x1, y0, Math.max(heads.get(i), beds.get(k - 1))};
                    double[] p01 = {x0, y1, Math.max(heads.get(i - 1), beds.get(k))};
                    double[] p11 = {x1, y1, Math.max(heads.get(i), beds.get(k))};
                    triangle(p00, p10, p11);
                    triangle(p00, p11, p01);
                }
            }
        }
    }

    /** The step at the centre line where a head is deeper than the bed it ends in. */
    private void centreStep() {
        if (head.deepest() <= bed.deepest()) {
            return;
        }
        TreeSet<Double> levels = new TreeSet<>(head.levels(n));
        levels.add(bed.deepest());
        List<Double> deeper = levels.stream().filter(level -> level >= bed.deepest()).toList();
        for (int i = 1; i < deeper.size(); i++) {
            double x0 = head.distance(deeper.get(i - 1));
            double x1 = i == deeper.size() - 1 ? 0 : head.distance(deeper.get(i));
            for (int side = 0; side < 2; side++) {
                step(x0 - x1, deeper.get(i - 1) - bed.deepest(), deeper.get(i) - bed.deepest());
            }
        }
    }

    /** The square side along one edge of a bed that runs through: units stand at depth 0, heads at their own. */
    private void edge(double depth, double width, int heads) {
        wall(width - heads * head.width(), 0, depth);
        for (int i = 0; i < heads; i++) {
            List<GrooveCurve.Node> nodes = head.smooth(n);
            for (int k = 1; k < nodes.size(); k++) {
                GrooveCurve.Node a = nodes.get(k - 1);
                GrooveCurve.Node b = nodes.get(k);
                step(b.u() - a.u(), a.depth() - depth, b.depth() - depth);
            }
        }
    }

    /** A vertical strip whose height goes from a to b; where it changes sign the two parts are two triangles. */
    private void step(double width, double a, double b) {
        if (a * b >= 0) {
            area += width * (Math.abs(a) + Math.abs(b)) / 2;
        } else {
            double at = width * Math.abs(a) / (Math.abs(a) + Math.abs(b));
            area += at * Math.abs(a) / 2 + (width - at) * Math.abs(b) / 2;
        }
    }

    private void wall(double length, double from, double to) {
        area += length * Math.abs(to - from);
    }

    /** Two triangles over a rectangle whose depth is z at (x0, y0) and, by the arguments, z1 at x1 and rises by dy along y. */
    private void quad(double x0, double y0, double z0, double x1, double y1, double z1, double dy) {
        double[] a = {x0, y0, z0};
        double[] b = {x1, y0, z1};
        double[] c = {x1, y1, z1 + dy};
        double[] d = {x0, y1, z0 + dy};
        triangle(a, b, c);
        triangle(a, c, d);
    }

    private void triangle(double[] a, double[] b, double[] c) {
        double ux = b[0] - a[0];
        double uy = b[1] - a[1];
        double uz = b[2] - a[2];
        double vx = c[0] - a[0];
        double vy = c[1] - a[1];
        double vz = c[2] - a[2];
        double nx = uy * vz - uz * vy;
        double ny = uz * vx - ux * vz;
        double nz = ux * vy - uy * vx;
        area += Math.sqrt(nx * nx + ny * ny + nz * nz) / 2;
        projected += Math.abs(nz) / 2;
    }
}
