package io.github.bedjoint.film;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.PriceRate;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.units.VolumePerArea;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Working;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Volume;
import org.jspecify.annotations.Nullable;

/**
 * An ink: its family, how much of it an area takes that is printed all over, what share of the area is printed, and its price.
 *
 * <p>Consumption is stored in cubic metres per square metre. Immutable.
 */
public final class Ink {
    /** Volume of ink on an area. */
    public static final Formula VOLUME = Formula.of(
            "film.ink",
            "Ink",
            new Symbol("V_ink", Measure.VOLUME, "volume of ink"),
            "A_print * c * q",
            Source.geometry("volume per area times area"),
            new Symbol("A_print", Measure.AREA, "area of the print"),
            Symbol.number("c", "share of that area which is printed"),
            new Symbol("q", Measure.VOLUME_PER_AREA, "ink per printed area"));

    private static final Range CONSUMPTION = Range.above(0, 0.01);

    private final InkFamily family;
    private final double m3PerM2;
    private final double coverage;
    private final PriceRate<Volume> price;

    private Ink(InkFamily family, double m3PerM2, double coverage, PriceRate<Volume> price) {
        this.family = family;
        this.m3PerM2 = m3PerM2;
        this.coverage = coverage;
        this.price = price;
    }

    /**
     * An ink that covers the whole print.
     *
     * @param family      its family
     * @param consumption ink per printed area, above 0, at most 10 L per square metre
     * @param price       its price per volume
     * @return the ink
     * @throws io.github.bedjoint.units.RefusedException if the consumption is out of range
     */
    public static Ink of(InkFamily family, Quantity<VolumePerArea> consumption, PriceRate<Volume> price) {
        return new Ink(
                Objects.requireNonNull(family),
                Door.in(Measure.VOLUME_PER_AREA, "ink consumption", consumption, CONSUMPTION),
                1,
                Objects.requireNonNull(price));
    }

    /**
     * The same for a picture that leaves a part of the film white.
     *
     * @param share the share of the print's area that is printed, 0 to 1
     * @return the ink
     * @throws io.github.bedjoint.units.RefusedException if the share is out of range
     */
    public Ink withCoverage(double share) {
        return new Ink(family, m3PerM2, Door.number("ink coverage", share, Range.SHARE), price);
    }

    /**
     * The same at another price.
     *
     * @param other its price per volume
     * @return the ink
     */
    public Ink withPrice(PriceRate<Volume> other) {
        return new Ink(family, m3PerM2, coverage, Objects.requireNonNull(other));
    }

    /**
     * The volume for an area by {@link #VOLUME}.
     *
     * @param areaM2 the area of the print in square metres, 0 or more
     * @return cubic metres
     */
    public double volumeM3(double areaM2) {
        return areaM2 * coverage * m3PerM2;
    }

    /**
     * How a volume came about.
     *
     * @param areaM2 the area of the print in square metres
     * @return the working of {@link #volumeM3} for that area
     */
    public Working working(double areaM2) {
        return Working.of(VOLUME, volumeM3(areaM2), areaM2, coverage, m3PerM2);
    }

    /**
     * The family of the ink.
     *
     * @return the family
     */
    public InkFamily family() {
        return family;
    }

    /**
     * Ink per printed area.
     *
     * @return cubic metres per square metre
     */
    public double m3PerM2() {
        return m3PerM2;
    }

    /**
     * The share of the print's area that is printed.
     *
     * @return 0 to 1
     */
    public double coverage() {
        return coverage;
    }

    /**
     * The price of the ink.
     *
     * @return the price per volume
     */
    public PriceRate<Volume> price() {
        return price;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Ink that
                && family == that.family
                && Double.compare(m3PerM2, that.m3PerM2) == 0
                && Double.compare(coverage, that.coverage) == 0
                && price.equals(that.price);
    }

    @Override
    public int hashCode() {
        return Objects.hash(family, m3PerM2, coverage, price);
    }

    /** Family, consumption and price: {@code LATEX, 12 mL/m², EUR 95/L}. */
    @Override
    public String toString() {
        return family + ", " + Measure.VOLUME_PER_AREA.print(m3PerM2, UnitStyle.METRIC) + ", " + price;
    }
}
