package io.github.bedjoint.cutting;

import io.github.bedjoint.rolls.Cut;
import io.github.bedjoint.rolls.CuttingTerms;
import io.github.bedjoint.rolls.LotRule;
import io.github.bedjoint.rolls.RemnantRule;
import io.github.bedjoint.rolls.Stock;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Random jobs of the size a shop has, in true steps: inches and millimetres mixed, so lengths have no common factor. */
final class StepJobs {

    private static final long MM = 80;
    private static final long SIXTEENTH = 127;

    private StepJobs() {}

    static SmallJobs.Job of(long seed, int most) {
        Random random = new Random(seed);
        int pieces = 4 + random.nextInt(most - 3);
        int walls = 1 + pieces / 8;
        List<Cut> cuts = new ArrayList<>();
        while (pieces > 0) {
            int quantity = 1 + random.nextInt(Math.min(pieces, 6));
            long length = random.nextBoolean()
                    ? SIXTEENTH * (16 * 40 + random.nextInt(16 * 140))
                    : MM * (1000 + 5 * random.nextInt(700));
            cuts.add(new Cut("P" + cuts.size(), 100_000, length, quantity, "W" + random.nextInt(walls)));
            pieces -= quantity;
        }
        List<Stock> stock = new ArrayList<>();
        long price = 20_000 + 100 * random.nextInt(120);
        stock.add(new Stock("ten-yard", 109_728, 731_520, price, Stock.UNLIMITED, "new"));
        stock.add(new Stock(
                "fifty-yard", 109_728, 3_657_600, price * 4 + 100 * random.nextInt(150), Stock.UNLIMITED, "new"));
        int remnants = random.nextInt(6);
        for (int k = 0; k < remnants; k++) {
            long length = SIXTEENTH * (16 * 50 + random.nextInt(16 * 600));
            long cost = random.nextInt(3) == 0 ? 0 : 100 * (10 + random.nextInt(150));
            stock.add(new Stock("rest" + k, 109_728, length, cost, 1, "old" + k % 2));
        }
        CuttingTerms terms = new CuttingTerms(
                MM * random.nextInt(300), MM * random.nextInt(150), MM * random.nextInt(20), RemnantRule.none(), LotRule.ANY);
        return new SmallJobs.Job(cuts, stock, terms);
    }
}
