package io.github.bedjoint.checker;

import io.github.bedjoint.rolls.Certificate;
import io.github.bedjoint.rolls.Cut;
import io.github.bedjoint.rolls.CuttingTerms;
import io.github.bedjoint.rolls.LotBound;
import io.github.bedjoint.rolls.LotRule;
import io.github.bedjoint.rolls.OpenedRoll;
import io.github.bedjoint.rolls.PlacedCut;
import io.github.bedjoint.rolls.RollPlan;
import io.github.bedjoint.rolls.Stock;
import io.github.bedjoint.rolls.Stop;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Accepts or refuses roll plans, with the reason.
 *
 * <p>Shares no code with {@link io.github.bedjoint.cutting.RollPlanner} and uses whole numbers only. A plan made by hand is checked with
 * {@link #checkRolls}; a planner's answer with {@link #check}, which also works its certificate through again: first
 * that no roll holds panels priced above what the certificate says, then that the price lists and the exhausted counts
 * forbid every choice of rolls cheaper than the bound.
 */
public final class PlanChecker {

    /**
     * What the checker says.
     *
     * @param accepted true if nothing is wrong
     * @param reason what is wrong, or "accepted"
     */
    public record Verdict(boolean accepted, String reason) {

        static Verdict yes() {
            return new Verdict(true, "accepted");
        }

        static Verdict no(String reason) {
            return new Verdict(false, reason);
        }
    }

    private PlanChecker() {}

    /**
     * Checks a planner's whole answer: rolls, cost, bound, and the reason why the search stopped.
     *
     * @param plan the answer
     * @return accepted, or the first fault found; a certificate that is too large to check is a fault
     */
    public static Verdict check(RollPlan plan) {
        if (plan.stop() == Stop.INFEASIBLE) {
            return InfeasibleCheck.check(plan);
        }
        if (!plan.isFeasible()) {
            return plan.rolls().isEmpty() ? bound(plan) : Verdict.no("rolls without a plan");
        }
        Verdict rolls = checkRolls(plan.cuts(), plan.stock(), plan.terms(), plan.rolls());
        if (!rolls.accepted()) {
            return rolls;
        }
        long cost = cost(plan.stock(), plan.rolls());
        if (cost != plan.cost()) {
            return Verdict.no("the rolls cost " + cost + " minor units, the plan says " + plan.cost());
        }
        if (plan.lowerBound() > cost) {
            return Verdict.no("the lower bound " + plan.lowerBound() + " is above the cost " + cost);
        }
        if (plan.isProven() && plan.lowerBound() != cost) {
            return Verdict.no("called proven with a gap of " + (cost - plan.lowerBound()) + " minor units");
        }
        return bound(plan);
    }

    private static Verdict bound(RollPlan plan) {
        return checkBound(plan.cuts(), plan.stock(), plan.terms(), plan.lowerBound(), plan.certificate());
    }

    /**
     * Checks a lower bound alone.
     *
     * @param cuts panels to cut
     * @param stock rolls at hand
     * @param terms lead, tail, gap and rules
     * @param bound what every plan is said to cost at least, in minor money units, or {@link LotBound#IMPOSSIBLE}
     * @param certificate what shows it
     * @return accepted if the certificate forbids every choice of rolls that costs less; one that is too large to check does not
     */
    public static Verdict checkBound(
            List<Cut> cuts, List<Stock> stock, CuttingTerms terms, long bound, Certificate certificate) {
        return BoundCheck.check(cuts, stock, terms, bound, certificate);
    }

    /**
     * Checks the rolls of any plan.
     *
     * @param cuts panels to cut
     * @param stock rolls at hand
     * @param terms lead, tail, gap and rules
     * @param rolls the rolls opened
     * @return accepted if every panel is cut as often as asked from a roll that is at hand, within its printable width and usable
     *     length, no two overlap or lie nearer than the gap, none is turned that may not be, the cuts are allowed, the stated lengths
     *     and credits are right, and walls keep to one lot where the terms ask for it
     */
    public static Verdict checkRolls(List<Cut> cuts, List<Stock> stock, CuttingTerms terms, List<OpenedRoll> rolls) {
        Map<String, Cut> cutById = new HashMap<>();
        Map<String, Integer> open = new HashMap<>();
        for (Cut cut : cuts) {
            if (cutById.put(cut.id(), cut) != null) {
                return Verdict.no("cut id " + cut.id() + " is used twice");
            }
            open.put(cut.id(), cut.quantity());
        }
        Map<String, Stock> stockById = new HashMap<>();
        Map<String, Integer> taken = new HashMap<>();
        for (Stock row : stock) {
            if (stockById.put(row.id(), row) != null) {
                return Verdict.no("stock id " + row.id() + " is used twice");
            }
        }
        Map<String, Set<String>> lotsOfWall = new HashMap<>();
        for (OpenedRoll roll : rolls) {
            Stock row = stockById.get(roll.stockId());
            if (row == null) {
                return Verdict.no("no stock row " + roll.stockId());
            }
            int count = taken.merge(row.id(), 1, Integer::sum);
            if (row.available() >= 0 && count > row.available()) {
                return Verdict.no("more than " + row.available() + " rolls of " + row.id() + " opened");
            }
            for (String piece : roll.pieces()) {
                Cut cut = cutById.get(piece);
                if (cut == null) {
                    return Verdict.no("no cut " + piece);
                }
                if (open.merge(piece, -1, Integer::sum) < 0) {
                    return Verdict.no("cut " + piece + " more than " + cut.quantity() + " times");
                }
                lotsOfWall.computeIfAbsent(cut.group(), g -> new HashSet<>()).add(row.lot());
            }
            Verdict lengths = lengths(row, terms, roll);
            if (!lengths.accepted()) {
                return lengths;
            }
            String fault = PlaceCheck.fault(cutById, row, terms, roll);
            if (!fault.isEmpty()) {
                return Verdict.no(fault);
            }
        }
        for (Map.Entry<String, Integer> left : open.entrySet()) {
            if (left.getValue() != 0) {
                return Verdict.no("cut " + left.getKey() + " is missing " + left.getValue() + " times");
            }
        }
        for (Map.Entry<String, Set<String>> wall : lotsOfWall.entrySet()) {
            if (terms.lots() == LotRule.ONE_LOT_PER_WALL && wall.getValue().size() > 1) {
                return Verdict.no("wall " + wall.getKey() + " is cut from more than one lot");
            }
        }
        return Verdict.yes();
    }

    private static Verdict lengths(Stock row, CuttingTerms terms, OpenedRoll roll) {
        if (roll.placed().isEmpty()) {
            return Verdict.no("roll " + row.id() + " is opened for nothing");
        }
        long used = 0;
        for (PlacedCut piece : roll.placed()) {
            used = Math.max(used, Math.addExact(piece.alongSteps(), piece.lengthSteps()));
        }
        long usable = row.lengthSteps() - terms.leadSteps() - terms.tailSteps();
        if (used > usable) {
            return Verdict.no("roll " + row.id() + " has " + usable + " usable steps, the pieces need " + used);
        }
        if (roll.usedSteps() != used || roll.remnantSteps() != usable - used) {
            return Verdict.no("roll " + row.id() + " uses " + used + " steps and leaves " + (usable - used)
                    + ", the plan says " + roll.usedSteps() + " and " + roll.remnantSteps());
        }
        long credit = CreditCheck.credit(row, terms.remnants(), usable - used);
        if (roll.credit() != credit) {
            return Verdict.no("the remnant of roll " + row.id() + " is worth " + credit + " minor units, the plan says "
                    + roll.credit());
        }
        return Verdict.yes();
    }

    private static long cost(List<Stock> stock, List<OpenedRoll> rolls) {
        long sum = 0;
        for (OpenedRoll roll : rolls) {
            for (Stock row : stock) {
                if (row.id().equals(roll.stockId())) {
                    sum = Math.addExact(sum, row.cost() - roll.credit());
                }
            }
        }
        return sum;
    }
}
