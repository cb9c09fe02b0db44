package io.github.bedjoint.drawing;

import io.github.bedjoint.job.JobCost;
import io.github.bedjoint.layout.PanelLayout;
import io.github.bedjoint.survey.Edge;
import io.github.bedjoint.survey.Side;
import io.github.bedjoint.survey.Wall;
import io.github.bedjoint.survey.WallAreas;
import io.github.bedjoint.texture.Surface;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Print;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Each wall: areas, surface, edges, its elevation with the panels, and the joint in section. */
final class WallPart {
    private final PageWriter page;
    private final JobCost cost;
    private final Map<Surface, String> drawn = new HashMap<>();

    WallPart(PageWriter page) {
        this.page = page;
        this.cost = page.cost;
    }

    void write() {
        page.section("walls", "Walls");
        for (int i = 0; i < cost.layouts().size(); i++) {
            wall(cost.layouts().get(i), cost.areas().walls().get(i));
        }
        page.end();
    }

    private void wall(PanelLayout layout, WallAreas areas) {
        Wall wall = layout.wall();
        page.out.element("h3", wall.name());
        page.figures();
        page.figure("Visible area", page.area(areas.visibleM2()), Optional.of(areas.working()));
        page.figure("Measured area, deducting " + cost.job().deduction(), page.area(areas.measuredM2()), Optional.empty());
        page.figure("Texture-adjusted area", page.area(areas.developedM2()), Optional.empty());
        page.figure("Developed area ratio", Print.fixed(wall.surface().areaRatio(), 4), Optional.of(wall.surface().working()));
        areas.uncertainty().ifPresent(found -> page.figure(
                "Standard uncertainty of ratio and texture-adjusted area",
                Print.fixed(found.ratio().standard(), 4) + ", " + page.area(found.developedM2()), Optional.of(found.working())));
        page.out.close();
        page.out.element("p", "Surface: " + wall.surface().describe(page.style) + ". Reached from: " + WallSketch.words(wall.access()) + ".");
        page.out.element("p", "Edges: " + edges(wall) + ".");
        if (layout.isPossible()) {
            page.out.element("p", layout.count() + ", seams " + Measure.LENGTH.print(layout.seamM(), page.style) + " long.");
            page.fold(layout.working());
        } else {
            layout.reasons().forEach(reason -> page.out.element("p", "No layout: " + reason + "."));
        }
        page.wide(Drawing.wall(layout, page.style));
        if (wall.surface().localStretch() > 0) {
            String before = drawn.putIfAbsent(wall.surface(), wall.name());
            if (before == null) {
                page.narrow(Drawing.joint(wall.surface(), layout.film(), cost.job().takeUp(), page.style));
            } else {
                page.out.element("p", "Whether the film follows is drawn with " + before + ", which has the same surface.");
            }
        }
    }

    private String edges(Wall wall) {
        List<String> edges = new ArrayList<>();
        for (Side side : List.of(Side.LEFT, Side.RIGHT, Side.BOTTOM, Side.TOP)) {
            Edge edge = wall.edge(side);
            edges.add(WallSketch.words(side) + " " + WallSketch.words(edge.kind())
                    + (edge.extraSteps() > 0 ? " with " + page.cut(edge.extraSteps()) + " of film beyond" : "") + (edge.sealed() ? ", sealed" : ""));
        }
        return String.join("; ", edges);
    }
}
