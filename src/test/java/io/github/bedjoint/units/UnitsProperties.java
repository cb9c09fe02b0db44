package io.github.bedjoint.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.RoundingMode;
import javax.measure.MetricPrefix;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.constraints.StringLength;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import tech.units.indriya.quantity.Quantities;

class UnitsProperties {
    private static final Range ANY = Range.closed(-1e9, 1e9);

    @Provide
    Arbitrary<Unit<Length>> lengths() {
        return Arbitraries.of(
                ShopUnits.METRE, ShopUnits.CENTIMETRE, ShopUnits.MILLIMETRE, ShopUnits.INCH, ShopUnits.FOOT, ShopUnits.YARD, ShopUnits.MIL,
                MetricPrefix.DECI(ShopUnits.METRE));
    }

    @Provide
    Arbitrary<String> priceUnits() {
        return Arbitraries.of("m", "mm", "in", "ft", "yd", "m2", "ft2", "yd2", "s", "min", "h", "kg", "lb", "L", "gal", "fl oz", "each");
    }

    /** Units do not matter: a length given in another unit, converted by JSR-385, is the same number at the door. */
    @Property
    void door_sameLengthInAnotherUnit_isTheSameNumber(
            @ForAll @DoubleRange(min = -10_000, max = 10_000) double value, @ForAll("lengths") Unit<Length> from, @ForAll("lengths") Unit<Length> to) {
        double direct = Door.lengthM("length", Quantities.getQuantity(value, from), ANY);
        double around = Door.lengthM("length", Quantities.getQuantity(value, from).to(to), ANY);
        assertThat(around).isCloseTo(direct, within(Math.abs(direct) * 1e-14));
    }

    @Property
    void door_feetAndMetresOnTheRuler_areTheSameDouble(@ForAll @IntRange(min = 0, max = 100_000) int sixteenths) {
        // 1/16 in = 1.5875 mm exactly, so the metres are written out in decimals.
        double inches = Door.lengthM("length", Read.length(sixteenths + "/16 in"), ANY);
        BigDecimal metres = new BigDecimal("0.0015875").multiply(BigDecimal.valueOf(sixteenths));
        assertThat(inches).isEqualTo(metres.doubleValue());
        assertThat(Door.lengthM("length", Read.length(metres.toPlainString() + " m"), ANY)).isEqualTo(inches);
    }

    @Property
    void door_outsideTheRange_isRefused(@ForAll double value) {
        Range range = Range.above(0, 10);
        if (value > 0 && value <= 10) {
            assertThat(Door.number("x", value, range)).isEqualTo(value);
        } else {
            assertThatThrownBy(() -> Door.number("x", value, range)).isInstanceOf(RefusedException.class);
        }
    }

    @Property
    void steps_upAndDown_holdTheLengthBetweenThem(@ForAll @DoubleRange(min = -10_000, max = 10_000) @Scale(9) double metres) {
        long up = Steps.up(metres);
        long down = Steps.down(metres);
        assertThat(up - down).isIn(0L, 1L);
        assertThat(Steps.toM(up)).isGreaterThanOrEqualTo(metres - 1.3e-10);
        assertThat(Steps.toM(down)).isLessThanOrEqualTo(metres + 1.3e-10);
        assertThat(Steps.down(-metres)).isEqualTo(-up);
    }

    @Property
    void steps_toMetresAndBack_areThemselves(@ForAll @LongRange(min = -800_000_000, max = 800_000_000) long steps) {
        assertThat(Steps.up(Steps.toM(steps))).isEqualTo(steps);
        assertThat(Steps.down(Steps.toM(steps))).isEqualTo(steps);
    }

    @Property
    void feetInches_printedAndRead_areWithinHalfASixteenth(@ForAll @LongRange(min = -800_000_000, max = 800_000_000) long steps) {
        double metres = Door.lengthM("length", Read.length(Print.feetInches(steps)), ANY);
        assertThat(Steps.isExact(metres)).isTrue();
        assertThat(Steps.up(metres) % 127).isZero();
        assertThat(Math.abs(Steps.up(metres) - steps)).isLessThanOrEqualTo(63);
    }

    @Property
    void cut_metric_readsBackWithinATwentiethOfAMillimetre(@ForAll @LongRange(min = -800_000_000, max = 800_000_000) long steps) {
        double metres = Door.lengthM("length", Read.length(Print.cut(steps, UnitStyle.METRIC)), ANY);
        assertThat(Math.abs(Steps.up(metres) - steps)).isLessThanOrEqualTo(4);
    }

    @Property
    void number_printed_isAPlainDecimalNearTheValue(@ForAll @DoubleRange(min = -1e9, max = 1e9) @Scale(9) double value) {
        String text = Print.number(value);
        assertThat(text).matches("-?(0|[1-9][0-9]*)(\\.[0-9]*[1-9])?").isNotEqualTo("-0");
        double tolerance = Math.abs(value) < 1 ? Math.abs(value) * 5.1e-6 : 5.1e-5;
        assertThat(Double.parseDouble(text)).isCloseTo(value, within(tolerance));
    }

    @Property
    void price_printedAndParsed_isEqual(
            @ForAll @BigRange(min = "0", max = "1000000000") @Scale(12) BigDecimal amount, @ForAll("priceUnits") String unit) {
        PriceRate<?> rate = PriceRate.of(BigMoney.of(CurrencyUnit.USD, amount), UnitTable.named(unit).unit());
        PriceRate<?> read = PriceRate.parse(rate.toString());
        assertThat(read).isEqualTo(rate).hasSameHashCodeAs(rate).hasToString(rate.toString());
        assertThat(read.amount().getAmount()).isEqualByComparingTo(amount);
    }

    /** Per yard and per 3 ft: x per foot is 3 x per yard, whatever x. */
    @Property
    void price_perFootAndPerYard_areEqual(@ForAll @BigRange(min = "0", max = "100000") @Scale(4) BigDecimal amount) {
        PriceRate<Length> foot = PriceRate.of(BigMoney.of(CurrencyUnit.EUR, amount), ShopUnits.FOOT);
        PriceRate<Length> yard = PriceRate.of(BigMoney.of(CurrencyUnit.EUR, amount.multiply(new BigDecimal(3))), ShopUnits.YARD);
        assertThat(foot).isEqualTo(yard).hasSameHashCodeAs(yard);
        BigDecimal tenYards = yard.times(Read.length("10 yd")).getAmount();
        assertThat(foot.times(Read.length("30 ft")).getAmount().setScale(10, RoundingMode.HALF_EVEN))
                .isEqualByComparingTo(tenYards.setScale(10, RoundingMode.HALF_EVEN));
    }

    /** Whatever is typed, a reader gives a quantity or refuses; it never fails in another way. */
    @Property
    void read_anyText_isReadOrRefused(@ForAll @StringLength(max = 40) String text) {
        assertReadOrRefused(text);
    }

    @Property
    void read_nearlyRightText_isReadOrRefused(@ForAll("nearly") String text) {
        assertReadOrRefused(text);
    }

    @Provide
    Arbitrary<String> nearly() {
        return Arbitraries.strings().withChars("0123456789./'\"′″ -,mftinydEURh²^\u00a0").ofMaxLength(16);
    }

    private static void assertReadOrRefused(String text) {
        for (Runnable read : new Runnable[] {
            () -> Read.length(text), () -> Read.area(text), () -> Read.timePerArea(text), () -> Read.money(text), () -> PriceRate.parse(text)
        }) {
            try {
                read.run();
            } catch (RefusedException refused) {
                assertThat(refused.limit()).isNotBlank();
                assertThat(refused.getMessage().chars()).noneMatch(Character::isISOControl);
            }
        }
    }

    @Property
    void print_anyMeasure_endsWithItsUnitAndHasNoExponent(@ForAll Measure measure, @ForAll UnitStyle style, @ForAll @DoubleRange(min = -1e6, max = 1e6) @Scale(9) double inner) {
        assertThat(measure.print(inner, style)).matches("(¤ )?-?[0-9]+(\\.[0-9]+)?( ?[^0-9.]+[²]?[^0-9.]*)?");
    }
}
