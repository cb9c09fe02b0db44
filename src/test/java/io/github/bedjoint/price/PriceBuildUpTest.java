package io.github.bedjoint.price;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.units.Read;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.working.WorkingCheck;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Time;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PriceBuildUpTest {
    private static final CurrencyUnit USD = CurrencyUnit.USD;
    private static final Quantity<Time> NONE = Read.time("0 h");
    private static final PriceRules RULES = PriceRules.in(USD);

    private static CostLine lump(LineKind kind, String amount) {
        return CostLine.each(kind, kind.title(), 1, Money.parse("USD " + amount));
    }

    /** Cost accounting exercise (public): material 19,670, labour 10,200, overhead 115 % of labour; 1,300 units at 32.00. */
    @Test
    void of_overheadOnLabour_matchesCostAccountingExercise() {
        PriceBuildUp price = PriceBuildUp.of(
                List.of(lump(LineKind.FILM, "19670"), lump(LineKind.SITE_LABOUR, "10200")),
                NONE,
                RULES.withOverhead(Overhead.onLabourCost(1.15)));
        assertThat(price.overhead()).isEqualTo(Money.parse("USD 11730.00"));
        assertThat(price.total()).isEqualTo(Money.parse("USD 41600.00"));
        assertThat(price.total().dividedBy(1300, java.math.RoundingMode.UNNECESSARY)).isEqualTo(Money.parse("USD 32.00"));
    }

    /** Cost accounting exercise (public): 5,000 + 2,400 + 400 h at 2.50 an hour = 8,400; over 200 pieces 42. */
    @Test
    void of_overheadOnHours_matchesCostAccountingExercise() {
        PriceBuildUp price = PriceBuildUp.of(
                List.of(lump(LineKind.FILM, "5000"), lump(LineKind.SITE_LABOUR, "2400")),
                Read.time("400 h"),
                RULES.withOverhead(Overhead.perHour(Read.pricePerTime("USD 2.50/h"))));
        assertThat(price.total()).isEqualTo(Money.parse("USD 8400.00"));
        assertThat(price.total().getAmount().intValueExact() / 200).isEqualTo(42);
    }

    /** By hand: 1000 + 10 % = 1100; 5 % contingency 55 -> 1155; margin 30 % -> 1650; discount 10 % -> 1485; tax 19 % 282.15. */
    @Test
    void of_allSteps_followTheStatedOrder() {
        PriceBuildUp price = PriceBuildUp.of(
                List.of(lump(LineKind.FILM, "1000")),
                NONE,
                RULES.withOverhead(Overhead.onDirectCost(0.10))
                        .withContingency(0.05)
                        .withProfit(Profit.margin(0.30))
                        .withDiscount(0.10)
                        .withTax(0.19));
        assertThat(price.cost()).isEqualTo(Money.parse("USD 1155.00"));
        assertThat(price.list()).isEqualTo(Money.parse("USD 1650.00"));
        assertThat(price.net()).isEqualTo(Money.parse("USD 1485.00"));
        assertThat(price.tax()).isEqualTo(Money.parse("USD 282.15"));
        assertThat(price.total()).isEqualTo(Money.parse("USD 1767.15"));
        // A discount d after a margin m leaves 1 - (1 - m) / (1 - d) = 1 - 0.7 / 0.9.
        assertThat(price.marginKept()).isCloseTo(1 - 0.7 / 0.9, within(1e-12));
        WorkingCheck.check(price.working());
    }

    @Test
    void of_costBelowMinimum_chargesTheMinimum() {
        PriceBuildUp price =
                PriceBuildUp.of(List.of(lump(LineKind.FILM, "80")), NONE, RULES.withMinimum(Money.parse("USD 250")));
        assertThat(price.isMinimum()).isTrue();
        assertThat(price.total()).isEqualTo(Money.parse("USD 250.00"));
        assertThat(price.marginKept()).isCloseTo(0.68, within(1e-12));
        WorkingCheck.check(price.working());
    }

    @Test
    void of_noLines_costsNothing() {
        PriceBuildUp price = PriceBuildUp.of(List.of(), NONE, RULES);
        assertThat(price.total()).isEqualTo(Money.zero(USD));
        assertThat(price.marginKept()).isZero();
        WorkingCheck.check(price.working());
    }

    @Test
    void of_lineInAnotherCurrency_isRefused() {
        CostLine euro = CostLine.each(LineKind.FILM, "film", 1, Money.parse("EUR 5"));
        assertThatThrownBy(() -> PriceBuildUp.of(List.of(euro), NONE, RULES))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("film")
                .hasMessageContaining("EUR")
                .hasMessageContaining("USD");
    }

    /** Public margin table: markup for a margin of 10 ... 75 %; and cost 110, price 200: markup 81.818 %, margin 45 %. */
    @ParameterizedTest
    @CsvSource({
        "10, 11.1", "20, 25.0", "25, 33.3", "30, 42.9", "40, 66.7", "50, 100.0", "60, 150.0", "75, 300.0", "45, 81.8"
    })
    void asMarkup_ofMargin_matchesPublicTable(double margin, double markup) {
        assertThat(Profit.margin(margin / 100).asMarkup() * 100).isCloseTo(markup, within(0.05));
        double exact = Profit.margin(margin / 100).asMarkup();
        assertThat(Profit.markup(exact).asMargin()).isCloseTo(margin / 100, within(1e-12));
    }

    @Test
    void price_byMarkupAndByItsMargin_areTheSame() {
        List<CostLine> lines = List.of(lump(LineKind.FILM, "110"));
        assertThat(PriceBuildUp.of(lines, NONE, RULES.withProfit(Profit.margin(0.45))).total())
                .isEqualTo(Money.parse("USD 200.00"))
                .isEqualTo(PriceBuildUp.of(lines, NONE, RULES.withProfit(Profit.markup(0.81818182))).total());
    }

    @ParameterizedTest
    @ValueSource(doubles = {1.0, 1.5, -0.01, Double.NaN, Double.POSITIVE_INFINITY})
    void margin_outOfRange_isRefused(double share) {
        assertThatThrownBy(() -> Profit.margin(share)).isInstanceOf(RefusedException.class).hasMessageContaining("margin");
        assertThatThrownBy(() -> RULES.withDiscount(share)).isInstanceOf(RefusedException.class).hasMessageContaining("discount");
    }

    @Test
    void withMinimum_negativeOrForeign_isRefused() {
        assertThatThrownBy(() -> RULES.withMinimum(Money.parse("USD -1"))).isInstanceOf(RefusedException.class);
        assertThatThrownBy(() -> RULES.withMinimum(Money.parse("EUR 1"))).isInstanceOf(RefusedException.class);
        assertThatThrownBy(() -> RULES.withOverhead(Overhead.perHour(Read.pricePerTime("EUR 1/h"))))
                .isInstanceOf(RefusedException.class);
    }
}
