package io.github.bedjoint.texture;

import java.util.ArrayList;
import java.util.List;

/**
 * A joint in section: the line along its profile from one arris to the other.
 *
 * @param profile the profile
 * @param widthM  the joint's width in metres
 * @param line    the line, from the upper arris of a bed or the left one of a head; arcs are drawn as short chords
 */
public record JointSection(JointProfile profile, double widthM, List<Turn> line) {
    /** Chords in an arc: its length comes out short by less than one part in 5000. */
    private static final int CHORDS = 64;

    /**
     * A place on the line.
     *
     * @param acrossM from the upper or left arris, in metres
     * @param depthM  behind the faces of the units, in metres
     */
    public record Turn(double acrossM, double depthM) {}

    /**
     * Copies the line.
     *
     * @param profile the profile
     * @param widthM  the joint's width in metres
     * @param line    the line
     */
    public JointSection {
        line = List.copyOf(line);
    }

    static JointSection of(Joint joint) {
        double j = joint.widthM();
        double d = joint.depthM();
        List<Turn> line = switch (joint.profile().kind()) {
            case FLUSH -> List.of(new Turn(0, 0), new Turn(j, 0));
            case RAKED -> List.of(new Turn(0, 0), new Turn(0, d), new Turn(j, d), new Turn(j, 0));
            case V -> List.of(new Turn(0, 0), new Turn(j / 2, d), new Turn(j, 0));
            case CONCAVE, HALF_ROUND -> arc(joint);
            case STRUCK -> List.of(new Turn(0, 0), new Turn(j, d), new Turn(j, 0));
            case WEATHERED -> List.of(new Turn(0, 0), new Turn(0, d), new Turn(j, 0));
        };
        return new JointSection(joint.profile(), j, line);
    }

    /** Chords of equal angle, so that a half round joint is as smooth at its arrises as in its middle. */
    private static List<Turn> arc(Joint joint) {
        double rho = joint.radiusM();
        double half = joint.halfAngle();
        double bottom = rho - joint.depthM();
        List<Turn> line = new ArrayList<>();
        line.add(new Turn(0, 0));
        for (int i = 1; i < CHORDS; i++) {
            double angle = half * (2.0 * i / CHORDS - 1);
            line.add(new Turn(joint.half() + rho * Math.sin(angle), rho * Math.cos(angle) - bottom));
        }
        line.add(new Turn(joint.widthM(), 0));
        return line;
    }

    /**
     * The greatest depth.
     *
     * @return metres behind the faces of the units
     */
    public double depthM() {
        return line.stream().mapToDouble(Turn::depthM).max().orElse(0);
    }

    /**
     * The length of film that follows the joint from arris to arris.
     *
     * @return metres along the line
     */
    public double lengthM() {
        double length = 0;
        for (int i = 1; i < line.size(); i++) {
            Turn a = line.get(i - 1);
            Turn b = line.get(i);
            length += Math.hypot(b.acrossM() - a.acrossM(), b.depthM() - a.depthM());
        }
        return length;
    }
}
