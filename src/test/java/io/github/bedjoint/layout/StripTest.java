package io.github.bedjoint.layout;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.bedjoint.working.WorkingCheck;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rows of panels of 100 steps with overlaps of 2. */
class StripTest {
    private static Run row(long from, long to, long wallFrom, long wallTo) {
        return new Run(new FilmLine(new Feed(0, 0), List.<long[]>of(new long[] {wallFrom, wallTo})), from, to, wallFrom, wallTo, 2, 100);
    }

    private static List<Strip> strips(long width, Fit fit, long least) {
        return Strip.in(row(0, width, 0, width), fit, least, 5).orElse(List.of());
    }

    private static List<Strip> of(long... ends) {
        return IntStream.range(0, ends.length / 2).mapToObj(i -> new Strip(ends[2 * i], ends[2 * i + 1])).toList();
    }

    @ParameterizedTest
    @CsvSource({
        // Three panels reach 3 x 98 + 2 = 296; extra film on either side takes from that.
        "0,   296, 0, 296, 3", "0, 297, 0, 297, 4", "0, 100, 0, 100, 1", "0, 101, 0, 101, 2", "0, 1, 0, 1, 1",
        "-10, 286, 0, 276, 3", "-10, 287, 0, 276, 4", "-10, 287, 0, 277, 4"})
    void count_row_isTheFewestPanels(long from, long to, long wallFrom, long wallTo, int count) {
        assertThat(row(from, to, wallFrom, wallTo).count()).isEqualTo(count);
    }

    /** All of a quarter is fed in: a panel covers 80 of wall, less the overlap 78; extra film of 10 takes the place of 8 of wall. */
    @ParameterizedTest
    @CsvSource({"0, 236, 0, 236, 3", "0, 237, 0, 237, 4", "-10, 238, 0, 228, 4", "-10, 230, 0, 220, 3", "-10, 231, 0, 221, 4"})
    void count_rowWithFilmFedIn_coversLess(long from, long to, long wallFrom, long wallTo, int count) {
        FilmLine line = new FilmLine(new Feed(1, 0.25), List.<long[]>of(new long[] {wallFrom, wallTo}));
        assertThat(new Run(line, from, to, wallFrom, wallTo, 2, 100).count()).isEqualTo(count);
    }

    @Test
    void in_fullWidth_trimsTheLast() {
        assertThat(strips(250, Fit.FULL_WIDTH, 10)).isEqualTo(of(0, 100, 98, 198, 196, 250));
        // 206 leaves exactly the least.
        assertThat(strips(206, Fit.FULL_WIDTH, 10)).isEqualTo(of(0, 100, 98, 198, 196, 206));
    }

    @Test
    void in_fullWidthWithASliver_takesFromTheNeighbour() {
        // A step less than the least: the last begins a step before, and its neighbour ends a step before.
        assertThat(strips(205, Fit.FULL_WIDTH, 10)).isEqualTo(of(0, 100, 98, 197, 195, 205));
    }

    @Test
    void in_fullWidthWhoseNeighbourWouldBeASliver_isEqual() {
        // Two on 102 have 52 each at the most.
        assertThat(strips(102, Fit.FULL_WIDTH, 52)).isEqualTo(of(0, 52, 50, 102));
        assertThat(strips(102, Fit.FULL_WIDTH, 53)).isEmpty();
        // Of three on 202 the last would take 68 and leave 38 for the second; equal ones have 206 / 3: 69, 69 and 68.
        assertThat(strips(202, Fit.FULL_WIDTH, 68)).isEqualTo(of(0, 69, 67, 136, 134, 202));
        assertThat(strips(202, Fit.FULL_WIDTH, 69)).isEmpty();
    }

    @Test
    void in_onePanel_isNoSliver() {
        for (Fit fit : List.of(Fit.FULL_WIDTH, Fit.EQUALISED, Fit.WIDER_OVERLAPS)) {
            assertThat(strips(5, fit, 50)).isEqualTo(of(0, 5));
        }
    }

    @Test
    void in_equalised_givesTheFirstAStepMore() {
        assertThat(strips(200, Fit.EQUALISED, 10)).isEqualTo(of(0, 68, 66, 134, 132, 200));
        assertThat(strips(201, Fit.EQUALISED, 10)).isEqualTo(of(0, 69, 67, 135, 133, 201));
        assertThat(strips(202, Fit.EQUALISED, 10)).isEqualTo(of(0, 69, 67, 136, 134, 202));
        assertThat(strips(200, Fit.EQUALISED, 69)).isEmpty();
    }

    @Test
    void in_widerOverlaps_shareWhatTheLastWouldBeTrimmedBy() {
        // Three full panels begin at 0, 98, 196; on 290 the last may begin at 190, so 6 to spare, 3 for each overlap.
        assertThat(strips(290, Fit.WIDER_OVERLAPS, 10)).isEqualTo(of(0, 100, 95, 195, 190, 290));
        assertThat(strips(291, Fit.WIDER_OVERLAPS, 10)).isEqualTo(of(0, 100, 95, 195, 191, 291));
        // Overlaps of 5 at the most.
        assertThat(strips(280, Fit.WIDER_OVERLAPS, 10)).isEqualTo(of(0, 100, 95, 195, 190, 280));
        // The last would keep 10, and that is twice the most overlap and the least.
        assertThat(strips(200, Fit.WIDER_OVERLAPS, 10)).isEqualTo(of(0, 100, 95, 195, 190, 200));
        // A sliver is left: equal ones.
        assertThat(strips(200, Fit.WIDER_OVERLAPS, 11)).isEqualTo(of(0, 68, 66, 134, 132, 200));
        assertThat(strips(199, Fit.WIDER_OVERLAPS, 0)).isEqualTo(of(0, 68, 66, 134, 132, 199));
    }

    @Test
    void in_bleeds_countAsFilmNotAsWidthOnTheWall() {
        // Film from -20 to 120, wall from 0 to 100: the second panel would show 78 to 100, so it takes 8 more from the first.
        assertThat(Strip.in(row(-20, 120, 0, 100), Fit.FULL_WIDTH, 30, 5).orElseThrow()).isEqualTo(of(-20, 72, 70, 120));
        assertThat(Strip.in(row(-20, 120, 0, 100), Fit.EQUALISED, 30, 5).orElseThrow()).isEqualTo(of(-20, 51, 49, 120));
        // Each shows 51 of its 71.
        assertThat(Strip.in(row(-20, 120, 0, 100), Fit.EQUALISED, 51, 5)).isPresent();
        assertThat(Strip.in(row(-20, 120, 0, 100), Fit.EQUALISED, 52, 5)).isEmpty();
    }

    @Test
    void in_widerOverlapsOfFour_giveTheFirstsAStepMore() {
        // Full panels begin at 0, 98, 196, 294; on 387 the last may begin at 287: 7 to spare, 3, 2 and 2.
        assertThat(strips(387, Fit.WIDER_OVERLAPS, 10)).isEqualTo(of(0, 100, 95, 195, 191, 291, 287, 387));
    }

    /**
     * All of a quarter is fed in. 140 of film and an overlap of 2 take 142 + ceil(122 / 4) = 173, so 87 and 86: of the first 10 lie before the
     * wall, and 61 + ceil(61 / 4) = 77 over it.
     */
    @Test
    void in_equalisedWithFilmFedIn_sharesTheFilm() {
        FilmLine line = new FilmLine(new Feed(1, 0.25), List.<long[]>of(new long[] {1000, 1120}));
        Run run = new Run(line, 990, 1130, 1000, 1120, 2, 100);
        assertThat(Strip.in(run, Fit.EQUALISED, 10, 5).orElseThrow()).isEqualTo(of(990, 1061, 1059, 1130));
        WorkingCheck.check(run.working());
    }

    @Test
    void working_ofARowWithBleeds_givesItsCount() {
        WorkingCheck.check(row(990, 1287, 1000, 1276).working());
        WorkingCheck.check(row(990, 1286, 1000, 1276).working());
    }
}
