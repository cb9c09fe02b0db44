package io.github.bedjoint.texture;

import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Working;

/** A surface without texture, such as a painted board: its developed area ratio is one and no film stretches on it. */
public final class FlatSurface implements Surface {
    /** Developed area ratio of a flat surface. */
    public static final Formula RATIO = Formula.of(
            "texture.flat",
            "Developed area ratio of a flat surface",
            Symbol.number("r", "developed area ratio"),
            "1",
            Source.geometry("a flat surface is its own projection"));

    /** Stretch of a film on a flat surface. */
    public static final Formula NO_STRETCH = Formula.of(
            "texture.no-stretch",
            "Stretch on a flat surface",
            Symbol.number("e", "stretch"),
            "0",
            Source.geometry("a flat surface is as long as its projection"));

    private static final FlatSurface FLAT = new FlatSurface();

    private FlatSurface() {}

    /**
     * The flat surface; there is only one.
     *
     * @return the surface
     */
    public static FlatSurface flat() {
        return FLAT;
    }

    @Override
    public double areaRatio() {
        return 1;
    }

    @Override
    public double localStretchUp() {
        return 0;
    }

    @Override
    public double localStretchAlong() {
        return 0;
    }

    @Override
    public double meanStretchUp() {
        return 0;
    }

    @Override
    public double meanStretchAlong() {
        return 0;
    }

    @Override
    public String steepestPlace(UnitStyle style) {
        return "";
    }

    @Override
    public String describe(UnitStyle style) {
        return "flat";
    }

    @Override
    public Working working() {
        return Working.of(RATIO, areaRatio());
    }

    @Override
    public Working stretchWorking() {
        return Working.of(NO_STRETCH, localStretch());
    }

    /** The word {@code flat}. */
    @Override
    public String toString() {
        return describe(UnitStyle.METRIC);
    }
}
