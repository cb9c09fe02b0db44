package io.github.bedjoint.drawing;

import java.util.ArrayList;
import java.util.List;

/** The marks of a drawing in words, one a row, so that a phone shows them without scrolling. */
final class Legend {
    private static final double SIZE = 12;
    private static final double ROW = 19;
    private static final double MARK = 26;

    private final List<Entry> entries = new ArrayList<>();

    /** Draws a mark into a box of 26 x 12 whose upper left corner is given. */
    interface Mark {
        void draw(Svg svg, double x, double y);
    }

    private record Entry(Mark mark, String words) {}

    Legend with(Mark mark, String words) {
        entries.add(new Entry(mark, words));
        return this;
    }

    Legend withIf(boolean there, Mark mark, String words) {
        return there ? with(mark, words) : this;
    }

    /** The least width that shows all words. */
    double width() {
        return entries.stream().mapToDouble(entry -> MARK + 8 + Svg.width(entry.words(), SIZE)).max().orElse(0);
    }

    double height() {
        return entries.size() * ROW;
    }

    void draw(Svg svg, double x, double y, double room) {
        for (int i = 0; i < entries.size(); i++) {
            double top = y + i * ROW;
            entries.get(i).mark().draw(svg, x, top + 2);
            svg.text(x + MARK + 8, top + 12.5, SIZE, "start", Svg.within(entries.get(i).words(), SIZE, room - MARK - 8));
        }
    }
}
