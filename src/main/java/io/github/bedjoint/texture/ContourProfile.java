package io.github.bedjoint.texture;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Print;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.working.Explained;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Working;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * A line across a wall as a contour gauge takes it off: points with their place along the line and their height, outwards positive.
 *
 * <p>Two points at the same place are an upright step. Stored in metres. Immutable.
 */
public final class ContourProfile implements Explained {
    static final Formula LENGTH = Formula.of(
            "texture.profile-length",
            "Length along a profile",
            new Symbol("P", Measure.LENGTH, "length along the profile"),
            "sum(p_i)",
            Source.geometry("straight pieces between the points"),
            new Symbol("p_i", Measure.LENGTH, "length of a piece"));
    /** Length along a profile to its straight length. */
    public static final Formula RATIO = Formula.of(
            "texture.profile",
            "Length ratio of a profile",
            Symbol.number("R", "length along the profile to its straight length"),
            "P / B",
            Source.geometry("polyline"),
            new Symbol("P", Measure.LENGTH, "length along the profile"),
            new Symbol("B", Measure.LENGTH, "straight length of the profile"));

    private static final Range PLACE = Range.closed(-1000, 1000);
    private static final Range UNIT = Range.closed(1e-9, 1000);
    /** A rim less than a nanometre under a straight line is a rim all the same, so that level hollows side by side stay apart. */
    private static final double LEVEL_M = 1e-9;
    /** What is steeper than 45 degrees may be a step; a slope of 45 degrees is none in every unit. */
    static final double STEEP = 1 + 1e-9;

    private final double[] places;
    private final double[] heights;
    private final double lengthM;
    private final Span worst;

    private ContourProfile(double[] places, double[] heights) {
        this.places = places;
        this.heights = heights;
        double sum = 0;
        for (double piece : pieces()) {
            sum += piece;
        }
        lengthM = sum;
        worst = worstSpan();
    }

    /**
     * A profile from its points.
     *
     * @param places  place of each point along the line, never going back, at least two of them apart
     * @param heights height of each point, outwards positive
     * @param unit    the unit of both
     * @return the profile
     * @throws RefusedException if there are fewer than two points, more of one than of the other, a value is not finite, or places go back
     */
    public static ContourProfile of(double[] places, double[] heights, Unit<Length> unit) {
        if (places.length < 2 || places.length != heights.length) {
            throw new RefusedException(
                    "profile",
                    places.length + " places and " + heights.length + " heights",
                    "must have as many heights as places, at least two",
                    "Maybe a pin was not read.");
        }
        double factor = Door.lengthM("unit", Door.of(1, unit), UNIT);
        double[] x = new double[places.length];
        double[] z = new double[places.length];
        for (int i = 0; i < places.length; i++) {
            x[i] = Door.number("place " + (i + 1), places[i] * factor, PLACE);
            z[i] = Door.number("height " + (i + 1), heights[i] * factor, PLACE);
            if (i > 0 && x[i] < x[i - 1]) {
                throw new RefusedException(
                        "place " + (i + 1), places[i] + " " + unit, "must not be before the one ahead of it", "Maybe the points are out of order.");
            }
        }
        if (x[x.length - 1] <= x[0]) {
            throw new RefusedException("profile", "0 m long", "must be longer than 0 m", "Maybe places and heights are swapped.");
        }
        return new ContourProfile(x, z);
    }

    private List<Double> pieces() {
        List<Double> pieces = new ArrayList<>();
        for (int i = 1; i < places.length; i++) {
            pieces.add(Math.hypot(places[i] - places[i - 1], heights[i] - heights[i - 1]));
        }
        return pieces;
    }

    /**
     * The hollow that a film has to stretch into most: a film drawn tight lies on the upper convex hull of the profile, and each
     * hollow under it is held at both its ends.
     */
    private Span worstSpan() {
        double[] along = new double[places.length];
        int[] hull = new int[places.length];
        int size = 0;
        for (int i = 0; i < places.length; i++) {
            along[i] = i == 0 ? 0 : along[i - 1] + Math.hypot(places[i] - places[i - 1], heights[i] - heights[i - 1]);
            while (size >= 2 && isUnder(hull[size - 2], hull[size - 1], i)) {
                size--;
            }
            hull[size++] = i;
        }
        Span most = new Span(0, 0, along[along.length - 1], along[along.length - 1]);
        for (int k = 1; k < size; k++) {
            int a = hull[k - 1];
            int b = hull[k];
            double chord = Math.hypot(places[b] - places[a], heights[b] - heights[a]);
            Span span = new Span(places[a], places[b], along[b] - along[a], chord);
            most = chord > 0 && span.stretch() > most.stretch() + 1e-12 ? span : most;
        }
        return most;
    }

    private boolean isUnder(int a, int b, int c) {
        double under = (places[b] - places[a]) * (heights[c] - heights[a]) - (heights[b] - heights[a]) * (places[c] - places[a]);
        return under > LEVEL_M * (places[c] - places[a]);
    }

    /**
     * Length along the profile to its straight length, by {@link #RATIO}.
     *
     * @return 1 or more
     */
    public double ratio() {
        return Math.max(1, lengthM / straightM());
    }

    /**
     * Place of each point along the line.
     *
     * @return metres, a new array
     */
    public double[] placesM() {
        return places.clone();
    }

    /**
     * Height of each point, outwards positive.
     *
     * @return metres, a new array
     */
    public double[] heightsM() {
        return heights.clone();
    }

    double lengthM() {
        return lengthM;
    }

    double straightM() {
        return places[places.length - 1] - places[0];
    }

    /** The hollow that asks for most stretch. */
    Span worst() {
        return worst;
    }

    /** Straight length over the number of pieces that have a length. */
    double meanPitchM() {
        int apart = 0;
        for (int i = 1; i < places.length; i++) {
            apart += places[i] > places[i - 1] ? 1 : 0;
        }
        return straightM() / apart;
    }

    /** The most that the points allow: pieces steeper than 45 degrees as upright steps. */
    double steppedRatio() {
        double sum = 0;
        for (int i = 1; i < places.length; i++) {
            double dx = places[i] - places[i - 1];
            double dz = Math.abs(heights[i] - heights[i - 1]);
            sum += dz > dx * STEEP ? dx + dz : Math.hypot(dx, dz);
        }
        return sum / straightM();
    }

    @Override
    public Working working() {
        return Working.of(RATIO, ratio(), lengthM, straightM()).because(Working.sum(LENGTH, lengthM, pieces()));
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof ContourProfile that
                && Arrays.equals(places, that.places)
                && Arrays.equals(heights, that.heights);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(places) + Arrays.hashCode(heights);
    }

    /** Number of points and straight length: {@code profile of 12 points over 0.2 m}. */
    @Override
    public String toString() {
        return "profile of " + places.length + " points over " + Measure.LENGTH.print(straightM(), UnitStyle.METRIC) + ", " + Print.fixed(ratio(), 4) + " as long";
    }

    /** A hollow from one place to another: length along the surface and straight across, in metres. */
    record Span(double fromM, double toM, double lengthM, double chordM) {
        double stretch() {
            return Math.max(0, lengthM / chordM - 1);
        }
    }
}
