package io.github.bedjoint.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The pieces of film that cover what a strip needs: one for each part of it that hangs together along the strip. */
final class Pieces {
    private Pieces() {}

    /** The pieces from low to high; a gap is bridged where it is no longer than {@code gap} steps. */
    static List<Rect> of(Region needed, Strip strip, long gap) {
        List<Rect> parts = new ArrayList<>();
        for (int i = needed.slabBeyond(strip.from()); i < needed.slabs() && needed.from(i) < strip.to(); i++) {
            long a = Math.max(needed.from(i), strip.from());
            long b = Math.min(needed.to(i), strip.to());
            for (Region.Cell cell : a < b ? needed.cells(i) : new Region.Cell[0]) {
                parts.add(new Rect(
                        a, b,
                        Math.min(cell.low().floorAt(a), cell.low().floorAt(b)),
                        Math.max(cell.high().ceilAt(a), cell.high().ceilAt(b))));
            }
        }
        parts.sort(Comparator.comparingLong(Rect::v1));
        List<Rect> pieces = new ArrayList<>();
        for (Rect part : parts) {
            int last = pieces.size() - 1;
            if (last >= 0 && part.v1() <= pieces.get(last).v2() + gap) {
                Rect p = pieces.get(last);
                pieces.set(last, new Rect(
                        Math.min(p.u1(), part.u1()), Math.max(p.u2(), part.u2()), p.v1(), Math.max(p.v2(), part.v2())));
            } else {
                pieces.add(part);
            }
        }
        return pieces;
    }
}
