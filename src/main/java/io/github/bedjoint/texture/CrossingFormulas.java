package io.github.bedjoint.texture;

import io.github.bedjoint.units.Measure;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;

/** The extra area where head joints meet the bed, one formula for each rule of {@link Crossing}. */
final class CrossingFormulas {
    private static final Symbol HEAD_WIDTH = new Symbol("j_h", Measure.LENGTH, "width of the head joint");
    private static final Symbol BED_WIDTH = new Symbol("j_b", Measure.LENGTH, "width of the bed joint");

    static final Formula THROUGH = extra(
            "crossing-through",
            "j_h * x_b",
            "the bed runs through; its step at the end of the head makes up for the part of its side that the head opens",
            HEAD_WIDTH,
            new Symbol("x_b", Measure.LENGTH, "length along the profile less the width of the bed joint"));
    static final Formula RAKED = extra(
            "crossing-raked",
            "2 * j_h * abs(d_b - d_h)",
            "the floors of bed and head meet in a step at each end of the head",
            HEAD_WIDTH,
            new Symbol("d_b", Measure.LENGTH, "depth of the bed joint"),
            new Symbol("d_h", Measure.LENGTH, "depth of the head joint"));
    static final Formula VEE = extra(
            "crossing-vee",
            "j_h * j_b * (1 / sin(t_b / 2) - 1)",
            "the deeper of two V grooves has their slope everywhere",
            HEAD_WIDTH,
            BED_WIDTH,
            new Symbol("t_b", Measure.ANGLE, "angle between the slopes of the bed joint"));
    static final Formula CONCAVE = extra(
            "crossing-concave",
            "8 * rho_b * (j_b / 2 * phi_b - g_b) - j_b^2",
            "the deeper of two crossing cylinders",
            new Symbol("rho_b", Measure.LENGTH, "radius of the arc of the bed joint"),
            BED_WIDTH,
            new Symbol("phi_b", Measure.ANGLE, "half the angle of the arc of the bed joint"),
            new Symbol("g_b", Measure.LENGTH, "sagitta of the bed joint"));
    static final Formula HALF_ROUND =
            extra("crossing-half-round", "(pi - 3) * j_b^2", "the deeper of two crossing half cylinders", BED_WIDTH);
    static final Formula DEEPER = extra(
            "crossing-deeper",
            "A_x - j_h * j_b",
            "the deeper of two tooled grooves, its area by quadrature",
            new Symbol("A_x", Measure.AREA, "area along the deeper groove where the joints cross, by quadrature"),
            HEAD_WIDTH,
            BED_WIDTH);
    static final Formula STEPPED = extra(
            "crossing-stepped",
            "j_h * (x_b - w_b) + S",
            "the bed runs through; the head ends at its edges with a step",
            HEAD_WIDTH,
            new Symbol("x_b", Measure.LENGTH, "length along the profile less the width of the bed joint"),
            new Symbol("w_b", Measure.LENGTH, "height of the square sides of the bed joint"),
            new Symbol("S", Measure.AREA, "area of the steps between the head's profile and the bed's edges, by quadrature where curved"));

    private CrossingFormulas() {}

    private static Formula extra(String name, String text, String geometry, Symbol... symbols) {
        return Formula.of(
                "texture." + name,
                "Extra area where joints meet",
                new Symbol("K", Measure.AREA, "extra area where joints meet, for each unit"),
                text,
                Source.geometry(geometry),
                symbols);
    }
}
