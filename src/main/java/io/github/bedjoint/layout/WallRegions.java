package io.github.bedjoint.layout;

import io.github.bedjoint.survey.Opening;
import io.github.bedjoint.survey.Outline;
import io.github.bedjoint.survey.Point;
import io.github.bedjoint.survey.Side;
import io.github.bedjoint.survey.Wall;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A wall as the planner sees it, in a frame: what is seen covered, what film must cover (with bleeds, tucks and turned-in rims), and
 * the openings.
 *
 * @param frame    how the wall is turned
 * @param seen     the outline without the openings that stay open
 * @param needed   what film must cover
 * @param openings the openings that stay open, and the part of each that is cut out
 */
record WallRegions(Frame frame, Region seen, Region needed, List<Hole> openings) {

    /** An opening and the part of it that no film is needed on; that part may reach beyond the outline where a door stands on it. */
    record Hole(Rect opening, Rect out) {}

    /** The regions, or empty where the extra lengths of the edges meet across a notch of the outline. */
    static Optional<WallRegions> of(Wall wall, Frame frame) {
        Optional<Outline> grown = wall.outline().grown(
                wall.edge(Side.LEFT).extraSteps(), wall.edge(Side.RIGHT).extraSteps(),
                wall.edge(Side.BOTTOM).extraSteps(), wall.edge(Side.TOP).extraSteps());
        return grown.map(needed -> of(wall, frame, needed));
    }

    private static WallRegions of(Wall wall, Frame frame, Outline grown) {
        List<Hole> holes = new ArrayList<>();
        List<Line> seen = lines(wall.outline(), frame);
        List<Line> needed = lines(grown, frame);
        for (Opening opening : wall.openings()) {
            if (opening.staysOpen()) {
                Hole hole = hole(wall, opening, frame);
                holes.add(hole);
                addRim(seen, hole.opening());
                addRim(needed, hole.out());
            }
        }
        return new WallRegions(frame, Region.of(seen), Region.of(needed), List.copyOf(holes));
    }

    private static Hole hole(Wall wall, Opening o, Frame frame) {
        return new Hole(
                frame.in(o.leftSteps(), o.bottomSteps(), o.rightSteps(), o.topSteps()),
                frame.in(
                        o.leftSteps() + inset(wall, o, Side.LEFT),
                        o.bottomSteps() + inset(wall, o, Side.BOTTOM),
                        o.rightSteps() - inset(wall, o, Side.RIGHT),
                        o.topSteps() - inset(wall, o, Side.TOP)));
    }

    /** How far film reaches into the opening from a side: what is turned in, or less than nothing where the wall ends there too. */
    private static long inset(Wall wall, Opening o, Side side) {
        Outline outline = wall.outline();
        for (int i = 0; i < outline.points().size(); i++) {
            if (outline.side(i) == side && covers(outline.point(i), outline.point(i + 1), o, side)) {
                return -wall.edge(side).extraSteps();
            }
        }
        return o.turnSteps();
    }

    private static boolean covers(Point a, Point b, Opening o, Side side) {
        return switch (side) {
            case LEFT, RIGHT -> a.xSteps() == (side == Side.LEFT ? o.leftSteps() : o.rightSteps())
                    && Math.min(a.ySteps(), b.ySteps()) <= o.bottomSteps() && Math.max(a.ySteps(), b.ySteps()) >= o.topSteps();
            case BOTTOM, TOP -> a.ySteps() == (side == Side.BOTTOM ? o.bottomSteps() : o.topSteps())
                    && a.ySteps() == b.ySteps()
                    && Math.min(a.xSteps(), b.xSteps()) <= o.leftSteps() && Math.max(a.xSteps(), b.xSteps()) >= o.rightSteps();
        };
    }

    private static List<Line> lines(Outline outline, Frame frame) {
        List<Line> lines = new ArrayList<>();
        for (int i = 0; i < outline.points().size(); i++) {
            Point a = outline.point(i);
            Point b = outline.point(i + 1);
            if (frame.u(a) != frame.u(b)) {
                lines.add(Line.of(frame.u(a), frame.v(a), frame.u(b), frame.v(b)));
            }
        }
        return lines;
    }

    private static void addRim(List<Line> lines, Rect r) {
        if (!r.isEmpty()) {
            lines.add(new Line(r.u1(), r.v1(), r.u2(), r.v1()));
            lines.add(new Line(r.u1(), r.v2(), r.u2(), r.v2()));
        }
    }

    /** Openings of which something is cut out of a panel. */
    int cutOuts(Rect panel) {
        return (int) openings.stream().filter(h -> !panel.and(h.opening()).and(h.out()).isEmpty()).count();
    }

    /** The area cut out of a panel over openings, in square metres. */
    double cutOutM2(Rect panel) {
        return openings.stream().mapToDouble(h -> panel.and(h.opening()).and(h.out()).areaM2()).sum();
    }
}
