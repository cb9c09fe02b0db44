package io.github.bedjoint.working;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.UnitStyle;
import java.io.ByteArrayInputStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.constraints.StringLength;
import org.joda.money.CurrencyUnit;
import org.w3c.dom.Document;

class WorkingProperties {
    private static Document parsed(String html) throws Exception {
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new ByteArrayInputStream(html.getBytes(StandardCharsets.UTF_8)));
    }

    /** Whatever a name holds, the fragment is well formed and gains no element from it. */
    @Property
    void html_anyName_isWellFormed(@ForAll @StringLength(max = 30) String name, @ForAll @StringLength(max = 30) String note) throws Exception {
        Document document = parsed(WorkingTest.AREA_OF_SIX.whose(name).noting("n" + note).html(UnitStyle.METRIC));
        // details; summary; two p for the formula, one for the source, one for the note; ul with two li.
        assertThat(document.getElementsByTagName("*").getLength()).isEqualTo(1 + 1 + 4 + 1 + 2);
    }

    /** The values shown are the values stored: every tree passes the guard and prints the same twice. */
    @Property
    void working_ofARectangle_agreesWithItsText(
            @ForAll @DoubleRange(min = 0.01, max = 1000) @Scale(6) double width, @ForAll @DoubleRange(min = 0.01, max = 1000) @Scale(6) double height) {
        Working area = Working.of(WorkingTest.RECTANGLE, width * height, width, height);
        BigDecimal price = new BigDecimal("7.90");
        BigDecimal cost = price.multiply(BigDecimal.valueOf(width * height), java.math.MathContext.DECIMAL128);
        Working tree = Working.of(WorkingTest.COST, cost, price, width * height).because(area).in(CurrencyUnit.EUR);
        WorkingCheck.check(tree);
        assertThat(tree.text(UnitStyle.METRIC)).isEqualTo(tree.text(UnitStyle.METRIC)).doesNotContain("¤");
        assertThat(tree.find("test.rectangle")).hasValueSatisfying(found -> assertThat(found.result()).contains(width * height));
    }

    @Property
    void sum_anyTerms_showsHowManyAndAtMostThree(@ForAll @Size(max = 300) List<@DoubleRange(min = 0, max = 100) @Scale(3) Double> terms) {
        Working sum = Working.sum(WorkingTest.TOTAL, terms.stream().mapToDouble(term -> term).sum(), terms);
        WorkingCheck.check(sum);
        String line = sum.text(UnitStyle.METRIC).lines().filter(l -> l.contains("sum of")).findFirst().orElseThrow().strip();
        assertThat(line).startsWith("= sum of " + terms.size());
        int shown = Math.min(3, terms.size());
        assertThat(line.chars().filter(c -> c == '²').count()).isEqualTo(shown);
        assertThat(line.endsWith(" + ...")).isEqualTo(terms.size() > 3);
        if (shown > 0) {
            assertThat(line).contains(": " + Measure.AREA.print(terms.get(0), UnitStyle.METRIC));
        }
    }

    /** A child that is met again is shown once in full, however often it is repeated. */
    @Property
    void text_repeatedChild_isInFullOnce(@ForAll @net.jqwik.api.constraints.IntRange(min = 1, max = 20) int times) {
        Working tree = Working.group("All", java.util.Collections.nCopies(times, WorkingTest.AREA_OF_SIX));
        String text = tree.text(UnitStyle.METRIC);
        assertThat(text).containsOnlyOnce("[test.rectangle]");
        assertThat(text.split("\\(shown above\\)", -1)).hasSize(times);
    }
}
