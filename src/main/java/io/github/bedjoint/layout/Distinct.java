package io.github.bedjoint.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Layouts of a wall from whichever side, without those that are no better than another. */
final class Distinct {
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

    /**
     * Whether a layout in the same direction as another has panels as long and no narrower and costs no less: then the panels of the other can
     * lie on the rolls where those of this one would.
     */
    static boolean isNoBetter(PanelLayout one, PanelLayout other) {
        List<Panel> here = one.panels().stream().sorted(BY_SIZE).toList();
        List<Panel> there = other.panels().stream().sorted(BY_SIZE).toList();
        return one.direction() == other.direction() && Math.rint(one.cost() * 1e9) >= Math.rint(other.cost() * 1e9) && here.size() == there.size()
                && IntStream.range(0, here.size()).allMatch(i -> here.get(i).cutLengthSteps() == there.get(i).cutLengthSteps()
                        && here.get(i).cutWidthSteps() >= there.get(i).cutWidthSteps());
    }
}
