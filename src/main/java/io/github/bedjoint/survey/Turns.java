package io.github.bedjoint.survey;

import io.github.bedjoint.texture.TakeUp;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Where film is turned around a corner or into an opening, which must not carry tension. */
public final class Turns {
    private static final Source RULE = Source.practice("film over corners and in recesses carries no tension");

    private Turns() {}

    /**
     * Whether film that still has to stretch is turned on a wall.
     *
     * @param wall   the wall
     * @param takeUp the shares of film fed in along the texture
     * @return a caution that names the places, or empty where nothing is turned or nothing is left to stretch
     */
    public static Optional<Verdict> verdict(Wall wall, TakeUp takeUp) {
        List<String> places = places(wall);
        return places.isEmpty() || takeUp.leftLocal(wall.surface()) == 0
                ? Optional.empty()
                : Optional.of(new Verdict(
                        Verdict.Level.CAUTION,
                        wall.name() + ": corners and recesses",
                        "film that stretches over the texture is turned at " + String.join(", ", places)
                                + ": lay it there without tension and heat it once more, or end it before the turn",
                        RULE));
    }

    private static List<String> places(Wall wall) {
        List<String> places = new ArrayList<>();
        for (Side side : Side.values()) {
            Edge edge = wall.edge(side);
            boolean corner = edge.kind() == Edge.Kind.OUTSIDE_CORNER || edge.kind() == Edge.Kind.INSIDE_CORNER;
            if (corner && edge.extraSteps() > 0) {
                places.add("the " + words(edge.kind()) + " on the " + words(side));
            }
        }
        long turned = wall.openings().stream().filter(opening -> opening.turnSteps() > 0).count();
        if (turned > 0) {
            places.add(turned == 1 ? "one opening" : turned + " openings");
        }
        return places;
    }

    private static String words(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
