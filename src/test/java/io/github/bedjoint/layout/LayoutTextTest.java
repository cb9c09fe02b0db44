package io.github.bedjoint.layout;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.bedjoint.film.Film;
import io.github.bedjoint.survey.Side;
import io.github.bedjoint.survey.Wall;
import io.github.bedjoint.units.Read;
import io.github.bedjoint.units.Steps;
import java.util.List;
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

    @Test
    void panel_sizes_areThoseOfItsCut() {
        Panel drop = layout(Direction.DROPS).panels().get(0);
        Panel band = layout(Direction.BANDS).panels().get(0);
        assertThat(drop).hasToString("1 on north: 1000.0 x 1200.0 mm at (0.0 mm, 0.0 mm)");
        assertThat(band).hasToString("1 on north: 1200.0 x 1000.0 mm at (0.0 mm, 0.0 mm)");
        assertThat(drop.cutWidth()).isEqualTo(Steps.toLength(80_000));
        assertThat(drop.cutLength()).isEqualTo(Steps.toLength(96_000));
        for (Panel panel : List.of(drop, band)) {
            assertThat(panel.alongSteps()).isEqualTo(80_000);
            assertThat(panel.upSteps()).isEqualTo(96_000);
        }
    }

    /** Three drops of 1 m on 2.5 m, 2 m high, with overlaps of 20 mm: two seams of 2 m. */
    @Test
    void layout_figures_areThoseOfItsPanelsAndSeams() {
        Wall wall = Wall.rectangle("north", Read.length("2.5 m"), Read.length("2 m"));
        PanelLayout layout = LayoutPlanner.withDefaults().withStart(Side.RIGHT).withRates(new Rates(1, 10, 100, 0)).plan(wall, LayoutPlannerTest.METRE);
        assertThat(layout.wall()).isEqualTo(wall);
        assertThat(layout.film()).isEqualTo(LayoutPlannerTest.METRE);
        assertThat(layout.start()).isEqualTo(Side.RIGHT);
        assertThat(layout.rates()).isEqualTo(new Rates(1, 10, 100, 0));
        assertThat(layout.overlap()).isEqualTo(Steps.toLength(1600));
        assertThat(layout.seamLength().getValue().doubleValue()).isEqualTo(4, LayoutPlannerTest.EXACT);
        assertThat(layout.overlapAllowance().getValue().doubleValue()).isEqualTo(0.08, LayoutPlannerTest.EXACT);
        // 6 m of film, three panels, 4 m of seam.
        assertThat(layout.cost()).isEqualTo(6 + 30 + 400, LayoutPlannerTest.EXACT);
        assertThat(layout.alternatives()).isEmpty();
        assertThat(layout.working().find("layout.panels-in-row")).isPresent();
        assertThat(LayoutPlanner.withDefaults().withFit(Fit.CHEAPEST).plan(wall, LayoutPlannerTest.METRE).working().find("layout.strips").orElseThrow().note())
                .startsWith("the cheapest of all rows with seams at ");
    }

    private static PanelLayout of(double width, double height, Direction direction) {
        return LayoutPlanner.withDefaults().withDirection(direction).withLongestCut(Read.length("2.5 m"))
                .plan(Wall.rectangle("w", LayoutPlannerTest.m(width), LayoutPlannerTest.m(height)), LayoutPlannerTest.METRE);
    }

    /** Films of 4 m in two panels, of 4 m in four and of 2 m; and walls of 3 m that no cut of 2.5 m covers. */
    @Test
    void ranked_layouts_areByCostThenByFewerPanels() {
        PanelLayout two = of(1.9, 2, Direction.DROPS);
        PanelLayout four = of(3.9, 1, Direction.DROPS);
        PanelLayout one = of(0.9, 2, Direction.DROPS);
        PanelLayout never = of(0.9, 3, Direction.DROPS);
        PanelLayout neither = of(3, 0.9, Direction.BANDS);
        assertThat(PanelLayout.ranked(List.of(never, four, two, one), 9)).containsExactly(one, two, four);
        assertThat(PanelLayout.ranked(List.of(never, four, two, one), 2)).containsExactly(one, two);
        assertThat(PanelLayout.ranked(List.of(never, neither), 9)).containsExactly(never);
    }

    @Test
    void isNoBetter_layout_hasPanelsAsLongAndNoNarrowerTheSameWay() {
        PanelLayout drops = of(1.9, 1.9, Direction.DROPS);
        assertThat(Distinct.isNoBetter(drops, of(1.9, 1.9, Direction.DROPS))).isTrue();
        assertThat(Distinct.isNoBetter(drops, of(1.9, 1.9, Direction.BANDS))).isFalse();
        // As much film in panels of other widths.
        assertThat(Distinct.isNoBetter(drops, of(1.8, 1.9, Direction.DROPS))).isTrue();
        assertThat(Distinct.isNoBetter(of(1.8, 1.9, Direction.DROPS), drops)).isFalse();
        assertThat(Distinct.isNoBetter(drops, of(1.9, 1.8, Direction.DROPS))).isFalse();
    }
}
