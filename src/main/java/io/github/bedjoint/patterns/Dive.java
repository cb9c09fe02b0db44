package io.github.bedjoint.patterns;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Cuts the panels from exactly given rolls by fixing patterns of the relaxed problem one after another and solving again
 * for what is left. Turns back where the rest cannot be covered, up to a number of second choices.
 */
final class Dive {

    /** One more pattern is fixed at once for each so many rolls left. */
    private static final int STRIDE = 6;

    private final Model model;
    private final PatternPool pool;
    private final Work work;
    private final List<Pattern> fixed = new ArrayList<>();

    Dive(Model exact, PatternPool pool, Work work) {
        this.model = exact;
        this.pool = pool;
        this.work = work;
    }

    /** The patterns, or none if the dive failed. */
    List<Pattern> run(int secondChoices) {
        return dive(model.demand.clone(), model.supply.clone(), secondChoices) ? List.copyOf(fixed) : List.of();
    }

    private boolean dive(int[] open, int[] left, int choices) {
        if (Arrays.stream(open).allMatch(d -> d == 0)) {
            return true;
        }
        if (work.isOver()) {
            return false;
        }
        Model rest = model.rest(open, left);
        Greedy greedy = new Greedy(rest, work);
        Greedy.Plan quick = greedy.build(greedy.lengthPrices(), open, left, Long.MAX_VALUE);
        if (!quick.rolls().isEmpty()) {
            fixed.addAll(quick.rolls());
            return true;
        }
        PatternLp lp = new PatternLp(rest, pool, work);
        if (lp.solve() != PatternLp.End.SOLVED) {
            return false;
        }
        List<PatternLp.Share> shares = lp.shares();
        int mark = fixed.size();
        if (shares.get(0).rolls() > 1 - 1e-6) {
            int[] stillOpen = open.clone();
            int[] stillLeft = left.clone();
            for (PatternLp.Share share : shares) {
                for (int k = 1; k <= share.rolls() + 1e-6; k++) {
                    fix(share.pattern(), stillOpen, stillLeft);
                }
            }
            if (dive(stillOpen, stillLeft, choices)) {
                return true;
            }
            fixed.subList(mark, fixed.size()).clear();
            return false;
        }
        for (int c = 0; c < shares.size() && c <= choices; c++) {
            int[] stillOpen = open.clone();
            int[] stillLeft = left.clone();
            fix(shares.get(c).pattern(), stillOpen, stillLeft);
            // Far from the end the next ones go along, as long as they are asked for whole.
            int more = Arrays.stream(left).sum() / STRIDE;
            for (int k = c + 1; k < shares.size() && more > 0; k++) {
                if (fitsWhole(shares.get(k).pattern(), stillOpen, stillLeft)) {
                    fix(shares.get(k).pattern(), stillOpen, stillLeft);
                    more--;
                }
            }
            if (dive(stillOpen, stillLeft, choices - c)) {
                return true;
            }
            fixed.subList(mark, fixed.size()).clear();
        }
        return false;
    }

    private static boolean fitsWhole(Pattern pattern, int[] open, int[] left) {
        boolean whole = left[pattern.type()] > 0;
        for (int i = 0; i < open.length; i++) {
            whole &= pattern.counts()[i] <= open[i];
        }
        return whole;
    }

    private void fix(Pattern pattern, int[] open, int[] left) {
        int[] counts = new int[open.length];
        int used = 0;
        for (int i = 0; i < open.length; i++) {
            counts[i] = Math.min(open[i], pattern.counts()[i]);
            open[i] -= counts[i];
            used += counts[i];
        }
        if (used > 0) {
            left[pattern.type()]--;
            fixed.add(new Pattern(pattern.type(), counts));
        }
    }
}
