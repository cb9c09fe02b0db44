package io.github.bedjoint.price;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Working;
import java.math.BigDecimal;
import java.math.MathContext;

/**
 * Profit, as a markup on cost or as a margin on price: margin m = k / (1 + k) for a markup k. The type names which, since the two are
 * often mixed up: a markup of 40 % is a margin of 28.6 %. Immutable.
 *
 * @param isMargin whether the share is of the price (margin) or of the cost (markup)
 * @param share    the share
 */
public record Profit(boolean isMargin, BigDecimal share) {
    private static final Symbol PRICE = new Symbol("P", Measure.MONEY, "price before rounding");
    private static final Symbol COST = new Symbol("C", Measure.MONEY, "total cost");
    static final Formula BY_MARGIN = Formula.of(
            "price.by-margin", "Price from margin", PRICE, "C / (1 - m)", Source.handbook("definition of gross margin on price"),
            COST, Symbol.number("m", "margin on price"));
    static final Formula BY_MARKUP = Formula.of(
            "price.by-markup", "Price from markup", PRICE, "C * (1 + k)", Source.handbook("definition of markup on cost"),
            COST, Symbol.number("k", "markup on cost"));

    /**
     * A margin on price.
     *
     * @param share 0.4 for 40 %, from 0 to below 1
     * @return the profit
     * @throws io.github.bedjoint.units.RefusedException if the share is out of range
     */
    public static Profit margin(double share) {
        return new Profit(true, PriceRules.exact(Door.number("margin", share, Range.BELOW_ONE)));
    }

    /**
     * A markup on cost.
     *
     * @param share 0.667 for 66.7 %, from 0 to 100
     * @return the profit
     * @throws io.github.bedjoint.units.RefusedException if the share is out of range
     */
    public static Profit markup(double share) {
        return new Profit(false, PriceRules.exact(Door.number("markup", share, Range.closed(0, 100))));
    }

    /**
     * The markup that gives the same price.
     *
     * @return the markup on cost as a share
     */
    public double asMarkup() {
        return isMargin ? share.doubleValue() / (1 - share.doubleValue()) : share.doubleValue();
    }

    /**
     * The margin that gives the same price.
     *
     * @return the margin on price as a share
     */
    public double asMargin() {
        return isMargin ? share.doubleValue() : share.doubleValue() / (1 + share.doubleValue());
    }

    BigDecimal price(BigDecimal cost) {
        return isMargin
                ? cost.divide(BigDecimal.ONE.subtract(share), MathContext.DECIMAL128)
                : cost.multiply(BigDecimal.ONE.add(share));
    }

    Working working(BigDecimal price, BigDecimal cost) {
        return Working.of(isMargin ? BY_MARGIN : BY_MARKUP, price, cost, share);
    }
}
