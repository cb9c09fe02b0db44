package io.github.bedjoint.patterns;

/**
 * A small dense revised simplex for minimising cost x under A x = b, x at least 0, where columns come one by one.
 *
 * <p>Doubles only guide the search: every bound drawn from them is computed again in whole numbers.
 */
final class Simplex {

    /** A column with few entries; {@code tag} is the number of its pattern, or -1. */
    record Column(int[] row, double[] value, double cost, int tag) {

        static Column unit(int row, double value, double cost) {
            return new Column(new int[] {row}, new double[] {value}, cost, -1);
        }
    }

    private static final double TINY = 1e-9;

    private final int rows;
    private final Work work;
    private final double[][] inverse;
    private final double[] level;
    private final double[] dual;
    private final Column[] basis;

    /** Starts from unit columns, one for each row, with right sides that are not negative. */
    Simplex(Column[] start, double[] rightSide, Work work) {
        rows = start.length;
        this.work = work;
        inverse = new double[rows][rows];
        level = rightSide.clone();
        dual = new double[rows];
        basis = start.clone();
        for (int i = 0; i < rows; i++) {
            inverse[i][i] = 1;
            dual[i] = start[i].cost;
        }
    }

    int rows() {
        return rows;
    }

    double dual(int row) {
        return dual[row];
    }

    Column basic(int row) {
        return basis[row];
    }

    double level(int row) {
        return level[row];
    }

    double objective() {
        double sum = 0;
        for (int i = 0; i < rows; i++) {
            sum += basis[i].cost * level[i];
        }
        return sum;
    }

    /** What the objective changes by for each unit of a column. */
    double reducedCost(Column column) {
        double cost = column.cost;
        for (int k = 0; k < column.row.length; k++) {
            cost -= dual[column.row[k]] * column.value[k];
        }
        return cost;
    }

    /** Brings a column into the basis; false if nothing limits it or the pivot is too small to trust. */
    boolean enter(Column column) {
        double[] along = new double[rows];
        for (int i = 0; i < rows; i++) {
            double sum = 0;
            for (int k = 0; k < column.row.length; k++) {
                sum += inverse[i][column.row[k]] * column.value[k];
            }
            along[i] = sum;
        }
        int leaving = leaving(along);
        if (leaving < 0) {
            return false;
        }
        double change = reducedCost(column);
        pivot(leaving, along);
        basis[leaving] = column;
        for (int j = 0; j < rows; j++) {
            dual[j] += change * inverse[leaving][j];
        }
        return true;
    }

    /** Least ratio; among near ties the largest pivot. */
    private int leaving(double[] along) {
        int best = -1;
        double ratio = Double.POSITIVE_INFINITY;
        for (int i = 0; i < rows; i++) {
            if (along[i] > 1e-7) {
                double r = Math.max(0, level[i]) / along[i];
                if (r < ratio - TINY || r < ratio + TINY && along[i] > along[best]) {
                    ratio = Math.min(r, ratio);
                    best = i;
                }
            }
        }
        return best;
    }

    private void pivot(int leaving, double[] along) {
        double[] row = inverse[leaving];
        double scale = 1 / along[leaving];
        for (int j = 0; j < rows; j++) {
            row[j] *= scale;
        }
        level[leaving] = Math.max(0, level[leaving]) * scale;
        int changed = 1;
        for (int i = 0; i < rows; i++) {
            double factor = along[i];
            if (i != leaving && Math.abs(factor) > 1e-12) {
                double[] other = inverse[i];
                for (int j = 0; j < rows; j++) {
                    other[j] -= factor * row[j];
                }
                level[i] = Math.max(0, level[i] - factor * level[leaving]);
                changed++;
            }
        }
        work.spend((long) changed * rows / 4 + rows);
    }
}
