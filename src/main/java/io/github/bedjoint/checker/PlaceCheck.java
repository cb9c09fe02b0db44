package io.github.bedjoint.checker;

import io.github.bedjoint.rolls.Cut;
import io.github.bedjoint.rolls.CuttingTerms;
import io.github.bedjoint.rolls.OpenedRoll;
import io.github.bedjoint.rolls.PlacedCut;
import io.github.bedjoint.rolls.Stock;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/** Checks the places on one roll: each panel within the roll, none over another, and no cuts that are not allowed. */
final class PlaceCheck {

    /** A panel with its gap, as a rectangle of whole steps; the ends are not part of it. */
    private record Box(String id, long left, long right, long start, long end) {}

    private final Stock row;
    private final CuttingTerms terms;
    private final List<Box> boxes = new ArrayList<>();
    private String fault = "";

    private PlaceCheck(Stock row, CuttingTerms terms) {
        this.row = row;
        this.terms = terms;
    }

    /** What is wrong, or nothing. */
    static String fault(Map<String, Cut> cuts, Stock row, CuttingTerms terms, OpenedRoll roll) {
        PlaceCheck check = new PlaceCheck(row, terms);
        for (PlacedCut piece : roll.placed()) {
            check.take(cuts.get(piece.cutId()), piece);
        }
        if (check.fault.isEmpty()) {
            check.boxes.sort(Comparator.comparingLong(Box::start).thenComparing(Box::left));
            check.overlaps();
        }
        if (check.fault.isEmpty()) {
            check.cuts();
        }
        return check.fault;
    }

    private void fail(String text) {
        if (fault.isEmpty()) {
            fault = text;
        }
    }

    private void take(Cut cut, PlacedCut piece) {
        String id = "cut " + cut.id();
        if (piece.turned() && !cut.rotate()) {
            fail(id + " is turned, which it does not allow");
        }
        long width = piece.turned() ? cut.lengthSteps() : cut.widthSteps();
        long length = piece.turned() ? cut.widthSteps() : cut.lengthSteps();
        if (piece.widthSteps() != width || piece.lengthSteps() != length) {
            fail(id + " is " + width + " by " + length + " steps, the plan says " + piece.widthSteps() + " by "
                    + piece.lengthSteps());
        }
        if (piece.alongSteps() < 0 || piece.acrossSteps() < 0) {
            fail(id + " lies before the start of roll " + row.id() + " or over its edge");
        } else if (width > row.widthSteps()) {
            fail(id + " is wider than roll " + row.id());
        } else if (piece.acrossSteps() > row.widthSteps() - width) {
            fail(id + " lies over the edge of roll " + row.id());
        } else if (fault.isEmpty()) {
            long gap = terms.gapSteps();
            boxes.add(new Box(
                    cut.id(), piece.acrossSteps(), piece.acrossSteps() + width + gap, piece.alongSteps(),
                    Math.addExact(piece.alongSteps(), length + gap)));
        }
    }

    private void overlaps() {
        for (int i = 0; i < boxes.size(); i++) {
            Box one = boxes.get(i);
            for (int k = i + 1; k < boxes.size() && boxes.get(k).start < one.end; k++) {
                Box other = boxes.get(k);
                if (one.left < other.right && other.left < one.right) {
                    fail("cuts " + one.id + " and " + other.id + " overlap on roll " + row.id() + " or leave less than the gap");
                    return;
                }
            }
        }
    }

    private void cuts() {
        boolean fine = switch (terms.cuts()) {
            case CROSS -> parts(boxes, true).size() == boxes.size();
            case GUILLOTINE -> isParted(boxes);
            case FREE -> true;
        };
        if (!fine) {
            fail("the pieces of roll " + row.id() + " do not part by " + terms.cuts() + " cuts");
        }
    }

    private static boolean isParted(List<Box> some) {
        if (some.size() < 2) {
            return true;
        }
        List<List<Box>> parts = parts(some, true);
        if (parts.size() == 1) {
            parts = parts(some, false);
        }
        return parts.size() > 1 && parts.stream().allMatch(PlaceCheck::isParted);
    }

    /** The groups that straight cuts in one direction leave; gaps belong to the panel before them. */
    private static List<List<Box>> parts(List<Box> some, boolean crossCuts) {
        List<Box> sorted = new ArrayList<>(some);
        sorted.sort(Comparator.comparingLong(box -> crossCuts ? box.start : box.left));
        List<List<Box>> parts = new ArrayList<>();
        long reached = -1;
        for (Box box : sorted) {
            if ((crossCuts ? box.start : box.left) >= reached || parts.isEmpty()) {
                parts.add(new ArrayList<>());
            }
            parts.get(parts.size() - 1).add(box);
            reached = Math.max(reached, crossCuts ? box.end : box.right);
        }
        return parts;
    }
}
