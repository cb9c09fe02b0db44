package io.github.bedjoint.risk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.units.Measure;
import io.github.bedjoint.working.WorkingCheck;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

class RiskProperties {

    @Property
    void draw_anyThreePoints_staysInsideAndShowsItsWorking(
            @ForAll @DoubleRange(min = -1e6, max = 1e6) double low, @ForAll @DoubleRange(max = 1e5) double toMode,
            @ForAll @DoubleRange(max = 1e5) double toHigh, @ForAll boolean pert, @ForAll long seed) {
        double mode = low + toMode;
        double high = mode + toHigh;
        Spread spread = pert ? Spread.pert(low, mode, high) : Spread.triangular(low, mode, high);

        for (int i = 0; i < 20; i++) {
            assertThat(spread.draw(Streams.of(seed, "x").of(i), new Shape.Redraws())).isBetween(low, high);
        }
        // To the digits that a - b leaves of a million.
        double digits = 1e-9 * (1 + Math.abs(low) + Math.abs(high));
        assertThat(spread.mean()).isBetween(low - digits, high + digits);
        // No spread between two points is wider than half of it at either end.
        assertThat(Math.sqrt(spread.variance())).isLessThanOrEqualTo((high - low) / 2 + digits);
        if (low >= 0 && high > low * 1.01) {
            WorkingCheck.check(spread.working());
        }
    }

    @Property
    void percentile_anyFigures_risesAndStaysInside(
            @ForAll @Size(min = 1, max = 60) List<@DoubleRange(min = -1e6, max = 1e6) Double> figures, @ForAll @DoubleRange(max = 1) double one,
            @ForAll @DoubleRange(max = 1) double other) {
        Outlook outlook = Outlook.of(Outcome.COST, figures.stream().mapToDouble(f -> f).toArray(), List.of(), List.of());
        List<Double> shuffled = new ArrayList<>(figures);
        Collections.shuffle(shuffled, new Random(figures.size()));
        Outlook same = Outlook.of(Outcome.COST, shuffled.stream().mapToDouble(f -> f).toArray(), List.of(), List.of());

        assertThat(outlook.percentile(Math.min(one, other))).isLessThanOrEqualTo(outlook.percentile(Math.max(one, other)));
        assertThat(outlook.percentile(0)).isEqualTo(Collections.min(figures) + 0.0);
        assertThat(outlook.percentile(1)).isEqualTo(Collections.max(figures) + 0.0);
        assertThat(outlook.mean()).isEqualTo(same.mean());
        assertThat(outlook.deviation()).isEqualTo(same.deviation());
    }

    @Property
    void shares_anyFigures_addUpToOneWithWhatIsJoint(@ForAll long seed, @ForAll @IntRange(min = 2, max = 400) int count, @ForAll @IntRange(min = 1, max = 6) int inputs) {
        Random random = new Random(seed);
        double[] figures = random.doubles(count).toArray();
        List<Input> named = new ArrayList<>();
        List<Bins> bins = new ArrayList<>();
        for (int k = 0; k < inputs; k++) {
            named.add(Input.of("input " + k, Measure.NUMBER, (job, value) -> job));
            double[] values = random.nextBoolean() ? random.doubles(count).toArray() : random.ints(count, 0, 3).asDoubleStream().toArray();
            bins.add(Bins.of(values));
            for (int i = 0; i < count; i++) {
                figures[i] += random.nextInt(3) * values[i];
            }
        }

        Outlook outlook = Outlook.of(Outcome.COST, figures, named, bins);

        double sum = outlook.shares().stream().mapToDouble(Outlook.InputShare::share).sum();
        assertThat(outlook.shares()).allMatch(share -> share.share() >= 0 && share.share() <= 1);
        assertThat(sum + outlook.jointly()).isCloseTo(1, within(1e-12));
    }

    @Property
    void of_otherSeedNameOrNumber_isAnotherStream(@ForAll long seed, @ForAll @IntRange(max = 1_000_000) int job) {
        long here = Streams.of(seed, "a").of(job).nextLong();

        assertThat(Streams.of(seed, "a").of(job).nextLong()).isEqualTo(here);
        assertThat(Streams.of(seed, "b").of(job).nextLong()).isNotEqualTo(here);
        assertThat(Streams.of(seed + 1, "a").of(job).nextLong()).isNotEqualTo(here);
        assertThat(Streams.of(seed, "a").of(job + 1).nextLong()).isNotEqualTo(here);
    }
}
