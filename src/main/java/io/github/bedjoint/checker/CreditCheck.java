package io.github.bedjoint.checker;

import io.github.bedjoint.rolls.CuttingTerms;
import io.github.bedjoint.rolls.RemnantRule;
import io.github.bedjoint.rolls.Stock;
import java.math.BigInteger;
import java.util.TreeMap;

/** The checker's own reading of the remnant rule. */
final class CreditCheck {

    private CreditCheck() {}

    static long credit(Stock row, RemnantRule rule, long remnant) {
        long units = remnant < rule.leastSteps() ? 0 : remnant / rule.unitSteps();
        BigInteger top = BigInteger.valueOf(units)
                .multiply(BigInteger.valueOf(rule.unitSteps()))
                .multiply(BigInteger.valueOf(row.cost()))
                .multiply(BigInteger.valueOf(rule.percent()));
        return top.divide(BigInteger.valueOf(100L * row.lengthSteps())).longValueExact();
    }

    /** The remnants at which the credit rises, each with its credit; starts with no remnant and no credit. */
    static TreeMap<Long, Long> steps(Stock row, CuttingTerms terms) {
        RemnantRule rule = terms.remnants();
        TreeMap<Long, Long> steps = new TreeMap<>();
        steps.put(0L, 0L);
        long usable = row.lengthSteps() - terms.leadSteps() - terms.tailSteps();
        if (rule.percent() > 0) {
            for (long units = 0; units * rule.unitSteps() < usable; units++) {
                long remnant = Math.max(units * rule.unitSteps(), rule.leastSteps());
                long credit = credit(row, rule, remnant);
                if (remnant < usable && credit > steps.lastEntry().getValue()) {
                    steps.put(remnant, credit);
                }
            }
        }
        return steps;
    }
}
