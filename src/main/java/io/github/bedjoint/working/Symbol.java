package io.github.bedjoint.working;

import io.github.bedjoint.units.Measure;

/**
 * A letter in a formula.
 *
 * @param name    the letter, with letters, digits and underscores, such as {@code A_d}
 * @param measure what it measures and in which inner unit
 * @param meaning what it stands for, in a few words
 */
public record Symbol(String name, Measure measure, String meaning) {

    /**
     * A letter for a plain number.
     *
     * @param name    the letter
     * @param meaning what it stands for
     * @return the symbol
     */
    public static Symbol number(String name, String meaning) {
        return new Symbol(name, Measure.NUMBER, meaning);
    }
}
