package io.github.bedjoint.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.bedjoint.conditions.SiteConditions;
import io.github.bedjoint.conditions.Substrate;
import io.github.bedjoint.film.Coating;
import io.github.bedjoint.film.Film;
import io.github.bedjoint.film.Ink;
import io.github.bedjoint.film.InkFamily;
import io.github.bedjoint.film.Laminate;
import io.github.bedjoint.film.RollOffer;
import io.github.bedjoint.jobfile.JobFile;
import io.github.bedjoint.labour.HeightBands;
import io.github.bedjoint.labour.Pace;
import io.github.bedjoint.labour.TaskTable;
import io.github.bedjoint.layout.Direction;
import io.github.bedjoint.layout.LayoutPlanner;
import io.github.bedjoint.price.CostLine;
import io.github.bedjoint.price.LineKind;
import io.github.bedjoint.price.PriceRules;
import io.github.bedjoint.rolls.Certificate;
import io.github.bedjoint.rolls.CuttingTerms;
import io.github.bedjoint.rolls.LotRule;
import io.github.bedjoint.rolls.RemnantRule;
import io.github.bedjoint.rolls.RollPlan;
import io.github.bedjoint.rolls.Shortage;
import io.github.bedjoint.rolls.Stop;
import io.github.bedjoint.schedule.RainEffect;
import io.github.bedjoint.survey.Survey;
import io.github.bedjoint.survey.Wall;
import io.github.bedjoint.units.Read;
import io.github.bedjoint.units.Steps;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.working.Source;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Jobs that cannot be done or priced as given, and what is then said of them. */
class JobReasonsTest {
    private static final Film FILM = Film.of("Film", Read.length("1.372 m"));
    private static final RollOffer ROLL = RollOffer.of("25 m", Read.length("25 m"), Money.parse("EUR 400"));

    private static Job demo() {
        try {
            return JobFile.read(Path.of("docs/jobs/brick-front.json"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Job job(Materials materials, String width, String height) {
        return Job.builder("Job", Survey.of(Wall.rectangle("north", Read.length(width), Read.length(height))), materials, PriceRules.in(CurrencyUnit.EUR)).build();
    }

    private static Job plain() {
        return job(Materials.of(FILM, List.of(ROLL)), "4 m", "2 m");
    }

    /** Eight hours of travel within a shift of eight: there is no time to work, so no price. */
    private static Job withoutTime() {
        Job demo = demo();
        return demo.toBuilder().labour(demo.labour().withWorkDay(demo.labour().workDay().withTravelInShift(Read.time("8 h")))).build();
    }

    @Test
    void of_travelThatFillsTheShift_hasHoursAndNoPrice() {
        JobCost cost = JobCost.of(withoutTime());
        assertThat(cost.isPossible()).isFalse();
        assertThat(cost.isPriced()).isFalse();
        assertThat(cost.reasons()).hasSize(2);
        assertThat(cost.reasons().get(0)).contains("no time is left for work. Maybe stay near the site");
        assertThat(cost.reasons().get(1)).contains("Travel of 8 h for wash fills the shift of 8 h");
        assertThat(cost.toString()).endsWith(": " + String.join("; ", cost.reasons()));
        assertThat(cost.labour().totalPaidS()).isPositive();
        assertThatThrownBy(cost::price).isInstanceOf(IllegalStateException.class).hasMessageContaining("so there is no price: ");
        assertThat(cost.ifItRains()).isEmpty();
        JobFigures figures = JobPlan.of(withoutTime()).figures(withoutTime());
        assertThat(figures.cost()).isNull();
        assertThat(figures.total()).isNull();
        assertThat(figures.handOver()).isNull();
        assertThat(figures.reasons()).isEqualTo(cost.reasons());
        assertThat(cost.working().toString()).doesNotContain("Price for a square metre");
    }

    @Test
    void of_wallHigherThanAnyRoll_hasNoPlan() {
        Job tower = job(Materials.of(FILM, List.of(ROLL)), "3 m", "40 m");
        JobPlan plan = JobPlan.of(tower);
        assertThat(plan.toString()).startsWith("north: ");
        assertThatThrownBy(() -> plan.figures(tower)).isInstanceOf(IllegalStateException.class).hasMessageStartingWith("There is no plan: north: ");
        JobCost cost = JobCost.of(tower);
        assertThatThrownBy(cost::labour).isInstanceOf(IllegalStateException.class).hasMessageContaining("cannot be done as given");
        assertThat(cost.isPriced()).isFalse();
        assertThat(cost.timetable()).isEmpty();
    }

    @Test
    void toString_ofAPlanAndItsJob_inOneLine() {
        // 4 m wide in strips of 1.372 m with overlaps of at least 12.7 mm: (4 - 0.0127)/(1.372 - 0.0127) = 2.93, so 3 drops of 2 m from one roll of 25 m.
        assertThat(JobPlan.of(plain())).hasToString("3 panels from 1 rolls");
        JobCost cost = JobCost.of(plain());
        assertThat(cost).hasToString("Job: " + cost.total());
        assertThat(SiteAccess.plain()).hasToString("no height bands, {}, []");
        assertThat(SiteAccess.plain().withBottom("north", Read.length("1 m")).toString()).startsWith("no height bands, {north=80000}");
    }

    /** What can be done stands before what cannot, which stands before what has no price at all, whatever it would cost. */
    @Test
    void ranked_jobsWithAndWithoutPrice_inThatOrder() {
        Job demo = demo();
        Alternatives all = Alternatives.of(withoutTime()).with("as it was", demo);
        assertThat(all.ranked()).extracting(Alternatives.Alternative::name).containsExactly("as it was", "as given");
        assertThat(all.best().orElseThrow().name()).isEqualTo("as it was");
        assertThat(all.toString()).contains("as given: ").contains("no time is left for work");
        Job dearer = demo.toBuilder().extra(CostLine.each(LineKind.LUMP, "Permit, twice", 1, Money.parse("EUR 1"))).build();
        assertThat(Alternatives.of(dearer).with("without", demo).best().orElseThrow().name()).isEqualTo("without");
        // Drops stand before bands where all else is the same: a square of one panel.
        Job square = job(Materials.of(FILM, List.of(ROLL)), "1 m", "1 m");
        assertThat(Alternatives.of(square).withDirections().ranked()).extracting(Alternatives.Alternative::name).containsSubsequence("drops", "bands");
    }

    /** Heat on paint of unknown age is refused, yet the job is priced: it stands behind what can be done and before what has no price. */
    @Test
    void ranked_refusedButPriced_saysWhatStandsAgainstIt() {
        Job refused = demo().toBuilder().site(SiteConditions.outdoor(Substrate.BRICK)).build();
        JobCost cost = JobCost.of(refused);
        assertThat(cost.isPriced()).isTrue();
        assertThat(cost.isPossible()).isFalse();
        Job tower = demo().toBuilder().survey(Survey.of(Wall.rectangle("Tower", Read.length("3 m"), Read.length("40 m")))).build();
        Alternatives all = Alternatives.of(withoutTime()).with("tower", tower).with("old paint", refused).with("as it was", demo());
        assertThat(all.ranked()).extracting(Alternatives.Alternative::name).startsWith("as it was", "old paint").endsWith("as given");
        assertThat(all.toString()).contains("old paint: " + cost.total() + ", ").contains(", but " + cost.reasons().get(0));
    }

    /** Bands of heights are told before the bottoms and hires. */
    @Test
    void toString_accessWithHeights_tellsThem() {
        HeightBands bands = HeightBands.defaults();
        assertThat(SiteAccess.plain().withHeights(bands)).hasToString(bands + ", {}, []");
    }

    /** A longest cut of the job's own is not that of the rolls. */
    @Test
    void of_wallHigherThanTheJobsLongestCut_doesNotBlameTheRolls() {
        Job cut = job(Materials.of(FILM, List.of(ROLL)), "3 m", "5 m").toBuilder()
                .layout(LayoutPlanner.withDefaults().withLongestCut(Read.length("2 m")).withDirection(Direction.DROPS)).build();
        assertThat(JobCost.of(cut).reasons()).singleElement().asString().startsWith("north: ").contains(". Maybe take ").doesNotContain("longest roll gives");
        Job rolls = job(Materials.of(FILM, List.of(ROLL)), "3 m", "40 m").toBuilder().layout(LayoutPlanner.withDefaults().withDirection(Direction.DROPS)).build();
        assertThat(JobCost.of(rolls).reasons().get(0)).contains(", which is what the longest roll gives. Maybe take ");
    }

    @Test
    void builder_pricesInAnotherCurrency_areRefusedByTheirName() {
        Materials euros = Materials.of(FILM, List.of(ROLL));
        Laminate clear = Laminate.of("Clear", Read.length("1.4 m"));
        Money dollars = Money.parse("USD 400");
        assertThatThrownBy(() -> job(Materials.of(FILM, List.of(ROLL.withPrice(dollars))), "1 m", "1 m"))
                .hasMessageContaining("film roll 25 m is in USD, but must be in EUR").hasMessageContaining("knows no exchange rates");
        assertThatThrownBy(() -> job(euros.withLaminate(clear, List.of(ROLL.withPrice(dollars)), Read.length("1 m")), "1 m", "1 m")).hasMessageContaining("laminate roll 25 m is in USD");
        assertThatThrownBy(() -> job(euros.withInk(Ink.of(InkFamily.LATEX, Read.volumePerArea("10 mL/m2"), Read.pricePerVolume("USD 100/L"))), "1 m", "1 m"))
                .hasMessageContaining("ink is in USD");
        assertThatThrownBy(() -> job(euros.withConsumable("Blades", Read.pricePerArea("USD 1/m2")), "1 m", "1 m")).hasMessageContaining("Blades is in USD");
        assertThatThrownBy(() -> job(euros.withCoating(Coating.of("Primer", Read.volumePerArea("100 mL/m2")), Read.pricePerVolume("USD 9/L")), "1 m", "1 m"))
                .hasMessageContaining("Primer is in USD");
    }

    /** 25.4 mm is an inch: steps of 2032. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "CUT_TOO_WIDE | film: panel P is 25.4 mm (1\") wide, the widest roll gives 12.7 mm (1/2\"). Maybe take a wider film.",
                "CUT_TOO_LONG | film: panel P is 25.4 mm (1\") long, the longest roll gives 12.7 mm (1/2\"). Maybe take longer rolls, hang bands in place of drops, or split the wall at a horizontal joint.",
                "STOCK_TOO_SHORT | film: all panels need 25.4 mm (1\"), all rolls together give 12.7 mm (1/2\"). Maybe buy more rolls.",
                "NO_ARRANGEMENT | film: the rolls at hand hold the length of all panels but not the panels themselves. Maybe buy one more roll.",
                "UNDECIDED | film: no arrangement of the panels on the rolls at hand was found, and none was shown to be impossible. Maybe buy one more roll."
            })
    void ofRolls_eachShortage_isASentence(Shortage.Reason reason, String sentence) {
        RollPlan plan = new RollPlan(
                List.of(), List.of(), CuttingTerms.plain(), List.of(), 0, 0, Stop.INFEASIBLE, Certificate.empty(), List.of(new Shortage(reason, "P", 2032, 1016)), 0);
        List<String> reasons = new ArrayList<>();
        Obstacles.ofRolls("film", plan, reasons);
        assertThat(reasons).containsExactly(sentence);
        Obstacles.ofRolls("film", null, reasons);
        assertThat(reasons).hasSize(1);
    }

    @Test
    void layoutChoice_provenOrNot_isSaid() {
        LayoutChoice proven = new LayoutChoice(4, 4, Money.parse("EUR 400"), Money.parse("EUR 400"), Optional.empty());
        LayoutChoice open = new LayoutChoice(
                4, 4, Money.parse("EUR 400"), Money.parse("EUR 390"), Optional.of(new LayoutChoice.RunnerUp("bands", Money.parse("EUR 20"))));
        assertThat(proven).hasToString("EUR 400.00 for rolls and work that depend on the layout, proven the cheapest for the whole job");
        assertThat(open).hasToString("EUR 400.00 for rolls and work that depend on the layout, within EUR 10.00 of the cheapest for the whole job; next: bands, EUR 20.00 more");
    }

    /** Heat-rolling a hundred times as long takes weeks; the first ten days outdoors are tried. */
    @Test
    void ifItRains_longJob_triesTenDays() {
        Job demo = demo();
        TaskTable slow = demo.labour().tasks().withPace("heat-roll", Pace.perArea(Read.timePerArea("500 min/m2")), Source.shop("for this test"));
        JobCost cost = JobCost.of(demo.toBuilder().labour(demo.labour().withTasks(slow)).build());
        assertThat(cost.labour().siteDays().days()).isGreaterThan(10);
        assertThat(cost.ifItRains()).hasSize(10).extracting(RainEffect::day).isSorted().doesNotHaveDuplicates();
    }

    /** A job with a line of film of its own keeps it when one more roll is bought. */
    @Test
    void oneMore_roll_keepsFilmLinesOfTheJobsOwn() {
        Job extra = plain().toBuilder().extra(CostLine.each(LineKind.FILM, "Film lent out", 1, Money.parse("EUR 30"))).build();
        assertThat(OneMore.of(JobCost.of(extra)).roll("25 m").cost()).isEqualTo(Money.parse("EUR 400.00"));
        assertThatThrownBy(() -> OneMore.of(JobCost.of(extra)).roll("30 m")).hasMessageContaining("must be one of [25 m]");
    }

    /** Remnants of 25 m in units of 124.4 mm are 200 of them, 25.01 m would give 201: longer rolls are left out, the rest is told. */
    @Test
    void oneMore_remnantsAtTheirLimit_leavesLongerRollsOut() {
        CuttingTerms fine = new CuttingTerms(0, 0, 0, new RemnantRule(1, Steps.up(0.1244), 50), LotRule.ANY);
        OneMore more = OneMore.of(JobCost.of(plain().toBuilder().cutting(fine).build()));
        assertThat(more.longerRolls()).isEmpty();
        assertThat(more.lines(UnitStyle.METRIC)).isNotEmpty().noneMatch(line -> line.startsWith("Every roll")).anyMatch(line -> line.contains("overlap"));
    }
}
