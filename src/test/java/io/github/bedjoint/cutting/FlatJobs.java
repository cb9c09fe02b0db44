package io.github.bedjoint.cutting;

import io.github.bedjoint.rolls.Cut;
import io.github.bedjoint.rolls.CutKind;
import io.github.bedjoint.rolls.CuttingTerms;
import io.github.bedjoint.rolls.LotRule;
import io.github.bedjoint.rolls.OpenedRoll;
import io.github.bedjoint.rolls.PlacedCut;
import io.github.bedjoint.rolls.RemnantRule;
import io.github.bedjoint.rolls.Stock;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/** Small random jobs of panels side by side, some of which may be turned, and the least cost by trying every place. */
public final class FlatJobs {

    private FlatJobs() {}

    public static SmallJobs.Job any(long seed, CutKind kind) {
        Random random = new Random(seed);
        int pieces = 1 + random.nextInt(4);
        int widest = 2 + random.nextInt(5);
        int longest = 2 + random.nextInt(6);
        boolean turning = random.nextBoolean();
        List<Cut> cuts = new ArrayList<>();
        while (pieces > 0) {
            int quantity = 1 + random.nextInt(Math.min(pieces, 3));
            cuts.add(new Cut("P" + cuts.size(), 1 + random.nextInt(widest), 1 + random.nextInt(longest), quantity, "W" + random.nextInt(3),
                    turning && random.nextBoolean()));
            pieces -= quantity;
        }
        List<Stock> stock = new ArrayList<>();
        int rows = 1 + random.nextInt(2);
        for (int s = 0; s < rows; s++) {
            int available = random.nextInt(3) == 0 ? Stock.UNLIMITED : random.nextInt(4);
            stock.add(new Stock("S" + s, widest - random.nextInt(2), longest / 2 + 1 + random.nextInt(longest), random.nextInt(30), available, "L" + s));
        }
        RemnantRule rule = random.nextBoolean() ? RemnantRule.none() : new RemnantRule(1 + random.nextInt(4), 1 + random.nextInt(3), random.nextInt(101));
        LotRule lots = random.nextInt(4) == 0 ? LotRule.ONE_LOT_PER_WALL : LotRule.ANY;
        return new SmallJobs.Job(
                cuts, stock, new CuttingTerms(random.nextInt(2), random.nextInt(2), random.nextInt(2), rule, lots, kind));
    }

    /** The least cost over all places in whole units and all ways to lie; {@link Exhaustive#NONE} if there is no plan. */
    public static long best(SmallJobs.Job job) {
        Search search = new Search(job);
        search.place(0);
        return search.best;
    }

    private static final class Search {
        private final SmallJobs.Job job;
        private final List<Cut> pieces = new ArrayList<>();
        private final List<Stock> opened = new ArrayList<>();
        private final List<List<PlacedCut>> placed = new ArrayList<>();
        private final int[][] at;
        private final boolean[] acrossSums;
        private final boolean[] alongSums;
        private long best = Exhaustive.NONE;

        Search(SmallJobs.Job job) {
            this.job = job;
            job.cuts().forEach(cut -> pieces.addAll(Collections.nCopies(cut.quantity(), cut)));
            at = new int[pieces.size()][];
            acrossSums = sums(true, 20);
            alongSums = sums(false, 40);
        }

        private void place(int piece) {
            // No remnant is worth more than its share of the whole roll.
            long share = 100 - job.terms().remnants().percent();
            if (best != Exhaustive.NONE && opened.stream().mapToLong(Stock::cost).sum() * share >= best * 100) {
                return;
            }
            if (piece == pieces.size()) {
                long cost = 0;
                for (int r = 0; r < opened.size(); r++) {
                    cost += opened.get(r).cost() - OpenedRoll.of(opened.get(r), placed.get(r), job.terms()).credit();
                }
                best = Math.min(best, cost);
                return;
            }
            for (int r = 0; r < opened.size(); r++) {
                put(piece, r);
            }
            for (Stock row : job.stock()) {
                long taken = opened.stream().filter(r -> r == row).count();
                if (row.available() == Stock.UNLIMITED || taken < row.available()) {
                    opened.add(row);
                    placed.add(new ArrayList<>());
                    put(piece, opened.size() - 1);
                    opened.remove(opened.size() - 1);
                    placed.remove(placed.size() - 1);
                }
            }
        }

        /** Whether a place is a sum of sizes of other pieces with their gaps: every packing can be pushed left and back so far. */
        private boolean[] sums(boolean across, int most) {
            boolean[] reached = new boolean[most + 1];
            reached[0] = true;
            for (Cut cut : pieces) {
                for (int to = most; to >= 0; to--) {
                    for (boolean turned : ways(cut)) {
                        int before = (int) (to - job.terms().gapSteps() - (turned == across ? cut.lengthSteps() : cut.widthSteps()));
                        reached[to] |= before >= 0 && reached[before];
                    }
                }
            }
            return reached;
        }

        private void put(int piece, int r) {
            Cut cut = pieces.get(piece);
            if (job.terms().lots() == LotRule.ONE_LOT_PER_WALL && !agrees(cut, opened.get(r).lot())) {
                return;
            }
            for (boolean turned : ways(cut)) {
                long across = turned ? cut.lengthSteps() : cut.widthSteps();
                long along = turned ? cut.widthSteps() : cut.lengthSteps();
                // With one piece across, the left edge is as good as any other place.
                long lastX = job.terms().cuts() == CutKind.CROSS ? Math.min(0, opened.get(r).widthSteps() - across) : opened.get(r).widthSteps() - across;
                long lastY = job.terms().usableSteps(opened.get(r)) - along;
                for (int x = 0; x <= lastX; x++) {
                    for (int y = 0; y <= lastY; y++) {
                        PlacedCut here = PlacedCut.of(cut, y, x, turned);
                        if (acrossSums[x] && alongSums[y] && !comesBeforeTwin(piece, r, x, y)
                                && placed.get(r).stream().allMatch(other -> isApart(here, other))) {
                            at[piece] = new int[] {r, x, y};
                            placed.get(r).add(here);
                            place(piece + 1);
                            placed.get(r).remove(placed.get(r).size() - 1);
                        }
                    }
                }
            }
        }

        private static boolean[] ways(Cut cut) {
            return cut.rotate() ? new boolean[] {false, true} : new boolean[] {false};
        }

        /** Of like pieces only one order of their places is tried. */
        private boolean comesBeforeTwin(int piece, int r, int x, int y) {
            return piece > 0 && pieces.get(piece - 1) == pieces.get(piece) && Arrays.compare(at[piece - 1], new int[] {r, x, y}) > 0;
        }

        private boolean agrees(Cut cut, String lot) {
            for (int r = 0; r < opened.size(); r++) {
                for (PlacedCut other : placed.get(r)) {
                    Cut of = pieces.stream().filter(p -> p.id().equals(other.cutId())).findFirst().orElseThrow();
                    if (of.group().equals(cut.group()) && !opened.get(r).lot().equals(lot)) {
                        return false;
                    }
                }
            }
            return true;
        }

        private boolean isApart(PlacedCut a, PlacedCut b) {
            long gap = job.terms().gapSteps();
            boolean along = a.alongEndSteps() + gap <= b.alongSteps() || b.alongEndSteps() + gap <= a.alongSteps();
            boolean across = a.acrossEndSteps() + gap <= b.acrossSteps() || b.acrossEndSteps() + gap <= a.acrossSteps();
            return along || across && job.terms().cuts() != CutKind.CROSS;
        }
    }
}
