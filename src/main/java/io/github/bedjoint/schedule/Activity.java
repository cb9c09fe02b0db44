package io.github.bedjoint.schedule;

import io.github.bedjoint.units.Door;
import java.time.ZonedDateTime;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Something that takes time: work, or a wait such as outgassing.
 *
 * <p>Work in shift time pauses when the shift ends and goes on at the next, unless it is {@link #unbroken()}. Immutable.
 */
public final class Activity {
    private final String id;
    private final String title;
    private final Span duration;
    private final boolean unbroken;
    private final boolean outdoors;
    private final @Nullable ZonedDateTime notBefore;
    private final Map<Resource, Integer> needs;

    private Activity(
            String id,
            String title,
            Span duration,
            boolean unbroken,
            boolean outdoors,
            @Nullable ZonedDateTime notBefore,
            Map<Resource, Integer> needs) {
        this.id = id;
        this.title = title;
        this.duration = duration;
        this.unbroken = unbroken;
        this.outdoors = outdoors;
        this.notBefore = notBefore;
        this.needs = needs;
    }

    /**
     * An activity.
     *
     * @param id       its short name, unique in a network
     * @param title    its name for a reader
     * @param duration how long it takes, and which hours count
     * @return the activity
     * @throws io.github.bedjoint.units.RefusedException if a name is blank
     */
    public static Activity of(String id, String title, Span duration) {
        return new Activity(Door.text("activity", id), Door.text("title of activity", title), duration, false, false, null, Map.of());
    }

    /**
     * The same, but not to be interrupted by the end of a shift: it starts only when it can end in the same shift.
     *
     * @return a new activity
     */
    public Activity unbroken() {
        return new Activity(id, title, duration, true, outdoors, notBefore, needs);
    }

    /**
     * The same done outdoors: its shift time does not run on days of rain, nor until the wall is dry again.
     *
     * @return a new activity
     */
    public Activity outdoors() {
        return new Activity(id, title, duration, unbroken, true, notBefore, needs);
    }

    /**
     * The same, but starting at a moment at the earliest, such as the delivery of film.
     *
     * @param moment the earliest start
     * @return a new activity
     */
    public Activity notBefore(ZonedDateTime moment) {
        return new Activity(id, title, duration, unbroken, outdoors, moment, needs);
    }

    /**
     * The same taking up so much of a resource from its start to its end, nights counted.
     *
     * @param resource what it takes up
     * @param amount   how many, 0 to 50
     * @return a new activity
     * @throws io.github.bedjoint.units.RefusedException if the amount is not 0 to 50
     */
    public Activity using(Resource resource, int amount) {
        EnumMap<Resource, Integer> more = new EnumMap<>(Resource.class);
        more.putAll(needs);
        more.put(resource, Door.count("need of " + resource, amount, 0, 50));
        return new Activity(id, title, duration, unbroken, outdoors, notBefore, more);
    }

    /**
     * The same taking another time.
     *
     * @param other how long it takes
     * @return a new activity
     */
    public Activity withDuration(Span other) {
        return new Activity(id, title, other, unbroken, outdoors, notBefore, needs);
    }

    /**
     * The short name.
     *
     * @return the id
     */
    public String id() {
        return id;
    }

    /**
     * The name for a reader.
     *
     * @return the title
     */
    public String title() {
        return title;
    }

    /**
     * How long it takes.
     *
     * @return the span
     */
    public Span duration() {
        return duration;
    }

    /**
     * Whether it must start and end in one shift.
     *
     * @return true if it must
     */
    public boolean isUnbroken() {
        return unbroken;
    }

    /**
     * Whether rain stops it.
     *
     * @return true if it is done outdoors
     */
    public boolean isOutdoors() {
        return outdoors;
    }

    /**
     * The earliest start.
     *
     * @return the moment, or empty where the network alone decides
     */
    public Optional<ZonedDateTime> earliest() {
        return Optional.ofNullable(notBefore);
    }

    /**
     * How much of a resource it takes up.
     *
     * @param resource the resource
     * @return how many, zero where none was stated
     */
    public int need(Resource resource) {
        return needs.getOrDefault(resource, 0);
    }

    /** The id and the duration: {@code print (6 h shift)}. */
    @Override
    public String toString() {
        return id + " (" + duration + ")";
    }
}
