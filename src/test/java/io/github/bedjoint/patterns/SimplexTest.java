package io.github.bedjoint.patterns;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.bounds.ModelMaker;
import io.github.bedjoint.rolls.Cut;
import io.github.bedjoint.rolls.CuttingTerms;
import io.github.bedjoint.rolls.Stock;
import java.util.List;
import org.junit.jupiter.api.Test;

class SimplexTest {

    private static Simplex.Column column(double cost, double... value) {
        int[] row = new int[value.length];
        for (int i = 0; i < row.length; i++) {
            row[i] = i;
        }
        return new Simplex.Column(row, value, cost, 0);
    }

    private static double solve(Simplex simplex, Simplex.Column... columns) {
        boolean better = true;
        while (better) {
            better = false;
            for (Simplex.Column c : columns) {
                if (simplex.reducedCost(c) < -1e-9) {
                    better = simplex.enter(c);
                }
            }
        }
        return simplex.objective();
    }

    @Test
    void enter_twoByTwo_reachesTheVertexWorkedByHand() {
        // Minimise x + y with 2x + y = 8, x + 3y = 9: both rows hold at x = 3, y = 2, so 5.
        Simplex simplex = new Simplex(
                new Simplex.Column[] {Simplex.Column.unit(0, 1, 100), Simplex.Column.unit(1, 1, 100)},
                new double[] {8, 9},
                new Work(1_000));
        assertThat(solve(simplex, column(1, 2, 1), column(1, 1, 3))).isCloseTo(5, within(1e-9));
        // Duals p, q with 2p + q = 1, p + 3q = 1: p = 0.4, q = 0.2.
        assertThat(simplex.dual(0)).isCloseTo(0.4, within(1e-9));
        assertThat(simplex.dual(1)).isCloseTo(0.2, within(1e-9));
    }

    @Test
    void enter_nothingLimitsTheColumn_isRefused() {
        Simplex simplex =
                new Simplex(new Simplex.Column[] {Simplex.Column.unit(0, 1, 1)}, new double[] {1}, new Work(1_000));
        assertThat(simplex.enter(column(-1, -1))).isFalse();
    }

    @Test
    void solve_relaxedJob_isTheValueWorkedByHand() {
        // Rolls of 10; panels 6 (2 times), 4 (1 time): patterns {6, 4} once and {6} once, so 2 rolls; nothing is cheaper,
        // since two panels of 6 never share a roll. With panels of 3 in fives: 5/3 rolls.
        assertThat(relaxed(new Cut("A", 1, 6, 2, ""), new Cut("B", 1, 4, 1, ""))).isCloseTo(2, within(1e-6));
        assertThat(relaxed(new Cut("A", 1, 3, 5, ""))).isCloseTo(5 / 3.0, within(1e-6));
    }

    private static double relaxed(Cut... cuts) {
        Model model = new ModelMaker(
                        List.of(cuts), List.of(new Stock("roll", 1, 10, 1, Stock.UNLIMITED, "")), CuttingTerms.plain())
                .model;
        PatternLp lp = new PatternLp(model, new PatternPool(), new Work(100_000));
        assertThat(lp.solve()).isEqualTo(PatternLp.End.SOLVED);
        return lp.shares().stream().mapToDouble(PatternLp.Share::rolls).sum();
    }
}
