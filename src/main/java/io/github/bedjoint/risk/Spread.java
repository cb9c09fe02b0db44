package io.github.bedjoint.risk;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.working.Explained;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Working;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;
import javax.measure.Quantity;
import org.apache.commons.rng.UniformRandomProvider;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;

/**
 * What a value may be and how likely: three points (triangular or PERT), a normal curve with a lower limit, or a list.
 *
 * <p>Stored are the points in the inner unit. A plain number is a factor, a ratio, a share or a chance. Equal outer points are a fixed
 * value. Draws from curves are brought to the seven digits of a {@code float}, so that they are the same on every machine. Immutable.
 */
public final class Spread implements Explained {
    private static final Range ANY = Range.closed(-1e9, 1e9);
    private static final List<Measure> KINDS = List.of(
            Measure.NUMBER, Measure.LENGTH, Measure.AREA, Measure.TIME, Measure.MASS, Measure.VOLUME, Measure.TIME_PER_AREA,
            Measure.TIME_PER_LENGTH, Measure.MASS_PER_AREA, Measure.SPEED);
    private static final Symbol LOW = Symbol.number("a", "least value, in the inner unit");
    private static final Symbol MODE = Symbol.number("m", "most likely value, in the inner unit");
    private static final Symbol HIGH = Symbol.number("b", "greatest value, in the inner unit");
    private static final Symbol MEAN = Symbol.number("mu", "mean, in the inner unit");
    private static final Symbol DEVIATION = Symbol.number("s", "standard deviation, in the inner unit");
    private static final Source EXACT = Source.handbook("moments of the triangular and the beta distribution");

    static final Formula TRIANGULAR_MEAN =
            Formula.of("risk.triangular-mean", "Mean of a triangular range", MEAN, "(a + m + b) / 3", EXACT, LOW, MODE, HIGH);
    static final Formula TRIANGULAR_DEVIATION = Formula.of(
            "risk.triangular-deviation", "Standard deviation of a triangular range", DEVIATION,
            "sqrt((a^2 + m^2 + b^2 - a * m - a * b - m * b) / 18)", EXACT, LOW, MODE, HIGH);
    static final Formula PERT_MEAN = Formula.of("risk.pert-mean", "Mean of a PERT range", MEAN, "(a + 4 * m + b) / 6", EXACT, LOW, MODE, HIGH);
    static final Formula PERT_DEVIATION = Formula.of(
            "risk.pert-deviation", "Standard deviation of a PERT range", DEVIATION, "sqrt((mu - a) * (b - mu) / 7)", EXACT, MEAN, LOW, HIGH);

    private enum Kind {
        TRIANGULAR,
        PERT,
        NORMAL,
        LIST
    }

    private final Kind kind;
    private final Measure measure;
    private final @Nullable CurrencyUnit currency;
    private final List<Double> points;
    private final Shape shape;

    private Spread(Kind kind, Points given) {
        this.kind = kind;
        this.measure = given.measure;
        this.currency = given.currency;
        this.points = Arrays.stream(given.inner).boxed().toList();
        double[] p = given.inner;
        this.shape = switch (kind) {
            case TRIANGULAR -> Shape.ThreePoints.triangular(p[0], inOrder(p), p[2]);
            case PERT -> Shape.ThreePoints.pert(p[0], inOrder(p), p[2]);
            case NORMAL -> bell(p[0], p[1], p[2]);
            case LIST -> new Shape.Listed(points);
        };
    }

    /** Numbers in the inner unit of a measure. */
    private record Points(Measure measure, @Nullable CurrencyUnit currency, double[] inner) {

        static Points numbers(double... values) {
            for (double value : values) {
                Door.number("range", value, ANY);
            }
            return new Points(Measure.NUMBER, null, values);
        }

        static <Q extends Quantity<Q>> Points of(List<Quantity<Q>> values) {
            some(values);
            Measure kind = KINDS.stream()
                    .filter(measure -> measure.unit().isCompatible(values.get(0).getUnit()))
                    .findFirst()
                    .orElseThrow(() -> new RefusedException(
                            "range", values.get(0).toString(), "must be a kind of quantity that jobs are made of", "Maybe use ShopUnits."));
            return new Points(kind, null, values.stream().mapToDouble(value -> Door.in(kind, "range", value, ANY)).toArray());
        }

        static Points money(List<Money> values) {
            some(values);
            CurrencyUnit currency = values.get(0).getCurrencyUnit();
            if (values.stream().anyMatch(value -> !value.getCurrencyUnit().equals(currency))) {
                throw new RefusedException("range", values.toString(), "must be in one currency", "Maybe convert it first.");
            }
            return new Points(
                    Measure.MONEY, currency, values.stream().mapToDouble(value -> value.getAmount().doubleValue()).toArray());
        }

        private static void some(List<?> values) {
            if (values.isEmpty()) {
                throw new RefusedException("range", "empty", "must hold at least one value", "Maybe the list is missing.");
            }
        }
    }

    /** The middle point, once all three are known to stand in order. */
    private static double inOrder(double[] points) {
        if (!(points[0] <= points[1] && points[1] <= points[2])) {
            throw new RefusedException(
                    "range", points[0] + ", " + points[1] + ", " + points[2], "must be least, most likely, greatest, in this order",
                    "Maybe two of them are swapped.");
        }
        return points[1];
    }

    private static Shape bell(double mean, double deviation, double least) {
        Door.number("standard deviation", deviation, Range.closed(0, 1e9));
        if (least > mean) {
            throw new RefusedException(
                    "limit", Double.toString(least), "must not be above the mean " + mean, "Maybe a triangular range says it better.");
        }
        return deviation == 0 ? new Shape.Fixed(mean) : new Shape.Normal(mean, deviation, least);
    }

    /**
     * A triangular range of numbers.
     *
     * @param low  the least, from minus to plus a thousand million
     * @param mode the most likely, not below the least
     * @param high the greatest, not below the most likely
     * @return the range
     * @throws RefusedException if they are out of order
     */
    public static Spread triangular(double low, double mode, double high) {
        return new Spread(Kind.TRIANGULAR, Points.numbers(low, mode, high));
    }

    /**
     * A triangular range of quantities.
     *
     * @param low  the least
     * @param mode the most likely, not below the least
     * @param high the greatest, not below the most likely
     * @param <Q>  the kind of quantity
     * @return the range
     * @throws RefusedException if they are out of order or of a kind that no job is made of
     */
    public static <Q extends Quantity<Q>> Spread triangular(Quantity<Q> low, Quantity<Q> mode, Quantity<Q> high) {
        return new Spread(Kind.TRIANGULAR, Points.of(List.of(low, mode, high)));
    }

    /**
     * A triangular range of money.
     *
     * @param low  the least
     * @param mode the most likely, not below the least
     * @param high the greatest, not below the most likely
     * @return the range
     * @throws RefusedException if they are out of order or of several currencies
     */
    public static Spread triangular(Money low, Money mode, Money high) {
        return new Spread(Kind.TRIANGULAR, Points.money(List.of(low, mode, high)));
    }

    /**
     * A PERT range of numbers: smoother than the triangular and with less weight at the ends.
     *
     * @param low  the least, from minus to plus a thousand million
     * @param mode the most likely, not below the least
     * @param high the greatest, not below the most likely
     * @return the range
     * @throws RefusedException if they are out of order
     */
    public static Spread pert(double low, double mode, double high) {
        return new Spread(Kind.PERT, Points.numbers(low, mode, high));
    }

    /**
     * A PERT range of quantities.
     *
     * @param low  the least
     * @param mode the most likely, not below the least
     * @param high the greatest, not below the most likely
     * @param <Q>  the kind of quantity
     * @return the range
     * @throws RefusedException if they are out of order or of a kind that no job is made of
     */
    public static <Q extends Quantity<Q>> Spread pert(Quantity<Q> low, Quantity<Q> mode, Quantity<Q> high) {
        return new Spread(Kind.PERT, Points.of(List.of(low, mode, high)));
    }

    /**
     * A PERT range of money.
     *
     * @param low  the least
     * @param mode the most likely, not below the least
     * @param high the greatest, not below the most likely
     * @return the range
     * @throws RefusedException if they are out of order or of several currencies
     */
    public static Spread pert(Money low, Money mode, Money high) {
        return new Spread(Kind.PERT, Points.money(List.of(low, mode, high)));
    }

    /**
     * A normal curve of numbers; draws below the limit are drawn again and counted.
     *
     * @param mean      the mean before draws are thrown away
     * @param deviation the standard deviation, not negative
     * @param least     the limit, not above the mean
     * @return the range
     * @throws RefusedException if the deviation is negative or the limit above the mean
     */
    public static Spread normal(double mean, double deviation, double least) {
        return new Spread(Kind.NORMAL, Points.numbers(mean, deviation, least));
    }

    /**
     * A normal curve of quantities; draws below the limit are drawn again and counted.
     *
     * @param mean      the mean before draws are thrown away
     * @param deviation the standard deviation, not negative
     * @param least     the limit, not above the mean
     * @param <Q>       the kind of quantity
     * @return the range
     * @throws RefusedException if the deviation is negative or the limit above the mean
     */
    public static <Q extends Quantity<Q>> Spread normal(Quantity<Q> mean, Quantity<Q> deviation, Quantity<Q> least) {
        return new Spread(Kind.NORMAL, Points.of(List.of(mean, deviation, least)));
    }

    /**
     * Numbers that are equally likely; one that stands twice is twice as likely.
     *
     * @param values at least one
     * @return the range
     * @throws RefusedException if there is none
     */
    public static Spread list(double... values) {
        Points.some(Arrays.stream(values).boxed().toList());
        return new Spread(Kind.LIST, Points.numbers(values));
    }

    /**
     * Quantities that are equally likely.
     *
     * @param values at least one
     * @param <Q>    the kind of quantity
     * @return the range
     * @throws RefusedException if there is none
     */
    public static <Q extends Quantity<Q>> Spread list(List<Quantity<Q>> values) {
        return new Spread(Kind.LIST, Points.of(values));
    }

    /**
     * Amounts of money that are equally likely.
     *
     * @param values at least one, all in one currency
     * @return the range
     * @throws RefusedException if there is none, or they are of several currencies
     */
    public static Spread list(Money... values) {
        return new Spread(Kind.LIST, Points.money(List.of(values)));
    }

    /**
     * What kind of value it is.
     *
     * @return the measure in whose inner unit draws are made
     */
    public Measure measure() {
        return measure;
    }

    /** The currency of a range of money. */
    @Nullable CurrencyUnit currency() {
        return currency;
    }

    /**
     * The exact mean.
     *
     * @return the mean in the inner unit
     */
    public double mean() {
        return shape.mean();
    }

    /**
     * The exact variance; of a list, of its values as they stand.
     *
     * @return the variance in the square of the inner unit
     */
    public double variance() {
        return shape.variance();
    }

    /** One value in the inner unit. */
    double draw(UniformRandomProvider random, Shape.Redraws redraws) {
        return shape.draw(random, redraws);
    }

    Shape shape() {
        return shape;
    }

    /** Mean and standard deviation by their formulas, for the three-point ranges. */
    @Override
    public Working working() {
        if (kind == Kind.NORMAL || kind == Kind.LIST) {
            return Working.group(this + ": mean " + mean() + ", variance " + variance(), List.of());
        }
        double a = points.get(0);
        double m = points.get(1);
        double b = points.get(2);
        double deviation = Math.sqrt(variance());
        return kind == Kind.TRIANGULAR
                ? Working.group(toString(), List.of(
                        Working.of(TRIANGULAR_MEAN, mean(), a, m, b), Working.of(TRIANGULAR_DEVIATION, deviation, a, m, b)))
                : Working.group(toString(), List.of(Working.of(PERT_MEAN, mean(), a, m, b), Working.of(PERT_DEVIATION, deviation, mean(), a, b)));
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Spread that
                && kind == that.kind
                && measure == that.measure
                && Objects.equals(currency, that.currency)
                && points.equals(that.points);
    }

    @Override
    public int hashCode() {
        return Objects.hash(kind, measure, currency, points);
    }

    /** Kind and points in metric units: {@code triangular 8 min/m², 10 min/m², 15 min/m²}. */
    @Override
    public String toString() {
        String code = currency == null ? "" : currency.getCode();
        return kind.name().toLowerCase(Locale.ROOT) + " "
                + points.stream().map(point -> measure.print(point, UnitStyle.METRIC).replace("¤", code)).collect(Collectors.joining(", "));
    }
}
