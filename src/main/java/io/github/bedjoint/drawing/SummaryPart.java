package io.github.bedjoint.drawing;

import io.github.bedjoint.cutting.LaminatePlan;
import io.github.bedjoint.job.JobCost;
import io.github.bedjoint.job.Materials;
import io.github.bedjoint.layout.PanelLayout;
import io.github.bedjoint.schedule.Timetable;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Print;
import io.github.bedjoint.units.UnitStyle;
import java.util.Optional;
import java.util.stream.Collectors;

/** What one wants to know first: whether it can be done, how much, how long, when, and for what price. */
final class SummaryPart {
    private final PageWriter page;
    private final JobCost cost;

    SummaryPart(PageWriter page) {
        this.page = page;
        this.cost = page.cost;
    }

    void write() {
        page.section("summary", "Summary");
        if (!cost.isPossible()) {
            page.out.open("div", "class", "stop").element("p", "The job cannot be done as given:", "class", "kind").open("ul");
            cost.reasons().forEach(reason -> page.out.element("li", reason));
            page.out.close().close();
        }
        page.figures();
        if (cost.isPriced() && page.copy.hasPrice()) {
            page.figure("row total", "Total price", cost.total().toString(), page.working("price.total"));
        }
        page.figure("Visible area", page.area(cost.areas().visible().getValue().doubleValue()), page.working("job.visible"));
        page.figure("Texture-adjusted area", page.area(cost.areas().developed().getValue().doubleValue()), page.working("job.developed"));
        cost.areas().leastContact().ifPresent(least -> page.figure(
                "Adhesive contact at least", page.area(least.getValue().doubleValue()), page.working("job.least-contact")));
        int panels = cost.layouts().stream().mapToInt(layout -> layout.panels().size()).sum();
        page.figure("Panels", Integer.toString(panels), Optional.empty());
        if (cost.isPriced()) {
            work();
            dates();
            price();
        }
        page.out.close();
        materials();
        page.end();
    }

    private void work() {
        if (!page.copy.hasWork()) {
            return;
        }
        page.figure("Film rolls to open", Integer.toString(cost.filmPlan().rolls().size()), page.working("rolls.opened"));
        page.figure("Yield", Print.fixed(100 * cost.waste().filmYield().share(), 1) + " %", page.working("rolls.yield"));
        cost.laminate().ifPresent(this::laminate);
        page.figure("Paid hours", PageWriter.hours(cost.labour().totalPaidS()), page.working("labour.total-paid"));
        double pace = cost.labour().totalPaidS() / cost.areas().visible().getValue().doubleValue();
        page.figure("Paid time by visible area", byArea("", pace / 60, " min"), page.working("job.time-per-area"));
        page.figure("Days on site", Integer.toString(cost.labour().siteDays().days()), page.working("labour.site-days"));
    }

    private void laminate(LaminatePlan laminate) {
        page.figure("Laminate", Measure.LENGTH.print(laminate.length().getValue(), page.style), page.working("rolls.laminate-length"));
    }

    private void dates() {
        cost.timetable().filter(Timetable::isPossible).ifPresent(dates -> page.figure(
                "Hand-over", TimePart.moment(dates, dates.handOver()), page.working("schedule.lead-time")));
    }

    private void price() {
        if (page.copy.hasPrice()) {
            page.working("job.price-per-area").ifPresent(working -> {
                double rate = working.result().orElseThrow().doubleValue();
                page.figure("Net price by visible area", byArea(cost.job().rules().currency().getCode() + " ", rate, ""), Optional.of(working));
            });
        }
    }

    /** Something for each square metre or square foot, to the second decimal. */
    private String byArea(String before, double perM2, String after) {
        boolean metric = page.style == UnitStyle.METRIC;
        return before + Print.fixed(metric ? perM2 : perM2 * 0.09290304, 2) + after + (metric ? "/m²" : "/ft²");
    }

    private void materials() {
        Materials materials = cost.job().materials();
        String film = "Film: " + materials.film().name() + ", "
                + materials.films().stream().map(one -> page.cut(one.rollWidthSteps())).collect(Collectors.joining(" or ")) + " wide.";
        String laminate = materials.laminate()
                .map(cover -> " Laminate: " + cover.name() + ", " + page.cut(cover.rollWidthSteps()) + " wide.")
                .orElse(" No laminate.");
        String walls = cost.layouts().stream().allMatch(PanelLayout::isPossible) ? "" : " Some walls could not be divided into panels.";
        page.out.element("p", film + laminate + walls);
    }
}
