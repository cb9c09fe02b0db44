package io.github.bedjoint.bounds;

import io.github.bedjoint.patterns.Knapsack;
import io.github.bedjoint.patterns.Model;
import io.github.bedjoint.patterns.Prices;
import io.github.bedjoint.patterns.RollCounts;
import io.github.bedjoint.patterns.RollSearch;
import io.github.bedjoint.patterns.Work;
import io.github.bedjoint.rolls.AcrossScale;
import io.github.bedjoint.rolls.Cut;
import io.github.bedjoint.rolls.CuttingTerms;
import io.github.bedjoint.rolls.PriceList;
import io.github.bedjoint.rolls.Stock;
import io.github.bedjoint.skyline.Lying;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.LongStream;

/**
 * A job of panels side by side as a job of panels in a line, each as long as what it counts across times its length. Whatever the
 * rolls cannot hold in a line they cannot hold side by side.
 */
final class Relaxation {

    /** Longest roll of the model in a line, so that its products stay within 64 bits. */
    private static final long MAX_ROOM = 1L << 29;

    private final ModelMaker maker;
    private final AcrossScale scale;
    private final int[] demand;
    private final long[] across;
    private final long[] size;
    private final long[] room;

    Relaxation(List<Cut> cuts, List<Stock> stock, CuttingTerms terms, ModelMaker maker, AcrossScale scale) {
        this.maker = maker;
        this.scale = scale;
        demand = cuts.stream().mapToInt(Cut::quantity).toArray();
        across = cuts.stream()
                .mapToLong(cut -> Lying.of(cut, stock, terms).stream().mapToLong(Lying::across).min().orElse(0))
                .toArray();
        size = cuts.stream()
                .mapToLong(cut -> Lying.of(cut, stock, terms).stream()
                        .mapToLong(way -> scale.count(way.across()) * (way.along() + terms.gapSteps()))
                        .min()
                        .orElse(0))
                .toArray();
        room = IntStream.range(0, maker.room.length)
                .mapToLong(r -> scale.most().get(maker.rowOf(r)) * maker.room[r])
                .toArray();
    }

    /** The sizes as prices: needs no search. */
    Shown bySize() {
        return new Shown(maker.priceList(LongStream.of(size).boxed().toList(), room, scale),
                new RollCounts.Row(room, priceOfAll(size)));
    }

    private long priceOfAll(long[] price) {
        long sum = 0;
        for (int c = 0; c < price.length; c++) {
            sum += price[c] * demand[c];
        }
        return sum;
    }

    /** The prices that the search for panels in a line ends with. Panels that are alike are one, or the search would go through all their orders. */
    List<Shown> bySearch(Work work) {
        long factor = LongStream.of(size).reduce(0, Relaxation::gcd);
        if (factor == 0) {
            return List.of();
        }
        long widest = LongStream.of(room).max().orElse(0);
        long unit = factor * (widest / factor / MAX_ROOM + 1);
        int[] itemOf = new int[size.length];
        List<Item> items = IntStream.range(0, size.length)
                .mapToObj(c -> new Item(size[c] / unit, across[c]))
                .filter(item -> item.size() > 0)
                .distinct()
                .sorted(Comparator.comparing(Item::size).thenComparing(Item::across).reversed())
                .toList();
        int[] wanted = new int[items.size()];
        for (int c = 0; c < size.length; c++) {
            itemOf[c] = items.indexOf(new Item(size[c] / unit, across[c]));
            if (itemOf[c] >= 0) {
                wanted[itemOf[c]] += demand[c];
            }
        }
        Model types = maker.model;
        Model line = new Model(
                items.stream().mapToLong(Item::size).toArray(),
                items.stream().mapToLong(Item::across).toArray(),
                wanted,
                LongStream.of(room).map(r -> r / unit).toArray(),
                types.typeWidth, types.cost, types.kind, types.supply);
        List<Shown> shown = new ArrayList<>();
        for (Prices prices : new RollSearch(line, work).run().prices()) {
            shown.add(shown(line, prices, itemOf, widest, work));
        }
        return shown;
    }

    private static long gcd(long a, long b) {
        return b == 0 ? a : gcd(b, a % b);
    }

    /** In rows of the job; coarser where prices times lengths would not fit in 64 bits. */
    private Shown shown(Model line, Prices found, int[] itemOf, long widest, Work work) {
        long dearest = 1;
        for (long price : found.price()) {
            dearest = Math.max(dearest, price);
        }
        long part = dearest / (Long.MAX_VALUE / 2 / Math.max(1, widest)) + 1;
        Prices prices = found;
        if (part > 1) {
            long[] coarse = found.price().clone();
            for (int i = 0; i < coarse.length; i++) {
                coarse[i] /= part;
            }
            prices = Prices.of(coarse, line, new Knapsack(line, work));
        }
        long[] price = prices.price();
        long[] ofCut = IntStream.of(itemOf).mapToLong(item -> item < 0 ? 0 : price[item]).toArray();
        return new Shown(
                maker.priceList(LongStream.of(ofCut).boxed().toList(), prices.held(), scale),
                new RollCounts.Row(prices.held(), priceOfAll(ofCut)));
    }

    private record Item(long size, long across) {}

    /** A price list with its row among the roll counts. */
    record Shown(PriceList list, RollCounts.Row row) {}
}
