package io.github.bedjoint.layout;

import io.github.bedjoint.film.Film;
import io.github.bedjoint.survey.Side;
import io.github.bedjoint.survey.Wall;
import io.github.bedjoint.texture.TakeUp;
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
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Length;

/**
 * Divides a wall into panels: drops of full width from the left with the film's least overlap, unless told otherwise.
 *
 * <p>A panel beside a seam is never narrower on the wall than the least sliver, 100 mm by default: a narrower last panel takes width from
 * its neighbours. A wall that cannot be divided as asked gives a layout with reasons, never an exception. Immutable.
 */
public final class LayoutPlanner {
    /** Where the default of the least sliver comes from. */
    public static final Source LEAST_SLIVER = Source.assumed("100 mm; a strip much narrower than a roller is hard to hang straight");

    private static final long SLIVER = 8000;
    private static final int MOST_LAYOUTS = 100;

    private final Hanging hanging;
    private final Fit fit;
    private final Limits limits;
    private final Optional<Rates> rates;
    private final SeamRules rules;
    private final TakeUp takeUp;

    private LayoutPlanner(Hanging hanging, Fit fit, Limits limits, Optional<Rates> rates, SeamRules rules, TakeUp takeUp) {
        this.hanging = hanging;
        this.fit = fit;
        this.limits = limits;
        this.rates = rates;
        this.rules = rules;
        this.takeUp = takeUp;
    }

    /**
     * Drops of full width from the left, bands from the bottom or, where direction or seams are chosen, from either side, the film's least overlap, cuts of any length, only film counting; no rates are set.
     *
     * @return the planner
     */
    public static LayoutPlanner withDefaults() {
        return new LayoutPlanner(Hanging.PLAIN, Fit.FULL_WIDTH, new Limits(0, SLIVER, Limits.ANY_LENGTH, false), Optional.empty(), SeamRules.withDefaults(), TakeUp.NONE);
    }

    private LayoutPlanner with(Hanging other) {
        return new LayoutPlanner(other, fit, limits, rates, rules, takeUp);
    }

    private LayoutPlanner with(Limits other) {
        return new LayoutPlanner(hanging, fit, other, rates, rules, takeUp);
    }

    /**
     * The same with panels the other way.
     *
     * @param other drops, bands, or the cheaper of the two
     * @return a new planner
     */
    public LayoutPlanner withDirection(Direction other) {
        return with(hanging.withDirection(other));
    }

    /**
     * The same with another share of widths.
     *
     * @param other full widths with a trimmed last panel, or equal ones
     * @return a new planner
     */
    public LayoutPlanner withFit(Fit other) {
        return new LayoutPlanner(hanging, other, limits, rates, rules, takeUp);
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
        return with(new Limits(steps, limits.leastSliver(), limits.longest(), limits.joins()));
    }

    /**
     * The same with another least width on the wall of a panel beside a seam, overlaps included; twice the overlap is always a limit as
     * well, so that never three panels lie on each other.
     *
     * @param least 0 to 10 m, brought up to a whole step
     * @return a new planner
     * @throws RefusedException if the length is absent or out of range
     */
    public LayoutPlanner withLeastSliver(Quantity<Length> least) {
        long steps = Steps.up(Door.lengthM("least sliver", least, Range.closed(0, 10)));
        return with(new Limits(limits.overlap(), steps, limits.longest(), limits.joins()));
    }

    /**
     * The same with full panels from another side on; a trimmed panel comes at the side across.
     *
     * @param side LEFT or RIGHT for drops, BOTTOM or TOP for bands; the other direction's start stays as it is
     * @return a new planner
     */
    public LayoutPlanner withStart(Side side) {
        return with(hanging.withStart(side));
    }

    /**
     * The same with panels from either side on, whichever is cheaper; left or bottom where their panels are alike too. Where direction or seams are
     * chosen too, with {@link Direction#CHEAPEST} or {@link Fit#CHEAPEST}, that is so unless a start was set. A weather side says how
     * drops lap, not where they start.
     *
     * @return a new planner
     */
    public LayoutPlanner withCheapestStart() {
        return with(hanging.withEitherStart());
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
        return with(hanging.withWeather(side));
    }

    /**
     * The same with other rates, by which {@link Direction#CHEAPEST} and {@link Fit#CHEAPEST} choose, and by which a panel over an
     * opening as wide as itself is cut through or left in one piece.
     *
     * @param other what film, panels, seams and cut-outs cost
     * @return a new planner
     */
    public LayoutPlanner withRates(Rates other) {
        return new LayoutPlanner(hanging, fit, limits, Optional.of(other), rules, takeUp);
    }

    /**
     * The same with other rules for the places of seams, which {@link Fit#CHEAPEST} keeps to.
     *
     * @param other clearances and masonry joints
     * @return a new planner
     */
    public LayoutPlanner withSeamRules(SeamRules other) {
        return new LayoutPlanner(hanging, fit, limits, rates, other, takeUp);
    }

    /**
     * The same with film fed in along the texture: cut lengths and widths grow by it, so that fewer of them fit on a roll.
     *
     * @param other the shares fed in
     * @return a new planner
     */
    public LayoutPlanner withTakeUp(TakeUp other) {
        return new LayoutPlanner(hanging, fit, limits, rates, rules, other);
    }

    /**
     * The same with a greatest cut length, what the longest roll yields; a panel that would be longer makes the layout impossible, with
     * alternatives.
     *
     * @param most above 100 mm, at most 10 km, brought down to a whole step
     * @return a new planner
     * @throws RefusedException if the length is absent or out of range
     */
    public LayoutPlanner withLongestCut(Quantity<Length> most) {
        long steps = Steps.down(Door.lengthM("longest cut", most, Range.above(0.1, 10_000)));
        return with(new Limits(limits.overlap(), limits.leastSliver(), steps, limits.joins()));
    }

    /**
     * The same with panels that are longer than the longest cut joined across, the upper piece lapping over the lower by the overlap.
     * A joint keeps off openings and masonry joints as the {@link SeamRules} say, whatever the fit, and lies where it costs least at the
     * rates; where all places cost the same, pieces are of equal length. Each piece shows the least sliver.
     *
     * @param yes whether they are joined
     * @return a new planner
     */
    public LayoutPlanner withJointsAcross(boolean yes) {
        return with(new Limits(limits.overlap(), limits.leastSliver(), limits.longest(), yes));
    }

    /**
     * Which way panels run.
     *
     * @return the direction
     */
    public Direction direction() {
        return hanging.direction();
    }

    /**
     * How a wall is divided among its panels.
     *
     * @return the fit
     */
    public Fit fit() {
        return fit;
    }

    /**
     * The overlap of neighbours.
     *
     * @return steps; 0 where the least of the film is taken
     */
    public long overlapSteps() {
        return limits.overlap();
    }

    /**
     * What a panel must show at least.
     *
     * @return steps
     */
    public long leastSliverSteps() {
        return limits.leastSliver();
    }

    /**
     * The starts that were set.
     *
     * @return at most one side for drops and one for bands, in this order
     */
    public List<Side> starts() {
        return Stream.of(hanging.drops(), hanging.bands()).flatMap(Optional::stream).toList();
    }

    /**
     * Whether the cheaper start was asked for.
     *
     * @return true after {@link #withCheapestStart}
     */
    public boolean startsAtCheapest() {
        return hanging.eitherStart();
    }

    /**
     * From where weather or traffic comes.
     *
     * @return the side, or empty where none was set
     */
    public Optional<Side> weatherSide() {
        return hanging.weather();
    }

    /**
     * What a direction is compared by.
     *
     * @return the rates; those of {@link Rates#filmOnly()} where none were set
     */
    public Rates rates() {
        return rates.orElseGet(Rates::filmOnly);
    }

    /**
     * Whether rates were set; a job sets those of its own prices and paces otherwise.
     *
     * @return true if they were
     */
    public boolean hasRates() {
        return rates.isPresent();
    }

    /**
     * Whether a greatest cut length was set; a job sets that of its longest roll otherwise.
     *
     * @return true if it was
     */
    public boolean hasLongestCut() {
        return limits.longest() != Limits.ANY_LENGTH;
    }

    /**
     * The greatest cut length.
     *
     * @return steps; longer than any wall where none was set
     */
    public long longestCutSteps() {
        return limits.longest();
    }

    /**
     * Whether panels that are longer than the longest cut are joined across.
     *
     * @return true if they are
     */
    public boolean joinsAcross() {
        return limits.joins();
    }

    /**
     * Where seams may run.
     *
     * @return the rules
     */
    public SeamRules seamRules() {
        return rules;
    }

    /**
     * How much film is fed in.
     *
     * @return the shares
     */
    public TakeUp takeUp() {
        return takeUp;
    }

    /**
     * Divides a wall into panels.
     *
     * @param wall the wall
     * @param film the film
     * @return the layout, or one that says why there is none and what else is possible
     */
    public PanelLayout plan(Wall wall, Film film) {
        PanelLayout best = best(wall, film, 1).get(0);
        if (best.isPossible() || limits.longest() == Limits.ANY_LENGTH) {
            return best;
        }
        List<Alternative> others = new ArrayList<>();
        Direction way = hanging.direction() == Direction.BANDS ? Direction.DROPS : Direction.BANDS;
        if (hanging.direction() != Direction.CHEAPEST) {
            offer(others, way == Direction.BANDS ? "bands" : "drops", withDirection(way).best(wall, film, 1).get(0));
        }
        offer(others, "a joint across", with(limits.joined()).best(wall, film, 1).get(0));
        PanelLayout longer = with(limits.ofAnyLength()).best(wall, film, 1).get(0);
        offer(others, "a roll that yields " + Print.cut(Division.longest(longer), UnitStyle.METRIC), longer);
        return best.withAlternatives(others);
    }

    private static void offer(List<Alternative> others, String what, PanelLayout layout) {
        if (layout.isPossible()) {
            others.add(new Alternative(what, layout));
        }
    }

    /**
     * The best ways to divide a wall that differ in the lengths of their panels, in both directions and from both sides where
     * the cheapest is asked for. Only {@link Fit#CHEAPEST} gives more than one for a direction. The cost of a whole job may put the second first, when
     * its panels share rolls better.
     *
     * @param wall the wall
     * @param film the film
     * @param most how many at most, 1 to 100
     * @return the cheapest first; a single one with reasons where there is none
     * @throws RefusedException if {@code most} is out of range
     */
    public List<PanelLayout> best(Wall wall, Film film, int most) {
        Door.count("layouts", most, 1, MOST_LAYOUTS);
        Distinct all = new Distinct();
        for (Hanging one : hanging.tried(fit)) {
            new Division(wall, film, one, fit, limits, rates(), rules, takeUp).layouts(most).forEach(all::add);
        }
        return PanelLayout.ranked(all.all(), most);
    }

    /**
     * The best ways to divide a wall with any of several films, such as rolls of different width, each at its own rates.
     *
     * @param wall  the wall
     * @param films at least one film with its rates
     * @param most  how many at most, 1 to 100
     * @return the cheapest first; a single one with reasons where there is none
     * @throws RefusedException if there is no film or {@code most} is out of range
     */
    public List<PanelLayout> best(Wall wall, List<RatedFilm> films, int most) {
        Door.count("films", films.size(), 1, MOST_LAYOUTS);
        return PanelLayout.ranked(films.stream().flatMap(rated -> withRates(rated.rates()).best(wall, rated.film(), most).stream()).toList(), most);
    }
}
