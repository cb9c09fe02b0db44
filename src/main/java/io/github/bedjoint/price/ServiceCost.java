package io.github.bedjoint.price;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.PriceRate;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.ShopUnits;
import io.github.bedjoint.working.Explained;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Working;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import org.joda.money.BigMoney;
import org.joda.money.Money;

/**
 * What a square metre costs, and what it costs for each year that the film stays up. Immutable.
 *
 * <p>The service life is the shop's or the film maker's figure; there is no default. Removal belongs into the amount if it is to be compared.
 */
public final class ServiceCost implements Explained {
    private static final Symbol AMOUNT = new Symbol("N", Measure.MONEY, "amount");
    private static final Symbol AREA = new Symbol("A", Measure.AREA, "area");

    static final Formula PER_AREA = Formula.of(
            "price.per-area", "Cost of a square metre", new Symbol("p", Measure.MONEY_PER_AREA, "cost of an area"), "N / A",
            Source.geometry("definition"), AMOUNT, AREA);
    static final Formula PER_AREA_AND_YEAR = Formula.of(
            "price.per-area-and-year", "Cost of a square metre for each year of service life",
            new Symbol("p_y", Measure.MONEY_PER_AREA, "cost of an area for each year"), "N / (A * y)", Source.geometry("definition"), AMOUNT, AREA,
            Symbol.number("y", "years of service life"));

    private final Money amount;
    private final double areaM2;
    private final double years;

    private ServiceCost(Money amount, double areaM2, double years) {
        this.amount = amount;
        this.areaM2 = areaM2;
        this.years = years;
    }

    /**
     * The cost of an area over its service life.
     *
     * @param amount the price or cost, such as the net price
     * @param area   the area it pays for, above 0
     * @param years  service life in years, above 0, at most 100
     * @return the cost
     * @throws io.github.bedjoint.units.RefusedException if area or years are out of range
     */
    public static ServiceCost of(Money amount, Quantity<Area> area, double years) {
        return new ServiceCost(
                amount, Door.areaM2("area", area, Range.above(0, 1e6)), Door.number("service life in years", years, Range.above(0, 100)));
    }

    /**
     * The cost of a square metre.
     *
     * @return amount over area, to 34 digits
     */
    public PriceRate<Area> perArea() {
        return rate(1);
    }

    /**
     * The cost of a square metre for each year.
     *
     * @return amount over area and years, to 34 digits
     */
    public PriceRate<Area> perAreaAndYear() {
        return rate(years);
    }

    private PriceRate<Area> rate(double over) {
        BigDecimal each = amount.getAmount().divide(BigDecimal.valueOf(areaM2).multiply(BigDecimal.valueOf(over)), MathContext.DECIMAL64);
        return PriceRate.of(BigMoney.of(amount.getCurrencyUnit(), each), ShopUnits.SQUARE_METRE);
    }

    @Override
    public Working working() {
        BigDecimal paid = amount.getAmount();
        return Working.group(
                        "Cost of a square metre",
                        List.of(
                                Working.of(PER_AREA, perArea().perInner().doubleValue(), paid, areaM2),
                                Working.of(PER_AREA_AND_YEAR, perAreaAndYear().perInner().doubleValue(), paid, areaM2, years)))
                .in(amount.getCurrencyUnit());
    }

    /** The cost of a square metre and for each year, rounded to the currency for reading. */
    @Override
    public String toString() {
        return shown(perArea()) + " for a square metre, " + shown(perAreaAndYear()) + " for each year";
    }

    private static Money shown(PriceRate<Area> rate) {
        return Rounding.HALF_UP.round(rate.currency(), rate.perInner());
    }
}
