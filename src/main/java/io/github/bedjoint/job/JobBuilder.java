package io.github.bedjoint.job;

import io.github.bedjoint.conditions.SiteConditions;
import io.github.bedjoint.labour.Labour;
import io.github.bedjoint.labour.Learning;
import io.github.bedjoint.layout.LayoutPlanner;
import io.github.bedjoint.layout.Picture;
import io.github.bedjoint.price.CostLine;
import io.github.bedjoint.price.PriceRules;
import io.github.bedjoint.rolls.CuttingTerms;
import io.github.bedjoint.survey.DeductionRule;
import io.github.bedjoint.survey.Survey;
import io.github.bedjoint.texture.TakeUp;
import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.PriceRate;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.Steps;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Time;
import org.joda.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;

/** Collects the parts of a job; not safe for use by several threads. */
public final class JobBuilder {
    private static final Range FACTOR = Range.closed(0.1, 10);

    final String name;
    Survey survey;
    Materials materials;
    PriceRules rules;
    String note = "";
    DeductionRule deduction = DeductionRule.allOpenings();
    LayoutPlanner layout = LayoutPlanner.withDefaults();
    @Nullable TakeUp takeUp;
    CuttingTerms cutting = CuttingTerms.plain();
    boolean turn;
    Map<String, Picture> pictures = Map.of();
    Spares spares = Spares.NONE;
    Labour labour = Labour.withDefaults();
    @Nullable PriceRate<Time> productionRate;
    @Nullable PriceRate<Time> siteRate;
    Map<String, Double> accessFactors = Map.of();
    long twoPeopleFromSteps = Steps.MAX;
    @Nullable JobDates dates;
    @Nullable SiteConditions site;
    List<CostLine> extras = List.of();
    SiteAccess access = SiteAccess.plain();
    @Nullable Learning learning;
    @Nullable DisposalTerms disposal;

    JobBuilder(String name, Survey survey, Materials materials, PriceRules rules) {
        this.name = Door.text("job name", name);
        this.survey = survey;
        this.materials = materials;
        this.rules = rules;
        priced(materials);
    }

    JobBuilder(JobBuilder other) {
        this(other.name, other.survey, other.materials, other.rules);
        note = other.note;
        deduction = other.deduction;
        takeUp = other.takeUp;
        layout = takeUp == null ? other.layout : other.layout.withTakeUp(takeUp);
        cutting = other.cutting;
        turn = other.turn;
        pictures = other.pictures;
        spares = other.spares;
        labour = other.labour;
        productionRate = other.productionRate;
        siteRate = other.siteRate;
        accessFactors = other.accessFactors;
        twoPeopleFromSteps = other.twoPeopleFromSteps;
        dates = other.dates;
        site = other.site;
        extras = other.extras;
        access = other.access;
        learning = other.learning;
        disposal = other.disposal;
    }

    /**
     * Other walls in place of those the job was begun with; access factors and pictures go with the names of the walls.
     *
     * @param walls the walls
     * @return this builder
     */
    public JobBuilder survey(Survey walls) {
        survey = walls;
        return this;
    }

    /**
     * Other materials in place of those the job was begun with.
     *
     * @param other film and what goes with it, priced in the currency of the rules
     * @return this builder
     * @throws RefusedException if a price is in another currency
     */
    public JobBuilder materials(Materials other) {
        priced(other);
        materials = other;
        return this;
    }

    /**
     * Other price rules in place of those the job was begun with.
     *
     * @param other how cost becomes price, in the same currency
     * @return this builder
     * @throws RefusedException if they are in another currency
     */
    public JobBuilder rules(PriceRules other) {
        same("price rules", other.currency());
        rules = other;
        return this;
    }

    /**
     * A remark.
     *
     * @param text one line
     * @return this builder
     * @throws RefusedException if it is blank or too long
     */
    public JobBuilder note(String text) {
        note = Door.text("note", text);
        return this;
    }

    /**
     * Which openings are taken off the measured area; all, unless set.
     *
     * @param rule the rule
     * @return this builder
     */
    public JobBuilder deduction(DeductionRule rule) {
        deduction = rule;
        return this;
    }

    /**
     * How walls are divided into panels.
     *
     * @param planner the planner
     * @return this builder
     */
    public JobBuilder layout(LayoutPlanner planner) {
        layout = planner;
        return this;
    }

    /**
     * How much film is fed in along the texture; none, unless set here or on the planner. What is set here outranks the planner.
     *
     * @param shares the shares fed in
     * @return this builder
     */
    public JobBuilder takeUp(TakeUp shares) {
        takeUp = shares;
        return this;
    }

    /**
     * What each roll loses and which rules a roll plan keeps.
     *
     * @param terms the terms
     * @return this builder
     */
    public JobBuilder cutting(CuttingTerms terms) {
        cutting = terms;
        return this;
    }

    /**
     * Whether panels may lie across the roll, turned by a quarter, so that narrow ones share it better. No unless set: a print has an up
     * and a film a grain, and both shrink differently along the roll and across it (common practice, no source).
     *
     * @param yes whether they may
     * @return this builder
     */
    public JobBuilder turnPanels(boolean yes) {
        turn = yes;
        return this;
    }

    /**
     * Where the picture lies on a wall; it fills the wall and its bleeds, unless set.
     *
     * @param wall    the name of a wall of the survey
     * @param picture its rectangle on the wall; what panels show beyond it stays blank
     * @return this builder
     * @throws RefusedException if there is no such wall
     */
    public JobBuilder picture(String wall, Picture picture) {
        survey.wall(wall);
        Map<String, Picture> more = new LinkedHashMap<>(pictures);
        more.put(wall, picture);
        pictures = Map.copyOf(more);
        return this;
    }

    /**
     * Panels that are printed beyond one of each; none, unless set.
     *
     * @param extra how many
     * @return this builder
     */
    public JobBuilder spares(Spares extra) {
        spares = extra;
        return this;
    }

    /**
     * Tasks, paces, crews and the working day.
     *
     * @param calculator the calculator
     * @return this builder
     */
    public JobBuilder labour(Labour calculator) {
        labour = calculator;
        return this;
    }

    /**
     * What person-hours cost; without rates labour is timed but not charged.
     *
     * @param production a person-hour in the shop
     * @param onSite     a person-hour on site
     * @return this builder
     * @throws RefusedException if a rate is in another currency than the price rules
     */
    public JobBuilder labourRates(PriceRate<Time> production, PriceRate<Time> onSite) {
        same("production rate", production.currency());
        same("site rate", onSite.currency());
        productionRate = production;
        siteRate = onSite;
        return this;
    }

    /**
     * By what height and access multiply the time on a wall.
     *
     * @param wall   the name of a wall of the survey
     * @param factor 0.1 to 10; 1 is work from the ground
     * @return this builder
     * @throws RefusedException if there is no such wall or the factor is out of range
     */
    public JobBuilder accessFactor(String wall, double factor) {
        survey.wall(wall);
        Map<String, Double> more = new LinkedHashMap<>(accessFactors);
        more.put(wall, Door.number("access factor", factor, FACTOR));
        accessFactors = Map.copyOf(more);
        return this;
    }

    /**
     * How the walls are reached and what is hired for it; from the ground and nothing, unless set.
     *
     * @param reached height bands, walls above the ground, hires in the currency of the price rules
     * @return this builder
     * @throws RefusedException if a hire is in another currency
     */
    public JobBuilder access(SiteAccess reached) {
        reached.hires().forEach(hire -> same(hire.hire().name(), hire.hire().dayRate().getCurrencyUnit()));
        access = reached;
        return this;
    }

    /**
     * How work by hand gets faster from one wall to the next where several have as much of everything and are reached alike; it does not, unless set.
     *
     * @param law the law of learning
     * @return this builder
     */
    public JobBuilder learning(Learning law) {
        learning = law;
        return this;
    }

    /**
     * What liner and scrap film weigh and what a kilogram costs; they are not charged, unless set.
     *
     * @param terms weights and price, in the currency of the price rules
     * @return this builder
     * @throws RefusedException if the price is in another currency
     */
    public JobBuilder disposal(DisposalTerms terms) {
        same("disposal", terms.price().currency());
        disposal = terms;
        return this;
    }

    /**
     * From which cut length on a panel needs two people; none does, unless set.
     *
     * @param cutLength above 0
     * @return this builder
     * @throws RefusedException if the length is out of range
     */
    public JobBuilder twoPeopleFrom(Quantity<Length> cutLength) {
        twoPeopleFromSteps = Steps.up(Door.lengthM("two people from", cutLength, Range.POSITIVE));
        return this;
    }

    /**
     * When the job may begin; without it no dates are worked out.
     *
     * @param calendar calendar, start and waits
     * @return this builder
     */
    public JobBuilder dates(JobDates calendar) {
        dates = calendar;
        return this;
    }

    /**
     * What is known of the site; without it only the usual cautions are given.
     *
     * @param conditions the conditions; access and openings of the walls are added to them
     * @return this builder
     */
    public JobBuilder site(SiteConditions conditions) {
        site = conditions;
        return this;
    }

    /**
     * One more line that is given.
     *
     * @param line hire, a trip, freight, disposal or a lump sum
     * @return this builder
     * @throws RefusedException if it is in another currency than the price rules
     */
    public JobBuilder extra(CostLine line) {
        same(line.title(), line.amount().getCurrencyUnit());
        List<CostLine> more = new ArrayList<>(extras);
        more.add(line);
        extras = List.copyOf(more);
        return this;
    }

    /**
     * These lines in place of all that were given before.
     *
     * @param lines hire, trips, freight, disposal and lump sums
     * @return this builder
     * @throws RefusedException if one is in another currency than the price rules
     */
    public JobBuilder extras(List<CostLine> lines) {
        lines.forEach(line -> same(line.title(), line.amount().getCurrencyUnit()));
        extras = List.copyOf(lines);
        return this;
    }

    /**
     * The job.
     *
     * @return an immutable job; the builder may be used on
     */
    public Job build() {
        return new Job(new JobBuilder(this));
    }

    private void priced(Materials used) {
        used.filmRolls().forEach(roll -> same("film roll " + roll.id(), roll.price().getCurrencyUnit()));
        used.laminateRolls().forEach(roll -> same("laminate roll " + roll.id(), roll.price().getCurrencyUnit()));
        used.ink().ifPresent(ink -> same("ink", ink.price().currency()));
        used.consumables().forEach(item -> same(item.title(), item.price().currency()));
        used.coatings().forEach(item -> same(item.coating().name(), item.price().currency()));
    }

    private void same(String what, CurrencyUnit currency) {
        if (!currency.equals(rules.currency())) {
            throw new RefusedException(
                    what, "in " + currency, "must be in " + rules.currency() + " like the rest of the job", "Maybe convert it first: Bedjoint knows no exchange rates.");
        }
    }
}
