package io.github.bedjoint.job;

import io.github.bedjoint.film.Film;
import io.github.bedjoint.rolls.Stock;
import io.github.bedjoint.units.Steps;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import org.joda.money.Money;

/**
 * What panels cost at least in film and laminate, by nothing but their area.
 *
 * <p>Web of some printed width holds panels of no more than its own area; of the film at least as much is opened, of the laminate at least as
 * much runs over it, and neither is had for less by the metre in that width. So the width in which both together are cheapest bounds any roll
 * plan with any laminate of it, and so does each for itself. Also, no fewer rolls are opened than the largest ones that hold the area, and
 * none is cheaper than the cheapest.
 */
final class MaterialBound {
    /** Areas are sums; a billionth of one is no reason for another roll. */
    private static final double SAME = 1 - 1e-9;

    private final double bothPerM2;
    private final Kind film;
    private final Kind laminate;

    /** One of the two: by area, and by whole rolls. */
    private record Kind(double perM2, double largestM2, double cheapest) {
        double atLeast(double areaM2) {
            return Math.max(perM2 * areaM2, largestM2 > 0 ? cheapest * Math.ceil(areaM2 * SAME / largestM2) : 0);
        }
    }

    MaterialBound(Job job, FilmWidths widths) {
        long lost = job.cutting().leadSteps() + job.cutting().tailSteps();
        // A credit for what is left may be worth nearly the whole of a roll.
        boolean whole = job.cutting().remnants().percent() == 0;
        bothPerM2 = perM2(widths, one -> widths.filmPerM(one) + widths.laminatePerM(one));
        film = kind(job, perM2(widths, widths::filmPerM), widths.filmStock(), lost, whole);
        laminate = kind(job, perM2(widths, widths::laminatePerM), widths.printedUnderLaminate(), job.materials().leadInSteps(), true);
    }

    private static double perM2(FilmWidths widths, ToDoubleFunction<Film> perM) {
        return widths.films().stream().mapToDouble(one -> perM.applyAsDouble(one) / Steps.toM(one.printableWidthSteps())).min().orElse(0);
    }

    private static Kind kind(Job job, double perM2, List<Stock> stock, long lost, boolean whole) {
        Predicate<Stock> there = roll -> roll.available() != 0;
        double largest = stock.stream().filter(there).mapToDouble(roll -> Steps.toM(roll.widthSteps()) * Steps.toM(roll.lengthSteps() - lost)).max().orElse(0);
        long cheapest = stock.stream().filter(there).mapToLong(Stock::cost).min().orElse(0);
        return new Kind(perM2, largest, whole ? Money.ofMinor(job.rules().currency(), cheapest).getAmount().doubleValue() : 0);
    }

    /** Panels of an area, whatever their rolls. */
    double atLeast(double areaM2) {
        return Math.max(bothPerM2 * areaM2, film.atLeast(areaM2) + laminate.atLeast(areaM2));
    }
}
