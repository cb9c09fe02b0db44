package io.github.bedjoint.checker;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.bedjoint.rolls.AcrossScale;
import io.github.bedjoint.rolls.Cut;
import io.github.bedjoint.rolls.CutKind;
import io.github.bedjoint.rolls.CuttingTerms;
import io.github.bedjoint.rolls.LotRule;
import io.github.bedjoint.rolls.RemnantRule;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What panels count across a roll, worked by hand. */
class AcrossCheckTest {
    private static final CuttingTerms FREE = CuttingTerms.plain();
    private static final CuttingTerms GAP = new CuttingTerms(0, 0, 1, RemnantRule.none(), LotRule.ANY);

    private static BoundCheck.Type roll(long width, long usable) {
        return new BoundCheck.Type(0, true, usable, width, 1, 0, 0);
    }

    private static AcrossCheck check(Cut cut, CuttingTerms terms, long from, long most) {
        return new AcrossCheck(List.of(cut), terms, new AcrossScale(List.of(from), List.of(1L), List.of(most)));
    }

    /** From 4 on a panel counts 1, which is said never to come: 3 x 5 upright reaches 3, and turned 5 where that goes on the roll. */
    @ParameterizedTest
    @CsvSource({"5, 5, true, false", "5, 5, false, true", "4, 5, true, true", "5, 3, true, false", "5, 2, true, true"})
    void holds_panelThatTurns_countsBothWays(long width, long usable, boolean turns, boolean holds) {
        assertThat(check(new Cut("A", 3, 5, 1, "", turns), FREE, 4, 0).holds(roll(width, usable))).isEqualTo(holds);
    }

    /** One square of 4 has one way to lie, so that no two lie beside each other on 8. */
    @Test
    void holds_square_countsOnce() {
        assertThat(check(new Cut("A", 4, 4, 1, "", true), FREE, 4, 1).holds(roll(8, 9))).isTrue();
        assertThat(check(new Cut("A", 4, 4, 2, "", true), FREE, 4, 1).holds(roll(8, 9))).isFalse();
    }

    /** With a gap of 1 two of 4 need 9 across, and two of 4 along need 9. */
    @Test
    void holds_gap_isKeptAcrossAndAlong() {
        Cut two = new Cut("A", 4, 4, 2, "");
        assertThat(check(two, GAP, 4, 1).holds(roll(8, 9))).isTrue();
        assertThat(check(two, GAP, 4, 1).holds(roll(9, 9))).isFalse();
        assertThat(check(two, GAP, 4, 1).neverAbove(List.of(5L), roll(8, 8), 9)).isTrue();
        assertThat(check(two, GAP, 4, 1).neverAbove(List.of(5L), roll(8, 9), 9)).isFalse();
        assertThat(check(two, GAP, 4, 1).neverAbove(List.of(5L), roll(8, 9), 10)).isTrue();
    }

    @Test
    void isSideBySide_onePanel_onlyIfItTurns() {
        CuttingTerms cross = FREE.withCuts(CutKind.CROSS);
        assertThat(AcrossCheck.isSideBySide(List.of(new Cut("A", 2, 9, 1, "")), FREE, roll(4, 9))).isFalse();
        assertThat(AcrossCheck.isSideBySide(List.of(new Cut("A", 2, 9, 2, "")), FREE, roll(4, 9))).isTrue();
        assertThat(AcrossCheck.isSideBySide(List.of(new Cut("A", 3, 4, 1, "", true)), cross, roll(4, 3))).isTrue();
        assertThat(AcrossCheck.isSideBySide(List.of(new Cut("A", 3, 4, 1, "", true)), cross, roll(4, 2))).isFalse();
    }

    @Test
    void isWellFormed_panelsThatCountNothing_areAllowed() {
        AcrossScale scale = new AcrossScale(List.of(1L, 2L), List.of(0L, 1L), List.of(0L));
        assertThat(new AcrossCheck(List.of(), FREE, scale).isWellFormed(1)).isTrue();
    }
}
