package io.github.bedjoint.texture;

/**
 * Adds up the triangles of a height grid, two a cell, row by row. A cell with a missing corner is left out and counted.
 *
 * <p>Sums are kept per row and then added, so that millions of cells lose no digits that matter.
 */
final class TriangleSum {
    private final double dx;
    private final double dy;
    private final boolean falling;

    private double areaM2;
    private double slopeM2;
    private double stepM2;
    private double steepest;
    private long cells;
    private long missing;

    TriangleSum(double dx, double dy, Diagonal diagonal) {
        this.dx = dx;
        this.dy = dy;
        this.falling = diagonal == Diagonal.FALLING;
    }

    /** The cells between a row and the next. */
    void add(double[] row, double[] next) {
        double overX = 1 / dx;
        double overY = 1 / dy;
        double areas = 0;
        double squares = 0;
        double steps = 0;
        double highest = steepest * steepest;
        int gaps = 0;
        double a = row[0];
        double d = next[0];
        double left = (d - a) * overY;
        double leftSquare = left * left;
        double leftStep = Math.abs(left);
        for (int j = 1; j < row.length; j++) {
            double b = row[j];
            double c = next[j];
            double right = (c - b) * overY;
            double low = (b - a) * overX;
            double high = (c - d) * overX;
            double rightSquare = right * right;
            double lowSquare = low * low;
            double highSquare = high * high;
            double rightStep = Math.abs(right);
            // Each triangle has the slope of one row edge and one column edge; which two meet depends on the diagonal.
            double sum = falling
                    ? Math.sqrt(1 + lowSquare + rightSquare) + Math.sqrt(1 + highSquare + leftSquare)
                    : Math.sqrt(1 + lowSquare + leftSquare) + Math.sqrt(1 + highSquare + rightSquare);
            if (!Double.isNaN(sum)) {
                double square = (lowSquare + highSquare) + (leftSquare + rightSquare);
                areas += sum;
                squares += square;
                steps += (Math.abs(low) + Math.abs(high)) + (leftStep + rightStep);
                // The sum of the four is not less than the greatest of them, so most cells are told apart by one comparison.
                if (square > highest) {
                    highest = Math.max(highest, Math.max(Math.max(lowSquare, highSquare), Math.max(leftSquare, rightSquare)));
                }
            } else {
                gaps++;
            }
            a = b;
            d = c;
            left = right;
            leftSquare = rightSquare;
            leftStep = rightStep;
        }
        double half = dx * dy / 2;
        areaM2 += areas * half;
        slopeM2 += squares * half;
        stepM2 += steps * half;
        steepest = Math.max(steepest, Math.sqrt(highest));
        cells += row.length - 1 - gaps;
        missing += gaps;
    }

    /** Area of all triangles. */
    double areaM2() {
        return areaM2;
    }

    /** Squared slope integrated over the projected area. */
    double slopeM2() {
        return slopeM2;
    }

    /** Area of upright steps if every difference of height between neighbours were one. */
    double stepM2() {
        return stepM2;
    }

    /** Steepest slope between two neighbours, height by distance. */
    double steepest() {
        return steepest;
    }

    /** Area of the wall that the cells counted cover. */
    double projectedM2() {
        return cells * dx * dy;
    }

    /** Cells counted. */
    long cells() {
        return cells;
    }

    /** Cells left out. */
    long missing() {
        return missing;
    }
}
