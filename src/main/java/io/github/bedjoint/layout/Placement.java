package io.github.bedjoint.layout;

import io.github.bedjoint.survey.Side;
import io.github.bedjoint.survey.Wall;
import io.github.bedjoint.units.Steps;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Turns strips into panels in the order of application, and finds for each where its area ends up. */
final class Placement {
    private final Wall wall;
    private final WallRegions regions;
    private final boolean ascending;
    private final List<Panel> panels = new ArrayList<>();
    private final List<Seam> seams = new ArrayList<>();

    /** The strips are given in the order of u; {@code ascending} says whether they are also hung in it. */
    Placement(Wall wall, WallRegions regions, List<Strip> strips, boolean ascending) {
        this.wall = wall;
        this.regions = regions;
        this.ascending = ascending;
        List<List<Rect>> pieces = new ArrayList<>();
        for (Strip strip : strips) {
            pieces.add(Pieces.of(regions.needed(), strip, 0));
        }
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < strips.size(); i++) {
            order.add(i);
        }
        if (!ascending) {
            Collections.reverse(order);
        }
        for (int i : order) {
            int before = ascending ? i - 1 : i + 1;
            List<Rect> hung = before < 0 || before >= pieces.size() ? List.of() : pieces.get(before);
            for (Rect piece : pieces.get(i)) {
                panels.add(panel(i + 1, piece, hung));
            }
        }
        for (int i = 0; i + 1 < strips.size(); i++) {
            seam(pieces.get(i), pieces.get(i + 1), strips.get(i + 1).from(), strips.get(i).to());
        }
    }

    List<Panel> panels() {
        return panels;
    }

    List<Seam> seams() {
        return seams;
    }

    private Panel panel(int strip, Rect piece, List<Rect> hung) {
        double overlap = 0;
        long lap = 0;
        for (Rect below : hung) {
            Rect both = piece.and(below);
            if (!both.isEmpty()) {
                overlap += regions.seen().areaM2(both);
                Rect seen = regions.seen().around(both);
                lap = Math.max(lap, seen.u2() - seen.u1());
            }
        }
        double seen = regions.seen().areaM2(piece);
        double cutOut = regions.cutOutM2(piece);
        double bleed = Math.max(0, regions.needed().areaM2(piece) - seen);
        double total = Steps.toM(piece.u2() - piece.u1()) * Steps.toM(piece.v2() - piece.v1());
        Rect onWall = regions.seen().around(piece);
        return new Panel(
                panels.size() + 1,
                wall.name(),
                regions.frame().direction(),
                strip,
                regions.frame().lowerLeft(piece),
                piece.u2() - piece.u1(),
                piece.v2() - piece.v1(),
                lap,
                piece.u2() - piece.u1() - (onWall.u2() - onWall.u1()),
                onWall.v2() - onWall.v1(),
                regions.cutOuts(piece),
                new Places(seen - overlap, overlap, bleed, total - seen - bleed - cutOut, cutOut));
    }

    private void seam(List<Rect> lower, List<Rect> upper, long from, long to) {
        double area = 0;
        for (Rect a : lower) {
            for (Rect b : upper) {
                area += regions.seen().areaM2(a.and(b));
            }
        }
        if (area > 0) {
            Side shows = regions.frame().side(!ascending);
            long place = Math.min(regions.frame().place(from), regions.frame().place(to));
            seams.add(new Seam(place, to - from, area / Steps.toM(to - from), shows));
        }
    }
}
