package io.github.bedjoint.job;

import io.github.bedjoint.film.Film;
import io.github.bedjoint.labour.Amounts;
import io.github.bedjoint.labour.Driver;
import io.github.bedjoint.labour.Labour;
import io.github.bedjoint.labour.Premium;
import io.github.bedjoint.labour.Stage;
import io.github.bedjoint.labour.TaskTime;
import io.github.bedjoint.labour.WorkPlace;
import io.github.bedjoint.layout.Direction;
import io.github.bedjoint.layout.LayoutPlanner;
import io.github.bedjoint.layout.Rates;
import io.github.bedjoint.survey.Wall;
import io.github.bedjoint.units.PriceRate;
import io.github.bedjoint.units.Steps;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Time;

/**
 * What a layout on one wall costs by the prices and paces of its job, direct cost only.
 *
 * <p>A metre of film costs what the cheapest roll that is wide enough asks for a metre, with laminate, ink and the paid time to print and laminate it;
 * a panel the paid time of the tasks of a panel; a metre of seam that of the seam and of heating and rolling its overlap a second time; a
 * cut-out that of an opening. Time that is not charged costs nothing.
 */
final class JobRates {
    private final Job job;
    private final Wall wall;
    private final Film film;
    private final FilmWidths widths;

    private JobRates(Job job, Wall wall, Film film) {
        this.job = job;
        this.wall = wall;
        this.film = film;
        this.widths = new FilmWidths(job.materials());
    }

    /** The planner of a job for one wall in film of one width: what was not set on it comes from the job's rolls, prices and paces. */
    static LayoutPlanner planner(Job job, Wall wall, Film film) {
        LayoutPlanner planner = job.layout();
        planner = planner.hasRates() ? planner : planner.withRates(of(job, wall, film));
        long longest = longestCutSteps(job, film);
        return planner.hasLongestCut() || longest <= Steps.PER_METRE / 10 ? planner : planner.withLongestCut(Steps.toLength(longest));
    }

    static Rates of(Job job, Wall wall, Film film) {
        JobRates rates = new JobRates(job, wall, film);
        return new Rates(rates.filmPerM(), rates.perPanel(), rates.seamPerM(), rates.time(Amounts.none().withCount(Driver.OPENING, 1)));
    }

    private static long longestCutSteps(Job job, Film film) {
        return new FilmWidths(job.materials()).rolls(film).stream()
                .filter(roll -> roll.available() != 0)
                .mapToLong(roll -> roll.lengthSteps() - job.cutting().leadSteps() - job.cutting().tailSteps())
                .max()
                .orElse(0);
    }

    private double filmPerM() {
        Materials materials = job.materials();
        Amounts metre = Amounts.none().withInner(Driver.FILM_AREA, Steps.toM(film.rollWidthSteps()));
        metre = materials.ink().isPresent() ? metre.withInner(Driver.PRINTED_LENGTH, 1) : metre;
        metre = materials.laminate().isPresent() ? metre.withInner(Driver.LAMINATED_LENGTH, 1) : metre;
        return materialPerM(materials, widths, film) + time(metre);
    }

    /** What a metre off the roll costs in film, laminate and ink, printed over its whole width. */
    static double materialPerM(Materials materials, FilmWidths widths, Film film) {
        return widths.filmPerM(film) + widths.laminatePerM(film) + inkFor(materials, Steps.toM(film.printableWidthSteps()));
    }

    /** What the ink for an area costs. */
    static double inkFor(Materials materials, double printedM2) {
        return materials.ink().map(ink -> ink.price().cost(ink.volumeM3(printedM2)).doubleValue()).orElse(0.0);
    }

    /** On a wall as long as panels for two people are, they hang all of them. */
    private double perPanel() {
        long along = job.layout().direction() == Direction.BANDS ? wall.widthSteps() : wall.heightSteps();
        return time(Amounts.none().withPanels(1, along >= job.twoPeopleFromSteps() ? 1 : 0));
    }

    private double seamPerM() {
        long overlap = job.layout().overlapSteps() > 0 ? job.layout().overlapSteps() : film.leastOverlapSteps();
        return time(Amounts.none()
                .withInner(Driver.SEAM, 1)
                .withInner(Driver.HEATED_AREA, Steps.toM(overlap) * wall.surface().areaRatio()));
    }

    /** What the paid time of some amount of work on the wall is charged at. */
    private double time(Amounts amounts) {
        Labour labour = job.labour().withTrips(List.of());
        WorkPlace place = WorkPlace.of(wall.name(), amounts);
        place = new JobReach(job).byHeight(wall).map(place::withReach).orElse(place);
        double cost = 0;
        for (TaskTime task : labour.estimate(List.of(LabourJob.reached(job, place))).tasks()) {
            boolean site = task.task().stage() == Stage.SITE;
            Premium premium = labour.premium();
            cost += rate(site ? job.siteRate() : job.productionRate()) * task.paidS() * (1 + (site ? premium.site() : premium.shop()));
        }
        return cost;
    }

    private static double rate(Optional<PriceRate<Time>> rate) {
        return rate.map(price -> price.perInner().doubleValue()).orElse(0.0);
    }
}
