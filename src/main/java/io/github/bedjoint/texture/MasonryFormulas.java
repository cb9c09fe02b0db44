package io.github.bedjoint.texture;

import io.github.bedjoint.units.Measure;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;

/** The formulas of a masonry surface; computed by {@link MasonrySurface}. */
final class MasonryFormulas {
    private static final Symbol LENGTH = new Symbol("l", Measure.LENGTH, "mean face length of a unit");
    private static final Symbol HEIGHT = new Symbol("h", Measure.LENGTH, "face height of a unit");
    private static final Symbol BED = new Symbol("j_b", Measure.LENGTH, "width of the bed joint");
    private static final Symbol HEAD = new Symbol("j_h", Measure.LENGTH, "width of the head joint");
    private static final Symbol BED_EXTRA =
            new Symbol("x_b", Measure.LENGTH, "length along the profile less the width of the bed joint");
    private static final Symbol HEAD_EXTRA =
            new Symbol("x_h", Measure.LENGTH, "length along the profile less the width of the head joint");
    private static final Symbol CELL = new Symbol("C", Measure.AREA, "area of the wall for each unit");
    private static final Symbol FACE_STRETCH = Symbol.number("f", "stretch on the unit faces");
    private static final Symbol[] RATIO_LETTERS = {
        LENGTH,
        BED_EXTRA,
        HEIGHT,
        HEAD_EXTRA,
        new Symbol("K", Measure.AREA, "extra area where joints meet, for each unit"),
        CELL
    };

    static final Formula CELL_AREA = Formula.of(
            "texture.cell",
            "Area of the wall for each unit",
            CELL,
            "(l + j_h) * (h + j_b)",
            Source.geometry("a unit with half of each joint around it"),
            LENGTH,
            HEAD,
            HEIGHT,
            BED);
    static final Formula RATIO = ratio("texture.masonry", "Developed area ratio of masonry", Symbol.number("r", "developed area ratio"));
    static final Formula JOINTS = ratio(
            "texture.masonry-joints",
            "Developed area ratio of masonry with smooth unit faces",
            Symbol.number("r_joints", "developed area ratio with smooth unit faces"));
    static final Formula SHARE = Formula.of(
            "texture.joint-share",
            "Share of the wall that is joint",
            Symbol.number("s", "share of the wall that is joint"),
            "1 - l * h / C",
            Source.geometry("what is not unit face is joint"),
            LENGTH,
            HEIGHT,
            CELL);
    static final Formula ROUGH = Formula.of(
            "texture.rough-faces",
            "Developed area ratio of masonry with rough unit faces",
            Symbol.number("r", "developed area ratio"),
            "1 + (1 - s) * (r_face - 1) + (r_joints - 1)",
            Source.geometry("extra area of the faces and of the joints add up"),
            Symbol.number("s", "share of the wall that is joint"),
            Symbol.number("r_face", "developed area ratio of the unit faces"),
            Symbol.number("r_joints", "developed area ratio with smooth unit faces"));
    static final Formula FACE = Formula.of(
            "texture.face-stretch",
            "Stretch on the unit faces",
            FACE_STRETCH,
            "sqrt(r_face) - 1",
            Source.geometry("the area's ratio when a film stretches equally in both directions"),
            Symbol.number("r_face", "developed area ratio of the unit faces"));
    static final Formula LOCAL = Formula.of(
            "texture.local-stretch",
            "Local stretch",
            Symbol.number("e_l", "stretch at the steepest place"),
            "max(f, max(x_b / j_b, x_h / j_h))",
            Source.geometry("length along the joint to its width, held at both arrises"),
            FACE_STRETCH,
            BED_EXTRA,
            BED,
            HEAD_EXTRA,
            HEAD);
    static final Formula MEAN_UP = Formula.of(
            "texture.mean-stretch-up",
            "Mean stretch up the wall",
            Symbol.number("e_up", "mean stretch up the wall"),
            "(h * f + x_b) / (h + j_b)",
            Source.geometry("length along a course to its height"),
            HEIGHT,
            FACE_STRETCH,
            BED_EXTRA,
            BED);
    static final Formula MEAN_ALONG = Formula.of(
            "texture.mean-stretch-along",
            "Mean stretch along the wall",
            Symbol.number("e_along", "mean stretch along the wall"),
            "(l * f + x_h) / (l + j_h)",
            Source.geometry("length along a unit and its joint to their width"),
            LENGTH,
            FACE_STRETCH,
            HEAD_EXTRA,
            HEAD);
    static final Formula COUNT = Formula.of(
            "texture.unit-count",
            "Units in an area",
            Symbol.number("n", "number of units, not rounded"),
            "A / C",
            Source.geometry("one unit for each cell"),
            new Symbol("A", Measure.AREA, "area of the wall"),
            CELL);
    static final Formula BED_LENGTH = Formula.of(
            "texture.bed-length",
            "Length of bed joints in an area",
            new Symbol("L_b", Measure.LENGTH, "length of the bed joints"),
            "A / (h + j_b)",
            Source.geometry("one bed for each course"),
            new Symbol("A", Measure.AREA, "area of the wall"),
            HEIGHT,
            BED);
    static final Formula HEAD_LENGTH = Formula.of(
            "texture.head-length",
            "Length of head joints in an area",
            new Symbol("L_h", Measure.LENGTH, "length of the head joints, each over the full height of its course"),
            "A / (l + j_h)",
            Source.geometry("one head for each unit"),
            new Symbol("A", Measure.AREA, "area of the wall"),
            LENGTH,
            HEAD);

    private MasonryFormulas() {}

    private static Formula ratio(String id, String title, Symbol result) {
        return Formula.of(
                id,
                title,
                result,
                "1 + (l * x_b + h * x_h + K) / C",
                Source.geometry("extra area of a bed and a head joint beside each unit and where they meet, to the area of its cell"),
                RATIO_LETTERS);
    }
}
