package io.github.bedjoint.cutting;

import io.github.bedjoint.rolls.Cut;
import io.github.bedjoint.rolls.CuttingTerms;
import io.github.bedjoint.rolls.PlacedCut;
import io.github.bedjoint.rolls.Stock;
import io.github.bedjoint.skyline.Lying;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Gathers panels in sections that a guillotine can part: cross cuts, slits, cross cuts. The longest panel opens a section; beside it
 * come columns of panels, each column as wide as its first panel.
 */
final class Shelves {

    /** Which way panels lie that may be turned. */
    enum Way {
        /** As they are given, if they fit. */
        UPRIGHT,
        /** The longer side along the roll. */
        LONG,
        /** The longer side across. */
        WIDE
    }

    private record Item(Cut cut, Lying lying) {}

    private final List<Item> items = new ArrayList<>();
    private final long width;
    private final long gap;
    private final int[] open;
    private final List<Section> sections = new ArrayList<>();

    private Shelves(List<Cut> cuts, int[] open, List<Stock> stock, CuttingTerms terms, long width, Way way) {
        this.width = width;
        this.gap = terms.gapSteps();
        for (int c = 0; c < open.length; c++) {
            Optional<Lying> lying = Lying.of(cuts.get(c), stock, terms).stream()
                    .filter(l -> l.across() <= width)
                    .min(Comparator.comparingLong(l -> way == Way.LONG ? -l.along() : way == Way.WIDE ? l.along() : 0));
            int times = open[c];
            Cut cut = cuts.get(c);
            lying.filter(l -> times > 0).ifPresent(l -> items.add(new Item(cut, l)));
        }
        items.sort(Comparator.comparingLong((Item item) -> -item.lying.along()).thenComparing(item -> -item.lying.across()));
        this.open = items.stream().mapToInt(item -> open[cuts.indexOf(item.cut)]).toArray();
    }

    /**
     * Gathers panels that fit a width.
     *
     * @param open how many of each cut are to be gathered
     */
    static List<Section> of(List<Cut> cuts, int[] open, List<Stock> stock, CuttingTerms terms, long width, Way way) {
        Shelves shelves = new Shelves(cuts, open, stock, terms, width, way);
        while (Arrays.stream(shelves.open).anyMatch(k -> k > 0)) {
            shelves.next();
        }
        return shelves.sections;
    }

    private void next() {
        int[] used = new int[open.length];
        List<PlacedCut> placed = new ArrayList<>();
        int first = longest(used, width, Long.MAX_VALUE);
        long length = items.get(first).lying.along();
        long across = 0;
        for (int item = first; item >= 0; item = longest(used, width - across, length)) {
            long column = items.get(item).lying.across();
            long along = 0;
            for (int i = item; i >= 0; i = longest(used, column, length - along)) {
                Lying lying = items.get(i).lying;
                placed.add(PlacedCut.of(items.get(i).cut, along, across, lying.turned()));
                used[i]++;
                along += lying.along() + gap;
            }
            across += column + gap;
        }
        int times = Integer.MAX_VALUE;
        for (int i = 0; i < open.length; i++) {
            times = used[i] == 0 ? times : Math.min(times, open[i] / used[i]);
        }
        for (int i = 0; i < open.length; i++) {
            open[i] -= used[i] * times;
        }
        sections.add(new Section(placed, times));
    }

    /** The longest panel left within a room, -1 if there is none. */
    private int longest(int[] used, long across, long along) {
        for (int i = 0; i < open.length; i++) {
            if (open[i] > used[i] && items.get(i).lying.across() <= across && items.get(i).lying.along() <= along) {
                return i;
            }
        }
        return -1;
    }
}
