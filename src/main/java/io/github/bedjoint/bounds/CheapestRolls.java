package io.github.bedjoint.bounds;

import io.github.bedjoint.patterns.RollCounts;
import io.github.bedjoint.patterns.Work;
import io.github.bedjoint.rolls.Cut;
import io.github.bedjoint.rolls.CuttingTerms;
import io.github.bedjoint.rolls.PriceList;
import io.github.bedjoint.rolls.Stock;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;

/** The cheapest rolls that the price lists of a certificate leave, looked for list by list so that each can be told with what it adds. */
public final class CheapestRolls {
    private static final long WORK = 300_000;

    /** So many rolls of one row that leave at least some remnant, and what one costs with its credit. */
    public record Taken(Stock row, long leastRemnant, long cost, int count) {}

    /** Some rolls and what they cost. */
    public record Choice(List<Taken> rolls, long cost) {}

    /** What was found: a choice, or that none is left, or neither because the search was too long. */
    public record Answer(boolean known, List<Choice> choice) {}

    private final List<Cut> cuts;
    private final List<Stock> stock;
    private final CuttingTerms terms;
    private final ModelMaker maker;
    private final RollCounts counts;

    public CheapestRolls(List<Cut> cuts, List<Stock> stock, CuttingTerms terms) {
        this.cuts = cuts;
        this.stock = stock;
        this.terms = terms;
        maker = new ModelMaker(cuts, stock, terms);
        counts = new RollCounts(maker.model);
    }

    /** What all panels are priced at by a list. */
    public static BigInteger worth(List<Cut> cuts, PriceList list) {
        BigInteger sum = BigInteger.ZERO;
        for (int c = 0; c < cuts.size(); c++) {
            sum = sum.add(BigInteger.valueOf(list.prices().get(c)).multiply(BigInteger.valueOf(cuts.get(c).quantity())));
        }
        return sum;
    }

    /** What this list forbids is not chosen. */
    public void add(PriceList list) {
        long[] held = new long[maker.model.types()];
        for (int type = 0; type < held.length; type++) {
            held[type] = list.held().get(maker.rowOf(type)).get(level(type));
        }
        counts.add(new RollCounts.Row(held, worth(cuts, list).longValueExact()));
    }

    /** Nor are these counts of rows and levels, and smaller ones. */
    public void addExhausted(List<List<Integer>> ofRows) {
        int[] count = new int[maker.model.types()];
        for (int type = 0; type < count.length; type++) {
            count[type] = ofRows.get(maker.rowOf(type)).get(level(type));
        }
        counts.exclude(count);
    }

    /** Types of one kind follow one another, the one that leaves least first. */
    private int level(int type) {
        int level = 0;
        while (type - level > 0 && maker.model.kind[type - level - 1] == maker.model.kind[type]) {
            level++;
        }
        return level;
    }

    /** The cheapest rolls that nothing added so far forbids. */
    public Answer next() {
        Work work = new Work(WORK);
        int[] found = counts.next(Long.MAX_VALUE / 4, work);
        if (work.isOver()) {
            return new Answer(false, List.of());
        }
        return new Answer(true, found.length == 0 ? List.of() : List.of(choice(found)));
    }

    private Choice choice(int[] count) {
        List<Taken> taken = new ArrayList<>();
        long cost = 0;
        for (int type = 0; type < count.length; type++) {
            if (count[type] > 0) {
                Stock row = stock.get(maker.rowOf(type));
                ModelMaker.Level level = ModelMaker.levels(row, terms).get(level(type));
                taken.add(new Taken(row, level.leastRemnant(), level.cost(), count[type]));
                cost += level.cost() * count[type];
            }
        }
        return new Choice(taken, cost);
    }

    /** Rolls given as counts of rows and levels. */
    public static List<Taken> taken(List<Stock> stock, CuttingTerms terms, List<List<Integer>> ofRows) {
        List<Taken> taken = new ArrayList<>();
        for (int row = 0; row < ofRows.size(); row++) {
            for (int k = 0; k < ofRows.get(row).size(); k++) {
                if (ofRows.get(row).get(k) > 0) {
                    ModelMaker.Level level = ModelMaker.levels(stock.get(row), terms).get(k);
                    taken.add(new Taken(stock.get(row), level.leastRemnant(), level.cost(), ofRows.get(row).get(k)));
                }
            }
        }
        return taken;
    }
}
