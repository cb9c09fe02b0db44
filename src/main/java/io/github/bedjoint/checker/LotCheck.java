package io.github.bedjoint.checker;

import io.github.bedjoint.rolls.Certificate;
import io.github.bedjoint.rolls.Cut;
import io.github.bedjoint.rolls.CuttingTerms;
import io.github.bedjoint.rolls.LotBound;
import io.github.bedjoint.rolls.LotRule;
import io.github.bedjoint.rolls.Stock;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Checks a lower bound when each wall keeps to one lot: first each bound of walls gathered in a lot, then that every way
 * to give the walls to the lots costs at least the bound.
 */
final class LotCheck {

    private static final int MAX_CHOICES = 2_000_000;

    private final List<String> lots;
    private final List<String> walls;
    private final List<LotBound> bounds;
    private final Map<String, Set<String>> given = new HashMap<>();
    private int choices;

    private LotCheck(List<String> lots, List<String> walls, List<LotBound> bounds) {
        this.lots = lots;
        this.walls = walls;
        this.bounds = bounds;
        lots.forEach(lot -> given.put(lot, new HashSet<>()));
    }

    static PlanChecker.Verdict check(
            List<Cut> cuts, List<Stock> stock, CuttingTerms terms, long bound, Certificate certificate) {
        CuttingTerms anyLot = terms.withLots(LotRule.ANY);
        for (LotBound part : certificate.lotBounds()) {
            List<Cut> some =
                    cuts.stream().filter(c -> part.walls().contains(c.group())).toList();
            List<Stock> rolls =
                    stock.stream().filter(s -> s.lot().equals(part.lot())).toList();
            PlanChecker.Verdict verdict = BoundCheck.check(some, rolls, anyLot, part.bound(), part.certificate());
            if (!verdict.accepted()) {
                return PlanChecker.Verdict.no("lot " + part.lot() + " for walls " + part.walls() + ": " + verdict.reason());
            }
        }
        Set<String> lots = new LinkedHashSet<>();
        stock.forEach(s -> lots.add(s.lot()));
        Map<String, Long> walls = new HashMap<>();
        cuts.forEach(c -> walls.merge(c.group(), c.lengthSteps() * c.quantity(), Long::sum));
        List<String> order = new ArrayList<>(walls.keySet());
        order.sort(Comparator.<String>comparingLong(wall -> -walls.get(wall)).thenComparing(wall -> wall));
        LotCheck check = new LotCheck(List.copyOf(lots), order, certificate.lotBounds());
        // A bound without lots holds with lots too.
        boolean plain = !certificate.priceLists().isEmpty()
                && BoundCheck.check(
                                cuts,
                                stock,
                                anyLot,
                                bound,
                                new Certificate(certificate.priceLists(), certificate.exhausted(), List.of()))
                        .accepted();
        return plain || check.allAtLeast(0, bound)
                ? PlanChecker.Verdict.yes()
                : PlanChecker.Verdict.no("some way to give the walls to the lots is not shown to cost " + bound);
    }

    private boolean allAtLeast(int wall, long bound) {
        if (++choices > MAX_CHOICES) {
            return false;
        }
        long sum = 0;
        for (String lot : lots) {
            long least = 0;
            for (LotBound part : bounds) {
                if (part.lot().equals(lot) && given.get(lot).containsAll(part.walls())) {
                    least = Math.max(least, part.bound());
                }
            }
            sum = sum >= bound - least ? bound : sum + least;
        }
        if (sum >= bound) {
            return true;
        }
        if (wall == walls.size()) {
            return false;
        }
        for (String lot : lots) {
            given.get(lot).add(walls.get(wall));
            boolean fine = allAtLeast(wall + 1, bound);
            given.get(lot).remove(walls.get(wall));
            if (!fine) {
                return false;
            }
        }
        return true;
    }
}
