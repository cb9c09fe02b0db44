package io.github.bedjoint.risk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Read;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.working.WorkingCheck;
import java.util.Arrays;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpreadTest {
    private static final int MANY = 200_000;

    private static double[] draws(Spread spread) {
        Streams streams = Streams.of(11, "test");
        Shape.Redraws redraws = new Shape.Redraws();
        double[] draws = new double[MANY];
        for (int i = 0; i < MANY; i++) {
            draws[i] = spread.draw(streams.of(i), redraws);
        }
        return draws;
    }

    private static Outlook outlook(Spread spread) {
        return Outlook.of(Outcome.COST, draws(spread), List.of(), List.of());
    }

    /** Source: test data of Apache commons-statistics, triangular distribution (1, 2, 5): mean 8/3, variance 0.722222. */
    @Test
    void moments_triangular_asPublished() {
        Spread spread = Spread.triangular(1, 2, 5);

        assertThat(spread.mean()).isCloseTo(8 / 3.0, within(1e-12));
        assertThat(spread.variance()).isCloseTo(0.722222, within(1e-6));
    }

    /** Mean (a + 4 m + b)/6 = (10 + 48 + 20)/6 = 13 and variance (mu - a)(b - mu)/7 = 3 x 7/7 = 3; R 4.2.2 gives the same. */
    @Test
    void moments_pert_asR() {
        Spread spread = Spread.pert(10, 12, 20);

        assertThat(spread.mean()).isCloseTo(13, within(1e-12));
        assertThat(spread.variance()).isCloseTo(3, within(1e-12));
    }

    /** Source: percentiles printed by R 4.2.2 for (10, 12, 20). Five standard errors of a percentile at this count are below 0.03. */
    @ParameterizedTest
    @CsvSource({"triangular, 13.675445, 16, 18", "pert, 12.766723, 14.502586, 16.212767"})
    void draws_threePoints_havePercentilesOfR(String kind, double p50, double p80, double p95) {
        Outlook outlook = outlook(kind.equals("pert") ? Spread.pert(10, 12, 20) : Spread.triangular(10, 12, 20));

        assertThat(outlook.percentile(0.5)).isCloseTo(p50, within(0.03));
        assertThat(outlook.percentile(0.8)).isCloseTo(p80, within(0.04));
        assertThat(outlook.percentile(0.95)).isCloseTo(p95, within(0.05));
    }

    @ParameterizedTest
    @CsvSource({"triangular, 2, 2, 5", "triangular, 2, 5, 5", "pert, 2, 2, 5", "pert, 2, 5, 5", "pert, 0, 1, 10", "triangular, 3, 3, 3", "pert, 3, 3, 3"})
    void draws_anyThreePoints_stayInsideAndHaveTheExactMoments(String kind, double low, double mode, double high) {
        Spread spread = kind.equals("pert") ? Spread.pert(low, mode, high) : Spread.triangular(low, mode, high);
        double[] draws = draws(spread);
        double mean = Arrays.stream(draws).average().orElseThrow();

        assertThat(Arrays.stream(draws)).allMatch(value -> value >= low && value <= high);
        // Six standard errors.
        assertThat(mean).isCloseTo(spread.mean(), within(6 * Math.sqrt(spread.variance() / MANY) + 1e-12));
        assertThat(Arrays.stream(draws).map(value -> (value - mean) * (value - mean)).average().orElseThrow())
                .isCloseTo(spread.variance(), within(0.02 * spread.variance() + 1e-12));
    }

    @Test
    void draws_normal_belowLimitAreRedrawnAndCounted() {
        // Standard normal with limit -0.5: 30.85 % of all draws lie below (printed tables), so 0.3085/0.6915 = 0.446 redraws a job.
        Spread spread = Spread.normal(0, 1, -0.5);
        Streams streams = Streams.of(5, "normal");
        Shape.Redraws redraws = new Shape.Redraws();
        double sum = 0;
        for (int i = 0; i < MANY; i++) {
            double value = spread.draw(streams.of(i), redraws);
            assertThat(value).isGreaterThanOrEqualTo(-0.5);
            sum += value;
        }

        assertThat((double) redraws.count / MANY).isCloseTo(0.446, within(0.01));
        // Mean of a normal cut off below a: phi(a)/(1 - Phi(a)) = 0.352065/0.691462 = 0.509160.
        assertThat(spread.mean()).isCloseTo(0.509160, within(1e-5));
        assertThat(sum / MANY).isCloseTo(spread.mean(), within(0.01));
    }

    @Test
    void draws_list_areItsValuesAsGiven() {
        Spread spread = Spread.list(1.1, 2.3, 2.3, 9);

        assertThat(Arrays.stream(draws(spread)).distinct().sorted()).containsExactly(1.1, 2.3, 9.0);
        // (1.1 + 2.3 + 2.3 + 9)/4 = 3.675; squares from it: 6.630625 + 2 x 1.890625 + 28.355625 = 38.7675, /4 = 9.691875
        assertThat(spread.mean()).isCloseTo(3.675, within(1e-12));
        assertThat(spread.variance()).isCloseTo(9.691875, within(1e-12));
    }

    @Test
    void draws_ofCurves_haveTheDigitsOfAFloat() {
        assertThat(Arrays.stream(draws(Spread.pert(1, 2, 4)))).allMatch(value -> value.equals((double) value.floatValue()));
    }

    @Test
    void triangular_quantities_knowTheirMeasure() {
        Spread pace = Spread.triangular(Read.timePerArea("8 min/m2"), Read.timePerArea("10 min/m2"), Read.timePerArea("15 min/m2"));

        assertThat(pace.measure()).isEqualTo(Measure.TIME_PER_AREA);
        assertThat(pace.mean()).isCloseTo(11 * 60, within(1e-9));
        assertThat(pace).hasToString("triangular 8 min/m², 10 min/m², 15 min/m²");
        assertThat(pace).isEqualTo(Spread.triangular(Read.timePerArea("480 s/m2"), Read.timePerArea("600 s/m2"), Read.timePerArea("900 s/m2")));
        assertThat(Spread.pert(Money.parse("EUR 1"), Money.parse("EUR 2"), Money.parse("EUR 3"))).hasToString("pert EUR 1, EUR 2, EUR 3");
    }

    @Test
    void working_threePoints_showsMeanAndDeviation() {
        WorkingCheck.check(Spread.triangular(1, 2, 5).working());
        WorkingCheck.check(Spread.pert(10, 12, 20).working());
        assertThat(Spread.list(1.0).working().title()).contains("variance 0");
    }

    @Test
    void of_badPoints_refused() {
        assertThatThrownBy(() -> Spread.triangular(2, 1, 3)).isInstanceOf(RefusedException.class).hasMessageContaining("in this order");
        assertThatThrownBy(() -> Spread.pert(1, 4, 3)).isInstanceOf(RefusedException.class);
        assertThatThrownBy(() -> Spread.triangular(Double.NaN, 1, 3)).isInstanceOf(RefusedException.class);
        assertThatThrownBy(() -> Spread.normal(1, -1, 0)).isInstanceOf(RefusedException.class);
        assertThatThrownBy(() -> Spread.normal(1, 1, 2)).isInstanceOf(RefusedException.class).hasMessageContaining("above the mean");
        assertThatThrownBy(() -> Spread.list(new double[0])).isInstanceOf(RefusedException.class);
        assertThatThrownBy(() -> Spread.list(Money.parse("EUR 1"), Money.parse("USD 1"))).isInstanceOf(RefusedException.class);
        assertThatThrownBy(() -> Spread.list(List.of(Read.temperature("20 degC")))).isInstanceOf(RefusedException.class);
    }

    /** By hand from printed tables: with phi(-0.5) = 0.352065 and 1 - Phi(-0.5) = 0.691462, L = 0.509160 and 1 - 0.5 L - L^2 = 0.486176. */
    @Test
    void variance_normalAboveALimit_isThatOfWhatIsKept() {
        assertThat(Spread.normal(0, 1, -0.5).variance()).isCloseTo(0.486176, within(2e-6));
        assertThat(Spread.normal(5, 0, 1).variance()).isZero();
    }

    @Test
    void list_ofNothing_isRefused() {
        assertThatThrownBy(() -> Spread.list(List.<Quantity<Length>>of())).isInstanceOf(RefusedException.class).hasMessageContaining("at least one");
        assertThatThrownBy(() -> Spread.list(new Money[0])).isInstanceOf(RefusedException.class).hasMessageContaining("at least one");
    }

    @Test
    void shape_ends_areTheLeastAndTheGreatestValue() {
        assertThat(Spread.list(3, 1, 2).shape()).satisfies(list -> {
            assertThat(list.low()).isEqualTo(1);
            assertThat(list.high()).isEqualTo(3);
        });
        assertThat(Spread.normal(5, 1, 2).shape()).satisfies(normal -> {
            assertThat(normal.low()).isEqualTo(2);
            assertThat(normal.high()).isInfinite();
        });
        assertThat(Spread.triangular(4, 4, 4).shape()).satisfies(fixed -> {
            assertThat(fixed.low()).isEqualTo(4);
            assertThat(fixed.high()).isEqualTo(4);
        });
    }
}
