package io.github.bedjoint.rolls;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.bedjoint.units.RefusedException;
import java.util.ArrayList;
import java.util.List;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Credits, scales, opened rolls and the limits of their numbers, worked by hand. */
class RollPartsTest {
    private static final long MOST = 800_000_000;
    private static final Stock ROW = new Stock("R", 10, 100, 1_000, 2, "");

    /** A roll of 100 for 1000, remnants of 20 and more in units of 7 at half their price: 10 x 7 x whole units x 1/2. */
    @ParameterizedTest
    @CsvSource({"19, 0", "20, 70", "21, 105", "27, 105", "28, 140", "100, 490"})
    void credit_unitsFromTheLeastUp_areRoundedDown(long left, long credit) {
        assertThat(new RemnantRule(20, 7, 50).credit(ROW, left)).isEqualTo(credit);
        assertThat(new RemnantRule(20, 7, 0).credit(ROW, left)).isZero();
        assertThat(RemnantRule.none().credit(ROW, left)).isZero();
    }

    /** One step of a roll of 100 for 299 at 100 percent is 2.99. */
    @Test
    void credit_partOfAMinorUnit_isLeftOut() {
        assertThat(new RemnantRule(1, 1, 100).credit(new Stock("R", 1, 100, 299, 1, ""), 1)).isEqualTo(2);
    }

    /** Nothing below 3, 1 from 3 on, 4 from 5 on. */
    @ParameterizedTest
    @CsvSource({"1, 0", "2, 0", "3, 1", "4, 1", "5, 4", "6, 4"})
    void count_betweenWidths_isThatOfTheNarrower(long across, long count) {
        assertThat(new AcrossScale(List.of(3L, 5L), List.of(1L, 4L), List.of(4L)).count(across)).isEqualTo(count);
    }

    @Test
    void isInLine_oneAcrossOrNoScale() {
        assertThat(AcrossScale.oneAcross(2)).isEqualTo(new AcrossScale(List.of(1L), List.of(1L), List.of(1L, 1L)));
        assertThat(AcrossScale.oneAcross(2).isInLine()).isTrue();
        assertThat(new AcrossScale(List.of(), List.of(), List.of(0L)).isInLine()).isTrue();
        assertThat(new AcrossScale(List.of(2L), List.of(1L), List.of(1L)).isInLine()).isFalse();
    }

    /** Lead 3, tail 4, gap 2; pieces of 20 and 30: 0 to 20 and 22 to 52, of 93 usable 41 are left, worth 10 x 41 x 1/10. */
    @Test
    void inLine_leadTailAndGap_workedByHand() {
        CuttingTerms terms = new CuttingTerms(3, 4, 2, new RemnantRule(1, 1, 10), LotRule.ANY);
        OpenedRoll roll = OpenedRoll.inLine(ROW, List.of(new Cut("A", 4, 20, 1, ""), new Cut("B", 5, 30, 1, "")), terms);
        assertThat(terms.usableSteps(ROW)).isEqualTo(93);
        assertThat(roll.placed()).containsExactly(new PlacedCut("A", 0, 0, 20, 4, false), new PlacedCut("B", 22, 0, 30, 5, false));
        assertThat(roll.usedSteps()).isEqualTo(52);
        assertThat(roll.remnantSteps()).isEqualTo(41);
        assertThat(roll.credit()).isEqualTo(41);
        assertThat(roll.coveredSteps()).isEqualTo(50);
        assertThat(roll.pieces()).containsExactly("A", "B");
        assertThat(OpenedRoll.of(ROW, List.of(), terms).usedSteps()).isZero();
    }

    /** A of 6 x 4 beside a shorter B, then C from 10 on; D touches it. A turned piece of 2 x 7 reaches 7 across and 2 along. */
    @Test
    void sections_partWhereACrossCutMeetsNoPiece() {
        PlacedCut a = new PlacedCut("A", 0, 0, 6, 4, false);
        PlacedCut b = new PlacedCut("B", 1, 4, 3, 4, false);
        PlacedCut c = new PlacedCut("C", 10, 0, 5, 4, false);
        PlacedCut d = PlacedCut.of(new Cut("D", 2, 7, 1, "", true), 15, 0, true);
        assertThat(d).isEqualTo(new PlacedCut("D", 15, 0, 2, 7, true));
        OpenedRoll roll = OpenedRoll.of(ROW, List.of(d, c, b, a), CuttingTerms.plain());
        assertThat(roll.sections()).containsExactly(List.of(a, b), List.of(c), List.of(d));
        assertThat(roll.coveredSteps()).isEqualTo(6 + 5 + 2);
        assertThat(roll.usedSteps()).isEqualTo(17);
        assertThat(roll.cuts()).isEqualTo(CutKind.GUILLOTINE);
        OpenedRoll lone = OpenedRoll.of(ROW, List.of(c), CuttingTerms.plain());
        assertThat(lone.coveredSteps()).isEqualTo(5);
        assertThat(lone.cuts()).isEqualTo(CutKind.CROSS);
    }

    @Test
    void placed_sameStart_isOrderedAcrossThenByName() {
        PlacedCut low = new PlacedCut("Z", 0, 0, 1, 1, false);
        PlacedCut high = new PlacedCut("A", 0, 2, 1, 1, false);
        PlacedCut same = new PlacedCut("B", 0, 2, 1, 1, false);
        assertThat(new OpenedRoll("R", List.of(same, high, low), 1, 0, 0).placed()).containsExactly(low, high, same);
    }

    @Test
    void row_ofARollThatIsNotInStock_isRefused() {
        RollPlan plan = new RollPlan(List.of(), List.of(ROW), CuttingTerms.plain(), List.of(), 0, 0, Stop.PROVEN, Certificate.empty(), List.of(), 0);
        assertThat(plan.row(OpenedRoll.of(ROW, List.of(), CuttingTerms.plain()))).isSameAs(ROW);
        assertThatIllegalArgumentException().isThrownBy(() -> plan.row(new OpenedRoll("old", List.of(), 0, 0, 0)))
                .withMessage("the plan opens a roll 'old' that is not in its stock");
    }

    @Test
    void isFeasible_onlyWithRolls() {
        for (Stop stop : Stop.values()) {
            RollPlan plan = new RollPlan(List.of(), List.of(), CuttingTerms.plain(), List.of(), 0, 0, stop, Certificate.empty(), List.of(), 0);
            assertThat(plan.isFeasible()).isEqualTo(stop == Stop.PROVEN || stop == Stop.WORK_LIMIT);
            assertThat(plan.isProven()).isEqualTo(stop == Stop.PROVEN);
        }
    }

    @Test
    void of_listsChangedAfterwards_areCopied() {
        List<Integer> counts = new ArrayList<>(List.of(2, 1));
        List<Long> held = new ArrayList<>(List.of(7L));
        Certificate certificate = new Certificate(List.of(new PriceList(List.of(5L), List.of(held))), List.of(List.of(counts)), List.of());
        counts.set(0, 9);
        held.set(0, 9L);
        assertThat(certificate.exhausted()).containsExactly(List.of(List.of(2, 1)));
        assertThat(certificate.priceLists().get(0).held()).containsExactly(List.of(7L));
    }

    private static void refused(ThrowingCallable made, String start) {
        assertThatThrownBy(made).isInstanceOf(RefusedException.class).hasMessageStartingWith(start);
    }

    @Test
    void of_numbersOutOfRange_areRefused() {
        refused(() -> new Cut(" ", 1, 1, 1, ""), "cut id");
        refused(() -> new Cut("A", 0, 1, 1, ""), "cut width");
        refused(() -> new Cut("A", MOST + 1, 1, 1, ""), "cut width");
        refused(() -> new Cut("A", 1, 0, 1, ""), "cut length");
        refused(() -> new Cut("A", 1, 1, 0, ""), "cut quantity");
        refused(() -> new Cut("A", 1, 1, 1_000_001, ""), "cut quantity");
        refused(() -> new Stock("", 1, 1, 0, 0, ""), "stock id");
        refused(() -> new Stock("S", 0, 1, 0, 0, ""), "stock width");
        refused(() -> new Stock("S", 1, 0, 0, 0, ""), "stock length");
        refused(() -> new Stock("S", 1, 1, -1, 0, ""), "stock cost");
        refused(() -> new Stock("S", 1, 1, 1_000_000_000_001L, 0, ""), "stock cost");
        refused(() -> new Stock("S", 1, 1, 0, -2, ""), "stock available");
        refused(() -> new RemnantRule(0, 1, 0), "least remnant");
        refused(() -> new RemnantRule(1, 0, 0), "remnant unit");
        refused(() -> new RemnantRule(1, 1, 101), "remnant share");
        refused(() -> new CuttingTerms(-1, 0, 0, RemnantRule.none(), LotRule.ANY), "lead");
        refused(() -> new CuttingTerms(0, MOST + 1, 0, RemnantRule.none(), LotRule.ANY), "tail");
        refused(() -> new CuttingTerms(0, 0, -1, RemnantRule.none(), LotRule.ANY), "gap");
    }

    @Test
    void of_numbersAtTheirLimits_areTaken() {
        assertThatCode(() -> {
            new Cut("A", MOST, MOST, 1_000_000, "");
            new Stock("S", MOST, MOST, 1_000_000_000_000L, 1_000_000, "");
            new Stock("S", 1, 1, 0, Stock.UNLIMITED, "");
            new RemnantRule(MOST, MOST, 100);
            new CuttingTerms(MOST, MOST, MOST, RemnantRule.none(), LotRule.ANY);
        }).doesNotThrowAnyException();
    }
}
