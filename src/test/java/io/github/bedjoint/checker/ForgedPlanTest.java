package io.github.bedjoint.checker;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.bedjoint.rolls.Certificate;
import io.github.bedjoint.rolls.Cut;
import io.github.bedjoint.rolls.CutKind;
import io.github.bedjoint.rolls.CuttingTerms;
import io.github.bedjoint.rolls.LotRule;
import io.github.bedjoint.rolls.OpenedRoll;
import io.github.bedjoint.rolls.PlacedCut;
import io.github.bedjoint.rolls.PriceList;
import io.github.bedjoint.rolls.RemnantRule;
import io.github.bedjoint.rolls.RollPlan;
import io.github.bedjoint.rolls.Shortage;
import io.github.bedjoint.rolls.Stock;
import io.github.bedjoint.rolls.Stop;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Answers forged by hand: jobs called impossible that are not, plans without rolls, and places that no roll has. */
class ForgedPlanTest {

    private static final CuttingTerms FREE = CuttingTerms.plain();
    private static final Cut A = new Cut("A", 2, 4, 2, "");

    private static Stock roll(String id, long width, long length, int available) {
        return new Stock(id, width, length, 10, available, "");
    }

    private static OpenedRoll opened(Stock row, PlacedCut... placed) {
        return OpenedRoll.of(row, List.of(placed), FREE);
    }

    private static PlacedCut at(Cut cut, long along, long across) {
        return PlacedCut.of(cut, along, across, false);
    }

    private static String impossible(List<Cut> cuts, List<Stock> stock, CuttingTerms terms, Certificate certificate, Shortage... shortages) {
        return PlanChecker.check(new RollPlan(
                cuts, stock, terms, List.of(), 0, 0, Stop.INFEASIBLE, certificate, List.of(shortages), 0)).reason();
    }

    private static String impossible(Cut cut, Stock row, CuttingTerms terms, Shortage shortage) {
        return impossible(List.of(cut), List.of(row), terms, Certificate.empty(), shortage);
    }

    @Test
    void check_impossibleWithRollsOrWithoutReason_isRefused() {
        Stock row = roll("R", 2, 4, 9);
        Shortage reason = new Shortage(Shortage.Reason.CUT_TOO_LONG, "A", 4, 3);
        RollPlan rolls = new RollPlan(
                List.of(A), List.of(row), FREE, List.of(opened(row, at(A, 0, 0))), 10, 0, Stop.INFEASIBLE, Certificate.empty(), List.of(reason), 0);
        assertThat(PlanChecker.check(rolls).reason()).isEqualTo("called impossible with rolls or without a reason");
        assertThat(impossible(List.of(A), List.of(row), FREE, Certificate.empty())).isEqualTo("called impossible with rolls or without a reason");
    }

    @Test
    void check_cutCalledTooLargeForEveryRoll_isTriedOnEachWayItMayLie() {
        Shortage wide = new Shortage(Shortage.Reason.CUT_TOO_WIDE, "A", 2, 1);
        Shortage tooLong = new Shortage(Shortage.Reason.CUT_TOO_LONG, "A", 4, 3);
        assertThat(impossible(A, roll("R", 1, 9, 9), FREE, wide)).isEqualTo("accepted");
        assertThat(impossible(A, roll("R", 2, 3, 9), FREE, tooLong)).isEqualTo("accepted");
        assertThat(impossible(A, roll("R", 2, 4, 9), FREE, tooLong)).isEqualTo("the shortage " + tooLong + " is not there");
        // A lead of 1 leaves 3 of 4.
        assertThat(impossible(A, roll("R", 2, 4, 9), new CuttingTerms(1, 0, 0, RemnantRule.none(), LotRule.ANY), tooLong)).isEqualTo("accepted");
        assertThat(impossible(A, roll("R", 2, 4, 9), new CuttingTerms(0, 1, 0, RemnantRule.none(), LotRule.ANY), tooLong)).isEqualTo("accepted");
        // Turned it takes 4 across and 2 along.
        Cut turns = new Cut("A", 2, 4, 2, "", true);
        assertThat(impossible(turns, roll("R", 4, 2, 9), FREE, tooLong)).contains("is not there");
        assertThat(impossible(A, roll("R", 4, 2, 9), FREE, tooLong)).isEqualTo("accepted");
        assertThat(impossible(turns, roll("R", 3, 2, 9), FREE, tooLong)).isEqualTo("accepted");
        assertThat(impossible(turns, roll("R", 4, 1, 9), FREE, tooLong)).isEqualTo("accepted");
        // A row without rolls holds nothing, however large.
        assertThat(impossible(A, roll("R", 9, 9, 0), FREE, tooLong)).isEqualTo("accepted");
        Shortage other = new Shortage(Shortage.Reason.CUT_TOO_WIDE, "B", 2, 1);
        assertThat(impossible(A, roll("R", 1, 9, 9), FREE, other)).isEqualTo("the shortage " + other + " is not there");
    }

    /** Two of 2 x 4 need 8 along one roll of 2 x 4; at 5 each a roll holds 5 of the 10. */
    @Test
    void check_stockCalledTooShort_isMeasuredAndShown() {
        Certificate shown = new Certificate(List.of(new PriceList(List.of(5L), List.of(List.of(5L)))), List.of(), List.of());
        Shortage tooShort = new Shortage(Shortage.Reason.STOCK_TOO_SHORT, "", 8, 4);
        assertThat(impossible(List.of(A), List.of(roll("R", 2, 4, 1)), FREE, shown, tooShort)).isEqualTo("accepted");
        assertThat(impossible(List.of(A), List.of(roll("R", 2, 4, 1)), FREE, Certificate.empty(), tooShort)).contains("is not there");
        // Two rolls hold 8, and rolls without end hold anything.
        assertThat(impossible(List.of(A), List.of(roll("R", 2, 4, 2)), FREE, shown, tooShort)).contains("is not there");
        assertThat(impossible(List.of(A), List.of(roll("R", 2, 4, Stock.UNLIMITED)), FREE, shown, tooShort)).contains("is not there");
        // With a gap of 1: (4 + 1) x 2 = 10 needed, 9 + 1 = 10 there; a lead of 1 takes one of them.
        CuttingTerms gap = new CuttingTerms(0, 0, 1, RemnantRule.none(), LotRule.ANY);
        assertThat(impossible(List.of(A), List.of(roll("R", 2, 9, 1)), gap, shown, tooShort)).contains("is not there");
        CuttingTerms lead = new CuttingTerms(1, 0, 1, RemnantRule.none(), LotRule.ANY);
        assertThat(impossible(List.of(A), List.of(roll("R", 2, 9, 1)), lead, shown, tooShort)).isEqualTo("accepted");
        CuttingTerms tail = new CuttingTerms(0, 1, 1, RemnantRule.none(), LotRule.ANY);
        assertThat(impossible(List.of(A), List.of(roll("R", 2, 9, 1)), tail, shown, tooShort)).isEqualTo("accepted");
        // A roll shorter than its lead holds nothing, not less than nothing.
        CuttingTerms longLead = new CuttingTerms(9, 0, 0, RemnantRule.none(), LotRule.ANY);
        PriceList none = new PriceList(List.of(5L), List.of(List.of(0L), List.of(0L)));
        assertThat(impossible(
                List.of(A), List.of(roll("R", 2, 4, 1), roll("S", 2, 8, 1)), longLead,
                new Certificate(List.of(none), List.of(), List.of()), tooShort)).isEqualTo("accepted");
    }

    @Test
    void check_noArrangement_needsItsCertificate() {
        // 3 + 3 = 6 of two rolls of 5: enough together for three panels of 3 (9 of 10), but one on each.
        List<Cut> cuts = List.of(new Cut("A", 2, 3, 3, ""));
        List<Stock> stock = List.of(roll("R", 2, 5, 2));
        Shortage none = new Shortage(Shortage.Reason.NO_ARRANGEMENT, "", 9, 10);
        Certificate exhausted = new Certificate(List.of(), List.of(List.of(List.of(2))), List.of());
        assertThat(impossible(cuts, stock, FREE, exhausted, none)).isEqualTo("accepted");
        assertThat(impossible(cuts, stock, FREE, Certificate.empty(), none)).contains("is not there");
        Shortage undecided = new Shortage(Shortage.Reason.UNDECIDED, "", 9, 10);
        assertThat(impossible(cuts, stock, FREE, exhausted, undecided)).isEqualTo("the shortage " + undecided + " is not there");
    }

    @Test
    void check_searchWithoutPlan_isHeldToItsBound() {
        List<Stock> stock = List.of(roll("R", 2, 4, 2));
        Certificate shown = new Certificate(List.of(new PriceList(List.of(5L), List.of(List.of(5L)))), List.of(), List.of());
        RollPlan open = new RollPlan(List.of(A), stock, FREE, List.of(), 0, 20, Stop.NO_PLAN_FOUND, shown, List.of(), 0);
        assertThat(PlanChecker.check(open).reason()).isEqualTo("accepted");
        RollPlan bold = new RollPlan(List.of(A), stock, FREE, List.of(), 0, 21, Stop.NO_PLAN_FOUND, shown, List.of(), 0);
        assertThat(PlanChecker.check(bold).reason()).isEqualTo("roll counts [2] are not forbidden");
        RollPlan rolls = new RollPlan(
                List.of(A), stock, FREE, List.of(opened(stock.get(0), at(A, 0, 0))), 0, 0, Stop.NO_PLAN_FOUND, shown, List.of(), 0);
        assertThat(PlanChecker.check(rolls).reason()).isEqualTo("rolls without a plan");
    }

    @Test
    void check_planWithAWrongRoll_isRefusedForTheRoll() {
        Stock row = roll("R", 2, 4, 2);
        RollPlan half = new RollPlan(
                List.of(A), List.of(row), FREE, List.of(opened(row, at(A, 0, 0))), 10, 0, Stop.WORK_LIMIT, Certificate.empty(), List.of(), 0);
        assertThat(PlanChecker.check(half).reason()).isEqualTo("cut A is missing 1 times");
    }

    @Test
    void checkRolls_namesUsedTwice_areRefused() {
        Stock row = roll("R", 2, 4, 9);
        assertThat(PlanChecker.checkRolls(List.of(A, A), List.of(row), FREE, List.of()).reason()).isEqualTo("cut id A is used twice");
        assertThat(PlanChecker.checkRolls(List.of(A), List.of(row, row), FREE, List.of()).reason()).isEqualTo("stock id R is used twice");
    }

    private static String places(Cut cut, Stock row, CuttingTerms terms, PlacedCut... placed) {
        return PlanChecker.checkRolls(List.of(cut), List.of(row), terms, List.of(OpenedRoll.of(row, List.of(placed), terms))).reason();
    }

    @Test
    void checkRolls_placesOutsideTheRoll_areRefused() {
        Cut one = new Cut("A", 2, 4, 1, "");
        Stock row = roll("R", 5, 9, 1);
        assertThat(places(one, row, FREE, at(one, 5, 3))).isEqualTo("accepted");
        assertThat(places(one, row, FREE, at(one, 5, 4))).isEqualTo("cut A lies over the edge of roll R");
        assertThat(places(one, row, FREE, at(one, 0, -1))).isEqualTo("cut A lies before the start of roll R or over its edge");
        assertThat(places(one, row, FREE, new PlacedCut("A", 0, 0, 5, 2, false))).isEqualTo("cut A is 2 by 4 steps, the plan says 2 by 5");
        assertThat(places(one, row, FREE, new PlacedCut("A", 0, 0, 4, 3, false))).isEqualTo("cut A is 2 by 4 steps, the plan says 3 by 4");
        Cut turns = new Cut("A", 2, 4, 1, "", true);
        assertThat(places(turns, row, FREE, PlacedCut.of(turns, 7, 1, true))).isEqualTo("accepted");
        assertThat(places(turns, row, FREE, PlacedCut.of(turns, 7, 2, true))).isEqualTo("cut A lies over the edge of roll R");
        assertThat(places(turns, row, FREE, new PlacedCut("A", 0, 0, 4, 2, true))).isEqualTo("cut A is 4 by 2 steps, the plan says 2 by 4");
    }

    /** Rows of two, and below them one across: parts by a cross cut first, then by a slit; a pinwheel beside a fifth panel does not. */
    @Test
    void checkRolls_guillotineCuts_partStepByStep() {
        CuttingTerms straight = FREE.withCuts(CutKind.GUILLOTINE);
        Cut small = new Cut("S", 2, 2, 5, "");
        Stock row = roll("R", 4, 9, 1);
        assertThat(places(small, row, straight, at(small, 0, 0), at(small, 0, 2), at(small, 2, 0), at(small, 2, 2), at(small, 4, 1)))
                .isEqualTo("accepted");
        assertThat(places(small, row, straight.withCuts(CutKind.CROSS), at(small, 0, 0), at(small, 0, 2), at(small, 2, 0), at(small, 2, 2), at(small, 4, 1)))
                .isEqualTo("the pieces of roll R do not part by CROSS cuts");
        // 3 x 2 and 2 x 3 around a hole of 1 x 1, the fifth panel behind them, parted by a cross cut at 5.
        Stock wide = roll("R", 5, 9, 1);
        Cut turns = new Cut("U", 2, 3, 5, "", true);
        PlacedCut[] wheel = {
            at(turns, 0, 0), PlacedCut.of(turns, 0, 2, true), at(turns, 2, 3), PlacedCut.of(turns, 3, 0, true), at(turns, 5, 0)
        };
        assertThat(places(turns, wide, FREE, wheel)).isEqualTo("accepted");
        assertThat(places(turns, wide, straight, wheel)).isEqualTo("the pieces of roll R do not part by GUILLOTINE cuts");
    }
}
