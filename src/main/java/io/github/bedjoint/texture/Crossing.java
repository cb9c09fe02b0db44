package io.github.bedjoint.texture;

import io.github.bedjoint.working.Working;

/**
 * Where head joints meet the bed joint: the area there beyond the width of one joint times that of the other.
 *
 * <p>Tooled grooves (V, concave, half round) cut through each other: at every point the deeper one counts, and the head groove ends at the bed's
 * centre line. In every other pair the bed runs through and the head ends at its edge with a step. Each unit has two halves of
 * a crossing, one at its head joint's upper and one at its lower end, so staggered heads and heads in line differ only by
 * the step that stands at the centre line where a head is deeper than the bed.
 *
 * @param bed       the bed joint
 * @param head      the head joint
 * @param staggered whether heads above and below the bed stand apart
 */
record Crossing(Joint bed, Joint head, boolean staggered) {

    /** Extra area for each unit in square metres. */
    double extraM2() {
        double j = bed.widthM();
        return switch (rule()) {
            case THROUGH -> head.widthM() * bed.extraM();
            case RAKED -> 2 * head.widthM() * Math.abs(bed.depthM() - head.depthM());
            case VEE -> head.widthM() * j * (1 / Math.sin(bed.profile().size() / 2) - 1);
            case CONCAVE -> 8 * bed.radiusM() * (j / 2 * bed.halfAngle() - bed.depthM()) - j * j;
            case HALF_ROUND -> (Math.PI - 3) * (j * j);
            case DEEPER -> deeperM2() - head.widthM() * j;
            case STEPPED -> head.widthM() * (bed.extraM() - wallsM()) + stepsM2();
        };
    }

    /** How {@link #extraM2()} came about. */
    Working working() {
        double k = extraM2();
        return switch (rule()) {
            case THROUGH -> Working.of(CrossingFormulas.THROUGH, k, head.widthM(), bed.extraM());
            case RAKED -> Working.of(CrossingFormulas.RAKED, k, head.widthM(), bed.depthM(), head.depthM());
            case VEE -> Working.of(CrossingFormulas.VEE, k, head.widthM(), bed.widthM(), bed.profile().size());
            case CONCAVE -> Working.of(
                            CrossingFormulas.CONCAVE, k, bed.radiusM(), bed.widthM(), bed.halfAngle(), bed.depthM())
                    .because(ArcFormulas.radius(bed), ArcFormulas.angle(bed));
            case HALF_ROUND -> Working.of(CrossingFormulas.HALF_ROUND, k, bed.widthM());
            case DEEPER -> Working.of(CrossingFormulas.DEEPER, k, deeperM2(), head.widthM(), bed.widthM());
            case STEPPED -> Working.of(CrossingFormulas.STEPPED, k, head.widthM(), bed.extraM(), wallsM(), stepsM2());
        };
    }

    private enum Rule {
        THROUGH,
        RAKED,
        VEE,
        CONCAVE,
        HALF_ROUND,
        DEEPER,
        STEPPED
    }

    private Rule rule() {
        JointProfile.Kind kind = bed.profile().kind();
        boolean same = bed.profile().equals(head.profile());
        if (head.profile().kind() == JointProfile.Kind.FLUSH || same && kind.isSloped()) {
            return Rule.THROUGH;
        }
        if (kind == JointProfile.Kind.RAKED && head.profile().kind() == kind) {
            return Rule.RAKED;
        }
        if (!kind.isTooled() || !head.profile().kind().isTooled()) {
            return Rule.STEPPED;
        }
        if (same && kind == JointProfile.Kind.V && (!staggered || head.widthM() <= bed.widthM())) {
            return Rule.VEE;
        }
        if (same && head.widthM() == bed.widthM()) {
            return kind == JointProfile.Kind.CONCAVE ? Rule.CONCAVE : Rule.HALF_ROUND;
        }
        return Rule.DEEPER;
    }

    /** Area of the deeper of two tooled grooves over the whole crossing, and of the steps at its centre line. */
    private double deeperM2() {
        double bedStart = bed.halfWidthAt(head.depthM());
        double headStart = head.halfWidthAt(bed.depthM());
        double inHead = Quadrature.integrate(bedStart, bed.half(), y -> head.alongTo(head.halfWidthAt(bed.depthAt(y))));
        double inBed = Quadrature.integrate(headStart, head.half(), x -> bed.alongTo(bed.halfWidthAt(head.depthAt(x))));
        double step = staggered ? 2 * Quadrature.integrate(0, headStart, x -> head.depthAt(x) - bed.depthM()) : 0;
        return 4 * (inHead + inBed) + 2 * step;
    }

    /** Height of the bed's own square sides, which its extra length counts where a unit stands and not where a head opens. */
    private double wallsM() {
        return switch (bed.profile().kind()) {
            case RAKED -> 2 * bed.depthM();
            case STRUCK, WEATHERED -> bed.depthM();
            default -> 0;
        };
    }

    /** Area of the steps between the end of the head groove and the bed's two edges. */
    private double stepsM2() {
        return switch (bed.profile().kind()) {
            case RAKED -> 2 * stepM2(bed.depthM());
            case STRUCK, WEATHERED -> stepM2(0) + stepM2(bed.depthM());
            default -> 2 * stepM2(0);
        };
    }

    /** Area between the head's profile and a line at a depth. */
    private double stepM2(double depth) {
        double width = head.widthM();
        double deepest = head.depthM();
        return switch (head.profile().kind()) {
            case FLUSH -> depth * width;
            case RAKED -> Math.abs(depth - deepest) * width;
            case STRUCK, WEATHERED -> depth >= deepest
                    ? (depth - deepest / 2) * width
                    : (depth * depth + (deepest - depth) * (deepest - depth)) / (2 * deepest) * width;
            case V, CONCAVE, HALF_ROUND -> {
                double at = head.halfWidthAt(depth);
                yield 2 * Quadrature.integrate(0, at, x -> head.depthAt(x) - depth)
                        + 2 * Quadrature.integrate(at, head.half(), x -> depth - head.depthAt(x));
            }
        };
    }
}
