package io.github.bedjoint.texture;

import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.working.Working;

/**
 * A joint: a profile over a width, and the curve it makes across.
 *
 * @param place   bed or head
 * @param profile the shape
 * @param widthM  the width in metres, above 0
 */
record Joint(Place place, JointProfile profile, double widthM) {

    /** Bed or head. */
    enum Place {
        BED("bed"),
        HEAD("head");

        final String word;

        Place(String word) {
            this.word = word;
        }
    }

    Joint {
        if (profile.kind() == JointProfile.Kind.CONCAVE && profile.size() > widthM / 2 * (1 + 1e-12)) {
            throw new RefusedException(
                    "concave sagitta",
                    Measure.LENGTH.print(profile.size(), UnitStyle.METRIC),
                    "must be at most half the " + place.word + " joint's width of " + Measure.LENGTH.print(widthM, UnitStyle.METRIC),
                    "Maybe the joint is raked or half round.");
        }
    }

    double half() {
        return widthM / 2;
    }

    /** Depth in the middle of the joint, or of its floor, in metres; of a sloped one the recess. */
    double depthM() {
        return switch (profile.kind()) {
            case FLUSH -> 0;
            case RAKED, CONCAVE, STRUCK, WEATHERED -> profile.size();
            case V -> half() / Math.tan(profile.size() / 2);
            case HALF_ROUND -> half();
        };
    }

    /** Radius of the arc, by {@link ArcFormulas#RADIUS}; of a half-round joint half the width. */
    double radiusM() {
        double g = depthM();
        return (widthM * widthM / 4 + g * g) / (2 * g);
    }

    /** Half the angle of the arc, by {@link ArcFormulas#ANGLE}. */
    double halfAngle() {
        return 2 * Math.atan(2 * depthM() / widthM);
    }

    /** Length along the profile less the width, by the formula of {@link JointFormulas} for its kind. */
    double extraM() {
        double j = widthM;
        double size = profile.size();
        return switch (profile.kind()) {
            case FLUSH -> 0;
            case RAKED -> 2 * size;
            case V -> j * (1 / Math.sin(size / 2) - 1);
            case CONCAVE -> 2 * radiusM() * halfAngle() - j;
            case HALF_ROUND -> j * (Math.PI / 2 - 1);
            case STRUCK, WEATHERED -> Math.sqrt(j * j + size * size) + size - j;
        };
    }

    /** How {@link #extraM()} came about. */
    Working extraWorking() {
        double x = extraM();
        double size = profile.size();
        return switch (profile.kind()) {
            case FLUSH -> Working.of(JointFormulas.FLUSH.get(place), x, widthM);
            case RAKED -> Working.of(JointFormulas.RAKED.get(place), x, size);
            case V -> Working.of(JointFormulas.VEE.get(place), x, widthM, size);
            case CONCAVE -> Working.of(JointFormulas.CONCAVE.get(place), x, radiusM(), halfAngle(), widthM)
                    .because(ArcFormulas.radius(this), ArcFormulas.angle(this));
            case HALF_ROUND -> Working.of(JointFormulas.HALF_ROUND.get(place), x, widthM);
            case STRUCK, WEATHERED -> Working.of(JointFormulas.SLOPED.get(place), x, widthM, size);
        };
    }

    /** Depth at a distance from the middle, for the tooled profiles. */
    double depthAt(double u) {
        if (profile.kind() == JointProfile.Kind.V) {
            return Math.max(0, (half() - u) / Math.tan(profile.size() / 2));
        }
        double rho = radiusM();
        return Math.max(0, Math.sqrt(Math.max(0, rho * rho - u * u)) - (rho - depthM()));
    }

    /** Distance from the middle at which a tooled profile has a depth; 0 where it is nowhere that deep. */
    double halfWidthAt(double depth) {
        if (depth >= depthM()) {
            return 0;
        }
        if (profile.kind() == JointProfile.Kind.V) {
            return half() - depth * Math.tan(profile.size() / 2);
        }
        double rho = radiusM();
        double below = depth + rho - depthM();
        return Math.min(half(), Math.sqrt(Math.max(0, rho * rho - below * below)));
    }

    /** Length along a tooled profile from its middle to a distance from the middle. */
    double alongTo(double u) {
        if (profile.kind() == JointProfile.Kind.V) {
            return u / Math.sin(profile.size() / 2);
        }
        double rho = radiusM();
        return rho * Math.asin(Math.min(1, u / rho));
    }

    /** Joint and profile in words: "bed joint raked 5 mm, 10 mm wide". */
    String describe(UnitStyle style) {
        return place.word + " joint " + profile.describe(style) + ", " + Measure.LENGTH.print(widthM, style) + " wide";
    }
}
