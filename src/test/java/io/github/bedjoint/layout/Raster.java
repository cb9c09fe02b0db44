package io.github.bedjoint.layout;

import io.github.bedjoint.survey.Opening;
import io.github.bedjoint.survey.RandomWalls;
import io.github.bedjoint.survey.Side;
import io.github.bedjoint.survey.Wall;
import io.github.bedjoint.units.Steps;
import java.util.List;

/**
 * What becomes of panels, by counting squares of 10 mm: knows nothing of slabs, slopes or pieces. Exact where every edge lies on the
 * grid.
 */
final class Raster {
    private static final long G = RandomWalls.GRID;
    private static final double SQUARE_M2 = Steps.toM(G) * Steps.toM(G);

    private final Wall wall;
    private final int[][] layers;
    /** Whether a square is inside the outline, asked once for each. */
    private final boolean[][] inside;
    private final java.util.Map<Rim, Long> reaches = new java.util.HashMap<>();
    private final long left;
    private final long bottom;

    private record Rim(Opening opening, Side side) {}

    Raster(Wall wall) {
        this.wall = wall;
        long margin = 20 * G;
        left = wall.outline().reach(Side.LEFT) - margin;
        bottom = wall.outline().reach(Side.BOTTOM) - margin;
        layers = new int[(int) ((wall.widthSteps() + 2 * margin) / G)][(int) ((wall.heightSteps() + 2 * margin) / G)];
        inside = new boolean[layers.length][layers[0].length];
        for (int i = 0; i < layers.length; i++) {
            for (int j = 0; j < layers[i].length; j++) {
                inside[i][j] = RandomWalls.isInside(wall, left + i * G + G / 2, bottom + j * G + G / 2);
            }
        }
    }

    /** Lays a panel on the wall, over those laid before, and says where its squares lie. */
    Places lay(Panel panel) {
        double[] m2 = new double[5];
        long x1 = panel.lowerLeft().xSteps();
        long y1 = panel.lowerLeft().ySteps();
        for (long x = x1 + G / 2; x < x1 + panel.alongSteps(); x += G) {
            for (long y = y1 + G / 2; y < y1 + panel.upSteps(); y += G) {
                int place = place(x, y);
                if (place == 0) {
                    int column = (int) Math.floorDiv(x - left, G);
                    int row = (int) Math.floorDiv(y - bottom, G);
                    place = layers[column][row]++ > 0 ? 1 : 0;
                }
                m2[place] += SQUARE_M2;
            }
        }
        return new Places(m2[0], m2[1], m2[2], m2[3], m2[4], 0);
    }

    /** Squares of wall that no panel covers. */
    int bare() {
        int bare = 0;
        for (int i = 0; i < layers.length; i++) {
            for (int j = 0; j < layers[i].length; j++) {
                long x = left + i * G + G / 2;
                long y = bottom + j * G + G / 2;
                bare += layers[i][j] == 0 && inside[i][j] && isWall(x, y) ? 1 : 0;
            }
        }
        return bare;
    }

    /** 0 wall, 2 bleed or flap, 3 beyond, 4 cut out of an opening. */
    int place(long x, long y) {
        boolean within = inside(x, y);
        for (Opening o : wall.openings()) {
            if (o.staysOpen() && isIn(o, x, y)) {
                return within ? 4 : 3;
            }
        }
        if (within) {
            return isWall(x, y) ? 0 : 2;
        }
        return isBeside(x, y) ? 2 : 3;
    }

    private boolean inside(long x, long y) {
        int i = (int) Math.floorDiv(x - left, G);
        int j = (int) Math.floorDiv(y - bottom, G);
        return i >= 0 && j >= 0 && i < inside.length && j < inside[0].length && inside[i][j];
    }

    private boolean isWall(long x, long y) {
        return wall.openings().stream()
                .noneMatch(o -> o.staysOpen() && o.leftSteps() < x && x < o.rightSteps() && o.bottomSteps() < y && y < o.topSteps());
    }

    /** Within the opening less its flaps; where the wall ends at the opening too, it goes on to where the bleed ends. */
    private boolean isIn(Opening o, long x, long y) {
        return o.leftSteps() + reach(o, Side.LEFT) < x && x < o.rightSteps() - reach(o, Side.RIGHT)
                && o.bottomSteps() + reach(o, Side.BOTTOM) < y && y < o.topSteps() - reach(o, Side.TOP);
    }

    long reach(Opening o, Side side) {
        return reaches.computeIfAbsent(new Rim(o, side), key -> reachOf(o, side));
    }

    private long reachOf(Opening o, Side side) {
        for (long x = o.leftSteps() + G / 2; x < o.rightSteps(); x += G) {
            for (long y = o.bottomSteps() + G / 2; y < o.topSteps(); y += G) {
                long dx = side == Side.LEFT ? o.leftSteps() - G / 2 : side == Side.RIGHT ? o.rightSteps() + G / 2 : x;
                long dy = side == Side.BOTTOM ? o.bottomSteps() - G / 2 : side == Side.TOP ? o.topSteps() + G / 2 : y;
                if (inside(dx, dy)) {
                    return o.turnSteps();
                }
            }
        }
        return -wall.edge(side).extraSteps();
    }

    /** Whether some square of wall or opening lies as near as the bleed of the side it would cross. */
    private boolean isBeside(long x, long y) {
        long l = wall.edge(Side.LEFT).extraSteps();
        long r = wall.edge(Side.RIGHT).extraSteps();
        long b = wall.edge(Side.BOTTOM).extraSteps();
        long t = wall.edge(Side.TOP).extraSteps();
        for (long dx = -r; dx <= l; dx += G) {
            for (long dy = -t; dy <= b; dy += G) {
                if (inside(x + dx, y + dy)) {
                    return true;
                }
            }
        }
        return false;
    }

    static void assertSame(Wall wall, List<Panel> panels) {
        Raster raster = new Raster(wall);
        for (Panel panel : panels) {
            Places counted = raster.lay(panel);
            Places stored = panel.places();
            close(panel, "visible", stored.visibleM2(), counted.visibleM2());
            close(panel, "overlap", stored.overlapM2(), counted.overlapM2());
            close(panel, "bleed", stored.bleedM2(), counted.bleedM2());
            close(panel, "trim", stored.trimM2(), counted.trimM2());
            close(panel, "cut-out", stored.cutOutM2(), counted.cutOutM2());
        }
        if (raster.bare() > 0) {
            throw new AssertionError(wall + ": " + raster.bare() + " squares of wall are bare");
        }
    }

    private static void close(Panel panel, String what, double stored, double counted) {
        if (Math.abs(stored - counted) > 1e-9) {
            throw new AssertionError(panel + ": " + what + " " + stored + " but the raster counts " + counted);
        }
    }
}
