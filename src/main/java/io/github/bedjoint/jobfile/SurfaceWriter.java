package io.github.bedjoint.jobfile;

import io.github.bedjoint.texture.AdjustedSurface;
import io.github.bedjoint.texture.ContourProfile;
import io.github.bedjoint.texture.FlatSurface;
import io.github.bedjoint.texture.GaugeTolerance;
import io.github.bedjoint.texture.GridSurface;
import io.github.bedjoint.texture.JointProfile;
import io.github.bedjoint.texture.MasonryParts;
import io.github.bedjoint.texture.MasonrySurface;
import io.github.bedjoint.texture.MasonryTolerance;
import io.github.bedjoint.texture.ProfileSurface;
import io.github.bedjoint.texture.SpotSurface;
import io.github.bedjoint.texture.Surface;
import java.io.IOException;

/** Writes a surface: flat, masonry in closed form, contour profiles, spot depths, a height grid, or one of these at another ratio. */
final class SurfaceWriter {
    private final JsonOut out;

    SurfaceWriter(JsonOut out) {
        this.out = out;
    }

    void write(Surface surface) throws IOException {
        if (surface instanceof MasonrySurface masonry) {
            masonry(masonry.parts());
        } else if (surface instanceof SpotSurface spots) {
            spots(spots);
        } else if (surface instanceof ProfileSurface profiles) {
            profiles(profiles);
        } else if (surface instanceof GridSurface grid) {
            grid(grid);
        } else if (surface instanceof AdjustedSurface adjusted) {
            out.field("kind", "adjusted");
            out.number("areaRatio", adjusted.areaRatio());
            out.object("shape", () -> write(adjusted.shape()));
        } else if (surface instanceof FlatSurface) {
            out.field("kind", "flat");
        }
    }

    private void masonry(MasonryParts parts) throws IOException {
        out.field("kind", "masonry");
        unit(parts);
        out.object("profile", () -> profile(parts.beds()));
        out.object("headProfile", () -> profile(parts.heads()));
        if (!parts.tolerance().isNone()) {
            out.object("tolerances", () -> tolerances(parts.tolerance()));
        }
    }

    private void unit(MasonryParts parts) throws IOException {
        out.object("unit", () -> {
            out.sized("length", parts.unitLengthM(), "m");
            out.sized("height", parts.unitHeightM(), "m");
        });
        out.sized("headJoint", parts.headJointM(), "m");
        out.sized("bedJoint", parts.bedJointM(), "m");
        out.word("bond", parts.bond());
        out.number("faceRatio", parts.faceRatio());
    }

    private void tolerances(MasonryTolerance all) throws IOException {
        for (MasonryTolerance.Input input : MasonryTolerance.Input.values()) {
            double u = all.inner(input);
            if (u > 0) {
                switch (input) {
                    case UNIT_LENGTH -> out.sized("unitLength", u, "m");
                    case UNIT_HEIGHT -> out.sized("unitHeight", u, "m");
                    case HEAD_JOINT -> out.sized("headJoint", u, "m");
                    case BED_JOINT -> out.sized("bedJoint", u, "m");
                    case DEPTH -> out.sized("depth", u, "m");
                    case ANGLE -> out.number("degrees", degrees(u));
                    case FACE_RATIO -> out.number("faceRatio", u);
                }
            }
        }
    }

    private void spots(SpotSurface spots) throws IOException {
        MasonryParts parts = spots.wall().parts();
        out.field("kind", "spots");
        unit(parts);
        out.word("readAs", spots.kind());
        out.flag("headsFlush", parts.heads().kind() == JointProfile.Kind.FLUSH && parts.beds().kind() != JointProfile.Kind.FLUSH);
        out.array("depths", () -> {
            for (double depthM : spots.depthsM()) {
                out.text(JsonOut.sized(depthM, "m"));
            }
        });
    }

    private void profiles(ProfileSurface profiles) throws IOException {
        out.field("kind", "profile");
        if (profiles.upProfile().isPresent()) {
            out.array("up", () -> points(profiles.upProfile().get()));
        }
        if (profiles.alongProfile().isPresent()) {
            out.array("along", () -> points(profiles.alongProfile().get()));
        }
        GaugeTolerance gauge = profiles.tolerance();
        if (!gauge.isNone()) {
            out.object("tolerances", () -> {
                out.sized("height", gauge.heightM(), "m");
                out.sized("place", gauge.placeM(), "m");
            });
        }
    }

    private void points(ContourProfile profile) throws IOException {
        double[] places = profile.placesM();
        double[] heights = profile.heightsM();
        for (int i = 0; i < places.length; i++) {
            out.pair(JsonOut.sized(places[i], "m"), JsonOut.sized(heights[i], "m"));
        }
    }

    /** A grid from a file is written with all its heights, since a job file stands alone. */
    private void grid(GridSurface surface) throws IOException {
        out.field("kind", "grid");
        out.sized("pitchX", surface.grid().pitchX().getValue().doubleValue(), "m");
        out.sized("pitchY", surface.grid().pitchY().getValue().doubleValue(), "m");
        out.field("heightUnit", "1 m");
        out.word("diagonal", surface.diagonal());
        out.sized("window", surface.askedWindowM(), "m");
        out.array("rows", () -> {
            for (double[] row : surface.grid().heightsM()) {
                out.row(row);
            }
        });
        if (surface.heightUncertaintyM() > 0) {
            out.object("tolerances", () -> out.sized("height", surface.heightUncertaintyM(), "m"));
        }
    }

    private void profile(JointProfile profile) throws IOException {
        out.word("kind", profile.kind());
        switch (profile.kind()) {
            case RAKED -> out.sized("depth", profile.size(), "m");
            case V -> out.number("degrees", degrees(profile.size()));
            case CONCAVE -> out.sized("sagitta", profile.size(), "m");
            case STRUCK, WEATHERED -> out.sized("recess", profile.size(), "m");
            case FLUSH, HALF_ROUND -> { }
        }
    }

    /** The degrees that are read back as this angle; the nearest, since a radian has no end in degrees. */
    private static double degrees(double radians) {
        double nearest = Math.round(Math.toDegrees(radians) * 1e9) / 1e9;
        for (double degrees : new double[] {nearest, Math.toDegrees(radians), Math.nextUp(nearest), Math.nextDown(nearest)}) {
            if (SurfaceReader.vee(degrees).size() == radians) {
                return degrees;
            }
        }
        return Math.toDegrees(radians);
    }
}
