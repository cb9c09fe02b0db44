package io.github.bedjoint.patterns;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.bedjoint.bounds.ModelMaker;
import io.github.bedjoint.cutting.SmallJobs;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** The parts of the planner against plain enumeration on small models. */
class KernelProperties {

    private static final long PLENTY = 50_000_000;

    private static Model model(Random random) {
        SmallJobs.Job job = SmallJobs.withRemnants(random.nextLong());
        return new ModelMaker(job.cuts(), job.stock(), job.terms()).model;
    }

    private static long[] prices(Model model, Random random) {
        return random.longs(model.items(), 0, 12).toArray();
    }

    /** The most that panels within these counts are worth on one roll. */
    private static long most(Model model, int type, long[] price, int item, long room) {
        if (item == model.items()) {
            return 0;
        }
        long best = 0;
        for (int c = 0; c <= model.demand[item] && c * model.size[item] <= room; c++) {
            if (c == 0 || model.fits(item, type)) {
                best = Math.max(best, c * price[item] + most(model, type, price, item + 1, room - c * model.size[item]));
            }
        }
        return best;
    }

    @Property
    void fill_anyPrices_isTheMostARollHolds(@ForAll long seed) {
        Random random = new Random(seed);
        Model model = model(random);
        long[] price = prices(model, random);
        Knapsack knapsack = new Knapsack(model, new Work(PLENTY));
        for (int r = 0; r < model.types(); r++) {
            long most = most(model, r, price, 0, model.cap[r]);
            assertThat(knapsack.fill(r, price, model.demand, 0, Knapsack.Effort.BEST)).isEqualTo(most);
            assertThat(knapsack.upper).isEqualTo(most);
            assertThat(new Prices(price, new long[0]).priceOf(knapsack.pattern)).isEqualTo(most);
            assertThat(model.load(knapsack.pattern)).isLessThanOrEqualTo(model.cap[r]);
            // Above the most there is nothing.
            assertThat(knapsack.fill(r, price, model.demand, most, Knapsack.Effort.BETTER)).isEqualTo(most);
            assertThat(knapsack.pattern).containsOnly(0);
        }
    }

    @Property
    void fill_longRollOfManyPanels_agreesWithATable(@ForAll long seed) {
        Random random = new Random(seed);
        int items = 12;
        long[] size = random.longs(items, 20, 90).sorted().toArray();
        for (int i = 0; i < items / 2; i++) {
            long swap = size[i];
            size[i] = size[items - 1 - i];
            size[items - 1 - i] = swap;
        }
        int[] demand = random.ints(items, 1, 4).toArray();
        long[] one = {1};
        Model model = new Model(
                size, new long[items], demand, new long[] {400}, one, one, new int[1], new int[] {99});
        long[] price = random.longs(items, 0, 60).toArray();
        long[] table = new long[401];
        for (int i = 0; i < items; i++) {
            for (int k = 0; k < demand[i]; k++) {
                for (int r = 400; r >= size[i]; r--) {
                    table[r] = Math.max(table[r], table[r - (int) size[i]] + price[i]);
                }
            }
        }
        Knapsack knapsack = new Knapsack(model, new Work(PLENTY));
        assertThat(knapsack.fill(0, price, demand, 0, Knapsack.Effort.BEST)).isEqualTo(table[400]);
    }

    @Property
    void next_anyRows_isTheCheapestAllowed(@ForAll long seed) {
        Random random = new Random(seed);
        SmallJobs.Job job = SmallJobs.withTerms(random.nextLong());
        Model model = new ModelMaker(job.cuts(), job.stock(), job.terms()).model;
        RollCounts counts = new RollCounts(model);
        List<RollCounts.Row> rows = new ArrayList<>();
        for (int q = 0; q < 3; q++) {
            rows.add(new RollCounts.Row(random.longs(model.types(), 0, 9).toArray(), random.nextInt(25)));
            counts.add(rows.get(q));
        }
        long cheapest = cheapest(model, rows, 0, new int[model.types()], model.supply.clone());
        int[] next = counts.next(Long.MAX_VALUE, new Work(PLENTY));
        if (cheapest == Long.MAX_VALUE) {
            assertThat(next).isEmpty();
        } else {
            assertThat(counts.cost(next)).isEqualTo(cheapest);
            assertThat(counts.forbids(next)).isFalse();
            assertThat(counts.next(cheapest, new Work(PLENTY))).isEmpty();
            counts.exclude(next);
            int[] other = counts.next(Long.MAX_VALUE, new Work(PLENTY));
            assertThat(other.length == 0 || counts.cost(other) >= cheapest).isTrue();
            assertThat(other).isNotEqualTo(next);
        }
    }

    private static long cheapest(Model model, List<RollCounts.Row> rows, int type, int[] count, int[] left) {
        if (type == count.length) {
            long cost = 0;
            for (int r = 0; r < count.length; r++) {
                cost += count[r] * model.cost[r];
            }
            for (RollCounts.Row row : rows) {
                long held = 0;
                for (int r = 0; r < count.length; r++) {
                    held += row.held()[r] * count[r];
                }
                cost = held < row.needed() ? Long.MAX_VALUE : cost;
            }
            return cost;
        }
        long best = Long.MAX_VALUE;
        int most = left[model.kind[type]];
        for (int c = 0; c <= most; c++) {
            count[type] = c;
            left[model.kind[type]] -= c;
            best = Math.min(best, cheapest(model, rows, type + 1, count, left));
            left[model.kind[type]] += c;
        }
        count[type] = 0;
        return best;
    }

    @Property
    void run_exactlyTheseRolls_agreesWithTryingEverything(@ForAll long seed) {
        Random random = new Random(seed);
        SmallJobs.Job job = SmallJobs.any(random.nextLong());
        Model model = new ModelMaker(job.cuts(), job.stock(), job.terms()).model;
        int[] count = new int[model.types()];
        for (int r = 0; r < count.length; r++) {
            count[r] = random.nextInt(3);
        }
        Model given = model.exactly(count);
        Completion plain =
                new Completion(given, new ArrayList<>(), new PatternPool(), false, new Work(PLENTY));
        Completion deep = new Completion(given, new ArrayList<>(), new PatternPool(), true, new Work(PLENTY));
        Completion.End end = plain.run();
        assertThat(deep.run()).isEqualTo(end);
        int[] types = IntStream.range(0, count.length).flatMap(r -> IntStream.generate(() -> r).limit(count[r])).toArray();
        boolean possible = fits(model, model.demand.clone(), types, IntStream.of(types).mapToLong(r -> model.cap[r]).toArray());
        assertThat(end).isEqualTo(possible ? Completion.End.FITS : Completion.End.IMPOSSIBLE);
        if (end == Completion.End.FITS) {
            int[] open = model.demand.clone();
            for (Pattern pattern : plain.patterns()) {
                assertThat(model.load(pattern.counts())).isLessThanOrEqualTo(model.cap[pattern.type()]);
                for (int i = 0; i < open.length; i++) {
                    open[i] -= pattern.counts()[i];
                }
            }
            assertThat(open).containsOnly(0);
        }
    }

    /** Whether the panels still open go on these rolls, each tried on any with room. */
    private static boolean fits(Model model, int[] open, int[] types, long[] room) {
        int item = 0;
        while (item < open.length && open[item] == 0) {
            item++;
        }
        boolean fits = item == open.length;
        for (int k = 0; k < types.length && !fits; k++) {
            if (model.fits(item, types[k]) && model.size[item] <= room[k]) {
                open[item]--;
                room[k] -= model.size[item];
                fits = fits(model, open, types, room);
                room[k] += model.size[item];
                open[item]++;
            }
        }
        return fits;
    }
}
