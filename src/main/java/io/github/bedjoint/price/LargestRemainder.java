package io.github.bedjoint.price;

import io.github.bedjoint.units.RefusedException;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.joda.money.Money;

/**
 * Splits an amount of money in parts that add up to it exactly, by largest remainder (the method of Hamilton): each part gets its whole
 * share of the smallest coin, and the coins left go one each to the largest remainders; of equal remainders the first wins.
 */
public final class LargestRemainder {
    private LargestRemainder() {}

    /**
     * Splits an amount.
     *
     * @param total   the amount, not negative
     * @param weights one weight for each part, not negative, not all zero
     * @return one amount for each weight, in their order, which add up to the total
     * @throws RefusedException if the total or a weight is negative, or no weight is positive
     */
    public static List<Money> split(Money total, List<BigDecimal> weights) {
        BigDecimal sum = weights.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
        if (weights.stream().anyMatch(weight -> weight.signum() < 0) || sum.signum() <= 0) {
            throw new RefusedException("weights", weights.toString(), "must not be negative and not all zero", "Maybe one part is enough.");
        }
        if (total.isNegative()) {
            throw new RefusedException("total", total.toString(), "must not be negative", "Maybe split its positive counterpart.");
        }
        BigDecimal coins = total.getAmount().movePointRight(total.getScale());
        List<BigInteger> parts = new ArrayList<>();
        List<BigDecimal> remainders = new ArrayList<>();
        BigInteger left = coins.toBigIntegerExact();
        for (BigDecimal weight : weights) {
            // Quotient and remainder of coins x weight by the sum are exact, so ties are ties.
            BigDecimal[] division = coins.multiply(weight).divideAndRemainder(sum);
            parts.add(division[0].toBigIntegerExact());
            remainders.add(division[1]);
            left = left.subtract(division[0].toBigIntegerExact());
        }
        IntStream.range(0, weights.size())
                .boxed()
                .sorted(Comparator.comparing(remainders::get, Comparator.reverseOrder()))
                .limit(left.intValueExact())
                .forEach(index -> parts.set(index, parts.get(index).add(BigInteger.ONE)));
        return parts.stream()
                .map(part -> Money.of(total.getCurrencyUnit(), new BigDecimal(part, total.getScale())))
                .toList();
    }
}
