package io.github.bedjoint.texture;

import io.github.bedjoint.units.Measure;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;
import java.util.Map;

/** How much longer a joint is along its profile than it is wide, one formula for each shape; computed by {@link Joint#extraM()}. */
final class JointFormulas {
    static final Map<Joint.Place, Formula> FLUSH = extra("flush", "0 * j_", "a flush joint is as long across as it is wide", width());
    static final Map<Joint.Place, Formula> RAKED = extra("raked", "2 * d_", "two square sides", depth());
    static final Map<Joint.Place, Formula> VEE =
            extra("vee", "j_ * (1 / sin(t_ / 2) - 1)", "two slopes that meet in the middle", width(), angle());
    static final Map<Joint.Place, Formula> CONCAVE = extra(
            "concave",
            "2 * rho_ * phi_ - j_",
            "arc of a circle",
            letters -> letters.length("rho", "radius of the arc"),
            letters -> letters.symbol("phi", Measure.ANGLE, "half the angle of the arc"),
            width());
    static final Map<Joint.Place, Formula> HALF_ROUND = extra("half-round", "j_ * (pi / 2 - 1)", "half a circle", width());
    static final Map<Joint.Place, Formula> SLOPED =
            extra("sloped", "sqrt(j_^2 + d_^2) + d_ - j_", "a slope and the square side it is set back by", width(), depth());

    private JointFormulas() {}

    private interface Letter {
        Symbol in(JointLetters letters);
    }

    private static Map<Joint.Place, Formula> extra(String name, String text, String geometry, Letter... letters) {
        return JointLetters.both(place -> {
            Symbol[] symbols = new Symbol[letters.length];
            for (int i = 0; i < letters.length; i++) {
                symbols[i] = letters[i].in(place);
            }
            return Formula.of(
                    place.id("extra-" + name),
                    "Extra length across the " + place.place().word + " joint",
                    place.length("x", "length along the profile less the width"),
                    place.text(text),
                    Source.geometry(geometry),
                    symbols);
        });
    }

    private static Letter width() {
        return letters -> letters.length("j", "width");
    }

    private static Letter depth() {
        return letters -> letters.length("d", "depth");
    }

    private static Letter angle() {
        return letters -> letters.symbol("t", Measure.ANGLE, "angle between the slopes");
    }
}
