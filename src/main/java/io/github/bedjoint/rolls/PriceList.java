package io.github.bedjoint.rolls;

import java.util.List;

/**
 * Whole-number prices of panels, and the most that a roll of each kind can hold at these prices.
 *
 * <p>Panels priced at P in total need rolls that hold at least P: the sum over the rolls opened of {@code held} is at
 * least the sum over the panels of {@code prices}. That is true for any prices, however they were found. What a roll holds is shown
 * for panels in a line, each as long as what it counts across times its length; see {@link AcrossScale}.
 *
 * @param prices price of one panel of each {@link Cut} row, 0 or more, in the order of the job
 * @param held for each {@link Stock} row in the order of the job and each way to leave a remnant (most used first), a
 *     number that no set of panels cut from one such roll exceeds
 * @param across what panels count across the roll
 */
public record PriceList(List<Long> prices, List<List<Long>> held, AcrossScale across) {

    /**
     * Copies the lists.
     *
     * @param prices as above
     * @param held as above
     * @param across as above
     */
    public PriceList {
        prices = List.copyOf(prices);
        held = held.stream().map(List::copyOf).toList();
    }

    /**
     * Prices for panels of which one lies across a roll.
     *
     * @param prices as above
     * @param held as above
     */
    public PriceList(List<Long> prices, List<List<Long>> held) {
        this(prices, held, AcrossScale.oneAcross(held.size()));
    }
}
