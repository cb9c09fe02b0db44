package io.github.bedjoint.labour;

import java.util.Arrays;
import java.util.Collection;
import java.util.function.ToDoubleFunction;

/** Sums that do not depend on the order of their terms, to the last bit. */
final class Totals {
    private Totals() {}

    static <T> double of(Collection<T> terms, ToDoubleFunction<T> value) {
        if (terms.size() == 1) {
            return value.applyAsDouble(terms.iterator().next());
        }
        double[] sorted = new double[terms.size()];
        int at = 0;
        for (T term : terms) {
            sorted[at++] = value.applyAsDouble(term);
        }
        Arrays.sort(sorted);
        double sum = 0;
        for (double term : sorted) {
            sum += term;
        }
        return sum;
    }
}
