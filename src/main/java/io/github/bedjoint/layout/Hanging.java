package io.github.bedjoint.layout;

import io.github.bedjoint.survey.Side;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * From where panels are counted and in which order they are hung.
 *
 * @param direction   which way panels run
 * @param drops       where drops start, if it was said
 * @param bands       where bands start, if it was said
 * @param eitherStart whether the cheaper of both sides is taken, or was
 * @param weather     from where weather or traffic comes, if it was said
 */
record Hanging(Direction direction, Optional<Side> drops, Optional<Side> bands, boolean eitherStart, Optional<Side> weather) {
    static final Hanging PLAIN = new Hanging(Direction.DROPS, Optional.empty(), Optional.empty(), false, Optional.empty());

    Hanging withDirection(Direction other) {
        return new Hanging(other, drops, bands, eitherStart, weather);
    }

    Hanging withStart(Side side) {
        return at(side, false);
    }

    private Hanging at(Side side, boolean chosen) {
        return side == Side.LEFT || side == Side.RIGHT
                ? new Hanging(direction, Optional.of(side), bands, chosen, weather)
                : new Hanging(direction, drops, Optional.of(side), chosen, weather);
    }

    Hanging withEitherStart() {
        return new Hanging(direction, Optional.empty(), Optional.empty(), true, weather);
    }

    Hanging withWeather(Side side) {
        return new Hanging(direction, drops, bands, eitherStart, Optional.of(side));
    }

    /**
     * Each single direction with a single start that is to be tried, drops first, and left and bottom before right and top. Both starts
     * are where either was asked for, and where direction or seams are chosen and no start was said.
     */
    List<Hanging> tried(Fit fit) {
        boolean chooses = eitherStart || direction == Direction.CHEAPEST || fit == Fit.CHEAPEST;
        return directions().map(this::withDirection).flatMap(one -> one.starts(chooses)).toList();
    }

    private Stream<Direction> directions() {
        return direction == Direction.CHEAPEST ? Stream.of(Direction.DROPS, Direction.BANDS) : Stream.of(direction);
    }

    private Stream<Hanging> starts(boolean chooses) {
        Side across = direction == Direction.DROPS ? Side.RIGHT : Side.TOP;
        return chooses && said().isEmpty() ? Stream.of(at(start(), true), at(across, true)) : Stream.of(this);
    }

    private Optional<Side> said() {
        return direction == Direction.DROPS ? drops : bands;
    }

    Side dropStart() {
        return drops.orElse(Side.LEFT);
    }

    Side bandStart() {
        return bands.orElse(Side.BOTTOM);
    }

    /** Where panels of this single direction start. */
    Side start() {
        return direction == Direction.DROPS ? dropStart() : bandStart();
    }

    Frame frame() {
        return new Frame(direction, start());
    }

    /** Whether strips are hung in the order of u: away from the start, unless weather comes from there; bands always from below. */
    boolean ascending() {
        return direction == Direction.DROPS ? weather.map(side -> side != dropStart()).orElse(true) : bandStart() == Side.BOTTOM;
    }

    /** Whether pieces of one strip are hung in the order of v: from below, and from the left unless weather comes from there. */
    boolean lowPieceFirst() {
        return direction == Direction.DROPS || weather.map(side -> side != Side.LEFT).orElse(true);
    }
}
