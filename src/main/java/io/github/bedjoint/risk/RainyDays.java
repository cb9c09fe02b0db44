package io.github.bedjoint.risk;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.rng.UniformRandomProvider;

/**
 * Days of rain for one simulated job, each drawn by itself in the order of the calendar, from the day before the job's own start on: the weather is the
 * same however far it is looked at and whenever the crew begins.
 */
final class RainyDays {
    /** Farther than any calendar reaches. */
    private static final int MOST = 1024;

    private final LocalDate before;
    private final double chance;
    private final UniformRandomProvider random;
    private final List<LocalDate> rainy = new ArrayList<>();
    private int drawn;

    RainyDays(LocalDate start, double chance, UniformRandomProvider random) {
        this.before = start.minusDays(1);
        this.chance = chance;
        this.random = random;
    }

    /** The rainy ones of so many days. */
    List<LocalDate> in(int days) {
        while (drawn < days) {
            if (random.nextDouble() < chance) {
                rainy.add(before.plusDays(drawn));
            }
            drawn++;
        }
        return rainy;
    }

    /** Whether a day lies beyond those that were drawn, so that it is not known yet whether it rains by then. */
    boolean isUnknown(LocalDate day) {
        return drawn < MOST && !day.isBefore(before.plusDays(drawn));
    }
}
