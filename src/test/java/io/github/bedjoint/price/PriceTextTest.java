package io.github.bedjoint.price;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.units.Read;
import io.github.bedjoint.working.WorkingCheck;
import java.math.BigDecimal;
import java.util.List;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/** What prices and their parts are printed as, and figures at their limits, by hand. */
class PriceTextTest {
    private static final PriceRules RULES = PriceRules.in(CurrencyUnit.EUR);

    private static Money eur(String amount) {
        return Money.parse("EUR " + amount);
    }

    private static CostLine film(String amount) {
        return CostLine.each(LineKind.FILM, "film", 1, eur(amount));
    }

    private static CostLine hours(String title, String time) {
        return CostLine.of(LineKind.SITE_LABOUR, title, Read.time(time), Read.pricePerTime("EUR 40/h"), Rounding.HALF_UP);
    }

    @Test
    void overhead_eachBasis_isPrintedAndCompared() {
        Overhead hourly = Overhead.perHour(Read.pricePerTime("EUR 12/h"));
        assertThat(Overhead.onDirectCost(0.12)).hasToString("0.12 on direct cost").isEqualTo(Overhead.onDirectCost(0.12));
        assertThat(Overhead.onLabourCost(1.5)).hasToString("1.5 on labour cost").isNotEqualTo(Overhead.onDirectCost(1.5));
        assertThat(hourly.toString()).startsWith("EUR 12").endsWith("/h on hours");
        assertThat(hourly).isEqualTo(Overhead.perHour(Read.pricePerTime("EUR 12/h"))).isNotEqualTo(Overhead.perHour(Read.pricePerTime("EUR 13/h")));
        assertThat(Overhead.onDirectCost(0.12)).isNotEqualTo(Overhead.onDirectCost(0.13)).isNotEqualTo(hourly);
        assertThat(Overhead.none()).isEqualTo(Overhead.onDirectCost(0)).hasSameHashCodeAs(Overhead.onDirectCost(0));
    }

    /** 10 h on overhead of 12 an hour: 120 on 400 of labour; on labour 150 %: 600; on direct cost of 1000 at 12 %: 120. */
    @Test
    void overhead_eachBasis_isTakenOnItsOwn() {
        List<CostLine> lines = List.of(film("600"), hours("work", "10 h"));
        assertThat(PriceBuildUp.of(lines, Read.time("10 h"), RULES.withOverhead(Overhead.perHour(Read.pricePerTime("EUR 12/h")))).overhead()).isEqualTo(eur("120"));
        assertThat(PriceBuildUp.of(lines, Read.time("10 h"), RULES.withOverhead(Overhead.onLabourCost(1.5))).overhead()).isEqualTo(eur("600"));
        assertThat(PriceBuildUp.of(lines, Read.time("10 h"), RULES.withOverhead(Overhead.onDirectCost(0.12))).overhead()).isEqualTo(eur("120"));
    }

    @Test
    void buildUp_minimum_isSeenAndPrinted() {
        PriceBuildUp above = PriceBuildUp.of(List.of(film("600")), Read.time("0 h"), RULES.withMinimum(eur("500")));
        PriceBuildUp below = PriceBuildUp.of(List.of(film("600")), Read.time("0 h"), RULES.withMinimum(eur("700")));
        assertThat(above.isMinimum()).isFalse();
        assertThat(below.isMinimum()).isTrue();
        assertThat(above).hasToString("cost EUR 600.00, net EUR 600.00, total EUR 600.00");
        assertThat(below).hasToString("cost EUR 600.00, net EUR 700.00, total EUR 700.00");
        assertThat(RULES.withMinimum(eur("1000000000000")).minimum()).isEqualTo(eur("1000000000000"));
        assertThatThrownBy(() -> RULES.withMinimum(eur("1000000000000.01"))).hasMessageContaining("Maybe a digit slipped");
    }

    /** 5 h more on 10 h, at 40 and overhead of 12 an hour: 5 x 52 = 260. An effect on the hours counts them from those there were. */
    @Test
    void effect_oneMoreLineWithHours_addsToThoseBefore() {
        PriceBuildUp price = PriceBuildUp.of(
                List.of(hours("work", "10 h")), Read.time("10 h"), RULES.withOverhead(Overhead.perHour(Read.pricePerTime("EUR 12/h"))));
        PriceEffect effect = PriceEffect.of(price, hours("more work", "5 h"), Read.time("5 h"));
        assertThat(effect.cost()).isEqualTo(eur("260"));
        assertThat(effect).hasToString("more work: cost EUR 260.00, total EUR 260.00");
        // 780 of the old price of 520: half as much again is lost.
        assertThat(effect.marginAtOldPrice()).isCloseTo(-0.5, within(1e-12));
    }

    /** A price of nothing has no margin to keep. */
    @Test
    void effect_onAPriceOfNothing_keepsNoMargin() {
        PriceBuildUp nothing = PriceBuildUp.of(List.of(), Read.time("0 h"), RULES);
        assertThat(PriceEffect.of(nothing, film("10"), Read.time("0 h")).marginAtOldPrice()).isZero();
    }

    /** What costs nothing can be had as often as one likes, and has no line of its own in the working. */
    @Test
    void breakEven_effectThatCostsNothing_isLeftOutOfTheWorking() {
        PriceBuildUp price = PriceBuildUp.of(List.of(film("600")), Read.time("0 h"), RULES.withProfit(Profit.margin(0.25)));
        PriceEffect free = PriceEffect.of(price, CostLine.each(LineKind.LUMP, "favour", 1, eur("0")), Read.time("0 h"));
        PriceEffect paid = PriceEffect.of(price, CostLine.each(LineKind.LUMP, "trip", 1, eur("50")), Read.time("0 h"));
        BreakEven even = BreakEven.of(price).against(free).against(paid);
        assertThat(even.times(free)).isInfinite();
        // 800 - 600 = 200 above the cost: four trips of 50.
        assertThat(even.times(paid)).isEqualTo(4);
        assertThat(even.working().toString()).contains("trip").doesNotContain("favour");
        WorkingCheck.check(even.working());
    }

    /** 100 of film and 200 of labour bear 50 % of the labour, 100; 130 were paid, so 30 more than that. */
    @Test
    void variance_overheadOnLabour_bearsOnTheLabourDone() {
        PriceRules rules = RULES.withOverhead(Overhead.onLabourCost(0.5));
        PriceBuildUp estimate = PriceBuildUp.of(List.of(film("100"), hours("work", "4 h")), Read.time("4 h"), rules);
        CostVariance variance = CostVariance.of(estimate, List.of(film("100"), hours("work", "5 h")), Read.time("5 h"), eur("130"));
        assertThat(variance.of(VarianceKind.OVERHEAD_SPENDING)).isEqualTo(eur("30"));
        // 160 of labour were estimated to bear 80.
        assertThat(variance.of(VarianceKind.OVERHEAD_EFFICIENCY)).isEqualTo(eur("20"));
        assertThat(variance.of(VarianceKind.LABOUR_EFFICIENCY)).isEqualTo(eur("40"));
        assertThat(variance.working().toString()).contains("film", "work");
        WorkingCheck.check(variance.working());
    }

    @Test
    void lineVariance_linesOfOtherKindMeasureOrCurrency_areRefused() {
        CostLine estimated = hours("work", "4 h");
        CostLine piece = CostLine.each(LineKind.SITE_LABOUR, "work", 1, eur("160"));
        CostLine dollars = CostLine.of(LineKind.SITE_LABOUR, "work", Read.time("4 h"), Read.pricePerTime("USD 40/h"), Rounding.HALF_UP);
        CostLine shop = CostLine.of(LineKind.PRODUCTION_LABOUR, "work", Read.time("4 h"), Read.pricePerTime("EUR 40/h"), Rounding.HALF_UP);
        for (CostLine actual : List.of(piece, dollars, shop)) {
            assertThatThrownBy(() -> LineVariance.of(estimated, actual, Rounding.HALF_UP))
                    .hasMessageContaining("must be of the kind, measure and currency of")
                    .hasMessageContaining("Maybe give it another title");
        }
        assertThat(LineVariance.of(estimated, hours("work", "5 h"), Rounding.HALF_UP).usage()).isEqualTo(eur("40"));
    }

    /** A margin of 25 % is a markup of a third, and back; each is itself. */
    @Test
    void profit_marginAndMarkup_turnIntoEachOther() {
        assertThat(Profit.margin(0.25).asMarkup()).isCloseTo(1 / 3.0, within(1e-15));
        assertThat(Profit.margin(0.25).asMargin()).isEqualTo(0.25);
        assertThat(Profit.markup(0.25).asMargin()).isCloseTo(0.2, within(1e-15));
        assertThat(Profit.markup(0.25).asMarkup()).isEqualTo(0.25);
    }

    @Test
    void split_weightsOfNothing_areRefused() {
        assertThatThrownBy(() -> LargestRemainder.split(eur("1"), List.of(BigDecimal.ZERO, BigDecimal.ZERO))).hasMessageContaining("not all zero");
        assertThatThrownBy(() -> LargestRemainder.split(eur("1"), List.of(BigDecimal.TEN, BigDecimal.ONE.negate()))).hasMessageContaining("must not be negative");
        assertThat(LargestRemainder.split(eur("1"), List.of(BigDecimal.ZERO, BigDecimal.ONE))).containsExactly(eur("0"), eur("1"));
    }

    /** 3.5 kg: 30 m2 at 90 g and 4 m2 at 200 g. */
    @Test
    void toString_orderAndDisposal_sayWhy() {
        assertThat(new OrderQuantity(5, 0, 4)).hasToString("8 rolls ordered: 5 needed, at least 0, 4 in a carton");
        assertThat(new OrderQuantity(1, 0, 1)).hasToString("1 roll ordered: 1 needed, at least 0, 1 in a carton");
        assertThat(new OrderQuantity(0, 6, 4).working().toString()).contains("Nothing is needed, so nothing is ordered.");
        assertThat(Disposal.of(Read.area("30 m2"), Read.massPerArea("90 g/m2"), Read.area("4 m2"), Read.massPerArea("200 g/m2")))
                .hasToString("3.5 kg to dispose of: 30 m² of liner, 4 m² of scrap");
    }

    /** A share of 10, or 1000 %, is written 10 and not 1E+1. */
    @Test
    void share_inTens_isWrittenPlainly() {
        assertThat(Overhead.onDirectCost(10).share()).isEqualTo(BigDecimal.TEN);
        assertThat(PriceRules.exact(20).scale()).isZero();
        assertThat(PriceRules.exact(0.5)).isEqualTo(new BigDecimal("0.5"));
        assertThat(PriceRules.exact(2).scale()).isZero();
    }
}
