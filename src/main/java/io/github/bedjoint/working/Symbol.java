package io.github.bedjoint.working;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.RefusedException;
import java.util.regex.Pattern;

/**
 * A letter in a formula.
 *
 * @param name    the letter, with letters, digits and underscores, such as {@code A_d}
 * @param measure what it measures and in which inner unit
 * @param meaning what it stands for, in a few words
 */
public record Symbol(String name, Measure measure, String meaning) {
    private static final Pattern NAME = Pattern.compile("[A-Za-z][A-Za-z0-9_]*");

    /**
     * Checks that the letter can stand in a formula's text and means something.
     *
     * @param name    the letter, with letters, digits and underscores, beginning with a letter
     * @param measure what it measures and in which inner unit
     * @param meaning what it stands for, in a few words
     * @throws RefusedException if the name has other characters or the meaning is blank
     */
    public Symbol {
        if (!NAME.matcher(name).matches()) {
            throw new RefusedException("symbol", "'" + name + "'", "must have letters, digits and underscores only", "Maybe x_1 or A_d.");
        }
        meaning = Door.text("meaning of " + name, meaning);
    }

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
