package io.github.bedjoint.layout;

import io.github.bedjoint.working.Working;

/**
 * The film of a panel that is fed in along the texture, and what it follows from.
 *
 * @param widthSteps  across the roll
 * @param lengthSteps along the roll
 * @param across      share of the length on the wall that is fed in across the roll
 * @param along       share of the length on the wall that is fed in along the roll
 */
public record Fed(long widthSteps, long lengthSteps, Feed across, Feed along) {
    Working[] widthWorking(long wallSteps) {
        return across.workings(wallSteps);
    }

    Working[] lengthWorking(long wallSteps) {
        return along.workings(wallSteps);
    }
}
