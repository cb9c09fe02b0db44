package io.github.bedjoint.texture;

/**
 * What a masonry surface was made of, so that it can be written down and made again.
 *
 * @param unitLengthM face length of a unit in metres, of a stretcher in bonds with headers
 * @param unitHeightM face height of a unit in metres
 * @param headJointM  width of the head joint in metres
 * @param bedJointM   width of the bed joint in metres
 * @param beds        profile of the bed joints
 * @param heads       profile of the head joints
 * @param bond        the bond
 * @param faceRatio   developed area ratio of the unit faces alone, at least 1
 * @param tolerance   standard uncertainties of these
 */
public record MasonryParts(
        double unitLengthM,
        double unitHeightM,
        double headJointM,
        double bedJointM,
        JointProfile beds,
        JointProfile heads,
        Bond bond,
        double faceRatio,
        MasonryTolerance tolerance) {}
