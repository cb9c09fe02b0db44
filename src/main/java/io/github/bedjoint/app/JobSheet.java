package io.github.bedjoint.app;

import io.github.bedjoint.conditions.Caution;
import io.github.bedjoint.conditions.Cautions;
import io.github.bedjoint.cutting.LaminatePlan;
import io.github.bedjoint.job.JobCost;
import io.github.bedjoint.job.RollOrder;
import io.github.bedjoint.labour.Machine;
import io.github.bedjoint.labour.Task;
import io.github.bedjoint.labour.TaskTime;
import io.github.bedjoint.labour.TripTime;
import io.github.bedjoint.layout.Panel;
import io.github.bedjoint.layout.PanelLayout;
import io.github.bedjoint.price.CostLine;
import io.github.bedjoint.price.LineKind;
import io.github.bedjoint.price.PriceBuildUp;
import io.github.bedjoint.rolls.OpenedRoll;
import io.github.bedjoint.rolls.RollPlan;
import io.github.bedjoint.schedule.Timetable;
import io.github.bedjoint.survey.WallAreas;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Print;
import io.github.bedjoint.units.Steps;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.waste.WasteShares;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Verdict;
import java.util.Locale;
import javax.measure.Quantity;
import org.joda.money.Money;

/** The sheet of a job as plain text: summary first, then walls, panels, rolls, hours, dates, price, verdicts and cautions. */
final class JobSheet {
    private final JobCost cost;
    private final UnitStyle style;
    private final StringBuilder out = new StringBuilder();

    JobSheet(JobCost cost, UnitStyle style) {
        this.cost = cost;
        this.style = style;
    }

    String text() {
        out.append(cost.job().name()).append('\n');
        if (!cost.job().note().isEmpty()) {
            out.append(cost.job().note()).append('\n');
        }
        summary();
        areas();
        if (cost.layouts().stream().allMatch(PanelLayout::isPossible)) {
            panels();
        }
        if (cost.isPriced()) {
            rolls("FILM ROLLS TO OPEN", cost.filmPlan(), isInSeveralWidths());
            orders(LineKind.FILM);
            cost.choice().filter(choice -> choice.layouts() > 1).ifPresent(choice ->
                    paragraph("  ", "    ", "Layouts with their rolls: " + choice + " (" + choice.layouts() + " combinations)."));
            heading("WHY THESE ROLLS");
            cost.rollReasons(style).lines().forEach(line -> paragraph("  ", "    ", line));
            account();
            cost.laminate().ifPresent(this::laminate);
            hours();
            cost.timetable().filter(Timetable::isPossible).ifPresent(this::dates);
            price(cost.price());
        }
        verdicts();
        cautions();
        return out.toString();
    }

    private void heading(String title) {
        out.append('\n').append(title).append('\n');
    }

    private void summary() {
        heading("SUMMARY");
        if (!cost.isPossible()) {
            out.append("  The job cannot be done as given:\n");
            cost.reasons().forEach(reason -> paragraph("  - ", "    ", reason));
        }
        Columns rows = new Columns("  ", "ll").row("Visible area", area(cost.areas().visible().getValue()));
        rows.row("Texture-adjusted area", area(cost.areas().developed().getValue()));
        rows.row("Panels", Integer.toString(cost.layouts().stream().mapToInt(layout -> layout.panels().size()).sum()));
        if (cost.isPriced()) {
            rows.row("Film rolls", Integer.toString(cost.filmPlan().rolls().size()));
            rows.row("Yield", Print.fixed(100 * cost.waste().filmYield().share(), 1) + " %");
            rows.row("Paid hours", time(cost.labour().totalPaidS()) + ", " + Measure.TIME_PER_AREA.print(
                    cost.labour().totalPaidS() / cost.areas().visible().getValue().doubleValue(), style));
            rows.row("Days on site", Integer.toString(cost.labour().siteDays().days()));
            cost.timetable().filter(Timetable::isPossible).ifPresent(t -> rows.row("Hand-over", DatesSheet.date(t.handOver())));
            rows.row("TOTAL", cost.total().toString());
        }
        rows.print(out);
    }

    private void areas() {
        heading("WALLS AND AREAS");
        Columns rows = new Columns("  ", "llrrrr").row("wall", "surface", "ratio", "visible", "measured", "developed");
        for (WallAreas wall : cost.areas().walls()) {
            rows.row(wall.wall().name(), wall.wall().surface().describe(style), Print.fixed(wall.wall().surface().areaRatio(), 4),
                    area(wall.visibleM2()), area(wall.measuredM2()), area(wall.developedM2()));
        }
        rows.print(out);
        for (WallAreas wall : cost.areas().walls()) {
            wall.uncertainty().ifPresent(found -> paragraph("  ", "    ", wall.wall().name() + ": " + found.describe(style)
                    + " (standard uncertainties)"));
        }
        Number contact = cost.areas().contact().getValue();
        out.append("  Adhesive contact where the film follows: ").append(area(contact));
        cost.areas().leastContact().map(Quantity::getValue).filter(least -> least.doubleValue() < contact.doubleValue())
                .ifPresent(least -> out.append(", at least ").append(area(least)).append(" with the joints that it bridges taken off"));
        out.append('\n');
        out.append("  Measured by deducting: ").append(cost.job().deduction()).append('\n');
    }

    private void panels() {
        heading("PANELS, IN ORDER OF APPLICATION");
        for (PanelLayout layout : cost.layouts()) {
            out.append("  ").append(layout.wall().name()).append(": ").append(layout.panels().size()).append(' ')
                    .append(layout.direction().toString().toLowerCase(Locale.ROOT)).append(", overlap ")
                    .append(Print.cut(Steps.up(layout.overlap().getValue().doubleValue()), style)).append(", seams ")
                    .append(Measure.LENGTH.print(layout.seamM(), style))
                    .append(isInSeveralWidths() ? ", film " + cut(layout.film().rollWidthSteps()) + " wide\n" : "\n");
            Columns rows = new Columns("    ", "rrrrr").row("no.", "cut width", "cut length", "from left", "from below");
            for (Panel panel : layout.panels()) {
                rows.row(Integer.toString(panel.number()), cut(panel.cutWidthSteps()), cut(panel.cutLengthSteps()),
                        cut(panel.lowerLeft().xSteps()), cut(panel.lowerLeft().ySteps()));
            }
            rows.print(out);
        }
    }

    private boolean isInSeveralWidths() {
        return cost.job().materials().films().size() > 1;
    }

    private void rolls(String title, RollPlan plan, boolean ofSeveralWidths) {
        heading(title);
        Columns rows = new Columns("  ", "rllr").row("no.", "roll", "pieces in cutting order", "left");
        int number = 0;
        for (OpenedRoll roll : plan.rolls()) {
            number++;
            long width = plan.row(roll).widthSteps() + 2 * cost.job().materials().film().edgeMarginSteps();
            String name = roll.stockId() + (ofSeveralWidths ? ", " + cut(width) + " wide" : "");
            rows.row(Integer.toString(number), name, String.join(", ", roll.pieces()), cut(roll.remnantSteps()));
        }
        rows.print(out);
        Money price = Money.ofMinor(cost.job().rules().currency(), plan.cost());
        Money bound = Money.ofMinor(cost.job().rules().currency(), plan.lowerBound());
        out.append("  ").append(price).append(plan.isProven() ? ", proven the cheapest" : ", no plan costs less than " + bound).append('\n');
    }

    /** Says what is ordered where that is more than is opened. */
    private void orders(LineKind kind) {
        for (RollOrder order : cost.orders()) {
            if (order.kind() == kind && order.quantity().left() > 0) {
                out.append("  ").append(order).append('\n');
            }
        }
    }

    private void account() {
        heading("WHERE THE FILM ENDS");
        double opened = cost.waste().openedM2();
        Columns rows = new Columns("  ", "lrr");
        cost.waste().partsM2().forEach((part, m2) -> {
            if (m2 > 1e-12) {
                rows.row(part.title(), area(m2), Print.fixed(100 * m2 / opened, 1) + " %");
            }
        });
        rows.row("film opened", area(opened), "100.0 %").print(out);
        out.append("  Yield ").append(Print.fixed(100 * cost.waste().filmYield().share(), 1)).append(" %, without kept remnants ")
                .append(Print.fixed(100 * cost.waste().filmYield().netShare(), 1)).append(" %\n");
        paragraph("  ", "    ", "Biggest first: " + WasteShares.of(cost.waste()));
    }

    private void laminate(LaminatePlan laminate) {
        rolls("LAMINATE", laminate.plan(), false);
        orders(LineKind.LAMINATE);
        out.append("  ").append(Measure.LENGTH.print(laminate.length().getValue(), style)).append(" in ").append(laminate.runs())
                .append(laminate.runs() == 1 ? " run\n" : " runs\n");
    }

    private void hours() {
        heading("HOURS");
        Columns rows = new Columns("  ", "lrrl").row("task", "paid", "elapsed", "pace from");
        for (TaskTime task : cost.labour().tasks()) {
            rows.row(title(task.task()), time(task.paidS()), time(task.elapsedS()), task.task().source().kind().words());
        }
        rows.row("daily set-up", time(cost.labour().siteDays().setUpPaidS()), "", "");
        rows.row("daily travel", time(cost.labour().siteDays().travelPaidS()), "", "");
        for (TripTime trip : cost.labour().trips()) {
            rows.row("travel and stay: " + trip.trip().purpose().words() + (trip.days() == 1 ? "" : ", " + trip.days() + " days"), time(trip.paidS()),
                    "", "");
        }
        rows.row("all", time(cost.labour().totalPaidS()), "", "").print(out);
    }

    /** A machine's task says how much of its time someone stands by. */
    private static String title(Task task) {
        return task.machine() == Machine.NONE ? task.title() : task.title() + " (attended " + Print.fixed(100 * task.attended(), 0) + " %)";
    }

    private void dates(Timetable timetable) {
        heading("DATES");
        new DatesSheet(cost, timetable).print(out);
    }

    private void price(PriceBuildUp price) {
        heading("PRICE");
        Columns rows = new Columns("  ", "lrrr");
        for (CostLine line : price.lines()) {
            rows.row(line.title(), line.rate().measure().print(line.quantity(), style), line.rate().toString(), line.amount().toString());
        }
        rows.row("Direct cost", "", "", price.direct().toString());
        rows.row("Overhead", "", "", price.overhead().toString());
        rows.row("Contingency", "", "", price.contingency().toString());
        rows.row("Cost", "", "", price.cost().toString());
        rows.row(price.isMinimum() ? "Price (minimum)" : "Price", "", "", price.list().toString());
        if (!price.net().equals(price.list())) {
            rows.row("Price after discount", "", "", price.net().toString());
        }
        rows.row("Tax", "", "", price.tax().toString());
        rows.row("TOTAL", "", "", price.total().toString()).print(out);
        out.append("  Margin kept ").append(Print.fixed(100 * price.marginKept(), 1)).append(" % of the price before tax\n");
    }

    private void verdicts() {
        heading("VERDICTS");
        for (Verdict verdict : cost.verdicts(style)) {
            paragraph("  " + verdict.level() + "  ", "    ", verdict.subject() + ": " + verdict.reason() + " (" + verdict.source() + ")");
        }
    }

    private void cautions() {
        heading("CAUTIONS");
        paragraph("  ", "  ", Cautions.PREFACE);
        for (Caution caution : cost.cautions()) {
            String defers = String.join("; ", caution.defersTo().stream().map(Source::toString).toList());
            paragraph("  " + caution.title() + ": ", "    ", caution.text() + " (" + defers + ")");
        }
    }

    private void paragraph(String first, String next, String text) {
        Paragraph.add(out, first, next, text);
    }

    private String area(Number m2) {
        return Print.fixed(m2.doubleValue() / (style == UnitStyle.METRIC ? 1 : 0.09290304), 2) + (style == UnitStyle.METRIC ? " m²" : " ft²");
    }

    private String cut(long steps) {
        return Print.cut(steps, style);
    }

    private static String time(double seconds) {
        return Print.fixed(seconds / 3600, 2) + " h";
    }
}
