package io.github.bedjoint.texture;

import io.github.bedjoint.units.Print;
import io.github.bedjoint.units.RefusedException;

/**
 * What a masonry surface is worked out from, in metres, so that one size of it can be moved.
 *
 * @param lengthM   face length of a stretcher
 * @param heightM   face height
 * @param bed       bed joint
 * @param head      head joint
 * @param bond      bond
 * @param faceRatio developed area ratio of the faces
 */
record MasonrySizes(double lengthM, double heightM, Joint bed, Joint head, Bond bond, double faceRatio) {

    /** All sizes moved: lengths in metres, the angle in radians. A face ratio moved below 1 is read on past it, as first order asks. */
    MasonrySizes moved(
            double length, double height, double headWidth, double bedWidth, double depth, double angle, double face) {
        return new MasonrySizes(
                possible("unit length", lengthM + length),
                possible("unit height", heightM + height),
                moved(bed, bedWidth, depth, angle),
                moved(head, headWidth, depth, angle),
                bond,
                faceRatio + face);
    }

    private static Joint moved(Joint joint, double width, double depth, double angle) {
        JointProfile profile = joint.profile();
        double by = switch (profile.kind()) {
            case FLUSH, HALF_ROUND -> 0;
            case V -> angle;
            case RAKED, CONCAVE, STRUCK, WEATHERED -> depth;
        };
        JointProfile moved = by == 0 ? profile : profile.resized(possible("size of the joint profile", profile.size() + by));
        return new Joint(joint.place(), moved, possible(joint.place().word + " joint", joint.widthM() + width));
    }

    private static double possible(String parameter, double value) {
        if (value <= 0) {
            throw new RefusedException(
                    parameter + " less its uncertainty",
                    Print.number(value),
                    "must be more than 0",
                    "Maybe the uncertainty was given in another unit.");
        }
        return value;
    }
}
