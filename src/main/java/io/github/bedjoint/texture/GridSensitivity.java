package io.github.bedjoint.texture;

import java.util.Arrays;

/**
 * How the area of a height grid changes with each of its heights, added up row by row: squared first derivatives, and half of the second.
 * Cells with a missing corner are left out as {@link TriangleSum} leaves them out.
 */
final class GridSensitivity {
    private final double dx;
    private final double dy;
    private final boolean falling;
    private double[] change;
    private double[] changeNext;
    private double squaresM2;
    private double bends;

    GridSensitivity(int columns, double dx, double dy, Diagonal diagonal) {
        this.dx = dx;
        this.dy = dy;
        this.falling = diagonal == Diagonal.FALLING;
        change = new double[columns];
        changeNext = new double[columns];
    }

    /** The cells between a row and the next. */
    void add(double[] row, double[] next) {
        double bent = 0;
        for (int j = 1; j < row.length; j++) {
            double low = (row[j] - row[j - 1]) / dx;
            double high = (next[j] - next[j - 1]) / dx;
            double left = (next[j - 1] - row[j - 1]) / dy;
            double right = (next[j] - row[j]) / dy;
            if (Double.isNaN(low + high)) {
                continue;
            }
            bent += falling ? lower(j, low, right) + upper(j, high, left) : lower(j, low, left) + upper(j, high, right);
        }
        bends += bent * dx * dy / 2;
        endRow();
    }

    /** The triangle on the row edge below, and on the column edge that the diagonal leaves it. */
    private double lower(int j, double p, double q) {
        double f = Math.sqrt(1 + p * p + q * q);
        double alongRow = dy / 2 * p / f;
        double upColumn = dx / 2 * q / f;
        change[j] += alongRow;
        change[j - 1] -= alongRow;
        int column = falling ? j : j - 1;
        changeNext[column] += upColumn;
        change[column] -= upColumn;
        return bend(p, q, f);
    }

    /** The triangle on the row edge above. */
    private double upper(int j, double p, double q) {
        double f = Math.sqrt(1 + p * p + q * q);
        double alongRow = dy / 2 * p / f;
        double upColumn = dx / 2 * q / f;
        changeNext[j] += alongRow;
        changeNext[j - 1] -= alongRow;
        int column = falling ? j - 1 : j;
        changeNext[column] += upColumn;
        change[column] -= upColumn;
        return bend(p, q, f);
    }

    /** Half the trace of the second derivatives by the three heights, for half a unit of area. */
    private double bend(double p, double q, double f) {
        double mixed = p * q / (dx * dy);
        return ((1 + q * q) / (dx * dx) + (1 + p * p) / (dy * dy) + (falling ? mixed : -mixed)) / (f * f * f);
    }

    private void endRow() {
        double squares = 0;
        for (double one : change) {
            squares += one * one;
        }
        squaresM2 += squares;
        double[] done = change;
        change = changeNext;
        changeNext = done;
        Arrays.fill(changeNext, 0);
    }

    /** What the errors of heights do; to be asked once, after the last row. */
    GridNoise noise(double heightM, double projectedM2) {
        endRow();
        return new GridNoise(heightM, squaresM2, bends, projectedM2);
    }
}
