package io.github.bedjoint.working;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.RefusedException;
import java.util.Arrays;
import java.util.stream.Collectors;

/**
 * Where a rule or a figure comes from. A source is never blank.
 *
 * @param kind     what stands behind it
 * @param citation the document, or in a few words what the rule rests on
 */
public record Source(Kind kind, String citation) {

    /** What stands behind a rule or figure. */
    public enum Kind {
        /** Follows from geometry or arithmetic alone. */
        GEOMETRY("geometry"),
        /** A published standard. */
        STANDARD("standard"),
        /** A published handbook, textbook or public note. */
        HANDBOOK("handbook"),
        /** Common practice of the trade; no published source. */
        PRACTICE("common practice, no source"),
        /** Measured, by whom and how the citation says. */
        MEASURED("measured"),
        /** The shop's own figure, given by the user. */
        SHOP("the shop's own"),
        /** A starting value without evidence: replace it by the shop's own. */
        ASSUMED("assumed, replace by the shop's own");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        /**
         * The kind in words.
         *
         * @return words for a reader
         */
        public String words() {
            return words;
        }
    }

    /**
     * Checks that something is cited.
     *
     * @param kind     what stands behind it
     * @param citation the document, or what the rule rests on; not blank
     * @throws RefusedException if the citation is blank
     */
    public Source {
        citation = Door.text("source", citation);
    }

    /**
     * A rule of geometry or arithmetic.
     *
     * @param rests on what it rests, in a few words
     * @return the source
     */
    public static Source geometry(String rests) {
        return new Source(Kind.GEOMETRY, rests);
    }

    /**
     * A published standard.
     *
     * @param citation number, title or part, and place
     * @return the source
     */
    public static Source standard(String citation) {
        return new Source(Kind.STANDARD, citation);
    }

    /**
     * A handbook, textbook or public note.
     *
     * @param citation title and place
     * @return the source
     */
    public static Source handbook(String citation) {
        return new Source(Kind.HANDBOOK, citation);
    }

    /**
     * Common practice of the trade, without a published source.
     *
     * @param practice what is commonly done
     * @return the source
     */
    public static Source practice(String practice) {
        return new Source(Kind.PRACTICE, practice);
    }

    /**
     * A measured rule or figure.
     *
     * @param how by whom and how it was measured
     * @return the source
     */
    public static Source measured(String how) {
        return new Source(Kind.MEASURED, how);
    }

    /**
     * The shop's own figure.
     *
     * @param origin where the shop has it from
     * @return the source
     */
    public static Source shop(String origin) {
        return new Source(Kind.SHOP, origin);
    }

    /**
     * A starting value without evidence.
     *
     * @param why why this value
     * @return the source
     */
    public static Source assumed(String why) {
        return new Source(Kind.ASSUMED, why);
    }

    /**
     * Reads what {@link #toString} writes.
     *
     * @param text the kind's words, a colon and the citation
     * @return the source
     * @throws RefusedException if it begins with no kind or cites nothing
     */
    public static Source parse(String text) {
        for (Kind kind : Kind.values()) {
            if (text.startsWith(kind.words() + ":")) {
                return new Source(kind, text.substring(kind.words().length() + 1));
            }
        }
        throw new RefusedException(
                "source",
                "'" + text + "'",
                "must begin with one of " + Arrays.stream(Kind.values()).map(Kind::words).collect(Collectors.joining("; ")),
                "Maybe put 'the shop's own: ' before it.");
    }

    /** The kind and the citation, which {@link #parse} reads back: {@code geometry: area of a polygon}. */
    @Override
    public String toString() {
        return kind.words() + ": " + citation;
    }
}
