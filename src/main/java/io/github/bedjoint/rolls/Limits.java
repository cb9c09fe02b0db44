package io.github.bedjoint.rolls;

/** Refuses numbers that the kernel cannot take, in the words every refusal of this library uses. */
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
            throw new IllegalArgumentException(
                    parameter + " is blank, at least one character is needed. Maybe number the rows.");
        }
    }

    static void between(String parameter, long value, long least, long most, String unit) {
        if (value < least || value > most) {
            throw new IllegalArgumentException(parameter + " is " + value + " " + unit + ", allowed is " + least + " to "
                    + most + " " + unit + ". Maybe the unit is another one.");
        }
    }
}
