package io.github.bedjoint.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.risk.Input;
import io.github.bedjoint.risk.Outcome;
import io.github.bedjoint.risk.RiskResult;
import io.github.bedjoint.risk.Simulation;
import io.github.bedjoint.risk.Spread;
import io.github.bedjoint.units.UnitStyle;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

class SpreadDrawingTest {
    private static final RiskResult RISK = Simulation.of(Demo.job("reading-room")).with(Input.crewPace(), Spread.triangular(0.8, 1, 1.6)).run(7, 400);

    private static Document price() {
        return Xml.parse(Drawing.spread(RISK, Outcome.PRICE, UnitStyle.METRIC).svg());
    }

    private static List<Element> columns(Document svg) {
        return Xml.all(svg, "rect");
    }

    @Test
    void spread_columns_areAsHighAsTheirShareOfTheJobs() {
        List<Element> columns = columns(price());
        assertThat(columns).hasSize(24);
        double highest = columns.stream().mapToDouble(c -> Xml.number(c, "height")).max().orElseThrow();
        assertThat(highest).isCloseTo(120, within(0.01));
        double all = columns.stream().mapToDouble(c -> Xml.number(c, "height")).sum();
        double least = RISK.of(Outcome.PRICE).percentile(0);
        double most = RISK.of(Outcome.PRICE).percentile(1);
        double below = 0;
        for (int i = 0; i < 24; i++) {
            below += Xml.number(columns.get(i), "height") / all;
            double edge = i == 23 ? most : least + (i + 1) * (most - least) / 24;
            assertThat(below).isCloseTo(1 - RISK.of(Outcome.PRICE).chanceAbove(edge), within(0.002));
        }
    }

    @Test
    void spread_lines_standAtThePercentiles() {
        Document svg = price();
        double least = RISK.of(Outcome.PRICE).percentile(0);
        double most = RISK.of(Outcome.PRICE).percentile(1);
        List<Element> upright = Xml.all(svg, "line").stream().filter(line -> line.getAttribute("x1").equals(line.getAttribute("x2"))).toList();
        assertThat(upright).hasSize(3);
        double[] shares = {0.5, 0.8, 0.95};
        for (int i = 0; i < 3; i++) {
            double at = (RISK.of(Outcome.PRICE).percentile(shares[i]) - least) / (most - least);
            assertThat(Xml.number(upright.get(i), "x1")).isCloseTo(1 + 346 * at, within(0.01));
        }
        // Told apart by dashes, not by colour.
        assertThat(upright.stream().map(line -> line.getAttribute("stroke-dasharray"))).doesNotHaveDuplicates();
        assertThat(Xml.texts(svg, "text")).contains("P80: " + RISK.price(0.8), "400 simulated jobs");
    }

    @Test
    void spread_everyOutcome_staysInsideItsFrame() {
        for (Outcome outcome : Outcome.values()) {
            for (UnitStyle style : UnitStyle.values()) {
                assertThat(Frame.outside(Xml.parse(Drawing.spread(RISK, outcome, style).svg()))).as(outcome + " " + style).isEmpty();
            }
        }
    }

    @Test
    void spread_ofAFigureThatNeverChanges_isOneColumn() {
        // A pace changes no film.
        assertThat(columns(Xml.parse(Drawing.spread(RISK, Outcome.FILM, UnitStyle.METRIC).svg()))).hasSize(1);
    }
}
