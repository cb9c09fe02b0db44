package io.github.bedjoint.working;

/**
 * What a check found: how grave, about what, why, and by which rule. A verdict is part of a result; it is never thrown.
 *
 * @param level   how grave it is
 * @param subject what was looked at, such as the wall's name and the check
 * @param reason  what was found, in a sentence with the figures
 * @param source  the rule behind it
 */
public record Verdict(Level level, String subject, String reason, Source source) {

    /** How grave a finding is; the order is from harmless to grave. */
    public enum Level {
        /** Looked at and in order. */
        FINE,
        /** Can be done, with care. */
        CAUTION,
        /** Likely to go wrong unless something is changed. */
        WARNING,
        /** Must not be done as the job stands. */
        REFUSED
    }

    /** Level, subject and reason in one line. */
    @Override
    public String toString() {
        return level + " " + subject + ": " + reason + " (" + source + ")";
    }
}
