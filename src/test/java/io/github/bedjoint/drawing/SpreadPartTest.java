package io.github.bedjoint.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.bedjoint.job.JobCost;
import io.github.bedjoint.risk.Input;
import io.github.bedjoint.risk.RiskResult;
import io.github.bedjoint.risk.Simulation;
import io.github.bedjoint.risk.Spread;
import io.github.bedjoint.units.UnitStyle;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

class SpreadPartTest {
    private static final JobCost COST = Demo.cost("brick-front");
    private static final RiskResult RISK =
            Simulation.of(COST.job()).with(Input.crewPace(), Spread.list(0.9, 1.0, 1.2)).with(Input.filmPrices(), Spread.list(1.0, 1.1)).run(3, 300);

    private static Document page(Copy copy) {
        return Xml.parse(JobPage.of(COST).withRanges(RISK).withCopy(copy).html());
    }

    private static List<String> headings(Document page) {
        return Xml.texts(page, "h2");
    }

    @Test
    void html_shopCopyWithRanges_showsPercentilesDrawingsAndShares() {
        Document page = page(Copy.SHOP);
        assertThat(headings(page)).containsSubsequence("Price", "How sure", "Verdicts");
        String text = page.getDocumentElement().getTextContent();
        assertThat(text).contains(RISK.price(0.5).toString(), RISK.price(0.8).toString(), RISK.cost(0.95).toString());
        assertThat(text).contains("300 jobs were simulated", "Spread of the price", "Spread of the paid time", "Spread of the hand-over", "crew pace", "film prices");
        assertThat(Xml.all(page, "a").stream().map(a -> a.getAttribute("href"))).contains("#sure");
    }

    @Test
    void html_crewCopyWithRanges_showsHoursAndNoMoney() {
        Document page = page(Copy.CREW);
        assertThat(headings(page)).contains("How sure");
        assertThat(page.getDocumentElement().getTextContent()).contains("Spread of the paid time").doesNotContain("EUR", "Spread of the price");
    }

    @Test
    void html_customerCopyWithRanges_showsNothingOfThem() {
        assertThat(JobPage.of(COST).withRanges(RISK).withCopy(Copy.CUSTOMER).html()).isEqualTo(JobPage.of(COST).withCopy(Copy.CUSTOMER).html());
    }

    @Test
    void html_withoutRanges_hasNoSuchPart() {
        assertThat(headings(Xml.parse(JobPage.of(COST).html()))).doesNotContain("How sure");
    }

    /** All lines of the drawings are told apart by dashes, and every drawing has its words for those who do not see it. */
    @Test
    void html_drawings_readWithoutColourAndWithoutSight() {
        Document page = Xml.parse(JobPage.of(COST).withRanges(RISK).withUnits(UnitStyle.IMPERIAL).html());
        List<Element> drawings = Xml.all(page, "svg").stream()
                .filter(svg -> Xml.all(svg, "title").get(0).getTextContent().startsWith("Spread of the"))
                .toList();
        assertThat(drawings).hasSize(3);
        for (Element drawing : drawings) {
            assertThat(Xml.all(drawing, "desc").get(0).getTextContent()).contains("P50 is", "P80 is", "P95 is");
        }
    }
}
