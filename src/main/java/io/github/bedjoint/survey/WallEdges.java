package io.github.bedjoint.survey;

import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Steps;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.working.Explained;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Working;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** The lengths of a wall's edges by what they end at, of its ground edge less doors, and of the rims of its openings. Immutable. */
public final class WallEdges implements Explained {
    /** Length of the edges of one kind, less the openings that reach them. */
    public static final Formula LENGTH = Formula.of(
            "survey.edge-length", "Length of edges", new Symbol("L_e", Measure.LENGTH, "length of the edges of one kind"), "sum(l_i)",
            Source.geometry("openings that reach the edge are out"), new Symbol("l_i", Measure.LENGTH, "length of an edge less openings"));
    /** Ground edge before the doors are taken off. */
    public static final Formula GROUND_EDGE = Formula.of(
            "survey.ground-edge", "Ground edge", new Symbol("L_b", Measure.LENGTH, "ground edge"), "sum(l_i)",
            Source.geometry("edges of the outline"), new Symbol("l_i", Measure.LENGTH, "length of a ground edge"));
    /** Doors and other openings that stand on the ground. */
    public static final Formula GROUND_OPENINGS = Formula.of(
            "survey.ground-openings", "Openings on the ground edge",
            new Symbol("L_d", Measure.LENGTH, "doors and other openings on the ground edge"), "sum(l_i)",
            Source.geometry("widths of openings that reach the ground edge"),
            new Symbol("l_i", Measure.LENGTH, "width of an opening on the ground"));
    /** Ground edge less doors. */
    public static final Formula GROUND = Formula.of(
            "survey.ground-length", "Ground edge less doors", new Symbol("L_g", Measure.LENGTH, "ground edge less doors"), "L_b - L_d",
            Source.geometry("film ends at the ground only where there is wall"),
            new Symbol("L_b", Measure.LENGTH, "ground edge"),
            new Symbol("L_d", Measure.LENGTH, "doors and other openings on the ground edge"));
    /** Rims of the openings. */
    public static final Formula OPENING_RIMS = Formula.of(
            "survey.opening-rims", "Rims of the openings",
            new Symbol("L_o", Measure.LENGTH, "rims of the openings where they meet the wall"), "sum(l_i)",
            Source.geometry("sides on the outline or on another opening are out"),
            new Symbol("l_i", Measure.LENGTH, "rim of an opening"));
    /** Edges to be sealed. */
    public static final Formula SEALED = Formula.of(
            "survey.sealed-length", "Edges to be sealed", new Symbol("L_s", Measure.LENGTH, "edges to be sealed"), "sum(l_i)",
            Source.practice("edges named in the survey are sealed by the metre"),
            new Symbol("l_i", Measure.LENGTH, "length of an edge that is sealed, less openings"));

    /** Film that lies beyond the wall. */
    public static final Formula TURNED = Formula.of(
            "survey.turned-area", "Film turned around corners, tucked at the ground and turned into reveals",
            new Symbol("A_u", Measure.AREA, "film turned beyond the wall"), "sum(a_i)",
            Source.geometry("length of the edge or rim times how far the film goes on; bleed that is cut off does not count"),
            new Symbol("a_i", Measure.AREA, "film beyond an outside corner, a ground edge or a rim"));

    private final Wall wall;
    private final Map<Edge.Kind, List<Double>> byKind = new EnumMap<>(Edge.Kind.class);
    private final List<Double> sealed = new ArrayList<>();
    private final List<Double> ground = new ArrayList<>();
    private final List<Double> groundOpenings = new ArrayList<>();
    private final List<Double> rims = new ArrayList<>();
    private final List<Double> turned = new ArrayList<>();

    private WallEdges(Wall wall) {
        this.wall = wall;
        for (Edge.Kind kind : Edge.Kind.values()) {
            byKind.put(kind, new ArrayList<>());
        }
        Outline outline = wall.outline();
        for (int i = 0; i < outline.points().size(); i++) {
            edge(outline.point(i), outline.point(i + 1), wall.edge(outline.side(i)));
        }
        for (Opening opening : wall.openings()) {
            if (opening.staysOpen()) {
                rims.add(Steps.toM(rim(opening)));
                if (opening.turnSteps() > 0) {
                    turned.add(Steps.toM(rim(opening)) * Steps.toM(opening.turnSteps()));
                }
            }
        }
    }

    /** The edges of a wall. */
    static WallEdges of(Wall wall) {
        return new WallEdges(wall);
    }

    private void edge(Point a, Point b, Edge edge) {
        double length = Math.hypot(Steps.toM(b.xSteps() - a.xSteps()), Steps.toM(b.ySteps() - a.ySteps()));
        double out = 0;
        for (Opening opening : wall.openings()) {
            if (opening.staysOpen()) {
                double shared = Steps.toM(Rim.of(opening).shared(a, b));
                out += shared;
                if (edge.kind() == Edge.Kind.GROUND && shared > 0) {
                    groundOpenings.add(shared);
                }
            }
        }
        Objects.requireNonNull(byKind.get(edge.kind())).add(length - out);
        if (edge.sealed()) {
            sealed.add(length - out);
        }
        boolean stays = edge.kind() == Edge.Kind.OUTSIDE_CORNER || edge.kind() == Edge.Kind.GROUND;
        if (stays && edge.extraSteps() > 0) {
            turned.add((length - out) * Steps.toM(edge.extraSteps()));
        }
        if (edge.kind() == Edge.Kind.GROUND) {
            ground.add(length);
        }
    }

    /** The rim of an opening without what lies on the outline or on another opening. */
    private long rim(Opening opening) {
        Rim rim = Rim.of(opening);
        long length = rim.length();
        Outline outline = wall.outline();
        for (int i = 0; i < outline.points().size(); i++) {
            length -= rim.shared(outline.point(i), outline.point(i + 1));
        }
        for (Opening other : wall.openings()) {
            if (other != opening && other.staysOpen()) {
                for (Rim.Part side : Rim.of(other).parts()) {
                    length -= rim.shared(side.from(), side.to());
                }
            }
        }
        return length;
    }

    private static double sum(List<Double> terms) {
        return terms.stream().mapToDouble(Double::doubleValue).sum();
    }

    /**
     * The length of the edges of one kind, less the openings that reach them.
     *
     * @param kind what they end at
     * @return metres
     * @see #LENGTH
     */
    public double lengthM(Edge.Kind kind) {
        return sum(Objects.requireNonNull(byKind.get(kind)));
    }

    /**
     * The ground edge less doors, the length along which film is tucked.
     *
     * @return metres
     * @see #GROUND
     */
    public double groundM() {
        return sum(ground) - sum(groundOpenings);
    }

    /**
     * The rims of the openings where they meet the wall.
     *
     * @return metres
     * @see #OPENING_RIMS
     */
    public double openingRimsM() {
        return sum(rims);
    }

    /**
     * The edges to be sealed, less the openings that reach them.
     *
     * @return metres
     * @see #SEALED
     */
    public double sealedM() {
        return sum(sealed);
    }

    /**
     * Film that goes on beyond the wall and stays there: around outside corners, tucked at the ground, turned into reveals.
     *
     * @return square metres
     * @see #TURNED
     */
    public double turnedM2() {
        return sum(turned);
    }

    /** Every kind of edge that the wall has, the ground edge, the rims and the edges to be sealed. */
    @Override
    public Working working() {
        List<Working> parts = new ArrayList<>();
        byKind.forEach((kind, terms) -> {
            if (!terms.isEmpty()) {
                parts.add(Working.sum(LENGTH, lengthM(kind), terms).whose(wall.name() + ", " + kind));
            }
        });
        parts.add(Working.of(GROUND, groundM(), sum(ground), sum(groundOpenings))
                .because(Working.sum(GROUND_EDGE, sum(ground), ground), Working.sum(GROUND_OPENINGS, sum(groundOpenings), groundOpenings))
                .whose(wall.name()));
        parts.add(Working.sum(OPENING_RIMS, openingRimsM(), rims).whose(wall.name()));
        parts.add(Working.sum(SEALED, sealedM(), sealed).whose(wall.name()));
        parts.add(Working.sum(TURNED, turnedM2(), turned).whose(wall.name()));
        return Working.group("Edges of " + wall.name(), parts);
    }

    /** The lengths that work is done along. */
    @Override
    public String toString() {
        return wall.name() + ": " + Measure.LENGTH.print(groundM(), UnitStyle.METRIC) + " of ground edge, "
                + Measure.LENGTH.print(openingRimsM(), UnitStyle.METRIC) + " around openings, "
                + Measure.LENGTH.print(sealedM(), UnitStyle.METRIC) + " to be sealed";
    }
}
