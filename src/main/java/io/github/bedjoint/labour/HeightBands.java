package io.github.bedjoint.labour;

import io.github.bedjoint.survey.Access;
import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.working.Source;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.DoubleUnaryOperator;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * Up to which height a wall is reached how, and how much slower that is.
 *
 * <p>The defaults are assumed: from the ground up to 2 m, from a platform up to 4 m, from a scaffold above; factors 1, 1.15, 1.3, for a lift 1.4, for a ladder 2. Immutable.
 */
public final class HeightBands {
    private static final Source ASSUMED = Source.assumed("height bands and access factors, starting values");
    private static final HeightBands DEFAULTS = new HeightBands(
            new TreeMap<>(Map.of(2.0, Access.GROUND, 4.0, Access.PLATFORM, Double.MAX_VALUE, Access.SCAFFOLD)),
            new EnumMap<>(Map.of(Access.GROUND, 1.0, Access.PLATFORM, 1.15, Access.SCAFFOLD, 1.3, Access.LIFT, 1.4, Access.LADDER, 2.0)),
            ASSUMED);

    private final TreeMap<Double, Access> upToM;
    private final EnumMap<Access, Double> factors;
    private final Source source;

    private HeightBands(TreeMap<Double, Access> upToM, EnumMap<Access, Double> factors, Source source) {
        this.upToM = upToM;
        this.factors = factors;
        this.source = source;
    }

    /**
     * The assumed bands and factors.
     *
     * @return bands to be replaced by the shop's own
     */
    public static HeightBands defaults() {
        return DEFAULTS;
    }

    /**
     * One access for every height, with the factors of these bands.
     *
     * @param access how the whole wall is reached
     * @return new bands
     */
    public HeightBands all(Access access) {
        return new HeightBands(new TreeMap<>(Map.of(Double.MAX_VALUE, access)), factors, source);
    }

    /**
     * The same with a band that ends at a height.
     *
     * @param height the upper end of the band, more than 0 and at most 200 m
     * @param access how it is reached
     * @return new bands
     * @throws RefusedException if the height cannot be accepted
     */
    public HeightBands upTo(Quantity<Length> height, Access access) {
        TreeMap<Double, Access> more = new TreeMap<>(upToM);
        more.put(Door.lengthM("height of a band", height, Range.above(0, 200)), access);
        return new HeightBands(more, factors, source);
    }

    /**
     * The same with another access above all bands.
     *
     * @param access how the rest is reached
     * @return new bands
     */
    public HeightBands above(Access access) {
        TreeMap<Double, Access> more = new TreeMap<>(upToM);
        more.put(Double.MAX_VALUE, access);
        return new HeightBands(more, factors, source);
    }

    /**
     * The same with the shop's own factor for an access.
     *
     * @param access     the access
     * @param factor     by what times are multiplied, 0.1 to 10
     * @param fromSource where the factors come from
     * @return new bands
     * @throws RefusedException if the factor is not 0.1 to 10
     */
    public HeightBands withFactor(Access access, double factor, Source fromSource) {
        EnumMap<Access, Double> more = new EnumMap<>(factors);
        more.put(access, Door.number("access factor", factor, Range.closed(0.1, 10)));
        return new HeightBands(upToM, more, fromSource);
    }

    /**
     * The factor of a rectangular wall.
     *
     * @param bottom height of its lower edge above the ground, 0 to 200 m
     * @param height its height, more than 0 and at most 200 m
     * @return the reach, weighted by the heights in each band
     * @throws RefusedException if a value cannot be accepted
     */
    public Reach over(Quantity<Length> bottom, Quantity<Length> height) {
        double from = Door.lengthM("bottom of the wall", bottom, Range.closed(0, 200));
        double to = from + Door.lengthM("height of the wall", height, Range.above(0, 200));
        List<Reach.Part> parts = new ArrayList<>();
        double low = 0;
        for (Map.Entry<Double, Access> band : upToM.entrySet()) {
            double share = Math.max(0, Math.min(to, band.getKey()) - Math.max(from, low));
            parts.add(part(band.getValue(), share));
            low = band.getKey();
        }
        return Reach.mixed(parts, source);
    }

    /**
     * The factor of a wall whose areas by access are known, such as a gable.
     *
     * @param areas the area reached in each way; at least one more than zero
     * @return the reach, weighted by area
     * @throws RefusedException if an area cannot be accepted or all are zero
     */
    public Reach over(Map<Access, Quantity<Area>> areas) {
        List<Reach.Part> parts = new ArrayList<>();
        double total = 0;
        for (Access access : Access.values()) {
            if (areas.containsKey(access)) {
                double area = Door.areaM2("area reached by " + access, areas.get(access), Range.NOT_NEGATIVE);
                parts.add(part(access, area));
                total += area;
            }
        }
        Door.in(Measure.AREA, total, "area reached", Range.above(0, 100_000));
        return Reach.mixed(parts, source);
    }

    /**
     * The factor of a wall of any shape.
     *
     * @param bottom       height of its lowest point above the ground, 0 to 200 m
     * @param areaBelowM2  its area in square metres that lies lower than a height over its lowest point in metres, rising to all of it
     * @return the reach, weighted by the areas in each band
     * @throws RefusedException if the bottom cannot be accepted, or there is no area
     */
    public Reach over(Quantity<Length> bottom, DoubleUnaryOperator areaBelowM2) {
        double from = Door.lengthM("bottom of the wall", bottom, Range.closed(0, 200));
        List<Reach.Part> parts = new ArrayList<>();
        double below = 0;
        for (Map.Entry<Double, Access> band : upToM.entrySet()) {
            double upTo = areaBelowM2.applyAsDouble(Math.max(0, band.getKey() - from));
            parts.add(part(band.getValue(), Math.max(0, upTo - below)));
            below = Math.max(below, upTo);
        }
        Door.in(Measure.AREA, below, "area reached", Range.above(0, 100_000));
        return Reach.mixed(parts, source);
    }

    /**
     * The bands.
     *
     * @return upper ends in metres above the ground, rising, each with its access; the last is {@link Double#MAX_VALUE}
     */
    public SortedMap<Double, Access> bands() {
        return Collections.unmodifiableSortedMap(upToM);
    }

    /**
     * The factor of an access.
     *
     * @param access the access
     * @return by what times are multiplied
     */
    public double factor(Access access) {
        return factors.get(access);
    }

    /**
     * Where the factors come from.
     *
     * @return the source
     */
    public Source source() {
        return source;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof HeightBands that && upToM.equals(that.upToM) && factors.equals(that.factors) && source.equals(that.source);
    }

    @Override
    public int hashCode() {
        return Objects.hash(upToM, factors, source);
    }

    /** Bands and factors: {@code {2.0=GROUND, ...} {GROUND=1.0, ...}}. */
    @Override
    public String toString() {
        return upToM + " " + factors;
    }

    private Reach.Part part(Access access, double share) {
        return new Reach.Part(Optional.of(access), share, factors.get(access));
    }
}
