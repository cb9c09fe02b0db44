package io.github.bedjoint.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.bedjoint.rolls.Cut;
import io.github.bedjoint.rolls.CuttingTerms;
import io.github.bedjoint.rolls.LotRule;
import io.github.bedjoint.rolls.PlacedCut;
import io.github.bedjoint.rolls.RemnantRule;
import io.github.bedjoint.rolls.Stock;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Panels gathered in sections, drawn by hand. */
class ShelvesTest {
    private static final List<Stock> STOCK = List.of(new Stock("S", 6, 50, 10, Stock.UNLIMITED, ""));

    private static List<Section> shelves(List<Cut> cuts, long gap, Shelves.Way way) {
        int[] open = cuts.stream().mapToInt(Cut::quantity).toArray();
        return Shelves.of(cuts, open, STOCK, new CuttingTerms(0, 0, gap, RemnantRule.none(), LotRule.ANY), 6, way);
    }

    /** Six of 2 x 5 on 6: upright three in a row; the longer side along the same; the longer side across one in a row, which leaves 1. */
    @ParameterizedTest
    @CsvSource({"2, 5, UPRIGHT, 3, 2, false", "2, 5, LONG, 3, 2, false", "2, 5, WIDE, 1, 6, true",
        "5, 2, UPRIGHT, 1, 6, false", "5, 2, LONG, 3, 2, true", "5, 2, WIDE, 1, 6, false"})
    void of_panelsThatTurn_lieTheWayAskedFor(long width, long length, Shelves.Way way, int inARow, int rows, boolean turned) {
        List<Section> sections = shelves(List.of(new Cut("A", width, length, 6, "", true)), 0, way);
        assertThat(sections).singleElement().satisfies(section -> {
            assertThat(section.quantity()).isEqualTo(rows);
            assertThat(section.placed()).hasSize(inARow).allMatch(piece -> piece.turned() == turned);
        });
    }

    /** The longest opens a section; beside it a column of two that take 3 + 1 + 3 of its 7; what is left over opens the next. */
    @Test
    void of_panelsOfTwoLengths_fillAColumnBeside() {
        assertThat(shelves(List.of(new Cut("short", 2, 3, 3, ""), new Cut("long", 3, 7, 1, "")), 1, Shelves.Way.UPRIGHT)).containsExactly(
                new Section(List.of(
                        new PlacedCut("long", 0, 0, 7, 3, false), new PlacedCut("short", 0, 4, 3, 2, false), new PlacedCut("short", 4, 4, 3, 2, false)), 1),
                new Section(List.of(new PlacedCut("short", 0, 0, 3, 2, false)), 1));
    }

    /** Parted at 3 and 4 with a gap of 1, not where B still reaches; each section counts from its own start. */
    @Test
    void sections_ofAStrip_partWhereTheGapIsKept() {
        PlacedCut a = new PlacedCut("A", 0, 0, 3, 2, false);
        PlacedCut b = new PlacedCut("B", 4, 0, 5, 2, false);
        PlacedCut c = new PlacedCut("C", 5, 3, 2, 2, true);
        PlacedCut d = new PlacedCut("D", 9, 3, 2, 2, false);
        assertThat(Section.of(List.of(d, c, b, a), 1)).containsExactly(
                new Section(List.of(a), 1),
                new Section(List.of(
                        new PlacedCut("B", 0, 0, 5, 2, false), new PlacedCut("C", 1, 3, 2, 2, true), new PlacedCut("D", 5, 3, 2, 2, false)), 1));
        assertThat(Section.of(List.of(d, c, b, a), 0)).hasSize(3);
    }
}
