package io.github.bedjoint.film;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.ShopUnits;
import io.github.bedjoint.units.Steps;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.working.Source;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;

/**
 * A film in rolls: how wide it is, how much of that can be printed, how far it overlaps and stretches, and when it may be applied.
 *
 * <p>Stored are the figures in inner units with the source of each; what was not given has the default of its {@link FilmFigure}.
 * A roll's width is rounded down to whole steps, margins and the least overlap up, the most overlap down. Immutable.
 */
public final class Film {
    private static final Source GIVEN = Source.shop("given with the film");

    private final String name;
    private final Map<FilmFigure, Figure> figures;

    private Film(String name, Map<FilmFigure, Figure> figures) {
        this.name = name;
        this.figures = figures;
        if (printableWidthSteps() <= mostOverlapSteps()) {
            throw new RefusedException(
                    "printable width",
                    Steps.toM(printableWidthSteps()) + " m",
                    "must be more than the most overlap of " + Steps.toM(mostOverlapSteps()) + " m",
                    "Maybe the edge margin was meant for both sides together.");
        }
    }

    /**
     * A film with the default of every figure but its width.
     *
     * @param name      what the shop calls it
     * @param rollWidth width of the roll, above 0, at most 20 m
     * @return the film
     * @throws RefusedException if the name is blank or the width cannot be accepted
     */
    public static Film of(String name, Quantity<Length> rollWidth) {
        Map<FilmFigure, Figure> figures = new EnumMap<>(FilmFigure.class);
        for (FilmFigure figure : FilmFigure.values()) {
            figures.put(figure, new Figure(figure.preset(), figure.source()));
        }
        figures.put(FilmFigure.ROLL_WIDTH, new Figure(in(FilmFigure.ROLL_WIDTH, "roll width", rollWidth), GIVEN));
        return new Film(Door.text("film name", name), figures);
    }

    /**
     * The same in rolls of another width.
     *
     * @param width width of the roll, above 0, at most 20 m
     * @return the film
     * @throws RefusedException if the width is out of range or nothing printable would be left beside the overlap
     */
    public Film withRollWidth(Quantity<Length> width) {
        return with(FilmFigure.ROLL_WIDTH, in(FilmFigure.ROLL_WIDTH, "roll width", width));
    }

    /**
     * The same with an unprinted strip along each side.
     *
     * @param eachSide width of the strip on each side, 0 to 1 m
     * @return the film
     * @throws RefusedException if nothing printable would be left beside the overlap
     */
    public Film withEdgeMargin(Quantity<Length> eachSide) {
        return with(FilmFigure.EDGE_MARGIN, in(FilmFigure.EDGE_MARGIN, "edge margin", eachSide));
    }

    /**
     * The same with other limits of the overlap.
     *
     * @param least the least overlap, above 0
     * @param most  the most overlap, not below the least, below the printable width
     * @return the film
     * @throws RefusedException if a limit cannot be accepted or they are the wrong way round
     */
    public Film withOverlapRange(Quantity<Length> least, Quantity<Length> most) {
        double from = in(FilmFigure.LEAST_OVERLAP, "least overlap", least);
        double to = in(FilmFigure.MOST_OVERLAP, "most overlap", most);
        if (Steps.down(to) < Steps.up(from)) {
            throw new RefusedException("most overlap", most.toString(), "must be at least " + least, "Maybe the two are the wrong way round.");
        }
        // Both at once: a film with only one of them changed may have limits that cross.
        Map<FilmFigure, Figure> changed = new EnumMap<>(figures);
        changed.put(FilmFigure.LEAST_OVERLAP, new Figure(from, GIVEN));
        changed.put(FilmFigure.MOST_OVERLAP, new Figure(to, GIVEN));
        return new Film(name, changed);
    }

    /**
     * The same with another usable stretch.
     *
     * @param share the stretch the film bears and keeps, as a share of its length, 0 to 5; 0.3 is 30 %
     * @return the film
     * @throws RefusedException if the share is out of range
     */
    public Film withUsableStretch(double share) {
        return with(FilmFigure.USABLE_STRETCH, Door.number("usable stretch", share, FilmFigure.USABLE_STRETCH.range()));
    }

    /**
     * The same with another thickness.
     *
     * @param thickness thickness without laminate, above 0, at most 10 mm
     * @return the film
     * @throws RefusedException if the thickness is out of range
     */
    public Film withThickness(Quantity<Length> thickness) {
        return with(FilmFigure.THICKNESS, in(FilmFigure.THICKNESS, "thickness", thickness));
    }

    /**
     * The same with the data sheet's limits of the surface's temperature while it is applied.
     *
     * @param least the lowest temperature, 200 to 400 K
     * @param most  the highest temperature, above the lowest
     * @return the film
     * @throws RefusedException if a limit is out of range or they are the wrong way round
     */
    public Film withSurfaceTemperatures(Quantity<Temperature> least, Quantity<Temperature> most) {
        double from = in(FilmFigure.LEAST_SURFACE_TEMPERATURE, "least surface temperature", least);
        double to = in(FilmFigure.MOST_SURFACE_TEMPERATURE, "most surface temperature", most);
        if (to <= from) {
            throw new RefusedException(
                    "most surface temperature", most.toString(), "must be above " + least, "Maybe the two are the wrong way round.");
        }
        return with(FilmFigure.LEAST_SURFACE_TEMPERATURE, from).with(FilmFigure.MOST_SURFACE_TEMPERATURE, to);
    }

    /**
     * The same with the data sheet's time from printing to laminating, whatever the ink.
     *
     * @param outgas the time, 0 to 30 days
     * @return the film
     * @throws RefusedException if the time is out of range
     */
    public Film withOutgas(Quantity<Time> outgas) {
        return with(FilmFigure.OUTGAS, in(FilmFigure.OUTGAS, "outgas time", outgas));
    }

    /**
     * The same with a source cited for a figure, such as the data sheet it was read in.
     *
     * @param figure which figure
     * @param source where it comes from
     * @return the film
     */
    public Film withSource(FilmFigure figure, Source source) {
        Map<FilmFigure, Figure> changed = new EnumMap<>(figures);
        changed.put(figure, new Figure(inner(figure), source));
        return new Film(name, changed);
    }

    private Film with(FilmFigure figure, double inner) {
        Map<FilmFigure, Figure> changed = new EnumMap<>(figures);
        changed.put(figure, new Figure(inner, GIVEN));
        return new Film(name, changed);
    }

    private static <Q extends Quantity<Q>> double in(FilmFigure figure, String parameter, Quantity<Q> quantity) {
        return Door.in(figure.measure(), parameter, quantity, figure.range());
    }

    private double inner(FilmFigure figure) {
        return Objects.requireNonNull(figures.get(figure)).inner();
    }

    /**
     * What the shop calls it.
     *
     * @return the name
     */
    public String name() {
        return name;
    }

    /**
     * Where a figure comes from.
     *
     * @param figure which figure
     * @return the source given, or that of the default
     */
    public Source source(FilmFigure figure) {
        return Objects.requireNonNull(figures.get(figure)).source();
    }

    /**
     * Whether a figure was given with the film, so that no default is taken.
     *
     * @param figure which figure
     * @return false where it is the default
     */
    public boolean isGiven(FilmFigure figure) {
        return !source(figure).equals(figure.source()) || figure == FilmFigure.ROLL_WIDTH;
    }

    /**
     * A figure in its inner unit, for printing and for files.
     *
     * @param figure which figure
     * @return the number, or empty where it is not known
     */
    public Optional<Double> figure(FilmFigure figure) {
        double inner = inner(figure);
        return Double.isNaN(inner) ? Optional.empty() : Optional.of(inner);
    }

    /**
     * Width of the roll.
     *
     * @return whole steps, rounded down
     */
    public long rollWidthSteps() {
        return Steps.down(inner(FilmFigure.ROLL_WIDTH));
    }

    /**
     * Width of the unprinted strip along each side.
     *
     * @return whole steps, rounded up
     */
    public long edgeMarginSteps() {
        return Steps.up(inner(FilmFigure.EDGE_MARGIN));
    }

    /**
     * Width that can be printed: the roll's width less two edge margins.
     *
     * @return whole steps, more than the most overlap
     */
    public long printableWidthSteps() {
        return rollWidthSteps() - 2 * edgeMarginSteps();
    }

    /**
     * Least overlap of two panels.
     *
     * @return whole steps, rounded up, above 0
     */
    public long leastOverlapSteps() {
        return Steps.up(inner(FilmFigure.LEAST_OVERLAP));
    }

    /**
     * Most overlap of two panels.
     *
     * @return whole steps, rounded down, not below the least
     */
    public long mostOverlapSteps() {
        return Steps.down(inner(FilmFigure.MOST_OVERLAP));
    }

    /**
     * Width of the roll as a quantity.
     *
     * @return the width in metres
     */
    public Quantity<Length> rollWidth() {
        return Steps.toLength(rollWidthSteps());
    }

    /**
     * Width that can be printed, as a quantity.
     *
     * @return the width in metres
     */
    public Quantity<Length> printableWidth() {
        return Steps.toLength(printableWidthSteps());
    }

    /**
     * The stretch the film bears and keeps.
     *
     * @return a share of its length, 0 or more; 0.3 is 30 %
     */
    public double usableStretch() {
        return inner(FilmFigure.USABLE_STRETCH);
    }

    /**
     * Thickness without laminate.
     *
     * @return metres
     */
    public double thicknessM() {
        return inner(FilmFigure.THICKNESS);
    }

    /**
     * Lowest surface temperature at which it may be applied.
     *
     * @return the temperature in kelvin, or empty where the data sheet was not asked
     */
    public Optional<Quantity<Temperature>> leastSurfaceTemperature() {
        return figure(FilmFigure.LEAST_SURFACE_TEMPERATURE).map(k -> Door.of(k, ShopUnits.KELVIN));
    }

    /**
     * Highest surface temperature at which it may be applied.
     *
     * @return the temperature in kelvin, or empty where the data sheet was not asked
     */
    public Optional<Quantity<Temperature>> mostSurfaceTemperature() {
        return figure(FilmFigure.MOST_SURFACE_TEMPERATURE).map(k -> Door.of(k, ShopUnits.KELVIN));
    }

    /**
     * Time from printing with an ink to laminating.
     *
     * @param ink the family of the ink
     * @return seconds: the film's own figure where it has one, else the ink family's
     */
    public double outgasS(InkFamily ink) {
        return figure(FilmFigure.OUTGAS).orElse(ink.outgasS());
    }

    /**
     * Where the time from printing to laminating comes from.
     *
     * @param ink the family of the ink
     * @return the source of what {@link #outgasS} gives
     */
    public Source outgasSource(InkFamily ink) {
        return figure(FilmFigure.OUTGAS).isPresent() ? source(FilmFigure.OUTGAS) : ink.source();
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Film that && name.equals(that.name) && figures.equals(that.figures);
    }

    @Override
    public int hashCode() {
        return Objects.hash(name, figures);
    }

    /** Name and roll width: {@code Sample film, 1.3716 m}. */
    @Override
    public String toString() {
        return name + ", " + FilmFigure.ROLL_WIDTH.measure().print(inner(FilmFigure.ROLL_WIDTH), UnitStyle.METRIC);
    }

    /** A figure in its inner unit and where it comes from. */
    private record Figure(double inner, Source source) {}
}
