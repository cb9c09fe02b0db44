package io.github.bedjoint.cutting;

import io.github.bedjoint.rolls.Cut;
import io.github.bedjoint.rolls.CuttingTerms;
import io.github.bedjoint.rolls.LotRule;
import io.github.bedjoint.rolls.Stock;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Tries every way to cut a small job: the reference for plans and bounds. */
public final class Exhaustive {

    public static final long NONE = Long.MAX_VALUE;

    private static final class Roll {
        final Stock stock;
        final List<Cut> pieces = new ArrayList<>();

        Roll(Stock stock) {
            this.stock = stock;
        }

        long used(CuttingTerms terms) {
            return pieces.stream().mapToLong(Cut::lengthSteps).sum() + (pieces.size() - 1) * terms.gapSteps();
        }
    }

    private final List<Cut> pieces = new ArrayList<>();
    private final List<Stock> stock;
    private final CuttingTerms terms;
    private final List<Roll> rolls = new ArrayList<>();
    private long best = NONE;

    private Exhaustive(List<Cut> cuts, List<Stock> stock, CuttingTerms terms) {
        for (Cut cut : cuts) {
            for (int k = 0; k < cut.quantity(); k++) {
                pieces.add(cut);
            }
        }
        this.stock = stock;
        this.terms = terms;
    }

    /** The least cost, or {@link #NONE}. */
    public static long cost(List<Cut> cuts, List<Stock> stock, CuttingTerms terms) {
        Exhaustive all = new Exhaustive(cuts, stock, terms);
        all.place(0);
        return all.best;
    }

    private void place(int piece) {
        if (piece == pieces.size()) {
            long cost = 0;
            for (Roll roll : rolls) {
                long left = terms.usableSteps(roll.stock) - roll.used(terms);
                cost += roll.stock.cost() - terms.remnants().credit(roll.stock, left);
            }
            best = Math.min(best, cost);
            return;
        }
        Cut cut = pieces.get(piece);
        for (int r = 0; r < rolls.size(); r++) {
            put(piece, cut, rolls.get(r));
        }
        for (Stock row : stock) {
            long taken = rolls.stream().filter(r -> r.stock == row).count();
            if (row.available() == Stock.UNLIMITED || taken < row.available()) {
                Roll roll = new Roll(row);
                rolls.add(roll);
                put(piece, cut, roll);
                rolls.remove(rolls.size() - 1);
            }
        }
    }

    private void put(int piece, Cut cut, Roll roll) {
        roll.pieces.add(cut);
        if (cut.widthSteps() <= roll.stock.widthSteps() && roll.used(terms) <= terms.usableSteps(roll.stock) && lotsAgree()) {
            place(piece + 1);
        }
        roll.pieces.remove(roll.pieces.size() - 1);
    }

    private boolean lotsAgree() {
        if (terms.lots() == LotRule.ANY) {
            return true;
        }
        Map<String, String> lotOfWall = new HashMap<>();
        for (Roll roll : rolls) {
            for (Cut cut : roll.pieces) {
                String lot = lotOfWall.putIfAbsent(cut.group(), roll.stock.lot());
                if (lot != null && !lot.equals(roll.stock.lot())) {
                    return false;
                }
            }
        }
        return true;
    }
}
