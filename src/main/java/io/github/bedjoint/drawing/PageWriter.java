package io.github.bedjoint.drawing;

import io.github.bedjoint.job.JobCost;
import io.github.bedjoint.units.Print;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.working.Markup;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Working;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What the parts of a page have in common: the job, the reader, and the few kinds of block a page is built of. */
final class PageWriter {
    final Markup out = new Markup();
    final JobCost cost;
    final UnitStyle style;
    final Copy copy;
    final List<Source> sources = new ArrayList<>();
    private final Working all;

    PageWriter(JobCost cost, UnitStyle style, Copy copy) {
        this.cost = cost;
        this.style = style;
        this.copy = copy;
        this.all = cost.working();
    }

    /** The working of one figure of the job, if the reader may see it. */
    Optional<Working> working(String formula) {
        return all.find(formula).flatMap(this::readable);
    }

    /** A heading of the job's working, if the reader may see something below it. */
    Optional<Working> group(String title) {
        return all.parts().stream().filter(part -> part.title().equals(title)).findFirst().flatMap(this::readable);
    }

    private Optional<Working> readable(Working working) {
        return working.in(cost.job().rules().currency()).without(copy::hides);
    }

    void section(String id, String title) {
        out.open("section", "aria-labelledby", id).element("h2", title, "id", id);
    }

    void end() {
        out.close();
    }

    void figures() {
        out.open("dl", "class", "figures");
    }

    void figure(String words, String value, Optional<Working> working) {
        figure("row", words, value, working);
    }

    void figure(String look, String words, String value, Optional<Working> working) {
        out.open("div", "class", look).element("dt", words).element("dd", value, "class", "value");
        working.ifPresent(how -> {
            out.open("dd");
            fold(how);
            out.close();
        });
        out.close();
    }

    /** A working, folded. */
    void fold(Working working) {
        readable(working).ifPresent(how -> how.write(out, style, sources));
    }

    /** A drawing that scrolls sideways where the page is narrower than it. */
    void wide(Drawing drawing) {
        out.open("figure").element("figcaption", drawing.title());
        out.open("div", "class", drawing.width() < 600 ? "scroll" : "scroll grown", "tabindex", "0", "role", "group", "aria-label", drawing.title() + ", scrolls sideways where the page is narrow");
        drawing.write(out);
        out.close().close();
    }

    /** A drawing that is narrow enough for any page. */
    void narrow(Drawing drawing) {
        out.open("figure", "class", "fit").element("figcaption", drawing.title());
        drawing.write(out);
        out.close();
    }

    Table table(String caption, String... heads) {
        return new Table(this, caption, heads);
    }

    /** Sentences, one to a point. */
    void list(List<String> lines) {
        out.open("ul");
        lines.forEach(line -> out.element("li", line));
        out.close();
    }

    String area(double m2) {
        return BarSketch.area(m2, style);
    }

    String cut(long steps) {
        return Print.cut(steps, style);
    }

    static String hours(double seconds) {
        return Print.fixed(seconds / 3600, 2) + " h";
    }
}
