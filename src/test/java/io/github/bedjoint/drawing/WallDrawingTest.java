package io.github.bedjoint.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.film.Film;
import io.github.bedjoint.layout.Direction;
import io.github.bedjoint.layout.LayoutPlanner;
import io.github.bedjoint.layout.PanelLayout;
import io.github.bedjoint.survey.Wall;
import io.github.bedjoint.units.Read;
import io.github.bedjoint.units.UnitStyle;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

class WallDrawingTest {
    private static final PanelLayout BRICK = Demo.cost("brick-front").layouts().get(0);

    private static Document brick(UnitStyle style) {
        return Xml.parse(Drawing.wall(BRICK, style).svg());
    }

    private static List<Element> film(Document svg) {
        return Xml.all(svg, "rect").stream().filter(r -> r.getAttribute("fill").equals(Look.FILM) && Xml.number(r, "width") > 26).toList();
    }

    @Test
    void wall_brickFront_isInTrueScaleBothWays() {
        List<Element> film = film(brick(UnitStyle.METRIC));
        // The demo's wall is 7.20 m x 3.00 m; film reaches from x = 0 to 7.26 m (60 mm around the corner), on paper 660 - 44 - 16 = 600 wide.
        double pixelsPerM = 600 / 7.26;
        assertThat(film).hasSize(6);
        assertThat(Xml.number(film.get(0), "width")).isCloseTo(1.36 * pixelsPerM, within(0.01));
        assertThat(Xml.number(film.get(0), "height")).isCloseTo(3.05 * pixelsPerM, within(0.01));
        assertThat(Xml.number(film.get(1), "x")).isCloseTo(44 + 1.34 * pixelsPerM, within(0.01));
        assertThat(Xml.number(film.get(5), "width")).isCloseTo(0.56 * pixelsPerM, within(0.01));
    }

    @Test
    void wall_brickFront_numbersPanelsAndShowsCutSizes() {
        List<String> texts = Xml.texts(brick(UnitStyle.METRIC), "text");
        assertThat(texts).contains("1", "2", "3", "4", "5", "6", "door", "window", "7200.0 mm", "3000.0 mm", "1360.0 ×", "3050.0 mm", "560.0 × 3050.0 mm");
    }

    @Test
    void wall_imperial_showsFeetAndInches() {
        // 7.20 m = 23 ft 7.46 in, to the sixteenth 7 7/16 in; 3.00 m = 9 ft 10.11 in, 10 1/8 in.
        assertThat(Xml.texts(brick(UnitStyle.IMPERIAL), "text")).contains("23' 7 7/16\"", "9' 10 1/8\"").noneMatch(text -> text.contains(" mm"));
    }

    @Test
    void wall_seams_haveOverlapsTrueToScaleAndArrowsAtTheEdgeOnTop() {
        Document svg = brick(UnitStyle.METRIC);
        List<Element> laps = Xml.all(svg, "rect").stream()
                .filter(r -> r.getAttribute("fill").equals(Look.FILM_DARK) && Xml.number(r, "height") > 100).toList();
        assertThat(laps).hasSize(5);
        // 20 mm is 1.65 pixels here, drawn 2 so that it is seen, about the same middle: 1.34 m + 10 mm.
        double middle = Xml.number(laps.get(0), "x") + Xml.number(laps.get(0), "width") / 2;
        assertThat(middle).isCloseTo(44 + 1.35 * 600 / 7.26, within(0.02));
        // Five seams, and the one in the legend; each triangle's first corner is its point. Edges on top face left here.
        List<Element> arrows = Xml.all(svg, "polygon").stream().filter(p -> p.getAttribute("points").split(" ").length == 3).toList();
        assertThat(arrows).hasSize(6);
        for (Element arrow : arrows.subList(0, 5)) {
            String[] dots = arrow.getAttribute("points").split("[ ,]");
            assertThat(Double.parseDouble(dots[0])).isLessThan(Double.parseDouble(dots[2]));
        }
    }

    @Test
    void wall_bands_haveEdgesThatFaceDown() {
        PanelLayout bands = LayoutPlanner.withDefaults().withDirection(Direction.BANDS)
                .plan(Wall.rectangle("plain", Read.length("4 m"), Read.length("3 m")), Film.of("film", Read.length("1.2 m")));
        Document svg = Xml.parse(Drawing.wall(bands, UnitStyle.METRIC).svg());
        List<Element> arrows = Xml.all(svg, "polygon").stream().filter(p -> p.getAttribute("points").split(" ").length == 3).toList();
        assertThat(arrows).hasSize(bands.seams().size() + 1);
        String[] dots = arrows.get(0).getAttribute("points").split("[ ,]");
        assertThat(Double.parseDouble(dots[1])).isGreaterThan(Double.parseDouble(dots[3]));
    }

    @Test
    void wall_openings_areToldApartWithoutColour() {
        List<String> texts = Xml.texts(brick(UnitStyle.METRIC), "text");
        assertThat(texts).contains("opening; turned in to the dashes", "never covered");
        // Door and window one hatch each, the vent two ways in one path, and two legend marks.
        assertThat(Xml.all(brick(UnitStyle.METRIC), "path")).hasSize(5);
    }

    @Test
    void wall_description_saysWhatIsSeen() {
        Drawing drawing = Drawing.wall(BRICK, UnitStyle.METRIC);
        assertThat(drawing.title()).isEqualTo("Elevation of Street front");
        assertThat(drawing.description()).contains("7200.0 mm wide", "6 panels in 6 drops", "overlap by 20.0 mm", "faces left", "A vent 200.0 mm by 100.0 mm, never covered");
        Element root = brick(UnitStyle.METRIC).getDocumentElement();
        assertThat(root.getAttribute("role")).isEqualTo("img");
        assertThat(root.getFirstChild().getTextContent()).isEqualTo(drawing.title());
        assertThat(root.getFirstChild().getNextSibling().getTextContent()).isEqualTo(drawing.description());
    }

    @Test
    void wall_thatCannotBeDivided_isDrawnBare() {
        PanelLayout none = LayoutPlanner.withDefaults().withOverlap(Read.length("90 mm"))
                .plan(Wall.rectangle("w", Read.length("4 m"), Read.length("3 m")), Film.of("film", Read.length("1 m")));
        assertThat(none.isPossible()).isFalse();
        Document svg = Xml.parse(Drawing.wall(none, UnitStyle.METRIC).svg());
        assertThat(film(svg)).isEmpty();
        assertThat(svg.getElementsByTagName("desc").item(0).getTextContent()).contains("cannot be divided");
    }

    @Test
    void svg_sameWallTwice_hasTheSameBytes() {
        assertThat(Drawing.wall(BRICK, UnitStyle.METRIC).svg()).isEqualTo(Drawing.wall(Demo.cost("brick-front").layouts().get(0), UnitStyle.METRIC).svg());
    }
}
