package io.github.bedjoint.drawing;

import io.github.bedjoint.layout.Panel;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Where two panels lie over each other, found from their rectangles. */
final class Overlaps {
    private Overlaps() {}

    /** A rectangle of two layers, in steps on the wall. */
    record Strip(long left, long bottom, long right, long top) {}

    static List<Strip> of(List<Panel> panels) {
        List<Panel> sorted = new ArrayList<>(panels);
        sorted.sort(Comparator.comparingLong((Panel panel) -> panel.lowerLeft().xSteps()).thenComparingInt(Panel::number));
        List<Strip> strips = new ArrayList<>();
        for (int i = 0; i < sorted.size(); i++) {
            Panel a = sorted.get(i);
            for (int j = i + 1; j < sorted.size() && sorted.get(j).lowerLeft().xSteps() < right(a); j++) {
                Panel b = sorted.get(j);
                long bottom = Math.max(a.lowerLeft().ySteps(), b.lowerLeft().ySteps());
                long top = Math.min(top(a), top(b));
                if (bottom < top) {
                    strips.add(new Strip(b.lowerLeft().xSteps(), bottom, Math.min(right(a), right(b)), top));
                }
            }
        }
        return strips;
    }

    private static long right(Panel panel) {
        return panel.lowerLeft().xSteps() + panel.alongSteps();
    }

    private static long top(Panel panel) {
        return panel.lowerLeft().ySteps() + panel.upSteps();
    }
}
