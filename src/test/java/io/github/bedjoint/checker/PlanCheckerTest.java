package io.github.bedjoint.checker;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.bedjoint.rolls.Certificate;
import io.github.bedjoint.rolls.Cut;
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
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The checker accepts right plans and names what is wrong with others; every plan here is made by hand. */
class PlanCheckerTest {

    private static final List<Cut> CUTS = List.of(new Cut("A", 2, 4, 2, "north"), new Cut("B", 1, 3, 1, "south"));
    private static final List<Stock> STOCK =
            List.of(new Stock("new", 2, 12, 30, Stock.UNLIMITED, "x"), new Stock("rest", 2, 4, 5, 1, "y"));
    private static final CuttingTerms TERMS = new CuttingTerms(1, 0, 1, RemnantRule.none(), LotRule.ANY);
    // Usable 12 - 1 = 11: A A leaves 11 - 9 = 2; B on its own in the rest of 4 - 1 = 3 leaves nothing.
    private static final OpenedRoll TWO_A = roll("new", List.of("A", "A"), 9, 2, 0);
    private static final OpenedRoll ONE_B = roll("rest", List.of("B"), 3, 0, 0);

    /** Pieces one behind the other with the gap of 1; what is not a cut is taken for an A. */
    private static OpenedRoll roll(String stock, List<String> pieces, long used, long remnant, long credit) {
        List<PlacedCut> placed = new ArrayList<>();
        long along = 0;
        for (String id : pieces) {
            long length = id.equals("B") ? 3 : 4;
            placed.add(new PlacedCut(id, along, 0, length, id.equals("B") ? 1 : 2, false));
            along += length + 1;
        }
        return new OpenedRoll(stock, placed, used, remnant, credit);
    }

    private static String refused(List<OpenedRoll> rolls) {
        PlanChecker.Verdict verdict = PlanChecker.checkRolls(CUTS, STOCK, TERMS, rolls);
        assertThat(verdict.accepted()).isFalse();
        return verdict.reason();
    }

    private static RollPlan plan(long cost, long bound, Stop stop, Certificate certificate) {
        return new RollPlan(CUTS, STOCK, TERMS, List.of(TWO_A, ONE_B), cost, bound, stop, certificate, List.of(), 0);
    }

    /** A at 14, B at 5 (see the lines of the test that uses it). */
    private static Certificate prices(long a, long b, long heldNew, long heldRest) {
        return new Certificate(
                List.of(new PriceList(List.of(a, b), List.of(List.of(heldNew), List.of(heldRest)))),
                List.of(),
                List.of());
    }

    @Test
    void checkRolls_planByHand_isAccepted() {
        assertThat(PlanChecker.checkRolls(CUTS, STOCK, TERMS, List.of(TWO_A, ONE_B)).accepted())
                .isTrue();
    }

    @Test
    void checkRolls_missingPiece_isRefused() {
        assertThat(refused(List.of(TWO_A))).isEqualTo("cut B is missing 1 times");
    }

    @Test
    void checkRolls_pieceTooOften_isRefused() {
        assertThat(refused(List.of(TWO_A, ONE_B, roll("new", List.of("B"), 3, 8, 0))))
                .isEqualTo("cut B more than 1 times");
    }

    @Test
    void checkRolls_unknownNames_areRefused() {
        assertThat(refused(List.of(roll("old", List.of("A"), 4, 7, 0)))).isEqualTo("no stock row old");
        assertThat(refused(List.of(roll("new", List.of("C"), 4, 7, 0)))).isEqualTo("no cut C");
    }

    @Test
    void checkRolls_tooLong_isRefused() {
        assertThat(refused(List.of(roll("new", List.of("A", "A", "B"), 13, -2, 0))))
                .isEqualTo("roll new has 11 usable steps, the pieces need 13");
    }

    @Test
    void checkRolls_moreRollsThanAtHand_isRefused() {
        List<Cut> twoB = List.of(new Cut("B", 1, 3, 2, ""));
        assertThat(PlanChecker.checkRolls(twoB, STOCK, TERMS, List.of(ONE_B, ONE_B)).reason())
                .isEqualTo("more than 1 rolls of rest opened");
    }

    @Test
    void checkRolls_tooWide_isRefused() {
        List<Stock> narrow = List.of(new Stock("new", 1, 12, 30, -1, "x"), STOCK.get(1));
        assertThat(PlanChecker.checkRolls(CUTS, narrow, TERMS, List.of(TWO_A)).reason())
                .isEqualTo("cut A is wider than roll new");
    }

    @Test
    void checkRolls_wrongLengthOrCredit_isRefused() {
        assertThat(refused(List.of(roll("new", List.of("A", "A"), 9, 3, 0))))
                .isEqualTo("roll new uses 9 steps and leaves 2, the plan says 9 and 3");
        assertThat(refused(List.of(roll("new", List.of("A", "A"), 9, 2, 1))))
                .contains("is worth 0 minor units, the plan says 1");
    }

    @Test
    void checkRolls_emptyRoll_isRefused() {
        assertThat(refused(List.of(roll("new", List.of(), 0, 11, 0)))).contains("opened for nothing");
    }

    @Test
    void checkRolls_wallFromTwoLots_isRefusedUnderTheLotRule() {
        List<Cut> oneWall = List.of(new Cut("A", 2, 4, 2, "w"), new Cut("B", 1, 3, 1, "w"));
        CuttingTerms strict = new CuttingTerms(1, 0, 1, RemnantRule.none(), LotRule.ONE_LOT_PER_WALL);
        assertThat(PlanChecker.checkRolls(oneWall, STOCK, strict, List.of(TWO_A, ONE_B)).reason())
                .isEqualTo("wall w is cut from more than one lot");
        assertThat(PlanChecker.checkRolls(CUTS, STOCK, strict, List.of(TWO_A, ONE_B)).accepted())
                .isTrue();
    }

    @Test
    void check_certificateByHand_isAcceptedAndProves() {
        // A at 15, B at 5. A new roll (room 11 + 1) holds A A (10) = 30 or A B (9) or B B B, one B only at hand: 30 at
        // most. The rest (room 3 + 1) holds B = 5. All panels: 35. One new roll alone holds 30, so 30 is not enough, and
        // the rest alone holds 5: the cheapest counts that hold 35 are one of each, 35.
        RollPlan plan = plan(35, 35, Stop.PROVEN, prices(15, 5, 30, 5));
        assertThat(PlanChecker.check(plan)).isEqualTo(PlanChecker.Verdict.yes());
    }

    @Test
    void check_rollHoldsMoreThanStated_isRefused() {
        assertThat(PlanChecker.check(plan(35, 35, Stop.PROVEN, prices(15, 5, 29, 5))).reason())
                .isEqualTo("a roll of stock row 0 may hold panels priced above 29");
    }

    @Test
    void check_pricesTooLow_doNotProve() {
        // At 14 and 5 a new roll holds 28 and all panels are 33, so one of each is needed: still proven.
        assertThat(PlanChecker.check(plan(35, 35, Stop.PROVEN, prices(14, 5, 28, 5))).accepted()).isTrue();
        // At 14 and 0 one new roll holds everything.
        assertThat(PlanChecker.check(plan(35, 35, Stop.PROVEN, prices(14, 0, 28, 0))).reason())
                .contains("are not forbidden");
    }

    @Test
    void check_exhaustedCounts_areTriedAgain() {
        // One new roll without the rest: 9 + 1 + 3 = 13 > 11, impossible. Nothing but the rest: impossible.
        Certificate exhausted = new Certificate(
                List.of(), List.of(List.of(List.of(1), List.of(0)), List.of(List.of(0), List.of(1))), List.of());
        assertThat(PlanChecker.check(plan(35, 35, Stop.PROVEN, exhausted)).accepted()).isTrue();
        Certificate wrong =
                new Certificate(List.of(), List.of(List.of(List.of(1), List.of(1))), List.of());
        assertThat(PlanChecker.check(plan(35, 35, Stop.PROVEN, wrong)).reason()).contains("not seen to be impossible");
    }

    @Test
    void check_boundAboveCostOrGapCalledProven_isRefused() {
        Certificate good = prices(15, 5, 30, 5);
        assertThat(PlanChecker.check(plan(34, 34, Stop.PROVEN, good)).reason())
                .isEqualTo("the rolls cost 35 minor units, the plan says 34");
        assertThat(PlanChecker.check(plan(35, 36, Stop.WORK_LIMIT, good)).reason()).contains("above the cost");
        assertThat(PlanChecker.check(plan(35, 34, Stop.PROVEN, good)).reason()).contains("with a gap of 1");
        assertThat(PlanChecker.check(plan(35, 34, Stop.WORK_LIMIT, good)).accepted()).isTrue();
        assertThat(PlanChecker.check(plan(35, 1, Stop.WORK_LIMIT, Certificate.empty())).accepted())
                .isFalse();
    }

    @Test
    void check_impossibleWithoutReason_isRefused() {
        RollPlan claim = new RollPlan(
                CUTS, STOCK, TERMS, List.of(), 0, 0, Stop.INFEASIBLE, Certificate.empty(), List.of(), 0);
        assertThat(PlanChecker.check(claim).accepted()).isFalse();
        Shortage wrong = new Shortage(Shortage.Reason.CUT_TOO_LONG, "A", 4, 3);
        RollPlan other = new RollPlan(
                CUTS, STOCK, TERMS, List.of(), 0, 0, Stop.INFEASIBLE, Certificate.empty(), List.of(wrong), 0);
        assertThat(PlanChecker.check(other).reason()).contains("is not there");
    }
}
