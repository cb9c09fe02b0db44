package io.github.bedjoint.layout;

import io.github.bedjoint.survey.MovementJoint;
import io.github.bedjoint.survey.Opening;
import io.github.bedjoint.survey.Outline;
import io.github.bedjoint.survey.Point;
import io.github.bedjoint.survey.Side;
import io.github.bedjoint.survey.Wall;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.LongStream;

/**
 * A wall as the planner sees it, in a frame: what is seen covered, what film must cover (with bleeds, tucks and turned-in rims), and
 * the openings.
 *
 * @param frame    how the wall is turned
 * @param seen     the outline without the openings that stay open
 * @param needed   what film must cover
 * @param openings the openings that stay open, and the part of each that is cut out
 * @param uBars    movement joints between strips, in order
 * @param vBars    movement joints across strips, in order
 * @param uCorners edges of the outline that run along the strips
 * @param cuts     what is cut out of openings
 */
record WallRegions(
        Frame frame, Region seen, Region needed, List<Hole> openings, long[] uBars, long[] vBars, long[] uCorners,
        Rect[] cuts) {

    /**
     * An opening, the part of it that no film is needed on (which may reach beyond the outline where a door stands on it), and whether
     * no film may ever lie over it.
     */
    record Hole(Rect opening, Rect out, boolean neverCovered) {}

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
        return new WallRegions(frame, Region.of(seen), Region.of(needed), List.copyOf(holes), bars(wall, frame, true),
                bars(wall, frame, false), corners(wall.outline(), frame),
                holes.stream().map(h -> h.opening().and(h.out())).filter(cut -> !cut.isEmpty()).toArray(Rect[]::new));
    }

    private static long[] bars(Wall wall, Frame frame, boolean between) {
        return wall.movementJoints().stream()
                .filter(joint -> joint.upright() == (frame.direction() == Direction.DROPS) == between)
                .mapToLong(joint -> between ? frame.place(joint.atSteps()) : joint.atSteps())
                .sorted()
                .distinct()
                .toArray();
    }

    private static long[] corners(Outline outline, Frame frame) {
        return IntStream.range(0, outline.points().size())
                .filter(i -> frame.u(outline.point(i)) == frame.u(outline.point(i + 1)))
                .mapToLong(i -> frame.u(outline.point(i)))
                .sorted()
                .distinct()
                .toArray();
    }

    /** The stretches of u that need film, in order; a movement joint ends one and begins the next. */
    List<long[]> stretches() {
        List<long[]> all = new ArrayList<>();
        for (long[] stretch : needed.stretches()) {
            long begin = stretch[0];
            for (long bar : uBars) {
                if (begin < bar && bar < stretch[1]) {
                    all.add(new long[] {begin, bar});
                    begin = bar;
                }
            }
            all.add(new long[] {begin, stretch[1]});
        }
        return all;
    }

    boolean isBar(long u) {
        return Arrays.binarySearch(uBars, u) >= 0;
    }

    /** Whether a movement joint crosses the strip between two places along it. */
    boolean hasBar(long low, long high) {
        for (long bar : vBars) {
            if (low <= bar && bar <= high) {
                return true;
            }
        }
        return false;
    }

    /** The heights at which a piece of the wall, or what is cut out of it, has a corner or meets the piece's sides. */
    long[] levels(Rect piece) {
        LongStream.Builder levels = LongStream.builder();
        for (int i = seen.slabBeyond(piece.u1()); i < seen.slabs() && seen.from(i) < piece.u2(); i++) {
            for (Region.Cell cell : seen.cells(i)) {
                for (long u : new long[] {Math.max(seen.from(i), piece.u1()), Math.min(seen.to(i), piece.u2())}) {
                    levels.add(cell.low().floorAt(u)).add(cell.high().ceilAt(u));
                }
            }
        }
        for (Rect cut : cuts) {
            levels.add(cut.v1()).add(cut.v2());
        }
        return levels.build().toArray();
    }

    private static Hole hole(Wall wall, Opening o, Frame frame) {
        return new Hole(
                frame.in(o.leftSteps(), o.bottomSteps(), o.rightSteps(), o.topSteps()),
                frame.in(
                        o.leftSteps() + inset(wall, o, Side.LEFT),
                        o.bottomSteps() + inset(wall, o, Side.BOTTOM),
                        o.rightSteps() - inset(wall, o, Side.RIGHT),
                        o.topSteps() - inset(wall, o, Side.TOP)),
                o.treatment() == Opening.Treatment.NEVER_COVERED);
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
    int cutOuts(long u1, long u2, long v1, long v2) {
        int count = 0;
        for (Rect cut : cuts) {
            count += cut.u1() < u2 && u1 < cut.u2() && cut.v1() < v2 && v1 < cut.v2() ? 1 : 0;
        }
        return count;
    }

    /** Openings that reach into a gap along a strip and nowhere beyond it. */
    int cutOutsWithin(long u1, long u2, long low, long high) {
        int count = 0;
        for (Rect cut : cuts) {
            count += cut.u1() < u2 && u1 < cut.u2() && cut.v1() >= low && cut.v2() <= high ? 1 : 0;
        }
        return count;
    }

    /** The area cut out of a panel over openings, in square metres. */
    double cutOutM2(Rect panel) {
        return Arrays.stream(cuts).mapToDouble(cut -> panel.and(cut).areaM2()).sum();
    }
}
