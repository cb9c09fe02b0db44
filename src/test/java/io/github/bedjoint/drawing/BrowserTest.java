package io.github.bedjoint.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.bedjoint.drawing.Browser.Look;
import io.github.bedjoint.units.UnitStyle;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The pages as a browser lays them out. Pictures are left in target/browser for people to look at. */
class BrowserTest {
    private static final String AXE = "axe.run(document).then(function (r) { var lines = ['passes\\t' + r.passes.length];"
            + "r.violations.forEach(function (v) { v.nodes.forEach(function (n) { lines.push('violation\\t' + v.id + ' ' + n.target.join(' ')); }); });"
            + "var pre = document.createElement('pre'); pre.id = 'NAME'; pre.textContent = lines.join('\\n'); parent.document.body.appendChild(pre); });";
    private static final String UNFOLD = "document.querySelectorAll('details').forEach(function (d) { d.open = true; });";

    private static String html(String job, Copy copy, UnitStyle style) {
        return Demo.page(job).withCopy(copy).withUnits(style).html();
    }

    /** Every job on a phone (390 pixels) and a desktop (1280), the copies by turns, everything unfolded. */
    @Test
    void page_onPhoneAndDesktop_overflowsNowhereAndCanBeRead() throws Exception {
        Browser.chromium();
        List<Look> looks = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            String job = Demo.NAMES.get(i % 3);
            Copy copy = Copy.values()[(i + i / 3) % 3];
            UnitStyle style = UnitStyle.values()[i % 2];
            int width = i < 3 ? 390 : 1280;
            looks.add(new Look(job + "-" + copy + "-" + width, width, html(job, copy, style), Browser.probe(true)));
        }
        String dom = Browser.open("screens", looks);
        SoftAssertions softly = new SoftAssertions();
        for (Look look : looks) {
            List<String> lines = Browser.left(dom, look.name());
            String width = Integer.toString(look.width());
            softly.assertThat(Browser.found(lines, "width")).as(look.name()).containsExactly(width);
            softly.assertThat(Browser.found(lines, "scrollWidth")).as(look.name()).containsExactly(width);
            softly.assertThat(Browser.found(lines, "outside")).as(look.name()).isEmpty();
            softly.assertThat(Browser.found(lines, "cutOff")).as(look.name()).isEmpty();
            softly.assertThat(Browser.found(lines, "overlap")).as(look.name()).isEmpty();
            softly.assertThat(number(lines, "smallestText")).as(look.name()).isGreaterThanOrEqualTo(12);
            softly.assertThat(number(lines, "smallestDrawnText")).as(look.name()).isGreaterThanOrEqualTo(10);
            softly.assertThat(number(lines, "drawnTexts")).as(look.name()).isGreaterThan(10);
            if (look.width() > 1000) {
                softly.assertThat(Browser.found(lines, "scrolls")).as(look.name()).isEmpty();
            }
        }
        softly.assertAll();
    }

    private static double number(List<String> lines, String name) {
        return Double.parseDouble(Browser.found(lines, name).get(0));
    }

    /** The print look on the width that A4 (210 mm) and Letter (8.5 in) leave between margins of 14 mm: 688 and 710 pixels. */
    @Test
    void page_printed_overflowsNowhere() throws Exception {
        Browser.chromium();
        Browser.onlyWhenRequired();
        List<Look> looks = new ArrayList<>();
        for (String job : Demo.NAMES) {
            for (int width : new int[] {688, 710}) {
                UnitStyle style = width == 688 ? UnitStyle.METRIC : UnitStyle.IMPERIAL;
                String html = html(job, Copy.SHOP, style);
                assertThat(html).contains("@media print");
                looks.add(new Look(job + "-print-" + width, width, html.replace("@media print", "@media all"), Browser.probe(false)));
            }
        }
        String dom = Browser.open("prints", looks);
        SoftAssertions softly = new SoftAssertions();
        for (Look look : looks) {
            List<String> lines = Browser.left(dom, look.name());
            softly.assertThat(Browser.found(lines, "width")).as(look.name()).containsExactly(Integer.toString(look.width()));
            softly.assertThat(Browser.found(lines, "outside")).as(look.name()).isEmpty();
            softly.assertThat(Browser.found(lines, "scrolls")).as(look.name()).isEmpty();
            softly.assertThat(Browser.found(lines, "cutOff")).as(look.name()).isEmpty();
            softly.assertThat(number(lines, "smallestDrawnText")).as(look.name()).isGreaterThanOrEqualTo(10);
        }
        softly.assertAll();
    }

    /** Drawings with many short labels, which the demo jobs do not have, and a page whose faults the probe must find. */
    @Test
    void drawings_ofCrowdedWalls_cutNoTextOff() throws Exception {
        Browser.chromium();
        StringBuilder all = new StringBuilder("<!DOCTYPE html><html><body>");
        Crowded.drawings().forEach(drawing -> all.append(drawing.svg()));
        String faults = html("reading-room", Copy.CUSTOMER, UnitStyle.METRIC)
                .replace("<h1>", "<p style=\"width:900px;font-size:5px\">wide and small</p><svg viewBox=\"0 0 50 20\" width=\"50\" height=\"20\"><title>t</title>"
                        + "<text x=\"0\" y=\"15\" font-size=\"12\">one two three four</text><text x=\"5\" y=\"15\" font-size=\"12\">five</text></svg><h1>");
        String dom = Browser.open("crowded", List.of(
                new Look("crowd", 1280, all + "</body></html>", Browser.probe(true)), new Look("faults", 390, faults, Browser.probe(true))));
        List<String> crowd = Browser.left(dom, "crowd");
        assertThat(number(crowd, "drawings")).isGreaterThan(20);
        assertThat(Browser.found(crowd, "cutOff")).isEmpty();
        assertThat(Browser.found(crowd, "overlap")).isEmpty();
        List<String> found = Browser.left(dom, "faults");
        assertThat(Browser.found(found, "outside")).isNotEmpty();
        assertThat(Browser.found(found, "cutOff")).isNotEmpty();
        assertThat(Browser.found(found, "overlap")).isNotEmpty();
        assertThat(Browser.found(found, "smallestText")).containsExactly("5");
    }

    /** Names that are markup make no element and run nothing, and the page still overflows nowhere; the same names unescaped are noticed. */
    @Test
    void page_ofHostileNames_runsNothing() throws Exception {
        Browser.chromium();
        String look = "var pre = document.createElement('pre'); pre.id = 'NAME'; pre.textContent = ['images\\t' + document.images.length, 'owned\\t' + (document.title === 'owned'),"
                + "'scrollWidth\\t' + document.documentElement.scrollWidth].join('\\n'); parent.document.body.appendChild(pre);";
        String hostile = JobPage.of(HostileTextTest.job(HostileTextTest.MARKUP)).html();
        String planted = hostile.replace("&lt;", "<").replace("&gt;", ">").replaceFirst("<meta http-equiv[^>]*>", "");
        String dom = Browser.open("hostile", List.of(new Look("hostile", 1280, hostile, look), new Look("planted", 1280, planted, look)));
        assertThat(Browser.found(Browser.left(dom, "hostile"), "images")).containsExactly("0");
        assertThat(Browser.found(Browser.left(dom, "hostile"), "owned")).containsExactly("false");
        assertThat(Browser.found(Browser.left(dom, "hostile"), "scrollWidth")).containsExactly("1280");
        assertThat(Browser.found(Browser.left(dom, "planted"), "images")).isNotEqualTo(List.of("0"));
    }

    @Test
    void page_axe_findsNoViolationAndFindsPlantedOnes() throws Exception {
        Browser.chromium();
        String axe = Browser.axe().toString();
        String faults = html("reading-room", Copy.CUSTOMER, UnitStyle.METRIC)
                .replace("<h1>", "<p style=\"color:#cccccc\">pale</p><img src=\"none.png\"/><h1>");
        String dom = Browser.open("axe", List.of(
                new Look("brick-axe", 390, html("brick-front", Copy.SHOP, UnitStyle.METRIC), axe, UNFOLD, AXE),
                new Look("gable-axe", 1280, html("block-gable", Copy.CREW, UnitStyle.IMPERIAL), axe, UNFOLD, AXE),
                new Look("room-axe", 1280, html("reading-room", Copy.CUSTOMER, UnitStyle.METRIC), axe, UNFOLD, AXE),
                new Look("faults-axe", 1280, faults, axe, AXE)));
        for (String name : List.of("brick-axe", "gable-axe", "room-axe")) {
            List<String> lines = Browser.left(dom, name);
            assertThat(Browser.found(lines, "violation")).as(name).isEmpty();
            assertThat(number(lines, "passes")).as(name).isGreaterThan(20);
        }
        assertThat(Browser.found(Browser.left(dom, "faults-axe"), "violation"))
                .anyMatch(v -> v.startsWith("color-contrast")).anyMatch(v -> v.startsWith("image-alt"));
    }

    @ParameterizedTest
    @CsvSource({"brick-front, A4, 594.95, 841.92", "block-gable, letter, 612, 792", "reading-room, A4, 594.95, 841.92"})
    void page_asPdf_fitsThePaper(String job, String paper, double widthPt, double heightPt) throws Exception {
        Browser.chromium();
        Browser.onlyWhenRequired();
        String html = html(job, Copy.SHOP, UnitStyle.METRIC).replace("@page { margin: 14mm; }", "@page { margin: 14mm; size: " + paper + "; }");
        assertThat(html).contains("size: " + paper);
        Path pdf = Browser.FOLDER.resolve(job + "-" + paper + ".pdf");
        Browser.pdf(Browser.write(job + "-" + paper, html), pdf);
        String raw = Files.readString(pdf, StandardCharsets.ISO_8859_1);
        List<String> boxes = Pattern.compile("/MediaBox \\[0 0 ([0-9.]+ [0-9.]+)\\]").matcher(raw).results().map(box -> box.group(1)).toList();
        // Thirteen pages of a job with dates, rain, print files and ranges; one more would be a table that broke.
        assertThat(boxes).hasSizeBetween(3, 14).allSatisfy(box -> {
            assertThat(Double.parseDouble(box.split(" ")[0])).isBetween(widthPt - 1, widthPt + 1);
            assertThat(Double.parseDouble(box.split(" ")[1])).isBetween(heightPt - 1, heightPt + 1);
        });
    }

    @ParameterizedTest
    @CsvSource({"brick-front, SHOP, METRIC", "block-gable, CREW, IMPERIAL", "reading-room, CUSTOMER, METRIC"})
    void page_pictures_areTaken(String job, Copy copy, UnitStyle style) throws Exception {
        Browser.chromium();
        Browser.onlyWhenRequired();
        for (int width : new int[] {390, 1280}) {
            String name = job + "-" + copy + "-" + width;
            Path png = Browser.FOLDER.resolve(name + ".png");
            Files.deleteIfExists(png);
            Browser.screenshot(Browser.write(name, html(job, copy, style)), width, 9000, png);
            assertThat(Files.size(png)).isGreaterThan(20_000);
        }
    }
}
