package io.github.bedjoint.layout;

import io.github.bedjoint.film.Film;
import io.github.bedjoint.survey.Side;
import io.github.bedjoint.survey.Wall;
import io.github.bedjoint.texture.TakeUp;
import io.github.bedjoint.units.Print;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.working.Working;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Divides one wall for one film in one direction from one side. */
final class Division {
    /** Work on the cheapest seams grows with the square of their number. */
    private static final int MOST_PANELS = 2_000;

    private final Wall wall;
    private final Film film;
    private final Direction way;
    private final Hanging hanging;
    private final Fit fit;
    private final Limits limits;
    private final Rates rates;
    private final SeamRules rules;
    private final Feed across;
    private final Feed lengthwise;
    private final long lap;

    Division(Wall wall, Film film, Hanging hanging, Fit fit, Limits limits, Rates rates, SeamRules rules,
            TakeUp takeUp) {
        this.wall = wall;
        this.film = film;
        this.way = hanging.direction();
        this.hanging = hanging;
        this.fit = fit;
        this.limits = limits;
        this.rates = rates;
        this.rules = rules;
        across = way == Direction.DROPS ? Feed.along(wall, takeUp) : Feed.up(wall, takeUp);
        lengthwise = way == Direction.DROPS ? Feed.up(wall, takeUp) : Feed.along(wall, takeUp);
        lap = limits.overlap() == 0 ? film.leastOverlapSteps() : limits.overlap();
    }

    /** At most so many layouts, the cheapest first; one with reasons where there is none. */
    List<PanelLayout> layouts(int wanted) {
        if (lap < film.leastOverlapSteps() || lap > film.mostOverlapSteps()) {
            return none("an overlap of " + cut(lap) + " is outside the range of " + film.name() + ", " + cut(film.leastOverlapSteps())
                    + " to " + cut(film.mostOverlapSteps()));
        }
        Optional<WallRegions> regions = WallRegions.of(wall, hanging.frame());
        if (regions.isEmpty()) {
            return none("the extra lengths of the edges of " + wall.name() + " meet across a notch of its outline, or make it larger than a wall may be");
        }
        long reach = across.reachSteps(film.printableWidthSteps());
        if (!across.isNone() && reach <= 2 * lap) {
            return none("with the film fed in a panel covers " + cut(reach) + " of wall, not more than two overlaps");
        }
        Region needed = regions.get().needed();
        long width = needed.to(needed.slabs() - 1) - needed.from(0);
        if (width - lap > MOST_PANELS * (reach - lap)) {
            return none("more than " + MOST_PANELS + " panels would lie side by side on " + wall.name() + ": divide it, or take wider film");
        }
        Cutting cutting = new Cutting(regions.get(), rates, lengthwise, limits.longest(), joints(regions.get()));
        return fit == Fit.CHEAPEST ? searched(regions.get(), cutting, wanted) : ruled(regions.get(), cutting);
    }

    private Optional<JointsAcross> joints(WallRegions regions) {
        return limits.joins() && limits.longest() > 2 * (lap + lengthwise.fedSteps(lap))
                ? Optional.of(new JointsAcross(
                        regions, rates, lengthwise, rules, limits.longest(), lap, limits.least(lap), hanging.lowPieceFirst()))
                : Optional.empty();
    }

    private List<PanelLayout> ruled(WallRegions regions, Cutting cutting) {
        List<Run> runs = Run.cover(regions, line(regions), lap, film.printableWidthSteps());
        List<Strip> strips = new ArrayList<>();
        for (Run run : runs) {
            Optional<List<Strip>> row = Strip.in(run, fit, limits.least(lap), film.mostOverlapSteps());
            if (row.isEmpty()) {
                return none("one panel of " + run.count() + " would be narrower on the wall than " + cut(limits.least(lap))
                        + ", even with all of equal width");
            }
            strips.addAll(row.get());
        }
        long longest = strips.stream().mapToLong(cutting::longestFilm).max().orElse(0);
        return longest > limits.longest() ? none(tooLong(longest)) : List.of(layout(regions, cutting, strips, runs, 0));
    }

    private List<PanelLayout> searched(WallRegions regions, Cutting cutting, int wanted) {
        List<PanelLayout> layouts = found(regions, cutting, wanted);
        return layouts.isEmpty() ? none(whyNone(regions)) : layouts;
    }

    private List<PanelLayout> found(WallRegions regions, Cutting cutting, int wanted) {
        SeamSearch search = new SeamSearch(
                regions, cutting, line(regions), rules, lap, film.printableWidthSteps(), limits.least(lap), hanging.ascending(), wanted);
        return search.strips().stream().map(strips -> layout(regions, cutting, strips, List.of(), search.places())).toList();
    }

    private PanelLayout layout(WallRegions regions, Cutting cutting, List<Strip> strips, List<Run> runs, int places) {
        Placement placed = new Placement(
                wall, regions, cutting, rules, across, lengthwise, strips, hanging.ascending(), hanging.lowPieceFirst());
        return PanelLayout.of(this, strips, runs, placed, places);
    }

    private FilmLine line(WallRegions regions) {
        return new FilmLine(across, regions.seen().stretches());
    }

    /** How much wall the printable width covers where film is fed in, or nothing. */
    Working[] reachWorkings() {
        return across.reachWorkings(film.printableWidthSteps());
    }

    /** Whether length is to blame tells a search for pieces of any length. */
    private String whyNone(WallRegions regions) {
        if (limits.longest() < Limits.ANY_LENGTH) {
            List<PanelLayout> longer = found(regions, new Cutting(regions, rates, lengthwise, Limits.ANY_LENGTH, Optional.empty()), 1);
            if (!longer.isEmpty()) {
                return tooLong(longest(longer.get(0)));
            }
        }
        return "no places for seams keep the clearances, the joints and the least sliver on " + wall.name();
    }

    static long longest(PanelLayout layout) {
        return layout.panels().stream().mapToLong(Panel::cutLengthSteps).max().orElse(0);
    }

    private String tooLong(long longest) {
        return "a panel of " + cut(longest) + " is longer than the longest cut, " + cut(limits.longest())
                + (limits.joins() ? ", and no place for a joint across it keeps the clearances, the joints and the least sliver" : "");
    }

    private List<PanelLayout> none(String reason) {
        return List.of(PanelLayout.impossible(this, reason));
    }

    private static String cut(long steps) {
        return Print.cut(steps, UnitStyle.METRIC);
    }

    Wall wall() {
        return wall;
    }

    Film film() {
        return film;
    }

    Direction way() {
        return way;
    }

    Side start() {
        return hanging.start();
    }

    boolean startIsChosen() {
        return hanging.eitherStart();
    }

    long lap() {
        return lap;
    }

    Rates rates() {
        return rates;
    }
}
