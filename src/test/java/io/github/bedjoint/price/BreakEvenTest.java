package io.github.bedjoint.price;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.units.PriceRate;
import io.github.bedjoint.units.Read;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.working.WorkingCheck;
import java.util.List;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BreakEvenTest {
    private static final PriceRules RULES = PriceRules.in(CurrencyUnit.EUR)
            .withOverhead(Overhead.onLabourCost(0.5))
            .withContingency(0.1)
            .withProfit(Profit.margin(0.25))
            .withDiscount(0.05)
            .withTax(0.2);

    private static CostLine hours(String time) {
        return CostLine.of(LineKind.SITE_LABOUR, "work", Read.time(time), Read.pricePerTime("EUR 40/h"), Rounding.HALF_UP);
    }

    /** Film 600, work 10 h = 400, overhead 200, contingency 120: cost 1320; price 1760, less 5 % = 1672; tax 334.40. */
    private static PriceBuildUp price() {
        CostLine film = CostLine.each(LineKind.FILM, "film", 2, Money.parse("EUR 300"));
        return PriceBuildUp.of(List.of(film, hours("10 h")), Read.time("10 h"), RULES);
    }

    @Test
    void of_discountedPrice_breaksEvenAtCost() {
        BreakEven even = BreakEven.of(price());

        assertThat(price().net()).isEqualTo(Money.parse("EUR 1672"));
        assertThat(even.net()).isEqualTo(Money.parse("EUR 1320"));
        // 1320/0.95 = 1389.4737, up to the cent
        assertThat(even.list()).isEqualTo(Money.parse("EUR 1389.48"));
        assertThat(even.spare()).isEqualTo(Money.parse("EUR 352"));
        assertThat(even).hasToString("breaks even at EUR 1389.48 before discount and tax; EUR 352.00 to spare");
        WorkingCheck.check(even.working());
    }

    @Test
    void times_oneMoreHour_untilTheJobLosesMoney() {
        PriceEffect hour = PriceEffect.of(price(), hours("1 h"), Read.time("1 h"));

        // 40 + overhead 20 + contingency 6 = 66; price + 66/0.75 x 0.95 = + 83.60; with tax + 100.32
        assertThat(hour.cost()).isEqualTo(Money.parse("EUR 66"));
        assertThat(hour.net()).isEqualTo(Money.parse("EUR 83.60"));
        assertThat(hour.total()).isEqualTo(Money.parse("EUR 100.32"));
        // 1 - 1386/1672
        assertThat(hour.marginAtOldPrice()).isCloseTo(0.171052632, within(1e-9));
        assertThat(BreakEven.of(price()).times(hour)).isCloseTo(352 / 66.0, within(1e-12));
        assertThat(hour).hasToString("work: cost EUR 66.00, total EUR 100.32");
        WorkingCheck.check(BreakEven.of(price()).against(hour).working());
    }

    @Test
    void times_whatCostsNothing_isInfinite() {
        PriceEffect gift = PriceEffect.of(price(), CostLine.each(LineKind.LUMP, "gift", 1, Money.parse("EUR 0")), Read.time("0 h"));

        assertThat(BreakEven.of(price()).times(gift)).isInfinite();
        WorkingCheck.check(BreakEven.of(price()).against(gift).working());
    }

    @Test
    void of_otherCurrency_refused() {
        assertThatThrownBy(() -> PriceEffect.of(price(), CostLine.each(LineKind.LUMP, "x", 1, Money.parse("USD 1")), Read.time("0 h")))
                .isInstanceOf(RefusedException.class);
    }

    @Test
    void serviceCost_workedByHand() {
        // 1672/20 m2 = 83.60; over 5 years 16.72
        ServiceCost cost = ServiceCost.of(Money.parse("EUR 1672"), Read.area("20 m2"), 5);

        assertThat(cost.perArea()).isEqualTo(PriceRate.parse("EUR 83.6/m2"));
        assertThat(cost.perAreaAndYear()).isEqualTo(PriceRate.parse("EUR 16.72/m2"));
        assertThat(cost).hasToString("EUR 83.60 for a square metre, EUR 16.72 for each year");
        WorkingCheck.check(cost.working());
        assertThatThrownBy(() -> ServiceCost.of(Money.parse("EUR 1"), Read.area("20 m2"), 0)).isInstanceOf(RefusedException.class);
    }

    @Test
    void disposal_workedByHand() {
        // Liner of 30 m2 at 90 g/m2 = 2.7 kg; scrap of 4 m2 at 200 g/m2 = 0.8 kg; 3.5 kg at 1.20 = 4.20
        Disposal disposal = Disposal.of(Read.area("30 m2"), Read.massPerArea("90 g/m2"), Read.area("4 m2"), Read.massPerArea("200 g/m2"));

        assertThat(disposal.mass().getValue().doubleValue()).isCloseTo(3.5, within(1e-12));
        CostLine line = disposal.line("Disposal", Read.pricePerMass("EUR 1.20/kg"), Rounding.HALF_UP);
        assertThat(line.amount()).isEqualTo(Money.parse("EUR 4.20"));
        assertThat(line.kind()).isEqualTo(LineKind.DISPOSAL);
        WorkingCheck.check(disposal.working());
        assertThatThrownBy(() -> Disposal.of(Read.area("30 m2"), Read.massPerArea("90 kg/m2"), Read.area("4 m2"), Read.massPerArea("200 g/m2")))
                .isInstanceOf(RefusedException.class);
    }

    @ParameterizedTest
    @CsvSource({"5, 0, 1, 5", "5, 0, 4, 8", "8, 0, 4, 8", "1, 6, 4, 8", "1, 6, 1, 6", "0, 6, 4, 0", "9, 6, 4, 12"})
    void ordered_cartonsAndMinimum_workedByHand(int needed, int least, int carton, int ordered) {
        OrderQuantity order = new OrderQuantity(needed, least, carton);

        assertThat(order.ordered()).isEqualTo(ordered);
        assertThat(order.left()).isEqualTo(ordered - needed);
        if (needed > 0) {
            WorkingCheck.check(order.working());
        }
    }

    @Test
    void line_ofAnOrder_paysForAllRollsOrdered() {
        assertThat(new OrderQuantity(5, 0, 4).line(LineKind.FILM, "film", Money.parse("EUR 100")).amount()).isEqualTo(Money.parse("EUR 800"));
        assertThatThrownBy(() -> new OrderQuantity(1, 0, 0)).isInstanceOf(RefusedException.class);
    }
}
