package io.github.bedjoint.cutting;

import io.github.bedjoint.patterns.Work;
import io.github.bedjoint.rolls.Certificate;
import io.github.bedjoint.rolls.Cut;
import io.github.bedjoint.rolls.CuttingTerms;
import io.github.bedjoint.rolls.LotBound;
import io.github.bedjoint.rolls.LotRule;
import io.github.bedjoint.rolls.OpenedRoll;
import io.github.bedjoint.rolls.RollPlan;
import io.github.bedjoint.rolls.Stock;
import io.github.bedjoint.rolls.Stop;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/**
 * Plans a job in which all panels of one wall come from one lot: gives the walls to the lots one after another, longest
 * first, and bounds each partial choice by what the walls given so far cost in their lots at least.
 */
final class LotSearch {

    /** Work on one lot with some walls. */
    private static final long PART = 30_000_000;

    private record Key(int lot, BitSet walls) {}

    private final List<Cut> cuts;
    private final List<Stock> stock;
    private final CuttingTerms terms;
    private final CuttingTerms anyLot;
    private final Work work;
    private final List<String> lots;
    private final List<String> walls;
    private final Map<Key, RollPlan> parts = new HashMap<>();
    private final Map<Key, LotBound> used = new LinkedHashMap<>();
    private BitSet[] best = {};
    private long bestCost = LotBound.IMPOSSIBLE;
    private long openBound = LotBound.IMPOSSIBLE;

    LotSearch(List<Cut> cuts, List<Stock> stock, CuttingTerms terms, Work work) {
        this.cuts = cuts;
        this.stock = stock;
        this.terms = terms;
        this.work = work;
        anyLot = terms.withLots(LotRule.ANY);
        lots = List.copyOf(new TreeSet<>(stock.stream().map(Stock::lot).toList()));
        walls = new ArrayList<>(new TreeSet<>(cuts.stream().map(Cut::group).toList()));
        walls.sort(Comparator.comparingLong(wall -> -length(wall)));
    }

    private long length(String wall) {
        return cuts.stream()
                .filter(c -> c.group().equals(wall))
                .mapToLong(c -> c.lengthSteps() * c.quantity())
                .sum();
    }

    RollPlan plan() {
        Work quarter = work.part(work.left() / 4);
        RollPlan loose = PlainPlanning.plan(cuts, stock, anyLot, quarter);
        work.take(quarter);
        if (loose.stop() == Stop.INFEASIBLE || cuts.isEmpty()) {
            return as(loose);
        }
        long floor = loose.lowerBound();
        startFromOneLot();
        if (bestCost > floor) {
            branch(0, empty());
        }
        // Choices left open when the work ended, or whose parts are not proven, keep the bound down.
        long bound = Math.min(bestCost, openBound);
        if (floor >= bound || work.isOver()) {
            return finish(floor, loose.certificate());
        }
        Certificate certificate = new Certificate(List.of(), List.of(), certificate(bound));
        return finish(bound, certificate);
    }

    private RollPlan finish(long bound, Certificate certificate) {
        if (bestCost < LotBound.IMPOSSIBLE) {
            List<OpenedRoll> rolls = new ArrayList<>();
            for (int lot = 0; lot < lots.size(); lot++) {
                rolls.addAll(part(lot, best[lot]).rolls());
            }
            return PlainPlanning.answer(cuts, stock, terms, work, rolls, bestCost, Math.min(bound, bestCost), certificate);
        }
        boolean proven = bound == LotBound.IMPOSSIBLE;
        return PlainPlanning.noPlan(
                cuts,
                stock,
                terms,
                work,
                proven ? 0 : bound,
                proven ? Stop.INFEASIBLE : Stop.NO_PLAN_FOUND,
                certificate,
                List.of(Shortages.arrangement(cuts, stock, terms, proven)));
    }

    private RollPlan as(RollPlan loose) {
        return new RollPlan(
                cuts, stock, terms, loose.rolls(), loose.cost(), loose.lowerBound(), loose.stop(), loose.certificate(),
                loose.shortages(), work.spent());
    }

    private BitSet[] empty() {
        BitSet[] given = new BitSet[lots.size()];
        for (int lot = 0; lot < given.length; lot++) {
            given[lot] = new BitSet();
        }
        return given;
    }

    /** Puts all walls in the best single lot, then moves one wall at a time while that saves. */
    private void startFromOneLot() {
        for (int lot = 0; lot < lots.size(); lot++) {
            BitSet[] given = empty();
            given[lot].set(0, walls.size());
            offer(given);
        }
        boolean better = bestCost < LotBound.IMPOSSIBLE;
        while (better && !work.isOver()) {
            better = false;
            BitSet[] from = best;
            for (int wall = 0; wall < walls.size(); wall++) {
                for (int lot = 0; lot < lots.size(); lot++) {
                    BitSet[] given = new BitSet[from.length];
                    for (int k = 0; k < given.length; k++) {
                        given[k] = (BitSet) from[k].clone();
                        given[k].set(wall, k == lot);
                    }
                    better |= offer(given);
                }
            }
        }
    }

    private boolean offer(BitSet[] given) {
        long cost = 0;
        for (int lot = 0; lot < given.length; lot++) {
            RollPlan part = part(lot, given[lot]);
            if (!part.isFeasible()) {
                return false;
            }
            cost += part.cost();
        }
        if (cost >= bestCost) {
            return false;
        }
        bestCost = cost;
        best = given.clone();
        return true;
    }

    private void branch(int wall, BitSet[] given) {
        long bound = bound(given);
        work.spend(50);
        if (bound >= bestCost) {
            return;
        }
        if (wall == walls.size()) {
            BitSet[] copy = new BitSet[given.length];
            for (int lot = 0; lot < copy.length; lot++) {
                copy[lot] = (BitSet) given[lot].clone();
            }
            offer(copy);
            if (bound < bestCost) {
                openBound = Math.min(openBound, bound);
            }
            return;
        }
        if (work.isOver()) {
            openBound = Math.min(openBound, bound);
            return;
        }
        for (int lot = 0; lot < lots.size(); lot++) {
            given[lot].set(wall);
            branch(wall + 1, given);
            given[lot].clear(wall);
        }
    }

    private long bound(BitSet[] given) {
        long sum = 0;
        for (int lot = 0; lot < given.length; lot++) {
            long least = least(part(lot, given[lot]));
            if (least == LotBound.IMPOSSIBLE) {
                return LotBound.IMPOSSIBLE;
            }
            sum += least;
        }
        return sum;
    }

    private static long least(RollPlan part) {
        return part.stop() == Stop.INFEASIBLE ? LotBound.IMPOSSIBLE : part.lowerBound();
    }

    private RollPlan part(int lot, BitSet some) {
        Key key = new Key(lot, some);
        RollPlan known = parts.get(key);
        if (known == null) {
            Work piece = work.part(PART);
            known = PlainPlanning.plan(
                    cuts.stream().filter(c -> some.get(walls.indexOf(c.group()))).toList(),
                    stock.stream().filter(s -> s.lot().equals(lots.get(lot))).toList(),
                    anyLot,
                    piece);
            work.take(piece);
            parts.put(new Key(lot, (BitSet) some.clone()), known);
        }
        return known;
    }

    /** The bounds that close every choice at the final cost. */
    private List<LotBound> certificate(long bound) {
        collect(0, empty(), bound);
        return List.copyOf(used.values());
    }

    private void collect(int wall, BitSet[] given, long bound) {
        if (bound(given) >= bound) {
            for (int lot = 0; lot < given.length; lot++) {
                if (least(part(lot, given[lot])) == LotBound.IMPOSSIBLE) {
                    use(lot, given[lot]);
                    return;
                }
            }
            for (int lot = 0; lot < given.length; lot++) {
                use(lot, given[lot]);
            }
            return;
        }
        if (wall == walls.size()) {
            throw new IllegalStateException("a choice of lots was left open below the bound");
        }
        for (int lot = 0; lot < lots.size(); lot++) {
            given[lot].set(wall);
            collect(wall + 1, given, bound);
            given[lot].clear(wall);
        }
    }

    private void use(int lot, BitSet given) {
        RollPlan part = part(lot, given);
        if (least(part) > 0) {
            used.computeIfAbsent(
                    new Key(lot, (BitSet) given.clone()),
                    key -> new LotBound(
                            lots.get(lot),
                            given.stream().mapToObj(walls::get).toList(),
                            least(part),
                            part.certificate()));
        }
    }
}
