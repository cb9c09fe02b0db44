package io.github.bedjoint.working;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.UnitStyle;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.joda.money.CurrencyUnit;
import org.junit.jupiter.api.Test;

class WorkingTest {
    static final Symbol WIDTH = new Symbol("w", Measure.LENGTH, "width of the wall");
    static final Symbol HEIGHT = new Symbol("h", Measure.LENGTH, "height of the wall");
    static final Symbol AREA = new Symbol("A", Measure.AREA, "area of the wall");
    static final Symbol PRICE = new Symbol("p", Measure.MONEY_PER_AREA, "price of the film");
    static final Formula RECTANGLE =
            Formula.of("test.rectangle", "Area of a rectangle", AREA, "w * h", Source.geometry("rectangle"), WIDTH, HEIGHT);
    static final Formula COST =
            Formula.of("test.cost", "Cost of the film", new Symbol("c", Measure.MONEY, "cost"), "p * A", Source.shop("price list, invented"), PRICE, AREA);
    static final Formula TOTAL = Formula.of(
            "test.total", "Area of all walls", new Symbol("A_all", Measure.AREA, "area of all walls"), "sum(A_i)", Source.geometry("sum of parts"),
            new Symbol("A_i", Measure.AREA, "area of a wall"));

    // 2 m x 3 m = 6 m2, at 7.90 a square metre = 47.40.
    static final Working AREA_OF_SIX = Working.of(RECTANGLE, 6.0, 2.0, 3.0);
    static final Working COST_OF_SIX = Working.of(COST, new BigDecimal("47.40"), new BigDecimal("7.90"), 6.0).because(AREA_OF_SIX).in(CurrencyUnit.EUR);

    @Test
    void text_metric_isFormulaValuesFigureAndSource() {
        assertThat(COST_OF_SIX.text(UnitStyle.METRIC)).isEqualTo("""
                Cost of the film [test.cost]
                  c = p * A
                    = EUR 7.9/m² * 6 m²
                    = EUR 47.40
                    p = EUR 7.9/m²: price of the film
                    A = 6 m²: area of the wall
                  source 1: the shop's own: price list, invented
                  Area of a rectangle [test.rectangle]
                    A = w * h
                      = 2 m * 3 m
                      = 6 m²
                      w = 2 m: width of the wall
                      h = 3 m: height of the wall
                    source 2: geometry: rectangle
                """);
        assertThat(COST_OF_SIX).hasToString(COST_OF_SIX.text(UnitStyle.METRIC));
        WorkingCheck.check(COST_OF_SIX);
    }

    /** 2 m = 6.5617 ft, 3 m = 9.8425 ft, 6 m2 = 64.5835 ft2, 7.90 a m2 = 0.733934 a ft2 (UCUM [ft_i], [sft_i]). */
    @Test
    void text_imperial_changesOnlyTheUnitsShown() {
        assertThat(COST_OF_SIX.text(UnitStyle.IMPERIAL))
                .contains("= EUR 0.733934/ft² * 64.5835 ft²", "= 6.5617 ft * 9.8425 ft", "= EUR 47.40\n")
                .doesNotContain("m²");
    }

    @Test
    void sum_ofManyTerms_showsCountAndFirstThree() {
        // 1 + 2 + ... + 300 = 300 x 301 / 2 = 45150.
        List<Double> terms = new ArrayList<>();
        for (int i = 1; i <= 300; i++) {
            terms.add((double) i);
        }
        Working sum = Working.sum(TOTAL, 45_150.0, terms);
        WorkingCheck.check(sum);
        assertThat(sum.values()).hasSize(300);
        assertThat(sum.text(UnitStyle.METRIC)).isEqualTo("""
                Area of all walls [test.total]
                  A_all = sum(A_i)
                        = sum of 300: 1 m² + 2 m² + 3 m² + ...
                        = 45150 m²
                    A_i: area of a wall
                  source 1: geometry: sum of parts
                """);
    }

    @Test
    void sum_ofFewTerms_showsThemAll() {
        assertThat(Working.sum(TOTAL, 0.0, List.of()).text(UnitStyle.METRIC)).contains("= sum of 0\n", "= 0 m²\n");
        assertThat(Working.sum(TOTAL, 2.0, List.of(2.0)).text(UnitStyle.METRIC)).contains("= sum of 1: 2 m²\n", "= 2 m²\n");
        assertThat(Working.sum(TOTAL, 6.0, List.of(1.0, 2.0, 3.0)).text(UnitStyle.METRIC)).contains("= sum of 3: 1 m² + 2 m² + 3 m²\n");
        assertThat(Working.sum(TOTAL, 10.0, List.of(1.0, 2.0, 3.0, 4.0)).text(UnitStyle.METRIC)).contains("= sum of 4: 1 m² + 2 m² + 3 m² + ...\n");
        WorkingCheck.check(Working.sum(TOTAL, 0.0, List.of()));
    }

    @Test
    void sum_ofAnythingButItsOneSymbol_isRefused() {
        Formula half = Formula.of("test.half", "Half", AREA, "sum(A_i) / 2", Source.geometry("half"), new Symbol("A_i", Measure.AREA, "area"));
        assertThatThrownBy(() -> Working.sum(half, 1.0, List.of(2.0))).isInstanceOf(IllegalArgumentException.class).hasMessageContaining("test.half");
        assertThatThrownBy(() -> Working.sum(RECTANGLE, 1.0, List.of(1.0))).isInstanceOf(IllegalArgumentException.class);
        // A text that only begins with a sum is no sum of terms: its one value is put in as any other.
        assertThat(Working.of(half, 1.0, 2.0).text(UnitStyle.METRIC)).contains("= sum(2 m²) / 2\n").doesNotContain("sum of");
    }

    @Test
    void of_moreOrFewerValuesThanSymbols_isRefused() {
        assertThatThrownBy(() -> Working.of(RECTANGLE, 6.0, 2.0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("test.rectangle has 2 symbols, not 1");
        assertThatThrownBy(() -> Working.of(RECTANGLE, 6.0, 2.0, 3.0, 4.0)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void text_negativeValuesAndPowers_areInBrackets() {
        Symbol x = Symbol.number("x", "a number");
        Symbol y = Symbol.number("y", "another");
        Formula difference = Formula.of("test.difference", "Difference", Symbol.number("d", "difference"), "x - y", Source.geometry("subtraction"), x, y);
        assertThat(Working.of(difference, 5.0, 2.0, -3.0).text(UnitStyle.METRIC)).contains("= 2 - (-3)\n", "y = -3: another");
        Formula square = Formula.of("test.square", "Square", AREA, "w ^ 2 + w * w", Source.geometry("square"), WIDTH);
        assertThat(Working.of(square, 8.0, 2.0).text(UnitStyle.METRIC)).contains("= (2 m) ^ 2 + 2 m * 2 m\n");
    }

    /** A letter is replaced as a whole word, never inside another letter or a function, and a value is never taken for a letter. */
    @Test
    void text_lettersInsideLetters_areLeftAlone() {
        Symbol a = new Symbol("a", Measure.LENGTH, "a");
        Symbol max = new Symbol("a_max", Measure.LENGTH, "largest a");
        Symbol m = new Symbol("m", Measure.LENGTH, "a letter like the unit");
        Formula most = Formula.of("test.most", "Most", new Symbol("x", Measure.LENGTH, "x"), "max(a, a_max) + m", Source.geometry("order"), a, max, m);
        assertThat(Working.of(most, 6.0, 1.0, 2.0, 4.0).text(UnitStyle.METRIC)).contains("= max(1 m, 2 m) + 4 m\n");
    }

    @Test
    void text_sameWorkingAgain_isShownOnce() {
        Working twice = Working.group("Two bills", List.of(COST_OF_SIX, COST_OF_SIX.whose("second copy")));
        String text = twice.text(UnitStyle.METRIC);
        assertThat(text).containsOnlyOnce("[test.rectangle]").contains("    Area of a rectangle: 6 m² (shown above)\n");
        assertThat(twice.html(UnitStyle.METRIC)).contains("<p>Area of a rectangle: 6 m² (shown above)</p>");
        // Each printing starts afresh.
        assertThat(twice.text(UnitStyle.METRIC)).isEqualTo(text);
    }

    @Test
    void text_sameFigureOfSomethingElse_isShownInFull() {
        Formula other = Formula.of("test.other", "Area of a rectangle", AREA, "h * w", Source.geometry("turned"), WIDTH, HEIGHT);
        assertThat(Working.group("Both", List.of(AREA_OF_SIX, Working.of(other, 6.0, 2.0, 3.0))).text(UnitStyle.METRIC)).doesNotContain("shown above");
        assertThat(Working.group("Both", List.of(AREA_OF_SIX.whose("a"), AREA_OF_SIX.whose("b"))).text(UnitStyle.METRIC)).doesNotContain("shown above");
        assertThat(Working.group("Both", List.of(AREA_OF_SIX, AREA_OF_SIX.noting("measured twice"))).text(UnitStyle.METRIC))
                .contains("note: measured twice").doesNotContain("shown above");
        assertThat(Working.group("Both", List.of(COST_OF_SIX, COST_OF_SIX.in(CurrencyUnit.USD))).text(UnitStyle.METRIC))
                .contains("= EUR 47.40", "= USD 47.40");
        Working bare = Working.of(COST, new BigDecimal("47.40"), new BigDecimal("7.90"), 6.0).in(CurrencyUnit.EUR);
        assertThat(Working.group("Both", List.of(bare, COST_OF_SIX)).text(UnitStyle.METRIC)).contains("[test.rectangle]").doesNotContain("shown above");
    }

    @Test
    void text_sameFigureFromOtherParts_isShownInFull() {
        Working square = Working.of(RECTANGLE, 6.0, 6.0, 1.0);
        Working one = Working.of(COST, new BigDecimal("47.40"), new BigDecimal("7.90"), 6.0).because(AREA_OF_SIX);
        Working other = Working.of(COST, new BigDecimal("47.40"), new BigDecimal("7.90"), 6.0).because(square);
        assertThat(Working.group("Both", List.of(one, other)).text(UnitStyle.METRIC)).contains("= 2 m * 3 m", "= 6 m * 1 m").doesNotContain("shown above");
    }

    @Test
    void currency_ofATree_isInheritedBelowIt() {
        Working bare = Working.of(COST, new BigDecimal("47.40"), new BigDecimal("7.90"), 6.0);
        assertThat(bare.text(UnitStyle.METRIC)).contains("= ¤ 47.40");
        Working tree = Working.group("Bill", List.of(Working.group("Film", List.of(bare)), bare.whose("abroad").in(CurrencyUnit.USD))).in(CurrencyUnit.EUR);
        assertThat(tree.text(UnitStyle.METRIC)).contains("      = EUR 47.40", "= USD 47.40").doesNotContain("¤");
        assertThat(tree.html(UnitStyle.METRIC)).contains("EUR 47.40", "USD 47.40").doesNotContain("¤");
        assertThat(bare.currency()).isEmpty();
        assertThat(tree.currency()).contains(CurrencyUnit.EUR);
    }

    @Test
    void find_byId_isTheFirstWithTheTreesCurrency() {
        Working bare = Working.of(COST, new BigDecimal("47.40"), new BigDecimal("7.90"), 6.0).because(AREA_OF_SIX);
        Working tree = Working.group("Bill", List.of(Working.group("Film", List.of(bare)), bare.whose("second"))).in(CurrencyUnit.EUR);
        assertThat(tree.find("test.cost")).hasValueSatisfying(found -> {
            assertThat(found.title()).isEqualTo("Cost of the film");
            assertThat(found.currency()).contains(CurrencyUnit.EUR);
            assertThat(found.result()).contains(new BigDecimal("47.40"));
        });
        assertThat(tree.find("test.rectangle")).hasValueSatisfying(found -> assertThat(found.values()).containsExactly(2.0, 3.0));
        assertThat(tree.find("test.nothing")).isEmpty();
        assertThat(COST_OF_SIX.find("test.cost")).containsSame(COST_OF_SIX);
    }

    @Test
    void group_ofParts_isAHeadingWithoutAFigure() {
        Working group = Working.group("Walls", List.of(AREA_OF_SIX)).noting("two walls were left out");
        assertThat(group.formula()).isEmpty();
        assertThat(group.result()).isEmpty();
        assertThat(group.values()).isEmpty();
        assertThat(group.note()).isEqualTo("two walls were left out");
        assertThat(group.text(UnitStyle.METRIC)).startsWith("Walls\n  note: two walls were left out\n  Area of a rectangle [test.rectangle]\n");
        assertThat(group.html(UnitStyle.METRIC)).startsWith("<details><summary>Walls</summary><p>two walls were left out</p><details>");
    }

    @Test
    void withers_giveANewWorking_andLeaveTheOldAlone() {
        Working named = AREA_OF_SIX.whose("gable");
        assertThat(named.title()).isEqualTo("Area of a rectangle: gable");
        assertThat(AREA_OF_SIX.title()).isEqualTo("Area of a rectangle");
        assertThat(AREA_OF_SIX.because(AREA_OF_SIX).because(named).parts()).containsExactly(AREA_OF_SIX, named);
        assertThat(AREA_OF_SIX.parts()).isEmpty();
        assertThat(AREA_OF_SIX.noting("first").noting("second").note()).isEqualTo("second");
        assertThat(named.noting("n").whose("again").in(CurrencyUnit.EUR).because().note()).isEqualTo("n");
        List<Working> parts = new ArrayList<>(List.of(AREA_OF_SIX));
        Working group = Working.group("Walls", parts);
        parts.clear();
        assertThat(group.parts()).hasSize(1);
        assertThatThrownBy(() -> group.parts().clear()).isInstanceOf(UnsupportedOperationException.class);
        List<Double> terms = new ArrayList<>(Collections.nCopies(3, 1.0));
        Working sum = Working.sum(TOTAL, 3.0, terms);
        terms.clear();
        assertThat(sum.values()).hasSize(3);
    }

    @Test
    void html_metric_isNestedDetails() {
        assertThat(COST_OF_SIX.html(UnitStyle.METRIC))
                .isEqualTo("<details><summary>Cost of the film: EUR 47.40</summary><p>c = p * A</p><p>c = EUR 7.9/m² * 6 m²</p>"
                        + "<ul><li>p = EUR 7.9/m²: price of the film</li><li>A = 6 m²: area of the wall</li></ul>"
                        + "<p>Source: the shop's own: price list, invented</p>"
                        + "<details><summary>Area of a rectangle: 6 m²</summary><p>A = w * h</p><p>A = 2 m * 3 m</p>"
                        + "<ul><li>w = 2 m: width of the wall</li><li>h = 3 m: height of the wall</li></ul>"
                        + "<p>Source: geometry: rectangle</p></details></details>");
    }

    @Test
    void html_markupInAnyText_isEscaped() {
        String bad = "<script>alert(\"1\")</script> & ]]> 'x'";
        Formula formula = Formula.of("test.bad", bad, new Symbol("A", Measure.AREA, bad), "w * 1", Source.handbook(bad), new Symbol("w", Measure.AREA, bad));
        String html = Working.group(bad, List.of(Working.of(formula, 1.0, 1.0).whose(bad).noting(bad))).html(UnitStyle.METRIC);
        assertThat(html).doesNotContain("<script").doesNotContain("]]>").contains("&lt;script&gt;alert(").contains("&amp;");
        assertThat(html.replaceAll("</?(details|summary|p|ul|li)>", "")).doesNotContain("<").doesNotContain(">");
    }

    /** XML 1.0, production 2: tab and line ends, U+0020 to U+D7FF, U+E000 to U+FFFD, U+10000 and above. */
    @Test
    void html_charactersAtTheEndsOfWhatXmlKnows_areKept() {
        for (String kept : List.of("\t", "\n", "\r", " ", "\ud7ff", "\ue000", "\ufffd", "\ud800\udc00", "\udbff\udfff")) {
            assertThat(AREA_OF_SIX.noting("[" + kept + "]").html(UnitStyle.METRIC)).contains("[" + kept + "]");
        }
        for (String replaced : List.of("\u0000", "\u0008", "\u000b", "\u000e", "\u001f", "\ud800", "\udfff", "\ufffe", "\uffff")) {
            assertThat(AREA_OF_SIX.noting("[" + replaced + "]").html(UnitStyle.METRIC)).contains("[\ufffd]");
        }
    }

    /** The fragment is well formed whatever stands in a name, characters that XML does not know included. */
    @Test
    void html_controlCharactersInAName_staysReadableXml() throws Exception {
        String html = AREA_OF_SIX.whose("bell\u0007 null\u0000 half\ud83d pair\ud83d\ude00 line\u2028 ünï").html(UnitStyle.METRIC);
        var document = javax.xml.parsers.DocumentBuilderFactory.newInstance().newDocumentBuilder()
                .parse(new java.io.ByteArrayInputStream(html.getBytes(java.nio.charset.StandardCharsets.UTF_8)));
        assertThat(document.getDocumentElement().getFirstChild().getTextContent()).contains("bell\ufffd", "half\ufffd", "pair\ud83d\ude00", "ünï");
    }
}
