package io.github.bedjoint.film;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.Steps;
import io.github.bedjoint.units.UnitStyle;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * A laminate in rolls, put on the printed web before it is cut.
 *
 * <p>The roll's width is rounded down to whole steps. Immutable.
 */
public final class Laminate {
    private static final Range WIDTH = Range.above(0, 20);

    private final String name;
    private final long rollWidthSteps;

    private Laminate(String name, long rollWidthSteps) {
        this.name = name;
        this.rollWidthSteps = rollWidthSteps;
    }

    /**
     * A laminate.
     *
     * @param name      what the shop calls it
     * @param rollWidth width of the roll, above 0, at most 20 m
     * @return the laminate
     * @throws io.github.bedjoint.units.RefusedException if the name is blank or the width out of range
     */
    public static Laminate of(String name, Quantity<Length> rollWidth) {
        return new Laminate(Door.text("laminate name", name), Steps.down(Door.lengthM("laminate roll width", rollWidth, WIDTH)));
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
     * Width of the roll.
     *
     * @return whole steps, rounded down
     */
    public long rollWidthSteps() {
        return rollWidthSteps;
    }

    /**
     * Width of the roll as a quantity.
     *
     * @return the width in metres
     */
    public Quantity<Length> rollWidth() {
        return Steps.toLength(rollWidthSteps);
    }

    /**
     * Whether it is wide enough for the whole width of a film's roll, so that the edges of the print are sealed too.
     *
     * @param film the film it goes on
     * @return true when it is not narrower than the film's roll
     */
    public boolean covers(Film film) {
        return rollWidthSteps >= film.rollWidthSteps();
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Laminate that && name.equals(that.name) && rollWidthSteps == that.rollWidthSteps;
    }

    @Override
    public int hashCode() {
        return Objects.hash(name, rollWidthSteps);
    }

    /** Name and roll width: {@code Sample laminate, 1.3716 m}. */
    @Override
    public String toString() {
        return name + ", " + Measure.STEPS.print(rollWidthSteps, UnitStyle.METRIC);
    }
}
