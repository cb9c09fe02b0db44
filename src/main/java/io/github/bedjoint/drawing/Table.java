package io.github.bedjoint.drawing;

import io.github.bedjoint.working.Markup;
import io.github.bedjoint.working.Working;
import java.util.List;

/** A table of a page. A head that begins with {@code >} stands over numbers, set to the right; the first column names the row. */
final class Table {
    private final PageWriter page;
    private final Markup out;
    private final String[] heads;

    Table(PageWriter page, String caption, String... heads) {
        this.page = page;
        this.out = page.out;
        this.heads = heads;
        out.open("div", "class", "scroll", "tabindex", "0", "role", "group", "aria-label", caption + ", scrolls sideways where the page is narrow");
        out.open("table").element("caption", caption).open("thead").open("tr");
        for (int i = 0; i < heads.length; i++) {
            out.element("th", isNumber(i) ? heads[i].substring(1) : heads[i], attributes("col", i));
        }
        out.close().close().open("tbody");
    }

    private boolean isNumber(int column) {
        return heads[column].startsWith(">");
    }

    private String[] attributes(String scope, int column) {
        return isNumber(column) ? new String[] {"scope", scope, "class", "number"} : new String[] {"scope", scope};
    }

    Table row(String... cells) {
        return row("", List.of(), cells);
    }

    Table total(String... cells) {
        return row("total", List.of(), cells);
    }

    /** A row whose name unfolds the working of its figures. */
    Table row(List<Working> how, String... cells) {
        List<Working> seen = how.stream().flatMap(working -> working.without(page.copy::hides).stream()).toList();
        return row("", seen, cells);
    }

    private Table row(String look, List<Working> how, String... cells) {
        out.open("tr", look.isEmpty() ? new String[0] : new String[] {"class", look});
        for (int i = 0; i < cells.length; i++) {
            if (i == 0 && !how.isEmpty()) {
                out.open("th", attributes("row", i)).open("details").element("summary", cells[i]);
                how.forEach(page::fold);
                out.close().close();
            } else if (i == 0) {
                out.element("th", cells[i], attributes("row", i));
            } else {
                out.element("td", cells[i], isNumber(i) ? new String[] {"class", "number"} : new String[0]);
            }
        }
        out.close();
        return this;
    }

    void end() {
        out.close().close().close();
    }
}
