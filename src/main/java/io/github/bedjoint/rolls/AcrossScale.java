package io.github.bedjoint.rolls;

import java.util.Collections;
import java.util.List;

/**
 * What a panel counts across a roll, and what panels that lie side by side count together at most.
 *
 * <p>Each step of a roll's length then holds at most {@code most}, so that panels with what they count across, times their
 * lengths with gaps, never add up to more than {@code most} times the usable length and one gap: panels side by side are turned into
 * lengths in a line. Counting each panel as its width gives areas; counting only panels wider than half the roll, as one, gives lengths.
 *
 * @param from widths in steps of 12.5 micrometres, rising
 * @param counts what a panel counts that reaches as far across as the width at the same place or farther, but not as far as the next one;
 *     0 below the first width
 * @param most for each row of the stock, in their order, what panels side by side on such a roll count together at most
 */
public record AcrossScale(List<Long> from, List<Long> counts, List<Long> most) {

    /**
     * Copies the lists.
     *
     * @param from as above
     * @param counts as above
     * @param most as above
     */
    public AcrossScale {
        from = List.copyOf(from);
        counts = List.copyOf(counts);
        most = List.copyOf(most);
    }

    /**
     * Each panel counts as one, and only one lies across a roll.
     *
     * @param stockRows rows of the stock
     * @return the scale of panels in a line
     */
    public static AcrossScale oneAcross(int stockRows) {
        return new AcrossScale(List.of(1L), List.of(1L), Collections.nCopies(stockRows, 1L));
    }

    /**
     * Whether it is the scale of panels in a line, or none at all.
     *
     * @return true if panels side by side have no part in it
     */
    public boolean isInLine() {
        return from.isEmpty() || equals(oneAcross(most.size()));
    }

    /**
     * What a panel counts.
     *
     * @param across how far it reaches across, in steps of 12.5 micrometres
     * @return 0 or more
     */
    public long count(long across) {
        int at = Collections.binarySearch(from, across);
        int k = at >= 0 ? at : -at - 2;
        return k < 0 ? 0 : counts.get(k);
    }
}
