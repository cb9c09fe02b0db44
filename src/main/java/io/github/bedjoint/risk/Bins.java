package io.github.bedjoint.risk;

import java.util.Arrays;

/**
 * Simulated jobs sorted into groups of like values of one input: by value where there are few, otherwise in groups of about equal size.
 *
 * @param count how many groups
 * @param of    the group of each simulated job
 */
record Bins(int count, short[] of) {

    static Bins of(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        int most = Math.max(2, (int) Math.round(Math.cbrt(values.length)));
        double[] edges = edges(sorted, most);
        short[] of = new short[values.length];
        for (int i = 0; i < values.length; i++) {
            int at = Arrays.binarySearch(edges, values[i]);
            of[i] = (short) (at >= 0 ? at : -at - 1);
        }
        return new Bins(edges.length, of);
    }

    /** The greatest value of each group, in order and without repeats. */
    private static double[] edges(double[] sorted, int most) {
        double[] distinct = Arrays.stream(sorted).distinct().limit(most + 1L).toArray();
        if (distinct.length <= most) {
            return distinct;
        }
        double[] edges = new double[most];
        for (int group = 0; group < most; group++) {
            edges[group] = sorted[(int) ((long) sorted.length * (group + 1) / most) - 1];
        }
        return Arrays.stream(edges).distinct().toArray();
    }

    /**
     * The share of the variance of some figures that the groups explain: the correlation ratio with Kelley's correction for what chance
     * alone would explain. Figures that are not numbers are left out.
     */
    double shareOf(double[] figures) {
        long[] sizes = new long[count];
        double[] sums = new double[count];
        long n = 0;
        double sum = 0;
        for (int i = 0; i < figures.length; i++) {
            if (!Double.isNaN(figures[i])) {
                sizes[of[i]]++;
                sums[of[i]] += figures[i];
                n++;
                sum += figures[i];
            }
        }
        double mean = sum / n;
        double all = 0;
        for (double figure : figures) {
            all += Double.isNaN(figure) ? 0 : (figure - mean) * (figure - mean);
        }
        double between = 0;
        int groups = 0;
        for (int group = 0; group < count; group++) {
            if (sizes[group] > 0) {
                double off = sums[group] / sizes[group] - mean;
                between += sizes[group] * off * off;
                groups++;
            }
        }
        if (all <= 0 || groups < 2 || n <= groups) {
            return 0;
        }
        double within = (all - between) / (n - groups);
        return Math.max(0, (between - (groups - 1) * within) / all);
    }
}
