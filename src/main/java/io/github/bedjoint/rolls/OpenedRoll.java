package io.github.bedjoint.rolls;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * One roll of a plan with its pieces.
 *
 * @param stockId the {@link Stock} row it is taken from
 * @param placed the pieces at their places, in cutting order: along the roll, then across
 * @param usedSteps from the end of the lead to the end of the last piece, in steps of 12.5 micrometres
 * @param remnantSteps usable length left behind the last piece, in steps
 * @param credit what the remnant is worth under the {@link RemnantRule}, in minor money units
 */
public record OpenedRoll(String stockId, List<PlacedCut> placed, long usedSteps, long remnantSteps, long credit) {

    private static final Comparator<PlacedCut> CUTTING_ORDER = Comparator.comparingLong(PlacedCut::alongSteps)
            .thenComparing(PlacedCut::acrossSteps)
            .thenComparing(PlacedCut::cutId);

    /**
     * Copies the list and puts it in cutting order.
     *
     * @param stockId as above
     * @param placed as above, in any order
     * @param usedSteps as above
     * @param remnantSteps as above
     * @param credit as above
     */
    public OpenedRoll {
        placed = placed.stream().sorted(CUTTING_ORDER).toList();
    }

    /**
     * A roll with pieces at given places; works out what is used and left.
     *
     * @param stock the row it is taken from
     * @param placed the pieces
     * @param terms lead, tail and remnant rule
     * @return the roll
     */
    public static OpenedRoll of(Stock stock, List<PlacedCut> placed, CuttingTerms terms) {
        long used = placed.stream().mapToLong(PlacedCut::alongEndSteps).max().orElse(0);
        long remnant = terms.usableSteps(stock) - used;
        return new OpenedRoll(stock.id(), placed, used, remnant, terms.remnants().credit(stock, remnant));
    }

    /**
     * A roll with one piece across, one behind the other at the left edge.
     *
     * @param stock the row it is taken from
     * @param pieces the pieces in cutting order, none turned
     * @param terms lead, tail, gap and remnant rule
     * @return the roll
     */
    public static OpenedRoll inLine(Stock stock, List<Cut> pieces, CuttingTerms terms) {
        List<PlacedCut> placed = new ArrayList<>();
        long along = 0;
        for (Cut piece : pieces) {
            placed.add(PlacedCut.of(piece, along, 0, false));
            along += piece.lengthSteps() + terms.gapSteps();
        }
        return of(stock, placed, terms);
    }

    /**
     * What is cut from it.
     *
     * @return ids of the cuts in cutting order, a cut as often as it is cut from this roll
     */
    public List<String> pieces() {
        return placed.stream().map(PlacedCut::cutId).toList();
    }

    /**
     * The parts that cross cuts from edge to edge leave.
     *
     * @return the pieces of each part, in cutting order; a part of one piece has nothing beside it
     */
    public List<List<PlacedCut>> sections() {
        List<List<PlacedCut>> sections = new ArrayList<>();
        long end = -1;
        for (PlacedCut piece : placed) {
            if (sections.isEmpty() || piece.alongSteps() >= end) {
                sections.add(new ArrayList<>());
            }
            sections.get(sections.size() - 1).add(piece);
            end = Math.max(end, piece.alongEndSteps());
        }
        return sections;
    }

    /**
     * How much of its length holds pieces; the rest of what is used are gaps.
     *
     * @return steps, at most {@link #usedSteps()}
     */
    public long coveredSteps() {
        long sum = 0;
        for (List<PlacedCut> section : sections()) {
            long end = section.stream().mapToLong(PlacedCut::alongEndSteps).max().orElseThrow();
            sum += end - section.get(0).alongSteps();
        }
        return sum;
    }

    /**
     * The plainest cuts that part its pieces.
     *
     * @return the kind
     */
    public CutKind cuts() {
        return CutKind.of(placed);
    }
}
