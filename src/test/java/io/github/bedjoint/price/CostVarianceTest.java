package io.github.bedjoint.price;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.PriceRate;
import io.github.bedjoint.units.Read;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.ShopUnits;
import io.github.bedjoint.working.WorkingCheck;
import java.util.List;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Time;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

class CostVarianceTest {
    private static final PriceRules RULES = PriceRules.in(CurrencyUnit.USD).withOverhead(Overhead.perHour(perHour("USD 4.00")));

    private static PriceRate<Time> perHour(String money) {
        return PriceRate.of(Money.parse(money), ShopUnits.HOUR);
    }

    private static CostLine material(double kg, String price) {
        PriceRate<Mass> rate = PriceRate.of(Money.parse(price), ShopUnits.KILOGRAM);
        return CostLine.of(LineKind.FILM, "Material", Door.of(kg, ShopUnits.KILOGRAM), rate, Rounding.HALF_UP);
    }

    private static CostLine labour(double hours, String rate) {
        return CostLine.of(LineKind.SITE_LABOUR, "Labour", Door.of(hours, ShopUnits.HOUR), perHour(rate), Rounding.HALF_UP);
    }

    /**
     * A public exercise of standard costing with its answers (units of quantity made kilograms): standard 17,500 at 6.00 and 10,000 h at
     * 18.00, variable overhead 4.00 an hour; actual 20,000 at 5.40, 10,500 h at 20.00, overhead 3.90 an hour = 40,950. Answers: price
     * 12,000 favourable, usage 15,000 adverse, rate 21,000 adverse, efficiency 9,000 adverse, overhead rate 1,050 favourable; overhead
     * efficiency (10,500 - 10,000) x 4 = 2,000 adverse by the same rule.
     */
    private static CostVariance exercise() {
        PriceBuildUp estimate = PriceBuildUp.of(List.of(material(17_500, "USD 6.00"), labour(10_000, "USD 18.00")), Read.time("10000 h"), RULES);
        return CostVariance.of(
                estimate, List.of(material(20_000, "USD 5.40"), labour(10_500, "USD 20.00")), Read.time("10500 h"), Money.parse("USD 40950"));
    }

    @Test
    void of_publicExercise_hasItsAnswers() {
        CostVariance variance = exercise();

        assertThat(variance.of(VarianceKind.MATERIAL_PRICE)).isEqualTo(Money.parse("USD -12000"));
        assertThat(variance.of(VarianceKind.MATERIAL_USAGE)).isEqualTo(Money.parse("USD 15000"));
        assertThat(variance.of(VarianceKind.LABOUR_RATE)).isEqualTo(Money.parse("USD 21000"));
        assertThat(variance.of(VarianceKind.LABOUR_EFFICIENCY)).isEqualTo(Money.parse("USD 9000"));
        assertThat(variance.of(VarianceKind.OVERHEAD_SPENDING)).isEqualTo(Money.parse("USD -1050"));
        assertThat(variance.of(VarianceKind.OVERHEAD_EFFICIENCY)).isEqualTo(Money.parse("USD 2000"));
        assertThat(variance.of(VarianceKind.ROUNDING).isZero()).isTrue();
        // 358,950 actual less 325,000 estimated
        assertThat(variance.total()).isEqualTo(Money.parse("USD 33950"));
        WorkingCheck.check(variance.working());
    }

    @Test
    void toString_exercise_namesAdverseAndFavourable() {
        assertThat(exercise()).hasToString("""
                Material price: USD -12000.00 favourable
                Material usage: USD 15000.00 adverse
                Labour rate: USD 21000.00 adverse
                Labour efficiency: USD 9000.00 adverse
                Overhead spending: USD -1050.00 favourable
                Overhead efficiency: USD 2000.00 adverse
                Actual less estimated cost: USD 33950.00""");
    }

    @Test
    void of_linesOnOneSideOnly_areUsageAltogether() {
        CostLine crane = CostLine.each(LineKind.HIRE, "Lift", 2, Money.parse("USD 150"));
        CostLine permit = CostLine.each(LineKind.LUMP, "Permit", 1, Money.parse("USD 90"));
        PriceRules plain = PriceRules.in(CurrencyUnit.USD).withContingency(0.1);
        CostVariance variance = CostVariance.of(
                PriceBuildUp.of(List.of(permit), Read.time("0 h"), plain), List.of(crane), Read.time("0 h"), Money.zero(CurrencyUnit.USD));

        // + 300 for the lift, - 90 for the permit; the contingency of 9 is gone; 300 - 99 = 201
        assertThat(variance.of(VarianceKind.OTHER_USAGE)).isEqualTo(Money.parse("USD 210"));
        assertThat(variance.of(VarianceKind.OTHER_PRICE).isZero()).isTrue();
        assertThat(variance.of(VarianceKind.CONTINGENCY)).isEqualTo(Money.parse("USD -9"));
        assertThat(variance.total()).isEqualTo(Money.parse("USD 201"));
        assertThat(variance.lines()).extracting(LineVariance::title).containsExactly("Permit", "Lift");
        assertThat(variance.lines().get(1)).hasToString("Lift: price USD 0.00, usage USD 300.00, in all USD 300.00");
        WorkingCheck.check(variance.working());
    }

    @Test
    void of_amountsThatRound_leaveTheRestOver() {
        // Estimated 3 kg at 0.335 = 1.005, rounded 1.01; actual 4 kg at 0.3351 = 1.3404, rounded 1.34. Price 0.0004, rounded 0.00;
        // usage 0.335, rounded 0.34; 1.34 - 1.01 = 0.33, so rounding leaves -0.01.
        CostLine estimated = material(3, "USD 1.00");
        PriceRate<Mass> before = PriceRate.of(org.joda.money.BigMoney.parse("USD 0.335"), ShopUnits.KILOGRAM);
        PriceRate<Mass> after = PriceRate.of(org.joda.money.BigMoney.parse("USD 0.3351"), ShopUnits.KILOGRAM);
        LineVariance line = LineVariance.of(
                CostLine.of(estimated.kind(), "x", Door.of(3, ShopUnits.KILOGRAM), before, Rounding.HALF_UP),
                CostLine.of(estimated.kind(), "x", Door.of(4, ShopUnits.KILOGRAM), after, Rounding.HALF_UP), Rounding.HALF_UP);

        assertThat(line.price()).isEqualTo(Money.parse("USD 0.00"));
        assertThat(line.usage()).isEqualTo(Money.parse("USD 0.34"));
        assertThat(line.leftOver()).isEqualTo(Money.parse("USD -0.01"));
        assertThat(line.total()).isEqualTo(Money.parse("USD 0.33"));
        WorkingCheck.check(line.working());
    }

    @Test
    void of_linesThatDoNotMatch_refused() {
        PriceBuildUp estimate = PriceBuildUp.of(List.of(material(1, "USD 1.00")), Read.time("0 h"), RULES);
        Money none = Money.zero(CurrencyUnit.USD);
        CostLine pieces = CostLine.each(LineKind.FILM, "Material", 2, Money.parse("USD 3"));
        CostLine euro = CostLine.each(LineKind.FILM, "Film", 2, Money.parse("EUR 3"));

        assertThatThrownBy(() -> CostVariance.of(estimate, List.of(pieces), Read.time("0 h"), none)).isInstanceOf(RefusedException.class)
                .hasMessageContaining("must be of the kind, measure and currency");
        assertThatThrownBy(() -> CostVariance.of(estimate, List.of(euro), Read.time("0 h"), none)).isInstanceOf(RefusedException.class);
        assertThatThrownBy(() -> CostVariance.of(estimate, List.of(pieces, pieces), Read.time("0 h"), none)).isInstanceOf(RefusedException.class)
                .hasMessageContaining("twice");
        assertThatThrownBy(() -> CostVariance.of(estimate, List.of(), Read.time("0 h"), Money.zero(CurrencyUnit.EUR))).isInstanceOf(RefusedException.class);
    }
}
