package io.github.bedjoint.price;

import io.github.bedjoint.units.Measure;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Working;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * The one step that turns an exact amount into money of a currency.
 *
 * <p>The amount is first brought to twelve significant digits, so that a quantity that came through feet and one that came through
 * metres fall on the same side of a half cent; then it is rounded once, by a named mode, to the currency's decimals.
 */
public enum Rounding {
    /** To the nearest, halves away from zero: Regulation (EC) 1103/97, article 5. */
    HALF_UP(RoundingMode.HALF_UP),
    /** To the nearest, halves to the even neighbour. */
    HALF_EVEN(RoundingMode.HALF_EVEN),
    /** Away from zero. */
    UP(RoundingMode.UP),
    /** Towards zero. */
    DOWN(RoundingMode.DOWN);

    private static final MathContext SIG12 = new MathContext(12, RoundingMode.HALF_EVEN);
    private static final Source SOURCE = Source.standard("java.math.RoundingMode; halves up as Regulation (EC) 1103/97 art. 5");
    private static final Map<Rounding, Formula> FORMULAS = new EnumMap<>(Rounding.class);

    static {
        Arrays.stream(values()).forEach(rounding -> FORMULAS.put(rounding, rounding.formula()));
    }

    private final RoundingMode mode;

    Rounding(RoundingMode mode) {
        this.mode = mode;
    }

    private Formula formula() {
        String name = name().toLowerCase(Locale.ROOT);
        return Formula.of(
                "price.rounded-" + name.replace('_', '-'),
                "Amount, rounded " + name.replace('_', ' '),
                new Symbol("a", Measure.MONEY, "amount"),
                "round_" + name + "(sig12(v), d)",
                SOURCE,
                new Symbol("v", Measure.MONEY, "unrounded amount"),
                Symbol.number("d", "decimals of the currency"));
    }

    Money round(CurrencyUnit currency, BigDecimal value) {
        return Money.of(currency, value.round(SIG12), mode);
    }

    Working working(Money rounded, BigDecimal value) {
        return Working.of(
                FORMULAS.get(this), rounded.getAmount(), value, BigDecimal.valueOf(rounded.getCurrencyUnit().getDecimalPlaces()));
    }
}
