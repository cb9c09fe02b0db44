package io.github.bedjoint.conditions;

/** What the survey says to a {@link Question}. */
public enum Answer {
    /** It is so. */
    YES,
    /** It is not so. */
    NO,
    /** Nobody looked or asked; a check treats it as the worse of the two. */
    UNKNOWN
}
