package io.github.bedjoint.rolls;

import java.util.List;

/**
 * The least cost of all panels of some walls when they come from one lot.
 *
 * @param lot the lot
 * @param walls groups of {@link Cut} gathered in it
 * @param bound least cost in minor money units, or {@link #IMPOSSIBLE}
 * @param certificate shows the bound for the job that has only the cuts of these walls and the stock of this lot, rows
 *     in the order of the whole job
 */
public record LotBound(String lot, List<String> walls, long bound, Certificate certificate) {

    /** The lot cannot hold the walls. */
    public static final long IMPOSSIBLE = Long.MAX_VALUE;

    /**
     * Copies the list.
     *
     * @param lot as above
     * @param walls as above
     * @param bound as above
     * @param certificate as above
     */
    public LotBound {
        walls = List.copyOf(walls);
    }
}
