package io.github.bedjoint.texture;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.working.Source;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * A format of masonry unit: the size of its face and the module in which it repeats. The joints are what is left between the two.
 *
 * <p>Giving the module rather than the joint keeps a modular brick right, whose courses come to 8 in every three although face and
 * nominal joint do not. Stored in metres. Immutable.
 */
public final class MasonryUnit {
    private static final Range SIZE = Range.above(0, 5);

    private final String name;
    private final double lengthM;
    private final double heightM;
    private final double moduleLengthM;
    private final double moduleHeightM;
    private final Source source;

    private MasonryUnit(
            String name, double lengthM, double heightM, double moduleLengthM, double moduleHeightM, Source source) {
        this.name = name;
        this.lengthM = lengthM;
        this.heightM = heightM;
        this.moduleLengthM = moduleLengthM;
        this.moduleHeightM = moduleHeightM;
        this.source = source;
    }

    /**
     * A format.
     *
     * @param name         what it is called
     * @param length       length of the face, above 0, at most 5 m
     * @param height       height of the face, above 0, at most 5 m
     * @param moduleLength length of face and head joint, more than the length
     * @param moduleHeight height of face and bed joint, more than the height
     * @param source       where the sizes come from
     * @return the format
     * @throws RefusedException if the name is blank, a size out of range, or no joint is left
     */
    public static MasonryUnit of(
            String name,
            Quantity<Length> length,
            Quantity<Length> height,
            Quantity<Length> moduleLength,
            Quantity<Length> moduleHeight,
            Source source) {
        double faceLength = Door.lengthM("unit length", length, SIZE);
        double faceHeight = Door.lengthM("unit height", height, SIZE);
        return new MasonryUnit(
                Door.text("unit name", name),
                faceLength,
                faceHeight,
                module("module length", moduleLength, faceLength),
                module("module height", moduleHeight, faceHeight),
                Objects.requireNonNull(source));
    }

    private static double module(String parameter, Quantity<Length> module, double face) {
        double metres = Door.lengthM(parameter, module, SIZE);
        if (metres <= face) {
            throw new RefusedException(
                    parameter,
                    module.toString(),
                    "must be more than the face's " + Measure.LENGTH.print(face, UnitStyle.METRIC),
                    "Maybe the joint was not added.");
        }
        return metres;
    }

    /**
     * What the format is called.
     *
     * @return the name
     */
    public String name() {
        return name;
    }

    /**
     * Length of the face.
     *
     * @return metres
     */
    public double lengthM() {
        return lengthM;
    }

    /**
     * Height of the face.
     *
     * @return metres
     */
    public double heightM() {
        return heightM;
    }

    /**
     * Width of the head joint: the module's length less the face's.
     *
     * @return metres, above 0
     */
    public double headJointM() {
        return moduleLengthM - lengthM;
    }

    /**
     * Width of the bed joint: the module's height less the face's.
     *
     * @return metres, above 0
     */
    public double bedJointM() {
        return moduleHeightM - heightM;
    }

    /**
     * Where the sizes come from.
     *
     * @return the source
     */
    public Source source() {
        return source;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof MasonryUnit that
                && name.equals(that.name)
                && Double.compare(lengthM, that.lengthM) == 0
                && Double.compare(heightM, that.heightM) == 0
                && Double.compare(moduleLengthM, that.moduleLengthM) == 0
                && Double.compare(moduleHeightM, that.moduleHeightM) == 0
                && source.equals(that.source);
    }

    @Override
    public int hashCode() {
        return Objects.hash(name, lengthM, heightM, moduleLengthM, moduleHeightM, source);
    }

    /** Name and face size: {@code Modular, 0.1937 m x 57.15 mm}. */
    @Override
    public String toString() {
        return name + ", " + Measure.LENGTH.print(lengthM, UnitStyle.METRIC) + " x "
                + Measure.LENGTH.print(heightM, UnitStyle.METRIC);
    }
}
