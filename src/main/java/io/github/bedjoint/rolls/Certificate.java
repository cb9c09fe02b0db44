package io.github.bedjoint.rolls;

import java.util.List;

/**
 * Why no plan costs less than a bound, in whole numbers that anyone can check.
 *
 * <p>Every price list forbids some counts of rolls, see {@link PriceList}; the exhausted counts are those on which a
 * complete search found no arrangement, so that they and all smaller counts are forbidden too. A bound holds if every
 * choice of roll counts that the stock allows and that costs less is forbidden. {@link io.github.bedjoint.checker.PlanChecker} works this through
 * again from the job alone.
 *
 * @param priceLists the price lists
 * @param exhausted roll counts that cannot hold the panels: for each {@link Stock} row and each way to leave a remnant;
 *     of rows with the same usable length, width and cost the first one carries the count of all
 * @param lotBounds bounds of walls gathered in one lot; used with {@code ONE_LOT_PER_WALL} only
 */
public record Certificate(
        List<PriceList> priceLists, List<List<List<Integer>>> exhausted, List<LotBound> lotBounds) {

    /**
     * Copies the lists.
     *
     * @param priceLists as above
     * @param exhausted as above
     * @param lotBounds as above
     */
    public Certificate {
        priceLists = List.copyOf(priceLists);
        exhausted = exhausted.stream()
                .map(counts -> counts.stream().map(List::copyOf).toList())
                .toList();
        lotBounds = List.copyOf(lotBounds);
    }

    /**
     * Shows nothing but that a cost is not negative.
     *
     * @return an empty certificate
     */
    public static Certificate empty() {
        return new Certificate(List.of(), List.of(), List.of());
    }
}
