package io.github.bedjoint.price;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.PriceRate;
import io.github.bedjoint.units.Read;
import io.github.bedjoint.units.ShopUnits;
import io.github.bedjoint.working.WorkingCheck;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

class PriceProperties {
    private static final List<CurrencyUnit> CURRENCIES = List.of(CurrencyUnit.EUR, CurrencyUnit.JPY, CurrencyUnit.of("KWD"));

    @Property
    void of_anyLinesAndRules_addsUpAndShowsItsWorking(
            @ForAll @Size(max = 12) List<@DoubleRange(max = 5000) Double> quantities,
            @ForAll @BigRange(min = "0", max = "900") BigDecimal rate,
            @ForAll @IntRange(max = 2) int currencyIndex,
            @ForAll Rounding rounding,
            @ForAll @DoubleRange(max = 0.9) double share,
            @ForAll boolean margin) {
        CurrencyUnit currency = CURRENCIES.get(currencyIndex);
        List<CostLine> lines = new ArrayList<>();
        for (double quantity : quantities) {
            lines.add(CostLine.of(
                    lines.size() % 2 == 0 ? LineKind.FILM : LineKind.SITE_LABOUR, "line", Door.area(quantity),
                    PriceRate.of(BigMoney.of(currency, rate), ShopUnits.SQUARE_METRE), rounding));
        }
        PriceRules rules = PriceRules.in(currency)
                .withOverhead(margin
                        ? Overhead.onLabourCost(share)
                        : Overhead.perHour(PriceRate.of(BigMoney.of(currency, rate), ShopUnits.HOUR)))
                .withContingency(share / 3)
                .withProfit(margin ? Profit.margin(share) : Profit.markup(share * 3))
                .withMinimum(Money.ofMajor(currency, 40))
                .withDiscount(share / 2)
                .withTax(share / 4)
                .withRounding(rounding);
        PriceBuildUp price = PriceBuildUp.of(lines, Read.time("7 h"), rules);

        Money sum = lines.stream().map(CostLine::amount).reduce(Money.zero(currency), Money::plus);
        assertThat(price.direct()).isEqualTo(sum);
        assertThat(price.cost()).isEqualTo(sum.plus(price.overhead()).plus(price.contingency()));
        assertThat(price.total()).isEqualTo(price.net().plus(price.tax()));
        assertThat(price.list().isLessThan(rules.minimum())).isFalse();
        WorkingCheck.check(price.working());

        List<CostLine> shuffled = new ArrayList<>(lines);
        Collections.shuffle(shuffled, new Random(quantities.size()));
        assertThat(PriceBuildUp.of(shuffled, Read.time("7 h"), rules).total()).isEqualTo(price.total());
    }

    @Property
    void split_anyAmount_addsUpAndStaysWithinACoinOfTheShare(
            @ForAll @IntRange(max = 10_000_000) int coins,
            @ForAll @Size(min = 1, max = 20) List<@IntRange(max = 1000) Integer> weights) {
        List<BigDecimal> positive = weights.stream().map(w -> BigDecimal.valueOf(w + 1L)).toList();
        Money total = Money.ofMinor(CurrencyUnit.EUR, coins);
        List<Money> parts = LargestRemainder.split(total, positive);
        assertThat(Money.total(parts)).isEqualTo(total);
        double sum = positive.stream().mapToDouble(BigDecimal::doubleValue).sum();
        for (int i = 0; i < parts.size(); i++) {
            assertThat((double) parts.get(i).getAmountMinorLong()).isCloseTo(coins * positive.get(i).doubleValue() / sum, within(1.0001));
        }
    }
}
