package io.github.bedjoint.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.bedjoint.film.Film;
import io.github.bedjoint.film.RollOffer;
import io.github.bedjoint.job.Job;
import io.github.bedjoint.job.JobCost;
import io.github.bedjoint.job.Materials;
import io.github.bedjoint.price.CostLine;
import io.github.bedjoint.price.LineKind;
import io.github.bedjoint.price.PriceRules;
import io.github.bedjoint.survey.Survey;
import io.github.bedjoint.survey.Wall;
import io.github.bedjoint.units.Read;
import io.github.bedjoint.units.UnitStyle;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

class JobPageTest {
    private static final CurrencyUnit EUR = CurrencyUnit.of("EUR");

    static List<String> names() {
        return Demo.NAMES;
    }

    private static JobPage page(String name) {
        return JobPage.of(Demo.cost(name));
    }

    @ParameterizedTest
    @MethodSource("names")
    void html_everyCopyAndStyle_isWellFormedAndTheSameTwice(String name) {
        for (Copy copy : Copy.values()) {
            for (UnitStyle style : UnitStyle.values()) {
                String html = page(name).withCopy(copy).withUnits(style).html();
                Document document = Xml.parse(html);
                assertThat(document.getDocumentElement().getTagName()).isEqualTo("html");
                assertThat(JobPage.of(JobCost.of(Demo.job(name))).withUnits(style).withCopy(copy).html()).isEqualTo(html);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("names")
    void html_shopCopy_hasEveryPartInOrder(String name) {
        assertThat(Xml.texts(Xml.parse(page(name).html()), "h2")).containsExactly(
                "Summary", "Walls", "Cut list", "Rolls to open", "Hours", "Dates", "Price", "Verdicts", "Cautions", "Sources of the workings");
    }

    @ParameterizedTest
    @MethodSource("names")
    void html_links_leadSomewhereAndIdsAreUnique(String name) {
        for (Copy copy : Copy.values()) {
            Document document = Xml.parse(page(name).withCopy(copy).html());
            Set<String> ids = new HashSet<>();
            for (Element element : Xml.all(document, "*")) {
                if (element.hasAttribute("id")) {
                    assertThat(ids.add(element.getAttribute("id"))).as(element.getAttribute("id")).isTrue();
                }
            }
            assertThat(Xml.all(document, "a")).isNotEmpty()
                    .allSatisfy(link -> assertThat(ids).contains(link.getAttribute("href").substring(1)))
                    .allSatisfy(link -> assertThat(link.getAttribute("href")).startsWith("#"));
        }
    }

    @ParameterizedTest
    @MethodSource("names")
    void html_needsNoScriptAndNoNetwork(String name) {
        String html = page(name).html();
        Document document = Xml.parse(html);
        for (String element : List.of("script", "link", "img", "iframe", "object", "embed", "form", "input", "button", "use", "image", "foreignObject")) {
            assertThat(document.getElementsByTagName(element).getLength()).as(element).isZero();
        }
        assertThat(html.replace("http://www.w3.org/2000/svg", "")).doesNotContain("http:", "https:", "url(", "@import", "javascript:", "src=");
        for (Element element : Xml.all(document, "*")) {
            for (int i = 0; i < element.getAttributes().getLength(); i++) {
                assertThat(element.getAttributes().item(i).getNodeName()).doesNotStartWith("on").isNotEqualTo("style");
            }
        }
        assertThat(html).contains("default-src 'none'");
    }

    @Test
    void html_figures_haveTheirWorkingFoldedUnderThem() {
        Document document = Xml.parse(page("brick-front").html());
        Element yield = Xml.all(document, "div").stream().filter(div -> div.getAttribute("class").equals("row"))
                .filter(div -> Xml.all(div, "dt").get(0).getTextContent().equals("Yield")).findFirst().orElseThrow();
        assertThat(Xml.all(yield, "dd").get(0).getTextContent()).isEqualTo("64.9 %");
        assertThat(Xml.all(yield, "details").get(0).getTextContent()).contains("y = A_v / A_opened", "17.8 m²", "27.44 m²", "Source: no. ");
        // Every task, trip and line unfolds.
        assertThat(Xml.all(document, "th").stream().filter(th -> th.getElementsByTagName("details").getLength() > 0).count())
                .isEqualTo(Demo.cost("brick-front").labour().tasks().size() + Demo.cost("brick-front").labour().trips().size() + Demo.cost("brick-front").price().lines().size()
                        + Demo.cost("brick-front").timetable().orElseThrow().slots().size());
        assertThat(Xml.all(document, "details")).noneMatch(details -> details.hasAttribute("open"));
    }

    @Test
    void html_sources_areListedOnce() {
        Document document = Xml.parse(page("brick-front").html());
        List<String> sources = Xml.all(document, "ol").stream().flatMap(list -> Xml.all(list, "li").stream()).map(Element::getTextContent).toList();
        assertThat(sources).hasSizeGreaterThan(10).doesNotHaveDuplicates();
    }

    @Test
    void html_imperial_showsNoMillimetres() {
        String html = page("block-gable").withUnits(UnitStyle.IMPERIAL).html();
        assertThat(html).contains("688.00 ft²", "19' 9 3/8&quot;".replace("&quot;", "\"")).doesNotContain(" mm", " m²");
    }

    /** Every amount of a job that is a cost, as it is printed. */
    private static Set<String> costs(JobCost cost) {
        Set<String> amounts = new LinkedHashSet<>();
        for (CostLine line : cost.price().lines()) {
            amounts.add(line.amount().getAmount().toPlainString());
            amounts.add(line.rate().toString().replaceAll("/.*", "").substring(4));
        }
        for (Money money : List.of(cost.price().direct(), cost.price().overhead(), cost.price().contingency(), cost.price().cost())) {
            amounts.add(money.getAmount().toPlainString());
        }
        cost.job().materials().filmRolls().forEach(roll -> amounts.add(roll.price().getAmount().toPlainString()));
        cost.job().materials().laminateRolls().forEach(roll -> amounts.add(roll.price().getAmount().toPlainString()));
        amounts.remove("0.00");
        return amounts;
    }

    /** Whole numbers such as a rate of 36, and numbers below 2, are also counts and shares of other things: their currency is looked for apart. */
    private static boolean isCommon(String amount) {
        return !amount.contains(".") || Double.parseDouble(amount) < 2;
    }

    /** Whether a number stands in a text, not as a part of a longer one, nor with a unit of length, area or time behind it. */
    private static boolean shows(String text, String amount) {
        return Pattern.compile("(?<![0-9.])" + Pattern.quote(amount) + "(?![0-9]| ?(m|mm|m²|h|ft²|in|ft|%|g|K|°C|min)\\b)").matcher(text).find();
    }

    @ParameterizedTest
    @MethodSource("names")
    void html_crewCopy_holdsNoMoney(String name) {
        JobCost cost = Demo.cost(name);
        String text = Xml.parse(page(name).withCopy(Copy.CREW).html()).getElementsByTagName("body").item(0).getTextContent();
        Set<String> amounts = costs(cost);
        for (Money money : List.of(cost.price().list(), cost.price().net(), cost.price().tax(), cost.total())) {
            amounts.add(money.getAmount().toPlainString());
        }
        amounts.remove("0.00");
        amounts.removeIf(JobPageTest::isCommon);
        assertThat(amounts).hasSizeGreaterThan(8).noneMatch(amount -> shows(text, amount));
        assertThat(text).doesNotContain("EUR", "USD", "€", "$", "¤").doesNotContainIgnoringCase("price", "cheap", "margin kept", "profit", "overhead:");
        // The same look finds them on the shop's copy.
        String shop = Xml.parse(page(name).html()).getElementsByTagName("body").item(0).getTextContent();
        assertThat(amounts).allMatch(amount -> shows(shop, amount) || isNotOpened(cost, amount));
    }

    /** A roll that is offered and not opened has a price that no copy shows. */
    private static boolean isNotOpened(JobCost cost, String amount) {
        return cost.job().materials().filmRolls().stream()
                .anyMatch(roll -> roll.price().getAmount().toPlainString().equals(amount)
                        && cost.filmPlan().rolls().stream().noneMatch(opened -> opened.stockId().equals(roll.id())));
    }

    @ParameterizedTest
    @MethodSource("names")
    void html_customerCopy_holdsThePriceAndNoCost(String name) {
        JobCost cost = Demo.cost(name);
        Document document = Xml.parse(page(name).withCopy(Copy.CUSTOMER).html());
        String text = document.getElementsByTagName("body").item(0).getTextContent();
        assertThat(text).contains(cost.total().toString(), cost.price().net().toString());
        Set<String> amounts = costs(cost);
        amounts.removeIf(JobPageTest::isCommon);
        assertThat(amounts).hasSizeGreaterThan(6).noneMatch(amount -> shows(text, amount));
        assertThat(text).doesNotContainIgnoringCase("margin kept", "direct cost", "overhead cost", "contingency", "profit", "yield", "paid");
        assertThat(Xml.texts(document, "h2")).doesNotContain("Cut list", "Rolls to open", "Hours");
        // Each amount with a currency is the price or a step of it.
        Set<String> allowed = new HashSet<>();
        for (Money money : List.of(cost.price().list(), cost.price().net(), cost.price().tax(), cost.total())) {
            allowed.add(money.getAmount().toPlainString());
        }
        Pattern.compile("(?:EUR|USD) ([0-9.]+)(/m²)?").matcher(text).results()
                .forEach(found -> assertThat(found.group(2) != null || allowed.contains(found.group(1))).as(found.group()).isTrue());
    }

    private static JobCost named(String name) {
        Film film = Film.of(name, Read.length("1 m"));
        Job job = Job.builder(name, Survey.of(Wall.rectangle(name, Read.length("2 m"), Read.length("2 m"))),
                        Materials.of(film, List.of(RollOffer.of(name, Read.length("20 m"), Money.parse("EUR 10.00")))), PriceRules.in(EUR))
                .note(name).extra(CostLine.each(LineKind.LUMP, name, 1, Money.parse("EUR 5.00"))).build();
        return JobCost.of(job);
    }

    @Test
    void html_markupInNames_isEscaped() {
        String evil = "</title></style><script>alert(1)</script><svg onload=\"x\">&amp; 'q' ]]>";
        for (Copy copy : Copy.values()) {
            String html = JobPage.of(named(evil)).withCopy(copy).html();
            Document document = Xml.parse(html);
            assertThat(html).doesNotContain("<script", "<svg onload").contains("&lt;script&gt;");
            assertThat(Xml.texts(document, "h1")).containsExactly(evil);
            assertThat(Xml.texts(document, "script")).isEmpty();
        }
        assertThat(Xml.parse(Drawing.wall(named(evil).layouts().get(0), UnitStyle.METRIC).svg()).getElementsByTagName("title").item(0).getTextContent()).contains(evil);
    }

    @Test
    void html_charactersThatXmlDoesNotKnow_areReplaced() {
        String odd = "half\ud83d pair\ud83d\ude00 none\uffff line\u2028 right\u202e";
        Document document = Xml.parse(JobPage.of(named(odd)).html());
        assertThat(Xml.texts(document, "h1")).containsExactly("half\ufffd pair\ud83d\ude00 none\ufffd line\u2028 right\u202e");
    }

    @Test
    void html_jobThatCannotBeDone_saysWhyFirst() {
        Film film = Film.of("film", Read.length("1 m"));
        Job job = Job.builder("too high", Survey.of(Wall.rectangle("tower", Read.length("2 m"), Read.length("30 m"))),
                Materials.of(film, List.of(RollOffer.of("short", Read.length("20 m"), Money.parse("EUR 10.00")))), PriceRules.in(EUR)).build();
        JobCost cost = JobCost.of(job);
        assertThat(cost.isPossible()).isFalse();
        Document document = Xml.parse(JobPage.of(cost).html());
        Element stop = Xml.all(document, "div").stream().filter(div -> div.getAttribute("class").equals("stop")).findFirst().orElseThrow();
        assertThat(Xml.all(stop, "li").stream().map(Element::getTextContent)).containsExactlyElementsOf(cost.reasons());
        assertThat(Xml.texts(document, "h2")).containsExactly("Summary", "Walls", "Verdicts", "Cautions", "Sources of the workings");
    }

    @Test
    void toString_isThePage() {
        assertThat(page("reading-room")).hasToString(page("reading-room").html());
    }
}
