package io.github.bedjoint.texture;

import io.github.bedjoint.units.Measure;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Working;
import java.util.List;

/**
 * Joints of masonry in closed form.
 *
 * @param ratio     developed area ratio of the wall
 * @param faceRatio developed area ratio of the unit faces
 * @param lengthM   mean face length of a unit
 * @param heightM   face height of a unit
 * @param headM     width of the head joint along its profile
 * @param cellM2    area of the wall for each unit
 */
record MasonryJoints(double ratio, double faceRatio, double lengthM, double heightM, double headM, double cellM2) implements JointAreas {
    private static final Symbol HEIGHT = new Symbol("h", Measure.LENGTH, "face height of a unit");
    private static final Symbol CELL = new Symbol("C", Measure.AREA, "area of the wall for each unit");
    private static final Symbol UPRIGHT_SHARE = Symbol.number("q_u", "developed area of upright joints to the area of the wall");

    static final Formula UPRIGHT = Formula.of(
            "texture.upright-joints", "Surface in upright joints", UPRIGHT_SHARE, "h * p_h / C",
            Source.geometry("one head for each unit, over the height of its face"), HEIGHT,
            new Symbol("p_h", Measure.LENGTH, "length along the profile of the head joint"), CELL);
    static final Formula LEVEL = Formula.of(
            "texture.level-joints", "Surface in level joints",
            Symbol.number("q_l", "developed area of level joints to the area of the wall"), "r - r_face * l * h / C - q_u",
            Source.geometry("what is neither unit face nor upright joint"), Symbol.number("r", "developed area ratio"),
            Symbol.number("r_face", "developed area ratio of the unit faces"),
            new Symbol("l", Measure.LENGTH, "mean face length of a unit"), HEIGHT, CELL, UPRIGHT_SHARE);

    @Override
    public double upright() {
        return heightM * headM / cellM2;
    }

    @Override
    public double level() {
        return ratio - faceRatio * lengthM * heightM / cellM2 - upright();
    }

    @Override
    public Working working() {
        return Working.group("Surface in joints", List.of(
                Working.of(LEVEL, level(), ratio, faceRatio, lengthM, heightM, cellM2, upright()),
                Working.of(UPRIGHT, upright(), heightM, headM, cellM2)));
    }

    @Override
    public String toString() {
        return describe();
    }
}
