package io.github.bedjoint.calibration;

import org.ojalgo.matrix.decomposition.QR;
import org.ojalgo.matrix.decomposition.SingularValue;
import org.ojalgo.matrix.store.MatrixStore;
import org.ojalgo.matrix.store.R064Store;

/**
 * Least squares by orthogonal decomposition, never by the normal equations.
 *
 * <p>Columns are first divided by a power of two near their length, which costs no digit and keeps columns of very different size apart from the question whether they can be told
 * apart. A row of weight w is multiplied by its root.
 */
final class LeastSquares {
    private final double[] scales;
    private final R064Store scaled;
    private final QR<Double> qr;
    private final double[] rootWeights;
    private final double[] target;
    final double[] coefficients;

    LeastSquares(double[][] rows, double[] y, double[] weights) {
        int n = rows.length;
        int p = rows[0].length;
        scales = new double[p];
        scaled = R064Store.FACTORY.make(n, p);
        rootWeights = new double[n];
        target = new double[n];
        for (int j = 0; j < p; j++) {
            double squares = 0;
            for (int i = 0; i < n; i++) {
                squares += weights[i] * rows[i][j] * rows[i][j];
            }
            scales[j] = Math.scalb(1.0, Math.getExponent(Math.sqrt(squares)));
        }
        for (int i = 0; i < n; i++) {
            rootWeights[i] = Math.sqrt(weights[i]);
            target[i] = y[i] * rootWeights[i];
            for (int j = 0; j < p; j++) {
                scaled.set(i, j, rows[i][j] * rootWeights[i] / scales[j]);
            }
        }
        qr = QR.R064.make(scaled);
        qr.decompose(scaled);
        MatrixStore<Double> solution = qr.getSolution(R064Store.FACTORY.column(target));
        coefficients = new double[p];
        for (int j = 0; j < p; j++) {
            coefficients[j] = solution.doubleValue(j, 0) / scales[j];
        }
    }

    /** What is left of each target, by weight. */
    double[] residuals() {
        double[] left = target.clone();
        for (int i = 0; i < left.length; i++) {
            for (int j = 0; j < coefficients.length; j++) {
                left[i] -= scaled.doubleValue(i, j) * coefficients[j] * scales[j];
            }
        }
        return left;
    }

    /** The inverse of X'WX. */
    double[][] covariance() {
        // The solution for a unit matrix is R^-1 Q'; times its own transpose it is (R'R)^-1.
        MatrixStore<Double> solved = qr.getSolution(R064Store.FACTORY.makeEye(target.length, target.length));
        int p = coefficients.length;
        double[][] covariance = new double[p][p];
        for (int a = 0; a < p; a++) {
            for (int b = 0; b < p; b++) {
                double sum = 0;
                for (int i = 0; i < target.length; i++) {
                    sum += solved.doubleValue(a, i) * solved.doubleValue(b, i);
                }
                covariance[a][b] = sum / scales[a] / scales[b];
            }
        }
        return covariance;
    }

    /** Largest over smallest singular value of the columns brought to length one. */
    double condition() {
        R064Store unit = scaled.copy();
        for (int j = 0; j < coefficients.length; j++) {
            double squares = 0;
            for (int i = 0; i < target.length; i++) {
                squares += unit.doubleValue(i, j) * unit.doubleValue(i, j);
            }
            for (int i = 0; i < target.length; i++) {
                unit.set(i, j, squares > 0 ? unit.doubleValue(i, j) / Math.sqrt(squares) : 0);
            }
        }
        SingularValue<Double> values = SingularValue.R064.make(unit);
        values.decompose(unit);
        double[] sizes = values.getSingularValues().toRawCopy1D();
        return sizes[sizes.length - 1] > 0 ? sizes[0] / sizes[sizes.length - 1] : Double.POSITIVE_INFINITY;
    }
}
