package io.github.bedjoint.cutting;

import io.github.bedjoint.bounds.ModelMaker;
import io.github.bedjoint.checker.PlanChecker;
import io.github.bedjoint.patterns.RollSearch;
import io.github.bedjoint.patterns.Work;
import io.github.bedjoint.rolls.Certificate;
import io.github.bedjoint.rolls.Cut;
import io.github.bedjoint.rolls.CuttingTerms;
import io.github.bedjoint.rolls.LotBound;
import io.github.bedjoint.rolls.OpenedRoll;
import io.github.bedjoint.rolls.PriceList;
import io.github.bedjoint.rolls.RollPlan;
import io.github.bedjoint.rolls.Shortage;
import io.github.bedjoint.rolls.Stock;
import io.github.bedjoint.rolls.Stop;
import java.util.ArrayList;
import java.util.List;

/** Plans a job in which any roll serves any wall. */
final class PlainPlanning {

    private PlainPlanning() {}

    static RollPlan plan(List<Cut> cuts, List<Stock> stock, CuttingTerms terms, Work work) {
        if (cuts.isEmpty()) {
            return answer(cuts, stock, terms, work, List.of(), 0, 0, Certificate.empty());
        }
        List<Shortage> shortages = Shortages.of(cuts, stock, terms);
        if (!shortages.isEmpty()) {
            Certificate shown = Shortages.certificate(cuts, stock, terms, shortages.get(0));
            return noPlan(cuts, stock, terms, work, 0, Stop.INFEASIBLE, shown, shortages);
        }
        if (SideBySide.concerns(cuts, stock, terms)) {
            return SideBySide.plan(cuts, stock, terms, work);
        }
        ModelMaker maker = new ModelMaker(cuts, stock, terms);
        RollSearch.Found found = new RollSearch(maker.model, work).run();
        List<PriceList> lists = new ArrayList<>();
        found.prices().forEach(row -> lists.add(maker.priceList(row.price(), row.held())));
        Certificate certificate = new Certificate(
                lists, found.exhausted().stream().map(maker::counts).toList(), List.of());
        long bound = found.bound();
        // Only what a checker can follow counts: a complete search may have been too long for it.
        if (!found.exhausted().isEmpty()
                && !PlanChecker.checkBound(cuts, stock, terms, bound, certificate).accepted()) {
            bound = found.boundByPrices();
            certificate = new Certificate(lists, List.of(), List.of());
        }
        if (found.rolls().isEmpty()) {
            return noRolls(cuts, stock, terms, work, bound, certificate);
        }
        return answer(cuts, stock, terms, work, maker.rolls(found.rolls()), found.cost(), bound, certificate);
    }

    static RollPlan answer(
            List<Cut> cuts,
            List<Stock> stock,
            CuttingTerms terms,
            Work work,
            List<OpenedRoll> rolls,
            long cost,
            long bound,
            Certificate certificate) {
        Stop stop = cost == bound ? Stop.PROVEN : Stop.WORK_LIMIT;
        return new RollPlan(cuts, stock, terms, rolls, cost, bound, stop, certificate, List.of(), work.spent());
    }

    /** No rolls were found: proven if the bound says that there are none. */
    static RollPlan noRolls(
            List<Cut> cuts, List<Stock> stock, CuttingTerms terms, Work work, long bound, Certificate certificate) {
        boolean proven = bound == LotBound.IMPOSSIBLE;
        Shortage reason = Shortages.arrangement(cuts, stock, terms, proven);
        Stop stop = proven ? Stop.INFEASIBLE : Stop.NO_PLAN_FOUND;
        return noPlan(cuts, stock, terms, work, proven ? 0 : bound, stop, certificate, List.of(reason));
    }

    static RollPlan noPlan(
            List<Cut> cuts,
            List<Stock> stock,
            CuttingTerms terms,
            Work work,
            long bound,
            Stop stop,
            Certificate certificate,
            List<Shortage> shortages) {
        return new RollPlan(cuts, stock, terms, List.of(), 0, bound, stop, certificate, shortages, work.spent());
    }
}
