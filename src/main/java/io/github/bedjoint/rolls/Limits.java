package io.github.bedjoint.rolls;

import io.github.bedjoint.units.RefusedException;

/** Refuses numbers that the kernel cannot take. */
final class Limits {

    /** 10 km in steps: keeps every product of a price and a length inside 64 bits. */
    static final long MAX_LENGTH = 800_000_000L;

    /** Dearest roll, in minor units. */
    static final long MAX_COST = 1_000_000_000_000L;

    /** Most pieces of one job. */
    static final int MAX_PIECES = 1_000_000;

    private Limits() {}

    static void name(String parameter, String value) {
        if (value.isBlank()) {
            throw new RefusedException(
                    parameter, "blank", "at least one character is needed", "Maybe number the rows.");
        }
    }

    static void between(String parameter, long value, long least, long most, String unit) {
        if (value < least || value > most) {
            throw new RefusedException(
                    parameter,
                    value + " " + unit,
                    "must be " + least + " to " + most + " " + unit,
                    "Maybe the unit is another one.");
        }
    }
}
