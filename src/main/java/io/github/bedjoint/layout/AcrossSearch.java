package io.github.bedjoint.layout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.LongConsumer;
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
    private final long[] levels;

    AcrossSearch(JointsAcross joints, Rect piece) {
        this.joints = joints;
        this.piece = piece;
        Rect seen = joints.regions().seen().around(piece);
        line = new FilmLine(joints.feed(), List.<long[]>of(new long[] {seen.v1(), seen.v2()}));
        // Bleed at an end is not counted; film beside a higher part of the wall, which may be all bleed, is.
        first = Math.min(seen.v1(), piece.v1() + joints.least()) + joints.least() - joints.overlap();
        last = Math.max(seen.v2(), piece.v2() - joints.least()) - joints.least();
        ban = Ban.across(joints.regions(), joints.rules(), joints.overlap(), piece);
        levels = joints.regions().levels(piece);
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
        Window[] own = new Window[count];
        for (int k = 1; k < count; k++) {
            own[k] = new Window(low[k], high[k]);
            own[k].addCorners(alike[k]);
        }
        List<Node> layer = List.of(new Node(piece.v1(), 0, 0, null));
        for (int k = 1; k < count; k++) {
            Window window = own[k].copy();
            if (k > 1) {
                own[k - 1].forEach(place -> window.addBeside(line.end(place, joints.longest()) - joints.overlap()));
            }
            if (k + 1 < count) {
                own[k + 1].forEach(place -> window.addBeside(line.begin(place + joints.overlap(), joints.longest())));
            }
            layer = layer(layer, window);
        }
        return over(layer, piece.v2(), piece.v2(), 0);
    }

    /** The places tried for one joint, within reach from both ends of the piece. */
    private final class Window {
        private final long low;
        private final long high;
        private long[] places = new long[16];
        private int size;

        Window(long low, long high) {
            this.low = Math.max(low, first);
            this.high = Math.min(high, last);
        }

        Window copy() {
            Window copy = new Window(low, high);
            copy.places = places.clone();
            copy.size = size;
            return copy;
        }

        void addCorners(long alike) {
            addBeside(alike);
            addBeside(low);
            addBeside(high);
            for (long level : levels) {
                addBeside(level);
                addBeside(level - joints.overlap());
            }
            for (int i = 0; i < ban.size(); i++) {
                addBeside(ban.from(i));
                addBeside(ban.to(i));
            }
        }

        /** The place and those next to it off the joints of the masonry. */
        void addBeside(long place) {
            add(place);
            add(joints.keptOff(place, false));
            add(joints.keptOff(place, true));
        }

        private void add(long place) {
            if (place < low || place > high || !ban.allows(place)) {
                return;
            }
            for (int i = 0; i < size; i++) {
                if (places[i] == place) {
                    return;
                }
            }
            if (size == places.length) {
                places = Arrays.copyOf(places, 2 * size);
            }
            places[size++] = place;
        }

        void forEach(LongConsumer each) {
            for (int i = 0; i < size; i++) {
                each.accept(places[i]);
            }
        }
    }

    private List<Node> layer(List<Node> below, Window window) {
        List<Node> layer = new ArrayList<>();
        window.forEach(place -> {
            double cost = joints.cost(piece, place);
            if (!Double.isInfinite(cost)) {
                over(below, place, place + joints.overlap(), cost).ifPresent(layer::add);
            }
        });
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
