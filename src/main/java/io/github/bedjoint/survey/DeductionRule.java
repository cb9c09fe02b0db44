package io.github.bedjoint.survey;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.UnitStyle;
import javax.measure.Quantity;
import javax.measure.quantity.Area;

/**
 * Which openings are taken off the measured area, the one that is billed. Practice differs, so there is no default.
 *
 * @param kind    the rule
 * @param leastM2 the least area of an opening that is taken off, for {@link Kind#AT_LEAST}
 */
public record DeductionRule(Kind kind, double leastM2) {
    /** The rules in use. */
    public enum Kind {
        /** Every opening is taken off. */
        ALL,
        /** No opening is taken off. */
        NONE,
        /** Openings of at least a given area are taken off. */
        AT_LEAST
    }

    /**
     * Checks the least area.
     *
     * @param kind    the rule
     * @param leastM2 the least area of an opening that is taken off, for {@link Kind#AT_LEAST}
     * @throws io.github.bedjoint.units.RefusedException if it is negative, not finite or above 10 000 m2
     */
    public DeductionRule {
        Door.number("least area deducted", leastM2, Range.NOT_NEGATIVE);
    }

    /**
     * Every opening is taken off.
     *
     * @return the rule
     */
    public static DeductionRule allOpenings() {
        return new DeductionRule(Kind.ALL, 0);
    }

    /**
     * No opening is taken off.
     *
     * @return the rule
     */
    public static DeductionRule none() {
        return new DeductionRule(Kind.NONE, 0);
    }

    /**
     * Openings of at least this area are taken off; smaller ones are billed as wall.
     *
     * @param least the least area, 0 to 10 000 m2
     * @return the rule
     * @throws io.github.bedjoint.units.RefusedException if the area is absent or out of range
     */
    public static DeductionRule atLeast(Quantity<Area> least) {
        return new DeductionRule(Kind.AT_LEAST, Door.areaM2("least area deducted", least, Range.NOT_NEGATIVE));
    }

    /** Whether an opening of this area is taken off; half a square millimetre is forgiven, so that 0.5 m2 written in feet still counts. */
    boolean deducts(double areaM2) {
        return switch (kind) {
            case ALL -> true;
            case NONE -> false;
            case AT_LEAST -> areaM2 >= leastM2 - 5e-7;
        };
    }

    /** The rule in words: {@code openings of at least 0.5 m²}. */
    @Override
    public String toString() {
        return switch (kind) {
            case ALL -> "all openings";
            case NONE -> "no openings";
            case AT_LEAST -> "openings of at least " + Measure.AREA.print(leastM2, UnitStyle.METRIC);
        };
    }
}
