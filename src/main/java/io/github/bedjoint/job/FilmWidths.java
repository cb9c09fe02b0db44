package io.github.bedjoint.job;

import io.github.bedjoint.film.Film;
import io.github.bedjoint.film.Laminate;
import io.github.bedjoint.film.RollOffer;
import io.github.bedjoint.rolls.Stock;
import io.github.bedjoint.units.Print;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.Steps;
import io.github.bedjoint.units.UnitStyle;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.function.ToLongFunction;

/**
 * The widths in which the film of a job can be had: which of them a laminate covers, and what a metre of film to hang costs.
 *
 * <p>A panel may be cut from any roll that is wide enough, so what serves a width are all rolls at least as wide.
 */
final class FilmWidths {
    private final Materials materials;
    private final List<RollOffer> covered;
    private final List<Film> films;
    private final Map<Long, Double> filmPerM = new HashMap<>();

    FilmWidths(Materials materials) {
        this.materials = materials;
        long widest = widestLaminate(materials);
        this.covered = materials.filmRolls().stream().filter(roll -> filmWidth(roll) <= widest).toList();
        List<RollOffer> there = covered.stream().filter(roll -> roll.available() != 0).toList();
        this.films = films(there.isEmpty() ? covered : there);
        films.forEach(film -> filmPerM.put(film.rollWidthSteps(), cheapest(rolls(film))));
    }

    /** Refuses rolls that leave nothing to print, and a laminate that covers none. */
    static void check(Materials materials) {
        Film film = materials.film();
        long lost = 2 * film.edgeMarginSteps() + film.mostOverlapSteps();
        long narrowest = Steps.MAX;
        for (RollOffer roll : materials.filmRolls()) {
            long width = width(roll, film.rollWidthSteps());
            if (width <= lost) {
                throw new RefusedException("printable width of roll " + roll.id(), "a roll of " + cut(width),
                        "must be wider than both edge margins and the most overlap together, " + cut(lost), "Maybe the unit is another one.");
            }
            narrowest = Math.min(narrowest, width);
        }
        if (narrowest > widestLaminate(materials)) {
            throw new RefusedException("laminate roll width", Steps.toLength(widestLaminate(materials)).toString(),
                    "must be at least the film's " + Steps.toLength(narrowest), "Maybe another laminate was meant.");
        }
    }

    private static String cut(long steps) {
        return Print.cut(steps, UnitStyle.METRIC);
    }

    private static long widestLaminate(Materials materials) {
        long own = materials.laminate().map(Laminate::rollWidthSteps).orElse(Steps.MAX);
        return materials.laminateRolls().stream().mapToLong(roll -> width(roll, own)).max().orElse(own);
    }

    private static long width(RollOffer roll, long own) {
        return roll.widthSteps() == 0 ? own : roll.widthSteps();
    }

    private long filmWidth(RollOffer roll) {
        return width(roll, materials.film().rollWidthSteps());
    }

    private long laminateWidth(RollOffer roll) {
        return width(roll, materials.laminate().map(Laminate::rollWidthSteps).orElse(Steps.MAX));
    }

    private Film film(long widthSteps) {
        Film own = materials.film();
        return widthSteps == own.rollWidthSteps() ? own : own.withRollWidth(Steps.toLength(widthSteps));
    }

    private List<Film> films(List<RollOffer> rolls) {
        return rolls.stream().map(this::filmWidth).distinct().map(this::film).toList();
    }

    /** One for each width that can be had, or that is offered where none can be had. */
    List<Film> films() {
        return films;
    }

    List<Film> uncovered() {
        return films(materials.filmRolls().stream().filter(Predicate.not(covered::contains)).toList());
    }

    /** The rolls that a plan may open. */
    List<RollOffer> covered() {
        return covered;
    }

    /** The rolls from which panels of a film of this width may be cut. */
    List<RollOffer> rolls(Film film) {
        return covered.stream().filter(roll -> filmWidth(roll) >= film.rollWidthSteps()).toList();
    }

    /** What a metre of film at least as wide as one of {@link #films()} costs at the cheapest roll. */
    double filmPerM(Film film) {
        return filmPerM.getOrDefault(film.rollWidthSteps(), 0.0);
    }

    /** What a metre of laminate at least as wide as a film costs at the cheapest roll. */
    double laminatePerM(Film film) {
        return cheapest(over(film));
    }

    private List<RollOffer> over(Film film) {
        return materials.laminateRolls().stream().filter(roll -> laminateWidth(roll) >= film.rollWidthSteps()).toList();
    }

    /** About what so many metres of film and its laminate cost in whole rolls, all of the same kind. */
    double inWholeRolls(Film film, double lengthM) {
        return lengthM == 0 ? 0 : wholeRolls(rolls(film), lengthM) + wholeRolls(over(film), lengthM);
    }

    private static double wholeRolls(List<RollOffer> rolls, double lengthM) {
        return rolls.stream()
                .filter(roll -> roll.available() != 0)
                .mapToDouble(roll -> roll.price().getAmount().doubleValue() * Math.ceil(lengthM / Steps.toM(roll.lengthSteps())))
                .min()
                .orElse(0);
    }

    private static double cheapest(List<RollOffer> rolls) {
        return rolls.stream()
                .filter(roll -> roll.available() != 0)
                .mapToDouble(roll -> roll.price().getAmount().doubleValue() / Steps.toM(roll.lengthSteps()))
                .min()
                .orElse(0);
    }

    /** The film rolls in printable widths. */
    List<Stock> filmStock() {
        return stock(covered, roll -> filmWidth(roll) - 2 * materials.film().edgeMarginSteps());
    }

    /** The laminate rolls in full widths. */
    List<Stock> laminateStock() {
        return stock(materials.laminateRolls(), this::laminateWidth);
    }

    /** The laminate rolls as wide as the widest film under them is printed; without those that cover none. */
    List<Stock> printedUnderLaminate() {
        return stock(materials.laminateRolls().stream().filter(roll -> printedUnder(roll) > 0).toList(), this::printedUnder);
    }

    private long printedUnder(RollOffer laminate) {
        return films.stream()
                .filter(film -> film.rollWidthSteps() <= laminateWidth(laminate))
                .mapToLong(Film::printableWidthSteps)
                .max()
                .orElse(0);
    }

    private static List<Stock> stock(List<RollOffer> offers, ToLongFunction<RollOffer> width) {
        return offers.stream()
                .map(offer -> new Stock(offer.id(), width.applyAsLong(offer), offer.lengthSteps(), offer.price().getAmountMinorLong(),
                        offer.available(), offer.lot()))
                .toList();
    }
}
