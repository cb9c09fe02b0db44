package io.github.bedjoint.drawing;

import io.github.bedjoint.risk.Outcome;
import io.github.bedjoint.risk.Outlook;
import io.github.bedjoint.risk.Outlook.InputShare;
import io.github.bedjoint.risk.RiskResult;
import io.github.bedjoint.units.Print;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** How sure the figures are: percentiles as a table, the spread of the main ones as drawings, and which inputs it comes from. */
final class SpreadPart {
    private final PageWriter page;
    private final RiskResult risk;

    SpreadPart(PageWriter page, RiskResult risk) {
        this.page = page;
        this.risk = risk;
    }

    void write() {
        page.section("sure", "How sure");
        page.out.element("p", risk.count() + " jobs were simulated with the ranges given" + (risk.impossible() == 0 ? "" : "; " + risk.impossible() + " of them cannot be done and are left out")
                + ". P50, P80 and P95 are what 50, 80 and 95 of 100 such jobs do not pass.");
        risk.reasons().forEach(reason -> page.out.element("p", "Cannot be done: " + reason));
        Table table = page.table("Percentiles", "Figure", ">P50", ">P80", ">P95");
        seen(Outcome.values()).forEach(outcome -> table.row(row(outcome)));
        table.end();
        page.out.open("div", "class", "side");
        seen(Outcome.PRICE, Outcome.PAID_TIME, Outcome.HAND_OVER).forEach(outcome -> {
            page.out.open("div", "class", "keep");
            page.narrow(Drawing.spread(risk, outcome, page.style));
            page.out.close();
        });
        page.out.close();
        shares(page.copy.hasCosts() ? Outcome.PRICE : Outcome.PAID_TIME);
        page.end();
    }

    /** Those of some figures that this job has and this reader may see. */
    private Stream<Outcome> seen(Outcome... some) {
        return Stream.of(some)
                .filter(outcome -> risk.of(outcome).count() > 0)
                .filter(outcome -> page.copy.hasCosts() || (outcome != Outcome.COST && outcome != Outcome.PRICE));
    }

    private String[] row(Outcome outcome) {
        SpreadSketch spread = new SpreadSketch(risk, outcome, page.style);
        return new String[] {outcome.title(), spread.value(0.5), spread.value(0.8), spread.value(0.95)};
    }

    private void shares(Outcome outcome) {
        Outlook outlook = risk.of(outcome);
        Table table = page.table("Where the spread of the " + outcome.title().toLowerCase(Locale.ROOT) + " comes from", "Input", ">Share of the variance");
        List<InputShare> shares = outlook.shares().stream().sorted(Comparator.comparingDouble(share -> -share.share())).toList();
        shares.forEach(share -> table.row(share.input().toString(), percent(share.share())));
        table.row("several inputs jointly", percent(outlook.jointly())).end();
        page.fold(outlook.working(0.8));
    }

    private static String percent(double share) {
        return Print.fixed(100 * share, 1) + " %";
    }
}
