package io.github.bedjoint.texture;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Print;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Working;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * A wall of units in mortar, in closed form: unit faces, bed and head joints of one profile each, a bond, and faces that may be rough.
 *
 * <p>Without more the heads have the profile of the beds, the bond is stretcher and the faces are smooth. Joints are as sound as drawn: broken arrises
 * and smears are not in it, measure those. Tooled joints cut through each other where they cross; past all others the bed
 * runs through. Stored in metres. Immutable.
 */
public final class MasonrySurface implements Surface {
    private static final Range UNIT = Range.above(0, 5);
    private static final Range JOINT = Range.above(0, 0.2);
    private static final Range FACE_RATIO = Range.closed(1, 10);

    private final double stretcherM;
    private final double heightM;
    private final Joint bed;
    private final Joint head;
    private final Bond bond;
    private final double faceRatio;
    private final MasonryTolerance tolerance;

    private final double lengthM;
    private final double cellM2;
    private final double crossingM2;
    private final double jointShare;
    private final double jointsRatio;
    private final double areaRatio;
    private final double faceStretch;

    private MasonrySurface(
            double stretcherM, double heightM, Joint bed, Joint head, Bond bond, double faceRatio, MasonryTolerance tolerance) {
        this.stretcherM = stretcherM;
        this.heightM = heightM;
        this.bed = bed;
        this.head = head;
        this.bond = bond;
        this.faceRatio = faceRatio;
        this.tolerance = tolerance;
        if (bond.hasHeaders() && stretcherM <= head.widthM()) {
            throw new RefusedException(
                    "unit length",
                    Measure.LENGTH.print(stretcherM, UnitStyle.METRIC),
                    "must be more than the head joint in a bond with headers",
                    "Maybe unit and joint are the wrong way round.");
        }
        lengthM = bond.meanLengthM(stretcherM, head.widthM());
        cellM2 = (lengthM + head.widthM()) * (heightM + bed.widthM());
        crossingM2 = crossing().extraM2();
        jointShare = 1 - lengthM * heightM / cellM2;
        jointsRatio = 1 + (lengthM * bed.extraM() + heightM * head.extraM() + crossingM2) / cellM2;
        areaRatio = 1 + (1 - jointShare) * (faceRatio - 1) + (jointsRatio - 1);
        faceStretch = Math.sqrt(faceRatio) - 1;
    }

    /**
     * A wall of units of given face size, in stretcher bond, with smooth faces and heads like the beds.
     *
     * @param unitLength length of a unit's face, above 0, at most 5 m
     * @param unitHeight height of a unit's face, above 0, at most 5 m
     * @param headJoint  width of the head joint, above 0, at most 200 mm
     * @param bedJoint   width of the bed joint, above 0, at most 200 mm
     * @param profile    the profile of beds and heads
     * @return the surface
     * @throws RefusedException if a size is out of range or the profile does not fit into a joint
     */
    public static MasonrySurface of(
            Quantity<Length> unitLength,
            Quantity<Length> unitHeight,
            Quantity<Length> headJoint,
            Quantity<Length> bedJoint,
            JointProfile profile) {
        return of(
                Door.lengthM("unit length", unitLength, UNIT),
                Door.lengthM("unit height", unitHeight, UNIT),
                Door.lengthM("head joint", headJoint, JOINT),
                Door.lengthM("bed joint", bedJoint, JOINT),
                profile);
    }

    /**
     * A wall of units of a format, in stretcher bond, with smooth faces and heads like the beds.
     *
     * @param unit    the format, which gives the joints too
     * @param profile the profile of beds and heads
     * @return the surface
     * @throws RefusedException if the profile does not fit into a joint
     */
    public static MasonrySurface of(MasonryUnit unit, JointProfile profile) {
        return of(unit.lengthM(), unit.heightM(), unit.headJointM(), unit.bedJointM(), profile);
    }

    private static MasonrySurface of(double lengthM, double heightM, double headM, double bedM, JointProfile profile) {
        return new MasonrySurface(
                lengthM,
                heightM,
                new Joint(Joint.Place.BED, profile, bedM),
                new Joint(Joint.Place.HEAD, profile, headM),
                Bond.STRETCHER,
                1,
                MasonryTolerance.none());
    }

    /**
     * The same with head joints of another profile than the beds, such as flush.
     *
     * @param profile the profile of the heads
     * @return the surface
     * @throws RefusedException if the profile does not fit into the head joint
     */
    public MasonrySurface withHeads(JointProfile profile) {
        return new MasonrySurface(
                stretcherM, heightM, bed, new Joint(Joint.Place.HEAD, profile, head.widthM()), bond, faceRatio, tolerance);
    }

    /**
     * The same in another bond; in bonds with headers the length given is that of a stretcher.
     *
     * @param newBond the bond
     * @return the surface
     * @throws RefusedException if a header would have no length
     */
    public MasonrySurface withBond(Bond newBond) {
        return new MasonrySurface(stretcherM, heightM, bed, head, newBond, faceRatio, tolerance);
    }

    /**
     * The same with rough unit faces, such as split ones.
     *
     * @param ratio developed area ratio of the faces alone, 1 to 10, measured on a unit
     * @return the surface
     * @throws RefusedException if the ratio is out of range
     */
    public MasonrySurface withFaceRatio(double ratio) {
        return new MasonrySurface(
                stretcherM, heightM, bed, head, bond, Door.number("face ratio", ratio, FACE_RATIO), tolerance);
    }

    /**
     * The same with standard uncertainties of its sizes.
     *
     * @param uncertainties those of sizes, profile and faces
     * @return the surface
     * @throws RefusedException if a size less its uncertainty, or with it, is no longer possible
     */
    public MasonrySurface withTolerance(MasonryTolerance uncertainties) {
        uncertainties.of(this);
        return new MasonrySurface(stretcherM, heightM, bed, head, bond, faceRatio, uncertainties);
    }

    @Override
    public Optional<RatioUncertainty> uncertainty() {
        return tolerance.isNone() ? Optional.empty() : Optional.of(tolerance.of(this));
    }

    /** A surface of sizes that may lie a little outside what the door accepts. */
    static MasonrySurface of(MasonrySizes sizes) {
        return new MasonrySurface(
                sizes.lengthM(), sizes.heightM(), sizes.bed(), sizes.head(), sizes.bond(), sizes.faceRatio(),
                MasonryTolerance.none());
    }

    MasonrySizes sizes() {
        return new MasonrySizes(stretcherM, heightM, bed, head, bond, faceRatio);
    }

    /** The same with joints of a kind and depth; heads that are flush stay so unless the beds are flush too. */
    MasonrySurface atDepth(JointProfile.Kind kind, double depthM) {
        JointProfile beds = JointProfile.atDepth(kind, depthM, bed.widthM());
        boolean flushHeads = head.profile().kind() == JointProfile.Kind.FLUSH && bed.profile().kind() != JointProfile.Kind.FLUSH;
        JointProfile heads = flushHeads ? head.profile() : JointProfile.atDepth(kind, depthM, head.widthM());
        return new MasonrySurface(
                stretcherM,
                heightM,
                new Joint(Joint.Place.BED, beds, bed.widthM()),
                new Joint(Joint.Place.HEAD, heads, head.widthM()),
                bond,
                faceRatio,
                tolerance);
    }

    /**
     * What the surface was made of.
     *
     * @return sizes, profiles, bond and face ratio as they were given
     */
    public MasonryParts parts() {
        return new MasonryParts(
                stretcherM, heightM, head.widthM(), bed.widthM(), bed.profile(), head.profile(), bond, faceRatio, tolerance);
    }

    private Crossing crossing() {
        return new Crossing(bed, head, bond != Bond.STACK);
    }

    @Override
    public double areaRatio() {
        return areaRatio;
    }

    @Override
    public double localStretchUp() {
        return Math.max(faceStretch, bed.extraM() / bed.widthM());
    }

    @Override
    public double localStretchAlong() {
        return Math.max(faceStretch, head.extraM() / head.widthM());
    }

    @Override
    public double meanStretchUp() {
        return (heightM * faceStretch + bed.extraM()) / (heightM + bed.widthM());
    }

    @Override
    public double meanStretchAlong() {
        return (lengthM * faceStretch + head.extraM()) / (lengthM + head.widthM());
    }

    /**
     * Share of the wall that is joint.
     *
     * @return above 0, below 1
     */
    public double jointShare() {
        return jointShare;
    }

    @Override
    public Optional<JointAreas> joints() {
        return Optional.of(new MasonryJoints(areaRatio, faceRatio, lengthM, heightM, head.widthM() + head.extraM(), cellM2));
    }

    /**
     * A bed joint in section.
     *
     * @return the line from the upper arris to the lower
     */
    public JointSection bedSection() {
        return JointSection.of(bed);
    }

    /**
     * A head joint in section.
     *
     * @return the line from the left arris to the right
     */
    public JointSection headSection() {
        return JointSection.of(head);
    }

    @Override
    public Working working() {
        if (faceRatio == 1) {
            return jointsWorking(MasonryFormulas.RATIO);
        }
        return Working.of(MasonryFormulas.ROUGH, areaRatio, jointShare, faceRatio, jointsRatio)
                .because(
                        Working.of(MasonryFormulas.SHARE, jointShare, lengthM, heightM, cellM2).because(cellWorking()),
                        jointsWorking(MasonryFormulas.JOINTS));
    }

    private Working jointsWorking(Formula formula) {
        Working ratio = Working.of(
                formula, jointsRatio, lengthM, bed.extraM(), heightM, head.extraM(), crossingM2, cellM2);
        Working withLength = bond.hasHeaders() ? ratio.because(bond.lengthWorking(stretcherM, head.widthM())) : ratio;
        return withLength.because(bed.extraWorking(), head.extraWorking(), crossing().working(), cellWorking());
    }

    private Working cellWorking() {
        return Working.of(MasonryFormulas.CELL_AREA, cellM2, lengthM, head.widthM(), heightM, bed.widthM());
    }

    @Override
    public Working stretchWorking() {
        Working face = Working.of(MasonryFormulas.FACE, faceStretch, faceRatio);
        return Working.group(
                "Stretch on masonry",
                List.of(
                        Working.of(
                                        MasonryFormulas.LOCAL,
                                        localStretch(),
                                        faceStretch,
                                        bed.extraM(),
                                        bed.widthM(),
                                        head.extraM(),
                                        head.widthM())
                                .because(face, bed.extraWorking(), head.extraWorking()),
                        Working.of(
                                        MasonryFormulas.MEAN_UP,
                                        meanStretchUp(),
                                        heightM,
                                        faceStretch,
                                        bed.extraM(),
                                        bed.widthM())
                                .because(face, bed.extraWorking()),
                        Working.of(
                                        MasonryFormulas.MEAN_ALONG,
                                        meanStretchAlong(),
                                        lengthM,
                                        faceStretch,
                                        head.extraM(),
                                        head.widthM())
                                .because(face, head.extraWorking())));
    }

    @Override
    public String steepestPlace(UnitStyle style) {
        double local = localStretch();
        if (local == 0) {
            return "";
        }
        if (bed.extraM() / bed.widthM() == local) {
            return bed.describe(style);
        }
        return head.extraM() / head.widthM() == local ? head.describe(style) : "rough unit face";
    }

    @Override
    public String describe(UnitStyle style) {
        String heads = head.profile().equals(bed.profile()) ? "" : ", heads " + head.profile().describe(style);
        String faces = faceRatio == 1 ? "" : ", faces " + Print.number(faceRatio);
        return "masonry " + length(stretcherM, style) + " x " + length(heightM, style) + ", head joints "
                + length(head.widthM(), style) + ", bed joints " + length(bed.widthM(), style) + ", "
                + bed.profile().describe(style) + heads + ", " + bond.name().toLowerCase(Locale.ROOT) + " bond" + faces;
    }

    private static String length(double metres, UnitStyle style) {
        return Measure.LENGTH.print(metres, style);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof MasonrySurface that
                && Double.compare(stretcherM, that.stretcherM) == 0
                && Double.compare(heightM, that.heightM) == 0
                && bed.equals(that.bed)
                && head.equals(that.head)
                && bond == that.bond
                && Double.compare(faceRatio, that.faceRatio) == 0
                && tolerance.equals(that.tolerance);
    }

    @Override
    public int hashCode() {
        return Objects.hash(stretcherM, heightM, bed, head, bond, faceRatio, tolerance);
    }

    /** The surface in words and metric units. */
    @Override
    public String toString() {
        return describe(UnitStyle.METRIC);
    }
}
