package io.github.bedjoint.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BestTest {
    /** Offers of cost and signature, the node being the count of the offer. */
    private static Best offered(int wanted, double[]... offers) {
        Best best = new Best(wanted);
        for (int i = 0; i < offers.length; i++) {
            best.offer(offers[i][0], 1, (long) offers[i][1], i, 10 + i);
        }
        return best;
    }

    private static List<Integer> nodes(Best best) {
        List<Integer> nodes = new ArrayList<>();
        for (int i = 0; i < best.size(); i++) {
            nodes.add(best.node(i));
        }
        return nodes;
    }

    @Test
    void offer_fewerThanWanted_areAllKeptInOrder() {
        assertThat(offered(3).size()).isZero();
        Best best = offered(3, new double[] {5, 1}, new double[] {3, 2}, new double[] {4, 3});
        assertThat(nodes(best)).containsExactly(1, 2, 0);
        assertThat(best.cost(0)).isEqualTo(3);
        assertThat(best.cost(2)).isEqualTo(5);
        assertThat(best.signature(1)).isEqualTo(3);
        assertThat(best.rank(1)).isEqualTo(12);
    }

    @Test
    void offer_moreThanWanted_dropTheDearest() {
        assertThat(nodes(offered(2, new double[] {5, 1}, new double[] {3, 2}, new double[] {4, 3}))).containsExactly(1, 2);
        assertThat(nodes(offered(2, new double[] {3, 1}, new double[] {4, 2}, new double[] {5, 3}))).containsExactly(0, 1);
        assertThat(nodes(offered(1, new double[] {3, 1}, new double[] {2, 2}))).containsExactly(1);
    }

    @Test
    void offer_sameLengths_keepOnlyTheCheaper() {
        // The second has the lengths of the first and is dearer, the fourth is cheaper and takes its place, before the third.
        Best best = offered(3, new double[] {5, 1}, new double[] {6, 1}, new double[] {4, 2}, new double[] {3, 1});
        assertThat(nodes(best)).containsExactly(3, 2);
        assertThat(best.signature(0)).isEqualTo(1);
        assertThat(best.signature(1)).isEqualTo(2);
        // The one replaced need not be the next nor the last.
        assertThat(nodes(offered(4, new double[] {1, 7}, new double[] {3, 2}, new double[] {4, 1}, new double[] {5, 3}, new double[] {2, 1})))
                .containsExactly(0, 4, 1, 3);
    }

    @ParameterizedTest
    @CsvSource({
        // Fewer panels at the same cost are better, as many are not; a billionth of the cost is no difference, twice that is one.
        "10,        2, 10,          1, true",
        "10,        1, 10,          1, false",
        "10,        1, 10,          2, false",
        "10,        1, 9.9999,      9, true",
        "1000000,   2, 1000000.0005, 1, true",
        "1000000,   2, 1000000.002, 1, false",
        "1000000,   2, 999999.9995, 2, false",
        "0.1,       2, 0.1000000005, 1, true",
        "0.1,       2, 0.100000002, 1, false"})
    void offer_second_isBetterByCostThenByPanels(double cost, int panels, double secondCost, int secondPanels, boolean better) {
        Best best = new Best(2);
        best.offer(cost, panels, 1, 0, 0);
        best.offer(secondCost, secondPanels, 2, 1, 0);
        assertThat(nodes(best)).isEqualTo(better ? List.of(1, 0) : List.of(0, 1));
        assertThat(best.panels(0)).isEqualTo(better ? secondPanels : panels);
    }

    @ParameterizedTest
    @CsvSource({"1, 5, 2, 1, true", "2, 1, 1, 5, false", "1, 2, 1, 2, true", "1, 1, 1, 2, true", "1, 3, 1, 2, false"})
    void isNoWorse_cost_thenPanels(double cost, int panels, double otherCost, int otherPanels, boolean noWorse) {
        Best one = new Best(1);
        Best other = new Best(1);
        one.offer(cost, panels, 0, 0, 0);
        other.offer(otherCost, otherPanels, 0, 0, 0);
        assertThat(one.isNoWorse(other)).isEqualTo(noWorse);
    }
}
