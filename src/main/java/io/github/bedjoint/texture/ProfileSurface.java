package io.github.bedjoint.texture;

import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Print;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Verdict;
import io.github.bedjoint.working.Working;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A surface known from contour profiles: one up the wall, one along it, or both.
 *
 * <p>Rule for two directions: the extra lengths add, r = R_up + R_along - 1. On a height field this is never too little, since sqrt(1 + p^2 + q^2) is
 * at most sqrt(1 + p^2) + sqrt(1 + q^2) - 1, and never less than the larger of the two; for gentle slopes it is exact. A direction that was not
 * measured counts as straight. Take profiles that cover whole courses or units, or many of them. Immutable.
 */
public final class ProfileSurface implements Surface {
    /** Developed area ratio from length ratios in two directions. */
    public static final Formula RATIO = Formula.of(
            "texture.profiles",
            "Developed area ratio from profiles",
            Symbol.number("r", "developed area ratio"),
            "R_up + R_along - 1",
            Source.geometry("extra lengths of both directions added: an upper bound, exact for gentle slopes"),
            Symbol.number("R_up", "length ratio up the wall"),
            Symbol.number("R_along", "length ratio along the wall"));
    static final Formula UP = mean("texture.profile-up", "Mean stretch up the wall", "e_up", "R_up", "up the wall");
    static final Formula ALONG = mean("texture.profile-along", "Mean stretch along the wall", "e_along", "R_along", "along the wall");
    static final Formula LOCAL = Formula.of(
            "texture.profile-local",
            "Local stretch",
            Symbol.number("e_l", "stretch in the worst hollow"),
            "P_w / w - 1",
            Source.geometry("length along the worst hollow to its width, held at both ends, where a tight film lies on the convex hull"),
            new Symbol("P_w", Measure.LENGTH, "length along the worst hollow"),
            new Symbol("w", Measure.LENGTH, "straight width of that hollow"));
    private static final Source PITCH_RULE = Source.geometry("a step between two points reads as a slope");

    private final @Nullable ContourProfile up;
    private final @Nullable ContourProfile along;
    private final GaugeTolerance tolerance;

    private ProfileSurface(@Nullable ContourProfile up, @Nullable ContourProfile along, GaugeTolerance tolerance) {
        this.up = up;
        this.along = along;
        this.tolerance = tolerance;
    }

    /**
     * A surface measured up the wall and straight along it, such as shiplap.
     *
     * @param profile the profile up the wall
     * @return the surface
     */
    public static ProfileSurface up(ContourProfile profile) {
        return new ProfileSurface(Objects.requireNonNull(profile), null, GaugeTolerance.none());
    }

    /**
     * A surface measured along the wall and straight up it, such as standing ribs.
     *
     * @param profile the profile along the wall
     * @return the surface
     */
    public static ProfileSurface along(ContourProfile profile) {
        return new ProfileSurface(null, Objects.requireNonNull(profile), GaugeTolerance.none());
    }

    /**
     * A surface measured in both directions.
     *
     * @param up    the profile up the wall
     * @param along the profile along the wall
     * @return the surface
     */
    public static ProfileSurface of(ContourProfile up, ContourProfile along) {
        return new ProfileSurface(Objects.requireNonNull(up), Objects.requireNonNull(along), GaugeTolerance.none());
    }

    /**
     * The same with standard uncertainties of the gauge's points.
     *
     * @param uncertainties those of one point, the same in both directions
     * @return the surface
     */
    public ProfileSurface withTolerance(GaugeTolerance uncertainties) {
        return new ProfileSurface(up, along, uncertainties);
    }

    /**
     * Standard uncertainties of the gauge's points.
     *
     * @return those of one point
     */
    public GaugeTolerance tolerance() {
        return tolerance;
    }

    /** First order for both directions, and what the errors add on the average. */
    @Override
    public Optional<RatioUncertainty> uncertainty() {
        if (tolerance.isNone()) {
            return Optional.empty();
        }
        List<RatioUncertainty.Part> parts = new ArrayList<>();
        for (ContourProfile profile : new ContourProfile[] {up, along}) {
            if (profile != null) {
                String direction = profile == up ? "up the wall" : "along the wall";
                if (tolerance.heightM() > 0) {
                    parts.add(GaugeNoise.ofHeights("heights of the points " + direction, tolerance.heightM(), profile));
                }
                if (tolerance.placeM() > 0) {
                    parts.add(GaugeNoise.ofPlaces("places of the points " + direction, tolerance.placeM(), profile));
                }
            }
        }
        return Optional.of(new RatioUncertainty(areaRatio(), parts));
    }

    @Override
    public List<Verdict> measuring() {
        return Stream.concat(Stream.of(scale()), uncertainty().flatMap(RatioUncertainty::noise).stream()).toList();
    }

    /**
     * What was measured up the wall.
     *
     * @return the profile, or empty where none was taken
     */
    public Optional<ContourProfile> upProfile() {
        return Optional.ofNullable(up);
    }

    /**
     * What was measured along the wall.
     *
     * @return the profile, or empty where none was taken
     */
    public Optional<ContourProfile> alongProfile() {
        return Optional.ofNullable(along);
    }

    private static double ratio(@Nullable ContourProfile profile) {
        return profile == null ? 1 : profile.ratio();
    }

    @Override
    public double areaRatio() {
        return ratio(up) + ratio(along) - 1;
    }

    @Override
    public double meanStretchUp() {
        return ratio(up) - 1;
    }

    @Override
    public double meanStretchAlong() {
        return ratio(along) - 1;
    }

    @Override
    public double localStretchUp() {
        return up == null ? 0 : up.worst().stretch();
    }

    @Override
    public double localStretchAlong() {
        return along == null ? 0 : along.worst().stretch();
    }

    private ContourProfile.Span worst() {
        if (up == null || along == null) {
            return Objects.requireNonNull(up == null ? along : up).worst();
        }
        return up.worst().stretch() >= along.worst().stretch() ? up.worst() : along.worst();
    }

    /**
     * What the distance of the points hides: a warning with the possible ratio when a piece is steeper than 45 degrees but not upright.
     *
     * @return the verdict
     */
    public Verdict scale() {
        double stepped = 1;
        StringBuilder pitch = new StringBuilder();
        for (ContourProfile profile : new ContourProfile[] {up, along}) {
            if (profile != null) {
                stepped += profile.steppedRatio() - 1;
                pitch.append(pitch.isEmpty() ? "" : " and ").append(Measure.LENGTH.print(profile.meanPitchM(), UnitStyle.METRIC));
            }
        }
        boolean hidden = stepped > areaRatio() + 1e-9;
        return new Verdict(
                hidden ? Verdict.Level.WARNING : Verdict.Level.FINE,
                "spacing of the profile",
                "points " + pitch + " apart on average"
                        + (hidden
                                ? "; pieces are steeper than 45°, as upright steps the ratio would be " + Print.fixed(stepped, 4) + " and not "
                                        + Print.fixed(areaRatio(), 4)
                                : ", no hidden steps"),
                PITCH_RULE);
    }

    @Override
    public Working working() {
        Working ratio = Working.of(RATIO, areaRatio(), ratio(up), ratio(along)).noting(scale().reason() + ".");
        for (ContourProfile profile : new ContourProfile[] {up, along}) {
            ratio = profile == null ? ratio : ratio.because(profile.working().whose(profile == up ? "up the wall" : "along the wall"));
        }
        return ratio;
    }

    @Override
    public Working stretchWorking() {
        ContourProfile.Span worst = worst();
        return Working.group(
                "Stretch on profiles",
                List.of(
                        Working.of(LOCAL, localStretch(), worst.lengthM(), worst.chordM()),
                        Working.of(UP, meanStretchUp(), ratio(up)),
                        Working.of(ALONG, meanStretchAlong(), ratio(along))));
    }

    @Override
    public String steepestPlace(UnitStyle style) {
        ContourProfile.Span worst = worst();
        return worst.stretch() == 0
                ? ""
                : "hollow from " + Measure.LENGTH.print(worst.fromM(), style) + " to " + Measure.LENGTH.print(worst.toM(), style)
                        + " of the profile";
    }

    @Override
    public String describe(UnitStyle style) {
        String directions = up == null ? "along the wall" : along == null ? "up the wall" : "up and along the wall";
        return "measured with a contour gauge " + directions;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof ProfileSurface that
                && Objects.equals(up, that.up)
                && Objects.equals(along, that.along)
                && tolerance.equals(that.tolerance);
    }

    @Override
    public int hashCode() {
        return Objects.hash(up, along, tolerance);
    }

    /** The surface in words. */
    @Override
    public String toString() {
        return describe(UnitStyle.METRIC);
    }

    private static Formula mean(String id, String title, String letter, String ratio, String direction) {
        return Formula.of(
                id,
                title,
                Symbol.number(letter, "mean stretch " + direction),
                ratio + " - 1",
                Source.geometry("length along the profile to its straight length"),
                Symbol.number(ratio, "length ratio " + direction));
    }
}
