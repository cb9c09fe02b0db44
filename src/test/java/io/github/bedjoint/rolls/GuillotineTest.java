package io.github.bedjoint.rolls;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which cuts part pieces, drawn by hand. */
class GuillotineTest {

    /** Pieces as along-end x across-end, such as 0-2 x 0-3. */
    private static List<PlacedCut> pieces(String text) {
        List<PlacedCut> pieces = new ArrayList<>();
        for (String piece : text.split(" ")) {
            String[] n = piece.split("[-x]");
            long along = Long.parseLong(n[0]);
            long across = Long.parseLong(n[2]);
            pieces.add(new PlacedCut("P" + pieces.size(), along, across, Long.parseLong(n[1]) - along, Long.parseLong(n[3]) - across, false));
        }
        return pieces;
    }

    @ParameterizedTest
    @CsvSource({
        "one piece, 0-2x0-2, CROSS",
        "one behind the other and touching, 0-2x0-2 2-4x0-2, CROSS",
        "behind but to the side, 0-2x0-2 2-4x2-4, CROSS",
        "side by side and touching, 0-2x0-2 0-2x2-4, GUILLOTINE",
        "one step of a stretch in common, 0-2x0-2 1-3x2-4, GUILLOTINE",
        "two columns of one and two, 0-4x0-2 0-2x2-4 2-4x2-4, GUILLOTINE",
        "a slit then a cross cut then a slit, 0-4x0-2 0-2x2-4 2-4x2-3 2-4x3-4, GUILLOTINE",
        "a pinwheel, 0-2x0-3 2-5x0-2 0-3x3-5 3-5x2-5, FREE",
        "a pinwheel behind a row, 0-1x0-2 0-1x2-5 1-3x0-3 3-6x0-2 1-4x3-5 4-6x2-5, FREE",
        "a pinwheel before a row, 0-2x0-3 2-5x0-2 0-3x3-5 3-5x2-5 5-6x0-2 5-6x2-5, FREE",
        "a pinwheel within a column, 0-2x0-3 2-5x0-2 0-3x3-5 3-5x2-5 0-5x5-6, FREE"
    })
    void of_piecesByHand_isThePlainestKind(String what, String pieces, CutKind kind) {
        assertThat(CutKind.of(pieces(pieces))).as(what).isEqualTo(kind);
    }
}
