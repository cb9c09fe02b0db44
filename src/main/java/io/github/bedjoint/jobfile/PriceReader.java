package io.github.bedjoint.jobfile;

import io.github.bedjoint.price.Overhead;
import io.github.bedjoint.price.PriceRules;
import io.github.bedjoint.price.Profit;
import io.github.bedjoint.price.Rounding;
import io.github.bedjoint.units.Read;
import org.joda.money.CurrencyUnit;

/** Reads how cost becomes price. */
final class PriceReader {
    private PriceReader() {}

    static PriceRules rules(Fields f, CurrencyUnit currency) {
        PriceRules rules = PriceRules.in(currency);
        rules = f.with(rules, "overhead", n -> f.object(n, PriceReader::overhead), PriceRules::withOverhead);
        rules = f.with(rules, "contingency", f::number, PriceRules::withContingency);
        rules = f.with(rules, "profit", n -> f.object(n, PriceReader::profit), PriceRules::withProfit);
        rules = f.with(rules, "minimum", n -> f.read(n, Read::money), PriceRules::withMinimum);
        rules = f.with(rules, "discount", f::number, PriceRules::withDiscount);
        rules = f.with(rules, "tax", f::number, PriceRules::withTax);
        return f.with(rules, "rounding", n -> f.word(n, Rounding.class), PriceRules::withRounding);
    }

    private static Overhead overhead(Fields f) {
        if (f.has("onDirectCost")) {
            return f.with(Overhead.none(), "onDirectCost", f::number, (none, share) -> Overhead.onDirectCost(share));
        }
        if (f.has("onLabourCost")) {
            return f.with(Overhead.none(), "onLabourCost", f::number, (none, share) -> Overhead.onLabourCost(share));
        }
        return Overhead.perHour(f.read("perHour", Read::pricePerTime));
    }

    private static Profit profit(Fields f) {
        if (f.has("margin")) {
            return f.with(Profit.markup(0), "margin", f::number, (none, share) -> Profit.margin(share));
        }
        return f.with(Profit.markup(0), "markup", f::number, (none, share) -> Profit.markup(share));
    }
}
