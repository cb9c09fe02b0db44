package io.github.bedjoint.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.bedjoint.checker.PlanChecker;
import io.github.bedjoint.rolls.Certificate;
import io.github.bedjoint.rolls.Cut;
import io.github.bedjoint.rolls.LotBound;
import io.github.bedjoint.rolls.LotRule;
import io.github.bedjoint.rolls.OpenedRoll;
import io.github.bedjoint.rolls.PlacedCut;
import io.github.bedjoint.rolls.RollPlan;
import io.github.bedjoint.rolls.Shortage;
import io.github.bedjoint.rolls.Stock;
import io.github.bedjoint.rolls.Stop;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Walls kept to one lot, worked by hand. */
class LotRuleTest {

    private static final RollPlanner STRICT = RollPlanner.withDefaults().withLotRule(LotRule.ONE_LOT_PER_WALL);

    private static Cut cut(String id, long length, int quantity, String wall) {
        return new Cut(id, 1, length, quantity, wall);
    }

    private static Stock rolls(String id, long length, long cost, int available, String lot) {
        return new Stock(id, 1, length, cost, available, lot);
    }

    @Test
    void plan_remnantOfAnotherLot_servesOneWallOnly() {
        // North needs 5 + 5 = 10, south 5. Any lot: 5 from the remnant (3) and 10 from one new roll (10) is 13.
        // One lot a wall: the remnant of 5 can only take the south: 3 + 10 = 13 as well.
        List<Cut> cuts = List.of(cut("N", 5, 2, "north"), cut("S", 5, 1, "south"));
        List<Stock> stock = List.of(rolls("new", 10, 10, Stock.UNLIMITED, "new"), rolls("rest", 5, 3, 1, "old"));
        RollPlan plan = STRICT.plan(cuts, stock);
        assertThat(plan.cost()).isEqualTo(13);
        assertThat(plan.isProven()).isTrue();
        assertThat(plan.rolls()).contains(new OpenedRoll("rest", List.of(new PlacedCut("S", 0, 0, 5, 1, false)), 5, 0, 0));
        assertThat(PlanChecker.check(plan)).matches(PlanChecker.Verdict::accepted);
    }

    @Test
    void plan_wallTooLongForTheRemnantsLot_paysForTheRule() {
        // One wall of three panels of 5. Any lot: remnant 3 + one new roll 10 = 13. One lot: two new rolls, 20.
        List<Cut> cuts = List.of(cut("N", 5, 3, "north"));
        List<Stock> stock = List.of(rolls("new", 10, 10, Stock.UNLIMITED, "new"), rolls("rest", 5, 3, 1, "old"));
        assertThat(RollPlanner.withDefaults().plan(cuts, stock).cost()).isEqualTo(13);
        RollPlan strict = STRICT.plan(cuts, stock);
        assertThat(strict.cost()).isEqualTo(20);
        assertThat(strict.isProven()).isTrue();
        assertThat(PlanChecker.check(strict)).matches(PlanChecker.Verdict::accepted);
    }

    @Test
    void plan_noLotHoldsTheWall_isProvenImpossible() {
        // 15 needed, 10 in each lot: enough together, but not within one lot.
        List<Cut> cuts = List.of(cut("N", 5, 3, "north"));
        List<Stock> stock = List.of(rolls("a", 10, 1, 1, "a"), rolls("b", 10, 1, 1, "b"));
        RollPlan plan = STRICT.plan(cuts, stock);
        assertThat(plan.stop()).isEqualTo(Stop.INFEASIBLE);
        assertThat(plan.shortages()).extracting(Shortage::reason).containsExactly(Shortage.Reason.NO_ARRANGEMENT);
        assertThat(PlanChecker.check(plan)).matches(PlanChecker.Verdict::accepted);
    }

    @Test
    void plan_sameNumbersOtherWallNames_costsTheSame() {
        for (Instances.Instance job : Instances.of("shoplot").subList(0, 4)) {
            List<Cut> renamed = job.cuts().stream()
                    .map(c -> new Cut(c.id(), c.widthSteps(), c.lengthSteps(), c.quantity(), "x" + c.group().hashCode()))
                    .toList();
            assertThat(STRICT.plan(renamed, job.stock()).cost()).isEqualTo(job.best());
        }
    }

    @Test
    void check_boundOfALotRaised_isRefused() {
        List<Cut> cuts = List.of(cut("N", 5, 3, "north"));
        List<Stock> stock = List.of(rolls("new", 10, 10, Stock.UNLIMITED, "new"), rolls("rest", 5, 3, 1, "old"));
        RollPlan plan = STRICT.plan(cuts, stock);
        assertThat(plan.certificate().lotBounds()).isNotEmpty();
        List<LotBound> raised = plan.certificate().lotBounds().stream()
                .map(b -> new LotBound(b.lot(), b.walls(), LotBound.IMPOSSIBLE, b.certificate()))
                .toList();
        Certificate wrong = new Certificate(List.of(), List.of(), raised);
        assertThat(PlanChecker.checkBound(cuts, stock, plan.terms(), 21, wrong).reason()).startsWith("lot ");
        assertThat(PlanChecker.checkBound(cuts, stock, plan.terms(), 21, plan.certificate()).reason())
                .startsWith("some way to give the walls to the lots");
    }
}
