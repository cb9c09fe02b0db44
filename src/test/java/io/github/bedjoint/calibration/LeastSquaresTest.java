package io.github.bedjoint.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.units.CsvTable;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The NIST StRD sets for linear least squares: how many digits of the certified values are met. Source: NIST StRD, see SOURCES.md.
 *
 * <p>The digits stated are those that orthogonal decomposition in doubles gives, rounded down. Powers of x are rounded to doubles before
 * the fit, so Filip (a polynomial of degree 10) cannot give more than about eight.
 */
class LeastSquaresTest {
    private static double[][] rows(String set, CsvTable table) {
        return table.rows().stream()
                .map(row -> {
                    if (set.equals("longley")) {
                        double[] cells = new double[table.columns().size()];
                        cells[0] = 1;
                        for (int k = 1; k < cells.length; k++) {
                            cells[k] = row.number(table.columns().get(k));
                        }
                        return cells;
                    }
                    double x = row.number("x");
                    int degree = set.equals("filip") ? 10 : set.startsWith("wampler") ? 5 : 1;
                    double[] powers = new double[degree + 1];
                    powers[0] = 1;
                    for (int k = 1; k <= degree; k++) {
                        powers[k] = powers[k - 1] * x;
                    }
                    return set.equals("noint1") ? new double[] {x} : powers;
                })
                .toArray(double[][]::new);
    }

    /** Digits that agree: minus the logarithm of the relative error, of the error itself where zero is certified. */
    private static double digits(double value, double certified) {
        double error = certified == 0 ? Math.abs(value) : Math.abs(value / certified - 1);
        return error == 0 ? 16 : -Math.log10(error);
    }

    @ParameterizedTest
    @CsvSource({
        // set, digits of coefficients, of standard errors, of the residual standard deviation
        "norris, 11, 13, 13",
        "noint1, 14, 14, 14",
        "longley, 12, 12, 12",
        "wampler1, 8, 8, 8",
        "wampler3, 8, 12, 12",
        "filip, 7, 7, 7"
    })
    void solve_strdSet_meetsTheStatedDigits(String set, double ofCoefficients, double ofErrors, double ofDeviation) {
        CsvTable table = Resources.table("strd/" + set + ".csv");
        double[][] rows = rows(set, table);
        double[] y = table.rows().stream().mapToDouble(row -> row.number("y")).toArray();
        double[] weights = new double[y.length];
        Arrays.fill(weights, 1);
        LeastSquares solved = new LeastSquares(rows, y, weights);
        double[][] covariance = solved.covariance();
        double squares = Arrays.stream(solved.residuals()).map(e -> e * e).sum();
        double deviation = Math.sqrt(squares / (y.length - rows[0].length));

        List<CsvTable.Row> certified = Resources.table("strd/certified_recomputed_exact.csv").rows().stream()
                .filter(row -> row.text("dataset").equals(set))
                .toList();
        assertThat(certified).hasSize(rows[0].length);
        double worst = 99;
        double worstError = 99;
        for (int j = 0; j < certified.size(); j++) {
            worst = Math.min(worst, digits(solved.coefficients[j], certified.get(j).number("estimate")));
            worstError = Math.min(worstError, digits(deviation * Math.sqrt(covariance[j][j]), certified.get(j).number("std_error")));
        }
        assertThat(worst).as("digits of coefficients").isGreaterThanOrEqualTo(ofCoefficients);
        assertThat(worstError).as("digits of standard errors").isGreaterThanOrEqualTo(ofErrors);
        assertThat(digits(deviation, certified.get(0).number("residual_sd"))).as("digits of the deviation").isGreaterThanOrEqualTo(ofDeviation);
    }

    /**
     * Rows (1, 2, 0), (0, 3, 3), (1, 3, 0) and times 6, 3, 0. Without a limit the second is negative. With the second at zero the first is the mean of 6 and 0, 3, and the
     * third 3 / 3 = 1; what is left, (3, 0, -3), does not help the second: 2 x 3 + 3 x 0 - 3 x 3 = -3. The second helps most at first, so that it enters and has to leave again.
     */
    @Test
    void nonNegative_columnThatHelpedFirst_leavesAgain() {
        double[][] rows = {{1, 2, 0}, {0, 3, 3}, {1, 3, 0}};
        double[] times = {6, 3, 0};
        double[] equal = {1, 1, 1};
        assertThat(new LeastSquares(rows, times, equal).coefficients[1]).isNegative();
        double[] found = new NonNegative(rows, times, equal).solve();
        assertThat(found[0]).isCloseTo(3, within(1e-12));
        assertThat(found[1]).isZero();
        assertThat(found[2]).isCloseTo(1, within(1e-12));
    }

    /** Times below zero are helped by nothing. */
    @Test
    void nonNegative_timesBelowZero_areHelpedByNothing() {
        assertThat(new NonNegative(new double[][] {{1, 2}, {3, 4}}, new double[] {-1, -2}, new double[] {1, 1}).solve()).containsExactly(0, 0);
    }
}
