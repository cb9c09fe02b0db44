package io.github.bedjoint.texture;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Print;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Working;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A texture of known shape whose developed area ratio was found otherwise, such as joints that are drawn and a ratio that was measured: its
 * extra lengths grow with its extra area.
 *
 * <p>Exact for raked joints of another depth, near for others. A flat surface has no shape to scale: it keeps stretches of 0. Immutable.
 */
public final class AdjustedSurface implements Surface {
    private static final Source SCALED = Source.geometry("extra lengths grow with the extra area, as they do with the depth of raked joints");
    private static final Symbol RATIO_LETTER = Symbol.number("r", "developed area ratio that was found");
    private static final Range RATIO_RANGE = Range.closed(1, 20);

    /** The ratio that was found. */
    public static final Formula RATIO = Formula.of(
            "texture.adjusted", "Developed area ratio found otherwise", Symbol.number("r_f", "developed area ratio"), "r",
            Source.shop("a ratio given for the wall"), RATIO_LETTER);
    static final Formula STRETCH = Formula.of(
            "texture.adjusted-stretch", "Stretch at another developed area ratio", Symbol.number("e_f", "stretch"), "e * (r - 1) / (r_0 - 1)",
            SCALED, Symbol.number("e", "stretch by the shape alone"), RATIO_LETTER, Symbol.number("r_0", "developed area ratio by the shape alone"));

    private final Surface shape;
    private final double ratio;

    private AdjustedSurface(Surface shape, double ratio) {
        this.shape = shape;
        this.ratio = ratio;
    }

    /**
     * A texture at another ratio.
     *
     * @param shape the texture
     * @param ratio the developed area ratio that was found, 1 to 20
     * @return the surface
     * @throws RefusedException if the ratio is out of range
     */
    public static AdjustedSurface of(Surface shape, double ratio) {
        return new AdjustedSurface(shape, Door.number("area ratio", ratio, RATIO_RANGE));
    }

    /**
     * The texture whose shape it has.
     *
     * @return the surface at its own ratio
     */
    public Surface shape() {
        return shape;
    }

    @Override
    public double areaRatio() {
        return ratio;
    }

    private double scaled(double stretch) {
        return stretch == 0 ? 0 : stretch * (ratio - 1) / (shape.areaRatio() - 1);
    }

    @Override
    public double localStretchUp() {
        return scaled(shape.localStretchUp());
    }

    @Override
    public double localStretchAlong() {
        return scaled(shape.localStretchAlong());
    }

    @Override
    public double meanStretchUp() {
        return scaled(shape.meanStretchUp());
    }

    @Override
    public double meanStretchAlong() {
        return scaled(shape.meanStretchAlong());
    }

    @Override
    public Working working() {
        return Working.of(RATIO, ratio, ratio).noting("shape: " + shape.describe(UnitStyle.METRIC) + ", ratio " + Print.fixed(shape.areaRatio(), 4) + ".");
    }

    @Override
    public Working stretchWorking() {
        return shape.localStretch() == 0
                ? shape.stretchWorking()
                : Working.group("Stretch at another ratio", List.of(
                        stretch(localStretch(), shape.localStretch(), "at the steepest place"),
                        stretch(meanStretchUp(), shape.meanStretchUp(), "mean up the wall"),
                        stretch(meanStretchAlong(), shape.meanStretchAlong(), "mean along the wall"),
                        shape.stretchWorking()));
    }

    private Working stretch(double figure, double before, String whose) {
        return Working.of(STRETCH, figure, before, ratio, shape.areaRatio()).whose(whose);
    }

    @Override
    public String steepestPlace(UnitStyle style) {
        return ratio == 1 ? "" : shape.steepestPlace(style);
    }

    @Override
    public String describe(UnitStyle style) {
        return shape.describe(style) + ", at a ratio of " + Print.fixed(ratio, 4);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof AdjustedSurface that && shape.equals(that.shape) && Double.compare(ratio, that.ratio) == 0;
    }

    @Override
    public int hashCode() {
        return Objects.hash(shape, ratio);
    }

    /** The surface in words and metric units. */
    @Override
    public String toString() {
        return describe(UnitStyle.METRIC);
    }
}
