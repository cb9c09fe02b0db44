package io.github.bedjoint.layout;

import io.github.bedjoint.survey.Side;
import java.util.List;
import java.util.Optional;

/** From where panels are counted and in which order they are hung; where either start will do, both sides are tried. */
record Hanging(Direction direction, Side dropStart, Side bandStart, boolean eitherStart, Optional<Side> weather) {
    static final Hanging PLAIN = new Hanging(Direction.DROPS, Side.LEFT, Side.BOTTOM, false, Optional.empty());

    Hanging withDirection(Direction other) {
        return new Hanging(other, dropStart, bandStart, eitherStart, weather);
    }

    Hanging withStart(Side side) {
        return side == Side.LEFT || side == Side.RIGHT
                ? new Hanging(direction, side, bandStart, false, weather)
                : new Hanging(direction, dropStart, side, false, weather);
    }

    Hanging withEitherStart() {
        return new Hanging(direction, Side.LEFT, Side.BOTTOM, true, weather);
    }

    Hanging withWeather(Side side) {
        return new Hanging(direction, dropStart, bandStart, eitherStart, Optional.of(side));
    }

    /** Each single direction with a single start that is to be tried, drops first, and left and bottom before right and top. */
    List<Hanging> tried() {
        if (direction == Direction.CHEAPEST) {
            return List.of(Direction.DROPS, Direction.BANDS).stream().flatMap(way -> withDirection(way).tried().stream()).toList();
        }
        Side across = direction == Direction.DROPS ? Side.RIGHT : Side.TOP;
        return eitherStart ? List.of(withStart(start()), withStart(across)) : List.of(this);
    }

    /** Where panels of this single direction start. */
    Side start() {
        return direction == Direction.DROPS ? dropStart : bandStart;
    }

    Frame frame() {
        return new Frame(direction, start());
    }

    /** Whether strips are hung in the order of u: away from the start, unless weather comes from there; bands always from below. */
    boolean ascending() {
        return direction == Direction.DROPS ? weather.map(side -> side != dropStart).orElse(true) : bandStart == Side.BOTTOM;
    }

    /** Whether pieces of one strip are hung in the order of v: from below, and from the left unless weather comes from there. */
    boolean lowPieceFirst() {
        return direction == Direction.DROPS || weather.map(side -> side != Side.LEFT).orElse(true);
    }
}
