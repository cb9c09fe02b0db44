package io.github.bedjoint.layout;

import io.github.bedjoint.units.Steps;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/**
 * Joins a piece that is longer than any roll across: at the cheapest places that the seam rules allow, of those in the fewest pieces,
 * and of those in the most equal ones. The least overlap is always enough: a place is free to move, and a wider overlap only takes film.
 *
 * @param regions  the wall
 * @param rates    what film, panels, seams and cut-outs cost
 * @param feed     how much film is fed in along the pieces
 * @param rules    where joints may lie
 * @param longest  greatest length of film, more than two overlaps
 * @param overlap  overlap of a joint
 * @param least    least length of a piece, overlaps included and bleed at its end not
 * @param lowFirst whether the lower piece, or the left one, hangs first, so that the edge on top is the other's
 */
record JointsAcross(
        WallRegions regions, Rates rates, Feed feed, SeamRules rules, long longest, long overlap, long least, boolean lowFirst) {

    /**
     * Where pieces begin, from low to high and the first included; nothing where the rules leave no way. One piece more than needed is
     * tried where the joints may cost less by as much.
     */
    List<Long> begins(Rect piece) {
        AcrossSearch search = new AcrossSearch(this, piece);
        Optional<AcrossSearch.Node> fewest = search.in(search.fewest());
        double oneMore = rates.filmPerM() * Steps.toM(overlap + feed.fedSteps(overlap)) + rates.perPanel();
        Optional<AcrossSearch.Node> more = fewest.filter(top -> top.cost() <= oneMore).isPresent()
                ? Optional.empty()
                : search.in(search.fewest() + 1).filter(top -> fewest.isEmpty() || top.cost() + oneMore < fewest.get().cost());
        Deque<Long> begins = new ArrayDeque<>();
        for (AcrossSearch.Node end = more.or(() -> fewest).orElse(null); end != null && end.below() != null; end = end.below()) {
            begins.addFirst(end.below().begin());
        }
        return List.copyOf(begins);
    }

    /** What a joint costs. */
    double cost(Rect piece, long begin) {
        return seamCost(piece.u1(), piece.u2(), begin)
                + rates.perCutOut() * regions.cutOuts(piece.u1(), piece.u2(), begin, begin + overlap);
    }

    /** What the seam of a joint costs, masonry joints included; infinite where they forbid it. */
    double seamCost(long from, long to, long begin) {
        double perM = rates.seamPerM() + rules.acrossJointPerM(regions.frame().direction(), edge(begin));
        return perM == 0 || Double.isInfinite(perM)
                ? perM
                : perM * regions.seen().areaM2(new Rect(from, to, begin, begin + overlap)) / Steps.toM(overlap);
    }

    /** The nearest place above, or below, at which the edge on top keeps off the joints of the masonry. */
    long keptOff(long begin, boolean up) {
        return rules.across(regions.frame().direction())
                .map(phase -> begin + phase.keptOff(edge(begin), up) - edge(begin))
                .orElse(begin);
    }

    /** The edge on top of a joint whose upper piece begins there. */
    private long edge(long begin) {
        return lowFirst ? begin : begin + overlap;
    }
}
