package io.github.bedjoint.risk;

import org.apache.commons.rng.UniformRandomProvider;

/** Days lost to rain while installing: a rainy day, and the day after it, since the wall dries for 24 hours (common practice, no source). */
final class Weather {
    /** Ends the count in weather in which no job is ever done. */
    private static final int MOST = 1000;

    private Weather() {}

    /** How many days are lost before so many can be worked; it may have rained on the day before the first. */
    static int lostDays(UniformRandomProvider random, double chance, int days) {
        if (chance <= 0) {
            return 0;
        }
        boolean wet = random.nextDouble() < chance;
        int worked = 0;
        int lost = 0;
        while (worked < days && lost < MOST) {
            boolean rain = random.nextDouble() < chance;
            if (rain || wet) {
                lost++;
            } else {
                worked++;
            }
            wet = rain;
        }
        return lost;
    }
}
