package io.github.bedjoint.cutting;

import io.github.bedjoint.rolls.Cut;
import io.github.bedjoint.rolls.CutKind;
import io.github.bedjoint.rolls.CuttingTerms;
import io.github.bedjoint.rolls.LotRule;
import io.github.bedjoint.rolls.RemnantRule;
import io.github.bedjoint.rolls.RollPlan;
import io.github.bedjoint.rolls.Stock;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Small random jobs, the same for the same seed. */
public final class SmallJobs {

    /** A job with its terms. */
    public record Job(List<Cut> cuts, List<Stock> stock, CuttingTerms terms) {

        public RollPlan plan() {
            return RollPlanner.withDefaults().withTerms(terms).plan(cuts, stock);
        }

        public long best() {
            return Exhaustive.cost(cuts, stock, terms);
        }
    }

    private SmallJobs() {}

    public static Job any(long seed) {
        Random random = new Random(seed);
        int pieces = 1 + random.nextInt(6);
        boolean narrow = random.nextInt(4) == 0;
        int longest = 3 + random.nextInt(20);
        List<Cut> cuts = new ArrayList<>();
        while (pieces > 0) {
            int quantity = 1 + random.nextInt(Math.min(pieces, 3));
            long width = narrow ? 1 + random.nextInt(2) : 1;
            cuts.add(new Cut("P" + cuts.size(), width, 1 + random.nextInt(longest), quantity, "W" + random.nextInt(3)));
            pieces -= quantity;
        }
        List<Stock> stock = new ArrayList<>();
        int rows = 1 + random.nextInt(3);
        for (int s = 0; s < rows; s++) {
            int available = random.nextInt(3) == 0 ? Stock.UNLIMITED : random.nextInt(4);
            long width = narrow ? 1 + random.nextInt(2) : 1;
            long cost = random.nextInt(5) == 0 ? 0 : 1 + random.nextInt(30);
            stock.add(new Stock(
                    "S" + s, width, longest / 2 + random.nextInt(2 * longest), cost, available, "L" + random.nextInt(2)));
        }
        return new Job(cuts, stock, CuttingTerms.plain().withCuts(CutKind.CROSS));
    }

    public static Job withTerms(long seed) {
        Job job = any(seed);
        Random random = new Random(seed * 31 + 7);
        CuttingTerms terms =
                new CuttingTerms(random.nextInt(3), random.nextInt(3), random.nextInt(3), RemnantRule.none(), LotRule.ANY, CutKind.CROSS);
        return new Job(job.cuts(), job.stock(), terms);
    }

    public static Job withRemnants(long seed) {
        Job job = withTerms(seed);
        Random random = new Random(seed * 17 + 3);
        RemnantRule rule = new RemnantRule(1 + random.nextInt(8), 1 + random.nextInt(5), random.nextInt(101));
        CuttingTerms t = job.terms();
        return new Job(
                job.cuts(),
                job.stock(),
                new CuttingTerms(t.leadSteps(), t.tailSteps(), t.gapSteps(), rule, LotRule.ANY, CutKind.CROSS));
    }

    public static Job withLots(long seed) {
        Job job = withTerms(seed);
        CuttingTerms t = job.terms();
        return new Job(
                job.cuts(),
                job.stock(),
                new CuttingTerms(
                        t.leadSteps(), t.tailSteps(), t.gapSteps(), RemnantRule.none(), LotRule.ONE_LOT_PER_WALL, CutKind.CROSS));
    }
}
