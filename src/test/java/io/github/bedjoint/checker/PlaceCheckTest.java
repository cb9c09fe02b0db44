package io.github.bedjoint.checker;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.bedjoint.rolls.Certificate;
import io.github.bedjoint.rolls.Cut;
import io.github.bedjoint.rolls.CutKind;
import io.github.bedjoint.rolls.CuttingTerms;
import io.github.bedjoint.rolls.LotRule;
import io.github.bedjoint.rolls.OpenedRoll;
import io.github.bedjoint.rolls.PlacedCut;
import io.github.bedjoint.rolls.RemnantRule;
import io.github.bedjoint.rolls.RollPlan;
import io.github.bedjoint.rolls.Stock;
import io.github.bedjoint.rolls.Stop;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Places on a roll, its lengths and its cost, worked by hand. */
class PlaceCheckTest {
    private static final Cut TWO = new Cut("A", 2, 4, 2, "");
    private static final Stock ROW = new Stock("R", 5, 12, 100, 1, "");

    private static CuttingTerms terms(long gap) {
        return new CuttingTerms(0, 0, gap, RemnantRule.none(), LotRule.ANY);
    }

    private static String rolls(List<Cut> cuts, List<Stock> stock, CuttingTerms terms, OpenedRoll... rolls) {
        return PlanChecker.checkRolls(cuts, stock, terms, List.of(rolls)).reason();
    }

    /** Two of 2 x 4, the first at 0, 0 and the second elsewhere; they may touch, or with a gap of 1 be 1 apart. */
    @ParameterizedTest
    @CsvSource({"0, 0, 1, false", "0, 3, 1, false", "0, 4, 1, true", "0, 0, 2, true", "0, 3, 2, true",
        "1, 4, 0, false", "1, 5, 0, true", "1, 0, 2, false", "1, 0, 3, true", "1, 4, 2, false", "1, 4, 3, true"})
    void checkRolls_twoPanels_keepTheGapOneWayOrTheOther(long gap, long along, long across, boolean fine) {
        PlacedCut first = PlacedCut.of(TWO, 0, 0, false);
        OpenedRoll roll = OpenedRoll.of(ROW, List.of(first, PlacedCut.of(TWO, along, across, false)), terms(gap));
        assertThat(rolls(List.of(TWO), List.of(ROW), terms(gap), roll))
                .isEqualTo(fine ? "accepted" : "cuts A and A overlap on roll R or leave less than the gap");
    }

    @Test
    void checkRolls_panelTurnedThatMayNot_isRefused() {
        Cut one = new Cut("A", 2, 4, 1, "");
        assertThat(rolls(List.of(one), List.of(ROW), terms(0), OpenedRoll.of(ROW, List.of(PlacedCut.of(one, 0, 0, true)), terms(0))))
                .isEqualTo("cut A is turned, which it does not allow");
    }

    /** No cross cut parts the two, a slit does, though the panel that starts first lies farther across. */
    @Test
    void checkRolls_slitBetweenPanels_isFoundInAnyOrder() {
        PlacedCut right = PlacedCut.of(TWO, 0, 2, false);
        PlacedCut left = PlacedCut.of(TWO, 1, 0, false);
        CuttingTerms straight = terms(0).withCuts(CutKind.GUILLOTINE);
        Cut third = new Cut("B", 1, 3, 1, "");
        OpenedRoll roll = OpenedRoll.of(ROW, List.of(right, left, PlacedCut.of(third, 2, 4, false)), straight);
        assertThat(rolls(List.of(TWO, third), List.of(ROW), straight, roll)).isEqualTo("accepted");
    }

    @Test
    void checkRolls_rowWithoutRolls_isRefused() {
        Cut one = new Cut("A", 2, 4, 1, "");
        Stock none = new Stock("R", 5, 12, 100, 0, "");
        assertThat(rolls(List.of(one), List.of(none), terms(0), OpenedRoll.inLine(none, List.of(one), terms(0))))
                .isEqualTo("more than 0 rolls of R opened");
    }

    /**
     * A lead of 1 and a tail of 2 leave 9 of 12; a panel of 4 leaves 5, worth 100 x 5/12 = 41, so each roll of that row costs 59. A panel of 3 on the other row
     * leaves 6, worth 60 x 6/12 = 30. Two and one: 59 + 59 + 30.
     */
    @Test
    void check_creditsLeadAndTail_workedByHand() {
        CuttingTerms terms = new CuttingTerms(1, 2, 0, new RemnantRule(1, 1, 100), LotRule.ANY);
        Cut small = new Cut("B", 2, 3, 1, "");
        List<Stock> stock = List.of(new Stock("R", 5, 12, 100, 2, ""), new Stock("S", 5, 12, 60, 1, ""));
        List<OpenedRoll> rolls = List.of(
                new OpenedRoll("R", List.of(PlacedCut.of(TWO, 0, 0, false)), 4, 5, 41),
                new OpenedRoll("R", List.of(PlacedCut.of(TWO, 0, 0, false)), 4, 5, 41),
                new OpenedRoll("S", List.of(PlacedCut.of(small, 0, 0, false)), 3, 6, 30));
        RollPlan plan = new RollPlan(
                List.of(TWO, small), stock, terms, rolls, 148, 0, Stop.WORK_LIMIT, Certificate.empty(), List.of(), 0);
        assertThat(PlanChecker.check(plan).reason()).isEqualTo("accepted");
    }
}
