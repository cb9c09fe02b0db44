package io.github.bedjoint.job;

import io.github.bedjoint.rolls.RollPlan;
import io.github.bedjoint.rolls.Shortage;
import io.github.bedjoint.units.Print;
import io.github.bedjoint.units.UnitStyle;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Says in words why a job cannot be done. */
final class Obstacles {
    private Obstacles() {}

    static void ofRolls(String what, @Nullable RollPlan plan, List<String> reasons) {
        if (plan != null) {
            plan.shortages().forEach(shortage -> reasons.add(what + ": " + words(shortage)));
        }
    }

    private static String words(Shortage shortage) {
        String needed = Print.cut(shortage.neededSteps(), UnitStyle.METRIC) + " (" + Print.feetInches(shortage.neededSteps()) + ")";
        String there = Print.cut(shortage.availableSteps(), UnitStyle.METRIC) + " (" + Print.feetInches(shortage.availableSteps()) + ")";
        return switch (shortage.reason()) {
            case CUT_TOO_WIDE -> "panel " + shortage.cutId() + " is " + needed + " wide, the widest roll gives " + there
                    + ". Maybe take a wider film.";
            case CUT_TOO_LONG -> "panel " + shortage.cutId() + " is " + needed + " long, the longest roll gives " + there
                    + ". Maybe take longer rolls, hang bands in place of drops, or split the wall at a horizontal joint.";
            case STOCK_TOO_SHORT -> "all panels need " + needed + ", all rolls together give " + there + ". Maybe buy more rolls.";
            case NO_ARRANGEMENT -> "the rolls at hand hold the length of all panels but not the panels themselves. Maybe buy one more roll.";
            case UNDECIDED -> "no arrangement of the panels on the rolls at hand was found, and none was shown to be impossible. Maybe buy one"
                    + " more roll.";
        };
    }
}
