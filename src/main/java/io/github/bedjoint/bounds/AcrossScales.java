package io.github.bedjoint.bounds;

import io.github.bedjoint.patterns.Knapsack;
import io.github.bedjoint.patterns.Model;
import io.github.bedjoint.patterns.PatternLp;
import io.github.bedjoint.patterns.PatternPool;
import io.github.bedjoint.patterns.Prices;
import io.github.bedjoint.patterns.Work;
import io.github.bedjoint.rolls.AcrossScale;
import io.github.bedjoint.rolls.Cut;
import io.github.bedjoint.rolls.CuttingTerms;
import io.github.bedjoint.rolls.Stock;
import io.github.bedjoint.skyline.Lying;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;

/** Finds scales for panels across a roll: their widths, whether they lie alone, and the best prices of widths. */
final class AcrossScales {

    /** Largest product of a count, a length and a number of panels. */
    private static final long MAX_SUM = 1L << 50;

    private static final long LP_WORK = 10_000_000;

    /** Prices of widths are looked for in whole parts up to this one. */
    private static final int MAX_PARTS = 60;

    private static final int FINE_PARTS = 5_040;

    private static final int LENGTH_UNITS = 1_000_000;

    private final List<Cut> cuts;
    private final List<Stock> stock;
    private final CuttingTerms terms;
    private final Work work;
    private final List<Long> widths;

    AcrossScales(List<Cut> cuts, List<Stock> stock, CuttingTerms terms, Work work) {
        this.cuts = cuts;
        this.stock = stock;
        this.terms = terms;
        this.work = work;
        TreeSet<Long> all = new TreeSet<>();
        cuts.forEach(cut -> ways(cut).forEach(way -> all.add(way.across())));
        widths = List.copyOf(all);
    }

    private List<Lying> ways(Cut cut) {
        return Lying.of(cut, stock, terms);
    }

    /** Every panel counts as its width with a gap, in units as fine as 64 bits allow. */
    AcrossScale byWidth() {
        long unit = 0;
        for (long width : widths) {
            unit = gcd(width + terms.gapSteps(), unit);
        }
        long longest = stock.stream().mapToLong(Stock::lengthSteps).max().orElse(1) + terms.gapSteps();
        long widest = stock.stream().mapToLong(Stock::widthSteps).max().orElse(1) + terms.gapSteps();
        long pieces = cuts.stream().mapToLong(Cut::quantity).sum();
        long most = Math.max(1, MAX_SUM / longest / (pieces + 1));
        long q = Math.max(unit, widest / most + 1);
        return new AcrossScale(
                widths,
                widths.stream().map(w -> (w + terms.gapSteps()) / q).toList(),
                stock.stream().map(s -> (s.widthSteps() + terms.gapSteps()) / q).toList());
    }

    private static long gcd(long a, long b) {
        return b == 0 ? a : gcd(b, a % b);
    }

    /** Panels that nothing can lie beside on the widest roll count as one, others as nothing. */
    AcrossScale alone() {
        long widest = widestRoll();
        long narrowest = widest;
        long next = widest;
        Cut owner = null;
        for (Cut cut : cuts) {
            long across = ways(cut).stream().mapToLong(Lying::across).min().orElse(widest);
            if (owner == null || across < narrowest) {
                next = owner == null ? widest : narrowest;
                narrowest = across;
                owner = cut;
            } else {
                next = Math.min(next, across);
            }
        }
        long from = widest / 2 + 1;
        for (Cut cut : cuts) {
            boolean isOneOfAKind = cut == owner && cut.quantity() == 1 && ways(cut).size() == 1;
            for (Lying way : ways(cut)) {
                if (way.across() + terms.gapSteps() + (isOneOfAKind ? next : narrowest) > widest) {
                    from = Math.min(from, way.across());
                }
            }
        }
        return new AcrossScale(List.of(from), List.of(1L), Collections.nCopies(stock.size(), 1L));
    }

    private long widestRoll() {
        return stock.stream().filter(s -> s.available() != 0).mapToLong(Stock::widthSteps).max().orElse(1);
    }

    /** Prices of widths from the relaxed problem of panels cut into thin strips across the widest roll. */
    List<AcrossScale> byPrice() {
        TreeMap<Long, long[]> lengths = new TreeMap<>(Comparator.reverseOrder());
        double total = 0;
        for (Cut cut : cuts) {
            Lying way = ways(cut).stream().min(Comparator.comparingLong(Lying::across)).orElseThrow();
            long[] sum = lengths.computeIfAbsent(way.across(), w -> new long[2]);
            sum[0] += (way.along() + terms.gapSteps()) * cut.quantity();
            sum[1] += cut.quantity();
            total += (double) (way.along() + terms.gapSteps()) * cut.quantity();
        }
        double unit = Math.max(1, total / LENGTH_UNITS);
        long[] across = lengths.keySet().stream().mapToLong(w -> w + terms.gapSteps()).toArray();
        long factor = 0;
        for (long a : across) {
            factor = gcd(a, factor);
        }
        long f = factor;
        long[] size = Arrays.stream(across).map(a -> a / f).toArray();
        int[] demand = lengths.values().stream().mapToInt(sum -> (int) Math.max(1, Math.round(sum[0] / unit))).toArray();
        int[] times = lengths.values().stream().mapToInt(sum -> (int) sum[1]).toArray();
        Model model = new Model(
                size, new long[size.length], demand, new long[] {(widestRoll() + terms.gapSteps()) / f}, new long[1], new long[] {1},
                new int[] {0}, new int[] {Arrays.stream(demand).sum()});
        Work part = work.part(LP_WORK);
        PatternLp lp = new PatternLp(model, times, new PatternPool(), part);
        boolean solved = lp.solve() == PatternLp.End.SOLVED;
        work.take(part);
        if (!solved) {
            return List.of();
        }
        int parts = 1;
        while (parts <= MAX_PARTS && !lp.isWholeIn(parts)) {
            parts++;
        }
        long[] price = lp.pricesIn(parts > MAX_PARTS ? FINE_PARTS : parts);
        List<Long> counts = new ArrayList<>();
        long[] priced = lengths.keySet().stream().mapToLong(w -> w).toArray();
        for (long width : widths) {
            long best = 0;
            for (int i = 0; i < priced.length; i++) {
                best = priced[i] <= width ? Math.max(best, price[i]) : best;
            }
            counts.add(best);
        }
        return List.of(measured(counts));
    }

    /** The scale with the most that fits side by side on each row of the stock. */
    private AcrossScale measured(List<Long> counts) {
        // Panels that are alike are one, or the search would go through all their orders.
        Map<List<Long>, Integer> lying = new TreeMap<>(Comparator.<List<Long>>comparingLong(l -> -l.get(0)).thenComparing(l -> l.get(1)));
        for (Cut cut : cuts) {
            for (Lying way : ways(cut)) {
                lying.merge(List.of(way.across() + terms.gapSteps(), counts.get(widths.indexOf(way.across()))), cut.quantity(), Integer::sum);
            }
        }
        long[] rooms = stock.stream().mapToLong(s -> s.widthSteps() + terms.gapSteps()).toArray();
        Model model = new Model(
                lying.keySet().stream().mapToLong(l -> l.get(0)).toArray(), new long[lying.size()],
                lying.values().stream().mapToInt(n -> n).toArray(), rooms, new long[rooms.length], new long[rooms.length],
                new int[rooms.length], new int[] {1});
        long[] held = Prices.of(lying.keySet().stream().mapToLong(l -> l.get(1)).toArray(), model, new Knapsack(model, work)).held();
        return new AcrossScale(widths, counts, Arrays.stream(held).boxed().toList());
    }
}
