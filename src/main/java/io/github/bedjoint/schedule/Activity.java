package io.github.bedjoint.schedule;

import io.github.bedjoint.units.Door;
import java.time.ZonedDateTime;
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
    private final @Nullable ZonedDateTime notBefore;

    private Activity(String id, String title, Span duration, boolean unbroken, @Nullable ZonedDateTime notBefore) {
        this.id = id;
        this.title = title;
        this.duration = duration;
        this.unbroken = unbroken;
        this.notBefore = notBefore;
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
        return new Activity(Door.text("activity", id), Door.text("title of activity", title), duration, false, null);
    }

    /**
     * The same, but not to be interrupted by the end of a shift: it starts only when it can end in the same shift.
     *
     * @return a new activity
     */
    public Activity unbroken() {
        return new Activity(id, title, duration, true, notBefore);
    }

    /**
     * The same, but starting at a moment at the earliest, such as the delivery of film.
     *
     * @param moment the earliest start
     * @return a new activity
     */
    public Activity notBefore(ZonedDateTime moment) {
        return new Activity(id, title, duration, unbroken, moment);
    }

    /**
     * The same taking another time.
     *
     * @param other how long it takes
     * @return a new activity
     */
    public Activity withDuration(Span other) {
        return new Activity(id, title, other, unbroken, notBefore);
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
     * The earliest start.
     *
     * @return the moment, or empty where the network alone decides
     */
    public Optional<ZonedDateTime> earliest() {
        return Optional.ofNullable(notBefore);
    }

    /** The id and the duration: {@code print (6 h shift)}. */
    @Override
    public String toString() {
        return id + " (" + duration + ")";
    }
}
