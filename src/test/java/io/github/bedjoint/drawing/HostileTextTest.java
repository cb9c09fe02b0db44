package io.github.bedjoint.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.bedjoint.job.JobCost;
import io.github.bedjoint.jobfile.JobFile;
import io.github.bedjoint.jobfile.JobResult;
import io.github.bedjoint.jobfile.JobTables;
import io.github.bedjoint.units.CsvTable;
import io.github.bedjoint.units.UnitStyle;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** Names that are markup, formulas, or run from right to left: they stay text in HTML, SVG, CSV and JSON. */
class HostileTextTest {
    static final String MARKUP = "</title><script>document.title='owned'</script><img src=x onerror=document.title='owned'>\\\" onload=\\\"x";

    /** A demo job whose every name is hostile; the text stands in JSON. */
    static JobCost job(String name) {
        try {
            String json = Files.readString(Path.of("docs", "jobs", "brick-front.json"));
            for (String one : List.of("Weir Lane boathouse, street front (invented)", "Street front", "Rough-wall film A (invented)", "Matt laminate B (invented)", "Pavement permit")) {
                json = json.replace("\"" + one + "\"", "\"" + name + one.charAt(0) + "\"");
            }
            return JobCost.of(JobFile.parse(json.replaceFirst("\"note\": \"[^\"]*\"", Matcher.quoteReplacement("\"note\": \"" + name + "\""))));
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {MARKUP, "]]><!-- ", "&lt;&#x3c;script&amp;", "javascript:alert(1)//", "\\u202Etxet\\u202C \\uD83D\\uDE00 ", "{{7*7}}${7*7}"})
    void html_hostileNames_stayText(String name) {
        JobCost cost = job(name);
        Set<String> plain = tags(Xml.parse(JobPage.of(Demo.cost("brick-front")).html()));
        for (Copy copy : Copy.values()) {
            String html = JobPage.of(cost).withCopy(copy).html();
            Document page = Xml.parse(html);
            assertThat(tags(page)).isSubsetOf(plain).doesNotContain("script", "img");
            assertThat(Xml.texts(page, "h1").get(0)).isEqualTo(cost.job().name());
            assertThat(html).contains("Content-Security-Policy").doesNotContain("<script", "<img");
        }
        cost.layouts().forEach(layout -> assertThat(Xml.parse(Drawing.wall(layout, UnitStyle.METRIC).svg()).getElementsByTagName("script").getLength()).isZero());
    }

    /** Names of elements, and of attributes that could act. */
    private static Set<String> tags(Document page) {
        Set<String> names = new TreeSet<>();
        for (Element element : Xml.all(page, "*")) {
            names.add(element.getTagName());
            for (int i = 0; i < element.getAttributes().getLength(); i++) {
                names.add("@" + element.getAttributes().item(i).getNodeName());
            }
        }
        return names;
    }

    @ParameterizedTest
    @ValueSource(strings = {"=HYPERLINK(1)", "+1+1", "-2", "@SUM(A1)", "=1,\\\"2"})
    void csv_formulas_areDefusedAndReadBack(String name) {
        JobCost cost = job(name);
        for (String csv : List.of(JobTables.cuts(cost, UnitStyle.METRIC), JobTables.prices(cost, UnitStyle.METRIC))) {
            CsvTable table = CsvTable.parse("table", csv);
            assertThat(table.rows()).isNotEmpty().allSatisfy(row -> table.columns().forEach(column -> assertThat(row.text(column)).doesNotMatch("(?s)[=+@].*|-[^0-9].*|-2.*")));
        }
        assertThat(JobFile.parse(JobFile.write(cost.job())).name()).isEqualTo(cost.job().name());
        assertThat(JobResult.of(cost).line()).doesNotContain("\n");
    }
}
