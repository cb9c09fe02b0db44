package io.github.bedjoint.skyline;

import io.github.bedjoint.patterns.Work;
import io.github.bedjoint.rolls.PlacedCut;
import java.util.ArrayList;
import java.util.List;

/** Lays pieces side by side on one width so that they take as little length as can be found. */
public final class StripSearch {

    /** Part of the work left that is spent on a strip shorter by more than one unit. */
    private static final int PARTS = 8;

    private final Pieces pieces;
    private final int[] width;
    private final int[] length;
    private final SkylineSearch search;
    private final int least;
    private int best;
    private int step;
    private List<PlacedCut> placed = List.of();

    /** Places the pieces at once, in each order to begin with. */
    public StripSearch(Pieces pieces, long widthSteps, Work work) {
        this.pieces = pieces;
        width = new int[] {pieces.acrossUnits(widthSteps)};
        length = new int[] {Integer.MAX_VALUE / 2};
        search = new SkylineSearch(pieces, width, length);
        least = (int) ((pieces.area() + width[0] - 1) / width[0]);
        best = Integer.MAX_VALUE;
        for (int[] start : search.starts()) {
            if (search.skyline.run(start, width, length, Long.MAX_VALUE, work) == 0 && keep()) {
                search.from(start);
            }
        }
        step = Math.max(1, (best - least) / 4);
    }

    /** No shorter strip is possible. */
    public boolean isShortest() {
        return best <= least;
    }

    public int length() {
        return best;
    }

    /** The pieces at their places, the strip's start at 0. */
    public List<PlacedCut> placed() {
        return placed;
    }

    /** Looks for a shorter strip: by much while that is easily found, in the end by one unit. */
    public void improve(Work work) {
        while (!isShortest() && !work.isOver()) {
            length[0] = Math.max(least, best - step);
            Work part = work.part(step > 1 ? work.left() / PARTS : work.left());
            boolean found = search.run(part);
            work.take(part);
            if (found) {
                keep();
            } else {
                step = Math.max(1, step / 2);
            }
        }
    }

    private boolean keep() {
        int end = 0;
        for (int i = 0; i < pieces.count(); i++) {
            end = Math.max(end, search.skyline.alongAt[i] + (search.skyline.turned[i] ? pieces.across[i] : pieces.along[i]));
        }
        if (end >= best) {
            return false;
        }
        best = end;
        List<PlacedCut> at = new ArrayList<>();
        for (int i = 0; i < pieces.count(); i++) {
            at.add(pieces.placed(i, search.skyline.acrossAt[i], search.skyline.alongAt[i], search.skyline.turned[i]));
        }
        placed = List.copyOf(at);
        return true;
    }
}
