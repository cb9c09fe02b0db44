package io.github.bedjoint.checker;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.bedjoint.rolls.AcrossScale;
import io.github.bedjoint.rolls.Certificate;
import io.github.bedjoint.rolls.Cut;
import io.github.bedjoint.rolls.CutKind;
import io.github.bedjoint.rolls.CuttingTerms;
import io.github.bedjoint.rolls.LotBound;
import io.github.bedjoint.rolls.LotRule;
import io.github.bedjoint.rolls.PriceList;
import io.github.bedjoint.rolls.RemnantRule;
import io.github.bedjoint.rolls.Stock;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Certificates forged by hand: each is refused for the reason it was made wrong. */
class ForgedCertificateTest {

    private static final CuttingTerms FREE = CuttingTerms.plain();
    private static final CuttingTerms CROSS = FREE.withCuts(CutKind.CROSS);
    private static final Cut A = new Cut("A", 2, 4, 2, "");

    private static Stock roll(String id, long width, long length, long cost, int available) {
        return new Stock(id, width, length, cost, available, "");
    }

    /** One roll of 2 x 4 at 10: two panels of 2 x 4 need two of them, which cost 20. */
    private static final List<Stock> STOCK = List.of(roll("R", 2, 4, 10, Stock.UNLIMITED));

    private static String verdict(List<Cut> cuts, List<Stock> stock, CuttingTerms terms, long bound, Certificate certificate) {
        return BoundCheck.check(cuts, stock, terms, bound, certificate).reason();
    }

    private static String verdict(PriceList list) {
        return verdict(List.of(A), STOCK, FREE, 20, new Certificate(List.of(list), List.of(), List.of()));
    }

    private static Certificate exhausted(List<List<Integer>> counts) {
        return new Certificate(List.of(), List.of(counts), List.of());
    }

    private static PriceList scaled(List<Long> from, List<Long> counts, List<Long> most) {
        return new PriceList(List.of(5L), List.of(List.of(5L)), new AcrossScale(from, counts, most));
    }

    /** Each panel at 5 and one on a roll: 10 in all need two rolls, so that nothing below 20 will do. */
    @Test
    void check_rightPrices_areAccepted() {
        assertThat(verdict(new PriceList(List.of(5L), List.of(List.of(5L))))).isEqualTo("accepted");
    }

    @Test
    void check_boundThatSaysNothing_needsNoCertificate() {
        assertThat(verdict(List.of(A), STOCK, FREE, 0, Certificate.empty())).isEqualTo("accepted");
        assertThat(verdict(List.of(A), STOCK, FREE, 1, Certificate.empty())).isEqualTo("roll counts [0] are not forbidden");
    }

    @Test
    void check_pricesOfOtherCuts_areRefused() {
        assertThat(verdict(new PriceList(List.of(5L, 5L), List.of(List.of(5L))))).isEqualTo("a price list has 2 prices for 1 cuts");
        assertThat(verdict(new PriceList(List.of(), List.of(List.of(5L))))).isEqualTo("a price list has 0 prices for 1 cuts");
    }

    @Test
    void check_pricesOutOfRange_areRefused() {
        assertThat(verdict(new PriceList(List.of(-1L), List.of(List.of(5L))))).isEqualTo("price -1 of cut A is out of range");
        // Two panels: 2^55 / 2 each is the most that the sums of 64 bits are kept for.
        long most = 1L << 54;
        assertThat(verdict(new PriceList(List.of(most), List.of(List.of(most))))).isEqualTo("accepted");
        assertThat(verdict(new PriceList(List.of(most + 1), List.of(List.of(most))))).isEqualTo("price " + (most + 1) + " of cut A is out of range");
        assertThat(verdict(new PriceList(List.of(5L), List.of(List.of(most + 1))))).endsWith("may hold panels priced above " + (most + 1));
        assertThat(verdict(new PriceList(List.of(0L), List.of(List.of(-1L))))).endsWith("may hold panels priced above -1");
    }

    @Test
    void check_pricesForFewerRollsOrRemnants_areRefused() {
        String tooShort = "a price list does not reach every stock row and remnant";
        assertThat(verdict(new PriceList(List.of(5L), List.of(), AcrossScale.oneAcross(1)))).isEqualTo(tooShort);
        assertThat(verdict(new PriceList(List.of(5L), List.of(List.of())))).isEqualTo(tooShort);
    }

    @Test
    void check_countsForFewerRollsOrRemnants_areRefused() {
        assertThat(verdict(List.of(A), STOCK, FREE, 20, exhausted(List.of()))).isEqualTo("counts [] do not reach every stock row and remnant");
        assertThat(verdict(List.of(A), STOCK, FREE, 20, exhausted(List.of(List.of()))))
                .isEqualTo("counts [[]] do not reach every stock row and remnant");
    }

    @Test
    void check_scaleOutOfForm_isRefused() {
        String reason = "what panels count across the roll is not well formed";
        assertThat(verdict(scaled(List.of(1L), List.of(1L), List.of(1L)))).isEqualTo("accepted");
        assertThat(verdict(scaled(List.of(1L), List.of(), List.of(1L)))).isEqualTo(reason);
        assertThat(verdict(scaled(List.of(1L), List.of(1L), List.of()))).isEqualTo(reason);
        assertThat(verdict(scaled(List.of(1L), List.of(1L), List.of(1L, 1L)))).isEqualTo(reason);
        assertThat(verdict(scaled(List.of(1L), List.of(-1L), List.of(1L)))).isEqualTo(reason);
        assertThat(verdict(scaled(List.of(1L), List.of(1L), List.of(-1L)))).isEqualTo(reason);
        assertThat(verdict(scaled(List.of(1L, 1L), List.of(1L, 1L), List.of(1L)))).isEqualTo(reason);
        assertThat(verdict(scaled(List.of(2L, 1L), List.of(1L, 1L), List.of(1L)))).isEqualTo(reason);
        // Counts end at 2^31, so that counts times lengths keep within 64 bits.
        long top = 1L << 31;
        assertThat(verdict(scaled(List.of(1L), List.of(top), List.of(top)))).isEqualTo("accepted");
        assertThat(verdict(scaled(List.of(1L), List.of(top + 1), List.of(top + 1)))).isEqualTo(reason);
        assertThat(verdict(scaled(List.of(1L), List.of(1L), List.of(top + 1)))).isEqualTo(reason);
    }

    /** With cross cuts one panel lies across, so that the scale may say 1 where two of 4 lie beside each other on 8. */
    @Test
    void check_scaleUnderCrossCuts_countsOnePanelAcross() {
        List<Cut> cuts = List.of(new Cut("A", 4, 3, 2, ""));
        List<Stock> stock = List.of(roll("R", 8, 3, 10, Stock.UNLIMITED));
        Certificate one = new Certificate(
                List.of(new PriceList(List.of(5L), List.of(List.of(5L)), new AcrossScale(List.of(4L), List.of(1L), List.of(1L)))),
                List.of(), List.of());
        assertThat(verdict(cuts, stock, CROSS, 20, one)).isEqualTo("accepted");
        assertThat(verdict(cuts, stock, FREE, 20, one)).isEqualTo("panels side by side on stock row 0 may count more than 1");
        Certificate none = new Certificate(
                List.of(new PriceList(List.of(5L), List.of(List.of(5L)), new AcrossScale(List.of(4L), List.of(2L), List.of(1L)))),
                List.of(), List.of());
        assertThat(verdict(cuts, stock, CROSS, 20, none)).isEqualTo("panels side by side on stock row 0 may count more than 1");
    }

    /** A row without a roll decides nothing: what it is said to hold is not looked at. */
    @Test
    void check_rowWithoutRolls_isNotAsked() {
        List<Stock> stock = List.of(STOCK.get(0), roll("none", 9, 99, 1, 0));
        PriceList list = new PriceList(List.of(5L), List.of(List.of(5L), List.of(0L)));
        assertThat(verdict(List.of(A), stock, FREE, 20, new Certificate(List.of(list), List.of(), List.of()))).isEqualTo("accepted");
        // Nor can anything lie side by side on it.
        assertThat(verdict(List.of(A), stock, FREE, 20, exhausted(List.of(List.of(1), List.of(0))))).isEqualTo("accepted");
    }

    private static String oneRoll(Cut cut, Stock row, CuttingTerms terms) {
        return verdict(List.of(cut), List.of(row), terms, 11, exhausted(List.of(List.of(1))));
    }

    /**
     * That one roll does not do is shown for panels one behind the other. Where two may lie side by side, or one turned, the claim is
     * refused even if it is true.
     */
    @Test
    void check_exhaustedCountsWherePanelsLieSideBySide_areRefused() {
        // 4 + 4 = 8 > 4 along, and 2 + 2 = 4 > 3 across.
        assertThat(oneRoll(A, roll("R", 3, 4, 10, -1), FREE)).isEqualTo("accepted");
        assertThat(oneRoll(A, roll("R", 4, 4, 10, -1), FREE)).isEqualTo("counts [[1]] were not seen to be impossible");
        assertThat(oneRoll(A, roll("R", 4, 4, 10, -1), CROSS)).isEqualTo("accepted");
        // A gap of 1 keeps them apart on 4, not on 5.
        CuttingTerms gap = new CuttingTerms(0, 0, 1, RemnantRule.none(), LotRule.ANY);
        assertThat(oneRoll(A, roll("R", 4, 4, 10, -1), gap)).isEqualTo("accepted");
        assertThat(oneRoll(A, roll("R", 5, 4, 10, -1), gap)).isEqualTo("counts [[1]] were not seen to be impossible");
    }

    @Test
    void check_exhaustedCountsWhereOnePanelTurns_areRefused() {
        Cut turns = new Cut("A", 3, 4, 2, "", true);
        // Turned, 4 across and 3 along: fits on 4 x 4, not on 3 wide, and not where only 2 along can be used.
        assertThat(oneRoll(turns, roll("R", 4, 4, 10, -1), FREE)).contains("not seen to be impossible");
        assertThat(oneRoll(turns, roll("R", 3, 4, 10, -1), FREE)).isEqualTo("accepted");
        CuttingTerms lead = new CuttingTerms(2, 0, 0, RemnantRule.none(), LotRule.ANY);
        assertThat(oneRoll(turns, roll("R", 4, 4, 10, -1), lead)).isEqualTo("accepted");
        // A square has one way to lie.
        assertThat(oneRoll(new Cut("A", 3, 3, 2, "", true), roll("R", 4, 4, 10, -1), FREE)).isEqualTo("accepted");
    }

    @Test
    void check_moreExhaustedRollsThanCanBeTried_areRefused() {
        // 601 panels on 601 rolls of one each fit, on 600 they do not; above 600 rolls nothing is tried.
        List<Cut> cuts = List.of(new Cut("A", 2, 4, 601, ""));
        assertThat(verdict(cuts, STOCK, FREE, 6010, exhausted(List.of(List.of(600))))).isEqualTo("accepted");
        assertThat(verdict(List.of(new Cut("A", 2, 4, 602, "")), STOCK, FREE, 6020, exhausted(List.of(List.of(601)))))
                .contains("were not seen to be impossible");
    }

    /** With walls kept to lots the price lists alone may show the bound, as if lots did not matter; without them each way to share is tried. */
    @Test
    void check_lots_manyWallsAndLots_areNotTriedForever() {
        CuttingTerms lots = FREE.withLots(LotRule.ONE_LOT_PER_WALL);
        List<Cut> cuts = new ArrayList<>();
        List<Stock> stock = new ArrayList<>();
        List<LotBound> bounds = new ArrayList<>();
        for (int k = 0; k < 9; k++) {
            cuts.add(new Cut("C" + k, 2, 4, 1, "wall " + k));
            stock.add(new Stock("R" + k, 2, 4, 10, 1, "lot " + k));
        }
        // All walls need 90, shown where each wall's 10 is known in each lot: 9^9 ways, more than are tried.
        PriceList one = new PriceList(List.of(5L), List.of(List.of(5L)));
        for (Stock row : stock) {
            for (Cut cut : cuts) {
                bounds.add(new LotBound(row.lot(), List.of(cut.group()), 10, new Certificate(List.of(one), List.of(), List.of())));
            }
        }
        Certificate ways = new Certificate(List.of(), List.of(), bounds);
        assertThat(verdict(cuts, stock, lots, 10, ways)).isEqualTo("accepted");
        assertThat(verdict(cuts, stock, lots, 90, ways)).startsWith("some way to give the walls to the lots");
        PriceList all = new PriceList(Collections.nCopies(9, 5L), Collections.nCopies(9, List.of(5L)));
        assertThat(verdict(cuts, stock, lots, 90, new Certificate(List.of(all), List.of(), List.of()))).isEqualTo("accepted");
    }
}
