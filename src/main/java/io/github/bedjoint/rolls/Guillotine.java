package io.github.bedjoint.rolls;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToLongFunction;

/** Finds out which cuts part pieces that do not overlap. */
final class Guillotine {

    private Guillotine() {}

    static CutKind cuts(List<PlacedCut> pieces) {
        boolean free = false;
        boolean lone = true;
        for (List<PlacedCut> section : split(pieces, PlacedCut::alongSteps, PlacedCut::alongEndSteps)) {
            lone &= section.size() == 1;
            free |= !isParted(section, false);
        }
        return lone ? CutKind.CROSS : free ? CutKind.FREE : CutKind.GUILLOTINE;
    }

    /** Parts the pieces by slits or by cross cuts, each part by the other ones, until every piece is alone. */
    private static boolean isParted(List<PlacedCut> pieces, boolean along) {
        if (pieces.size() == 1) {
            return true;
        }
        List<List<PlacedCut>> parts = along
                ? split(pieces, PlacedCut::alongSteps, PlacedCut::alongEndSteps)
                : split(pieces, PlacedCut::acrossSteps, PlacedCut::acrossEndSteps);
        return parts.size() > 1 && parts.stream().allMatch(part -> isParted(part, !along));
    }

    private static List<List<PlacedCut>> split(
            List<PlacedCut> pieces, ToLongFunction<PlacedCut> start, ToLongFunction<PlacedCut> end) {
        List<List<PlacedCut>> parts = new ArrayList<>();
        long reached = Long.MIN_VALUE;
        for (PlacedCut piece : pieces.stream().sorted(Comparator.comparingLong(start)).toList()) {
            if (parts.isEmpty() || start.applyAsLong(piece) >= reached) {
                parts.add(new ArrayList<>());
            }
            parts.get(parts.size() - 1).add(piece);
            reached = Math.max(reached, end.applyAsLong(piece));
        }
        return parts;
    }
}
