package io.github.bedjoint.risk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.working.WorkingCheck;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class OutlookTest {
    private static final int MANY = 100_000;

    private static Outlook of(double... figures) {
        return Outlook.of(Outcome.COST, figures, List.of(), List.of());
    }

    private static Input input(String name) {
        return Input.of(name, Measure.NUMBER, (job, value) -> job);
    }

    private static double[] draws(String name, Spread spread) {
        Streams streams = Streams.of(3, name);
        double[] draws = new double[MANY];
        for (int i = 0; i < MANY; i++) {
            draws[i] = spread.draw(streams.of(i), new Shape.Redraws());
        }
        return draws;
    }

    /** Source: the NIST percentile example as Apache commons-statistics tests it (QuantileTest), type 7. */
    @Test
    void percentile_nistExample_isType7() {
        Outlook nist = of(95.1772, 95.1567, 95.1937, 95.1959, 95.1442, 95.0610, 95.1591, 95.1195, 95.1772, 95.0925, 95.1990, 95.1682);

        assertThat(nist.percentile(0.9)).isCloseTo(95.19568, within(1e-5));
        WorkingCheck.check(nist.working(0.9));
    }

    /** Source: the same tests, (1, 3, 2, 4) at 0.3, 0.25, 0.75 and 0.5, type 7. */
    @Test
    void percentile_fourNumbers_asPublished() {
        Outlook four = of(1, 3, 2, 4);

        assertThat(four.percentile(0.3)).isCloseTo(1.9, within(1e-12));
        assertThat(four.percentile(0.25)).isCloseTo(1.75, within(1e-12));
        assertThat(four.percentile(0.75)).isCloseTo(3.25, within(1e-12));
        assertThat(four.percentile(0.5)).isCloseTo(2.5, within(1e-12));
        assertThat(four.percentile(0)).isEqualTo(1);
        assertThat(four.percentile(1)).isEqualTo(4);
        WorkingCheck.check(four.working(1));
    }

    @Test
    void meanAndDeviation_workedByHand() {
        // 2, 4, 9: mean 5; squares 9 + 1 + 16 = 26, / 2 = 13
        assertThat(of(4, 2, 9).mean()).isCloseTo(5, within(1e-12));
        assertThat(of(4, 2, 9).deviation()).isCloseTo(Math.sqrt(13), within(1e-12));
        assertThat(of(7).deviation()).isZero();
        assertThat(of(4, 2, 9).chanceAbove(2)).isCloseTo(2 / 3.0, within(1e-12));
    }

    @Test
    void percentile_ofNothing_throws() {
        assertThatThrownBy(() -> of().percentile(0.5)).isInstanceOf(IllegalStateException.class);
        assertThatThrownBy(() -> of(Double.NaN).mean()).isInstanceOf(IllegalStateException.class);
        assertThatThrownBy(() -> of(1).percentile(1.1)).isInstanceOf(RefusedException.class);
        assertThat(of(Double.NaN, 3).count()).isEqualTo(1);
    }

    @Test
    void shares_sumOfIndependentInputs_areTheirVariances() {
        // y = a + b + c: the exact first-order share of each is its variance over the sum of variances.
        Spread a = Spread.triangular(0, 3, 9);
        Spread b = Spread.pert(0, 1, 5);
        Spread c = Spread.list(0, 1);
        double[] x = draws("a", a);
        double[] y = draws("b", b);
        double[] z = draws("c", c);
        double[] sum = new double[MANY];
        for (int i = 0; i < MANY; i++) {
            sum[i] = x[i] + y[i] + z[i];
        }
        double all = a.variance() + b.variance() + c.variance();

        Outlook outlook = Outlook.of(
                Outcome.COST, sum, List.of(input("a"), input("b"), input("c")), List.of(Bins.of(x), Bins.of(y), Bins.of(z)));

        assertThat(outlook.shares().get(0).share()).isCloseTo(a.variance() / all, within(0.01));
        assertThat(outlook.shares().get(1).share()).isCloseTo(b.variance() / all, within(0.01));
        assertThat(outlook.shares().get(2).share()).isCloseTo(c.variance() / all, within(0.01));
        assertThat(outlook.jointly()).isLessThan(0.01);
    }

    @Test
    void shares_productOfCentredInputs_areAllJoint() {
        // y = a b with both means 0: neither alone tells anything of y.
        double[] x = draws("a", Spread.triangular(-1, 0, 1));
        double[] y = draws("b", Spread.triangular(-1, 0, 1));
        double[] product = new double[MANY];
        for (int i = 0; i < MANY; i++) {
            product[i] = x[i] * y[i];
        }

        Outlook outlook = Outlook.of(Outcome.COST, product, List.of(input("a"), input("b")), List.of(Bins.of(x), Bins.of(y)));

        assertThat(outlook.jointly()).isGreaterThan(0.99);
    }

    @Test
    void shares_constantInputOrFigure_areZero() {
        double[] x = draws("a", Spread.triangular(0, 1, 2));
        double[] same = new double[MANY];

        assertThat(Bins.of(same).shareOf(x)).isZero();
        assertThat(Bins.of(x).shareOf(same)).isZero();
        assertThat(Outlook.of(Outcome.COST, same, List.of(input("a")), List.of(Bins.of(x))).jointly()).isZero();
    }

    @Test
    void bins_fewValues_areTheirOwnGroups() {
        assertThat(Bins.of(new double[] {5, 1, 5, 1, 1, 5, 5, 5})).satisfies(bins -> {
            assertThat(bins.count()).isEqualTo(2);
            assertThat(bins.of()).containsExactly((short) 1, (short) 0, (short) 1, (short) 0, (short) 0, (short) 1, (short) 1, (short) 1);
        });
    }

    /** By hand: groups of 2 and 3 with means 2 and 22/3 about 5.2: between 34.13333, in all 40.8, within 6.66667 / 3; (34.13333 - 2.22222) / 40.8. */
    @Test
    void shareOf_twoGroups_isWorkedByHand() {
        // The third group holds only a job without the figure.
        Bins two = new Bins(3, new short[] {0, 0, 1, 1, 1, 2});
        double[] figures = {1, 3, 6, 7, 9, Double.NaN};
        assertThat(two.shareOf(figures)).isCloseTo(0.782135, within(1e-6));
        // Large figures such as dates keep their digits: seconds of the epoch in 2027.
        assertThat(two.shareOf(Arrays.stream(figures).map(figure -> figure + 1.8e9).toArray())).isCloseTo(0.782135, within(1e-6));
    }

    @Test
    void deviation_ofLargeFigures_keepsItsDigits() {
        // 1, 2 and 4 s: squares from the mean of 7/3 are 16/9 + 1/9 + 25/9 = 42/9, / 2.
        assertThat(of(1.8e9 + 1, 1.8e9 + 2, 1.8e9 + 4).deviation()).isCloseTo(Math.sqrt(21 / 9.0), within(1e-6));
    }

    @Test
    void shares_thatPassOneTogether_areScaledToOne() {
        double[] x = draws("a", Spread.triangular(0, 3, 9));
        Outlook twice = Outlook.of(Outcome.COST, x, List.of(input("a"), input("b")), List.of(Bins.of(x), Bins.of(x)));
        assertThat(twice.shares()).allSatisfy(one -> assertThat(one.share()).isCloseTo(0.5, within(1e-12)));
        assertThat(twice.jointly()).isZero();
    }
}
