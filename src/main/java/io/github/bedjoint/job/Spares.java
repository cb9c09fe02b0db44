package io.github.bedjoint.job;

import io.github.bedjoint.layout.PanelLayout;
import io.github.bedjoint.layout.Picture;
import io.github.bedjoint.layout.PrintList;
import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Range;

/**
 * Panels that are printed beyond one of each, on every wall: so many, or by the share of prints that the shop has to repeat.
 *
 * @param count so many on each wall; 0 where the share counts
 * @param rate  share of prints that are repeated, rounded up on each wall; 0 where the count does
 */
public record Spares(int count, double rate) {
    /** No spares. */
    public static final Spares NONE = new Spares(0, 0);

    /**
     * Checks both.
     *
     * @param count 0 to 1000
     * @param rate  0 to 1
     * @throws io.github.bedjoint.units.RefusedException if one is out of range
     */
    public Spares {
        Door.count("spare panels", count, 0, 1000);
        Door.number("reprint rate", rate, Range.SHARE);
    }

    /**
     * So many spares on each wall.
     *
     * @param count 0 to 1000
     * @return the spares
     * @throws io.github.bedjoint.units.RefusedException if the count is out of range
     */
    public static Spares each(int count) {
        return new Spares(count, 0);
    }

    /**
     * As many spares as the share of repeated prints asks for.
     *
     * @param share 0 to 1
     * @return the spares
     * @throws io.github.bedjoint.units.RefusedException if the share is out of range
     */
    public static Spares byRate(double share) {
        return new Spares(0, share);
    }

    /** The print files of a wall and the panels that are printed again. */
    PrintList prints(PanelLayout layout, Picture picture) {
        return rate > 0 ? PrintList.withReprintRate(layout, picture, rate) : PrintList.withSpares(layout, picture, count);
    }
}
