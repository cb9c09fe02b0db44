package io.github.bedjoint.job;

import io.github.bedjoint.schedule.Span;
import io.github.bedjoint.units.Door;

/**
 * Something that has to come first and takes time on the clock from the start of the job: film, a hired lift, a permit, new render that cures.
 * There is no default: ask who delivers or made it.
 *
 * @param title  what comes first, for a reader
 * @param takes  how long from the start, or for film from the end of surveys and test patches
 * @param before what waits for it
 */
public record LeadTime(String title, Span takes, Before before) {
    /** What waits for a lead time. */
    public enum Before {
        /** Preparing and printing: film, ink. It is ordered once surveys and test patches are done. */
        PRODUCTION,
        /** Washing the wall, and so everything on it: substrate cured, permit. */
        WASHING,
        /** Installing: a hired lift. */
        INSTALLING
    }

    /**
     * Checks the title.
     *
     * @param title  what comes first, for a reader
     * @param takes  how long
     * @param before what waits for it
     * @throws io.github.bedjoint.units.RefusedException if the title is blank
     */
    public LeadTime {
        title = Door.text("lead time", title);
    }
}
