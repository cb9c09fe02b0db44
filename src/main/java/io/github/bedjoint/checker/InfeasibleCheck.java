package io.github.bedjoint.checker;

import io.github.bedjoint.rolls.Cut;
import io.github.bedjoint.rolls.CuttingTerms;
import io.github.bedjoint.rolls.LotBound;
import io.github.bedjoint.rolls.RollPlan;
import io.github.bedjoint.rolls.Shortage;
import io.github.bedjoint.rolls.Stock;

/** Checks the claim that a job has no plan. */
final class InfeasibleCheck {

    private InfeasibleCheck() {}

    static PlanChecker.Verdict check(RollPlan plan) {
        if (!plan.rolls().isEmpty() || plan.shortages().isEmpty()) {
            return PlanChecker.Verdict.no("called impossible with rolls or without a reason");
        }
        for (Shortage shortage : plan.shortages()) {
            if (!holds(plan, shortage)) {
                return PlanChecker.Verdict.no("the shortage " + shortage + " is not there");
            }
        }
        return PlanChecker.Verdict.yes();
    }

    private static boolean holds(RollPlan plan, Shortage shortage) {
        CuttingTerms terms = plan.terms();
        switch (shortage.reason()) {
            case CUT_TOO_WIDE, CUT_TOO_LONG -> {
                Cut cut = plan.cuts().stream()
                        .filter(c -> c.id().equals(shortage.cutId()))
                        .findFirst()
                        .orElse(null);
                return cut != null && plan.stock().stream().noneMatch(row -> fits(cut, row, terms));
            }
            case STOCK_TOO_SHORT -> {
                long needed = 0;
                for (Cut cut : plan.cuts()) {
                    long piece = cut.lengthSteps() + terms.gapSteps();
                    needed = Math.addExact(needed, Math.multiplyExact(piece, (long) cut.quantity()));
                }
                long there = 0;
                for (Stock row : plan.stock()) {
                    long usable = row.lengthSteps() - terms.leadSteps() - terms.tailSteps() + terms.gapSteps();
                    there = Math.addExact(there, Math.multiplyExact(Math.max(0, usable), (long) row.available()));
                    if (row.available() == Stock.UNLIMITED) {
                        return false;
                    }
                }
                return needed > there && isShown(plan);
            }
            case NO_ARRANGEMENT -> {
                return isShown(plan);
            }
            default -> {
                return false;
            }
        }
    }

    private static boolean isShown(RollPlan plan) {
        return BoundCheck.check(plan.cuts(), plan.stock(), plan.terms(), LotBound.IMPOSSIBLE, plan.certificate()).accepted();
    }

    private static boolean fits(Cut cut, Stock row, CuttingTerms terms) {
        long usable = row.lengthSteps() - terms.leadSteps() - terms.tailSteps();
        boolean upright = row.widthSteps() >= cut.widthSteps() && usable >= cut.lengthSteps();
        boolean turned = cut.rotate() && row.widthSteps() >= cut.lengthSteps() && usable >= cut.widthSteps();
        return row.available() != 0 && (upright || turned);
    }
}
