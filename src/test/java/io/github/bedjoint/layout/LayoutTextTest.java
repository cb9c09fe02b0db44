package io.github.bedjoint.layout;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.bedjoint.film.Film;
import io.github.bedjoint.survey.Side;
import io.github.bedjoint.survey.Wall;
import io.github.bedjoint.units.Read;
import org.junit.jupiter.api.Test;

/** What layouts, seams and print files are printed as. */
class LayoutTextTest {
    private static final Film FILM = Film.of("Film", Read.length("1.372 m"));

    private static PanelLayout layout(Direction direction) {
        return LayoutPlanner.withDefaults().withDirection(direction).plan(Wall.rectangle("north", Read.length("1 m"), Read.length("1.2 m")), FILM);
    }

    @Test
    void toString_layout_countsItsPanels() {
        assertThat(layout(Direction.DROPS).toString()).startsWith("north: 1 panel in 1 drop, ").endsWith(" m of film");
        assertThat(layout(Direction.BANDS).toString()).startsWith("north: 1 panel in 1 band, ");
        PanelLayout none = LayoutPlanner.withDefaults().withLongestCut(Read.length("1 m")).withDirection(Direction.DROPS)
                .plan(Wall.rectangle("north", Read.length("1 m"), Read.length("1.2 m")), FILM);
        assertThat(none.isPossible()).isFalse();
        assertThat(none.toString()).startsWith("north: no layout, ").endsWith(none.reasons().get(none.reasons().size() - 1));
    }

    @Test
    void toString_seam_hasPlaceWidthAndLength() {
        assertThat(new Seam(true, 80_000, 1016, 2.5, Side.LEFT, 0)).hasToString("upright seam at 1000.0 mm, 12.7 mm wide, 2.5 m long");
        assertThat(new Seam(false, 80_000, 1016, 2.5, Side.BOTTOM, 0)).hasToString("level seam at 1000.0 mm, 12.7 mm wide, 2.5 m long");
    }

    private static PrintFile file(Direction direction, Picture picture, int copies) {
        return PrintFile.of(layout(direction).panels().get(0), 1, picture, copies);
    }

    private static Picture picture(int left, int bottom, int right, int top) {
        return new Picture(left * 80L, bottom * 80L, right * 80L, top * 80L);
    }

    /** The panel is 1000 by 1200 mm with no bleed; a picture one millimetre short on any side leaves a stripe blank. */
    @Test
    void printFile_pictureThatCoversThePanelOrNot_isSaid() {
        assertThat(file(Direction.DROPS, picture(0, 0, 1000, 1200), 1))
                .hasToString("north-01-of-01: 1000.0 mm wide, 1200.0 mm high, from the picture's left 0.0 mm, from its top 0.0 mm, 1 copy");
        assertThat(file(Direction.BANDS, picture(-10, -20, 1010, 1230), 3))
                .hasToString("north-01-of-01: 1000.0 mm wide, 1200.0 mm high, from the picture's left 10.0 mm, from its top 30.0 mm, turned, 3 copies");
        assertThat(file(Direction.DROPS, picture(1, 0, 1000, 1200), 1).toString()).contains("left -1.0 mm").endsWith(", partly blank, 1 copy");
        assertThat(file(Direction.DROPS, picture(0, 1, 1000, 1200), 1).whole()).isFalse();
        assertThat(file(Direction.DROPS, picture(0, 0, 999, 1200), 1).whole()).isFalse();
        assertThat(file(Direction.DROPS, picture(0, 0, 1000, 1199), 1).whole()).isFalse();
    }
}
