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
        rules = f.with(rules, "overhead", n -> f.object(n, o -> overhead(o, currency)), PriceRules::withOverhead);
        rules = f.with(rules, "contingency", f::number, PriceRules::withContingency);
        rules = f.with(rules, "profit", n -> f.object(n, PriceReader::profit), PriceRules::withProfit);
        rules = f.with(rules, "minimum", n -> f.priced(n, currency, Read::money), PriceRules::withMinimum);
        rules = f.with(rules, "discount", f::number, PriceRules::withDiscount);
        rules = f.with(rules, "tax", f::number, PriceRules::withTax);
        return f.with(rules, "rounding", n -> f.word(n, Rounding.class), PriceRules::withRounding);
    }

    private static Overhead overhead(Fields f, CurrencyUnit currency) {
        return switch (f.oneOf("onDirectCost", "onLabourCost", "perHour")) {
            case "onDirectCost" -> f.with(Overhead.none(), "onDirectCost", f::number, (none, share) -> Overhead.onDirectCost(share));
            case "onLabourCost" -> f.with(Overhead.none(), "onLabourCost", f::number, (none, share) -> Overhead.onLabourCost(share));
            default -> Overhead.perHour(f.priced("perHour", currency, Read::pricePerTime));
        };
    }

    private static Profit profit(Fields f) {
        boolean isMargin = f.oneOf("margin", "markup").equals("margin");
        return f.with(Profit.markup(0), isMargin ? "margin" : "markup", f::number, (none, share) ->
                isMargin ? Profit.margin(share) : Profit.markup(share));
    }
}
