package io.github.bedjoint.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.bedjoint.film.Film;
import io.github.bedjoint.film.RollOffer;
import io.github.bedjoint.jobfile.JobFile;
import io.github.bedjoint.layout.LayoutPlanner;
import io.github.bedjoint.price.PriceRules;
import io.github.bedjoint.survey.Survey;
import io.github.bedjoint.survey.Wall;
import io.github.bedjoint.units.Read;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.UnitStyle;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/** A smaller overlap, worked by hand: film of 1 m without margins and bleeds, drops of 3 m, each on a roll of 3 m for 100. */
class LessOverlapTest {

    private static JobCost cost(String wall, String overlap) {
        Film film = Film.of("film", Read.length("1 m")).withOverlapRange(Read.length("15 mm"), Read.length("50 mm"));
        List<RollOffer> rolls = List.of(RollOffer.of("three", Read.length("3 m"), Money.parse("EUR 100")));
        LayoutPlanner layout = LayoutPlanner.withDefaults();
        Job job = Job.builder("test", Survey.of(Wall.rectangle("north", Read.length(wall), Read.length("3 m"))), Materials.of(film, rolls), PriceRules.in(CurrencyUnit.EUR))
                .layout(overlap.isEmpty() ? layout : layout.withOverlap(Read.length(overlap)))
                .build();
        return JobCost.of(job);
    }

    /**
     * A wall of 2.955 m: with 20 mm of overlap 3 drops reach 3 - 0.04 = 2.96 m. With 22.5 mm they would reach 2.955, with 23 mm 2.954. So at 25 mm there are four
     * (2.95 m), and three from 22 mm on, in whole millimetres less.
     */
    @Test
    void enough_fourthDropHardlyNeeded_isWhereThreeReach() {
        LessOverlap less = LessOverlap.of(cost("2.955 m", "25 mm"), Read.length("1 mm"));
        assertThat(less.overlapSteps()).isEqualTo(2000);
        assertThat(less.isBelowFilm()).isFalse();
        assertThat(less.effect().orElseThrow().cost()).isEqualTo(Money.parse("EUR 0.00"));
        assertThat(less.enough().orElseThrow().filmPlan().cost()).isEqualTo(30_000);
        assertThat(less.lastOverlapSteps()).isEqualTo(22 * 80);
        assertThat(less.lines(UnitStyle.METRIC).get(0)).startsWith(
                "Overlap of 24.0 mm in place of 25.0 mm; planned again: film rolls for EUR 400.00, the same cost;");
        assertThat(less.lines(UnitStyle.METRIC).get(2)).startsWith(
                "The first saving of film rolls comes with an overlap of 22.0 mm: 3 rolls for EUR 300.00, EUR 100.00 less; cost of the job EUR -100.00");
    }

    /** Three seams of 3 m, a millimetre off each is 0.009 m2. Four panels are 2.955 + 3 x 0.025 = 3.03 m wide and 3 m high, 9.09 m2, at the bound of 400: 0.396. */
    @Test
    void rate_threeSeams_isTheirShareOfTheBound() {
        assertThat(LessOverlap.of(cost("2.955 m", "25 mm"), Read.length("1 mm")).rate()).isEqualTo(Money.parse("EUR 0.40"));
    }

    /** Three drops with 20 mm reach 2.96 m; the film asks for at least 15 mm. From 20 mm on 2 drops reach 2 - o, never 2.9 m. */
    @Test
    void enough_noSmallerOverlapHelps_isEmpty() {
        LessOverlap less = LessOverlap.of(cost("2.9 m", ""), Read.length("1 mm"));
        assertThat(less.overlapSteps()).isEqualTo(15 * 80);
        assertThat(less.isBelowFilm()).isTrue();
        assertThat(less.after().orElseThrow().filmPlan().cost()).isEqualTo(30_000);
        assertThat(less.enough()).isEmpty();
        assertThat(less.lastOverlapSteps()).isEqualTo(80);
        assertThat(less).asString().contains("Overlap of 14.0 mm in place of 15.0 mm, which is less than the film asks for")
                .endsWith("No overlap down to 1.0 mm was found to save film rolls.");
    }

    /** A wall of 0.9 m is one drop: no seam, nothing to save. */
    @Test
    void of_onePanel_savesNothing() {
        LessOverlap less = LessOverlap.of(cost("0.9 m", ""), Read.length("1 mm"));
        assertThat(less.rate().isZero()).isTrue();
        assertThat(less.effect().orElseThrow().total().isZero()).isTrue();
        assertThat(less.enough()).isEmpty();
    }

    /** 3 m rolls and a wall of 4 m: no drop fits, so there is nothing to compare. */
    @Test
    void of_jobWithoutAPlan_isRefused() {
        JobCost cost = cost("2.9 m", "");
        Job tall = cost.job().toBuilder().survey(Survey.of(Wall.rectangle("north", Read.length("2.9 m"), Read.length("4 m")))).build();
        assertThatThrownBy(() -> LessOverlap.of(JobCost.of(tall), Read.length("1 mm"))).isInstanceOf(IllegalStateException.class);
        assertThatThrownBy(() -> JobCost.of(tall).rollReasons(UnitStyle.METRIC)).isInstanceOf(IllegalStateException.class);
    }

    @Test
    void of_moreThanTheOverlap_leavesNoJob() {
        LessOverlap less = LessOverlap.of(cost("2.9 m", ""), Read.length("20 mm"));
        assertThat(less.after()).isEmpty();
        assertThat(less.effect()).isEmpty();
        assertThat(less.lines(UnitStyle.METRIC)).containsExactly("An overlap smaller by 20.0 mm leaves no job that can be done.");
        assertThatThrownBy(() -> LessOverlap.of(cost("2.9 m", ""), Read.length("0 mm"))).isInstanceOf(RefusedException.class);
    }

    /** What the overlap changes is what the job costs that has it, and no plan again costs less than its own bound. */
    @Test
    void after_ofADemoJob_isThatJob() throws IOException {
        JobCost cost = JobCost.of(JobFile.read(Path.of("docs/jobs/brick-front.json")));
        OneMore more = OneMore.of(cost);
        LessOverlap less = more.lessOverlap();
        Job job = cost.job();
        Film narrow = job.materials().film().withOverlapRange(Read.length("19 mm"), Read.length("25 mm"));
        JobCost other = JobCost.of(job.toBuilder().materials(job.materials().withFilm(narrow, job.materials().filmRolls())).build());
        assertThat(less.effect().orElseThrow().total()).isEqualTo(other.total().minus(cost.total()));
        assertThat(less.after().orElseThrow().filmPlan().cost()).isGreaterThanOrEqualTo(less.after().orElseThrow().filmPlan().lowerBound());
        assertThat(more.lines(UnitStyle.IMPERIAL)).hasSizeGreaterThan(6).anyMatch(line -> line.startsWith("Every roll 3/8\" longer"))
                .allMatch(line -> line.endsWith("."));
    }
}
