package io.github.bedjoint.layout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.LongStream;

/** Layouts of a wall from whichever side, without those that are no better than another. */
final class Distinct {
    /** By cost, and where that is the same by what a mirrored wall has in common; drops come before bands. */
    static final Comparator<PanelLayout> CHEAPEST_FIRST = Comparator.comparingDouble((PanelLayout layout) -> Math.rint(layout.cost() * 1e9))
            .thenComparing(layout -> layout.panels().size())
            .thenComparing(PanelLayout::direction)
            .thenComparing(Distinct::sizes, Arrays::compare)
            .thenComparing(layout -> Math.rint(layout.seamM() * 1e9))
            .thenComparing(PanelLayout::cutOuts);

    private static final Comparator<Panel> BY_SIZE = Comparator.comparingLong(Panel::cutLengthSteps).thenComparing(Panel::cutWidthSteps);

    private final List<PanelLayout> all = new ArrayList<>();

    void add(PanelLayout layout) {
        if (all.stream().noneMatch(other -> isNoBetter(layout, other))) {
            all.removeIf(other -> isNoBetter(other, layout));
            all.add(layout);
        }
    }

    /** In the order in which they were added. */
    List<PanelLayout> all() {
        return all;
    }

    private static long[] sizes(PanelLayout layout) {
        return layout.panels().stream().sorted(BY_SIZE).flatMapToLong(panel -> LongStream.of(panel.cutLengthSteps(), panel.cutWidthSteps())).toArray();
    }

    /**
     * Whether a layout in the same direction as another comes after it and has panels as long and no narrower: then the panels of the other can
     * lie on the rolls where those of this one would.
     */
    static boolean isNoBetter(PanelLayout one, PanelLayout other) {
        long[] here = sizes(one);
        long[] there = sizes(other);
        return one.direction() == other.direction() && CHEAPEST_FIRST.compare(one, other) >= 0 && here.length == there.length
                && IntStream.range(0, here.length).allMatch(i -> i % 2 == 0 ? here[i] == there[i] : here[i] >= there[i]);
    }
}
