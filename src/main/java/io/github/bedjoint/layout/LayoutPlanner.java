package io.github.bedjoint.layout;

import io.github.bedjoint.film.Film;
import io.github.bedjoint.survey.Side;
import io.github.bedjoint.survey.Wall;
import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Print;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.Steps;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.working.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;

/**
 * Divides a wall into panels: drops of full width from the left with the film's least overlap, unless told otherwise.
 *
 * <p>A panel beside a seam never shows less wall than the least sliver, 100 mm by default: a narrower last panel takes width from its
 * neighbours. A wall that cannot be divided as asked gives a layout with reasons, never an exception. Immutable.
 */
public final class LayoutPlanner {
    /** Where the default of the least sliver comes from. */
    public static final Source LEAST_SLIVER = Source.assumed("100 mm; a strip much narrower than a roller is hard to hang straight");

    private static final long SLIVER = 8000;

    private final Direction direction;
    private final Fit fit;
    private final long overlap;
    private final long leastSliver;
    private final Side dropStart;
    private final Side bandStart;
    private final Optional<Side> weather;
    private final Rates rates;

    private LayoutPlanner(
            Direction direction, Fit fit, long overlap, long leastSliver, Side dropStart, Side bandStart, Optional<Side> weather,
            Rates rates) {
        this.direction = direction;
        this.fit = fit;
        this.overlap = overlap;
        this.leastSliver = leastSliver;
        this.dropStart = dropStart;
        this.bandStart = bandStart;
        this.weather = weather;
        this.rates = rates;
    }

    /**
     * Drops of full width from the left, bands from the bottom, the film's least overlap, only film counting.
     *
     * @return the planner
     */
    public static LayoutPlanner withDefaults() {
        return new LayoutPlanner(
                Direction.DROPS, Fit.FULL_WIDTH, 0, SLIVER, Side.LEFT, Side.BOTTOM, Optional.empty(), Rates.filmOnly());
    }

    /**
     * The same with panels the other way.
     *
     * @param other drops, bands, or the cheaper of the two
     * @return a new planner
     */
    public LayoutPlanner withDirection(Direction other) {
        return new LayoutPlanner(other, fit, overlap, leastSliver, dropStart, bandStart, weather, rates);
    }

    /**
     * The same with another share of widths.
     *
     * @param other full widths with a trimmed last panel, or equal ones
     * @return a new planner
     */
    public LayoutPlanner withFit(Fit other) {
        return new LayoutPlanner(direction, other, overlap, leastSliver, dropStart, bandStart, weather, rates);
    }

    /**
     * The same with an overlap of one's own; a film whose range does not hold it gives a layout with that reason.
     *
     * @param other the overlap, above 0, at most 1 m, brought up to a whole step
     * @return a new planner
     * @throws RefusedException if the overlap is absent or out of range
     */
    public LayoutPlanner withOverlap(Quantity<Length> other) {
        long steps = Steps.up(Door.lengthM("overlap", other, Range.above(0, 1)));
        return new LayoutPlanner(direction, fit, steps, leastSliver, dropStart, bandStart, weather, rates);
    }

    /**
     * The same with another least width of wall that a panel beside a seam must show; the overlap is always a limit as well.
     *
     * @param least 0 to 10 m, brought up to a whole step
     * @return a new planner
     * @throws RefusedException if the length is absent or out of range
     */
    public LayoutPlanner withLeastSliver(Quantity<Length> least) {
        long steps = Steps.up(Door.lengthM("least sliver", least, Range.closed(0, 10)));
        return new LayoutPlanner(direction, fit, overlap, steps, dropStart, bandStart, weather, rates);
    }

    /**
     * The same with full panels from another side on; a trimmed panel comes at the side across.
     *
     * @param side LEFT or RIGHT for drops, BOTTOM or TOP for bands; the other direction's start stays as it is
     * @return a new planner
     */
    public LayoutPlanner withStart(Side side) {
        boolean forDrops = side == Side.LEFT || side == Side.RIGHT;
        return new LayoutPlanner(
                direction, fit, overlap, leastSliver, forDrops ? side : dropStart, forDrops ? bandStart : side, weather, rates);
    }

    /**
     * The same with drops that lap away from a side: they are hung towards it, so that no edge on top faces it. Without one they are
     * hung from the starting side on. Bands always lap over the one below, their edges facing down.
     *
     * @param side LEFT or RIGHT: where weather or traffic comes from
     * @return a new planner
     * @throws RefusedException for BOTTOM and TOP
     */
    public LayoutPlanner withWeatherSide(Side side) {
        if (side != Side.LEFT && side != Side.RIGHT) {
            throw new RefusedException("weather side", side.toString(), "must be LEFT or RIGHT",
                    "Maybe bands are meant: their edges face down in any case.");
        }
        return new LayoutPlanner(direction, fit, overlap, leastSliver, dropStart, bandStart, Optional.of(side), rates);
    }

    /**
     * The same with other rates, by which {@link Direction#CHEAPEST} chooses.
     *
     * @param other what film, panels, seams and cut-outs cost
     * @return a new planner
     */
    public LayoutPlanner withRates(Rates other) {
        return new LayoutPlanner(direction, fit, overlap, leastSliver, dropStart, bandStart, weather, other);
    }

    /**
     * Divides a wall into panels.
     *
     * @param wall the wall
     * @param film the film
     * @return the layout, or one that says why there is none
     */
    public PanelLayout plan(Wall wall, Film film) {
        if (direction != Direction.CHEAPEST) {
            return plan(wall, film, direction);
        }
        PanelLayout drops = plan(wall, film, Direction.DROPS);
        PanelLayout bands = plan(wall, film, Direction.BANDS);
        return bands.isBetterThan(drops) ? bands : drops;
    }

    private PanelLayout plan(Wall wall, Film film, Direction way) {
        long lap = overlap == 0 ? film.leastOverlapSteps() : overlap;
        Frame frame = new Frame(way, way == Direction.DROPS ? dropStart : bandStart);
        if (lap < film.leastOverlapSteps() || lap > film.mostOverlapSteps()) {
            return PanelLayout.impossible(wall, film, frame, lap, rates, "an overlap of " + Print.cut(lap, UnitStyle.METRIC)
                    + " is outside the range of " + film.name() + ", " + Print.cut(film.leastOverlapSteps(), UnitStyle.METRIC)
                    + " to " + Print.cut(film.mostOverlapSteps(), UnitStyle.METRIC));
        }
        Optional<WallRegions> regions = WallRegions.of(wall, frame);
        if (regions.isEmpty()) {
            return PanelLayout.impossible(wall, film, frame, lap, rates, "the extra lengths of the edges of " + wall.name()
                    + " meet across a notch of its outline");
        }
        List<Run> runs = Run.cover(regions.get(), lap, film.printableWidthSteps());
        List<Strip> strips = new ArrayList<>();
        for (Run run : runs) {
            Optional<List<Strip>> row = Strip.in(run, fit, leastSliver);
            if (row.isEmpty()) {
                return PanelLayout.impossible(wall, film, frame, lap, rates, "a panel of " + run.count() + " would show less wall than "
                        + Print.cut(Math.max(leastSliver, lap), UnitStyle.METRIC) + ", even with all of equal width");
            }
            strips.addAll(row.get());
        }
        boolean ascending = way == Direction.DROPS
                ? weather.map(side -> side != frame.start()).orElse(true)
                : frame.start() == Side.BOTTOM;
        Placement placed = new Placement(wall, regions.get(), strips, ascending);
        return PanelLayout.of(wall, film, frame, lap, rates, runs, placed);
    }
}
