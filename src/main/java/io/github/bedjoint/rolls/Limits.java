package io.github.bedjoint.rolls;

import io.github.bedjoint.units.RefusedException;

/** How large the numbers of a roll job may be. */
public final class Limits {

    /** 10 km in steps: keeps every product of a price and a length inside 64 bits. */
    public static final long MAX_LENGTH = 800_000_000L;

    /** Dearest roll, in minor units. */
    public static final long MAX_COST = 1_000_000_000_000L;

    /** Most pieces of one job. */
    public static final int MAX_PIECES = 1_000_000;

    private Limits() {}

    static void name(String parameter, String value) {
        if (value.isBlank()) {
            throw new RefusedException(
                    parameter, "blank", "at least one character is needed", "Maybe number the rows.");
        }
    }

    /**
     * Refuses a number out of its range.
     *
     * @param parameter its name, for the refusal
     * @param value the number
     * @param least the least that is accepted
     * @param most the most that is accepted
     * @param unit what it counts, for the refusal
     * @throws RefusedException if it is below the least or above the most
     */
    public static void between(String parameter, long value, long least, long most, String unit) {
        if (value < least || value > most) {
            throw new RefusedException(
                    parameter,
                    value + " " + unit,
                    "must be " + least + " to " + most + " " + unit,
                    "Maybe the unit is another one.");
        }
    }
}
