package io.github.bedjoint.schedule;

import io.github.bedjoint.units.Door;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** How much there is of each resource; what is not stated is unlimited. Immutable. */
public final class Capacity {
    private static final Capacity UNLIMITED = new Capacity(new EnumMap<>(Resource.class));

    private static final Capacity ONE_OF_EACH = UNLIMITED.with(Resource.PRINTER, 1).with(Resource.LAMINATOR, 1);

    private final Map<Resource, Integer> limits;

    private Capacity(Map<Resource, Integer> limits) {
        this.limits = limits;
    }

    /**
     * Enough of everything.
     *
     * @return a capacity without limits
     */
    public static Capacity unlimited() {
        return UNLIMITED;
    }

    /**
     * One printer, one laminator, and a crew.
     *
     * @param people how many people, 1 to 50
     * @return the capacity of a small shop
     * @throws io.github.bedjoint.units.RefusedException if people are not 1 to 50
     */
    public static Capacity shop(int people) {
        return ONE_OF_EACH.with(Resource.PEOPLE, people);
    }

    /**
     * The same with another limit.
     *
     * @param resource what is limited
     * @param most     how many there are, 1 to 50
     * @return a new capacity
     * @throws io.github.bedjoint.units.RefusedException if it is not 1 to 50
     */
    public Capacity with(Resource resource, int most) {
        EnumMap<Resource, Integer> more = new EnumMap<>(Resource.class);
        more.putAll(limits);
        more.put(resource, Door.count("capacity of " + resource, most, 1, 50));
        return new Capacity(more);
    }

    /**
     * How much there is.
     *
     * @param resource the resource
     * @return how many; {@link Integer#MAX_VALUE} where unlimited
     */
    public int of(Resource resource) {
        return limits.getOrDefault(resource, Integer.MAX_VALUE);
    }

    /** The resources of which there is not enough for everything. */
    Set<Resource> limited() {
        return limits.keySet();
    }

    /** Why an activity can never be done: it alone needs more than there is. */
    Optional<String> shortage(List<Activity> activities) {
        for (Activity activity : activities) {
            for (Resource resource : limits.keySet()) {
                if (activity.need(resource) > of(resource)) {
                    return Optional.of("Activity " + activity.id() + " needs " + activity.need(resource) + " of " + resource
                            + ", but there are " + of(resource) + ". Maybe borrow what is missing for that activity.");
                }
            }
        }
        return Optional.empty();
    }
}
