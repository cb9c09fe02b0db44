package io.github.bedjoint.schedule;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.RefusedException;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * One activity starts after another has ended: at least so long after, and if stated at most so long after. Immutable.
 *
 * @param from    the activity that comes first
 * @param to      the activity that comes after
 * @param atLeast the least time from the end of the first to the start of the second
 * @param most    the most time, or null for any
 */
public record Link(String from, String to, Span atLeast, @Nullable Span most) {

    /**
     * Checks the names.
     *
     * @param from    the activity that comes first
     * @param to      the activity that comes after
     * @param atLeast the least time from the end of the first to the start of the second
     * @param most    the most time, or null for any
     * @throws RefusedException if a name is blank or both are the same
     */
    public Link {
        from = Door.text("link from", from);
        to = Door.text("link to", to);
        if (from.equals(to)) {
            throw new RefusedException("link", from + " to itself", "must join two activities", "Maybe another name was meant.");
        }
    }

    /**
     * A link without a wait.
     *
     * @param from the activity that comes first
     * @param to   the activity that comes after
     * @return the link
     * @throws RefusedException if a name is blank or both are the same
     */
    public static Link of(String from, String to) {
        return new Link(from, to, Span.NONE, null);
    }

    /**
     * The same with a wait.
     *
     * @param wait the least time between
     * @return a new link
     */
    public Link atLeast(Span wait) {
        return new Link(from, to, wait, most);
    }

    /**
     * The same with a window.
     *
     * @param window the most time between
     * @return a new link
     */
    public Link atMost(Span window) {
        return new Link(from, to, atLeast, window);
    }

    /**
     * The most time between.
     *
     * @return the window, or empty where any time will do
     */
    public Optional<Span> window() {
        return Optional.ofNullable(most);
    }

    /** The link for a reader: {@code wipe -> heat, at least 600 s elapsed, at most 2 h elapsed}. */
    @Override
    public String toString() {
        return from + " -> " + to + (atLeast.seconds() > 0 ? ", at least " + atLeast : "") + (most == null ? "" : ", at most " + most);
    }
}
