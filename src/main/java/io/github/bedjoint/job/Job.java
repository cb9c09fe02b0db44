package io.github.bedjoint.job;

import io.github.bedjoint.conditions.SiteConditions;
import io.github.bedjoint.labour.Labour;
import io.github.bedjoint.labour.Learning;
import io.github.bedjoint.layout.LayoutPlanner;
import io.github.bedjoint.layout.PanelLayout;
import io.github.bedjoint.layout.Picture;
import io.github.bedjoint.layout.PrintList;
import io.github.bedjoint.price.CostLine;
import io.github.bedjoint.price.PriceRules;
import io.github.bedjoint.rolls.CuttingTerms;
import io.github.bedjoint.survey.DeductionRule;
import io.github.bedjoint.survey.Survey;
import io.github.bedjoint.texture.TakeUp;
import io.github.bedjoint.units.PriceRate;
import io.github.bedjoint.units.Print;
import io.github.bedjoint.units.Steps;
import io.github.bedjoint.units.RefusedException;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Time;

/**
 * Everything that is known of a job before it is costed: walls, materials, how it is laid out, cut, worked and priced.
 *
 * <p>Made by {@link #builder}; what is not set has the default of its room. Prices are all in the currency of the price rules. Immutable.
 */
public final class Job {
    private final JobBuilder parts;

    Job(JobBuilder parts) {
        this.parts = parts;
    }

    /**
     * Begins a job.
     *
     * @param name      what the shop calls it
     * @param survey    its walls
     * @param materials film and what goes with it, priced in the currency of the rules
     * @param rules     how cost becomes price
     * @return a builder with the default of every room
     * @throws RefusedException if the name is blank or a price is in another currency
     */
    public static JobBuilder builder(String name, Survey survey, Materials materials, PriceRules rules) {
        return new JobBuilder(name, survey, materials, rules);
    }

    /**
     * What the shop calls it.
     *
     * @return the name
     */
    public String name() {
        return parts.name;
    }

    /**
     * A remark.
     *
     * @return one line, or an empty text
     */
    public String note() {
        return parts.note;
    }

    /**
     * The walls.
     *
     * @return the survey
     */
    public Survey survey() {
        return parts.survey;
    }

    /**
     * Film and what goes with it.
     *
     * @return the materials
     */
    public Materials materials() {
        return parts.materials;
    }

    /**
     * How cost becomes price.
     *
     * @return the rules
     */
    public PriceRules rules() {
        return parts.rules;
    }

    /**
     * Which openings are taken off the measured area.
     *
     * @return the rule
     */
    public DeductionRule deduction() {
        return parts.deduction;
    }

    /**
     * How walls are divided into panels.
     *
     * @return the planner
     */
    public LayoutPlanner layout() {
        return parts.layout;
    }

    /**
     * How much film is fed in along the texture.
     *
     * @return the shares, those of the layout planner
     */
    public TakeUp takeUp() {
        return parts.layout.takeUp();
    }

    /**
     * What each roll loses and which rules a roll plan keeps.
     *
     * @return the terms
     */
    public CuttingTerms cutting() {
        return parts.cutting;
    }

    /**
     * Whether panels may lie across the roll, turned by a quarter.
     *
     * @return false unless set
     */
    public boolean turnsPanels() {
        return parts.turn;
    }

    /**
     * Where the picture lies on a wall, where that was set.
     *
     * @param wall the wall's name
     * @return its rectangle on the wall, or empty where it fills the wall and its bleeds
     */
    public Optional<Picture> statedPicture(String wall) {
        return Optional.ofNullable(parts.pictures.get(wall));
    }

    /** The print files of a wall and the panels that are printed again. */
    PrintList prints(PanelLayout layout) {
        return spares().prints(layout, statedPicture(layout.wall().name()).orElseGet(() -> Picture.over(layout.wall())));
    }

    /**
     * Panels that are printed beyond one of each.
     *
     * @return the spares
     */
    public Spares spares() {
        return parts.spares;
    }

    /**
     * Tasks, paces, crews and the working day.
     *
     * @return the calculator
     */
    public Labour labour() {
        return parts.labour;
    }

    /**
     * What a person-hour in the shop costs.
     *
     * @return the rate, or empty where it is not charged
     */
    public Optional<PriceRate<Time>> productionRate() {
        return Optional.ofNullable(parts.productionRate);
    }

    /**
     * What a person-hour on site costs.
     *
     * @return the rate, or empty where it is not charged
     */
    public Optional<PriceRate<Time>> siteRate() {
        return Optional.ofNullable(parts.siteRate);
    }

    /**
     * By what height and access multiply the time on a wall.
     *
     * @param wall the wall's name
     * @return the factor that was set, or 1; height bands, which hold where none was set, are not in it
     */
    public double accessFactor(String wall) {
        return parts.accessFactors.getOrDefault(wall, 1.0);
    }

    /**
     * The factor of {@link #accessFactor} where it was set; it goes before height bands.
     *
     * @param wall the wall's name
     * @return the factor, or empty where none was set
     */
    public Optional<Double> statedFactor(String wall) {
        return Optional.ofNullable(parts.accessFactors.get(wall));
    }

    /**
     * How the walls are reached and what is hired for it.
     *
     * @return height bands, walls above the ground, hires
     */
    public SiteAccess access() {
        return parts.access;
    }

    /**
     * How work by hand gets faster from one wall to the next that is like it.
     *
     * @return the law, or empty where it does not
     */
    public Optional<Learning> learning() {
        return Optional.ofNullable(parts.learning);
    }

    /**
     * What liner and scrap film weigh and what a kilogram costs.
     *
     * @return the terms, or empty where disposal is not charged by mass
     */
    public Optional<DisposalTerms> disposal() {
        return Optional.ofNullable(parts.disposal);
    }

    /**
     * From which cut length on a panel needs two people.
     *
     * @return the length, or empty where none does
     */
    public Optional<Quantity<Length>> twoPeopleFrom() {
        return parts.twoPeopleFromSteps == Steps.MAX ? Optional.empty() : Optional.of(Steps.toLength(parts.twoPeopleFromSteps));
    }

    /** From which cut length a panel needs two people. */
    long twoPeopleFromSteps() {
        return parts.twoPeopleFromSteps;
    }

    /**
     * When the job may begin.
     *
     * @return calendar, start and waits, or empty where no dates are asked for
     */
    public Optional<JobDates> dates() {
        return Optional.ofNullable(parts.dates);
    }

    /**
     * What is known of the site.
     *
     * @return the conditions, or empty where nothing was surveyed
     */
    public Optional<SiteConditions> site() {
        return Optional.ofNullable(parts.site);
    }

    /**
     * Lines that are given: hire, trips, freight, disposal, lump sums.
     *
     * @return the lines
     */
    public List<CostLine> extras() {
        return parts.extras;
    }

    /**
     * A builder that begins with everything this job has.
     *
     * @return a new builder
     */
    public JobBuilder toBuilder() {
        return new JobBuilder(parts);
    }

    /** Name, walls and film. */
    @Override
    public String toString() {
        return parts.name + ": " + Print.count(parts.survey.walls().size(), "wall") + ", " + parts.materials.film().name();
    }
}
