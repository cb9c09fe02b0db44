package io.github.bedjoint.cutting;

import io.github.bedjoint.bounds.ModelMaker;
import io.github.bedjoint.rolls.AcrossScale;
import io.github.bedjoint.rolls.Certificate;
import io.github.bedjoint.rolls.Cut;
import io.github.bedjoint.rolls.CuttingTerms;
import io.github.bedjoint.rolls.PriceList;
import io.github.bedjoint.rolls.Shortage;
import io.github.bedjoint.rolls.Stock;
import io.github.bedjoint.skyline.Lying;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Looks for the plain reasons why a job has no plan: before any search, and without one. */
final class Shortages {

    private Shortages() {}

    static List<Shortage> of(List<Cut> cuts, List<Stock> stock, CuttingTerms terms) {
        List<Shortage> found = new ArrayList<>();
        List<Stock> there = stock.stream().filter(s -> s.available() != 0).toList();
        long widest = there.stream().mapToLong(Stock::widthSteps).max().orElse(0);
        for (Cut cut : cuts) {
            if (Lying.of(cut, there, terms).isEmpty()) {
                found.add(misfit(cut, there, widest, terms));
            }
        }
        if (found.isEmpty()
                && there.stream().noneMatch(s -> s.available() == Stock.UNLIMITED)
                && !SideBySide.concerns(cuts, stock, terms)) {
            BigInteger needed = needed(cuts, terms);
            BigInteger available = available(there, terms);
            if (needed.compareTo(available) > 0) {
                found.add(new Shortage(
                        Shortage.Reason.STOCK_TOO_SHORT, "", needed.longValueExact(), available.longValueExact()));
            }
        }
        return found;
    }

    /** What is wrong with a cut that fits no roll, the way round that comes nearest to fitting. */
    private static Shortage misfit(Cut cut, List<Stock> there, long widest, CuttingTerms terms) {
        boolean turned = cut.rotate()
                && (cut.widthSteps() > widest || cut.widthSteps() < cut.lengthSteps() && cut.lengthSteps() <= widest);
        long across = turned ? cut.lengthSteps() : cut.widthSteps();
        long along = turned ? cut.widthSteps() : cut.lengthSteps();
        long longest = there.stream()
                .filter(s -> s.widthSteps() >= across)
                .mapToLong(terms::usableSteps)
                .max()
                .orElse(0);
        return across > widest
                ? new Shortage(Shortage.Reason.CUT_TOO_WIDE, cut.id(), Math.min(across, cut.widthSteps()), widest)
                : new Shortage(Shortage.Reason.CUT_TOO_LONG, cut.id(), along, Math.max(0, longest));
    }

    /** Whole-number prices that show the first shortage: no roll holds the panel, or all rolls hold less than all panels. */
    static Certificate certificate(List<Cut> cuts, List<Stock> stock, CuttingTerms terms, Shortage shortage) {
        boolean all = shortage.reason() == Shortage.Reason.STOCK_TOO_SHORT;
        List<Long> prices = new ArrayList<>();
        for (Cut cut : cuts) {
            long one = cut.id().equals(shortage.cutId()) ? 1 : 0;
            prices.add(all ? cut.lengthSteps() + terms.gapSteps() : one);
        }
        List<List<Long>> held = new ArrayList<>();
        for (Stock roll : stock) {
            List<Long> row = new ArrayList<>();
            for (ModelMaker.Level level : ModelMaker.levels(roll, terms)) {
                long room = terms.usableSteps(roll) - level.leastRemnant() + terms.gapSteps();
                row.add(all ? Math.max(0, room) : 0);
            }
            held.add(row);
        }
        // Where one panel fits no roll at all, none needs to count.
        AcrossScale across = all
                ? AcrossScale.oneAcross(stock.size())
                : new AcrossScale(List.of(), List.of(), Collections.nCopies(stock.size(), 0L));
        return new Certificate(List.of(new PriceList(prices, held, across)), List.of(), List.of());
    }

    /** The reason that only a search can find. */
    static Shortage arrangement(List<Cut> cuts, List<Stock> stock, CuttingTerms terms, boolean proven) {
        boolean unlimited = stock.stream().anyMatch(s -> s.available() == Stock.UNLIMITED);
        boolean beside = SideBySide.concerns(cuts, stock, terms);
        BigInteger needed = beside ? neededAtWidest(cuts, stock, terms) : needed(cuts, terms);
        BigInteger available = unlimited ? BigInteger.valueOf(Long.MAX_VALUE) : available(stock, terms);
        return new Shortage(
                proven ? Shortage.Reason.NO_ARRANGEMENT : Shortage.Reason.UNDECIDED,
                "",
                needed.longValueExact(),
                available.longValueExact());
    }

    /** The area of panels and gaps as a length of the widest roll. */
    private static BigInteger neededAtWidest(List<Cut> cuts, List<Stock> stock, CuttingTerms terms) {
        long gap = terms.gapSteps();
        long widest = stock.stream().mapToLong(Stock::widthSteps).max().orElse(1);
        BigInteger area = BigInteger.ZERO;
        for (Cut cut : cuts) {
            area = area.add(BigInteger.valueOf(cut.widthSteps() + gap)
                    .multiply(BigInteger.valueOf(cut.lengthSteps() + gap))
                    .multiply(BigInteger.valueOf(cut.quantity())));
        }
        return area.divide(BigInteger.valueOf(widest + gap));
    }

    /** Each piece takes its gap along; each roll gives one gap, since there is none behind its last piece. */
    private static BigInteger needed(List<Cut> cuts, CuttingTerms terms) {
        BigInteger sum = BigInteger.ZERO;
        for (Cut cut : cuts) {
            sum = sum.add(BigInteger.valueOf(cut.lengthSteps() + terms.gapSteps())
                    .multiply(BigInteger.valueOf(cut.quantity())));
        }
        return sum;
    }

    private static BigInteger available(List<Stock> stock, CuttingTerms terms) {
        BigInteger sum = BigInteger.ZERO;
        for (Stock roll : stock) {
            sum = sum.add(BigInteger.valueOf(Math.max(0, terms.usableSteps(roll) + terms.gapSteps()))
                    .multiply(BigInteger.valueOf(roll.available())));
        }
        return sum;
    }
}
