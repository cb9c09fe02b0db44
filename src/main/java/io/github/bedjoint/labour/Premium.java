package io.github.bedjoint.labour;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Range;

/**
 * What is paid on top of the wage, as a share of the paid time: for nights, weekends, or height. It changes no hours, only what they cost.
 *
 * @param name what for, for a reader
 * @param shop share on paid time in the shop, 0 to 3
 * @param site share on paid time on site and on the way, 0 to 3
 */
public record Premium(String name, double shop, double site) {
    /** No premium. */
    public static final Premium NONE = new Premium("none", 0, 0);

    /**
     * Checks name and shares.
     *
     * @param name what for, for a reader
     * @param shop share on paid time in the shop, 0 to 3
     * @param site share on paid time on site and on the way, 0 to 3
     * @throws io.github.bedjoint.units.RefusedException if one cannot be accepted
     */
    public Premium {
        name = Door.text("premium", name);
        Door.number("premium in the shop", shop, Range.closed(0, 3));
        Door.number("premium on site", site, Range.closed(0, 3));
    }

    /**
     * A premium on site only.
     *
     * @param name  what for
     * @param share 0 to 3: 0.25 is a quarter more
     * @return the premium
     * @throws io.github.bedjoint.units.RefusedException if the share is not 0 to 3
     */
    public static Premium onSite(String name, double share) {
        return new Premium(name, 0, share);
    }
}
