package io.github.bedjoint.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.bedjoint.checker.PlanChecker;
import io.github.bedjoint.rolls.AcrossScale;
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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Panels side by side: plans and refusals worked by hand, and invented jobs with a known least cost. */
class SideBySideTest {

    private static final RollPlanner PLANNER = RollPlanner.withDefaults();

    private static Stock roll(long width, long length, long cost) {
        return new Stock("roll", width, length, cost, Stock.UNLIMITED, "");
    }

    private static String refused(List<Cut> cuts, Stock row, CuttingTerms terms, PlacedCut... placed) {
        return PlanChecker.checkRolls(cuts, List.of(row), terms, List.of(OpenedRoll.of(row, List.of(placed), terms))).reason();
    }

    private static PlacedCut at(Cut cut, long along, long across) {
        return PlacedCut.of(cut, along, across, false);
    }

    /** Areas: 36 + 28 + 20 + 36 = 120 = 12 x 10, so one roll is the least; one across the lengths are 3 + 4 + 4 + 3 + 3 = 17: two rolls. */
    @Test
    void plan_panelsThatFillARoll_needsOneRoll() {
        List<Cut> cuts = List.of(
                new Cut("A", 12, 3, 1, ""), new Cut("B", 7, 4, 1, ""), new Cut("C", 5, 4, 1, ""), new Cut("D", 6, 3, 2, ""));
        RollPlan plan = PLANNER.plan(cuts, List.of(roll(12, 10, 100)));
        assertThat(plan.isProven()).isTrue();
        assertThat(plan.cost()).isEqualTo(100);
        assertThat(plan.rolls().get(0).cuts()).isEqualTo(CutKind.GUILLOTINE);
        assertThat(plan.rolls().get(0).usedSteps()).isEqualTo(10);
        assertThat(PlanChecker.check(plan)).matches(PlanChecker.Verdict::accepted);
        RollPlan line = PLANNER.withCuts(CutKind.CROSS).plan(cuts, List.of(roll(12, 10, 100)));
        assertThat(line.cost()).isEqualTo(200);
        assertThat(line.rolls()).allMatch(r -> r.cuts() == CutKind.CROSS);
    }

    /** Two of 2 x 3 on 3 x 4: turned they fill it, 3 across and 2 + 2 along; upright each needs a roll of its own. */
    @Test
    void plan_panelsThatMayBeTurned_areTurnedWhereThatSaves() {
        List<Stock> stock = List.of(roll(3, 4, 100));
        RollPlan turned = PLANNER.plan(List.of(new Cut("P", 2, 3, 2, "", true)), stock);
        assertThat(turned.cost()).isEqualTo(100);
        assertThat(turned.isProven()).isTrue();
        assertThat(turned.rolls().get(0).placed()).allMatch(PlacedCut::turned);
        RollPlan upright = PLANNER.plan(List.of(new Cut("P", 2, 3, 2, "")), stock);
        assertThat(upright.cost()).isEqualTo(200);
        assertThat(upright.isProven()).isTrue();
        assertThat(upright.rolls()).allMatch(r -> r.placed().stream().noneMatch(PlacedCut::turned));
    }

    /** Two of width 5 need 5 + 1 + 5 = 11 across with the gap: beside each other on 11, not on 10. */
    @Test
    void plan_gap_isKeptAcrossToo() {
        List<Cut> cuts = List.of(new Cut("A", 5, 8, 2, ""));
        assertThat(PLANNER.withGap(1).plan(cuts, List.of(roll(11, 8, 10))).cost()).isEqualTo(10);
        assertThat(PLANNER.withGap(1).plan(cuts, List.of(roll(10, 8, 10))).cost()).isEqualTo(20);
    }

    /** Too wide upright (9 on 8), but 4 x 9 turned fits. */
    @Test
    void plan_cutThatFitsOnlyTurned_isTurnedOrNamed() {
        RollPlan turned = PLANNER.plan(List.of(new Cut("A", 9, 4, 1, "", true)), List.of(roll(8, 20, 10)));
        assertThat(turned.rolls().get(0).placed()).containsExactly(new PlacedCut("A", 0, 0, 9, 4, true));
        RollPlan none = PLANNER.plan(List.of(new Cut("A", 9, 4, 1, "")), List.of(roll(8, 20, 10)));
        assertThat(none.shortages()).containsExactly(new Shortage(Shortage.Reason.CUT_TOO_WIDE, "A", 9, 8));
        assertThat(PlanChecker.check(none)).matches(PlanChecker.Verdict::accepted);
    }

    /** One roll of 4 x 4 = 16 for five pieces of 2 x 2 = 20: impossible, shown by areas. */
    @Test
    void plan_moreAreaThanStock_isShownToBeImpossible() {
        RollPlan plan = PLANNER.plan(List.of(new Cut("A", 2, 2, 5, "")), List.of(new Stock("roll", 4, 4, 10, 1, "")));
        assertThat(plan.stop()).isEqualTo(Stop.INFEASIBLE);
        assertThat(PlanChecker.check(plan)).matches(PlanChecker.Verdict::accepted);
    }

    /**
     * One of 8 x 10 goes on the wide roll (10 x 20 at 20) only, and leaves half of it: for two of 4 x 10 side by side, or one where nothing lies beside another. On
     * a narrow roll (5 x 20 at 9) go two behind each other. Side by side 20 + 9; one across 20 + 9 + 9. Straight cuts part the cheapest plan too.
     */
    @ParameterizedTest
    @CsvSource({"FREE, 29, 29", "GUILLOTINE, 29, 29", "CROSS, 38, 38"})
    void plan_rollsOfTwoWidths_fillTheWideOneFirst(CutKind kind, long least, long most) {
        RollPlan plan = PLANNER.withCuts(kind).plan(
                List.of(new Cut("wide", 8, 10, 1, ""), new Cut("narrow", 4, 10, 4, "")),
                List.of(new Stock("W", 10, 20, 20, Stock.UNLIMITED, ""), new Stock("N", 5, 20, 9, Stock.UNLIMITED, "")));
        assertThat(plan.cost()).isBetween(least, most);
        assertThat(plan.lowerBound()).isLessThanOrEqualTo(least);
        assertThat(plan.isProven()).isEqualTo(plan.cost() == least);
        assertThat(PlanChecker.check(plan)).matches(PlanChecker.Verdict::accepted);
    }

    /** 3001 panels of 5 x 1, two beside each other on 10 and 100 such pairs on a roll: 3001 / 200 = 15.005, so 16 rolls. */
    @Test
    void plan_moreThanThreeThousandPanels_areGatheredInShelves() {
        RollPlan plan = PLANNER.plan(List.of(new Cut("A", 5, 1, 3001, "")), List.of(roll(10, 100, 7)));
        assertThat(plan.cost()).isEqualTo(16 * 7);
        assertThat(plan.isProven()).isTrue();
        assertThat(PlanChecker.check(plan)).matches(PlanChecker.Verdict::accepted);
    }

    /** However soon the work ends, the plan is right and its bound does not cross the known least cost. */
    @Test
    void plan_anyWorkLimit_keepsWithinItsBounds() {
        Instances.Instance job = shopJobs().get(0);
        for (long limit = 1; limit <= 1_000_000; limit *= 10) {
            RollPlan plan = job.planner().withWorkLimit(limit).plan(job.cuts(), job.stock());
            assertThat(PlanChecker.check(plan)).matches(PlanChecker.Verdict::accepted);
            assertThat(plan.lowerBound()).isLessThanOrEqualTo(job.best());
            assertThat(plan.isFeasible() && plan.cost() < job.best()).isFalse();
        }
    }

    @Test
    void checkRolls_placesByHand_areRefusedWithTheReason() {
        Cut a = new Cut("A", 4, 3, 1, "");
        Cut b = new Cut("B", 4, 3, 1, "");
        List<Cut> cuts = List.of(a, b);
        Stock row = roll(8, 6, 10);
        CuttingTerms free = CuttingTerms.plain();
        assertThat(refused(cuts, row, free, at(a, 0, 0), at(b, 0, 4))).isEqualTo("accepted");
        assertThat(refused(cuts, row, free, at(a, 0, 0), at(b, 2, 3))).contains("cuts A and B overlap on roll roll");
        assertThat(refused(cuts, row, free, at(a, 0, 0), at(b, 0, 5))).isEqualTo("cut B lies over the edge of roll roll");
        assertThat(refused(cuts, row, free, at(a, 0, 0), at(b, 4, 4))).contains("6 usable steps, the pieces need 7");
        assertThat(refused(cuts, row, free, at(a, -1, 0), at(b, 0, 4))).contains("before the start");
        assertThat(refused(cuts, row, free, at(a, 0, 0), PlacedCut.of(b, 0, 4, true))).contains("turned, which it does not allow");
        assertThat(refused(cuts, row, free, at(a, 0, 0), new PlacedCut("B", 0, 4, 3, 3, false))).contains("is 4 by 3 steps");
        assertThat(refused(cuts, row, free.withCuts(CutKind.CROSS), at(a, 0, 0), at(b, 0, 4))).contains("do not part by CROSS cuts");
        CuttingTerms gap = new CuttingTerms(0, 0, 1, RemnantRule.none(), LotRule.ANY);
        assertThat(refused(cuts, row, gap, at(a, 0, 0), at(b, 0, 4))).contains("less than the gap");
    }

    /** The pinwheel by hand parts by no straight cut: refused where only these are allowed. */
    @Test
    void checkRolls_pinwheel_isRefusedUnderGuillotineCuts() {
        Cut up = new Cut("U", 2, 3, 2, "");
        Cut flat = new Cut("F", 3, 2, 2, "");
        PlacedCut[] wheel = {at(up, 0, 0), at(flat, 0, 2), at(up, 2, 3), at(flat, 3, 0)};
        Stock row = roll(5, 5, 10);
        assertThat(refused(List.of(up, flat), row, CuttingTerms.plain(), wheel)).isEqualTo("accepted");
        assertThat(OpenedRoll.of(row, List.of(wheel), CuttingTerms.plain()).cuts()).isEqualTo(CutKind.FREE);
        assertThat(refused(List.of(up, flat), row, CuttingTerms.plain().withCuts(CutKind.GUILLOTINE), wheel)).contains("GUILLOTINE");
    }

    /** What panels count across is checked: two of width 4 beside each other on 8 count 2, not 1. */
    @Test
    void check_scaleThatCountsTooLittle_isRefused() {
        List<Cut> cuts = List.of(new Cut("A", 4, 3, 2, ""));
        PriceList wrong = new PriceList(List.of(5L), List.of(List.of(5L)), new AcrossScale(List.of(4L), List.of(1L), List.of(1L)));
        Certificate certificate = new Certificate(List.of(wrong), List.of(), List.of());
        assertThat(PlanChecker.checkBound(cuts, List.of(roll(8, 3, 10)), CuttingTerms.plain(), 20, certificate).reason())
                .contains("may count more than 1");
    }

    static List<Instances.Instance> shopJobs() {
        return Instances.of("shop2d");
    }

    @ParameterizedTest
    @MethodSource("shopJobs")
    void plan_inventedShopJobs_encloseTheKnownCost(Instances.Instance job) {
        RollPlan plan = job.planner().withWorkLimit(5_000_000).plan(job.cuts(), job.stock());
        assertThat(PlanChecker.check(plan)).matches(PlanChecker.Verdict::accepted);
        assertThat(plan.lowerBound()).isLessThanOrEqualTo(job.best());
        assertThat(plan.cost()).isGreaterThanOrEqualTo(job.best());
        assertThat(plan).isEqualTo(job.planner().withWorkLimit(5_000_000).plan(job.cuts(), job.stock()));
    }

    static List<Instances.Instance> strips() {
        return Instances.of("strip2d").stream().filter(job -> !job.family().equals("zdf")).toList();
    }

    /** Never shorter than what is known to be least, and close to it on strips without waste. */
    @ParameterizedTest
    @MethodSource("strips")
    void plan_publishedStrips_areNeverShorterThanTheBound(Instances.Instance job) {
        Stock open = new Stock("roll", job.stock().get(0).widthSteps(), Instances.OPEN, 1, 1, "");
        RollPlan plan = job.planner().withWorkLimit(5_000_000).plan(job.cuts(), List.of(open));
        assertThat(PlanChecker.check(plan)).matches(PlanChecker.Verdict::accepted);
        assertThat(plan.rolls().get(0).usedSteps()).isGreaterThanOrEqualTo(job.least());
        assertThat(job.best() == Instances.UNKNOWN || plan.rolls().get(0).usedSteps() <= job.best() * 1.12).isTrue();
    }
}
