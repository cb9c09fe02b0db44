package io.github.bedjoint.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.job.Alternatives.Alternative;
import io.github.bedjoint.jobfile.JobFile;
import io.github.bedjoint.labour.Crew;
import io.github.bedjoint.price.BreakEven;
import io.github.bedjoint.price.PriceEffect;
import io.github.bedjoint.price.PriceRules;
import io.github.bedjoint.units.Read;
import io.github.bedjoint.units.RefusedException;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

class AlternativesTest {
    private static Job job() throws IOException {
        return JobFile.read(Path.of("docs/jobs/brick-front.json"));
    }

    @Test
    void ranked_ofAllWays_cheapestFirstAndImpossibleLast() throws IOException {
        Job job = job();
        Alternatives all = Alternatives.of(job).withDirections().withSiteCrews(1, 3).withEachRollAlone();

        assertThat(all.all()).extracting(Alternative::name)
                .containsExactly("as given", "drops", "bands", "crew of 1", "crew of 3", "only roll A-25", "only roll A-10");
        List<Alternative> ranked = all.ranked();
        for (int i = 1; i < ranked.size(); i++) {
            JobCost before = ranked.get(i - 1).cost();
            JobCost after = ranked.get(i).cost();
            assertThat(!before.isPossible() && after.isPossible()).isFalse();
            if (before.isPossible() && after.isPossible()) {
                assertThat(before.total().isGreaterThan(after.total())).isFalse();
            }
        }
        assertThat(all.best().orElseThrow().cost().total()).isEqualTo(ranked.get(0).cost().total());
        assertThat(all.toString().lines()).hasSize(7).first().asString().startsWith(ranked.get(0).name() + ": EUR ");
    }

    @Test
    void with_oneWay_costsWhatTheJobCosts() throws IOException {
        Job three = job().toBuilder().labour(job().labour().withSiteCrew(new Crew(3, 0.9))).build();
        Alternatives all = Alternatives.of(job()).withSiteCrews(3);

        assertThat(all.all().get(1).cost().total()).isEqualTo(JobCost.of(three).total());
    }

    @Test
    void with_sameNameOrOtherCurrency_refused() throws IOException {
        Job job = job();
        Alternatives all = Alternatives.of(job);
        Job dollars = Job.builder(
                "other", job.survey(), Materials.of(job.materials().film(), List.of(io.github.bedjoint.film.RollOffer.of("A", Read.length("25 m"), Money.parse("USD 400")))),
                PriceRules.in(CurrencyUnit.USD)).build();

        assertThatThrownBy(() -> all.with("as given", job)).isInstanceOf(RefusedException.class);
        assertThatThrownBy(() -> all.with("dollars", dollars)).isInstanceOf(RefusedException.class);
    }

    @Test
    void best_nothingCanBeDone_empty() throws IOException {
        Job job = job();
        Job tall = job.toBuilder().survey(io.github.bedjoint.survey.Survey.of(
                io.github.bedjoint.survey.Wall.rectangle("Tower", Read.length("3 m"), Read.length("40 m")))).build();

        assertThat(Alternatives.of(tall).best()).isEmpty();
        assertThat(Alternatives.of(tall).toString()).contains("longest roll");
    }

    @Test
    void oneMore_hour_workedByHand() throws IOException {
        OneMore more = OneMore.of(JobCost.of(job()));

        // 44 + overhead 35 % = 59.40, + contingency 5 % = 62.37; cents may round either way at two steps
        assertThat(more.siteHour().orElseThrow().cost().getAmount().doubleValue()).isCloseTo(62.37, within(0.011));
        // 36 x 1.35 x 1.05 = 51.03
        assertThat(more.shopHour().orElseThrow().cost().getAmount().doubleValue()).isCloseTo(51.03, within(0.011));
    }

    @Test
    void oneMore_roll_workedByHand() throws IOException {
        OneMore more = OneMore.of(JobCost.of(job()));

        // 198 x 1.05 = 207.90: overhead is on labour only
        assertThat(more.roll("A-10").cost().getAmount().doubleValue()).isCloseTo(207.90, within(0.011));
        assertThatThrownBy(() -> more.roll("Z")).isInstanceOf(RefusedException.class);
    }

    @Test
    void oneMore_film_freeWhereARemnantHoldsIt() throws IOException {
        JobCost cost = JobCost.of(job());
        OneMore more = OneMore.of(cost);
        long longest = cost.filmPlan().rolls().stream().mapToLong(roll -> roll.remnantSteps()).max().orElseThrow();

        assertThat(longest).isGreaterThan(16_000);
        PriceEffect little = more.film(Read.length("0.1 m")).orElseThrow();
        assertThat(little.cost().isZero()).isTrue();
        PriceEffect much = more.film(Read.length("9 m")).orElseThrow();
        assertThat(much.cost().isPositive()).isTrue();
        assertThat(more.film(Read.length("60 m"))).isEmpty();
        assertThat(BreakEven.of(cost.price()).times(much)).isPositive();
    }

    @Test
    void figures_ofThePlan_areThoseOfTheJobCost() throws IOException {
        Job job = job();
        JobCost cost = JobCost.of(job);
        JobFigures figures = JobPlan.of(job).figures(job);

        assertThat(figures.total()).isEqualTo(cost.total());
        assertThat(figures.paidS()).isEqualTo(cost.labour().totalPaidS());
        assertThat(figures.handOver()).isEqualTo(cost.timetable().orElseThrow().handOver());
        assertThat(figures.siteDays()).isEqualTo(cost.labour().siteDays().days());
        assertThat(figures.filmM()).isCloseTo(cost.waste().openedM2() / 1.372, within(1e-9));
        assertThat(JobPlan.of(job).toString()).endsWith("rolls");
        assertThatThrownBy(() -> JobPlan.of(job).withAreaRatio("Back", 1.2)).isInstanceOf(RefusedException.class);
    }
}
