package io.github.bedjoint.job;

import io.github.bedjoint.labour.HeightBands;
import io.github.bedjoint.labour.Hire;
import io.github.bedjoint.survey.Access;
import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.Steps;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * How the walls of a job are reached: height bands that slow the work down, how high each wall stands, and what is hired for it.
 *
 * <p>Without bands every wall is worked at the pace of the ground, unless the job states a factor for it, which goes before the bands. With bands a
 * wall whose access is the ground is divided by them, and any other access is that of the whole wall. Immutable.
 */
public final class SiteAccess {
    private static final SiteAccess PLAIN = new SiteAccess(null, Map.of(), List.of());

    private final @Nullable HeightBands heights;
    private final Map<String, Long> bottoms;
    private final List<AccessHire> hires;

    private SiteAccess(@Nullable HeightBands heights, Map<String, Long> bottoms, List<AccessHire> hires) {
        this.heights = heights;
        this.bottoms = bottoms;
        this.hires = hires;
    }

    /**
     * Something that is hired for the days on which a wall is reached by it.
     *
     * @param access          the access that needs it
     * @param hire            delivery, day rate, least days
     * @param items           how many, 1 to 100
     * @param alsoForWashing  whether it comes for the trips on which the wall is washed as well, each time with its delivery
     */
    public record AccessHire(Access access, Hire hire, int items, boolean alsoForWashing) {
        /**
         * Checks access and count.
         *
         * @param access         the access that needs it, not the ground
         * @param hire           delivery, day rate, least days
         * @param items          how many, 1 to 100
         * @param alsoForWashing whether it comes for the washing as well
         * @throws RefusedException if nothing needs hiring for the access, or the count is out of range
         */
        public AccessHire {
            Door.count("items hired", items, 1, 100);
            if (access == Access.GROUND) {
                throw new RefusedException("access", "ground", "must be one that is hired", "Maybe a tool was meant: give it as an extra line.");
            }
        }
    }

    /**
     * All walls at the pace of the ground, nothing hired.
     *
     * @return nothing known
     */
    public static SiteAccess plain() {
        return PLAIN;
    }

    /**
     * The same with height bands.
     *
     * @param bands up to which height a wall is reached how, and how much slower that is
     * @return new access
     */
    public SiteAccess withHeights(HeightBands bands) {
        return new SiteAccess(bands, bottoms, hires);
    }

    /**
     * The same with a wall that does not begin at the ground.
     *
     * @param wall   its name
     * @param bottom height of its lowest point above the ground, 0 to 200 m
     * @return new access
     * @throws RefusedException if the height is out of range
     */
    public SiteAccess withBottom(String wall, Quantity<Length> bottom) {
        Map<String, Long> more = new TreeMap<>(bottoms);
        more.put(wall, Steps.up(Door.lengthM("bottom of " + wall, bottom, Range.closed(0, 200))));
        return new SiteAccess(heights, Map.copyOf(more), hires);
    }

    /**
     * The same with one more hire.
     *
     * @param hire what is hired for which access
     * @return new access
     */
    public SiteAccess withHire(AccessHire hire) {
        List<AccessHire> more = new ArrayList<>(hires);
        more.add(hire);
        return new SiteAccess(heights, bottoms, List.copyOf(more));
    }

    /**
     * The height bands.
     *
     * @return the bands, or empty where height slows nothing down
     */
    public Optional<HeightBands> heights() {
        return Optional.ofNullable(heights);
    }

    /**
     * How high a wall stands.
     *
     * @param wall its name
     * @return height of its lowest point above the ground, 0 where none was given
     */
    public Quantity<Length> bottom(String wall) {
        return Steps.toLength(bottomSteps(wall));
    }

    /**
     * What is hired.
     *
     * @return the hires, in the order given
     */
    public List<AccessHire> hires() {
        return hires;
    }

    /**
     * {@link #bottom} in whole steps.
     *
     * @param wall the wall's name
     * @return steps of 12.5 micrometres
     */
    public long bottomSteps(String wall) {
        return bottoms.getOrDefault(wall, 0L);
    }

    /** Bands, bottoms in steps, and hires. */
    @Override
    public String toString() {
        return (heights == null ? "no height bands" : heights) + ", " + bottoms + ", " + hires;
    }
}
