package io.github.bedjoint.labour;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.RefusedException;
import java.util.EnumMap;
import java.util.Map;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * How much of each {@link Driver} there is; what is not given is none.
 *
 * <p>Stored in inner units: square metres, metres, pieces. Immutable.
 */
public final class Amounts {
    private static final Range ANY = Range.closed(0, 1e6);
    private static final Amounts NONE = new Amounts(new EnumMap<>(Driver.class));

    private final EnumMap<Driver, Double> inner;

    private Amounts(EnumMap<Driver, Double> inner) {
        this.inner = inner;
    }

    /**
     * Nothing of anything.
     *
     * @return amounts that are all zero
     */
    public static Amounts none() {
        return NONE;
    }

    /**
     * The same with an area.
     *
     * @param driver a driver measured by area
     * @param area   zero to 1 000 000 m2
     * @return new amounts
     * @throws RefusedException if the driver is not an area or the value cannot be accepted
     */
    public Amounts withArea(Driver driver, Quantity<Area> area) {
        fit(driver, Measure.AREA);
        return put(driver, Door.areaM2(name(driver), area, ANY));
    }

    /**
     * The same with a length.
     *
     * @param driver a driver measured by length
     * @param length zero to 1 000 000 m
     * @return new amounts
     * @throws RefusedException if the driver is not a length or the value cannot be accepted
     */
    public Amounts withLength(Driver driver, Quantity<Length> length) {
        fit(driver, Measure.LENGTH);
        return put(driver, Door.lengthM(name(driver), length, ANY));
    }

    /**
     * The same with a count, which need not be whole: half a corner is a corner shared by two walls.
     *
     * @param driver a driver that is counted
     * @param count  zero to 1 000 000
     * @return new amounts
     * @throws RefusedException if the driver is not counted or the value cannot be accepted
     */
    public Amounts withCount(Driver driver, double count) {
        fit(driver, Measure.NUMBER);
        return put(driver, Door.number(name(driver), count, ANY));
    }

    /**
     * The same with panels: how many in all, and how many of them need two people.
     *
     * @param all    all panels, zero or more
     * @param forTwo those that need two people, at most {@code all}
     * @return new amounts in which the three panel drivers agree
     * @throws RefusedException if a count cannot be accepted
     */
    public Amounts withPanels(int all, int forTwo) {
        Door.count("panels", all, 0, 1_000_000);
        Door.count("panels for two", forTwo, 0, all);
        return put(Driver.PANEL, all).put(Driver.PANEL_FOR_ONE, all - forTwo).put(Driver.PANEL_FOR_TWO, forTwo);
    }

    /**
     * The same with an amount as a plain number in the driver's inner unit, for callers on higher floors.
     *
     * @param driver the driver
     * @param amount zero to 1 000 000 of its inner unit
     * @return new amounts
     * @throws RefusedException if the value cannot be accepted
     */
    public Amounts withInner(Driver driver, double amount) {
        return put(driver, Door.number(name(driver), amount, ANY));
    }

    /**
     * How much there is of a driver, in its inner unit.
     *
     * @param driver the driver
     * @return square metres, metres or pieces; zero when not given
     */
    public double inner(Driver driver) {
        return inner.getOrDefault(driver, 0.0);
    }

    /**
     * All amounts that were given.
     *
     * @return an unmodifiable map in inner units
     */
    public Map<Driver, Double> asMap() {
        return Map.copyOf(inner);
    }

    private Amounts put(Driver driver, double amount) {
        EnumMap<Driver, Double> more = new EnumMap<>(inner);
        more.put(driver, amount + 0.0);
        return new Amounts(more);
    }

    private static void fit(Driver driver, Measure measure) {
        if (driver.measure() != measure) {
            throw new RefusedException(
                    "driver", driver.name(), "must be measured as " + measure.name(), "Maybe another with... method was meant.");
        }
    }

    private static String name(Driver driver) {
        return driver.meaning();
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Amounts that && inner.equals(that.inner);
    }

    @Override
    public int hashCode() {
        return inner.hashCode();
    }

    /** The amounts in inner units: {@code {VISIBLE_AREA=12.0, PANEL=4.0}}. */
    @Override
    public String toString() {
        return inner.toString();
    }
}
