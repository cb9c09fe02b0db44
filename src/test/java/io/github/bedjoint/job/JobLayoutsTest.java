package io.github.bedjoint.job;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.bedjoint.film.Film;
import io.github.bedjoint.film.RollOffer;
import io.github.bedjoint.layout.Direction;
import io.github.bedjoint.layout.Fit;
import io.github.bedjoint.layout.LayoutPlanner;
import io.github.bedjoint.layout.PanelLayout;
import io.github.bedjoint.layout.Rates;
import io.github.bedjoint.price.PriceRules;
import io.github.bedjoint.rolls.RollPlan;
import io.github.bedjoint.survey.Survey;
import io.github.bedjoint.survey.Wall;
import io.github.bedjoint.units.Read;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/**
 * The layouts of all walls together with their rolls, against every combination with its own roll plan, on panels too wide to share a
 * roll's width, of which every plan is exact.
 */
class JobLayoutsTest {
    private static final CurrencyUnit EUR = CurrencyUnit.EUR;

    private static Wall wall(String name, Random random) {
        return Wall.rectangle(name, Read.length(15 + random.nextInt(30) + "0 cm"), Read.length(18 + random.nextInt(20) + "0 cm"));
    }

    private static Job job(long seed, LayoutPlanner planner) {
        Random random = new Random(seed);
        List<Wall> walls = new ArrayList<>();
        for (int i = 0; i <= random.nextInt(2) + 1; i++) {
            walls.add(wall("wall " + i, random));
        }
        Film film = Film.of("film", Read.length("1 m")).withOverlapRange(Read.length("20 mm"), Read.length("30 mm"));
        List<RollOffer> rolls = List.of(
                RollOffer.of("long", Read.length("10 m"), Money.of(EUR, 100 + random.nextInt(40))),
                RollOffer.of("short", Read.length("5 m"), Money.of(EUR, 60 + random.nextInt(20))));
        return Job.builder("job", new Survey(walls), Materials.of(film, rolls), PriceRules.in(EUR)).layout(planner).build();
    }

    /** The same with rolls of 1.3 m, on which two of the panels find no room side by side either. */
    private static Job wider(Job job, long seed) {
        Random random = new Random(seed + 1000);
        List<RollOffer> rolls = new ArrayList<>(job.materials().filmRolls());
        rolls.add(RollOffer.of("wide", Read.length("8 m"), Money.of(EUR, 90 + random.nextInt(60))).withWidth(Read.length("1.3 m")));
        return job.toBuilder().materials(job.materials().withFilm(job.materials().film(), rolls)).build();
    }

    private static BigDecimal cost(Job job, List<PanelLayout> layouts) {
        RollPlan film = RollJob.film(job, layouts, RollJob.WORK);
        assertThat(film.isProven()).isTrue();
        double other = layouts.stream().mapToDouble(l -> l.cost() - new FilmWidths(job.materials()).filmPerM(l.film()) * l.filmM()).sum();
        return BigDecimal.valueOf(film.cost(), 2).add(BigDecimal.valueOf(other)).setScale(2, RoundingMode.HALF_UP);
    }

    private static void combine(Job job, int wall, int most, List<PanelLayout> before, List<BigDecimal> costs) {
        if (wall == job.survey().walls().size()) {
            costs.add(cost(job, before));
            return;
        }
        Wall next = job.survey().walls().get(wall);
        for (Film film : job.materials().films()) {
            for (PanelLayout layout : JobRates.planner(job, next, film).best(next, film, most)) {
                List<PanelLayout> more = new ArrayList<>(before);
                more.add(layout);
                combine(job, wall + 1, most, more, costs);
            }
        }
    }

    @Test
    void of_bothDirections_isTheCheapestOfAllCombinationsAndProven() {
        int better = 0;
        for (long seed = 0; seed < 60; seed++) {
            Job job = job(seed, LayoutPlanner.withDefaults().withFit(Fit.EQUALISED).withDirection(Direction.CHEAPEST));
            List<BigDecimal> costs = new ArrayList<>();
            combine(job, 0, 2, List.of(), costs);
            BigDecimal alone = costs.get(0);
            costs.sort(null);
            LayoutChoice choice = JobPlan.of(job).choice();
            assertThat(choice).isNotNull();
            assertThat(choice.cost().getAmount()).as("seed " + seed).isEqualByComparingTo(costs.get(0));
            assertThat(choice.isProven()).as("seed " + seed).isTrue();
            assertThat(choice.layouts()).isEqualTo(costs.size());
            assertThat(choice.runnerUp().orElseThrow().more().getAmount()).isEqualByComparingTo(costs.get(1).subtract(costs.get(0)));
            better += alone.compareTo(costs.get(0)) > 0 ? 1 : 0;
        }
        // Taking the best layout of each wall alone is not enough.
        assertThat(better).isPositive();
    }

    @Test
    void of_severalWidths_isTheCheapestOfAllCombinationsAndNeverDearerThanWithout() {
        int cheaper = 0;
        int mixed = 0;
        for (long seed = 0; seed < 40; seed++) {
            Job narrow = job(seed, LayoutPlanner.withDefaults().withFit(Fit.EQUALISED));
            Job job = wider(narrow, seed);
            List<BigDecimal> costs = new ArrayList<>();
            combine(job, 0, 1, List.of(), costs);
            costs.sort(null);
            JobPlan plan = JobPlan.of(job);
            LayoutChoice choice = plan.choice();
            LayoutChoice without = JobPlan.of(narrow).choice();
            assertThat(choice).isNotNull();
            assertThat(without).isNotNull();
            assertThat(choice.cost().getAmount()).as("seed " + seed).isEqualByComparingTo(costs.get(0));
            assertThat(choice.isProven()).as("seed " + seed).isTrue();
            assertThat(choice.cost()).as("seed " + seed).isLessThanOrEqualTo(without.cost());
            cheaper += choice.cost().isLessThan(without.cost()) ? 1 : 0;
            mixed += plan.layouts().stream().map(layout -> layout.film().rollWidthSteps()).distinct().count() > 1 ? 1 : 0;
        }
        // A wider roll often pays, and sometimes for some walls only.
        assertThat(cheaper).isPositive();
        assertThat(mixed).isPositive();
    }

    @Test
    void of_cheapestSeams_boundIsNeverAboveAnyCombination() {
        LayoutPlanner planner = LayoutPlanner.withDefaults().withFit(Fit.CHEAPEST).withDirection(Direction.CHEAPEST)
                .withLeastSliver(Read.length("0.51 m"))
                .withRates(new Rates(15, 3, 0.5, 0));
        for (long seed = 0; seed < 12; seed++) {
            Job job = job(seed, planner);
            List<BigDecimal> costs = new ArrayList<>();
            combine(job, 0, JobLayouts.MOST_LAYOUTS, List.of(), costs);
            costs.sort(null);
            LayoutChoice choice = JobPlan.of(job).choice();
            assertThat(choice).isNotNull();
            if (choice.layouts() <= JobLayouts.MOST_PLANS) {
                assertThat(choice.cost().getAmount()).as("seed " + seed).isEqualByComparingTo(costs.get(0));
            }
            assertThat(choice.lowerBound().getAmount()).isLessThanOrEqualTo(costs.get(0));
            costs.clear();
            combine(job, 0, 7, List.of(), costs);
            costs.forEach(cost -> assertThat(choice.lowerBound().getAmount()).isLessThanOrEqualTo(cost));
        }
    }
}
