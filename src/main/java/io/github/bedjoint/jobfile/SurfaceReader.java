package io.github.bedjoint.jobfile;

import io.github.bedjoint.texture.AdjustedSurface;
import io.github.bedjoint.texture.Bond;
import io.github.bedjoint.texture.ContourProfile;
import io.github.bedjoint.texture.Diagonal;
import io.github.bedjoint.texture.FlatSurface;
import io.github.bedjoint.texture.GaugeTolerance;
import io.github.bedjoint.texture.GridSurface;
import io.github.bedjoint.texture.HeightGrid;
import io.github.bedjoint.texture.JointProfile;
import io.github.bedjoint.texture.MasonrySurface;
import io.github.bedjoint.texture.MasonryTolerance;
import io.github.bedjoint.texture.MasonryUnits;
import io.github.bedjoint.texture.ProfileSurface;
import io.github.bedjoint.texture.SpotSurface;
import io.github.bedjoint.texture.Surface;
import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.Read;
import io.github.bedjoint.units.ShopUnits;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;

/** Reads a surface: flat, masonry in closed form, contour profiles, spot depths, a height grid, or one of these at another ratio. */
final class SurfaceReader {
    private static final Range PLACE = Range.closed(-1000, 1000);

    private SurfaceReader() {}

    static Surface surface(Fields f) {
        return switch (f.text("kind")) {
            case "flat" -> FlatSurface.flat();
            case "masonry" -> joined(f);
            case "spots" -> spots(f);
            case "profile" -> profiles(f);
            case "grid" -> grid(f);
            case "adjusted" -> AdjustedSurface.of(f.object("shape", SurfaceReader::surface), f.number("areaRatio"));
            default -> throw f.get("kind").refused("must be one of flat, masonry, spots, profile, grid, adjusted", "Maybe the spelling differs.");
        };
    }

    private static MasonrySurface masonry(Fields f, JointProfile beds) {
        MasonrySurface surface = f.get("unit").scalar() == null ? sized(f, beds) : MasonrySurface.of(f.read("unit", MasonryUnits::named), beds);
        surface = f.with(surface, "bond", n -> f.word(n, Bond.class), MasonrySurface::withBond);
        return f.with(surface, "faceRatio", f::number, MasonrySurface::withFaceRatio);
    }

    private static MasonrySurface sized(Fields f, JointProfile beds) {
        List<Quantity<Length>> unit = f.object("unit", u -> List.of(u.read("length", Read::length), u.read("height", Read::length)));
        String head = f.has("headJoint") ? "headJoint" : "joint";
        String bed = f.has("bedJoint") ? "bedJoint" : "joint";
        return MasonrySurface.of(unit.get(0), unit.get(1), f.read(head, Read::length), f.read(bed, Read::length), beds);
    }

    private static Surface joined(Fields f) {
        MasonrySurface surface = masonry(f, f.object("profile", SurfaceReader::profile));
        surface = f.with(surface, "headProfile", n -> f.object(n, SurfaceReader::profile), MasonrySurface::withHeads);
        return f.with(surface, "tolerances", n -> f.object(n, SurfaceReader::tolerance), MasonrySurface::withTolerance);
    }

    private static MasonryTolerance tolerance(Fields f) {
        MasonryTolerance u = MasonryTolerance.none();
        u = f.with(u, "unitLength", n -> f.read(n, Read::length), MasonryTolerance::withUnitLength);
        u = f.with(u, "unitHeight", n -> f.read(n, Read::length), MasonryTolerance::withUnitHeight);
        u = f.with(u, "headJoint", n -> f.read(n, Read::length), MasonryTolerance::withHeadJoint);
        u = f.with(u, "bedJoint", n -> f.read(n, Read::length), MasonryTolerance::withBedJoint);
        u = f.with(u, "depth", n -> f.read(n, Read::length), MasonryTolerance::withDepth);
        u = f.with(u, "degrees", f::number, (all, degrees) -> all.withAngle(Door.of(degrees, JointProfile.DEGREE)));
        return f.with(u, "faceRatio", f::number, MasonryTolerance::withFaceRatio);
    }

    /** The profiles of the model only say whether heads stay flush: they do beside beds that are not. */
    private static Surface spots(Fields f) {
        JointProfile.Kind kind = f.word("readAs", JointProfile.Kind.class);
        boolean flushHeads = f.has("headsFlush") && f.flag("headsFlush");
        MasonrySurface wall = masonry(f, flushHeads ? JointProfile.halfRound() : JointProfile.flush());
        List<Quantity<Length>> depths = f.list("depths", WallReader::length);
        return SpotSurface.of(flushHeads ? wall.withHeads(JointProfile.flush()) : wall, kind, depths);
    }

    private static Surface profiles(Fields f) {
        ProfileSurface surface = directions(f);
        return f.with(surface, "tolerances", n -> f.object(n, SurfaceReader::gauge), ProfileSurface::withTolerance);
    }

    private static GaugeTolerance gauge(Fields f) {
        GaugeTolerance u = f.with(GaugeTolerance.none(), "height", n -> f.read(n, Read::length), GaugeTolerance::withHeight);
        return f.with(u, "place", n -> f.read(n, Read::length), GaugeTolerance::withPlace);
    }

    private static ProfileSurface directions(Fields f) {
        Optional<ContourProfile> up = f.has("up") ? Optional.of(contour(f, "up")) : Optional.empty();
        Optional<ContourProfile> along = f.has("along") ? Optional.of(contour(f, "along")) : Optional.empty();
        if (up.isPresent() && along.isPresent()) {
            return ProfileSurface.of(up.get(), along.get());
        }
        return up.map(ProfileSurface::up).or(() -> along.map(ProfileSurface::along)).orElseGet(() ->
                ProfileSurface.up(contour(f, f.oneOf("up", "along"))));
    }

    private static ContourProfile contour(Fields f, String name) {
        List<double[]> points = f.list(name, SurfaceReader::point);
        double[] places = points.stream().mapToDouble(point -> point[0]).toArray();
        double[] heights = points.stream().mapToDouble(point -> point[1]).toArray();
        return Fields.under(f.get(name), () -> ContourProfile.of(places, heights, ShopUnits.METRE));
    }

    private static double[] point(JsonNode node) {
        List<JsonNode> pair = node.items();
        if (pair == null || pair.size() != 2) {
            throw node.refused("must be a pair [place, height] of lengths", "Maybe brackets are missing.");
        }
        return pair.stream().mapToDouble(length -> Door.lengthM("place or height", WallReader.length(length), PLACE)).toArray();
    }

    private static Surface grid(Fields f) {
        String pitchX = f.has("pitchX") ? "pitchX" : "pitch";
        String pitchY = f.has("pitchY") ? "pitchY" : "pitch";
        Quantity<Length> heightUnit = f.read("heightUnit", Read::length);
        double[][] heights = f.list("rows", SurfaceReader::row).toArray(new double[0][]);
        Quantity<Length> x = f.read(pitchX, Read::length);
        Quantity<Length> y = f.read(pitchY, Read::length);
        HeightGrid grid = Fields.under(f.get("rows"), () -> HeightGrid.of(
                heights, x, y, ShopUnits.METRE.multiply(Door.lengthM("height unit", heightUnit, Range.above(0, 1)))));
        Diagonal diagonal = f.has("diagonal") ? f.word("diagonal", Diagonal.class) : Diagonal.FALLING;
        Optional<Quantity<Length>> noise = f.optional("tolerances", u -> u.read("height", Read::length));
        try {
            GridSurface surface = f.has("window") ? GridSurface.of(grid, diagonal, f.read("window", Read::length)) : GridSurface.of(grid, diagonal);
            return noise.isPresent() ? surface.withHeightUncertainty(noise.get()) : surface;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static double[] row(JsonNode node) {
        if (node.items() == null) {
            throw node.refused("must be an array of heights", "Maybe square brackets are missing.");
        }
        return node.items().stream().mapToDouble(SurfaceReader::height).toArray();
    }

    /** JSON knows no NaN: a height that is missing is null. */
    private static double height(JsonNode node) {
        if (node.scalar() instanceof BigDecimal height) {
            return height.doubleValue();
        }
        if (node.scalar() == null && node.fields() == null && node.items() == null) {
            return Double.NaN;
        }
        throw node.refused("must be a number, or null where a height is missing", "Maybe remove the quotation marks.");
    }

    static JointProfile profile(Fields f) {
        return switch (f.word("kind", JointProfile.Kind.class)) {
            case FLUSH -> JointProfile.flush();
            case RAKED -> JointProfile.raked(f.read("depth", Read::length));
            case V -> vee(angle(f));
            case CONCAVE -> JointProfile.concave(f.read("sagitta", Read::length));
            case HALF_ROUND -> JointProfile.halfRound();
            case STRUCK -> JointProfile.struck(f.read("recess", Read::length));
            case WEATHERED -> JointProfile.weathered(f.read("recess", Read::length));
        };
    }

    static JointProfile vee(double degrees) {
        return JointProfile.vee(Door.of(degrees, JointProfile.DEGREE));
    }

    private static double angle(Fields f) {
        return f.with(90.0, "degrees", f::number, (right, degrees) -> Door.number("angle", degrees, Range.above(0, 180)));
    }
}
