package io.github.bedjoint.texture;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.ShopUnits;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;

/** Random masonry for the properties, sizes in millimetres so that the same wall can be built in any unit. */
record Walls(
        double length, double height, double head, double bed, Shape beds, Shape heads, Bond bond, double faceRatio) {

    /** A kind of profile with a size as a share: of half the joint for a concave one, of 10 mm for depths, of 180 degrees for a V. */
    record Shape(JointProfile.Kind kind, double share) {
        JointProfile in(double jointMm, Unit<Length> unit, double mmInUnit) {
            return switch (kind) {
                case FLUSH -> JointProfile.flush();
                case HALF_ROUND -> JointProfile.halfRound();
                case V -> JointProfile.vee(Door.of(180 * share, JointProfile.DEGREE));
                case CONCAVE -> JointProfile.concave(Door.of(jointMm / 2 * share / mmInUnit, unit));
                case RAKED -> JointProfile.raked(Door.of(10 * share / mmInUnit, unit));
                case STRUCK -> JointProfile.struck(Door.of(10 * share / mmInUnit, unit));
                case WEATHERED -> JointProfile.weathered(Door.of(10 * share / mmInUnit, unit));
            };
        }
    }

    static Arbitrary<Walls> any() {
        Arbitrary<Double> joints = Arbitraries.doubles().between(3, 30);
        Arbitrary<Shape> shapes = Combinators.combine(
                        Arbitraries.of(JointProfile.Kind.class), Arbitraries.doubles().between(0.05, 0.95))
                .as(Shape::new);
        return Combinators.combine(
                        Arbitraries.doubles().between(40, 600),
                        Arbitraries.doubles().between(30, 400),
                        joints,
                        joints,
                        shapes,
                        shapes,
                        Arbitraries.of(Bond.class),
                        Arbitraries.of(1.0, 1.0, 1.1, 2.5))
                .as(Walls::new);
    }

    MasonrySurface in(Unit<Length> unit, double mmInUnit) {
        JointProfile bedProfile = beds.in(Math.min(bed, head), unit, mmInUnit);
        JointProfile headProfile = heads.in(head, unit, mmInUnit);
        return MasonrySurface.of(
                        Door.of(length / mmInUnit, unit),
                        Door.of(height / mmInUnit, unit),
                        Door.of(head / mmInUnit, unit),
                        Door.of(bed / mmInUnit, unit),
                        bedProfile)
                .withHeads(headProfile)
                .withBond(bond)
                .withFaceRatio(faceRatio);
    }

    MasonrySurface inMillimetres() {
        return in(ShopUnits.MILLIMETRE, 1);
    }

    /** The same wall with heads like the beds. */
    MasonrySurface headsAsBeds() {
        return inMillimetres().withHeads(beds.in(Math.min(bed, head), ShopUnits.MILLIMETRE, 1));
    }
}
