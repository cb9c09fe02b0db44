package io.github.bedjoint.film;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.units.VolumePerArea;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Working;
import java.util.Objects;
import javax.measure.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * What is spread on the wall itself, such as primer or cleaner: it wets the surface along the texture, so it goes by developed area.
 *
 * <p>Without more it is spread once. Consumption is stored in cubic metres per square metre. Immutable.
 */
public final class Coating {
    /** Volume for a developed area. */
    public static final Formula VOLUME = Formula.of(
            "film.coating",
            "Primer or cleaner",
            new Symbol("V_c", Measure.VOLUME, "volume of primer or cleaner"),
            "A_d * q * n",
            Source.geometry("volume per area times area along the texture, for each coat"),
            new Symbol("A_d", Measure.AREA, "developed area"),
            new Symbol("q", Measure.VOLUME_PER_AREA, "consumption on a flat surface, for each coat"),
            Symbol.number("n", "number of coats"));

    private static final Range CONSUMPTION = Range.above(0, 0.01);

    private final String name;
    private final double m3PerM2;
    private final int coats;

    private Coating(String name, double m3PerM2, int coats) {
        this.name = name;
        this.m3PerM2 = m3PerM2;
        this.coats = coats;
    }

    /**
     * A coating spread once.
     *
     * @param name        what the shop calls it
     * @param consumption volume for an area of flat surface, above 0, at most 10 L per square metre; from the data sheet
     * @return the coating
     * @throws io.github.bedjoint.units.RefusedException if the name is blank or the consumption out of range
     */
    public static Coating of(String name, Quantity<VolumePerArea> consumption) {
        return new Coating(
                Door.text("coating name", name), Door.in(Measure.VOLUME_PER_AREA, "consumption", consumption, CONSUMPTION), 1);
    }

    /**
     * The same spread several times.
     *
     * @param number how many times, 1 to 20
     * @return the coating
     * @throws io.github.bedjoint.units.RefusedException if the number is out of range
     */
    public Coating withCoats(int number) {
        return new Coating(name, m3PerM2, Door.count("coats", number, 1, 20));
    }

    /**
     * The volume for an area by {@link #VOLUME}.
     *
     * @param developedM2 the area along the texture in square metres, 0 or more
     * @return cubic metres
     */
    public double volumeM3(double developedM2) {
        return developedM2 * m3PerM2 * coats;
    }

    /**
     * How a volume came about.
     *
     * @param developedM2 the area along the texture in square metres
     * @return the working of {@link #volumeM3} for that area
     */
    public Working working(double developedM2) {
        return Working.of(VOLUME, volumeM3(developedM2), developedM2, m3PerM2, coats).whose(name);
    }

    /**
     * What the shop calls it.
     *
     * @return the name
     */
    public String name() {
        return name;
    }

    /**
     * Consumption on a flat surface, for each coat.
     *
     * @return cubic metres per square metre
     */
    public double m3PerM2() {
        return m3PerM2;
    }

    /**
     * How many times it is spread.
     *
     * @return 1 or more
     */
    public int coats() {
        return coats;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Coating that
                && name.equals(that.name)
                && Double.compare(m3PerM2, that.m3PerM2) == 0
                && coats == that.coats;
    }

    @Override
    public int hashCode() {
        return Objects.hash(name, m3PerM2, coats);
    }

    /** Name, consumption and coats: {@code Sample primer, 80 mL/m², 2 coats}. */
    @Override
    public String toString() {
        return name + ", " + Measure.VOLUME_PER_AREA.print(m3PerM2, UnitStyle.METRIC) + ", " + coats + (coats == 1 ? " coat" : " coats");
    }
}
