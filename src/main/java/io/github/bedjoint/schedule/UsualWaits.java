package io.github.bedjoint.schedule;

import io.github.bedjoint.working.Source;

/**
 * Waits and windows of the trade: common practice, no source. Each is a starting value; the film's data sheet and local conditions win.
 *
 * <p>There is none for the time that mortar, render or paint needs to cure, nor for the drying of a wipe: those are the shop's own to state.
 */
public enum UsualWaits {
    /** A washed wall dries 7 days before film is applied: least time from the end of washing to the start of applying. */
    WASH_BEFORE_APPLYING(7 * 24, "a wall is washed 7 days before film is applied"),
    /** A wiped wall is heated within 2 hours: most time from the end of wiping to the start of heat. */
    WIPE_BEFORE_HEAT_AT_MOST(2, "a wall is wiped at most 2 h before heat"),
    /** Applied film cures 72 hours before hand-over. */
    CURE(72, "applied film cures 72 h"),
    /** Printed film outgasses at least 24 hours before laminating; solvent ink takes longer, see the film package. */
    OUTGAS_AT_LEAST(24, "printed film outgasses 24 to 72 h by ink family before laminating"),
    /** Printed film outgasses up to 72 hours before laminating. */
    OUTGAS_AT_MOST(72, "printed film outgasses 24 to 72 h by ink family before laminating"),
    /** No work outdoors until 24 hours after rain. */
    DRY_AFTER_RAIN(24, "no work outdoors until 24 h after rain");

    private final long hours;
    private final String practice;

    UsualWaits(long hours, String practice) {
        this.hours = hours;
        this.practice = practice;
    }

    /**
     * How long.
     *
     * @return elapsed time
     */
    public Span span() {
        return new Span(hours * 3600, TimeBase.ELAPSED);
    }

    /**
     * Where it comes from.
     *
     * @return common practice
     */
    public Source source() {
        return Source.practice(practice);
    }
}
