package io.github.bedjoint.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import io.github.bedjoint.checker.PlanChecker;
import io.github.bedjoint.rolls.Cut;
import io.github.bedjoint.rolls.Limits;
import io.github.bedjoint.rolls.OpenedRoll;
import io.github.bedjoint.rolls.PlacedCut;
import io.github.bedjoint.rolls.RemnantRule;
import io.github.bedjoint.rolls.RollPlan;
import io.github.bedjoint.rolls.Shortage;
import io.github.bedjoint.rolls.Stock;
import io.github.bedjoint.rolls.Stop;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class RollPlannerTest {

    private static final RollPlanner PLANNER = RollPlanner.withDefaults();

    private static Cut cut(String id, long length, int quantity) {
        return new Cut(id, 1, length, quantity, "north");
    }

    private static Stock rolls(String id, long length, long cost) {
        return new Stock(id, 1, length, cost, Stock.UNLIMITED, "");
    }

    @Test
    void plan_twoRollLengths_takesTheLongRoll() {
        // Seven panels of 3 need 21: two rolls of 10 hold six, so three short rolls (30) or one of 25 (22).
        RollPlan plan = PLANNER.plan(List.of(cut("A", 3, 7)), List.of(rolls("short", 10, 10), rolls("long", 25, 22)));
        assertThat(plan.cost()).isEqualTo(22);
        assertThat(plan.lowerBound()).isEqualTo(22);
        assertThat(plan.stop()).isEqualTo(Stop.PROVEN);
        assertThat(plan.rolls())
                .containsExactly(new OpenedRoll(
                        "long",
                        IntStream.range(0, 7).mapToObj(k -> new PlacedCut("A", 3L * k, 0, 3, 1, false)).toList(),
                        21,
                        4,
                        0));
    }

    @Test
    void plan_leadTailAndGap_fitsOnePieceLess() {
        // Usable 20 - 1 - 1 = 18. Four pieces of 4 need 16 + 3 gaps = 19: too long. Three need 14.
        RollPlanner planner = PLANNER.withLead(1).withTail(1).withGap(1);
        RollPlan plan = planner.plan(List.of(cut("A", 4, 4)), List.of(rolls("roll", 20, 5)));
        assertThat(plan.cost()).isEqualTo(10);
        assertThat(plan.isProven()).isTrue();
        assertThat(planner.withGap(0).plan(List.of(cut("A", 4, 4)), List.of(rolls("roll", 20, 5))).cost())
                .isEqualTo(5);
    }

    @Test
    void plan_remnantOnShelf_isUsedUpToItsCount() {
        Stock shelf = new Stock("shelf", 1, 6, 1, 1, "");
        RollPlan plan = PLANNER.plan(List.of(cut("A", 6, 2)), List.of(shelf, rolls("new", 7, 10)));
        assertThat(plan.cost()).isEqualTo(11);
        assertThat(plan.isProven()).isTrue();
    }

    @Test
    void plan_remnantRule_prefersTheRollWhoseRemnantIsWorthMore() {
        // 10 of 20 left at half price: 12 - 50 % of 12 x 10/20 = 9, cheaper than 10 for the short roll with nothing left.
        RollPlanner planner = PLANNER.withRemnantRule(new RemnantRule(5, 5, 50));
        RollPlan plan = planner.plan(List.of(cut("A", 10, 1)), List.of(rolls("short", 10, 10), rolls("long", 20, 12)));
        assertThat(plan.cost()).isEqualTo(9);
        assertThat(plan.rolls().get(0).credit()).isEqualTo(3);
        assertThat(plan.isProven()).isTrue();
        assertThat(PLANNER.plan(plan.cuts(), plan.stock()).cost()).isEqualTo(10);
    }

    @Test
    void plan_pieceIds_areInCuttingOrderLongestFirst() {
        RollPlan plan = PLANNER.plan(
                List.of(cut("A", 2, 1), cut("B", 5, 1), cut("C", 2, 1)), List.of(rolls("roll", 9, 1)));
        assertThat(plan.rolls().get(0).pieces()).containsExactly("B", "A", "C");
    }

    @Test
    void plan_cutLongerThanAnyRoll_isNamed() {
        RollPlan plan = PLANNER.withLead(2).plan(List.of(cut("A", 9, 1), cut("B", 8, 1)), List.of(rolls("roll", 10, 1)));
        assertThat(plan.stop()).isEqualTo(Stop.INFEASIBLE);
        assertThat(plan.shortages())
                .containsExactly(new Shortage(Shortage.Reason.CUT_TOO_LONG, "A", 9, 8));
        assertThat(PlanChecker.check(plan).accepted()).isTrue();
    }

    @Test
    void plan_cutWiderThanAnyRoll_isNamed() {
        RollPlan plan = PLANNER.plan(List.of(new Cut("A", 3, 1, 1, "")), List.of(rolls("roll", 10, 1)));
        assertThat(plan.shortages()).containsExactly(new Shortage(Shortage.Reason.CUT_TOO_WIDE, "A", 3, 1));
    }

    @Test
    void plan_tooFewRolls_saysWhatStockLacks() {
        Stock two = new Stock("two", 1, 10, 1, 2, "");
        RollPlan plan = PLANNER.plan(List.of(cut("A", 7, 3)), List.of(two));
        assertThat(plan.shortages())
                .containsExactly(new Shortage(Shortage.Reason.STOCK_TOO_SHORT, "", 21, 20));
    }

    @Test
    void plan_lengthSufficesButNoArrangement_isProvenImpossible() {
        // 18 of 20 in total, but a roll holds one piece of 6 only.
        Stock two = new Stock("two", 1, 10, 1, 2, "");
        RollPlan plan = PLANNER.plan(List.of(cut("A", 6, 3)), List.of(two));
        assertThat(plan.stop()).isEqualTo(Stop.INFEASIBLE);
        assertThat(plan.shortages())
                .containsExactly(new Shortage(Shortage.Reason.NO_ARRANGEMENT, "", 18, 20));
        assertThat(PlanChecker.check(plan).accepted()).isTrue();
    }

    @Test
    void plan_noCuts_costsNothing() {
        RollPlan plan = PLANNER.plan(List.of(), List.of());
        assertThat(plan.cost()).isZero();
        assertThat(plan.isProven()).isTrue();
        assertThat(PlanChecker.check(plan).accepted()).isTrue();
    }

    @Test
    void plan_noStock_namesEveryCut() {
        RollPlan plan = PLANNER.plan(List.of(cut("A", 1, 1), cut("B", 1, 1)), List.of());
        assertThat(plan.shortages()).extracting(Shortage::cutId).containsExactly("A", "B");
    }

    @Test
    void plan_sameJobTwice_givesTheSamePlan() {
        Instances.Instance job = Instances.of("shop1d").get(4);
        assertThat(job.planner().plan(job.cuts(), job.stock()))
                .isEqualTo(job.planner().plan(job.cuts(), job.stock()));
    }

    @Test
    void plan_doubleId_isRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PLANNER.plan(List.of(cut("A", 1, 1), cut("A", 2, 1)), List.of()))
                .withMessageContaining("cut id is A, but must be used once only")
                .withMessageContaining("Maybe");
    }

    @Test
    void of_badNumbers_areRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> cut("A", 0, 1)).withMessageContaining("cut length is 0");
        assertThatIllegalArgumentException().isThrownBy(() -> cut("A", 1, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> cut(" ", 1, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> rolls("A", 1, -1));
        assertThatIllegalArgumentException().isThrownBy(() -> PLANNER.withLead(-1));
        assertThatIllegalArgumentException().isThrownBy(() -> new RemnantRule(1, 1, 101));
        assertThatIllegalArgumentException().isThrownBy(() -> PLANNER.withWorkLimit(0));
    }

    @Test
    void plan_remnantUnitTooFine_isRefused() {
        RollPlanner planner = PLANNER.withRemnantRule(new RemnantRule(1, 1, 50));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> planner.plan(List.of(cut("A", 1, 1)), List.of(rolls("roll", 201, 1))))
                .withMessageContaining("remnant units in roll roll");
    }

    @Test
    void plan_hundredThousandPanels_isProvenByLength() {
        // A roll of 100 holds 33 panels of 3: 100,000 / 33 = 3030.3, so 3031 rolls at 2.
        RollPlan plan = PLANNER.plan(List.of(cut("A", 3, 100_000)), List.of(rolls("roll", 100, 2)));
        assertThat(plan.cost()).isEqualTo(6_062);
        assertThat(plan.isProven()).isTrue();
        assertThat(PlanChecker.check(plan).accepted()).isTrue();
    }

    @Test
    void plan_thousandsOfMixedRolls_staysWithinItsWork() {
        List<Cut> cuts = List.of(cut("A", 37, 9_000), cut("B", 29, 8_000), cut("C", 13, 7_001));
        RollPlan plan = PLANNER.plan(cuts, List.of(rolls("short", 91, 50), rolls("long", 410, 213)));
        assertThat(PlanChecker.check(plan)).matches(PlanChecker.Verdict::accepted);
        // By length alone: (37 x 9000 + 29 x 8000 + 13 x 7001) x 213 / 410 = 340,809.6.
        assertThat(plan.cost()).isGreaterThanOrEqualTo(340_810);
        assertThat(plan.gap()).isLessThanOrEqualTo(213);
    }

    @Test
    void plan_largestNumbers_doNotOverflow() {
        Stock dear = new Stock("dear", 1, Limits.MAX_LENGTH, Limits.MAX_COST, Stock.UNLIMITED, "");
        Stock rare = new Stock("rare", 1, Limits.MAX_LENGTH, Limits.MAX_COST, 1_000_000, "");
        RollPlan plan = PLANNER.plan(
                List.of(new Cut("A", 1, Limits.MAX_LENGTH, 1_000, ""), new Cut("B", 1, 1, 1, "")),
                List.of(dear, rare));
        assertThat(plan.cost()).isEqualTo(1_001 * Limits.MAX_COST);
        assertThat(plan.isProven()).isTrue();
        assertThat(PlanChecker.check(plan)).matches(PlanChecker.Verdict::accepted);
    }
}
