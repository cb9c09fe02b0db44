package io.github.bedjoint.skyline;

import io.github.bedjoint.rolls.Cut;
import io.github.bedjoint.rolls.CuttingTerms;
import io.github.bedjoint.rolls.PlacedCut;
import io.github.bedjoint.rolls.Stock;
import java.util.ArrayList;
import java.util.List;

/**
 * Single panels to place side by side, in whole units: sizes with the gap added on two sides, on rolls with the gap added once, so that
 * panels keep the gap if these sizes do not overlap.
 */
public final class Pieces {

    private final List<Cut> cuts;
    private final long gap;
    private final boolean[] startsTurned;
    private final long acrossUnit;
    private final long alongUnit;

    /** Rows of the job. */
    final int[] cut;

    final int[] across;
    final int[] along;

    /** Whether a piece may also lie the other way. */
    final boolean[] turns;

    /** Takes rows of the job as often as they are listed. */
    public Pieces(List<Cut> cuts, List<Integer> rows, List<Stock> stock, CuttingTerms terms) {
        this.cuts = cuts;
        gap = terms.gapSteps();
        int n = rows.size();
        cut = rows.stream().mapToInt(c -> c).toArray();
        across = new int[n];
        along = new int[n];
        turns = new boolean[n];
        startsTurned = new boolean[n];
        List<List<Lying>> ways = new ArrayList<>();
        cuts.forEach(row -> ways.add(Lying.of(row, stock, terms)));
        long acrossFactor = 0;
        long alongFactor = 0;
        for (int c : cut) {
            for (Lying way : ways.get(c)) {
                acrossFactor = gcd(way.across() + gap, acrossFactor);
                alongFactor = gcd(way.along() + gap, alongFactor);
            }
        }
        boolean mixed = rows.stream().anyMatch(c -> ways.get(c).size() > 1);
        acrossUnit = mixed ? gcd(acrossFactor, alongFactor) : acrossFactor;
        alongUnit = mixed ? acrossUnit : alongFactor;
        for (int i = 0; i < n; i++) {
            Lying first = ways.get(cut[i]).get(0);
            across[i] = (int) ((first.across() + gap) / acrossUnit);
            along[i] = (int) ((first.along() + gap) / alongUnit);
            turns[i] = ways.get(cut[i]).size() > 1;
            startsTurned[i] = first.turned();
        }
    }

    private static long gcd(long a, long b) {
        return b == 0 ? a : gcd(b, a % b);
    }

    public int count() {
        return cut.length;
    }

    long area() {
        long sum = 0;
        for (int i = 0; i < cut.length; i++) {
            sum += (long) across[i] * along[i];
        }
        return sum;
    }

    /** A width of roll in units. */
    public int acrossUnits(long widthSteps) {
        return (int) ((widthSteps + gap) / acrossUnit);
    }

    /** A usable length of roll in units. */
    public int alongUnits(long lengthSteps) {
        return (int) Math.max(0, (lengthSteps + gap) / alongUnit);
    }

    public PlacedCut placed(int piece, int x, int y, boolean turned) {
        return PlacedCut.of(cuts.get(cut[piece]), y * alongUnit, x * acrossUnit, turned != startsTurned[piece]);
    }
}
