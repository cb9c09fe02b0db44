package io.github.bedjoint.cutting;

import io.github.bedjoint.bounds.CheapestRolls;
import io.github.bedjoint.units.Print;
import io.github.bedjoint.units.UnitStyle;
import java.util.List;
import java.util.function.LongFunction;

/** How lengths, money, rolls and lists of names are written for one reader. */
record RollWords(UnitStyle style, LongFunction<String> amounts) {
    private static final int MOST_NAMES = 4;

    String length(long steps) {
        return Print.cut(steps, style);
    }

    String money(long minor) {
        return amounts.apply(minor);
    }

    /** {@code 3 x 10 yd and 1 x rest}; a roll that leaves a remnant for credit says how much of it. */
    String rolls(List<CheapestRolls.Taken> taken) {
        return all(taken.stream()
                .map(some -> some.count() + " x " + some.row().id()
                        + (some.leastRemnant() > 0 ? " with at least " + length(some.leastRemnant()) + " left" : ""))
                .toList());
    }

    /** Names joined by commas and a last "and". */
    static String all(List<String> names) {
        int last = names.size() - 1;
        return last < 1 ? String.join("", names) : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
    }

    /** The first names, and how many more there are. */
    static String some(List<String> names) {
        if (names.size() <= MOST_NAMES) {
            return all(names);
        }
        return String.join(", ", names.subList(0, MOST_NAMES - 1)) + " and " + (names.size() - MOST_NAMES + 1) + " more";
    }
}
