package io.github.bedjoint.job;

import io.github.bedjoint.schedule.Span;
import io.github.bedjoint.schedule.UsualWaits;

/**
 * The waits and the window that a job keeps beside the outgassing of its film.
 *
 * <p>{@link #usual} is common practice, no source, see {@link UsualWaits}; data sheets of film and cleaner win. For the drying of a wipe there is
 * no default: it is 0 until the shop states its own. A window that is shorter than the drying gives a job without dates, not a refusal.
 *
 * @param washBefore  least time from the end of washing to applying
 * @param wipeAtLeast least time from wiping a stretch of wall to heat on it: dry, and its vapour gone
 * @param wipeAtMost  most time from wiping a stretch of wall to heat on it
 * @param acclimatise least time that the packed panels lie at the site before applying, 0 until the shop states its own
 * @param cure        least time from applying to hand-over
 */
public record JobWaits(Span washBefore, Span wipeAtLeast, Span wipeAtMost, Span acclimatise, Span cure) {
    /**
     * Waits of common practice.
     *
     * @return 7 days after washing, 0 to 2 h after wiping, 72 h to cure
     */
    public static JobWaits usual() {
        return new JobWaits(
                UsualWaits.WASH_BEFORE_APPLYING.span(), Span.NONE, UsualWaits.WIPE_BEFORE_HEAT_AT_MOST.span(), Span.NONE, UsualWaits.CURE.span());
    }

    /**
     * The same with another wait between washing and applying.
     *
     * @param wait least time, elapsed or shift
     * @return new waits
     */
    public JobWaits withWashBefore(Span wait) {
        return new JobWaits(wait, wipeAtLeast, wipeAtMost, acclimatise, cure);
    }

    /**
     * The same with another window between wiping and heat.
     *
     * @param least least time: dry, and its vapour gone
     * @param most  most time
     * @return new waits
     */
    public JobWaits withWipe(Span least, Span most) {
        return new JobWaits(washBefore, least, most, acclimatise, cure);
    }

    /**
     * The same with panels that lie at the site for a while and take on its temperature before they are applied.
     *
     * @param wait least time from the end of packing, elapsed or shift; the film's data sheet has it
     * @return new waits
     */
    public JobWaits withAcclimatise(Span wait) {
        return new JobWaits(washBefore, wipeAtLeast, wipeAtMost, wait, cure);
    }

    /**
     * The same with another wait between applying and hand-over.
     *
     * @param wait least time, elapsed or shift
     * @return new waits
     */
    public JobWaits withCure(Span wait) {
        return new JobWaits(washBefore, wipeAtLeast, wipeAtMost, acclimatise, wait);
    }
}
