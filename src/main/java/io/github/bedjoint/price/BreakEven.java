package io.github.bedjoint.price;

import io.github.bedjoint.units.Measure;
import io.github.bedjoint.working.Explained;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Working;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.joda.money.Money;

/**
 * The price at which a job neither earns nor loses money, and how far the quoted price is from it. Immutable.
 */
public final class BreakEven implements Explained {
    private static final Source SOURCE = Source.handbook("cost accounting: the price at which profit is nil");
    private static final Symbol COST = new Symbol("C", Measure.MONEY, "total cost");
    private static final Symbol SPARE = new Symbol("S", Measure.MONEY, "what the net price has above the cost");

    static final Formula LIST = Formula.of(
            "price.break-even-list", "Break-even price before discount", new Symbol("L_0", Measure.MONEY, "break-even list price, unrounded"),
            "C / (1 - d)", SOURCE, COST, Symbol.number("d", "discount share"));
    static final Formula ABOVE = Formula.of(
            "price.spare", "Net price above cost", SPARE, "N - C", SOURCE, new Symbol("N", Measure.MONEY, "net price"), COST);
    static final Formula TIMES = Formula.of(
            "price.break-even-times", "How often something may happen before the job loses money",
            Symbol.number("k", "how often until break-even"), "S / c", SOURCE, SPARE, new Symbol("c", Measure.MONEY, "what it costs each time"));

    private final PriceBuildUp price;
    private final BigDecimal listValue;
    private final List<PriceEffect> effects;

    private BreakEven(PriceBuildUp price, List<PriceEffect> effects) {
        this.price = price;
        this.effects = effects;
        this.listValue = price.cost().getAmount().divide(BigDecimal.ONE.subtract(price.rules().discount()), MathContext.DECIMAL128);
    }

    /**
     * The break-even of a price.
     *
     * @param price the price
     * @return where it breaks even
     */
    public static BreakEven of(PriceBuildUp price) {
        return new BreakEven(price, List.of());
    }

    /**
     * The same explaining also how often something may happen before the job loses money.
     *
     * @param effect one more hour, metre or roll
     * @return a new break-even
     */
    public BreakEven against(PriceEffect effect) {
        List<PriceEffect> more = new ArrayList<>(effects);
        more.add(effect);
        return new BreakEven(price, List.copyOf(more));
    }

    /**
     * The least net price that covers the cost.
     *
     * @return the total cost
     */
    public Money net() {
        return price.cost();
    }

    /**
     * The least price before discount that covers the cost.
     *
     * @return total cost over one less discount, rounded up to the currency
     */
    public Money list() {
        return Money.of(price.rules().currency(), listValue.round(new MathContext(12)), RoundingMode.UP);
    }

    /**
     * What the quoted net price has above the cost.
     *
     * @return the spare amount; negative where the job loses money
     */
    public Money spare() {
        return price.net().minus(price.cost());
    }

    /**
     * How often something may happen before the job loses money at the quoted price.
     *
     * @param effect one more hour, metre or roll
     * @return the spare amount over what it costs each time; infinite where it costs nothing
     */
    public double times(PriceEffect effect) {
        double each = effect.cost().getAmount().doubleValue();
        return each == 0 ? Double.POSITIVE_INFINITY : spare().getAmount().doubleValue() / each;
    }

    @Override
    public Working working() {
        BigDecimal above = spare().getAmount();
        Working spareWorking = Working.of(ABOVE, above, price.net().getAmount(), price.cost().getAmount());
        List<Working> parts = new ArrayList<>();
        parts.add(Working.of(LIST, listValue, price.cost().getAmount(), price.rules().discount()));
        parts.add(spareWorking);
        for (PriceEffect effect : effects) {
            if (!effect.cost().isZero()) {
                parts.add(Working.of(TIMES, times(effect), above, effect.cost().getAmount()).whose(effect.title()).because(spareWorking));
            }
        }
        return Working.group("Break-even", parts).in(price.rules().currency());
    }

    /** Break-even price before discount and what the quoted price has above the cost. */
    @Override
    public String toString() {
        return "breaks even at " + list() + " before discount and tax; " + spare() + " to spare";
    }
}
