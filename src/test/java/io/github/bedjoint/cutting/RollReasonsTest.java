package io.github.bedjoint.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.bedjoint.checker.PlanChecker;
import io.github.bedjoint.rolls.AcrossScale;
import io.github.bedjoint.rolls.Certificate;
import io.github.bedjoint.rolls.Cut;
import io.github.bedjoint.rolls.CutKind;
import io.github.bedjoint.rolls.CuttingTerms;
import io.github.bedjoint.rolls.LotBound;
import io.github.bedjoint.rolls.LotRule;
import io.github.bedjoint.rolls.PriceList;
import io.github.bedjoint.rolls.RemnantRule;
import io.github.bedjoint.rolls.RollPlan;
import io.github.bedjoint.rolls.Shortage;
import io.github.bedjoint.rolls.Stock;
import io.github.bedjoint.rolls.Stop;
import io.github.bedjoint.units.UnitStyle;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Each kind of certificate in words, with the numbers worked by hand. Lengths are in millimetres, 80 steps each. */
class RollReasonsTest {
    private static final long MM = 80;
    private static final String PROVEN = ", and this one costs just that.";

    private static Cut cut(String id, long length, int quantity) {
        return new Cut(id, 1000 * MM, length * MM, quantity, "north");
    }

    private static Stock roll(String id, long length, long cost, int available) {
        return new Stock(id, 1000 * MM, length * MM, cost, available, "");
    }

    private static List<String> lines(RollPlan plan) {
        assertThat(PlanChecker.check(plan)).matches(PlanChecker.Verdict::accepted);
        return RollReasons.of(plan, UnitStyle.METRIC, minor -> "EUR " + BigDecimal.valueOf(minor, 2)).lines();
    }

    private static RollPlan plan(List<Cut> cuts, Stock... stock) {
        return RollPlanner.withDefaults().withCuts(CutKind.CROSS).plan(cuts, List.of(stock));
    }

    /** Two drops of 3.125 m go on 9.144 m, and 0.1 m is lost: seven drops need four rolls, and the rest (5 m) takes one of them for less. */
    @Test
    void lines_panelsPricedAlike_countThem() {
        List<Cut> cuts = List.of(cut("drop", 3125, 7), cut("over the door", 1125, 2));
        RollPlan plan = RollPlanner.withDefaults().withLead(100 * MM).withGap(5 * MM).plan(cuts,
                List.of(roll("10 yd", 9144, 24_000, -1), roll("50 yd", 45_720, 112_000, -1), roll("rest", 5000, 6_000, 1)));
        assertThat(lines(plan)).containsExactly(
                "Counting drop alone gives 7. One 10 yd takes at most 2, one 50 yd takes all and one rest (1 at hand) takes at most 1."
                        + " The cheapest rolls with room for all of it are 3 x 10 yd and 1 x rest for EUR 780.00.",
                "No plan costs less than EUR 780.00" + PROVEN);
    }

    /**
     * 300 and 1000 on 1000: 300 + 1000 = 1300, a roll takes at most 1000, so two. With a gap of 5 on 1005, each panel is measured with one gap,
     * 305 + 1005 = 1310, and a roll has room for 1005 + 5, of which sums of 305 and 1005 use 1005.
     */
    @Test
    void lines_pricesByLength_measureThem() {
        assertThat(lines(plan(List.of(cut("a", 200, 1), cut("b", 1000, 1)), roll("S", 1000, 800, -1)))).containsExactly(
                "By length, all panels need 1200.0 mm. One S takes at most 1000.0 mm. The cheapest rolls with room for all of it are 2 x S for EUR 16.00.",
                "No plan costs less than EUR 16.00" + PROVEN);
        RollPlan gaps = RollPlanner.withDefaults().withCuts(CutKind.CROSS).withGap(5 * MM).plan(
                List.of(cut("a", 200, 1), cut("b", 1020, 1)), List.of(roll("S", 1020, 800, -1)));
        assertThat(lines(gaps).get(0)).startsWith("By length, all panels, each with a gap, need 1230.0 mm. One S takes at most 1025.0 mm.");
    }

    /** 36 + 28 + 20 + 36 = 120 units of 100 mm x 100 mm = 1.2 m2, and 12 x 10 of them are on a roll. */
    @Test
    void lines_pricesByArea_measureIt() {
        long unit = 100 * MM;
        List<Cut> cuts = List.of(new Cut("A", 12 * unit, 3 * unit, 1, ""), new Cut("B", 7 * unit, 4 * unit, 1, ""), new Cut("C", 5 * unit, 4 * unit, 1, ""),
                new Cut("D", 6 * unit, 3 * unit, 2, ""));
        RollPlan plan = RollPlanner.withDefaults().plan(cuts, List.of(new Stock("roll", 12 * unit, 10 * unit, 100, -1, "")));
        assertThat(lines(plan)).containsExactly(
                "By area, all panels need 1.2 m², side by side or not. One roll takes all. The cheapest rolls with room for all of it are 1 x roll for EUR 1.00.",
                "No plan costs less than EUR 1.00" + PROVEN);
        assertThat(RollReasons.of(plan, UnitStyle.IMPERIAL, Long::toString).lines().get(0)).startsWith("By area, all panels need 12.9167 ft²");
    }

    /** At 10 and 5 a roll of 1200 takes 10: one of 800 alone, or two of 600. Worth 2 x 10 + 3 x 5 = 35, so four rolls at 10. */
    @Test
    void lines_pricesThatRollsNeverExceed_areMoney() {
        assertThat(lines(plan(List.of(cut("long", 800, 2), cut("short", 600, 3)), roll("S", 1200, 10, -1)))).containsExactly(
                "Priced at EUR 0.10 for long, EUR 0.05 for short, the panels are worth EUR 0.35. One S takes at most EUR 0.10."
                        + " The cheapest rolls with room for all of it are 4 x S for EUR 0.40.",
                "No plan costs less than EUR 0.40" + PROVEN);
    }

    /** Points 5 and 2 on 1000: 700 (5) or 500 + 500 (4). In all 2 x 5 + 3 x 2 = 16, so four rolls. Counted rolls bound no money. */
    @Test
    void lines_pricesOfCountedRolls_arePoints() {
        assertThat(lines(plan(List.of(cut("long", 700, 2), cut("short", 500, 3)), roll("S", 1000, 5, 4)))).containsExactly(
                "At points of 5 for long, 2 for short, the panels come to 16. One S (4 at hand) takes at most 5."
                        + " The cheapest rolls with room for all of it are 4 x S for EUR 0.20.",
                "No plan costs less than EUR 0.20" + PROVEN);
    }

    /**
     * 3 x 500 + 800 = 2300. By length three rolls of 900 (taking 800 at most) would do, 9. But one takes one panel, so four of them or 1 of 1200,
     * with two panels, and 2 of 900: 5 + 6 = 11.
     */
    @Test
    void lines_severalLists_eachSayWhatTheyAdd() {
        assertThat(lines(plan(List.of(cut("a", 500, 3), cut("b", 800, 1)), roll("long", 1200, 5, 2), roll("short", 900, 3, -1)))).containsExactly(
                "By length, all panels need 2300.0 mm. One long (2 at hand) takes at most 1000.0 mm and one short takes at most 800.0 mm."
                        + " The cheapest rolls with room for all of it are 3 x short for EUR 0.09.",
                "Counting all panels gives 4. One long (2 at hand) takes at most 2 and one short takes at most 1."
                        + " With that too, the cheapest rolls with room for all of it are 1 x long and 2 x short for EUR 0.11.",
                "No plan costs less than EUR 0.11" + PROVEN);
    }

    /** A of 4 twice and B of 3 with a gap of 1 are 13 on a roll with 11: one roll does not hold them, as trying shows; nor the rest of 3. */
    @Test
    void lines_countsTriedToTheEnd_areNamed() {
        List<Cut> cuts = List.of(new Cut("A", 2, 4, 2, ""), new Cut("B", 1, 3, 1, ""));
        List<Stock> stock = List.of(new Stock("new", 2, 12, 30, -1, ""), new Stock("rest", 2, 4, 5, 1, ""));
        CuttingTerms terms = new CuttingTerms(1, 0, 1, RemnantRule.none(), LotRule.ANY, CutKind.CROSS);
        Certificate tried = new Certificate(
                List.of(), List.of(List.of(List.of(1), List.of(0)), List.of(List.of(0), List.of(1))), List.of());
        RollPlan found = RollPlanner.withDefaults().withTerms(terms).plan(cuts, stock);
        RollPlan plan = new RollPlan(cuts, stock, terms, found.rolls(), 35, 35, Stop.PROVEN, tried, List.of(), 1);
        assertThat(lines(plan)).containsExactly(
                "Every arrangement was tried on 1 x new; on 1 x rest: the panels do not go on these, nor on fewer."
                        + " Of the others, the cheapest rolls with room enough are 1 x new and 1 x rest for EUR 0.35.",
                "No plan costs less than EUR 0.35" + PROVEN);
        RollPlan many = new RollPlan(cuts, stock, terms, found.rolls(), 35, 35, Stop.PROVEN,
                new Certificate(List.of(), Collections.nCopies(5, tried.exhausted().get(0)), List.of()), List.of(), 1);
        assertThat(RollReasons.of(many).lines().get(0)).contains("on 1 x new; on 1 x new; on 1 x new; and on 2 more choices: ");
    }

    /** Five times the same list says no more than once. */
    @Test
    void lines_manyLists_areToldByThreeAndCounted() {
        RollPlan one = plan(List.of(cut("long", 700, 2)), roll("S", 1000, 5, -1));
        Certificate five = new Certificate(Collections.nCopies(5, one.certificate().priceLists().get(0)), List.of(), List.of());
        RollPlan plan = new RollPlan(one.cuts(), one.stock(), one.terms(), one.rolls(), 10, 10, Stop.PROVEN, five, List.of(), 1);
        assertThat(lines(plan)).hasSize(5).element(3).isEqualTo("2 more price lists like these; by all of them the cheapest rolls with room enough are 2 x S for EUR 0.10.");
    }

    /** Twelve panels of twelve lengths: names and prices are cut short. */
    @Test
    void lines_manyPanels_areCutShort() {
        List<Cut> cuts = new ArrayList<>();
        IntStream.range(0, 12).forEach(i -> cuts.add(cut("p" + i, 400 + 13 * i, 1 + i % 3)));
        List<Long> prices = IntStream.range(0, 12).mapToObj(i -> 5L + 2 * i * i).toList();
        Stock[] stock = IntStream.range(0, 6).mapToObj(i -> roll("S" + i, 9000 + i, 50 + i, -1)).toArray(Stock[]::new);
        RollPlan found = plan(cuts, stock);
        long all = IntStream.range(0, 12).mapToLong(i -> prices.get(i) * cuts.get(i).quantity()).sum();
        Certificate certificate = new Certificate(List.of(new PriceList(prices, Collections.nCopies(6, List.of(all)))), List.of(), List.of());
        RollPlan plan = new RollPlan(cuts, List.of(stock), found.terms(), found.rolls(), found.cost(), 50, Stop.WORK_LIMIT, certificate, List.of(), 7);
        // 5 + 2 x 121 = 247, 5 + 2 x 100 = 205, 5 + 2 x 81 = 167, 5 + 2 x 64 = 133
        assertThat(lines(plan).get(0))
                .startsWith("At points of 247 for p11, 205 for p10, 167 for p9, 133 for p8, less for 8 more, the panels come to " + all + ".")
                .contains("One S0 takes all, one S1 takes all, one S2 takes all and 3 more.");
    }

    /** Two wider than half of 1000 are never side by side: 2 x 300 on rolls of 500 that take one each. By area one roll would do. */
    @Test
    void lines_widePanels_neverSideBySide() {
        List<Cut> cuts = List.of(new Cut("wide", 520 * MM, 300 * MM, 2, ""), new Cut("narrow", 200 * MM, 100 * MM, 2, ""));
        RollPlan plan = RollPlanner.withDefaults().plan(cuts, List.of(roll("S", 500, 100, -1)));
        assertThat(lines(plan)).anyMatch(line -> line.startsWith(
                "Counting wide alone gives 2; of panels that reach 520.0 mm across or more, no two lie side by side. One S takes at most 1."
                        + " The cheapest rolls with room for all of it are 2 x S for EUR 2.00."));
    }

    /**
     * Across 1000, panels from 600 count 2 and from 300 count 1, together 3 at most. On 500 that is 3 x 500 = 1500, of which A takes 2 x 400 and B 1 x 300: with
     * points of 2 and 1 the most is A B B, 1400 for 4. All are 2 x 2 + 3 x 1 = 7, so two rolls at least. (B B do not go beside A, so the plan has three.)
     */
    @Test
    void lines_scaleAcross_saysWhatPanelsCount() {
        List<Cut> cuts = List.of(new Cut("A", 600 * MM, 400 * MM, 2, ""), new Cut("B", 300 * MM, 300 * MM, 3, ""));
        Stock stock = roll("S", 500, 100, -1);
        RollPlan found = RollPlanner.withDefaults().plan(cuts, List.of(stock));
        AcrossScale scale = new AcrossScale(List.of(300 * MM, 600 * MM), List.of(1L, 2L), List.of(3L));
        Certificate certificate = new Certificate(List.of(new PriceList(List.of(2L, 1L), List.of(List.of(4L)), scale)), List.of(), List.of());
        RollPlan plan = new RollPlan(cuts, List.of(stock), found.terms(), found.rolls(), 300, 200, Stop.WORK_LIMIT, certificate, List.of(), 1);
        assertThat(lines(plan)).containsExactly(
                "At points of 2 for A, 1 for B, the panels come to 7; across a roll a panel counts 2 from 600.0 mm on, 1 from 300.0 mm on, and panels side by"
                        + " side count at most 3. One S takes at most 4. The cheapest rolls with room for all of it are 2 x S for EUR 2.00.",
                "No plan costs less than EUR 2.00, this one costs EUR 3.00: at most EUR 1.00 may still be saved; the search ended after 1 counted step,"
                        + " and none tries every way to lay panels side by side.");
    }

    /** Half of what a metre cost comes back: of 24000 for 9.144 m, 2 m are worth 2 x 24000 / 9.144 / 2 = 2624. */
    @Test
    void lines_remnantsCredited_nameWhatIsLeft() {
        RollPlan plan = RollPlanner.withDefaults().withRemnantRule(new RemnantRule(1000 * MM, 1000 * MM, 50)).plan(
                List.of(cut("drop", 3125, 2)), List.of(roll("10 yd", 9144, 24_000, -1)));
        assertThat(plan.cost()).isEqualTo(24_000 - 2624);
        assertThat(lines(plan)).anyMatch(line -> line.contains("less where a remnant earns a credit. The cheapest rolls with room for all of it are"
                + " 1 x 10 yd with at least 2000.0 mm left for EUR 213.76."));
    }

    /** One wall of three panels of 5: any lot would cost 13, one lot two new rolls. The old lot has one roll of 5 and cannot hold it. */
    @Test
    void lines_lots_nameBoundsOfWallsInLots() {
        List<Cut> cuts = List.of(cut("N", 500, 3));
        List<Stock> stock = List.of(new Stock("new", 1000 * MM, 1000 * MM, 10, -1, "A"), new Stock("rest", 1000 * MM, 500 * MM, 3, 1, "B"));
        RollPlan plan = RollPlanner.withDefaults().withLotRule(LotRule.ONE_LOT_PER_WALL).plan(cuts, stock);
        assertThat(lines(plan)).hasSize(4).contains(
                "All panels of a wall come from one lot. However the walls are given to the lots, bounds like these add up to the least cost:",
                "Wall north from lot A: at least EUR 0.20. Counting all panels gives 3. One new takes at most 2."
                        + " The cheapest rolls with room for all of it are 2 x new for EUR 0.20.",
                "Wall north from lot B: cannot be cut. Counting all panels gives 3. One rest (1 at hand) takes at most 1."
                        + " The rolls at hand do not give that, even all of them.");
    }

    /** Walls and lots without names, a lot without rolls, and more bounds than are told; by hand, and not checked. */
    @Test
    void lines_manyLotBounds_areToldByThreeAndCounted() {
        List<Cut> cuts = List.of(new Cut("a", MM, 400 * MM, 1, ""), new Cut("b", MM, 400 * MM, 1, "south"));
        List<Stock> stock = List.of(new Stock("S", MM, 500 * MM, 10, -1, ""));
        Certificate one = new Certificate(List.of(new PriceList(List.of(1L), List.of(List.of(1L)))), List.of(), List.of());
        Certificate two = new Certificate(List.of(new PriceList(List.of(1L, 1L), List.of(List.of(1L)))), List.of(), List.of());
        LotBound gone = new LotBound("old", List.of("south"), LotBound.IMPOSSIBLE, Certificate.empty());
        Certificate lots = new Certificate(
                List.of(), List.of(), List.of(new LotBound("", List.of(""), 10, one), gone, new LotBound("", List.of("", "south"), 20, two), gone, gone));
        RollPlan plan = new RollPlan(cuts, stock, CuttingTerms.plain().withLots(LotRule.ONE_LOT_PER_WALL), List.of(), 20, 20, Stop.PROVEN, lots, List.of(), 1);
        assertThat(RollReasons.of(plan).lines().subList(1, 5)).containsExactly(
                "Wall without a name from lot without a name: at least 10. Counting all panels gives 1. One S takes all."
                        + " The cheapest rolls with room for all of it are 1 x S for 10.",
                "Wall south from lot old: cannot be cut. It has no rolls.",
                "Walls without a name and south from lot without a name: at least 20. Counting all panels gives 2. One S takes at most 1."
                        + " The cheapest rolls with room for all of it are 2 x S for 20.",
                "2 more bounds of this kind.");
    }

    /** Two new rolls at 10 hold any two panels of 5 more than the four of both walls need, whatever the lots: the bound without lots stands. */
    @Test
    void lines_lotsThatChangeNothing_sayThatItHoldsWithoutThem() {
        RollPlan plan = RollPlanner.withDefaults().withLotRule(LotRule.ONE_LOT_PER_WALL).plan(
                List.of(cut("N", 500, 4)), List.of(new Stock("new", 1000 * MM, 1000 * MM, 10, -1, "A")));
        assertThat(lines(plan)).hasSize(3).first().isEqualTo("All panels of a wall come from one lot; but already if any roll might serve any wall, this holds:");
    }

    @Test
    void lines_noPlan_nameTheShortage() {
        assertThat(lines(plan(List.of(cut("a", 900, 1)), roll("S", 800, 5, -1))))
                .containsExactly("Panel a is 900.0 mm long, and the longest roll wide enough for it gives 800.0 mm.");
        assertThat(lines(plan(List.of(new Cut("a", 1200 * MM, 300 * MM, 1, "")), roll("S", 800, 5, -1))))
                .containsExactly("Panel a is 1200.0 mm wide, and the widest roll gives 1000.0 mm.");
        assertThat(lines(plan(List.of(cut("a", 600, 3)), roll("S", 800, 5, 2))))
                .containsExactly("All panels with their gaps need 1800.0 mm of roll, and all rolls together give 1600.0 mm.");
        // 1800 of 2000 are there, but a roll of 1000 holds one of 600.
        assertThat(lines(plan(List.of(cut("a", 600, 3)), roll("S", 1000, 5, 2)))).containsExactly("No choice of the rolls at hand holds the panels.",
                "Counting all panels gives 3. One S (2 at hand) takes at most 1. The rolls at hand do not give that, even all of them.");
    }

    @Test
    void lines_nothingToCutOrNothingToPay_saySo() {
        assertThat(lines(plan(List.of(), roll("S", 800, 5, -1)))).containsExactly("Nothing is to be cut, so no roll is opened.");
        assertThat(lines(plan(List.of(cut("a", 700, 1)), roll("rest", 800, 0, 1)))).containsExactly("No cost is below nothing" + PROVEN);
    }

    /** A plan of 10 above a bound of 5, by hand: the search says what is open. */
    @Test
    void lines_notProven_sayBoundGapAndWhatEndedTheSearch() {
        RollPlan one = plan(List.of(cut("long", 700, 2)), roll("S", 1000, 5, -1));
        Certificate weak = new Certificate(List.of(new PriceList(List.of(1L), List.of(List.of(2L)))), List.of(), List.of());
        RollPlan plan = new RollPlan(one.cuts(), one.stock(), one.terms(), one.rolls(), 10, 5, Stop.WORK_LIMIT, weak, List.of(), 1234);
        assertThat(lines(plan)).containsExactly(
                "Counting all panels gives 2. One S takes all. The cheapest rolls with room for all of it are 1 x S for EUR 0.05.",
                "No plan costs less than EUR 0.05, this one costs EUR 0.10: at most EUR 0.05 may still be saved; the search ended after 1234 counted steps.");
        RollPlan none = new RollPlan(one.cuts(), one.stock(), one.terms(), List.of(), 0, 5, Stop.NO_PLAN_FOUND, weak,
                List.of(new Shortage(Shortage.Reason.UNDECIDED, "", 1400 * MM, 2000 * MM)), 1234);
        assertThat(lines(none).get(1))
                .isEqualTo("No plan was found and none was shown to be impossible; the search ended after 1234 counted steps. No plan costs less than EUR 0.05.");
    }

    /** What the certificate shows beyond the bound of a search that was cut short is not said as if the plan claimed it. */
    @Test
    void lines_boundBelowWhatTheListsForbid_keepToTheBound() {
        RollPlan one = plan(List.of(cut("long", 700, 3)), roll("S", 1000, 5, -1));
        RollPlan plan = new RollPlan(one.cuts(), one.stock(), one.terms(), one.rolls(), 15, 12, Stop.WORK_LIMIT, one.certificate(), List.of(), 1);
        assertThat(lines(plan).get(0)).endsWith("The cheapest rolls with room for all of it cost more than EUR 0.11.");
    }

    @Test
    void toString_isTheLines_inMinorUnits() {
        RollPlan plan = plan(List.of(cut("a", 700, 1)), roll("S", 800, 5, -1));
        assertThat(RollReasons.of(plan)).hasToString(
                "Counting all panels gives 1. One S takes all. The cheapest rolls with room for all of it are 1 x S for 5.\nNo plan costs less than 5" + PROVEN);
    }
}
