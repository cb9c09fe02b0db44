package io.github.bedjoint.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.checker.PlanChecker;
import io.github.bedjoint.film.Film;
import io.github.bedjoint.film.Laminate;
import io.github.bedjoint.film.RollOffer;
import io.github.bedjoint.price.PriceRules;
import io.github.bedjoint.survey.Survey;
import io.github.bedjoint.survey.Wall;
import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Read;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.waste.WastePart;
import io.github.bedjoint.working.Verdict;
import io.github.bedjoint.working.WorkingCheck;
import java.util.List;
import org.joda.money.CurrencyUnit;
import org.junit.jupiter.api.Test;

/** Film in rolls of 1 m at EUR 100 and of 1.52 m at EUR 130, each 10 m long; drops overlap by 20 mm, and labour is not charged. */
class FilmWidthsTest {
    private static final Film FILM = Film.of("film", Read.length("1 m")).withOverlapRange(Read.length("20 mm"), Read.length("20 mm"));
    private static final RollOffer NARROW = RollOffer.of("narrow", Read.length("10 m"), Read.money("EUR 100.00"));
    private static final RollOffer WIDE = RollOffer.of("wide", Read.length("10 m"), Read.money("EUR 130.00")).withWidth(Read.length("1.52 m"));
    private static final Materials BOTH = Materials.of(FILM, List.of(NARROW, WIDE));

    private static JobCost cost(Materials materials, Wall... walls) {
        return JobCost.of(Job.builder("job", Survey.of(walls), materials, PriceRules.in(CurrencyUnit.EUR)).build());
    }

    private static Wall wall(String name, String width, String height) {
        return Wall.rectangle(name, Read.length(width), Read.length(height));
    }

    private static List<String> widths(JobCost cost) {
        return cost.layouts().stream().map(layout -> layout.film().rollWidth().toString()).toList();
    }

    /** 3 m in drops of 1 m: (3 - 0.02) / 0.98 = 3.04, so 4 of 2.5 m, one narrow roll; of 1.52 m: 2.98 / 1.5, so 2, one wide roll. */
    @Test
    void cost_oneWall_isLaidOutInTheNarrowFilm() {
        JobCost cost = cost(BOTH, wall("north", "3 m", "2.5 m"));
        assertThat(widths(cost)).containsExactly("1 m");
        assertThat(cost.layouts().get(0).panels()).hasSize(4);
        LayoutChoice choice = cost.choice().orElseThrow();
        assertThat(choice.cost()).isEqualTo(Read.money("EUR 100.00"));
        assertThat(choice.layouts()).isEqualTo(2);
        assertThat(choice.isProven()).isTrue();
        assertThat(choice.runnerUp().orElseThrow().what()).isEqualTo("north in 2 panels as drops of film 1520.0 mm wide");
        assertThat(choice.runnerUp().orElseThrow().more()).isEqualTo(Read.money("EUR 30.00"));
    }

    /** Twice that wall: 8 narrow drops of 2.5 m are two rolls, EUR 200; 4 wide ones are one roll, EUR 130. */
    @Test
    void cost_twoWallsAlike_areLaidOutInTheWideFilm() {
        JobCost cost = cost(BOTH, wall("north", "3 m", "2.5 m"), wall("south", "3 m", "2.5 m"));
        assertThat(widths(cost)).containsExactly("1.52 m", "1.52 m");
        assertThat(cost.choice().orElseThrow().cost()).isEqualTo(Read.money("EUR 130.00"));
        assertThat(cost.choice().orElseThrow().isProven()).isTrue();
        assertThat(cost.filmPlan().rolls()).hasSize(1);
    }

    /**
     * 3.94 m: 3.92 / 0.98 = 4 narrow drops of 2.5 m, one narrow roll; 1.52 m: one wide drop of 10 m, one wide roll. EUR 230 together. All wide
     * is 3 drops of 2.5 m (3.92 / 1.5) and one of 10 m, two rolls, EUR 260; all narrow is 4 of 2.5 m and 2 of 10 m, three rolls, EUR 300.
     * Waste: opened 10 x 1 + 10 x 1.52 = 25.2; panels 4 x 1 x 2.5 + 1.52 x 10 = 25.2, of which 3 x 0.02 x 2.5 = 0.15 overlap.
     */
    @Test
    void cost_unlikeWalls_takeAWidthEach() {
        JobCost cost = cost(BOTH, wall("long", "3.94 m", "2.5 m"), wall("tall", "1.52 m", "10 m"));
        assertThat(widths(cost)).containsExactly("1 m", "1.52 m");
        LayoutChoice choice = cost.choice().orElseThrow();
        assertThat(choice.cost()).isEqualTo(Read.money("EUR 230.00"));
        assertThat(choice.layouts()).isEqualTo(4);
        assertThat(choice.isProven()).isTrue();
        assertThat(choice.runnerUp().orElseThrow().more()).isEqualTo(Read.money("EUR 30.00"));
        assertThat(cost.waste().openedM2()).isCloseTo(25.2, within(1e-12));
        assertThat(cost.waste().partsM2().get(WastePart.OVERLAP)).isCloseTo(0.15, within(1e-12));
        assertThat(cost.waste().partsM2().get(WastePart.WIDTH_TRIM)).isCloseTo(0, within(1e-12));
        assertThat(cost.waste().filmYield().share()).isCloseTo(25.05 / 25.2, within(1e-12));
        assertThat(cost.waste().working().find("rolls.over-widths")).isPresent();
        WorkingCheck.check(cost.waste().working());
        assertThat(PlanChecker.check(cost.filmPlan()).accepted()).isTrue();
    }

    /** A wide roll of 10 m for a wall of 5 m leaves 5 m, from which the narrow panel of the next wall is cut: no narrow roll is opened. */
    @Test
    void cost_leftoverOfAWideRoll_servesANarrowPanel() {
        JobCost cost = cost(BOTH, wall("a", "1.5 m", "5 m"), wall("b", "0.98 m", "5 m"));
        assertThat(cost.choice().orElseThrow().cost()).isEqualTo(Read.money("EUR 130.00"));
        assertThat(cost.filmPlan().rolls()).hasSize(1);
        // 1.52 x 10 opened; panels 1.5 x 5 + 0.98 x 5 = 12.4, the rest beside them.
        assertThat(cost.waste().partsM2().get(WastePart.WIDTH_TRIM)).isCloseTo(15.2 - 12.4, within(1e-9));
        WorkingCheck.check(cost.waste().working());
    }

    @Test
    void cost_laminateNarrowerThanAWidth_leavesThatWidthOutAndSaysWhy() {
        List<RollOffer> rolls = List.of(RollOffer.of("L", Read.length("50 m"), Read.money("EUR 90.00")));
        Materials covered = BOTH.withLaminate(Laminate.of("gloss", Read.length("1.2 m")), rolls, Door.length(0));
        assertThat(covered.films()).containsExactly(FILM);
        assertThat(covered.uncovered()).extracting(Film::rollWidth).hasToString("[1.52 m]");
        JobCost cost = cost(covered, wall("north", "3 m", "2.5 m"), wall("south", "3 m", "2.5 m"));
        assertThat(widths(cost)).containsExactly("1 m", "1 m");
        assertThat(cost.verdicts(UnitStyle.METRIC)).anySatisfy(verdict -> {
            assertThat(verdict.level()).isEqualTo(Verdict.Level.CAUTION);
            assertThat(verdict.reason()).isEqualTo("rolls of 1520.0 mm are left out, since no laminate on offer is as wide");
        });
    }

    /** Laminate comes in several widths as well: the wide runs take the wide rolls, the narrow ones the cheapest that covers them. */
    @Test
    void cost_laminateOfSeveralWidths_coversEachRollOfFilm() {
        List<RollOffer> rolls = List.of(
                RollOffer.of("L1", Read.length("50 m"), Read.money("EUR 40.00")),
                RollOffer.of("L2", Read.length("15 m"), Read.money("EUR 95.00")).withWidth(Read.length("1.52 m")));
        Materials covered = BOTH.withLaminate(Laminate.of("gloss", Read.length("1 m")), rolls, Door.length(0));
        assertThat(covered.uncovered()).isEmpty();
        JobCost cost = cost(covered, wall("long", "3.94 m", "2.5 m"), wall("tall", "1.52 m", "10 m"));
        assertThat(widths(cost)).containsExactly("1 m", "1.52 m");
        assertThat(cost.laminate().orElseThrow().plan().cost()).isEqualTo(4000 + 9500);
        assertThat(cost.laminate().orElseThrow().plan().rolls()).extracting(roll -> roll.stockId()).containsExactlyInAnyOrder("L1", "L2");
        assertThat(cost.orders()).hasSize(4);
    }

    @Test
    void of_widthStatedThatIsTheFilmsOwn_isOneWidth() {
        Materials same = Materials.of(FILM, List.of(NARROW.withWidth(Read.length("1 m")), WIDE.withAvailable(0)));
        assertThat(same.films()).containsExactly(FILM);
    }

    @Test
    void of_widthThatLeavesNothingPrintable_isRefused() {
        assertThatThrownBy(() -> Materials.of(FILM, List.of(NARROW, WIDE.withWidth(Read.length("20 mm")))))
                .isInstanceOf(RefusedException.class)
                .hasMessageContainingAll("roll wide", "20.0 mm", "both edge margins and the most overlap", "Maybe");
        assertThatThrownBy(() -> BOTH.withLaminate(Laminate.of("narrow", Read.length("0.9 m")), List.of(NARROW), Door.length(0)))
                .isInstanceOf(RefusedException.class)
                .hasMessageContainingAll("laminate roll width", "0.9 m", "at least the film's 1 m");
    }

    /** Each roll alone leaves out those that no laminate covers; one by one they are 100 and 130, which is also what the choice says. */
    @Test
    void alternatives_eachRollAlone_leaveUncoveredOnesOut() {
        Job job = Job.builder("job", Survey.of(wall("north", "3 m", "2.5 m")), BOTH, PriceRules.in(CurrencyUnit.EUR)).build();
        assertThat(Alternatives.of(job).withEachRollAlone().all()).extracting(one -> one.cost().total())
                .containsExactly(Read.money("EUR 100.00"), Read.money("EUR 100.00"), Read.money("EUR 130.00"));
        List<RollOffer> rolls = List.of(RollOffer.of("L", Read.length("50 m"), Read.money("EUR 0.00")));
        Job covered = job.toBuilder().materials(BOTH.withLaminate(Laminate.of("gloss", Read.length("1.2 m")), rolls, Door.length(0))).build();
        assertThat(Alternatives.of(covered).withEachRollAlone().all()).hasSize(2);
    }
}
