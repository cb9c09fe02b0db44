package io.github.bedjoint.texture;

import io.github.bedjoint.units.Measure;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;

/** The formulas of height grids; computed by {@link GridSurface} and {@link HeightStatistics}. */
final class GridFormulas {
    private static final Source ISO = Source.standard("ISO 25178-2, areal surface texture parameters, as public metrology glossaries quote it");
    private static final Symbol PROJECTED = new Symbol("A_p", Measure.AREA, "area of the wall under the cells counted");

    static final Formula RATIO = Formula.of(
            "texture.grid",
            "Developed area ratio of a height grid",
            Symbol.number("r", "developed area ratio"),
            "A_t / A_p",
            Source.geometry("two triangles in each cell"),
            new Symbol("A_t", Measure.AREA, "area of the triangles"),
            PROJECTED);
    static final Formula SDR = Formula.of(
            "texture.sdr",
            "Developed interfacial area ratio Sdr",
            Symbol.number("S_dr", "developed interfacial area ratio"),
            "(A_t - A_p) / A_p",
            ISO,
            new Symbol("A_t", Measure.AREA, "area of the triangles"),
            PROJECTED);
    static final Formula SDQ = Formula.of(
            "texture.sdq",
            "Root mean square gradient Sdq",
            Symbol.number("S_dq", "root mean square gradient"),
            "sqrt(G / A_p)",
            ISO,
            new Symbol("G", Measure.AREA, "squared slope of the triangles, summed over their projected area"),
            PROJECTED);
    static final Formula STEPPED = Formula.of(
            "texture.stepped",
            "Ratio if every difference of height were an upright step",
            Symbol.number("r_s", "developed area ratio with upright steps"),
            "1 + W / A_p",
            Source.geometry("a slope is never longer than its run and its rise together"),
            new Symbol("W", Measure.AREA, "height differences times half the cell width on either side"),
            PROJECTED);
    static final Formula MEAN_ALONG = mean("texture.grid-along", "Mean stretch along the wall", "e_along", "rows");
    static final Formula MEAN_UP = mean("texture.grid-up", "Mean stretch up the wall", "e_up", "columns");
    static final Formula LOCAL = Formula.of(
            "texture.grid-local",
            "Local stretch",
            Symbol.number("e_l", "stretch in the worst window"),
            "P_w / w - 1",
            Source.geometry("length along a row or column in the worst window to its width, held at both ends"),
            new Symbol("P_w", Measure.LENGTH, "length along the surface in the worst window"),
            new Symbol("w", Measure.LENGTH, "width of the window"));
    static final Formula SA = Formula.of(
            "texture.sa",
            "Arithmetical mean height Sa",
            new Symbol("S_a", Measure.LENGTH, "arithmetical mean height"),
            "M / n",
            ISO,
            new Symbol("M", Measure.LENGTH, "distances from the mean height, added up"),
            Symbol.number("n", "number of heights"));
    static final Formula SQ = Formula.of(
            "texture.sq",
            "Root mean square height Sq",
            new Symbol("S_q", Measure.LENGTH, "root mean square height"),
            "sqrt(Q / n)",
            ISO,
            new Symbol("Q", Measure.AREA, "squared distances from the mean height, added up"),
            Symbol.number("n", "number of heights"));

    private GridFormulas() {}

    private static Formula mean(String id, String title, String letter, String lines) {
        return Formula.of(
                id,
                title,
                Symbol.number(letter, "mean stretch"),
                "P / B - 1",
                Source.geometry("length along the " + lines + " to that of the wall under them"),
                new Symbol("P", Measure.LENGTH, "length along the surface, all " + lines),
                new Symbol("B", Measure.LENGTH, "length of the wall under them"));
    }
}
