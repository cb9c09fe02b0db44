package io.github.bedjoint.texture;

/**
 * Adds up the lines of a height grid along and up the wall: their length along the surface to that of the wall, over the whole grid and in the
 * worst window. A window has one piece more than fits into the width asked for, since a hollow of that width is seen from a point on
 * one edge to a point on the other. In a window a piece steeper than 45 degrees counts as an upright step, which the pitch hides; one
 * with a missing end counts as level there and not at all in the mean.
 */
final class LineSum {
    private final double dx;
    private final double dy;
    /** Height differences that make a piece a step. */
    private final double steepX;
    private final double steepY;
    private final int windowX;
    private final int windowY;
    private final double[] pieces;
    private final double[][] ring;
    private final double[] column;

    private double alongM;
    private double alongBaseM;
    private double upM;
    private double upBaseM;
    private final Window worstAlong = new Window();
    private final Window worstUp = new Window();
    private int rows;

    LineSum(int columns, double dx, double dy, double windowM) {
        this.dx = dx;
        this.dy = dy;
        steepX = dx * ContourProfile.STEEP;
        steepY = dy * ContourProfile.STEEP;
        windowX = (int) Math.min(columns - 1, Math.round(windowM / dx) + 1);
        windowY = (int) Math.round(windowM / dy) + 1;
        pieces = new double[columns];
        ring = new double[windowY][columns];
        column = new double[columns];
    }

    /** A row, and the row before it where there is one. */
    void add(double[] row, double[] before) {
        along(row);
        if (rows > 0) {
            up(row, before);
        }
        rows++;
    }

    private void along(double[] row) {
        double total = 0;
        int counted = 0;
        double window = 0;
        double most = 0;
        double square = dx * dx;
        for (int j = 1; j < row.length; j++) {
            double dz = row[j] - row[j - 1];
            double piece = Math.sqrt(square + dz * dz);
            if (!Double.isNaN(piece)) {
                total += piece;
                counted++;
                piece = Math.abs(dz) > steepX ? dx + Math.abs(dz) : piece;
            } else {
                piece = dx;
            }
            pieces[j] = piece;
            window += piece;
            if (j >= windowX) {
                most = window > most ? window : most;
                window -= pieces[j - windowX + 1];
            }
        }
        alongM += total;
        alongBaseM += counted * dx;
        worstAlong.consider(most, windowX * dx);
    }

    private void up(double[] row, double[] before) {
        double[] oldest = ring[(rows - 1) % windowY];
        double total = 0;
        int counted = 0;
        double most = 0;
        double square = dy * dy;
        for (int j = 0; j < row.length; j++) {
            double dz = row[j] - before[j];
            double piece = Math.sqrt(square + dz * dz);
            if (!Double.isNaN(piece)) {
                total += piece;
                counted++;
                piece = Math.abs(dz) > steepY ? dy + Math.abs(dz) : piece;
            } else {
                piece = dy;
            }
            double window = column[j] + (piece - oldest[j]);
            oldest[j] = piece;
            column[j] = window;
            most = window > most ? window : most;
        }
        upM += total;
        upBaseM += counted * dy;
        if (rows >= windowY) {
            worstUp.consider(most, windowY * dy);
        }
    }

    /** Length along the rows. */
    double alongM() {
        return alongM;
    }

    /** Length of the wall under those rows. */
    double alongBaseM() {
        return alongBaseM;
    }

    /** Length up the columns. */
    double upM() {
        return upM;
    }

    /** Height of the wall under those columns. */
    double upBaseM() {
        return upBaseM;
    }

    /** To be called after the last row: a grid lower than the window is a window itself. */
    void end() {
        if (rows > 1 && rows <= windowY) {
            double most = 0;
            for (double length : column) {
                most = Math.max(most, length);
            }
            worstUp.consider(most, (rows - 1) * dy);
        }
    }

    /** The worst window along the rows. */
    Window worstAlong() {
        return worstAlong;
    }

    /** The worst window up the columns. */
    Window worstUp() {
        return worstUp;
    }

    /** A window and its stretch; its width is the one asked for, rounded to the pitch, with a pitch more, and cut to the grid. */
    static final class Window {
        private double stretch;
        private double widthM;

        private void consider(double lengthM, double baseM) {
            double found = lengthM / baseM - 1;
            if (found > stretch || widthM == 0) {
                stretch = Math.max(0, found);
                widthM = baseM;
            }
        }

        double stretch() {
            return stretch;
        }

        double widthM() {
            return widthM;
        }
    }
}
