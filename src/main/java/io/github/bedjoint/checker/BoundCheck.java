package io.github.bedjoint.checker;

import io.github.bedjoint.rolls.Certificate;
import io.github.bedjoint.rolls.Cut;
import io.github.bedjoint.rolls.CuttingTerms;
import io.github.bedjoint.rolls.LotRule;
import io.github.bedjoint.rolls.PriceList;
import io.github.bedjoint.rolls.Stock;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/** Checks a lower bound: every choice of roll counts that costs less must be forbidden by the certificate. */
final class BoundCheck {

    /** A roll kind at one remnant level. */
    record Type(int kind, boolean single, long usable, long width, long cost, int row, int level) {}

    private static final long MAX_CHOICES = 20_000_000;

    /** Keeps sums of prices over all panels and all rolls in 64 bits. */
    private static final long MAX_SUM = 1L << 55;

    private final List<Cut> cuts;
    private final CuttingTerms terms;
    private final int stockRows;
    private final List<Type> types = new ArrayList<>();
    private final List<Long> supply = new ArrayList<>();
    private final List<long[]> held = new ArrayList<>();
    private final List<Long> needed = new ArrayList<>();
    private final List<long[]> exhausted = new ArrayList<>();
    private long choices;

    private BoundCheck(List<Cut> cuts, List<Stock> stock, CuttingTerms terms) {
        this.cuts = cuts;
        this.terms = terms;
        this.stockRows = stock.size();
        long pieces = cuts.stream().mapToLong(Cut::quantity).sum();
        for (int s = 0; s < stock.size(); s++) {
            Stock row = stock.get(s);
            long usable = row.lengthSteps() - terms.leadSteps() - terms.tailSteps();
            long count = row.available() == Stock.UNLIMITED ? pieces : Math.min(pieces, row.available());
            int known = kind(usable, row.widthSteps(), row.cost());
            if (known >= 0) {
                supply.set(known, Math.min(pieces, supply.get(known) + count));
                continue;
            }
            Map<Long, Long> steps = CreditCheck.steps(row, terms);
            int level = 0;
            for (Map.Entry<Long, Long> step : steps.entrySet()) {
                types.add(new Type(
                        supply.size(), steps.size() == 1, usable - step.getKey(), row.widthSteps(),
                        row.cost() - step.getValue(), s, level++));
            }
            supply.add(count);
        }
        // The last type takes what is left of the budget, so the ones that come in numbers go last.
        types.sort(Comparator.comparing((Type t) -> supply.get(t.kind()) >= pieces)
                .thenComparing(Type::row)
                .thenComparing(Type::level));
    }

    private int kind(long usable, long width, long cost) {
        for (Type t : types) {
            if (t.level() == 0 && t.usable() == usable && t.width() == width && t.cost() == cost) {
                return t.kind();
            }
        }
        return -1;
    }

    static PlanChecker.Verdict check(
            List<Cut> cuts, List<Stock> stock, CuttingTerms terms, long bound, Certificate certificate) {
        if (bound <= 0) {
            return PlanChecker.Verdict.yes();
        }
        if (terms.lots() == LotRule.ONE_LOT_PER_WALL) {
            return LotCheck.check(cuts, stock, terms, bound, certificate);
        }
        return new BoundCheck(cuts, stock, terms).run(bound, certificate);
    }

    private PlanChecker.Verdict run(long bound, Certificate certificate) {
        for (PriceList list : certificate.priceLists()) {
            String fault = take(list);
            if (!fault.isEmpty()) {
                return PlanChecker.Verdict.no(fault);
            }
        }
        List<PackingCheck.Prices> lists = new ArrayList<>();
        for (int q = 0; q < held.size(); q++) {
            lists.add(new PackingCheck.Prices(certificate.priceLists().get(q).prices(), held.get(q)));
        }
        for (List<List<Integer>> counts : certificate.exhausted()) {
            if (!isComplete(counts)) {
                return PlanChecker.Verdict.no("counts " + counts + " do not reach every stock row and remnant");
            }
            long[] count = new long[types.size()];
            for (int t = 0; t < count.length; t++) {
                count[t] = counts.get(types.get(t).row()).get(types.get(t).level());
            }
            boolean beside = types.stream()
                    .anyMatch(type -> supply.get(type.kind()) > 0 && AcrossCheck.isSideBySide(cuts, terms, type));
            if (beside || !PackingCheck.isImpossible(cuts, terms.gapSteps(), types, count, lists)) {
                return PlanChecker.Verdict.no("counts " + counts + " were not seen to be impossible");
            }
            exhausted.add(count);
        }
        String fault = cheaper(0, bound - 1, new long[types.size()], supply.stream().mapToLong(Long::longValue).toArray());
        return fault.isEmpty() ? PlanChecker.Verdict.yes() : PlanChecker.Verdict.no(fault);
    }

    private String take(PriceList list) {
        if (list.prices().size() != cuts.size()) {
            return "a price list has " + list.prices().size() + " prices for " + cuts.size() + " cuts";
        }
        if (!isComplete(list.held())) {
            return "a price list does not reach every stock row and remnant";
        }
        AcrossCheck across = new AcrossCheck(cuts, terms, list.across());
        if (!across.isWellFormed(stockRows)) {
            return "what panels count across the roll is not well formed";
        }
        long pieces = cuts.stream().mapToLong(Cut::quantity).sum();
        long sum = 0;
        for (int c = 0; c < cuts.size(); c++) {
            long price = list.prices().get(c);
            if (price < 0 || price > MAX_SUM / pieces) {
                return "price " + price + " of cut " + cuts.get(c).id() + " is out of range";
            }
            sum += price * cuts.get(c).quantity();
        }
        long[] most = new long[types.size()];
        for (int t = 0; t < most.length; t++) {
            Type type = types.get(t);
            most[t] = list.held().get(type.row()).get(type.level());
            if (supply.get(type.kind()) == 0) {
                continue;
            }
            if (!across.holds(type)) {
                return "panels side by side on stock row " + type.row() + " may count more than " + list.across().most().get(type.row());
            }
            if (most[t] < 0 || most[t] > MAX_SUM / pieces || !across.neverAbove(list.prices(), type, most[t])) {
                return "a roll of stock row " + type.row() + " may hold panels priced above " + most[t];
            }
        }
        held.add(most);
        needed.add(sum);
        return "";
    }

    private boolean isComplete(List<? extends List<?>> numbers) {
        return types.stream().allMatch(t -> t.row() < numbers.size() && t.level() < numbers.get(t.row()).size());
    }

    /** Looks for counts within the budget that nothing forbids; types before {@code t} are decided. */
    private String cheaper(int t, long budget, long[] count, long[] left) {
        if (++choices > MAX_CHOICES) {
            return "too many choices of rolls to check";
        }
        if (isHopeless(t, budget, count, left)) {
            return "";
        }
        if (t == types.size()) {
            return isExhausted(count) ? "" : "roll counts " + Arrays.toString(count) + " are not forbidden";
        }
        Type type = types.get(t);
        long most = type.cost() == 0 ? left[type.kind()] : Math.min(left[type.kind()], budget / type.cost());
        // More rolls never hold less: where nothing else can be bought with what is saved, only the most counts.
        boolean onlyMost = type.cost() == 0 && type.single() || t + 1 == types.size() || budgetCoversRest(t, budget, left);
        for (long c = most; c >= (onlyMost ? most : 0); c--) {
            count[t] = c;
            left[type.kind()] -= c;
            String fault = cheaper(t + 1, budget - c * type.cost(), count, left);
            left[type.kind()] += c;
            count[t] = 0;
            if (!fault.isEmpty()) {
                return fault;
            }
        }
        return "";
    }

    /** All that is left can be bought whole, so that buying less than all decides nothing. */
    private boolean budgetCoversRest(int t, long budget, long[] left) {
        if (types.get(t).level() != 0) {
            return false;
        }
        long cost = 0;
        for (int k = t; k < types.size(); k++) {
            if (types.get(k).level() == 0) {
                long all = types.get(k).cost() * left[types.get(k).kind()];
                if (all > budget - cost) {
                    return false;
                }
                cost += all;
            }
        }
        return true;
    }

    /** A price list forbids these counts, whatever the rest of the budget adds. */
    private boolean isHopeless(int t, long budget, long[] count, long[] left) {
        for (int q = 0; q < held.size(); q++) {
            long missing = needed.get(q);
            for (int k = 0; k < t; k++) {
                missing -= held.get(q)[k] * count[k];
            }
            for (int k = t; k < types.size(); k++) {
                missing -= types.get(k).cost() == 0 ? held.get(q)[k] * left[types.get(k).kind()] : 0;
            }
            boolean hopeless = missing > 0;
            for (int k = t; hopeless && k < types.size(); k++) {
                long cost = types.get(k).cost();
                hopeless = cost == 0 || HeldCheck.isLess(budget, held.get(q)[k], missing, cost);
            }
            if (hopeless) {
                return true;
            }
        }
        return false;
    }

    private boolean isExhausted(long[] count) {
        for (long[] known : exhausted) {
            boolean within = true;
            for (int t = 0; t < count.length; t++) {
                within &= count[t] <= known[t];
            }
            if (within) {
                return true;
            }
        }
        return false;
    }
}
