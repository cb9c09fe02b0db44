package io.github.bedjoint.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.cutting.RollPlanner;
import io.github.bedjoint.film.Film;
import io.github.bedjoint.job.JobCost;
import io.github.bedjoint.rolls.Cut;
import io.github.bedjoint.rolls.CuttingTerms;
import io.github.bedjoint.rolls.RollPlan;
import io.github.bedjoint.rolls.Stock;
import io.github.bedjoint.schedule.Activity;
import io.github.bedjoint.schedule.Link;
import io.github.bedjoint.schedule.Network;
import io.github.bedjoint.schedule.Span;
import io.github.bedjoint.schedule.Timetable;
import io.github.bedjoint.schedule.WorkCalendar;
import io.github.bedjoint.texture.FlatSurface;
import io.github.bedjoint.texture.JointProfile;
import io.github.bedjoint.texture.MasonrySurface;
import io.github.bedjoint.texture.Surface;
import io.github.bedjoint.units.Read;
import io.github.bedjoint.units.UnitStyle;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import tech.units.indriya.quantity.Quantities;

class OtherDrawingsTest {
    private static final JobCost BRICK = Demo.cost("brick-front");

    private static List<Element> rects(Document svg, String fill) {
        return Xml.all(svg, "rect").stream().filter(r -> r.getAttribute("fill").equals(fill)).toList();
    }

    @Test
    void rolls_brickFront_liesInTrueScaleFromTheLeadOn() {
        Document svg = Xml.parse(Drawing.rolls("Film", BRICK.filmPlan(), BRICK.job().materials().film().edgeMarginSteps(), UnitStyle.METRIC).svg());
        List<Element> pieces = rects(svg, Look.FILM);
        // A 10 m roll on 650 pixels: 65 a metre. Lead 0.3 m, pieces 3.05 m, gaps 10 mm, from x = 2 on.
        assertThat(Xml.number(pieces.get(0), "x")).isCloseTo(2 + 0.3 * 65, within(0.01));
        assertThat(Xml.number(pieces.get(0), "width")).isCloseTo(3.05 * 65, within(0.01));
        assertThat(Xml.number(pieces.get(1), "x")).isCloseTo(2 + 3.36 * 65, within(0.01));
        assertThat(Xml.number(pieces.get(0), "height")).isCloseTo(1.36 * 65, within(0.01));
        assertThat(Xml.texts(svg, "text")).contains("Roll 1: A-10, 10 m × 1372.0 mm", "Street front 3", "3050.0 mm", "lead: 300.0 mm", "tail: 200.0 mm",
                "gap between pieces: 10.0 mm", "left on the roll, scrap");
        assertThat(Frame.outside(svg)).isEmpty();
    }

    @Test
    void rolls_ofTwoWalls_nameShortPiecesByLetter() {
        RollPlan plan = RollPlanner.withDefaults().withTerms(CuttingTerms.plain()).plan(
                List.of(new Cut("A very long name of a wall 1", 80_000, 40_000, 1, "A very long name of a wall"), new Cut("Other 1", 80_000, 40_000, 1, "Other")),
                List.of(new Stock("S", 80_000, 1_000_000, 1, -1, "")));
        Document svg = Xml.parse(Drawing.rolls("Film", plan, 0, UnitStyle.METRIC).svg());
        assertThat(Xml.texts(svg, "text")).contains("A1", "B1", "A", "B", "A very long name of a wall", "Other");
    }

    /** On 100 x 100 mm in 650 pixels: two halves beside each other from the top and from the middle. */
    @Test
    void rolls_piecesSideBySide_lieAtTheirPlaces() {
        RollPlan plan = RollPlanner.withDefaults().plan(List.of(new Cut("w 1", 4_000, 8_000, 2, "w")), List.of(new Stock("S", 8_000, 8_000, 1, -1, "")));
        Document svg = Xml.parse(Drawing.rolls("Film", plan, 0, UnitStyle.METRIC).svg());
        List<Element> pieces = rects(svg, Look.FILM);
        assertThat(Xml.number(pieces.get(1), "y") - Xml.number(pieces.get(0), "y")).isCloseTo(325, within(0.02));
        assertThat(Xml.number(pieces.get(1), "x")).isEqualTo(Xml.number(pieces.get(0), "x"));
        assertThat(Frame.outside(svg)).isEmpty();
    }

    @Test
    void rolls_withoutAPlan_holdsNoRoll() {
        RollPlan none = RollPlanner.withDefaults().plan(List.of(new Cut("too wide 1", 90_000, 100, 1, "w")), List.of(new Stock("S", 80_000, 1_000, 1, -1, "")));
        assertThat(none.isFeasible()).isFalse();
        assertThat(Drawing.rolls("Film", none, 0, UnitStyle.METRIC).description()).isEqualTo("No roll is opened.");
    }

    private static Drawing joint(JointProfile profile, double stretch) {
        Surface brick = MasonrySurface.of(Read.length("215 mm"), Read.length("65 mm"), Read.length("10 mm"), Read.length("10 mm"), profile);
        return Drawing.joint(brick, Film.of("film", Read.length("1.37 m")).withUsableStretch(stretch), UnitStyle.METRIC);
    }

    @Test
    void joint_thatTheFilmBears_isFollowed() {
        // Raked 5 mm: 2 d / j = 100 %; 5 + 10 + 5 mm of film.
        Document svg = Xml.parse(joint(JointProfile.raked(Read.length("5 mm")), 1.2).svg());
        assertThat(Xml.texts(svg, "text")).contains("film: follows the joint", "asked at the steepest place: 100.0 %", "the film bears 120.0 %",
                "10.0 mm wide, film along it 20.0 mm");
        assertThat(Frame.outside(svg)).isEmpty();
        List<Element> film = Xml.all(svg, "polyline");
        assertThat(film).hasSize(3);
        // Down, along, up: the joint is drawn 10 mm = 180 pixels wide and half as deep, both scales alike.
        assertThat(film.get(2).getAttribute("points")).isEqualTo("84,38 84,128 264,128 264,38");
    }

    @Test
    void joint_thatTheFilmBridges_isDrawnStraightAcross() {
        Document svg = Xml.parse(joint(JointProfile.raked(Read.length("8 mm")), 0.1).svg());
        assertThat(Xml.texts(svg, "text")).contains("film: bridges the joint");
        String[] dots = Xml.all(svg, "polyline").get(2).getAttribute("points").split("[ ,]");
        assertThat(dots).hasSize(4);
        assertThat(dots[1]).isEqualTo(dots[3]);
    }

    @Test
    void joint_thatIsTight_isDashed() {
        Document svg = Xml.parse(joint(JointProfile.raked(Read.length("5 mm")), 0.3).svg());
        assertThat(Xml.texts(svg, "text")).contains("film: dashed where it must slide");
        assertThat(Xml.all(svg, "polyline").get(2).getAttribute("stroke-dasharray")).isNotEmpty();
    }

    @Test
    void joint_everyProfile_staysInsideItsFrame() {
        List<JointProfile> profiles = List.of(JointProfile.flush(), JointProfile.raked(Read.length("30 mm")), JointProfile.vee(Quantities.getQuantity(60, JointProfile.DEGREE)),
                JointProfile.concave(Read.length("3 mm")), JointProfile.halfRound(), JointProfile.struck(Read.length("5 mm")), JointProfile.weathered(Read.length("5 mm")));
        for (JointProfile profile : profiles) {
            assertThat(Frame.outside(Xml.parse(joint(profile, 0.3).svg()))).as(profile.toString()).isEmpty();
        }
    }

    @Test
    void joint_ofAFlatSurface_showsOnlyTheStretches() {
        Document svg = Xml.parse(Drawing.joint(FlatSurface.flat(), Film.of("film", Read.length("1 m")).withUsableStretch(0.3), UnitStyle.METRIC).svg());
        assertThat(Xml.all(svg, "polyline")).isEmpty();
        assertThat(Xml.texts(svg, "text")).contains("asked at the steepest place: 0.0 %");
        assertThat(Frame.outside(svg)).isEmpty();
    }

    @Test
    void dates_brickFront_areBarsOverDays() {
        Timetable dates = BRICK.timetable().orElseThrow();
        Document svg = Xml.parse(Drawing.dates(dates).svg());
        assertThat(Frame.outside(svg)).isEmpty();
        assertThat(Xml.texts(svg, "text")).contains("Install", "Cure", "wait 24 h", "wait 168 h", "hand-over Thu 22 Apr 2027 14:47", "12 Apr");
        // 12 to 22 April: 11 days on 660 - 172 - 4 = 484 pixels, 44 a day. The job's closed days: 16 (given), 17, 18.
        assertThat(rects(svg, Look.GREY).stream().filter(r -> Xml.number(r, "height") > 100).map(r -> r.getAttribute("x")))
                .containsExactly("348", "392", "436");
        // Cure, 72 h elapsed: three days long.
        assertThat(Xml.all(svg, "rect")).anyMatch(r -> r.getAttribute("width").equals("132") && r.getAttribute("height").equals("15"));
    }

    @Test
    void dates_overTwoYears_stillFit() {
        ZonedDateTime begin = ZonedDateTime.of(2027, 1, 4, 8, 0, 0, 0, ZoneId.of("Europe/Vienna"));
        Timetable dates = Network.on(WorkCalendar.weekdays(ZoneId.of("Europe/Vienna")), begin)
                .with(Activity.of("a", "An activity with a name that is much too long for its column", Span.elapsed(Read.time("9000 h"))))
                .with(Activity.of("b", "b", Span.shift(Read.time("1 h")))).with(Link.of("a", "b").atLeast(Span.elapsed(Read.time("8000 h")))).plan();
        Document svg = Xml.parse(Drawing.dates(dates).svg());
        assertThat(Frame.outside(svg)).isEmpty();
        assertThat(Xml.texts(svg, "text")).anyMatch(text -> text.startsWith("An activity with") && text.endsWith("…"));
    }

    @Test
    void dates_ofAnImpossibleTimetable_areRefused() {
        ZonedDateTime begin = ZonedDateTime.of(2027, 1, 4, 8, 0, 0, 0, ZoneId.of("Europe/Vienna"));
        Timetable none = Network.on(WorkCalendar.weekdays(ZoneId.of("Europe/Vienna")), begin).with(Activity.of("a", "a", Span.shift(Read.time("1 h"))))
                .with(Activity.of("b", "b", Span.shift(Read.time("1 h")))).with(Link.of("a", "b")).with(Link.of("b", "a")).plan();
        assertThatThrownBy(() -> Drawing.dates(none)).isInstanceOf(IllegalArgumentException.class).hasMessageContaining("circle");
    }

    @Test
    void waste_bars_areAsLongAsTheirAreas() {
        Document svg = Xml.parse(Drawing.waste(BRICK.waste(), UnitStyle.METRIC).svg());
        List<Element> bars = Xml.all(svg, "rect");
        List<Double> parts = BRICK.waste().partsM2().values().stream().filter(m2 -> m2 > 1e-12).toList();
        assertThat(bars).hasSameSizeAs(parts);
        double scale = 346 / parts.stream().mapToDouble(m2 -> m2).max().orElseThrow();
        for (int i = 0; i < parts.size(); i++) {
            assertThat(Xml.number(bars.get(i), "width")).isCloseTo(Math.max(1, parts.get(i) * scale), within(0.01));
        }
        assertThat(Xml.texts(svg, "text")).contains("17.80 m², 64.9 %", "all film opened: 27.44 m²");
        assertThat(Frame.outside(svg)).isEmpty();
    }

    @Test
    void cost_bars_addUpToTheTotal() {
        Document svg = Xml.parse(Drawing.cost(BRICK.price()).svg());
        List<String> amounts = Xml.texts(svg, "text").stream().filter(text -> text.startsWith("EUR ")).toList();
        double sum = amounts.stream().mapToDouble(text -> Double.parseDouble(text.substring(4, text.indexOf(',')))).sum();
        assertThat(sum).isCloseTo(BRICK.total().getAmount().doubleValue(), within(0.001));
        assertThat(Frame.outside(svg)).isEmpty();
    }

    @Test
    void svg_everyDrawing_hasTitleAndDescription() {
        for (Drawing drawing : List.of(Drawing.cost(BRICK.price()), Drawing.waste(BRICK.waste(), UnitStyle.IMPERIAL), Drawing.dates(BRICK.timetable().orElseThrow()))) {
            Document svg = Xml.parse(drawing.svg());
            assertThat(Xml.texts(svg, "title")).containsExactly(drawing.title());
            assertThat(Xml.texts(svg, "desc")).containsExactly(drawing.description());
            assertThat(drawing).hasToString(drawing.title() + ": " + drawing.description());
        }
    }
}
