package io.github.bedjoint.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.cutting.RollPlanner;
import io.github.bedjoint.film.Film;
import io.github.bedjoint.layout.Direction;
import io.github.bedjoint.layout.LayoutPlanner;
import io.github.bedjoint.layout.PanelLayout;
import io.github.bedjoint.rolls.Cut;
import io.github.bedjoint.rolls.CuttingTerms;
import io.github.bedjoint.rolls.LotRule;
import io.github.bedjoint.rolls.OpenedRoll;
import io.github.bedjoint.rolls.RemnantRule;
import io.github.bedjoint.rolls.RollPlan;
import io.github.bedjoint.rolls.Stock;
import io.github.bedjoint.survey.Edge;
import io.github.bedjoint.survey.RandomWalls;
import io.github.bedjoint.survey.Side;
import io.github.bedjoint.survey.Wall;
import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.UnitStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

class DrawingProperties {
    private static PanelLayout layout(long seed, boolean gabled, Direction direction, double roll) {
        Wall wall = gabled ? RandomWalls.gabled(seed) : RandomWalls.stepped(seed);
        for (Side side : Side.values()) {
            wall = wall.withEdge(side, Edge.of(Edge.Kind.FREE, Door.length(new Random(seed + side.ordinal()).nextInt(60) / 1000.0)));
        }
        return LayoutPlanner.withDefaults().withDirection(direction).withOverlap(Door.length(0.02)).plan(wall, Film.of("film", Door.length(roll)));
    }

    @Property(tries = 150)
    void wall_anyWall_staysInsideItsFrame(
            @ForAll long seed, @ForAll boolean gabled, @ForAll Direction direction, @ForAll @DoubleRange(min = 0.3, max = 1.6) double roll,
            @ForAll UnitStyle style) {
        Document svg = Xml.parse(Drawing.wall(layout(seed, gabled, direction, roll), style).svg());
        assertThat(Frame.outside(svg)).isEmpty();
    }

    @Property(tries = 100)
    void wall_anyWall_hasOneRectangleForEachPanelAllInOneScale(
            @ForAll long seed, @ForAll boolean gabled, @ForAll @DoubleRange(min = 0.5, max = 1.6) double roll) {
        PanelLayout layout = layout(seed, gabled, Direction.DROPS, roll);
        Document svg = Xml.parse(Drawing.wall(layout, UnitStyle.METRIC).svg());
        List<Element> film = Xml.all(svg, "rect").stream().filter(r -> r.getAttribute("fill").equals(Look.FILM)).toList();
        assertThat(film).hasSize(layout.panels().size());
        double scale = film.isEmpty() ? 0 : Xml.number(film.get(0), "height") / layout.panels().get(0).cutLengthSteps();
        for (int i = 0; i < film.size(); i++) {
            // Numbers are printed to a hundredth of a pixel.
            assertThat(Xml.number(film.get(i), "width")).isCloseTo(layout.panels().get(i).cutWidthSteps() * scale, within(0.03));
            assertThat(Xml.number(film.get(i), "height")).isCloseTo(layout.panels().get(i).cutLengthSteps() * scale, within(0.03));
        }
    }

    @Property(tries = 100)
    void rolls_anyJob_stayInsideTheirFrameAndHoldEachPieceOnce(@ForAll long seed, @ForAll @IntRange(min = 1, max = 12) int pieces, @ForAll UnitStyle style) {
        Random random = new Random(seed);
        List<Cut> cuts = new ArrayList<>();
        for (int i = 0; i < pieces; i++) {
            cuts.add(new Cut("wall " + (i + 1), 8_000 + random.nextInt(92_000), 8_000 + random.nextInt(400_000), 1, random.nextBoolean() ? "a" : "b"));
        }
        CuttingTerms terms = new CuttingTerms(random.nextInt(30_000), random.nextInt(30_000), random.nextInt(2_000), RemnantRule.none(), LotRule.ANY);
        RollPlan plan = RollPlanner.withDefaults().withTerms(terms).plan(cuts, List.of(new Stock("S", 100_000, 800_000 + random.nextInt(2_000_000), 100, Stock.UNLIMITED, "")));
        Document svg = Xml.parse(Drawing.rolls("film", plan, random.nextInt(2_000), style).svg());
        assertThat(Frame.outside(svg)).isEmpty();
        long drawn = Xml.all(svg, "rect").stream().filter(r -> r.getAttribute("fill").equals(Look.FILM)).count();
        // One in the legend.
        assertThat(drawn).isEqualTo(plan.rolls().stream().map(OpenedRoll::pieces).mapToInt(List::size).sum() + 1L);
    }

    @Property(tries = 300)
    void hatch_anyRectangle_staysInside(
            @ForAll Hatch hatch, @ForAll @DoubleRange(max = 700) double width, @ForAll @DoubleRange(max = 500) double height) {
        List<double[]> lines = new ArrayList<>();
        hatch.lines(10, 20, width, height, (x1, y1, x2, y2) -> lines.add(new double[] {x1, y1, x2, y2}));
        for (double[] line : lines) {
            for (int i = 0; i < 4; i += 2) {
                assertThat(line[i]).isBetween(10 - 1e-9, 10 + width + 1e-9);
                assertThat(line[i + 1]).isBetween(20 - 1e-9, 20 + height + 1e-9);
            }
        }
        if (width > 14 && height > 14) {
            assertThat(lines).isNotEmpty();
        }
    }
}
