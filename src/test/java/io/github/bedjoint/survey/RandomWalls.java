package io.github.bedjoint.survey;

import io.github.bedjoint.units.Steps;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Walls drawn from a seed, on a grid of 10 mm, so that a raster of that pitch can check those without slopes exactly. */
public final class RandomWalls {
    /** 10 mm. */
    public static final long GRID = 800;

    private RandomWalls() {}

    /** A wall with one to four level tops, and up to five openings; no slopes. */
    public static Wall stepped(long seed) {
        return stepped(seed, 800);
    }

    /** The same, at most so many grid steps wide. */
    public static Wall stepped(long seed, int widest) {
        Random random = new Random(seed);
        int parts = 1 + random.nextInt(4);
        List<Point> corners = new ArrayList<>();
        corners.add(new Point(0, 0));
        long x = 0;
        List<Point> tops = new ArrayList<>();
        for (int i = 0; i < parts; i++) {
            long height = (100 + random.nextInt(300)) * GRID;
            tops.add(new Point(x, height));
            x += (30 + random.nextInt(widest / parts - 30)) * GRID;
            tops.add(new Point(x, height));
        }
        corners.add(new Point(x, 0));
        for (int i = tops.size() - 1; i >= 0; i--) {
            corners.add(tops.get(i));
        }
        return withOpenings(Wall.polygon("stepped " + seed, corners), random);
    }

    /** A wall with two to four points along its top, joined by slopes. */
    public static Wall gabled(long seed) {
        Random random = new Random(seed);
        int parts = 1 + random.nextInt(3);
        List<Point> tops = new ArrayList<>();
        long x = 0;
        for (int i = 0; i <= parts; i++) {
            tops.add(new Point(x, (100 + random.nextInt(300)) * GRID));
            x += (60 + random.nextInt(300)) * GRID;
        }
        List<Point> corners = new ArrayList<>(List.of(new Point(0, 0), new Point(tops.get(parts).xSteps(), 0)));
        for (int i = parts; i >= 0; i--) {
            corners.add(tops.get(i));
        }
        return withOpenings(Wall.polygon("gabled " + seed, corners), random);
    }

    private static Wall withOpenings(Wall bare, Random random) {
        Wall wall = bare;
        int wanted = random.nextInt(6);
        for (int i = 0; i < wanted; i++) {
            long left = random.nextInt((int) (wall.widthSteps() / GRID)) * GRID;
            long bottom = random.nextInt(4) == 0 ? 0 : random.nextInt((int) (wall.heightSteps() / GRID)) * GRID;
            long width = (5 + random.nextInt(200)) * GRID;
            long height = (5 + random.nextInt(200)) * GRID;
            if (wall.outline().holds(left, bottom, left + width, bottom + height)) {
                Opening opening = new Opening(bottom == 0 ? Opening.Kind.DOOR : Opening.Kind.WINDOW, left, bottom, left + width,
                        bottom + height, Opening.Treatment.TRIMMED, 0);
                if (wall.openings().stream().noneMatch(opening::overlaps)) {
                    wall = wall.withOpening(opening);
                }
            }
        }
        return wall;
    }

    /** The wall as in a mirror that stands upright, its sides changed over. */
    public static Wall mirrored(Wall wall) {
        List<Point> corners = wall.outline().points().stream().map(p -> new Point(-p.xSteps(), p.ySteps())).toList();
        List<Opening> openings = wall.openings().stream()
                .map(o -> new Opening(o.kind(), -o.rightSteps(), o.bottomSteps(), -o.leftSteps(), o.topSteps(), o.treatment(), o.turnSteps()))
                .toList();
        Wall mirrored = Wall.polygon(wall.name(), corners).withOpenings(openings).withSurface(wall.surface());
        return mirrored.withEdge(Side.LEFT, wall.edge(Side.RIGHT)).withEdge(Side.RIGHT, wall.edge(Side.LEFT))
                .withEdge(Side.BOTTOM, wall.edge(Side.BOTTOM)).withEdge(Side.TOP, wall.edge(Side.TOP));
    }

    /** Visible area of a wall without slopes by counting squares of the grid: a ray to the left crosses the outline an odd number of times. */
    public static double rasterM2(Wall wall) {
        long count = 0;
        long left = wall.outline().reach(Side.LEFT);
        long bottom = wall.outline().reach(Side.BOTTOM);
        for (long x = left + GRID / 2; x < wall.outline().reach(Side.RIGHT); x += GRID) {
            for (long y = bottom + GRID / 2; y < wall.outline().reach(Side.TOP); y += GRID) {
                count += isWall(wall, x, y) ? 1 : 0;
            }
        }
        return count * Steps.toM(GRID) * Steps.toM(GRID);
    }

    /** Whether there is wall at a point that lies on no edge: inside the outline, in no opening. */
    public static boolean isWall(Wall wall, long x, long y) {
        return isInside(wall, x, y) && wall.openings().stream()
                .noneMatch(o -> o.staysOpen() && o.leftSteps() < x && x < o.rightSteps() && o.bottomSteps() < y && y < o.topSteps());
    }

    /** Whether a point that lies on no edge is inside the outline. */
    public static boolean isInside(Wall wall, long x, long y) {
        boolean inside = false;
        List<Point> p = wall.outline().points();
        for (int i = 0; i < p.size(); i++) {
            Point a = p.get(i);
            Point b = p.get((i + 1) % p.size());
            if (a.ySteps() > y != b.ySteps() > y) {
                double at = a.xSteps() + (double) (y - a.ySteps()) / (b.ySteps() - a.ySteps()) * (b.xSteps() - a.xSteps());
                inside ^= at < x;
            }
        }
        return inside;
    }
}
