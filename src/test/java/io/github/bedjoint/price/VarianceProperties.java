package io.github.bedjoint.price;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.PriceRate;
import io.github.bedjoint.units.ShopUnits;
import io.github.bedjoint.working.WorkingCheck;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

class VarianceProperties {
    private static final List<CurrencyUnit> CURRENCIES = List.of(CurrencyUnit.EUR, CurrencyUnit.JPY, CurrencyUnit.of("KWD"));
    private static final LineKind[] KINDS = {LineKind.FILM, LineKind.INK, LineKind.SITE_LABOUR, LineKind.PRODUCTION_LABOUR, LineKind.HIRE, LineKind.LUMP};

    private static List<CostLine> lines(Random random, CurrencyUnit currency, Rounding rounding) {
        List<CostLine> lines = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            if (random.nextInt(4) > 0) {
                BigMoney price = BigMoney.of(currency, BigDecimal.valueOf(random.nextInt(1_000_000), 4));
                lines.add(i % 2 == 0
                        ? CostLine.of(KINDS[i], "line " + i, Door.area(random.nextDouble() * 500), PriceRate.of(price, ShopUnits.SQUARE_FOOT), rounding)
                        : CostLine.of(KINDS[i], "line " + i, Door.time(random.nextDouble() * 1e6), PriceRate.of(price, ShopUnits.HOUR), rounding));
            }
        }
        return lines;
    }

    private static Money sum(CostVariance variance, CurrencyUnit currency) {
        return Arrays.stream(VarianceKind.values()).map(variance::of).reduce(Money.zero(currency), Money::plus);
    }

    @Property
    void of_anyTwoSetsOfLines_addsUpExactly(
            @ForAll @LongRange long seed, @ForAll @IntRange(max = 2) int index, @ForAll Rounding rounding,
            @ForAll @DoubleRange(max = 2) double share, @ForAll @DoubleRange(max = 200) double hours) {
        CurrencyUnit currency = CURRENCIES.get(index);
        Random random = new Random(seed);
        PriceRules rules = PriceRules.in(currency).withRounding(rounding).withContingency(share / 3)
                .withOverhead(random.nextBoolean() ? Overhead.onLabourCost(share) : Overhead.onDirectCost(share));
        PriceBuildUp estimate = PriceBuildUp.of(lines(random, currency, rounding), Door.time(hours * 3600), rules);
        List<CostLine> actual = lines(random, currency, rounding);
        Money overhead = Money.ofMinor(currency, random.nextInt(1_000_000));

        CostVariance variance = CostVariance.of(estimate, actual, Door.time(hours * 4000), overhead);

        Money direct = actual.stream().map(CostLine::amount).reduce(Money.zero(currency), Money::plus);
        assertThat(variance.total()).isEqualTo(direct.plus(overhead).minus(estimate.cost()));
        assertThat(sum(variance, currency)).isEqualTo(variance.total());
        for (LineVariance line : variance.lines()) {
            assertThat(line.price().plus(line.usage()).plus(line.leftOver())).isEqualTo(line.total());
            assertThat(Math.abs(line.leftOver().getAmountMinorLong())).isLessThanOrEqualTo(4);
        }
        WorkingCheck.check(variance.working());

        List<CostLine> shuffled = new ArrayList<>(actual);
        Collections.shuffle(shuffled, random);
        CostVariance same = CostVariance.of(estimate, shuffled, Door.time(hours * 4000), overhead);
        assertThat(same).hasToString(variance.toString());
    }

    @Property
    void of_theEstimateItself_isNothingButContingency(@ForAll @LongRange long seed, @ForAll @IntRange(max = 2) int index) {
        CurrencyUnit currency = CURRENCIES.get(index);
        List<CostLine> lines = lines(new Random(seed), currency, Rounding.HALF_UP);
        PriceBuildUp estimate = PriceBuildUp.of(lines, Door.time(3600), PriceRules.in(currency).withContingency(0.07).withOverhead(Overhead.onLabourCost(0.4)));

        CostVariance variance = CostVariance.of(estimate, lines, Door.time(3600), estimate.overhead());

        assertThat(variance.of(VarianceKind.CONTINGENCY)).isEqualTo(estimate.contingency().negated());
        assertThat(variance.total()).isEqualTo(estimate.contingency().negated());
    }
}
