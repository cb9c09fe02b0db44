package io.github.bedjoint.job;

import io.github.bedjoint.conditions.SiteConditions;
import io.github.bedjoint.labour.Labour;
import io.github.bedjoint.layout.LayoutPlanner;
import io.github.bedjoint.price.CostLine;
import io.github.bedjoint.price.PriceRules;
import io.github.bedjoint.rolls.CuttingTerms;
import io.github.bedjoint.survey.DeductionRule;
import io.github.bedjoint.survey.Survey;
import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.PriceRate;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.Steps;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Time;
import org.joda.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;

/**
 * Everything that is known of a job before it is costed: walls, materials, how it is laid out, cut, worked and priced.
 *
 * <p>Made by {@link #builder}; what is not set has the default of its room. Prices are all in the currency of the price rules. Immutable.
 */
public final class Job {
    private final Builder parts;

    private Job(Builder parts) {
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
    public static Builder builder(String name, Survey survey, Materials materials, PriceRules rules) {
        return new Builder(name, survey, materials, rules);
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
     * What each roll loses and which rules a roll plan keeps.
     *
     * @return the terms
     */
    public CuttingTerms cutting() {
        return parts.cutting;
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
     * @return the factor, 1 where none was set
     */
    public double accessFactor(String wall) {
        return parts.accessFactors.getOrDefault(wall, 1.0);
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
    public Builder toBuilder() {
        return new Builder(parts);
    }

    /** Name, walls and film. */
    @Override
    public String toString() {
        return parts.name + ": " + parts.survey.walls().size() + " walls, " + parts.materials.film().name();
    }

    /** Collects the parts of a job; not safe for use by several threads. */
    public static final class Builder {
        private static final Range FACTOR = Range.closed(0.1, 10);

        private final String name;
        private final Survey survey;
        private final Materials materials;
        private final PriceRules rules;
        private String note = "";
        private DeductionRule deduction = DeductionRule.allOpenings();
        private LayoutPlanner layout = LayoutPlanner.withDefaults();
        private CuttingTerms cutting = CuttingTerms.plain();
        private Labour labour = Labour.withDefaults();
        private @Nullable PriceRate<Time> productionRate;
        private @Nullable PriceRate<Time> siteRate;
        private Map<String, Double> accessFactors = Map.of();
        private long twoPeopleFromSteps = Steps.MAX;
        private @Nullable JobDates dates;
        private @Nullable SiteConditions site;
        private List<CostLine> extras = List.of();

        private Builder(String name, Survey survey, Materials materials, PriceRules rules) {
            this.name = Door.text("job name", name);
            this.survey = survey;
            this.materials = materials;
            this.rules = rules;
            materials.filmRolls().forEach(roll -> same("film roll " + roll.id(), roll.price().getCurrencyUnit()));
            materials.laminateRolls().forEach(roll -> same("laminate roll " + roll.id(), roll.price().getCurrencyUnit()));
            materials.ink().ifPresent(ink -> same("ink", ink.price().currency()));
            materials.consumables().forEach(used -> same(used.title(), used.price().currency()));
        }

        private Builder(Builder other) {
            this(other.name, other.survey, other.materials, other.rules);
            note = other.note;
            deduction = other.deduction;
            layout = other.layout;
            cutting = other.cutting;
            labour = other.labour;
            productionRate = other.productionRate;
            siteRate = other.siteRate;
            accessFactors = other.accessFactors;
            twoPeopleFromSteps = other.twoPeopleFromSteps;
            dates = other.dates;
            site = other.site;
            extras = other.extras;
        }

        /**
         * A remark.
         *
         * @param text one line
         * @return this builder
         * @throws RefusedException if it is blank or too long
         */
        public Builder note(String text) {
            note = Door.text("note", text);
            return this;
        }

        /**
         * Which openings are taken off the measured area; all, unless set.
         *
         * @param rule the rule
         * @return this builder
         */
        public Builder deduction(DeductionRule rule) {
            deduction = rule;
            return this;
        }

        /**
         * How walls are divided into panels.
         *
         * @param planner the planner
         * @return this builder
         */
        public Builder layout(LayoutPlanner planner) {
            layout = planner;
            return this;
        }

        /**
         * What each roll loses and which rules a roll plan keeps.
         *
         * @param terms the terms
         * @return this builder
         */
        public Builder cutting(CuttingTerms terms) {
            cutting = terms;
            return this;
        }

        /**
         * Tasks, paces, crews and the working day.
         *
         * @param calculator the calculator
         * @return this builder
         */
        public Builder labour(Labour calculator) {
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
        public Builder labourRates(PriceRate<Time> production, PriceRate<Time> onSite) {
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
        public Builder accessFactor(String wall, double factor) {
            survey.wall(wall);
            Map<String, Double> more = new LinkedHashMap<>(accessFactors);
            more.put(wall, Door.number("access factor", factor, FACTOR));
            accessFactors = Map.copyOf(more);
            return this;
        }

        /**
         * From which cut length on a panel needs two people; none does, unless set.
         *
         * @param cutLength above 0
         * @return this builder
         * @throws RefusedException if the length is out of range
         */
        public Builder twoPeopleFrom(Quantity<Length> cutLength) {
            twoPeopleFromSteps = Steps.up(Door.lengthM("two people from", cutLength, Range.POSITIVE));
            return this;
        }

        /**
         * When the job may begin; without it no dates are worked out.
         *
         * @param calendar calendar, start and waits
         * @return this builder
         */
        public Builder dates(JobDates calendar) {
            dates = calendar;
            return this;
        }

        /**
         * What is known of the site; without it only the usual cautions are given.
         *
         * @param conditions the conditions; access and openings of the walls are added to them
         * @return this builder
         */
        public Builder site(SiteConditions conditions) {
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
        public Builder extra(CostLine line) {
            same(line.title(), line.amount().getCurrencyUnit());
            List<CostLine> more = new ArrayList<>(extras);
            more.add(line);
            extras = List.copyOf(more);
            return this;
        }

        /**
         * The job.
         *
         * @return an immutable job; the builder may be used on
         */
        public Job build() {
            return new Job(new Builder(this));
        }

        private void same(String what, CurrencyUnit currency) {
            if (!currency.equals(rules.currency())) {
                throw new RefusedException(
                        what, "in " + currency, "must be in " + rules.currency() + " like the rest of the job", "Maybe convert it first: Bedjoint knows no exchange rates.");
            }
        }
    }
}
