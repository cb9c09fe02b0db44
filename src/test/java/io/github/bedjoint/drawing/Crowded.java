package io.github.bedjoint.drawing;

import io.github.bedjoint.cutting.RollPlanner;
import io.github.bedjoint.film.Film;
import io.github.bedjoint.layout.Direction;
import io.github.bedjoint.layout.LayoutPlanner;
import io.github.bedjoint.layout.Panel;
import io.github.bedjoint.layout.PanelLayout;
import io.github.bedjoint.rolls.Cut;
import io.github.bedjoint.rolls.Stock;
import io.github.bedjoint.survey.RandomWalls;
import io.github.bedjoint.survey.Wall;
import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.UnitStyle;
import java.util.ArrayList;
import java.util.List;

/** Drawings of walls from fixed seeds, in drops and bands, with wide and narrow film, and of the rolls their panels are cut from. */
final class Crowded {
    private Crowded() {}

    static List<Drawing> drawings() {
        List<Drawing> drawings = new ArrayList<>();
        for (long seed = 1; seed <= 8; seed++) {
            Wall wall = seed % 2 == 0 ? RandomWalls.gabled(seed) : RandomWalls.stepped(seed);
            UnitStyle style = seed % 4 < 2 ? UnitStyle.METRIC : UnitStyle.IMPERIAL;
            for (double roll : new double[] {0.3, 1.37}) {
                Direction direction = seed % 3 == 0 ? Direction.BANDS : Direction.DROPS;
                PanelLayout layout = LayoutPlanner.withDefaults().withDirection(direction).withOverlap(Door.length(0.02)).plan(wall, Film.of("film", Door.length(roll)));
                drawings.add(Drawing.wall(layout, style));
                drawings.add(rolls(layout, style));
            }
        }
        return drawings;
    }

    private static Drawing rolls(PanelLayout layout, UnitStyle style) {
        List<Cut> cuts = new ArrayList<>();
        for (Panel panel : layout.panels()) {
            cuts.add(new Cut(panel.wall() + " " + panel.number(), panel.cutWidthSteps(), panel.cutLengthSteps(), 1, panel.wall()));
        }
        Stock stock = new Stock("S", layout.film().printableWidthSteps(), 2_000_000, 100, Stock.UNLIMITED, "");
        return Drawing.rolls("film", RollPlanner.withDefaults().plan(cuts, List.of(stock)), 0, style);
    }
}
