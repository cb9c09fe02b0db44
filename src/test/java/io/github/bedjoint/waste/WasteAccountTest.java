package io.github.bedjoint.waste;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.cutting.LaminatePlan;
import io.github.bedjoint.cutting.RollPlanner;
import io.github.bedjoint.film.Film;
import io.github.bedjoint.rolls.Cut;
import io.github.bedjoint.rolls.CuttingTerms;
import io.github.bedjoint.rolls.LotRule;
import io.github.bedjoint.rolls.RemnantRule;
import io.github.bedjoint.rolls.RollPlan;
import io.github.bedjoint.rolls.Stock;
import io.github.bedjoint.units.Read;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.working.WorkingCheck;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class WasteAccountTest {
    private static final long MM = 80;
    private static final Film FILM = Film.of("film", Read.length("1000 mm")).withEdgeMargin(Read.length("10 mm"));
    private static final List<Cut> CUTS = List.of(new Cut("p", 900 * MM, 3000 * MM, 3, ""));
    private static final List<Stock> STOCK = List.of(new Stock("r", 980 * MM, 10_000 * MM, 100_00, Stock.UNLIMITED, ""));
    /** Three panels of 0.9 x 3 m: 8.1 m2, of which by the layout 7 seen, 0.6 overlap, 0.5 bleed. */
    private static final Map<WastePart, Double> PANELS =
            Map.of(WastePart.VISIBLE, 7.0, WastePart.OVERLAP, 0.6, WastePart.BLEED, 0.5);

    private static RollPlan plan(long leastRemnantMm) {
        return RollPlanner.withDefaults()
                .withTerms(new CuttingTerms(300 * MM, 200 * MM, 10 * MM, new RemnantRule(leastRemnantMm * MM, MM * 100, 0), LotRule.ANY))
                .plan(CUTS, STOCK);
    }

    /**
     * By hand, on one roll of 10 m x 1 m: lead 0.3, tail 0.2, two gaps 0.02, margins 2 x 0.01 x 9 = 0.18, width trim (0.98 - 0.9) x 9
     * = 0.72, panels 8.1, left 10 - 0.3 - 0.2 - 9 - 0.02 = 0.48; sum 10.
     */
    @Test
    void of_onePlan_addsUpToTheFilmOpened() {
        WasteAccount account = WasteAccount.of(plan(500), FILM, PANELS);
        assertThat(account.openedM2()).isCloseTo(10, within(1e-12));
        assertThat(account.partsM2().get(WastePart.LEAD)).isCloseTo(0.3, within(1e-12));
        assertThat(account.partsM2().get(WastePart.TAIL)).isCloseTo(0.2, within(1e-12));
        assertThat(account.partsM2().get(WastePart.GAP)).isCloseTo(0.02, within(1e-12));
        assertThat(account.partsM2().get(WastePart.EDGE_MARGIN)).isCloseTo(0.18, within(1e-12));
        assertThat(account.partsM2().get(WastePart.WIDTH_TRIM)).isCloseTo(0.72, within(1e-12));
        assertThat(account.partsM2().get(WastePart.SCRAP)).isCloseTo(0.48, within(1e-12));
        assertThat(account.partsM2().values().stream().mapToDouble(a -> a).sum()).isCloseTo(10, within(1e-9));
        assertThat(account.filmYield().share()).isCloseTo(0.7, within(1e-12));
        assertThat(account.utilisation()).isCloseTo(0.81, within(1e-12));
        WorkingCheck.check(account.working());
    }

    @Test
    void of_remnantLongEnough_isKeptAndLeftOutOfTheNetYield() {
        WasteAccount account = WasteAccount.of(plan(480), FILM, PANELS);
        assertThat(account.partsM2().get(WastePart.KEPT_REMNANT)).isCloseTo(0.48, within(1e-12));
        assertThat(account.partsM2().get(WastePart.SCRAP)).isZero();
        assertThat(account.filmYield().netShare()).isCloseTo(7 / 9.52, within(1e-12));
        WorkingCheck.check(account.working());
    }

    @Test
    void of_panelsThatDoNotAddUp_isRefused() {
        assertThatThrownBy(() -> WasteAccount.of(plan(500), FILM, Map.of(WastePart.VISIBLE, 8.0)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("8.1");
    }

    @Test
    void of_planWithoutRolls_isRefused() {
        RollPlan none = RollPlanner.withDefaults().plan(CUTS, List.of());
        assertThatThrownBy(() -> WasteAccount.of(none, FILM, Map.of()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("there is no roll plan to account for");
    }

    @Test
    void filmYield_moreSeenThanOpened_isRefused() {
        assertThatThrownBy(() -> FilmYield.of(Read.area("10.01 m2"), Read.area("10 m2"))).isInstanceOf(RefusedException.class);
        assertThatThrownBy(() -> FilmYield.of(Read.area("9 m2"), Read.area("10 m2")).withKept(Read.area("1.5 m2")))
                .isInstanceOf(RefusedException.class);
        assertThat(FilmYield.of(Read.area("31.2 m2"), Read.area("41.8 m2"))).hasToString("74.6 %: 31.2 m² visible of 41.8 m² opened");
    }

    /** Web 3 x 3 m + 2 gaps = 9.02 m in one run; lead-in 1 m: 10.02 m, more than one laminate roll of 10 m holds, so two runs. */
    @Test
    void laminate_runLongerThanItsRoll_endsBetweenPanels() {
        List<Stock> ten = List.of(new Stock("lam", 1000 * MM, 10_000 * MM, 50_00, Stock.UNLIMITED, ""));
        LaminatePlan split = LaminatePlan.of(plan(500), 0, 1000 * MM, ten, RollPlanner.withDefaults());
        assertThat(split.runs()).isEqualTo(2);
        // 6.01 + 3 = 9.01 of web: the gap between the runs needs no laminate; and 2 lead-ins
        assertThat(split.webM()).isCloseTo(9.01, within(1e-12));
        assertThat(split.length().getValue().doubleValue()).isCloseTo(11.01, within(1e-12));
        assertThat(split.plan().rolls()).hasSize(2);
        WorkingCheck.check(split.working());

        List<Stock> fifty = List.of(new Stock("lam", 1000 * MM, 50_000 * MM, 50_00, Stock.UNLIMITED, ""));
        LaminatePlan one = LaminatePlan.of(plan(500), 0, 1000 * MM, fifty, RollPlanner.withDefaults());
        assertThat(one.runs()).isEqualTo(1);
        assertThat(one.webM()).isCloseTo(9.02, within(1e-12));

        List<Stock> two = List.of(new Stock("lam", 1000 * MM, 2_000 * MM, 50_00, Stock.UNLIMITED, ""));
        assertThat(LaminatePlan.of(plan(500), 0, 1000 * MM, two, RollPlanner.withDefaults()).plan().isFeasible()).isFalse();
    }

    /**
     * By hand, two panels of 0.4 x 3 m side by side and one of 0.9 x 2 m behind them, gap 10 mm: the roll holds panels on 3 + 2 = 5 m of
     * the 5.01 m used, so gap 0.01, margins 2 x 0.01 x 5 = 0.1, panels 2.4 + 1.8 = 4.2, width trim 0.98 x 5 - 4.2 = 0.7, left 10 - 5.01
     * = 4.99; sum 10.
     */
    @Test
    void of_panelsSideBySide_addsUpToTheFilmOpened() {
        List<Cut> cuts = List.of(new Cut("n", 400 * MM, 3000 * MM, 2, ""), new Cut("w", 900 * MM, 2000 * MM, 1, ""));
        RollPlan plan = RollPlanner.withDefaults().withGap(10 * MM).plan(cuts, STOCK);
        WasteAccount account = WasteAccount.of(plan, FILM, Map.of(WastePart.VISIBLE, 4.2));
        assertThat(account.partsM2().get(WastePart.GAP)).isCloseTo(0.01, within(1e-12));
        assertThat(account.partsM2().get(WastePart.EDGE_MARGIN)).isCloseTo(0.1, within(1e-12));
        assertThat(account.partsM2().get(WastePart.WIDTH_TRIM)).isCloseTo(0.7, within(1e-12));
        assertThat(account.partsM2().get(WastePart.KEPT_REMNANT)).isCloseTo(4.99, within(1e-12));
        assertThat(account.partsM2().values().stream().mapToDouble(a -> a).sum()).isCloseTo(10, within(1e-9));
        WorkingCheck.check(account.working());

        List<Stock> three = List.of(new Stock("lam", 1000 * MM, 3_000 * MM, 50_00, Stock.UNLIMITED, ""));
        LaminatePlan laminate = LaminatePlan.of(plan, 0, 0, three, RollPlanner.withDefaults());
        assertThat(laminate.runs()).isEqualTo(2);
        assertThat(laminate.webM()).isCloseTo(5, within(1e-12));
    }
}
