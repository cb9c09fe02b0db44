package io.github.bedjoint.patterns;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Tries every way to cut the panels from exactly given rolls, roll by roll, within the length that may be wasted.
 *
 * <p>A filling is skipped if one more panel fits, or if a panel in it can change places with a longer one that is left:
 * such a filling is never better than the fuller one. Among like rolls that come last, the longest panel left goes into
 * the next roll. States seen to fail are not tried again.
 */
final class Completion {

    /** What a search found. */
    enum End {
        /** The panels fit; see {@link #patterns}. */
        FITS,
        /** Every way was tried. */
        IMPOSSIBLE,
        /** The work is over. */
        UNSURE
    }

    private static final int MAX_STATES = 100_000;

    /** The search goes a few calls deeper with each roll. */
    private static final int MAX_ROLLS = 600;

    private final Model model;
    private final Work work;
    private final List<Prices> lists;
    private final PatternPool pool;
    private final boolean deep;
    private final Knapsack knapsack;
    private final int[] types;
    private final long[] roomAfter;
    private final int[] open;
    private final Set<String> failed = new HashSet<>();
    private final List<Pattern> done = new ArrayList<>();

    /**
     * Prepares a search.
     *
     * @param deep whether to solve the relaxed problem for what is left after each roll; its prices, where they show that
     *     nothing fits, are added to the lists
     */
    Completion(Model exact, List<Prices> lists, PatternPool pool, boolean deep, Work work) {
        this.model = exact;
        this.pool = pool;
        this.deep = deep;
        this.knapsack = new Knapsack(exact, work);
        this.lists = lists;
        this.work = work;
        types = IntStream.range(0, exact.types())
                .boxed()
                .sorted(Comparator.comparingLong(r -> exact.cap[r]))
                .flatMap(r -> Collections.nCopies(exact.supply[r], r).stream())
                .mapToInt(Integer::intValue)
                .toArray();
        roomAfter = new long[types.length + 1];
        for (int k = types.length - 1; k >= 0; k--) {
            roomAfter[k] = roomAfter[k + 1] + exact.cap[types[k]];
        }
        open = exact.demand.clone();
    }

    List<Pattern> patterns() {
        return List.copyOf(done);
    }

    End run() {
        if (types.length > MAX_ROLLS) {
            return End.UNSURE;
        }
        int known = lists.size();
        boolean fits = next(0);
        if (!fits && !work.isOver()) {
            return End.IMPOSSIBLE;
        }
        lists.subList(known, lists.size()).clear();
        return fits ? End.FITS : End.UNSURE;
    }

    private boolean next(int roll) {
        long load = model.load(open);
        if (load == 0) {
            return true;
        }
        if (roll == types.length || load > roomAfter[roll] || work.isOver() || isOverpriced(roll)) {
            return false;
        }
        String state = state(roll);
        if (failed.contains(state) || deep && types.length - roll > 2 && isUncovered(roll)) {
            return false;
        }
        long waste = roomAfter[roll] - load;
        int type = types[roll];
        int[] counts = new int[open.length];
        boolean last = type == types[types.length - 1];
        int first = 0;
        while (open[first] == 0) {
            first++;
        }
        if (!last || model.fits(first, type)) {
            if (last) {
                counts[first]++;
                open[first]--;
            }
            long room = model.cap[type] - (last ? model.size[first] : 0);
            if (fill(roll, last ? first : 0, room, waste, counts)) {
                return true;
            }
            if (last) {
                open[first]++;
            }
        }
        if (failed.size() < MAX_STATES && !work.isOver()) {
            failed.add(state);
        }
        return false;
    }

    /** Compact and exact: one character a number (there are never more than a million pieces; most counts are small). */
    private String state(int roll) {
        char[] text = new char[2 * open.length + 2];
        int n = 0;
        text[n++] = (char) (roll >>> 15);
        text[n++] = (char) (roll & 0x7fff);
        for (int count : open) {
            if (count > 0x7fff) {
                text[n++] = (char) (0x8000 | count >>> 15);
            }
            text[n++] = (char) (count & 0x7fff);
        }
        return new String(text, 0, n);
    }

    /** Adds panels from {@code item} on in every way, the longest first, then closes the roll as it is. */
    private boolean fill(int roll, int item, long room, long waste, int[] counts) {
        work.spend(2);
        int type = types[roll];
        for (int i = item; i < open.length && !work.isOver(); i++) {
            work.spend(1);
            if (open[i] == 0 || model.size[i] > room || !model.fits(i, type)) {
                continue;
            }
            for (int c = (int) Math.min(open[i], room / model.size[i]); c > 0; c--) {
                counts[i] += c;
                open[i] -= c;
                if (fill(roll, i + 1, room - c * model.size[i], waste, counts)) {
                    return true;
                }
                counts[i] -= c;
                open[i] += c;
            }
        }
        return room <= waste && !work.isOver() && !isImprovable(type, room, counts) && close(roll, counts);
    }

    private boolean close(int roll, int[] counts) {
        done.add(new Pattern(types[roll], counts.clone()));
        if (next(roll + 1)) {
            return true;
        }
        done.remove(done.size() - 1);
        return false;
    }

    /** One more panel fits, or a longer one can replace one of these. */
    private boolean isImprovable(int type, long room, int[] counts) {
        for (int j = open.length - 1; j >= 0 && model.size[j] <= room; j--) {
            work.spend(1);
            if (open[j] > 0 && model.fits(j, type)) {
                return true;
            }
        }
        for (int i = 0; i < open.length; i++) {
            if (counts[i] > 0) {
                for (int j = i - 1; j >= 0 && model.size[j] - model.size[i] <= room; j--) {
                    work.spend(1);
                    if (open[j] > 0
                            && model.size[j] > model.size[i]
                            && model.width[i] <= model.width[j]
                            && model.fits(j, type)) {
                        return true;
                    }
                }
            }
        }
        work.spend(open.length / 8);
        return false;
    }

    /** The relaxed problem on the rolls left shows that they do not suffice. */
    private boolean isUncovered(int roll) {
        int[] left = new int[model.types()];
        for (int k = roll; k < types.length; k++) {
            left[types[k]]++;
        }
        PatternLp lp = new PatternLp(model.rest(open, left), pool, work);
        if (lp.solve() != PatternLp.End.UNCOVERED) {
            return false;
        }
        // Kept only if it also shows it where all panels may be used, as a checker will read it.
        Prices list = Prices.of(lp.price, model, knapsack);
        if (!isOverpriced(list, roll)) {
            return false;
        }
        lists.add(list);
        return true;
    }

    /** Panels left are priced above what the rolls left hold. */
    private boolean isOverpriced(int roll) {
        for (Prices list : lists) {
            if (isOverpriced(list, roll)) {
                return true;
            }
        }
        return false;
    }

    private boolean isOverpriced(Prices list, int roll) {
        work.spend(open.length / 4 + types.length - roll);
        long needed = list.priceOf(open);
        for (int k = roll; k < types.length; k++) {
            needed -= list.held()[types[k]];
        }
        return needed > 0;
    }
}
