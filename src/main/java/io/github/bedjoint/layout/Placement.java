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
    private final SeamRules rules;
    private final Feed across;
    private final Feed lengthwise;
    private final boolean ascending;
    private final boolean lowPieceFirst;
    private final List<Panel> panels = new ArrayList<>();
    private final List<Seam> seams = new ArrayList<>();

    /**
     * The strips are given in the order of u; {@code ascending} says whether they are also hung in it, {@code lowPieceFirst} whether
     * the pieces of one are hung in the order of v.
     */
    Placement(
            Wall wall, WallRegions regions, Cutting cutting, SeamRules rules, Feed across, Feed lengthwise, List<Strip> strips, boolean ascending,
            boolean lowPieceFirst) {
        this.wall = wall;
        this.regions = regions;
        this.rules = rules;
        this.across = across;
        this.lengthwise = lengthwise;
        this.ascending = ascending;
        this.lowPieceFirst = lowPieceFirst;
        List<List<Rect>> pieces = new ArrayList<>();
        for (Strip strip : strips) {
            List<Rect> cut = new ArrayList<>(cutting.pieces(strip));
            joints(cut);
            if (!lowPieceFirst) {
                Collections.reverse(cut);
            }
            pieces.add(cut);
        }
        for (int i = 0; i < strips.size(); i++) {
            int strip = ascending ? i : strips.size() - 1 - i;
            int before = ascending ? strip - 1 : strip + 1;
            hang(strip + 1, pieces.get(strip), i == 0 ? List.of() : pieces.get(before));
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

    private void hang(int strip, List<Rect> pieces, List<Rect> neighbours) {
        for (int k = 0; k < pieces.size(); k++) {
            panels.add(panel(strip, pieces.get(k), pieces.subList(0, k), neighbours));
        }
    }

    private Panel panel(int strip, Rect piece, List<Rect> same, List<Rect> neighbours) {
        List<Rect> hung = new ArrayList<>();
        long lap = 0;
        for (Rect below : neighbours) {
            Rect both = piece.and(below);
            if (!both.isEmpty()) {
                hung.add(both);
                Rect seen = regions.seen().around(both);
                lap = Math.max(lap, seen.u2() - seen.u1());
            }
        }
        same.stream().map(piece::and).filter(both -> !both.isEmpty()).forEach(hung::add);
        double overlap = regions.seen().areaM2(hung);
        double seen = regions.seen().areaM2(piece);
        double cutOut = regions.cutOutM2(piece);
        double bleed = Math.max(0, regions.needed().areaM2(piece) - seen);
        double total = Steps.toM(piece.u2() - piece.u1()) * Steps.toM(piece.v2() - piece.v1());
        Rect onWall = regions.seen().around(piece);
        Fed fed = new Fed(
                across.fedSteps(onWall.u2() - onWall.u1()), lengthwise.fedSteps(onWall.v2() - onWall.v1()), across, lengthwise);
        long cutWidth = piece.u2() - piece.u1() + fed.widthSteps();
        long cutLength = piece.v2() - piece.v1() + fed.lengthSteps();
        double takeUp = Steps.toM(cutWidth) * Steps.toM(cutLength) - total;
        return new Panel(
                panels.size() + 1,
                wall.name(),
                regions.frame().direction(),
                strip,
                regions.frame().lowerLeft(piece),
                cutWidth,
                cutLength,
                lap,
                piece.u2() - piece.u1() - (onWall.u2() - onWall.u1()),
                onWall.v2() - onWall.v1(),
                fed,
                regions.cutOuts(piece.u1(), piece.u2(), piece.v1(), piece.v2()),
                new Places(seen - overlap, overlap, bleed, total - seen - bleed - cutOut, cutOut, takeUp));
    }

    /** A seam in a forbidden joint, which a fit without search may bring about, has no price. */
    private double jointPerM(long edge) {
        double perM = rules.besideJointPerM(regions.frame(), edge);
        return Double.isInfinite(perM) ? 0 : perM;
    }

    private boolean drops() {
        return regions.frame().direction() == Direction.DROPS;
    }

    private void seam(List<Rect> lower, List<Rect> upper, long from, long to) {
        List<Rect> both = new ArrayList<>();
        for (Rect a : lower) {
            for (Rect b : upper) {
                both.add(a.and(b));
            }
        }
        both.removeIf(Rect::isEmpty);
        double area = regions.seen().areaM2(both);
        if (area > 0) {
            long place = Math.min(regions.frame().place(from), regions.frame().place(to));
            seams.add(new Seam(drops(), place, to - from, area / Steps.toM(to - from), regions.frame().side(!ascending),
                    jointPerM(ascending ? from : to)));
        }
    }

    /** The joints between pieces of one strip, which are given from low to high. */
    private void joints(List<Rect> pieces) {
        for (int k = 1; k < pieces.size(); k++) {
            Rect both = pieces.get(k - 1).and(pieces.get(k));
            double area = both.isEmpty() ? 0 : regions.seen().areaM2(both);
            if (area > 0) {
                Side low = drops() ? Side.BOTTOM : Side.LEFT;
                seams.add(new Seam(!drops(), both.v1(), both.v2() - both.v1(), area / Steps.toM(both.v2() - both.v1()),
                        lowPieceFirst ? low : low.opposite(),
                        rules.acrossJointPerM(regions.frame().direction(), lowPieceFirst ? both.v1() : both.v2())));
            }
        }
    }
}
