package io.github.bedjoint.layout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import org.jspecify.annotations.Nullable;

/**
 * The cheapest places of joints across one piece, by dynamic programming from joint to joint.
 *
 * <p>What a joint costs changes its course only at corners, so that a cheapest one lies at a corner, as low or high as may be, beside
 * the masonry joint next to such a place, or a full piece away from one of these. Places of equal pieces are tried too, for where all
 * cost the same.
 */
final class AcrossSearch {
    /** A piece that begins there: what the joints up to there cost, the squares of the lengths of film below, and the piece below. */
    record Node(long begin, double cost, double squares, @Nullable Node below) {
        private boolean isBetter(Node other) {
            return Math.abs(cost - other.cost) > Best.SAME * Math.max(1, cost) ? cost < other.cost : squares < other.squares;
        }
    }

    private final JointsAcross joints;
    private final Rect piece;
    private final FilmLine line;
    private final long first;
    private final long last;
    private final Ban ban;
    private final long[] corners;

    AcrossSearch(JointsAcross joints, Rect piece) {
        this.joints = joints;
        this.piece = piece;
        Rect seen = joints.regions().seen().around(piece);
        line = new FilmLine(joints.feed(), List.<long[]>of(new long[] {seen.v1(), seen.v2()}));
        first = seen.v1() + joints.least() - joints.overlap();
        last = seen.v2() - joints.least();
        ban = Ban.across(joints.regions(), joints.rules(), joints.overlap(), piece);
        corners = LongStream.concat(
                        joints.regions().levels(piece).flatMap(level -> LongStream.of(level, level - joints.overlap())), ban.edges())
                .distinct()
                .toArray();
    }

    /** The least number of pieces. */
    int fewest() {
        int count = 1;
        for (long end = line.end(piece.v1(), joints.longest()); end < piece.v2(); count++) {
            end = line.end(end - joints.overlap(), joints.longest());
        }
        return count;
    }

    /** The last piece of the cheapest so many, or empty where the rules leave no way. */
    Optional<Node> in(int count) {
        long[] low = new long[count];
        long[] high = new long[count];
        long[] alike = new long[count];
        low[count - 1] = line.begin(piece.v2(), joints.longest());
        high[0] = piece.v1();
        alike[0] = piece.v1();
        long film = line.filmSteps(piece.v1(), piece.v2()) + (count - 1) * line.filmSteps(first, first + joints.overlap());
        for (int k = 1; k < count; k++) {
            low[count - 1 - k] = line.begin(low[count - k] + joints.overlap(), joints.longest());
            high[k] = line.end(high[k - 1], joints.longest()) - joints.overlap();
            alike[k] = line.end(alike[k - 1], film / count + (k <= film % count ? 1 : 0)) - joints.overlap();
        }
        long[][] own = new long[count][];
        for (int k = 1; k < count; k++) {
            own[k] = beside(low[k], high[k], LongStream.concat(LongStream.of(low[k], high[k], alike[k]), LongStream.of(corners)));
        }
        List<Node> layer = List.of(new Node(piece.v1(), 0, 0, null));
        for (int k = 1; k < count; k++) {
            LongStream.Builder reached = LongStream.builder();
            Arrays.stream(own[k]).forEach(reached);
            if (k > 1) {
                Arrays.stream(own[k - 1]).map(place -> line.end(place, joints.longest()) - joints.overlap()).forEach(reached);
            }
            if (k + 1 < count) {
                Arrays.stream(own[k + 1]).map(place -> line.begin(place + joints.overlap(), joints.longest())).forEach(reached);
            }
            layer = layer(layer, beside(low[k], high[k], reached.build()));
        }
        return over(layer, piece.v2(), piece.v2(), 0);
    }

    /** Places and those next to them off the joints of the masonry, from the least to the greatest. */
    private long[] beside(long low, long high, LongStream places) {
        return places.flatMap(place -> LongStream.of(place, joints.keptOff(place, false), joints.keptOff(place, true)))
                .filter(place -> Math.max(low, first) <= place && place <= Math.min(high, last) && ban.allows(place))
                .distinct()
                .toArray();
    }

    private List<Node> layer(List<Node> below, long[] places) {
        List<Node> layer = new ArrayList<>();
        for (long place : places) {
            double cost = joints.cost(piece, place);
            if (!Double.isInfinite(cost)) {
                over(below, place, place + joints.overlap(), cost).ifPresent(layer::add);
            }
        }
        return layer;
    }

    /** The piece that begins there over the best of those below, which end there too. */
    private Optional<Node> over(List<Node> layer, long begin, long end, double joint) {
        Node best = null;
        for (Node below : layer) {
            long film = line.filmSteps(below.begin(), end);
            if (film <= joints.longest() && end - below.begin() >= joints.least()) {
                Node next = new Node(begin, below.cost() + joint, below.squares() + (double) film * film, below);
                best = best == null || next.isBetter(best) ? next : best;
            }
        }
        return Optional.ofNullable(best);
    }
}
