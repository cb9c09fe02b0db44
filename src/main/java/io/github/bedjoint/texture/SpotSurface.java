package io.github.bedjoint.texture;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Working;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * Masonry whose joint depth was measured in several spots: the mean over walls that have each of those depths, and the worst of their stretches.
 *
 * <p>The model is a masonry surface and the kind of profile that a depth is read as. The mean of the ratios is not the ratio of the
 * mean depth, unless the profile is raked. Spots chosen at random give the standard uncertainty of the mean. Immutable.
 */
public final class SpotSurface implements Surface {
    /** Mean ratio of the spots. */
    public static final Formula RATIO = Formula.of(
            "texture.spots",
            "Developed area ratio from spot depths",
            Symbol.number("r", "developed area ratio"),
            "T / n",
            Source.geometry("mean over the spots"),
            Symbol.number("T", "ratios of the spots, added up"),
            Symbol.number("n", "number of spots"));
    static final Formula TOTAL = Formula.of(
            "texture.spots-total",
            "Ratios of the spots",
            Symbol.number("T", "ratios of the spots, added up"),
            "sum(r_i)",
            Source.geometry("one wall for each depth"),
            Symbol.number("r_i", "developed area ratio with the depth of one spot"));

    private static final Range DEPTH = Range.closed(0, 0.2);

    private final MasonrySurface wall;
    private final JointProfile.Kind kind;
    private final List<Double> depthsM;
    private final List<MasonrySurface> spots;
    private final double total;

    private SpotSurface(MasonrySurface wall, JointProfile.Kind kind, List<Double> depthsM, List<MasonrySurface> spots) {
        this.wall = wall;
        this.kind = kind;
        this.depthsM = List.copyOf(depthsM);
        this.spots = List.copyOf(spots);
        double sum = 0;
        for (MasonrySurface spot : spots) {
            sum += spot.areaRatio();
        }
        total = sum;
    }

    /**
     * A surface from spot depths.
     *
     * @param wall   units, joints, bond and faces; its profiles are replaced by those of the spots, heads that are flush stay flush
     * @param kind   the kind of profile that a depth is read as; a V has the angle that gives the depth
     * @param depths the depths measured, 0 to 200 mm, at least one; 0 is a flush joint
     * @return the surface
     * @throws RefusedException if there is no depth, one is out of range or does not fit into a joint, or the kind has no depth of its own
     */
    public static SpotSurface of(MasonrySurface wall, JointProfile.Kind kind, List<Quantity<Length>> depths) {
        if (depths.isEmpty()) {
            throw new RefusedException("spot depths", "0 depths", "must be at least one", "Maybe the list was not filled.");
        }
        List<Double> depthsM = new ArrayList<>();
        List<MasonrySurface> spots = new ArrayList<>();
        for (int i = 0; i < depths.size(); i++) {
            depthsM.add(Door.lengthM("spot depth " + (i + 1), depths.get(i), DEPTH));
            spots.add(wall.atDepth(kind, depthsM.get(i)));
        }
        return new SpotSurface(wall, kind, depthsM, spots);
    }

    /**
     * Units, joints, bond and faces.
     *
     * @return the wall as it was given
     */
    public MasonrySurface wall() {
        return wall;
    }

    /**
     * The kind of profile that a depth is read as.
     *
     * @return the kind
     */
    public JointProfile.Kind kind() {
        return kind;
    }

    /**
     * The depths measured.
     *
     * @return metres
     */
    public List<Double> depthsM() {
        return depthsM;
    }

    /** The spread of the spots, by {@link #standardUncertainty()}; empty for a single spot. */
    @Override
    public Optional<RatioUncertainty> uncertainty() {
        double u = standardUncertainty();
        return Double.isNaN(u)
                ? Optional.empty()
                : Optional.of(new RatioUncertainty(
                        areaRatio(), List.of(new RatioUncertainty.Moved("spread of the spots", areaRatio() + u, areaRatio() - u))));
    }

    @Override
    public double areaRatio() {
        return total / spots.size();
    }

    /**
     * Standard uncertainty of the ratio as a mean of random spots: their standard deviation by the root of their number (JCGM 100:2008, 4.2.3).
     *
     * @return the uncertainty, or NaN for a single spot
     */
    public double standardUncertainty() {
        double squares = 0;
        for (MasonrySurface spot : spots) {
            double off = spot.areaRatio() - areaRatio();
            squares += off * off;
        }
        int n = spots.size();
        return n < 2 ? Double.NaN : Math.sqrt(squares / (n - 1) / n);
    }

    @Override
    public Optional<JointAreas> joints() {
        return Optional.of(new SpotJoints(spots.stream().map(MasonrySurface::joints).map(Optional::orElseThrow).toList()));
    }

    private MasonrySurface worst() {
        return spots.stream().max(Comparator.comparingDouble(MasonrySurface::localStretch)).orElseThrow();
    }

    @Override
    public double localStretchUp() {
        return spots.stream().mapToDouble(MasonrySurface::localStretchUp).max().orElseThrow();
    }

    @Override
    public double localStretchAlong() {
        return spots.stream().mapToDouble(MasonrySurface::localStretchAlong).max().orElseThrow();
    }

    @Override
    public double meanStretchUp() {
        return spots.stream().mapToDouble(MasonrySurface::meanStretchUp).max().orElseThrow();
    }

    @Override
    public double meanStretchAlong() {
        return spots.stream().mapToDouble(MasonrySurface::meanStretchAlong).max().orElseThrow();
    }

    @Override
    public Working working() {
        List<Double> ratios = spots.stream().map(MasonrySurface::areaRatio).toList();
        return Working.of(RATIO, areaRatio(), total, spots.size())
                .because(Working.sum(TOTAL, total, ratios), Working.group("First spot", List.of(spots.get(0).working())));
    }

    /** The stretch of the deepest spot. */
    @Override
    public Working stretchWorking() {
        return worst().stretchWorking();
    }

    @Override
    public String steepestPlace(UnitStyle style) {
        return worst().steepestPlace(style);
    }

    @Override
    public String describe(UnitStyle style) {
        return spots.size() + " spot depths, the first: " + spots.get(0).describe(style);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof SpotSurface that && spots.equals(that.spots);
    }

    @Override
    public int hashCode() {
        return Objects.hash(spots);
    }

    /** The surface in words and metric units. */
    @Override
    public String toString() {
        return describe(UnitStyle.METRIC);
    }
}
