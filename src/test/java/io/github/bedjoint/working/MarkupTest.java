package io.github.bedjoint.working;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.UnitStyle;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class MarkupTest {
    private static final Formula ONE = Formula.of("test.one", "One", Symbol.number("a", "a"), "b", Source.geometry("given"), Symbol.number("b", "b"));
    private static final Formula COST = Formula.of(
            "test.cost", "Cost", new Symbol("c", Measure.MONEY, "cost"), "b", Source.shop("given"), Symbol.number("b", "b"));

    @Test
    void text_markup_isEscaped() {
        assertThat(new Markup().element("p", "<b> & \"q\" ]]>", "title", "<\"&>")).hasToString(
                "<p title=\"&lt;&quot;&amp;&gt;\">&lt;b&gt; &amp; \"q\" ]]&gt;</p>");
    }

    @Test
    void text_charactersThatXmlDoesNotKnow_areReplaced() {
        assertThat(new Markup().element("p", "a\u0000\u001f\ud83d\ufffe\ud83d\ude00", "title", "\u0008")).hasToString("<p title=\"\ufffd\">a\ufffd\ufffd\ufffd\ufffd\ud83d\ude00</p>");
    }

    @Test
    void open_nested_closesInOrder() {
        Markup out = new Markup().doctype().open("ul").open("li", "id", "a").text("x").close().empty("br").close();
        assertThat(out).hasToString("<!DOCTYPE html><ul><li id=\"a\">x</li><br/></ul>");
    }

    @Test
    void close_elementWithoutContent_keepsItsEndTag() {
        // A browser would take <p/> for a start tag.
        assertThat(new Markup().open("p").close()).hasToString("<p></p>");
    }

    @Test
    void write_sources_areListedOnceAndReferredToByNumber() {
        List<Source> sources = new ArrayList<>(List.of(Source.practice("another")));
        Markup out = new Markup();
        Working.of(ONE, 1, 1).because(Working.of(ONE, 2, 2)).write(out, UnitStyle.METRIC, sources);
        assertThat(sources).containsExactly(Source.practice("another"), Source.geometry("given"));
        assertThat(out.toString()).contains("Source: <a href=\"#source-2\">no. 2</a>").doesNotContain("geometry");
    }

    @Test
    void without_hiddenFigures_leavesThemAndWhatExplainsThemOut() {
        Working one = Working.of(ONE, 1, 1);
        Working tree = Working.group("All", List.of(one.because(Working.of(COST, 3, 3)), Working.group("Money", List.of(Working.of(COST, 4, 4).because(one)))));
        Working seen = tree.without(formula -> formula.id().equals("test.cost")).orElseThrow();
        assertThat(seen.parts()).hasSize(1);
        assertThat(seen.parts().get(0).parts()).isEmpty();
        assertThat(seen.find("test.cost")).isEmpty();
        assertThat(tree.without(formula -> true)).isEmpty();
        assertThat(tree.without(formula -> false).orElseThrow().text(UnitStyle.METRIC)).isEqualTo(tree.text(UnitStyle.METRIC));
    }

    @Test
    void without_headingThatWasEmpty_keepsItsNote() {
        Working noted = Working.group("Dates", List.of()).noting("none were asked for");
        assertThat(noted.without(formula -> true).orElseThrow().note()).isEqualTo("none were asked for");
    }
}
