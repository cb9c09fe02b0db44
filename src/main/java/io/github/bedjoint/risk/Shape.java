package io.github.bedjoint.risk;

import java.util.Arrays;
import java.util.List;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.statistics.distribution.BetaDistribution;
import org.apache.commons.statistics.distribution.ContinuousDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.TriangularDistribution;
import org.apache.commons.statistics.distribution.TruncatedNormalDistribution;

/** How the values of a range are spread: draws and exact moments, in the inner unit. */
sealed interface Shape {

    /** One value; draws that are thrown away are counted. */
    double draw(UniformRandomProvider random, Redraws redraws);

    double mean();

    double variance();

    double low();

    double high();

    /** Counts draws that were thrown away. */
    final class Redraws {
        long count;
    }

    /** The same value always. */
    record Fixed(double value) implements Shape {
        @Override
        public double draw(UniformRandomProvider random, Redraws redraws) {
            return value;
        }

        @Override
        public double mean() {
            return value;
        }

        @Override
        public double variance() {
            return 0;
        }

        @Override
        public double low() {
            return value;
        }

        @Override
        public double high() {
            return value;
        }
    }

    /** Three points, by a distribution between the outer two; on the unit interval where {@code unit} is true. */
    record ThreePoints(double low, double mode, double high, ContinuousDistribution between, boolean unit) implements Shape {

        static Shape triangular(double low, double mode, double high) {
            return low == high ? new Fixed(low) : new ThreePoints(low, mode, high, TriangularDistribution.of(low, mode, high), false);
        }

        static Shape pert(double low, double mode, double high) {
            if (low == high) {
                return new Fixed(low);
            }
            double width = high - low;
            BetaDistribution beta = BetaDistribution.of(1 + 4 * (mode - low) / width, 1 + 4 * (high - mode) / width);
            return new ThreePoints(low, mode, high, beta, true);
        }

        @Override
        public double draw(UniformRandomProvider random, Redraws redraws) {
            double value = between.createSampler(random).sample();
            return Math.max(low, Math.min(high, coarse(unit ? low + (high - low) * value : value)));
        }

        @Override
        public double mean() {
            return unit ? low + (high - low) * between.getMean() : between.getMean();
        }

        @Override
        public double variance() {
            return between.getVariance() * (unit ? (high - low) * (high - low) : 1);
        }
    }

    /** Normal, draws below a limit thrown away. */
    record Normal(double average, double deviation, double least) implements Shape {
        @Override
        public double draw(UniformRandomProvider random, Redraws redraws) {
            ContinuousDistribution.Sampler sampler = NormalDistribution.of(average, deviation).createSampler(random);
            double value = coarse(sampler.sample());
            while (value < least) {
                redraws.count++;
                value = coarse(sampler.sample());
            }
            return value;
        }

        private ContinuousDistribution kept() {
            return TruncatedNormalDistribution.of(average, deviation, least, Double.POSITIVE_INFINITY);
        }

        @Override
        public double mean() {
            return kept().getMean();
        }

        @Override
        public double variance() {
            return kept().getVariance();
        }

        @Override
        public double low() {
            return least;
        }

        @Override
        public double high() {
            return Double.POSITIVE_INFINITY;
        }
    }

    /** Values that are equally likely. */
    record Listed(List<Double> values) implements Shape {
        @Override
        public double draw(UniformRandomProvider random, Redraws redraws) {
            return values.get(random.nextInt(values.size()));
        }

        @Override
        public double mean() {
            return sum(values.stream().mapToDouble(value -> value).toArray()) / values.size();
        }

        @Override
        public double variance() {
            double mean = mean();
            return sum(values.stream().mapToDouble(value -> (value - mean) * (value - mean)).toArray()) / values.size();
        }

        private static double sum(double[] terms) {
            Arrays.sort(terms);
            double sum = 0;
            for (double term : terms) {
                sum += term;
            }
            return sum;
        }

        @Override
        public double low() {
            return values.stream().mapToDouble(value -> value).min().orElseThrow();
        }

        @Override
        public double high() {
            return values.stream().mapToDouble(value -> value).max().orElseThrow();
        }
    }

    /**
     * A draw to the seven digits of a {@code float}: the last bits of {@link Math#exp} and its like may differ from one processor to
     * another, and must not show.
     */
    private static double coarse(double value) {
        return (float) value;
    }
}
