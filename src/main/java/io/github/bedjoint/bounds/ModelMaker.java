package io.github.bedjoint.bounds;

import io.github.bedjoint.patterns.Model;
import io.github.bedjoint.patterns.Pattern;
import io.github.bedjoint.rolls.AcrossScale;
import io.github.bedjoint.rolls.Cut;
import io.github.bedjoint.rolls.CuttingTerms;
import io.github.bedjoint.rolls.OpenedRoll;
import io.github.bedjoint.rolls.PriceList;
import io.github.bedjoint.rolls.RemnantRule;
import io.github.bedjoint.rolls.Stock;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import java.util.function.LongUnaryOperator;
import java.util.stream.IntStream;

/** Turns a job into a {@link Model}, and what the solvers find back into rows of the job. */
public final class ModelMaker {

    /** A roll kind that leaves at least some remnant: usable length and price less credit. */
    public record Level(long leastRemnant, long cost) {}

    private record Size(long length, long width) {}

    private record Kind(long usable, long width, List<Level> levels) {}

    private final List<Cut> cuts;
    private final List<Stock> stock;
    private final CuttingTerms terms;
    private final int[] itemOfCut;
    private final int[][] typeOfStock;
    private final List<List<Integer>> stockOfKind = new ArrayList<>();
    public final Model model;

    /** Usable length and a gap of each type, in steps. */
    public final long[] room;

    public ModelMaker(List<Cut> cuts, List<Stock> stock, CuttingTerms terms) {
        this.cuts = cuts;
        this.stock = stock;
        this.terms = terms;
        TreeSet<Size> sizes = new TreeSet<>(
                Comparator.comparing(Size::length).thenComparing(Size::width).reversed());
        cuts.forEach(c -> sizes.add(new Size(c.lengthSteps() + terms.gapSteps(), c.widthSteps())));
        List<Size> items = List.copyOf(sizes);
        int[] demand = new int[items.size()];
        itemOfCut = new int[cuts.size()];
        for (int c = 0; c < cuts.size(); c++) {
            Cut cut = cuts.get(c);
            itemOfCut[c] = items.indexOf(new Size(cut.lengthSteps() + terms.gapSteps(), cut.widthSteps()));
            demand[itemOfCut[c]] += cut.quantity();
        }
        long factor = 0;
        for (Size s : items) {
            factor = gcd(s.length(), factor);
        }
        List<Kind> kinds = new ArrayList<>();
        for (int s = 0; s < stock.size(); s++) {
            Kind kind = new Kind(
                    terms.usableSteps(stock.get(s)), stock.get(s).widthSteps(), levels(stock.get(s), terms));
            if (!kinds.contains(kind)) {
                kinds.add(kind);
                stockOfKind.add(new ArrayList<>());
            }
            stockOfKind.get(kinds.indexOf(kind)).add(s);
        }
        long pieces = cuts.stream().mapToLong(Cut::quantity).sum();
        int types = kinds.stream().mapToInt(k -> k.levels().size()).sum();
        long[] cap = new long[types];
        room = new long[types];
        long[] width = new long[types];
        long[] cost = new long[types];
        int[] kindOf = new int[types];
        int[] supply = new int[kinds.size()];
        typeOfStock = new int[stock.size()][];
        int r = 0;
        for (int k = 0; k < kinds.size(); k++) {
            int first = r;
            for (Level level : kinds.get(k).levels()) {
                room[r] = Math.max(0, kinds.get(k).usable() - level.leastRemnant() + terms.gapSteps());
                cap[r] = room[r] / factor;
                width[r] = kinds.get(k).width();
                cost[r] = level.cost();
                kindOf[r++] = k;
            }
            long count = 0;
            for (int s : stockOfKind.get(k)) {
                int available = stock.get(s).available();
                count += available == Stock.UNLIMITED ? pieces : available;
                typeOfStock[s] = IntStream.range(first, r).toArray();
            }
            supply[k] = (int) Math.min(pieces, count);
        }
        model = new Model(
                items.stream().mapToLong(Size::length).map(scale(factor)).toArray(),
                items.stream().mapToLong(Size::width).toArray(),
                demand, cap, width, cost, kindOf, supply);
    }

    private static LongUnaryOperator scale(long factor) {
        return length -> length / factor;
    }

    private static long gcd(long a, long b) {
        return b == 0 ? a : gcd(b, a % b);
    }

    /** The ways to leave a remnant of one roll, the most used roll first; each has a higher credit than the one before. */
    public static List<Level> levels(Stock roll, CuttingTerms terms) {
        List<Level> levels = new ArrayList<>();
        levels.add(new Level(0, roll.cost()));
        RemnantRule rule = terms.remnants();
        long usable = terms.usableSteps(roll);
        long credit = 0;
        long start = (rule.leastSteps() + rule.unitSteps() - 1) / rule.unitSteps() * rule.unitSteps();
        if (rule.percent() > 0) {
            // The shortest remnant kept may lie between two whole units and then earns the lower one.
            credit = addLevel(levels, roll, rule, rule.leastSteps(), usable, credit);
            for (long left = start; left < usable; left += rule.unitSteps()) {
                credit = addLevel(levels, roll, rule, left, usable, credit);
            }
        }
        return levels;
    }

    private static long addLevel(
            List<Level> levels, Stock roll, RemnantRule rule, long left, long usable, long credit) {
        long value = rule.credit(roll, left);
        if (left >= usable || value <= credit) {
            return credit;
        }
        levels.add(new Level(left, roll.cost() - value));
        return value;
    }

    /** Rolls of the job for patterns of the model: longest pieces first, cut rows in their order. */
    public List<OpenedRoll> rolls(List<Pattern> patterns) {
        int[] cutLeft = cuts.stream().mapToInt(Cut::quantity).toArray();
        List<Stock> rows = rowsOf(patterns.stream().mapToInt(Pattern::type).toArray());
        List<OpenedRoll> rolls = new ArrayList<>();
        for (int k = 0; k < rows.size(); k++) {
            rolls.add(roll(rows.get(k), patterns.get(k), cutLeft));
        }
        return rolls;
    }

    /** The row of the stock that each of some rolls of given types is taken from. */
    public List<Stock> rowsOf(int[] types) {
        long[] left = stock.stream()
                .mapToLong(s -> s.available() == Stock.UNLIMITED ? Long.MAX_VALUE : s.available())
                .toArray();
        List<Stock> rows = new ArrayList<>();
        for (int type : types) {
            int s = stockOfKind.get(model.kind[type]).stream()
                    .filter(row -> left[row] > 0)
                    .findFirst()
                    .orElseThrow();
            left[s]--;
            rows.add(stock.get(s));
        }
        return rows;
    }

    private OpenedRoll roll(Stock roll, Pattern pattern, int[] cutLeft) {
        int[] open = pattern.counts().clone();
        List<Cut> pieces = new ArrayList<>();
        for (int c = 0; c < cutLeft.length; c++) {
            int item = itemOfCut[c];
            while (open[item] > 0 && cutLeft[c] > 0) {
                open[item]--;
                cutLeft[c]--;
                pieces.add(cuts.get(c));
            }
        }
        pieces.sort(Comparator.<Cut>comparingLong(cut -> -cut.lengthSteps()));
        return OpenedRoll.inLine(roll, pieces, terms);
    }

    /** A price list of the model in rows of the job. */
    public PriceList priceList(long[] price, long[] held) {
        return priceList(Arrays.stream(itemOfCut).mapToObj(item -> price[item]).toList(), held, AcrossScale.oneAcross(stock.size()));
    }

    /** Prices of the cuts with what the types hold in rows of the job. */
    PriceList priceList(List<Long> prices, long[] held, AcrossScale across) {
        List<List<Long>> rows = new ArrayList<>();
        for (int[] types : typeOfStock) {
            rows.add(Arrays.stream(types).mapToObj(r -> held[r]).toList());
        }
        return new PriceList(prices, rows, across);
    }

    /** The first row of the stock that a type stands for. */
    int rowOf(int type) {
        return stockOfKind.get(model.kind[type]).get(0);
    }

    /** Counts of roll types in rows of the job; of rows that are alike the first one carries the count. */
    public List<List<Integer>> counts(int[] count) {
        List<List<Integer>> rows = new ArrayList<>();
        for (int s = 0; s < typeOfStock.length; s++) {
            boolean first = stockOfKind.get(model.kind[typeOfStock[s][0]]).get(0) == s;
            rows.add(Arrays.stream(typeOfStock[s])
                    .mapToObj(r -> first ? count[r] : 0)
                    .toList());
        }
        return rows;
    }
}
