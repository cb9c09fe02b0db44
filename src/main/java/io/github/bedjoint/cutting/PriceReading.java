package io.github.bedjoint.cutting;

import io.github.bedjoint.bounds.CheapestRolls;
import io.github.bedjoint.bounds.ModelMaker;
import io.github.bedjoint.rolls.AcrossScale;
import io.github.bedjoint.rolls.Cut;
import io.github.bedjoint.rolls.CuttingTerms;
import io.github.bedjoint.rolls.PriceList;
import io.github.bedjoint.rolls.Stock;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Steps;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.LongFunction;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.apache.commons.lang3.StringUtils;

/**
 * A price list read in the plainest words that are true of its numbers: a count of panels where all that counts is priced alike, lengths or
 * areas where prices go by them, money where no roll that can always be bought holds more than it costs, else points.
 */
final class PriceReading {
    private static final int MOST_PRICES = 4;

    private final List<Cut> cuts;
    private final List<Stock> stock;
    private final CuttingTerms terms;
    private final PriceList list;
    private final RollWords words;
    private final BigInteger worth;
    private final long unit;
    private final String opening;
    private final LongFunction<String> print;

    PriceReading(List<Cut> cuts, List<Stock> stock, CuttingTerms terms, PriceList list, RollWords words) {
        this.cuts = cuts;
        this.stock = stock;
        this.terms = terms;
        this.list = list;
        this.words = words;
        worth = CheapestRolls.worth(cuts, list);
        int[] priced = IntStream.range(0, cuts.size()).filter(c -> list.prices().get(c) > 0).toArray();
        unit = Math.max(1, IntStream.of(priced).mapToLong(c -> list.prices().get(c)).reduce(0, PriceReading::gcd));
        long gap = terms.gapSteps();
        String gaps = gap > 0 ? ", each with a gap," : "";
        String all;
        if (IntStream.of(priced).allMatch(c -> list.prices().get(c) == unit)) {
            print = price -> Long.toString(price / unit);
            all = "Counting " + counted(priced) + " gives ";
        } else if (goBy(priced, cut -> BigInteger.valueOf(cut.lengthSteps() + gap))) {
            BigInteger one = BigInteger.valueOf(cuts.get(priced[0]).lengthSteps() + gap);
            print = price -> words.length(scaled(price, one, priced[0]).longValueExact());
            all = "By length, " + counted(priced) + gaps + " need ";
        } else if (goBy(priced, this::area)) {
            BigInteger one = area(cuts.get(priced[0]));
            print = price -> Measure.AREA.print(Steps.toM(1) * Steps.toM(1) * scaled(price, one, priced[0]).doubleValue(), words.style());
            all = "By area, " + counted(priced) + gaps + " need ";
        } else if (isMoney()) {
            print = words::money;
            all = "Priced at " + prices() + ", the panels are worth ";
        } else {
            print = price -> Long.toString(price / unit);
            all = "At points of " + prices() + ", the panels come to ";
        }
        opening = all + print.apply(worth.longValueExact()) + (list.across().isInLine() ? "" : sideBySide(all.startsWith("By area"))) + ". ";
    }

    /** What is counted, what it comes to in all, and what a roll of each kind holds of it at most. */
    String sentences() {
        return opening + held();
    }

    private static long gcd(long a, long b) {
        return b == 0 ? a : gcd(b, a % b);
    }

    private BigInteger area(Cut cut) {
        return BigInteger.valueOf(cut.widthSteps() + terms.gapSteps()).multiply(BigInteger.valueOf(cut.lengthSteps() + terms.gapSteps()));
    }

    private BigInteger scaled(long price, BigInteger one, int first) {
        return BigInteger.valueOf(price).multiply(one).divide(BigInteger.valueOf(list.prices().get(first)));
    }

    private boolean goBy(int[] priced, Function<Cut, BigInteger> size) {
        BigInteger first = BigInteger.valueOf(list.prices().get(priced[0]));
        BigInteger one = size.apply(cuts.get(priced[0]));
        return IntStream.of(priced).allMatch(
                c -> BigInteger.valueOf(list.prices().get(c)).multiply(one).equals(first.multiply(size.apply(cuts.get(c)))));
    }

    /** Whether the prices may be read as money: unlimited rolls hold at most what they cost, and one of them just that. */
    private boolean isMoney() {
        boolean met = false;
        for (int s = 0; s < stock.size(); s++) {
            List<ModelMaker.Level> levels = ModelMaker.levels(stock.get(s), terms);
            for (int k = 0; stock.get(s).available() == Stock.UNLIMITED && k < levels.size(); k++) {
                if (list.held().get(s).get(k) > levels.get(k).cost()) {
                    return false;
                }
                met |= list.held().get(s).get(k) == levels.get(k).cost();
            }
        }
        return met;
    }

    private String counted(int[] priced) {
        if (priced.length == cuts.size()) {
            return "all panels";
        }
        long shortest = IntStream.of(priced).mapToLong(c -> cuts.get(c).lengthSteps()).min().orElse(0);
        boolean longest = cuts.stream().filter(cut -> cut.lengthSteps() >= shortest).count() == priced.length;
        return longest && priced.length > 1
                ? "the panels of " + words.length(shortest) + " and more"
                : RollWords.some(IntStream.of(priced).mapToObj(c -> cuts.get(c).id()).toList()) + " alone";
    }

    /** The dearest prices with the panels that have them. */
    private String prices() {
        Map<Long, List<String>> byPrice = new TreeMap<>(Comparator.reverseOrder());
        for (int c = 0; c < cuts.size(); c++) {
            byPrice.computeIfAbsent(list.prices().get(c), p -> new ArrayList<>()).add(cuts.get(c).id());
        }
        List<String> texts = new ArrayList<>();
        int more = 0;
        for (Map.Entry<Long, List<String>> entry : byPrice.entrySet()) {
            if (texts.size() < MOST_PRICES) {
                texts.add(print(entry.getKey()) + " for " + RollWords.some(entry.getValue()));
            } else {
                more += entry.getValue().size();
            }
        }
        return String.join(", ", texts) + (more > 0 ? ", less for " + more + " more" : "");
    }

    private String print(long price) {
        return price == 0 ? "nothing" : print.apply(price);
    }

    /** What panels count that lie side by side. */
    private String sideBySide(boolean area) {
        AcrossScale scale = list.across();
        long most = scale.most().stream().mapToLong(m -> m).max().orElse(0);
        if (area) {
            return ", side by side or not";
        }
        if (scale.counts().equals(List.of(1L)) && most == 1) {
            long least = cuts.stream()
                    .flatMapToLong(cut -> cut.rotate() ? LongStream.of(cut.widthSteps(), cut.lengthSteps()) : LongStream.of(cut.widthSteps()))
                    .filter(across -> across >= scale.from().get(0))
                    .min()
                    .orElse(scale.from().get(0));
            return "; of panels that reach " + words.length(least) + " across or more, no two lie side by side";
        }
        List<String> counts = new ArrayList<>();
        int steps = 0;
        for (int k = scale.from().size() - 1; k >= 0; k--) {
            if (scale.counts().get(k) > 0 && (k == 0 || !scale.counts().get(k).equals(scale.counts().get(k - 1)))) {
                steps++;
                if (steps <= MOST_PRICES) {
                    counts.add(scale.counts().get(k) + " from " + words.length(scale.from().get(k)) + " on");
                }
            }
        }
        return "; across a roll a panel counts " + String.join(", ", counts) + (steps > MOST_PRICES ? ", less below" : "")
                + ", and panels side by side count at most " + most;
    }

    private String held() {
        List<String> texts = new ArrayList<>();
        boolean credits = false;
        for (int s = 0; s < stock.size(); s++) {
            Stock row = stock.get(s);
            if (row.available() != 0) {
                long most = list.held().get(s).get(0);
                credits |= list.held().get(s).size() > 1;
                String there = row.available() == Stock.UNLIMITED ? "" : " (" + row.available() + " at hand)";
                texts.add("one " + row.id() + there + " takes " + (most >= worth.longValueExact() ? "all" : most == 0 ? "nothing" : "at most " + print.apply(most)));
            }
        }
        return StringUtils.capitalize(RollWords.some(texts)) + (credits ? ", less where a remnant earns a credit." : ".");
    }
}
