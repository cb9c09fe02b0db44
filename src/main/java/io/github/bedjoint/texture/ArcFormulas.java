package io.github.bedjoint.texture;

import io.github.bedjoint.units.Measure;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Working;
import java.util.Map;

/** Radius and angle of the arc of a concave joint, from its width and sagitta. */
final class ArcFormulas {
    static final Map<Joint.Place, Formula> RADIUS = JointLetters.both(letters -> Formula.of(
            letters.id("radius"),
            "Radius of the arc",
            letters.length("rho", "radius of the arc"),
            letters.text("(j_^2 / 4 + g_^2) / (2 * g_)"),
            Source.geometry("intersecting chords"),
            letters.length("j", "width"),
            letters.length("g", "sagitta")));
    static final Map<Joint.Place, Formula> ANGLE = JointLetters.both(letters -> Formula.of(
            letters.id("half-angle"),
            "Half the angle of the arc",
            letters.symbol("phi", Measure.ANGLE, "half the angle of the arc"),
            letters.text("2 * atan(2 * g_ / j_)"),
            Source.geometry("angle at the centre is twice the angle at the arris; no loss of digits as the arc nears half a circle"),
            letters.length("g", "sagitta"),
            letters.length("j", "width")));

    private ArcFormulas() {}

    /** How {@link Joint#radiusM()} came about. */
    static Working radius(Joint joint) {
        return Working.of(RADIUS.get(joint.place()), joint.radiusM(), joint.widthM(), joint.depthM());
    }

    /** How {@link Joint#halfAngle()} came about. */
    static Working angle(Joint joint) {
        return Working.of(ANGLE.get(joint.place()), joint.halfAngle(), joint.depthM(), joint.widthM());
    }
}
