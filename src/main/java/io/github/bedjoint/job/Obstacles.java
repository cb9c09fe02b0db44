package io.github.bedjoint.job;

import io.github.bedjoint.layout.Alternative;
import io.github.bedjoint.layout.PanelLayout;
import io.github.bedjoint.rolls.RollPlan;
import io.github.bedjoint.rolls.Shortage;
import io.github.bedjoint.units.Print;
import io.github.bedjoint.units.UnitStyle;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Collectors;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;

/** Says in words why a job cannot be done. */
final class Obstacles {
    private Obstacles() {}

    /** Why a wall has no layout, and what other ways would cost by the job's prices and paces. */
    static void ofLayout(Job job, PanelLayout layout, List<String> reasons) {
        StringBuilder text = new StringBuilder(layout.wall().name()).append(": ").append(String.join("; ", layout.reasons()));
        if (!layout.alternatives().isEmpty()) {
            text.append(job.layout().hasLongestCut() ? "" : ", which is what the longest roll gives").append(". Maybe take ");
            text.append(layout.alternatives().stream().map(other -> priced(job, other)).collect(Collectors.joining(", or ")));
        }
        reasons.add(text.toString());
    }

    private static String priced(Job job, Alternative other) {
        Money cost = Money.of(job.rules().currency(), BigDecimal.valueOf(other.layout().cost()), RoundingMode.HALF_UP);
        return other.what() + ": " + Print.count(other.layout().panels().size(), "panel") + " for " + cost + " of film and work";
    }

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
