package io.github.bedjoint.layout;

import io.github.bedjoint.survey.Side;
import java.util.Optional;

/** From where panels are counted and in which order they are hung. */
record Hanging(Direction direction, Side dropStart, Side bandStart, Optional<Side> weather) {

    Frame frame(Direction way) {
        return new Frame(way, way == Direction.DROPS ? dropStart : bandStart);
    }

    /** Whether strips are hung in the order of u: away from the start, unless weather comes from there; bands always from below. */
    boolean ascending(Direction way) {
        return way == Direction.DROPS ? weather.map(side -> side != dropStart).orElse(true) : bandStart == Side.BOTTOM;
    }

    /** Whether pieces of one strip are hung in the order of v: from below, and from the left unless weather comes from there. */
    boolean lowPieceFirst(Direction way) {
        return way == Direction.DROPS || weather.map(side -> side != Side.LEFT).orElse(true);
    }
}
