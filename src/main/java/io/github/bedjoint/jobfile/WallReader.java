package io.github.bedjoint.jobfile;

import io.github.bedjoint.job.JobBuilder;
import io.github.bedjoint.layout.Picture;
import io.github.bedjoint.survey.Access;
import io.github.bedjoint.survey.Edge;
import io.github.bedjoint.survey.LengthTolerance;
import io.github.bedjoint.survey.MovementJoint;
import io.github.bedjoint.survey.Opening;
import io.github.bedjoint.survey.Point;
import io.github.bedjoint.survey.Side;
import io.github.bedjoint.survey.Wall;
import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.Read;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;

/** Reads a wall: size or outline, surface, edges, openings, access. */
final class WallReader {
    private WallReader() {}

    static Wall wall(Fields f) {
        Wall wall = f.has("outline")
                ? Wall.polygon(f.text("name"), f.list("outline", WallReader::point))
                : Wall.rectangle(f.text("name"), f.read("width", Read::length), f.read("height", Read::length));
        wall = f.with(wall, "surface", n -> f.object(n, SurfaceReader::surface), Wall::withSurface);
        if (f.has("edges")) {
            Wall bare = wall;
            wall = f.object("edges", e -> edges(e, bare));
        }
        wall = f.with(wall, "openings", n -> f.list(n, node -> Fields.whole(node, WallReader::opening)), Wall::withOpenings);
        wall = f.with(wall, "movementJoints", n -> f.list(n, node -> Fields.whole(node, WallReader::joint)), Wall::withMovementJoints);
        wall = f.with(wall, "tolerances", n -> f.object(n, WallReader::tolerance), Wall::withTolerance);
        f.has("accessFactor");
        f.has("bottom");
        f.has("picture");
        return f.with(wall, "access", n -> f.word(n, Access.class), Wall::withAccess);
    }

    /** Access factor and picture belong to the job, not to the wall; they are read once the wall is known by name. */
    static void ofJob(JsonNode node, JobBuilder job) {
        Fields f = Fields.of(node);
        if (f.has("accessFactor")) {
            f.with(job, "accessFactor", f::number, (builder, factor) -> builder.accessFactor(f.text("name").strip(), factor));
        }
        if (f.has("picture")) {
            job.picture(f.text("name").strip(), f.object("picture", WallReader::picture));
        }
    }

    private static Picture picture(Fields f) {
        return Picture.at(f.read("left", Read::length), f.read("bottom", Read::length), f.read("width", Read::length), f.read("height", Read::length));
    }

    private static Point point(JsonNode node) {
        List<JsonNode> pair = node.items();
        if (pair == null || pair.size() != 2) {
            throw node.refused("must be a pair [x, y] of lengths", "Maybe brackets are missing.");
        }
        return Point.of(length(pair.get(0)), length(pair.get(1)));
    }

    /** A length in a list, as a coordinate. */
    static Quantity<Length> length(JsonNode node) {
        if (node.scalar() instanceof String text) {
            return Fields.under(node, () -> {
                Quantity<Length> length = Read.length(text);
                Door.lengthM("coordinate", length, Range.closed(-1000, 1000));
                return length;
            });
        }
        throw node.refused("must be a length with its unit", "Maybe quotation marks are missing.");
    }

    private static MovementJoint joint(Fields f) {
        return f.oneOf("x", "y").equals("x") ? MovementJoint.upright(f.read("x", Read::length)) : MovementJoint.level(f.read("y", Read::length));
    }

    private static LengthTolerance tolerance(Fields f) {
        LengthTolerance u = f.with(LengthTolerance.none(), "wall", n -> f.read(n, Read::length), LengthTolerance::withWall);
        return f.with(u, "opening", n -> f.read(n, Read::length), LengthTolerance::withOpening);
    }

    private static Wall edges(Fields f, Wall bare) {
        Wall wall = bare;
        for (Side side : Side.values()) {
            wall = f.with(wall, Fields.word(side), n -> f.object(n, WallReader::edge), (w, edge) -> w.withEdge(side, edge));
        }
        return wall;
    }

    private static Edge edge(Fields f) {
        Edge.Kind kind = f.word("kind", Edge.Kind.class);
        Edge edge = f.has("extra") ? Edge.of(kind, f.read("extra", Read::length)) : Edge.flush(kind);
        return f.with(edge, "sealed", f::flag, Edge::withSealed);
    }

    private static Opening opening(Fields f) {
        Opening opening = Opening.of(
                f.word("kind", Opening.Kind.class),
                f.read("left", Read::length),
                f.read("bottom", Read::length),
                f.read("width", Read::length),
                f.read("height", Read::length));
        opening = f.with(opening, "treatment", n -> f.word(n, Opening.Treatment.class), Opening::withTreatment);
        return f.with(opening, "turnedIn", n -> f.read(n, Read::length), Opening::turnedIn);
    }
}
